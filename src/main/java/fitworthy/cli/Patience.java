package fitworthy.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;

/** A time limit for a search, with a line of progress where a person is watching. */
final class Patience implements BooleanSupplier, IntConsumer, AutoCloseable {

    private static final long LINE_EVERY_NANOS = 200_000_000L;

    private final long start = System.nanoTime();
    private final double seconds;
    private final PrintWriter err;
    private final boolean watched;
    private long shown;

    Patience(double seconds, PrintWriter err, boolean watched) {
        this.seconds = seconds;
        this.err = err;
        this.watched = watched;
    }

    /** Patience that shows its progress where a person is watching. */
    static Patience of(double seconds, PrintWriter err) {
        // Without this Java 22 to 24 have a console even where nobody is watching.
        System.setProperty("jdk.console", "java.base");
        return new Patience(seconds, err, System.console() != null);
    }

    /** Whether the time is used up. */
    @Override
    public boolean getAsBoolean() {
        return elapsed() >= seconds;
    }

    @Override
    public synchronized void accept(int tried) {
        if (watched && System.nanoTime() - shown > LINE_EVERY_NANOS) {
            shown = System.nanoTime();
            int filled = (int) Math.min(30, 30 * elapsed() / seconds);
            err.print(String.format(Locale.ROOT, "\r[%s%s] %d plans tried, %.0f of at most %.0f s", "#".repeat(filled),
                    ".".repeat(30 - filled), tried, elapsed(), seconds));
            err.flush();
        }
    }

    private double elapsed() {
        return (System.nanoTime() - start) / 1e9;
    }

    /** Takes the line of progress away. */
    @Override
    public void close() {
        if (shown != 0) {
            err.print("\r" + " ".repeat(79) + "\r");
            err.flush();
        }
    }
}
