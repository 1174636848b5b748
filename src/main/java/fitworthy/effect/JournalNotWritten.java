package fitworthy.effect;

import java.io.IOException;
import java.io.UncheckedIOException;

/** A finished sheet could not be noted in the journal. */
public final class JournalNotWritten extends UncheckedIOException {
    JournalNotWritten(IOException cause) {
        super(cause);
    }
}
