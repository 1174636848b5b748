package fitworthy.cli;

import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Place;
import fitworthy.source.Standing;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * The files that a command is told to write, looked at before anything is computed. None may stand where something is
 * that the command reads or writes besides, whatever name leads there.
 */
final class Outputs {

    private final List<Path> read;
    private final List<Path> books;
    private final Map<Path, String> taken = new LinkedHashMap<>();

    /**
     * @param read the files that the command reads; null for one that was not named
     * @param books the folders of rule books that it reads; null for one that was not named
     */
    Outputs(Collection<Path> read, Collection<Path> books) {
        this.read = read.stream().filter(Objects::nonNull).toList();
        this.books = books.stream().filter(Objects::nonNull).toList();
    }

    /**
     * Takes a file.
     *
     * @param option the option that names it
     * @param file null where the option was left out
     * @throws FaultsException where something else of the command stands there
     * @throws NotWritten where no file can stand there
     */
    Outputs take(String option, Path file) throws FaultsException, NotWritten {
        if (file == null) {
            return this;
        }
        try {
            Standing.checkWritable(file);
            for (Path input : read) {
                if (same(file, input)) {
                    throw refused(option, file, "is read by this command, and would be lost");
                }
            }
            for (Path book : books) {
                if (isOf(book, file)) {
                    throw refused(option, file, "belongs to the rule book " + book);
                }
            }
            for (Map.Entry<Path, String> other : taken.entrySet()) {
                if (same(file, other.getKey()) || real(file).equals(real(other.getKey()))) {
                    throw refused(option, file, "is the file of " + other.getValue() + " too");
                }
            }
        } catch (IOException e) {
            throw new NotWritten(file, e);
        }
        taken.put(file, option);
        return this;
    }

    /** The same for a file that must not be there yet, since what it holds cannot be made again. */
    Outputs takeNew(String option, Path file) throws FaultsException, NotWritten {
        take(option, file);
        if (file != null && Files.exists(file)) {
            throw refused(option, file, "is there already, and is not written over");
        }
        return this;
    }

    private static FaultsException refused(String option, Path file, String problem) {
        return new FaultsException(List.of(new Fault(Place.of(option), file.toString(), problem, "a file of its own")));
    }

    /** Whether two names lead to one file that is there. */
    private static boolean same(Path one, Path other) throws IOException {
        return Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other);
    }

    /** The path by which the disk knows a file, whether or not it is there yet. */
    private static Path real(Path file) throws IOException {
        return Files.exists(file)
                ? file.toRealPath()
                : file.toAbsolutePath().getParent().toRealPath().resolve(file.getFileName());
    }

    /** Whether a file is one of a book, by any name, or would be if it were there. */
    private static boolean isOf(Path book, Path file) throws IOException {
        if (!Files.isDirectory(book)) {
            return false;
        }
        if (real(file).startsWith(book.toRealPath())) {
            return true;
        }
        try (Stream<Path> pages = Files.walk(book, 2)) {
            for (Path page : pages.filter(Files::isRegularFile).toList()) {
                if (same(file, page)) {
                    return true;
                }
            }
            return false;
        } catch (UncheckedIOException e) {
            // A book that cannot be read is refused by its loader.
            return false;
        }
    }
}
