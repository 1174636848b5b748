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
import java.util.function.IntConsumer;

/**
 * What a report tells beside the advice on a sheet.
 *
 * @param mending the changes that help
 * @param alternatives the open choices side by side; absent where the sheet leaves none open
 */
public record LookedFor(Mending mending, Optional<Alternatives<ComparedPlan>> alternatives) {

    /**
     * Looks for both. They share the time: the choices come first with half of it, and the changes have what is left.
     *
     * @param tried gets how many plans were tried so far
     */
    public static LookedFor of(RuleEngine engine, View.Read read, Shelf shelf, SearchTime time, IntConsumer tried) {
        List<String> open =
                read.sheet().options().stream().map(Sheet.Option::name).toList();
        Optional<Alternatives<ComparedPlan>> alternatives = open.isEmpty()
                ? Optional.empty()
                : Optional.of(Alternatives.of(
                        engine, read.tree(), read.sheet(), open, ComparedPlan::of, time.share(0.5), tried));
        return new LookedFor(Mender.mend(engine, read.tree(), read.sheet(), shelf, time, tried), alternatives);
    }
}
