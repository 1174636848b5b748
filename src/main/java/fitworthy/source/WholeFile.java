package fitworthy.source;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/** A file that is written whole or not at all: whatever goes wrong, what stood there before still stands. */
public final class WholeFile implements Closeable {

    /** What is taken away where the run ends meanwhile; a file's own {@code deleteOnExit} would be kept as long as that lasts. */
    private static final Set<Path> UNFINISHED = ConcurrentHashMap.newKeySet();

    static {
        Runtime.getRuntime()
                .addShutdownHook(new Thread(
                        () -> UNFINISHED.forEach(file -> file.toFile().delete())));
    }

    private final Path target;
    private final Path unfinished;
    private final FileChannel channel;
    private final OutputStream stream;

    /** Begins the file beside what it is to replace; until it is finished that stands. A link stays one. */
    public WholeFile(Path file) throws IOException {
        this(target(file), Set.of());
    }

    private static Path target(Path file) throws IOException {
        Standing.checkWritable(file);
        return Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
    }

    private WholeFile(Path target, Set<PosixFilePermission> permissions) throws IOException {
        this.target = target;
        String name = target.getFileName().toString();
        Leftovers.clear(target.getParent(), Pattern.compile(Pattern.quote(name)));
        unfinished = target.resolveSibling(Leftovers.name(name));
        channel = FileChannel.open(
                unfinished,
                Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE),
                permissions.isEmpty()
                        ? new FileAttribute<?>[0]
                        : new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(permissions)});
        UNFINISHED.add(unfinished);
        stream = new BufferedOutputStream(Channels.newOutputStream(channel));
    }

    /**
     * Puts content in place of what a file holds now, once all of it is safely on the disk.
     *
     * @throws IOException where that fails, or where something stands there that is no file; the file is as it was, and nothing is left beside it
     */
    public static void write(Path file, byte[] content) throws IOException {
        try (WholeFile whole = new WholeFile(file)) {
            whole.write(content);
            whole.finish();
        }
    }

    /**
     * The same where the file still holds what was read of it. It is looked at last of all, so that what another
     * program writes meanwhile is not lost.
     *
     * @return false where it holds something else, which then still stands
     */
    public static boolean exchange(Path file, byte[] read, byte[] content) throws IOException {
        try (WholeFile whole = new WholeFile(file)) {
            whole.write(content);
            whole.force();
            if (!Arrays.equals(read, InputFile.bytes(whole.target, new ArrayList<>()))) {
                return false;
            }
            Files.move(whole.unfinished, whole.target, StandardCopyOption.ATOMIC_MOVE);
            return true;
        }
    }

    /**
     * The same for a file that is its owner's alone, where the disk knows of owners. A link in its place is replaced,
     * since it would lead what is kept somewhere else.
     */
    public static void writePrivately(Path file, byte[] content) throws IOException {
        Path target = file.toAbsolutePath();
        boolean posix = Files.getFileStore(target.getParent()).supportsFileAttributeView("posix");
        try (WholeFile whole = new WholeFile(target, posix ? PosixFilePermissions.fromString("rw-------") : Set.of())) {
            whole.write(content);
            whole.finish();
        }
    }

    /**
     * Writes a file that is not there yet.
     *
     * @throws java.nio.file.FileAlreadyExistsException where something stands in its place, which is left as it is
     */
    public static void writeNew(Path file, byte[] content) throws IOException {
        try (WholeFile whole = new WholeFile(file.toAbsolutePath(), Set.of())) {
            whole.write(content);
            whole.force();
            // Without a word about replacing, so that what has come there meanwhile stays.
            Files.move(whole.unfinished, whole.target);
        }
    }

    public void write(byte[] content) throws IOException {
        stream.write(content);
    }

    /** Puts it in place of what the file holds now, once all of it is safely on the disk. */
    public void finish() throws IOException {
        force();
        Files.move(unfinished, target, StandardCopyOption.ATOMIC_MOVE);
    }

    /** Puts all of it on the disk, beside what still stands; nothing more can be written then. */
    public void force() throws IOException {
        if (channel.isOpen()) {
            stream.flush();
            channel.force(true);
            channel.close();
        }
    }

    /** Leaves nothing beside the file. */
    @Override
    public void close() throws IOException {
        channel.close();
        Files.deleteIfExists(unfinished);
        UNFINISHED.remove(unfinished);
    }
}
