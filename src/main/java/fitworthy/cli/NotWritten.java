package fitworthy.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Objects;

/** A file that could not be written. */
final class NotWritten extends Exception {

    NotWritten(Path file, IOException cause) {
        super(file + ": " + reason(cause), cause);
    }

    private static String reason(IOException cause) {
        if (cause instanceof NoSuchFileException) {
            return "there is no such folder";
        }
        if (cause instanceof AccessDeniedException) {
            return "the folder may not be written to";
        }
        String reason = cause instanceof FileSystemException named ? named.getReason() : null;
        return Objects.requireNonNullElse(reason, String.valueOf(cause.getMessage()));
    }
}
