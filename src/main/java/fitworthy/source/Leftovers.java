package fitworthy.source;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;

/**
 * Files that were being written when their run was killed. Nothing reads them, but nobody else would take them away.
 */
public final class Leftovers {

    /** What ends the name of a file that is not finished. */
    public static final String UNFINISHED = ".part";

    /** No run writes a file for so long without a byte; a date in the future comes of a clock that was set back. */
    private static final Duration ABANDONED = Duration.ofDays(1);

    private Leftovers() {}

    /** Takes away unfinished files of a folder whose names begin so, a day after the last byte. */
    public static void clear(Path folder, String beginning) {
        try (DirectoryStream<Path> left = Files.newDirectoryStream(
                folder,
                file -> file.getFileName().toString().startsWith(beginning)
                        && file.getFileName().toString().endsWith(UNFINISHED))) {
            for (Path each : left) {
                Duration age = Duration.between(Files.getLastModifiedTime(each).toInstant(), Instant.now())
                        .abs();
                if (age.compareTo(ABANDONED) > 0) {
                    Files.deleteIfExists(each);
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            // They are in nobody's way.
        }
    }
}
