package fitworthy.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Pipes;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file is written whole in a file's place, and in no other. */
class WholeFileTest {

    @TempDir
    private Path home;

    private static String refused(Path path) {
        return assertThrows(FileSystemException.class, () -> WholeFile.write(path, new byte[] {1}))
                .getReason();
    }

    @Test
    void pipesDevicesAndFoldersAreNotReplaced() throws Exception {
        Path pipe = Pipes.make(home.resolve("pipe"));
        assertEquals(Standing.NO_FILE.words(), refused(pipe));
        assertEquals(Standing.NO_FILE, Standing.at(pipe));
        Path device = Files.createSymbolicLink(home.resolve("device"), Path.of("/dev/null"));
        assertEquals(Standing.NO_FILE.words(), refused(device));
        assertEquals("this is a folder", refused(Files.createSymbolicLink(home.resolve("link"), home)));
    }

    @Test
    void linkStaysALink() throws IOException {
        Path file = Files.writeString(home.resolve("file"), "earlier");
        Path link = Files.createSymbolicLink(home.resolve("link"), file);
        WholeFile.write(link, new byte[] {'1'});
        assertTrue(Files.isSymbolicLink(link));
        assertFalse(Files.isSymbolicLink(file));
        assertEquals("1", Files.readString(file));
    }
}
