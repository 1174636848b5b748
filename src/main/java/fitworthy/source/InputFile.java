package fitworthy.source;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The one place where files of users and of rule books are read: files alone, in bounded memory. */
public final class InputFile {

    public static final int LARGEST_BYTES = 1 << 20;

    private InputFile() {}

    /** Whether a file stands there; a fault where it does not. */
    public static boolean check(Path path, List<Fault> faults) {
        try {
            Standing standing = Standing.at(path);
            if (standing != Standing.FILE) {
                faults.add(new Fault(
                        Place.of(path.toString()),
                        "",
                        standing.words(),
                        standing == Standing.NOTHING
                                ? "check the spelling of the path"
                                : "a file of text, such as scenarios/touring.yaml"));
            }
            return standing == Standing.FILE;
        } catch (IOException e) {
            faults.add(unreadable(path, e));
            return false;
        }
    }

    private static Fault unreadable(Path path, IOException cause) {
        return new Fault(
                Place.of(path.toString()),
                "",
                "the file cannot be read: " + cause.getMessage(),
                "check its permissions");
    }

    /** A file to be read from its beginning. @throws IOException where it cannot be, or something else stands there */
    public static InputStream open(Path path) throws IOException {
        Standing standing = Standing.at(path);
        if (standing != Standing.FILE) {
            throw new FileSystemException(path.toString(), null, standing.words());
        }
        return Files.newInputStream(path);
    }

    /** The bytes of a file, no more than one above the most that it may have; null with a fault where it has none. */
    public static byte[] bytes(Path path, List<Fault> faults) {
        if (!check(path, faults)) {
            return null;
        }
        try (InputStream in = Files.newInputStream(path)) {
            return in.readNBytes(LARGEST_BYTES + 1);
        } catch (IOException e) {
            faults.add(unreadable(path, e));
            return null;
        }
    }

    /** The whole file as UTF-8 text, or null with a fault where it cannot be had. */
    public static String text(Path path, List<Fault> faults) {
        return text(bytes(path, faults), Place.of(path.toString()), faults);
    }

    /**
     * The same for a page of a rule book or a file of a shelf. One behind a link that leads out of its folder is refused
     * unread, so that nothing of what it leads to can stand in a message.
     */
    public static String page(Path folder, Path page, List<Fault> faults) {
        if (leadsOut(folder, page)) {
            faults.add(new Fault(
                    Place.of(page.toString()),
                    "",
                    "a link leads from here out of its folder",
                    "put the file itself there"));
            return null;
        }
        return text(page, faults);
    }

    private static boolean leadsOut(Path folder, Path page) {
        try {
            Path inside = folder.toRealPath();
            return !page.getParent().toRealPath().startsWith(inside)
                    || !page.toRealPath().startsWith(inside);
        } catch (IOException e) {
            // Nothing stands at its end; the reader says so.
            return false;
        }
    }

    /**
     * Bytes as UTF-8 text, or null with a fault where they are too many or are none.
     *
     * @param bytes null where they could not be had
     * @param place the file, with the line where they are one of its lines
     */
    public static String text(byte[] bytes, Place place, List<Fault> faults) {
        if (bytes == null) {
            return null;
        }
        if (bytes.length > LARGEST_BYTES) {
            faults.add(new Fault(
                    place,
                    "",
                    "the " + (place.line() == 0 ? "file" : "line") + " is larger than " + (LARGEST_BYTES >> 20)
                            + " MiB",
                    "split it, or remove what does not belong in it"));
            return null;
        }
        CharBuffer text = CharBuffer.allocate(bytes.length);
        CoderResult result = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes), text, true);
        String read = text.flip().toString();
        if (result.isError()) {
            faults.add(new Fault(place.after(read), "", "the file is not UTF-8 text from here on", "save it as UTF-8"));
            return null;
        }
        return read.startsWith("\uFEFF") ? read.substring(1) : read;
    }
}
