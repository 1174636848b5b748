package fitworthy.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Work on many things at once: its order, how much is in hand, and what becomes of a failure. */
class InOrderTest {

    private static final int JOBS = 4;

    /** The numbers up to a last one, with how many were taken. */
    private static class Counting implements Iterator<Integer> {
        private final int last;
        private final AtomicInteger taken = new AtomicInteger();

        Counting(int last) {
            this.last = last;
        }

        @Override
        public boolean hasNext() {
            return taken.get() < last;
        }

        @Override
        public Integer next() {
            return taken.incrementAndGet();
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Each first of two waits for the second to be done, so results are ready out of order. */
    @Test
    void resultsComeInTheOrderOfTheInputs() {
        List<CountDownLatch> done = IntStream.rangeClosed(0, 1000)
                .mapToObj(each -> new CountDownLatch(1))
                .toList();
        List<Integer> results = new ArrayList<>();
        InOrder.run(
                new Counting(1000),
                number -> {
                    if (number % 2 == 1) {
                        await(done.get(number + 1));
                    }
                    done.get(number).countDown();
                    return -number;
                },
                results::add,
                JOBS);
        assertEquals(IntStream.rangeClosed(1, 1000).mapToObj(each -> -each).toList(), results);
    }

    /** The first of all is held back until every other thing that may be taken in has been worked on. */
    @Test
    void noMoreThanFourForEachJobAreInHand() {
        int most = 4 * JOBS;
        Counting in = new Counting(5000);
        CountDownLatch others = new CountDownLatch(most - 1);
        AtomicInteger given = new AtomicInteger();
        AtomicInteger largest = new AtomicInteger();
        InOrder.run(
                in,
                number -> {
                    if (number == 1) {
                        await(others);
                        assertEquals(most, in.taken.get(), "taken in while the first was not given out");
                    } else {
                        others.countDown();
                    }
                    return number;
                },
                number -> {
                    largest.accumulateAndGet(in.taken.get() - given.get(), Math::max);
                    given.incrementAndGet();
                },
                JOBS);
        assertEquals(5000, given.get());
        assertEquals(most, largest.get());
    }

    @Test
    void failureOfWorkEndsItAfterWhatCameBefore() {
        List<Integer> results = new ArrayList<>();
        Counting in = new Counting(1_000_000);
        IllegalStateException failure = assertThrows(
                IllegalStateException.class,
                () -> InOrder.run(
                        in,
                        number -> {
                            if (number == 100) {
                                throw new IllegalStateException("the hundredth");
                            }
                            return number;
                        },
                        results::add,
                        JOBS));
        assertEquals("the hundredth", failure.getMessage());
        assertEquals(IntStream.rangeClosed(1, 99).boxed().toList(), results);
        assertTrue(in.taken.get() <= 99 + 4 * JOBS, in.taken + " taken");
    }

    @Test
    void failureOfTheInputGivesOutWhatWasTakenIn() {
        List<Integer> results = new ArrayList<>();
        Iterator<Integer> in = new Counting(1000) {
            @Override
            public Integer next() {
                int next = super.next();
                if (next == 100) {
                    throw new IllegalStateException("unreadable");
                }
                return next;
            }
        };
        assertThrows(IllegalStateException.class, () -> InOrder.run(in, number -> number, results::add, JOBS));
        assertEquals(IntStream.rangeClosed(1, 99).boxed().toList(), results);
    }
}
