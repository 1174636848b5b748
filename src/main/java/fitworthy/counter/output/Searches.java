package fitworthy.counter.output;

import fitworthy.advice.View;
import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.LastUsed;
import fitworthy.printout.LookedFor;
import fitworthy.search.SearchTime;
import fitworthy.shelf.Shelf;
import fitworthy.source.Digests;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;

/** Looks for what a report tells beside the advice, one sheet after the other, so that the pages keep a processor. */
final class Searches {

    /** What a person waits for at the most, in seconds. */
    static final double SECONDS = 20;
    /** Sheets that are printed again and again. */
    private static final int MOST = 8;

    private final Executor one = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "search");
        thread.setDaemon(true);
        return thread;
    });
    private final LastUsed<Search> begun = new LastUsed<>(MOST);

    /** One that waits, runs or is done. */
    static final class Search {
        private final CompletableFuture<LookedFor> found = new CompletableFuture<>();
        private volatile SearchTime time;
        private volatile int tried;

        boolean isDone() {
            return found.isDone();
        }

        /** How many plans were tried so far. */
        int tried() {
            return tried;
        }

        /** How long it has been looking, in whole seconds. */
        long elapsed() {
            SearchTime began = time;
            return began == null ? 0 : Math.round(Math.min(SECONDS, began.elapsed()));
        }

        /** Waits for it. */
        LookedFor found() {
            return found.join();
        }

        private void run(Answer answer, Shelf shelf) {
            time = new SearchTime(SECONDS);
            found.complete(LookedFor.of(
                    answer.view().engine(), answer.read().orElseThrow(), shelf, time, count -> tried = count));
        }
    }

    /** That of a sheet without a fault, begun now or before. */
    Search of(Answer answer) {
        View view = answer.view();
        Shelf shelf = view.shelves().of(answer.place().file());
        String key = Digests.of(answer.version(), answer.place().file(), view.key(), shelf.content());
        return begun.get(key, () -> {
            Search search = new Search();
            one.execute(() -> {
                try {
                    search.run(answer, shelf);
                } catch (RuntimeException e) {
                    search.found.completeExceptionally(e);
                }
            });
            return search;
        });
    }
}
