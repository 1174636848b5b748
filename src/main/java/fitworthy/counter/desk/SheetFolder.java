package fitworthy.counter.desk;

import fitworthy.source.Leftovers;
import fitworthy.source.WholeFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The sheets of one folder: files of text that lie in it themselves. What is elsewhere, or behind a link, is none of them. */
public final class SheetFolder {

    /** What a sheet's file may be called: no way to another folder, nothing hidden. */
    private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} ,()+_.-]{0,99}\\.(yaml|yml|json)");

    /** No sheet takes so long to write. */
    private static final Duration WRITTEN = Duration.ofSeconds(10);

    private final Path folder;

    public SheetFolder(Path folder) {
        this.folder = folder;
    }

    public Path path() {
        return folder;
    }

    /** Takes away what a killed run had begun to write. */
    public void clearUnfinished() {
        Leftovers.clear(folder, NAME, WRITTEN);
    }

    /** The names of their files, in order. */
    public List<String> names() {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> find(name).isPresent())
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The file of a sheet; empty where there is none of this name. */
    public Optional<Path> find(String name) {
        return place(name).filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS));
    }

    /** Where a sheet of this name stands or would; empty where no sheet can be called so. */
    public Optional<Path> place(String name) {
        return NAME.matcher(name).matches() ? Optional.of(folder.resolve(name)) : Optional.empty();
    }

    /**
     * Writes a new sheet.
     *
     * @param file as {@link #place} has it
     * @return whether it was written; not where something of this name stands there, which is left as it is
     */
    public boolean add(Path file, byte[] content) {
        try {
            WholeFile.writeNew(file, content);
            return true;
        } catch (FileAlreadyExistsException e) {
            return false;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
