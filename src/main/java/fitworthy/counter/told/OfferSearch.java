package fitworthy.counter.told;

import fitworthy.counter.desk.Answer;
import fitworthy.printout.ComparedPlan;
import fitworthy.printout.LookedFor;
import fitworthy.search.Alternatives;
import fitworthy.search.Mender;
import fitworthy.search.Mender.Mending;
import fitworthy.search.SearchTime;
import fitworthy.sheet.Sheet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;

/** A search for changes to one text of a sheet, behind the page. It ends by itself once its time is up. */
final class OfferSearch {

    /** In seconds. */
    static final double SHORT = 5;

    static final double LONG = 30;

    private final Answer answer;
    private final double most;
    private final AtomicInteger tried = new AtomicInteger();
    private volatile boolean cancelled;
    private final CompletableFuture<Offered> found;

    /**
     * @param answer to a sheet without faults
     * @param most how long it may look for changes, in seconds, and as long again at open choices
     * @param behind what it runs on
     */
    OfferSearch(Answer answer, double most, Executor behind) {
        this.answer = answer;
        this.most = most;
        this.found =
                CompletableFuture.supplyAsync(() -> Offered.of(answer.advice().orElseThrow(), search()), behind);
    }

    /** Whether it is about what a sheet says. */
    boolean isOf(Answer now) {
        return answer.version().equals(now.version());
    }

    /** How many changed plans were looked at so far. */
    int tried() {
        return tried.get();
    }

    /** Empty while it goes on. */
    Optional<Offered> found() {
        return Optional.ofNullable(found.getNow(null));
    }

    /** Lets it end soon: nobody waits for it any more. */
    void cancel() {
        cancelled = true;
    }

    private LookedFor search() {
        var read = answer.read().orElseThrow();
        var engine = answer.view().engine();
        var shelf = answer.view().shelves().of(answer.place().file());
        Mending mending = Mender.mend(engine, read.tree(), read.sheet(), shelf, untilTimeIsUp(), tried::set);
        int mended = tried.get();
        List<String> options =
                read.sheet().options().stream().map(Sheet.Option::name).toList();
        return new LookedFor(
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
        SearchTime time = new SearchTime(most);
        return () -> cancelled || time.getAsBoolean();
    }
}
