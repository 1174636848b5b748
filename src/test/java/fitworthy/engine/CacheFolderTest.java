package fitworthy.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What somebody else's folder holds may be anything, whoever may write it. */
class CacheFolderTest {

    @TempDir
    private Path home;

    @Test
    void onlyAFolderOfTheOwnUserIsReadOrWritten() throws Exception {
        Path folder = home.resolve("cache");
        CacheFolder own = new CacheFolder(folder);
        own.keep("kept", new byte[] {1, 2, 3});
        assumeTrue(Files.getFileStore(folder).supportsFileAttributeView("posix"));
        CacheFolder others =
                new CacheFolder(folder, "not " + Files.getOwner(folder).getName());
        others.keep("others", new byte[] {4});
        assertFalse(Files.exists(folder.resolve("others")));
        assertTrue(others.find("kept").isEmpty());
        assertEquals(3, own.find("kept").orElseThrow().remaining());
    }
}
