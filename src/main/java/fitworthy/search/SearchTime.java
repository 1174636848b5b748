package fitworthy.search;

import java.util.function.BooleanSupplier;
import java.util.function.IntSupplier;
import java.util.function.LongSupplier;

/** How long a search may take by the clock; says whether that is used up. */
public class SearchTime implements BooleanSupplier {

    private final double seconds;
    private final LongSupplier clock;
    private final long start;

    /** Begins now. */
    public SearchTime(double seconds) {
        this(seconds, System::nanoTime);
    }

    /** @param clock nanoseconds from any moment on */
    public SearchTime(double seconds, LongSupplier clock) {
        this.seconds = seconds;
        this.clock = clock;
        this.start = clock.getAsLong();
    }

    /** How long it may take, in seconds. */
    public double seconds() {
        return seconds;
    }

    /** Since it began, in seconds. */
    public double elapsed() {
        return (clock.getAsLong() - start) / 1e9;
    }

    /** Whether the time is used up. */
    @Override
    public boolean getAsBoolean() {
        return elapsed() >= seconds;
    }

    /** The same, ended sooner once there is a reason. */
    public SearchTime orSooner(BooleanSupplier reason) {
        SearchTime whole = this;
        return new SearchTime(seconds, clock) {
            @Override
            public double elapsed() {
                return reason.getAsBoolean() ? Double.POSITIVE_INFINITY : whole.elapsed();
            }
        };
    }

    /** The same, but not before so many plans were tried, however slow the machine is; unless it was ended sooner. */
    public BooleanSupplier after(int plans, IntSupplier tried) {
        return () -> getAsBoolean() && (elapsed() == Double.POSITIVE_INFINITY || tried.getAsInt() >= plans);
    }

    /** Whether this share of the time is used up, for what comes first and has to leave some to the rest. */
    public BooleanSupplier share(double share) {
        return () -> elapsed() >= share * seconds;
    }
}
