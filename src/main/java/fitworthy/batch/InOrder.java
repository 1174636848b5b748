package fitworthy.batch;

import java.util.Iterator;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Function;

/** Work on many things at once, whose results come out in the order in which the things went in. */
public final class InOrder {

    /** Things in hand for each one that is worked on, so that a slow one does not leave the others idle. */
    private static final int IN_HAND = 4;

    private InOrder() {}

    /**
     * Works through everything. However much there is, no more than four things for each job are in hand, taken in but
     * not given out yet.
     *
     * @param in read by the caller's thread only, and no further than there is room
     * @param work done by {@code jobs} threads
     * @param out gets each result as soon as it and all before it are there, by one thread at a time
     */
    public static <T, R> void run(Iterator<T> in, Function<T, R> work, Consumer<R> out, int jobs) {
        ExecutorService pool = Executors.newFixedThreadPool(jobs);
        Semaphore room = new Semaphore(IN_HAND * jobs);
        AtomicBoolean failed = new AtomicBoolean();
        CompletableFuture<Void> given = CompletableFuture.completedFuture(null);
        try {
            room.acquireUninterruptibly();
            while (!failed.get() && in.hasNext()) {
                T each = in.next();
                given = given.thenAcceptBoth(
                                CompletableFuture.supplyAsync(() -> work.apply(each), pool),
                                (before, result) -> out.accept(result))
                        .whenComplete((done, failure) -> {
                            failed.compareAndSet(false, failure != null);
                            room.release();
                        });
                room.acquireUninterruptibly();
            }
        } finally {
            // Whatever happened, nothing is given out any more once this method has ended.
            given.exceptionally(failure -> null).join();
            pool.shutdown();
        }
        try {
            given.join();
        } catch (CompletionException e) {
            throw e.getCause() instanceof RuntimeException ours ? ours : e;
        }
    }
}
