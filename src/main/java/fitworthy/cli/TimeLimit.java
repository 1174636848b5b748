package fitworthy.cli;

import fitworthy.search.SearchTime;
import java.io.PrintWriter;
import java.util.Locale;
import java.util.function.IntConsumer;
import java.util.function.LongSupplier;

/** A time limit for a search, with a line of progress where a person is watching. */
final class TimeLimit extends SearchTime implements IntConsumer, AutoCloseable {

    private final StatusLine line;

    TimeLimit(double seconds, StatusLine line) {
        this(seconds, line, System::nanoTime);
    }

    /** @param clock nanoseconds from any moment on */
    TimeLimit(double seconds, StatusLine line, LongSupplier clock) {
        super(seconds, clock);
        this.line = line;
    }

    /** TimeLimit that shows its progress where a person is watching. */
    static TimeLimit of(double seconds, PrintWriter err) {
        return new TimeLimit(seconds, StatusLine.of(err));
    }

    @Override
    public void accept(int tried) {
        int filled = (int) Math.min(30, 30 * elapsed() / seconds());
        line.show(String.format(
                Locale.ROOT,
                "[%s%s] %d plans tried, %.0f of at most %.0f s",
                "#".repeat(filled),
                ".".repeat(30 - filled),
                tried,
                elapsed(),
                seconds()));
    }

    @Override
    public void close() {
        line.close();
    }
}
