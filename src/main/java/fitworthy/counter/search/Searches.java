package fitworthy.counter.search;

import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.LastUsed;
import fitworthy.source.Digests;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;

/** One search after the other, since each uses every processor that there is. What one found serves all pages. */
public final class Searches {

    /** Sheets that are looked at again and again. */
    private static final int MOST = 8;

    private final Executor one = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "search");
        thread.setDaemon(true);
        return thread;
    });
    private final LastUsed<Search> begun = new LastUsed<>(MOST);

    /**
     * The search for a sheet without a fault: one that was begun before where it may take as long, or found all that there
     * is.
     *
     * @param seconds how long it may take
     */
    public synchronized Search of(Answer answer, double seconds) {
        String key = Digests.of(
                answer.version(), answer.place().file(), answer.view().key());
        Optional<Search> before = begun.find(key);
        return before.filter(search -> search.serves(seconds)).orElseGet(() -> {
            before.ifPresent(Search::leave);
            Search search = new Search(answer, seconds);
            begun.put(key, search);
            one.execute(search::run);
            return search;
        });
    }
}
