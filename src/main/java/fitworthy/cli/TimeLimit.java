package fitworthy.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import java.util.function.LongSupplier;

/** A time limit for a search, with a line of progress where a person is watching. */
final class TimeLimit implements BooleanSupplier, IntConsumer, AutoCloseable {

    private final LongSupplier clock;
    private final long start;
    private final double seconds;
    private final StatusLine line;

    TimeLimit(double seconds, StatusLine line) {
        this(seconds, line, System::nanoTime);
    }

    /** @param clock nanoseconds from any moment on */
    TimeLimit(double seconds, StatusLine line, LongSupplier clock) {
        this.seconds = seconds;
        this.line = line;
        this.clock = clock;
        this.start = clock.getAsLong();
    }

    /** TimeLimit that shows its progress where a person is watching. */
    static TimeLimit of(double seconds, PrintWriter err) {
        return new TimeLimit(seconds, StatusLine.of(err));
    }

    /** Whether the time is used up. */
    @Override
    public boolean getAsBoolean() {
        return elapsed() >= seconds;
    }

    /** Whether this share of the time is used up, for what comes first and has to leave some to the rest. */
    BooleanSupplier share(double share) {
        return () -> elapsed() >= share * seconds;
    }

    @Override
    public void accept(int tried) {
        int filled = (int) Math.min(30, 30 * elapsed() / seconds);
        line.show(String.format(
                Locale.ROOT,
                "[%s%s] %d plans tried, %.0f of at most %.0f s",
                "#".repeat(filled),
                ".".repeat(30 - filled),
                tried,
                elapsed(),
                seconds));
    }

    private double elapsed() {
        return (clock.getAsLong() - start) / 1e9;
    }

    @Override
    public void close() {
        line.close();
    }
}
