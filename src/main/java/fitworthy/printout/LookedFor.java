package fitworthy.printout;

import fitworthy.advice.View;
import fitworthy.engine.RuleEngine;
import fitworthy.search.Alternatives;
import fitworthy.search.Mender;
import fitworthy.search.Mender.Mending;
import fitworthy.search.SearchTime;
import fitworthy.sheet.Sheet;
import fitworthy.shelf.Shelf;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;

/**
 * What a report tells beside the advice on a sheet.
 *
 * @param mending the changes that help
 * @param alternatives the open choices side by side; absent where the sheet leaves none open
 */
public record LookedFor(Mending mending, Optional<Alternatives<ComparedPlan>> alternatives) {

    /** Plans that are tried however long it takes, so that a slow machine prints what helps most too. */
    private static final int LEAST_PLANS = 12;

    /** Whether more time would find no more. */
    public boolean complete() {
        return mending.complete() && alternatives.map(Alternatives::complete).orElse(true);
    }

    /**
     * Looks for both. They share the time: the choices come first with half of it, and the changes have what is left, and
     * time for the few that take most off the limits in any case.
     *
     * @param tried gets how many plans were tried so far
     */
    public static LookedFor of(RuleEngine engine, View.Read read, Shelf shelf, SearchTime time, IntConsumer tried) {
        AtomicInteger before = new AtomicInteger();
        IntConsumer choices = count -> {
            before.set(count);
            tried.accept(count);
        };
        List<String> open =
                read.sheet().options().stream().map(Sheet.Option::name).toList();
        Optional<Alternatives<ComparedPlan>> alternatives = open.isEmpty()
                ? Optional.empty()
                : Optional.of(Alternatives.of(
                        engine, read.tree(), read.sheet(), open, ComparedPlan::of, time.share(0.5), choices));
        AtomicInteger changes = new AtomicInteger();
        IntConsumer counting = count -> {
            changes.set(count);
            tried.accept(before.get() + count);
        };
        return new LookedFor(
                Mender.mend(engine, read.tree(), read.sheet(), shelf, time.after(LEAST_PLANS, changes::get), counting),
                alternatives);
    }
}
