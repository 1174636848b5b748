package fitworthy.cli;

import fitworthy.source.WholeFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** A file that a command was told to write, which is there whole or not at all. */
final class OutputFile {

    private OutputFile() {}

    static void write(Path file, String content) throws NotWritten {
        write(file, content.getBytes(StandardCharsets.UTF_8));
    }

    static void write(Path file, byte[] content) throws NotWritten {
        try {
            WholeFile.write(file, content);
        } catch (IOException e) {
            throw new NotWritten(file, e);
        }
    }
}
