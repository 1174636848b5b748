package fitworthy.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes a file whole or not at all: whatever goes wrong, what stood there before still stands. */
final class WholeFile {

    private WholeFile() {}

    /**
     * Puts content in place of what a file holds now, once all of it is safely on the disk.
     *
     * @throws IOException where that fails; the file is as it was, and nothing is left beside it
     */
    static void write(Path file, byte[] content) throws IOException {
        // The file a link leads to, so that the link stays one.
        Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
        Path unfinished = target.resolveSibling("." + target.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            try (FileChannel channel = FileChannel.open(unfinished, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                ByteBuffer rest = ByteBuffer.wrap(content);
                while (rest.hasRemaining()) {
                    channel.write(rest);
                }
                channel.force(true);
            }
            Files.move(unfinished, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            Files.deleteIfExists(unfinished);
            throw e;
        }
    }
}
