package fitworthy.counter;

import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/** Counts wrong passwords of anybody: after a few in a row nobody may try for a while. */
final class Tries {

    private static final int FEW = 5;
    private static final long WAIT = TimeUnit.SECONDS.toNanos(30);

    private final LongSupplier clock;
    private int wrong;
    private long last;

    /** @param clock ns since some moment */
    Tries(LongSupplier clock) {
        this.clock = clock;
    }

    synchronized boolean areOver() {
        return wrong >= FEW && clock.getAsLong() - last < WAIT;
    }

    synchronized void wrong() {
        wrong++;
        last = clock.getAsLong();
    }

    synchronized void right() {
        wrong = 0;
    }
}
