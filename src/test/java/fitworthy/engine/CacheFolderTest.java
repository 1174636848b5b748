package fitworthy.engine;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fitworthy.Pipes;
import java.nio.ByteBuffer;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
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

    @Test
    void whatOthersMayWriteIsNotReadOrWritten() throws Exception {
        Path folder = home.resolve("cache");
        CacheFolder own = new CacheFolder(folder);
        own.keep("kept", new byte[] {1, 2, 3});
        assumeTrue(Files.getFileStore(folder).supportsFileAttributeView("posix"));
        for (String permissions : List.of("rwxrwx---", "rwx----w-")) {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString(permissions));
            own.keep("more", new byte[] {4});
            assertFalse(Files.exists(folder.resolve("more")), permissions);
            assertTrue(own.find("kept").isEmpty(), permissions);
        }
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        own.keep("more", new byte[] {4});
        assertEquals(4, own.find("more").orElseThrow().get());
    }

    /** A link leads somewhere that the folder's permissions say nothing of. */
    @Test
    void linksAreNeitherReadNorWrittenThrough() throws Exception {
        Path folder = home.resolve("cache");
        CacheFolder own = new CacheFolder(folder);
        own.keep("kept", new byte[] {1, 2, 3});
        Path link = Files.createSymbolicLink(home.resolve("link"), folder);
        CacheFolder linked = new CacheFolder(link);
        linked.keep("more", new byte[] {4});
        assertFalse(Files.exists(folder.resolve("more")));
        assertTrue(linked.find("kept").isEmpty());
        assertEquals(
                "The cache folder " + link
                        + " is not used, so that runs take longer: this is a link. Name a folder with"
                        + " FITWORTHY_CACHE.",
                linked.refused().orElseThrow());
        assertTrue(own.refused().isEmpty());
        Path elsewhere = Files.copy(folder.resolve("kept"), home.resolve("elsewhere"));
        Files.createSymbolicLink(folder.resolve("again"), elsewhere);
        assertTrue(own.find("again").isEmpty(), "whole as it is");
        own.keep("again", new byte[] {4});
        assertArrayEquals(Files.readAllBytes(folder.resolve("kept")), Files.readAllBytes(elsewhere));
        assertEquals(4, own.find("again").orElseThrow().get());
    }

    @Test
    @Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void aPipeIsNotWaitedFor() throws Exception {
        CacheFolder own = new CacheFolder(home.resolve("cache"));
        own.keep("kept", new byte[] {1, 2, 3});
        Pipes.make(home.resolve("cache/pipe"));
        assertTrue(own.find("pipe").isEmpty());
        CacheFolder none = new CacheFolder(home.resolve("cache/pipe"));
        none.keep("kept", new byte[] {1});
        assertTrue(none.find("kept").isEmpty());
        assertTrue(
                none.refused().orElseThrow().contains("this is a pipe"),
                none.refused().orElseThrow());
    }

    /** A zip is a disk that knows of no owners. */
    @Test
    void whereTheDiskKnowsOfNoOwnersAFolderIsUsedAsItIs() throws Exception {
        try (FileSystem zip = FileSystems.newFileSystem(home.resolve("disk.zip"), Map.of("create", "true"))) {
            Path folder = zip.getPath("/home/cache");
            Files.createDirectories(folder);
            Files.write(folder.resolve("kept"), new byte[] {0, 0, 0, 0, 0x55, (byte) 0xbc, (byte) 0x80, 0x1d, 1, 2, 3});
            assertEquals(
                    ByteBuffer.wrap(new byte[] {1, 2, 3}),
                    new CacheFolder(folder).find("kept").orElseThrow(),
                    "behind its CRC-32");
            assertTrue(new CacheFolder(folder.resolve("kept")).find("kept").isEmpty(), "a file is no folder");
        }
    }

    @Test
    void whatIsNotWholeCountsAsAbsent() throws Exception {
        Path folder = home.resolve("cache");
        CacheFolder own = new CacheFolder(folder);
        own.keep("kept", new byte[] {1, 2, 3});
        byte[] whole = Files.readAllBytes(folder.resolve("kept"));
        for (int i = 0; i < whole.length; i++) {
            byte[] damaged = whole.clone();
            damaged[i] ^= 4;
            Files.write(folder.resolve("kept"), damaged);
            assertTrue(own.find("kept").isEmpty(), "byte " + i);
            Files.write(folder.resolve("kept"), Arrays.copyOf(whole, i));
            assertTrue(own.find("kept").isEmpty(), i + " bytes");
        }
        Files.write(folder.resolve("kept"), whole);
        assertEquals(ByteBuffer.wrap(new byte[] {1, 2, 3}), own.find("kept").orElseThrow());
        own.keep("empty", new byte[0]);
        assertEquals(0, own.find("empty").orElseThrow().remaining());
        assertTrue(own.find("none").isEmpty());
    }
}
