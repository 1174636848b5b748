package fitworthy.cli;

import fitworthy.source.WholeFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** Files that a command was told to write, each of which is there whole or not at all. */
final class OutputFile {

    private OutputFile() {}

    static void write(Path file, String content) throws NotWritten {
        write(file, content.getBytes(StandardCharsets.UTF_8));
    }

    static void write(Path file, byte[] content) throws NotWritten {
        tried(file, () -> WholeFile.write(file, content));
    }

    /**
     * Files that belong together: none is put in its place before all of them are on the disk, so that one that cannot
     * be written leaves all as they were. A run that is killed while they are put there leaves some.
     */
    static void writeAll(Map<Path, String> contents) throws NotWritten {
        Map<Path, WholeFile> begun = new LinkedHashMap<>();
        try {
            for (Map.Entry<Path, String> each : contents.entrySet()) {
                tried(each.getKey(), () -> {
                    WholeFile whole = new WholeFile(each.getKey());
                    begun.put(each.getKey(), whole);
                    whole.write(each.getValue().getBytes(StandardCharsets.UTF_8));
                    whole.force();
                });
            }
            for (Map.Entry<Path, WholeFile> each : begun.entrySet()) {
                tried(each.getKey(), each.getValue()::finish);
            }
        } finally {
            for (Map.Entry<Path, WholeFile> each : begun.entrySet()) {
                tried(each.getKey(), each.getValue()::close);
            }
        }
    }

    private interface Step {
        void take() throws IOException;
    }

    private static void tried(Path file, Step step) throws NotWritten {
        try {
            step.take();
        } catch (IOException e) {
            throw new NotWritten(file, e);
        }
    }
}
