package fitworthy.engine;

import fitworthy.source.Leftovers;
import fitworthy.source.Standing;
import fitworthy.source.WholeFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.zip.CRC32;

/**
 * A folder for what need not be worked out twice, which only its owner may write. Links in its place or in it are not
 * followed. A file whose checksum is not as it
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
            Path file = folder.resolve(name);
            if (standing(file) != Standing.FILE) {
                return Optional.empty();
            }
            byte[] bytes = Files.readAllBytes(file);
            ByteBuffer content = ByteBuffer.wrap(bytes);
            if (content.getLong() != checksum(bytes, CHECKSUM_BYTES)) {
                return Optional.empty();
            }
            noteUse(file);
            return Optional.of(content.slice());
        } catch (IOException | RuntimeException e) {
            return Optional.empty();
        }
    }

    /** Keeps content under a name; where the folder cannot be written or trusted it is worked out again next time. */
    void keep(String name, byte[] content) {
        try {
            if (standing(folder) == Standing.NOTHING) {
                makeFolder();
            }
            if (trusted()) {
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

    /**
     * Takes away what was not used for the longest time.
     *
     * @param names what the files are called that may be taken away; all others are let be
     * @param most how many bytes may stay
     */
    void clear(Pattern names, long most) {
        List<Kept> kept = new ArrayList<>();
        try {
            if (!trusted()) {
                return;
            }
            Leftovers.clear(folder, names);
            try (DirectoryStream<Path> files = Files.newDirectoryStream(
                    folder, file -> names.matcher(file.getFileName().toString()).matches())) {
                for (Path file : files) {
                    if (standing(file) == Standing.FILE) {
                        kept.add(Kept.of(file));
                    }
                }
            }
            kept.sort(Comparator.comparing(Kept::unused));
            long bytes = 0;
            for (Kept file : kept) {
                bytes += file.bytes;
                if (bytes > most) {
                    Files.deleteIfExists(file.path);
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            // It is tried again the next time that something is kept.
        }
    }

    /** A file that was kept. @param unused since when nothing read it; a date to come is that of a clock set back */
    private record Kept(Path path, long bytes, Duration unused) {
        static Kept of(Path path) throws IOException {
            return new Kept(
                    path,
                    Files.size(path),
                    Duration.between(Files.getLastModifiedTime(path).toInstant(), Instant.now())
                            .abs());
        }
    }

    private static void noteUse(Path file) {
        try {
            Files.setLastModifiedTime(file, FileTime.from(Instant.now()));
        } catch (IOException e) {
            // It is taken away sooner.
        }
    }

    /** Why the folder is not used though something stands in its place, as a sentence; empty where there is no reason. */
    Optional<String> refused() {
        try {
            Standing standing = standing(folder);
            return standing == Standing.FOLDER || standing == Standing.NOTHING
                    ? Optional.empty()
                    : Optional.of("The cache folder " + folder + " is not used, so that runs take longer: "
                            + standing.words() + ". Name a folder with FITWORTHY_CACHE.");
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static Standing standing(Path path) throws IOException {
        return Standing.at(path, LinkOption.NOFOLLOW_LINKS);
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
        if (standing(folder) != Standing.FOLDER || !hasPermissions(folder)) {
            return standing(folder) == Standing.FOLDER;
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
