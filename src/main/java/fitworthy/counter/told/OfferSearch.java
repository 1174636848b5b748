package fitworthy.counter.told;

import fitworthy.counter.desk.Answer;
import fitworthy.printout.ComparedPlan;
import fitworthy.search.Alternatives;
import fitworthy.search.Mender;
import fitworthy.search.Mender.Mending;
import fitworthy.sheet.Sheet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;

/** A search for changes to one text of a sheet, behind the page. It ends by itself once its time is up. */
final class OfferSearch {

    private static final long NANOSECONDS = 5_000_000_000L;

    private final Answer answer;
    private final AtomicInteger tried = new AtomicInteger();
    private volatile boolean cancelled;
    private final CompletableFuture<Found> found;

    /** @param alternatives where the sheet leaves a choice open */
    record Found(Mending mending, Optional<Alternatives<ComparedPlan>> alternatives) {}

    /** @param answer to a sheet without faults @param behind what it runs on */
    OfferSearch(Answer answer, Executor behind) {
        this.answer = answer;
        this.found = CompletableFuture.supplyAsync(this::search, behind);
    }

    /** What it is about. */
    Answer answer() {
        return answer;
    }

    /** How many changed plans were looked at so far. */
    int tried() {
        return tried.get();
    }

    /** Empty while it goes on. */
    Optional<Found> found() {
        return Optional.ofNullable(found.getNow(null));
    }

    /** Lets it end soon: nobody waits for it any more. */
    void cancel() {
        cancelled = true;
    }

    private Found search() {
        var read = answer.read().orElseThrow();
        var engine = answer.view().engine();
        var shelf = answer.view().shelves().of(answer.place().file());
        Mending mending = Mender.mend(engine, read.tree(), read.sheet(), shelf, untilTimeIsUp(), tried::set);
        int mended = tried.get();
        List<String> options =
                read.sheet().options().stream().map(Sheet.Option::name).toList();
        return new Found(
                mending,
                options.isEmpty()
                        ? Optional.empty()
                        : Optional.of(Alternatives.of(
                                engine,
                                read.tree(),
                                read.sheet(),
                                options,
                                ComparedPlan::of,
                                untilTimeIsUp(),
                                looked -> tried.set(mended + looked))));
    }

    private BooleanSupplier untilTimeIsUp() {
        long start = System.nanoTime();
        return () -> cancelled || System.nanoTime() - start > NANOSECONDS;
    }
}
