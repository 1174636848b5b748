package fitworthy.cli;

import fitworthy.source.WholeFile;
import java.io.Closeable;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Lines that go to the output stream as they come, or to a file that is there once all of them are. */
final class LineOutput implements Closeable {

    private final PrintWriter stream;
    private final Path file;
    private final WholeFile whole;

    /** @param file null for the stream */
    LineOutput(PrintWriter stream, Path file) throws NotWritten {
        this.stream = stream;
        this.file = file;
        try {
            this.whole = file == null ? null : new WholeFile(file);
        } catch (IOException e) {
            throw new NotWritten(file, e);
        }
    }

    /** Lines that could not be written. */
    static final class Failed extends UncheckedIOException {
        Failed(IOException cause) {
            super(cause);
        }
    }

    /** Writes a line. @throws Failed where it cannot be written */
    void line(String text) {
        try {
            if (whole != null) {
                whole.write((text + "\n").getBytes(StandardCharsets.UTF_8));
                return;
            }
            stream.println(text);
            if (stream.checkError()) {
                throw new IOException("nobody reads it any more");
            }
        } catch (IOException e) {
            throw new Failed(e);
        }
    }

    /** Puts the file in its place. @throws Failed where that cannot be done */
    void finish() {
        try {
            if (whole != null) {
                whole.finish();
            }
        } catch (IOException e) {
            throw new Failed(e);
        }
    }

    /** A failure to write, told with the name of what was written. */
    NotWritten told(Failed failure) {
        return new NotWritten(file == null ? Path.of("standard output") : file, failure.getCause());
    }

    @Override
    public void close() throws IOException {
        if (whole != null) {
            whole.close();
        }
    }
}
