package fitworthy.counter.search;

import fitworthy.counter.desk.Answer;
import fitworthy.printout.LookedFor;
import fitworthy.search.SearchTime;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/** Looks behind the page for what helps one text of a sheet, and among its open choices. It ends by itself once its time is up. */
public final class Search {

    private final Answer answer;
    private final double seconds;
    private final CompletableFuture<LookedFor> found = new CompletableFuture<>();
    private volatile SearchTime time;
    private volatile int tried;
    private volatile boolean kept;
    private volatile boolean left;

    /** @param answer to a sheet without faults @param seconds how long it may take */
    Search(Answer answer, double seconds) {
        this.answer = answer;
        this.seconds = seconds;
    }

    void run() {
        try {
            SearchTime begun = new SearchTime(seconds);
            time = begun;
            found.complete(LookedFor.of(
                    answer.view().engine(),
                    answer.read().orElseThrow(),
                    answer.view().shelves().of(answer.place().file()),
                    begun.orSooner(() -> left),
                    count -> tried = count));
        } catch (RuntimeException e) {
            found.completeExceptionally(e);
        }
    }

    /** Whether it is about what a sheet says. */
    public boolean isOf(Answer now) {
        return answer.version().equals(now.version());
    }

    /** Whether it tells as much as one that takes so long. */
    boolean serves(double wanted) {
        return !left && (seconds >= wanted || isDone() && found.join().complete());
    }

    public boolean isDone() {
        return found.isDone();
    }

    /** How many changed plans were looked at so far. */
    public int tried() {
        return tried;
    }

    /** How long it has been looking, in seconds. */
    public double elapsed() {
        SearchTime begun = time;
        return begun == null ? 0 : Math.min(seconds, begun.elapsed());
    }

    /** Empty while it goes on. */
    public Optional<LookedFor> found() {
        return Optional.ofNullable(found.getNow(null));
    }

    /** Waits for it. */
    public LookedFor awaited() {
        return found.join();
    }

    /** Lets nothing but its time end it: what is printed waits for it. */
    public Search kept() {
        kept = true;
        return this;
    }

    /** Lets it end soon: the page does not wait for it any more. */
    public void leave() {
        left |= !kept && !isDone();
    }
}
