package fitworthy.cli;

import java.io.PrintWriter;
import java.util.OptionalInt;

/** One line on the error stream that says how far a long run has come, where a person is watching. */
final class StatusLine implements AutoCloseable {

    private static final long SHOWN_FOR_NANOS = 200_000_000L;

    private final PrintWriter err;
    private final boolean watched;
    private long shown;

    StatusLine(PrintWriter err, boolean watched) {
        this.err = err;
        this.watched = watched;
    }

    /** A line that is shown where the error stream is a terminal. */
    static StatusLine of(PrintWriter err) {
        // Without this Java 22 to 24 have a console even where nobody is watching.
        System.setProperty("jdk.console", "java.base");
        return new StatusLine(err, System.console() != null);
    }

    /** Shows a text of at most 79 characters in place of the last. */
    synchronized void show(String text) {
        if (watched && System.nanoTime() - shown > SHOWN_FOR_NANOS) {
            shown = System.nanoTime();
            err.print(String.format("\r%-79s", text));
            err.flush();
        }
    }

    /** Shows how many of all sheets are done; with a bar where it is known how many there are. */
    void show(long done, OptionalInt all) {
        if (all.isEmpty()) {
            show(done + " sheets");
        } else {
            int filled = (int) (40 * done / Math.max(1, all.getAsInt()));
            show("[" + "#".repeat(filled) + ".".repeat(40 - filled) + "] " + done + " of " + all.getAsInt()
                    + " sheets");
        }
    }

    /** Takes the line away. */
    @Override
    public synchronized void close() {
        if (shown != 0) {
            err.print("\r" + " ".repeat(79) + "\r");
            err.flush();
        }
    }
}
