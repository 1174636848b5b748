package fitworthy.source;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.ThreadLocalRandom;
import java.util.regex.Pattern;

/**
 * Files that were being written when their run was killed. Nothing reads them, but nobody else would take them away.
 */
public final class Leftovers {

    private static final String UNFINISHED = ".part";

    /** No run writes a file for so long without a byte; a date in the future comes of a clock that was set back. */
    private static final Duration ABANDONED = Duration.ofDays(1);

    private Leftovers() {}

    /** The name of an unfinished file. */
    static String name(String of) {
        // Not the number of the process: in a container that is the same one each time, and a killed run has left its
        // file.
        return "." + of + "." + Integer.toHexString(ThreadLocalRandom.current().nextInt()) + UNFINISHED;
    }

    /**
     * Takes away unfinished files of a folder, a day after the last byte.
     *
     * @param of what the files were to be called
     */
    public static void clear(Path folder, Pattern of) {
        clear(folder, of, ABANDONED);
    }

    /** The same of those that got no byte for longer than this. */
    public static void clear(Path folder, Pattern of, Duration abandoned) {
        Pattern unfinished = Pattern.compile("\\.(" + of + ")\\.[0-9a-f]{1,8}" + Pattern.quote(UNFINISHED));
        try (DirectoryStream<Path> left = Files.newDirectoryStream(
                folder,
                file -> unfinished.matcher(file.getFileName().toString()).matches())) {
            for (Path each : left) {
                Duration age = Duration.between(Files.getLastModifiedTime(each).toInstant(), Instant.now())
                        .abs();
                if (age.compareTo(abandoned) > 0) {
                    Files.deleteIfExists(each);
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            // They are in nobody's way.
        }
    }
}
