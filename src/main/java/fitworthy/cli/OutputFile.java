package fitworthy.cli;

import fitworthy.engine.Adding;
import fitworthy.source.FaultsException;
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
     * Files of a rule book that belong together: none is put in its place before all of them are on the disk, so that one
     * that cannot be written leaves all as they were. A run that is killed while they are put there leaves a note of it.
     *
     * @param before what stands there now
     * @param after the same with what is added
     */
    static void writeAll(Path book, Map<Path, String> before, Map<Path, String> after) throws NotWritten {
        if (after.size() == 1) {
            // No half of it can be there.
            Path file = after.keySet().iterator().next();
            write(file, after.get(file));
            return;
        }
        Map<Path, WholeFile> begun = new LinkedHashMap<>();
        try {
            for (Map.Entry<Path, String> each : after.entrySet()) {
                tried(each.getKey(), () -> {
                    WholeFile whole = new WholeFile(each.getKey());
                    begun.put(each.getKey(), whole);
                    whole.write(each.getValue().getBytes(StandardCharsets.UTF_8));
                    whole.force();
                });
            }
            try (Adding adding = Adding.begin(book, before, after)) {
                for (Map.Entry<Path, WholeFile> each : begun.entrySet()) {
                    tried(each.getKey(), each.getValue()::finish);
                }
                adding.end();
            } catch (IOException e) {
                throw new NotWritten(Adding.note(book), e);
            }
        } finally {
            for (Map.Entry<Path, WholeFile> each : begun.entrySet()) {
                tried(each.getKey(), each.getValue()::close);
            }
        }
    }

    /**
     * Takes back what a run that did not come to its end has added to some files of a rule book.
     *
     * @return whether there was such a run
     * @throws FaultsException where it cannot be told what to take back
     */
    static boolean takeBack(Path book) throws FaultsException, NotWritten {
        try (Adding left = Adding.left(book)) {
            if (left == null) {
                return false;
            }
            for (Map.Entry<Path, String> each : left.before().entrySet()) {
                write(each.getKey(), each.getValue());
            }
            left.end();
            return true;
        } catch (IOException e) {
            throw new NotWritten(Adding.note(book), e);
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
