package fitworthy.engine;

import fitworthy.source.Leftovers;
import fitworthy.source.WholeFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.zip.CRC32;

/**
 * A folder for what need not be worked out twice, which only its owner may write. A file whose checksum is not as it
 * should be counts as absent. The checksum finds a cut or damaged file; against somebody who may write the owner's
 * files nothing here helps, which is why a folder that others may write is not used at all.
 */
final class CacheFolder {

    private static final int CHECKSUM_BYTES = Long.BYTES;

    private final Path folder;
    private final String owner;

    CacheFolder(Path folder) {
        this(folder, System.getProperty("user.name"));
    }

    /** @param owner who has to own the folder */
    CacheFolder(Path folder, String owner) {
        this.folder = folder;
        this.owner = owner;
    }

    /** What was kept under a name, or nothing where there is nothing that can be trusted. */
    Optional<ByteBuffer> find(String name) {
        try {
            if (!trusted()) {
                return Optional.empty();
            }
            byte[] bytes = Files.readAllBytes(folder.resolve(name));
            ByteBuffer content = ByteBuffer.wrap(bytes);
            return content.getLong() == checksum(bytes, CHECKSUM_BYTES)
                    ? Optional.of(content.slice())
                    : Optional.empty();
        } catch (IOException | RuntimeException e) {
            return Optional.empty();
        }
    }

    /** Keeps content under a name; where the folder cannot be written or trusted it is worked out again next time. */
    void keep(String name, byte[] content) {
        try {
            if (!Files.exists(folder)) {
                makeFolder();
            }
            if (trusted()) {
                Leftovers.clear(folder, "");
                WholeFile.writePrivately(
                        folder.resolve(name),
                        ByteBuffer.allocate(CHECKSUM_BYTES + content.length)
                                .putLong(checksum(content, 0))
                                .put(content)
                                .array());
            }
        } catch (IOException e) {
            // It is worked out again next time.
        }
    }

    private void makeFolder() throws IOException {
        Path parent = Files.createDirectories(folder.toAbsolutePath().getParent());
        if (hasPermissions(parent)) {
            Files.createDirectory(
                    folder, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
        } else {
            Files.createDirectory(folder);
        }
    }

    private static boolean hasPermissions(Path folder) throws IOException {
        return Files.getFileStore(folder).supportsFileAttributeView("posix");
    }

    /** Whether only its owner may write to the folder. One that others could write to may hold anything ever after. */
    private boolean trusted() throws IOException {
        if (!Files.isDirectory(folder) || !hasPermissions(folder)) {
            return Files.isDirectory(folder);
        }
        Set<PosixFilePermission> permissions = Files.getPosixFilePermissions(folder);
        return !permissions.contains(PosixFilePermission.GROUP_WRITE)
                && !permissions.contains(PosixFilePermission.OTHERS_WRITE)
                && Files.getOwner(folder).getName().equals(owner);
    }

    private static long checksum(byte[] bytes, int from) {
        CRC32 checksum = new CRC32();
        checksum.update(bytes, from, bytes.length - from);
        return checksum.getValue();
    }

    /** Counts a text and its name into a digest. */
    static void count(MessageDigest digest, String name, String text) {
        digest.update((name + "\0" + text + "\0").getBytes(StandardCharsets.UTF_8));
    }

    /** Counts classes of the program into a digest: what they make differs with them. */
    static void count(MessageDigest digest, List<Class<?>> classes) {
        for (Class<?> type : classes) {
            String file = "/" + type.getName().replace('.', '/') + ".class";
            try (InputStream in = CacheFolder.class.getResourceAsStream(file)) {
                digest.update(in.readAllBytes());
            } catch (IOException e) {
                throw new IllegalStateException("cannot read the program's own class " + type.getName(), e);
            }
        }
    }
}
