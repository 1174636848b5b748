package fitworthy.batch;

import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.InputFile;
import fitworthy.source.Place;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * Sheets one after the other, none of them read before its turn: those of a folder by name, those of a file of lines in
 * the order of the lines.
 */
public final class Inputs implements Iterator<Input>, Closeable {

    private final List<Path> files;
    private final Iterator<Path> left;
    private final InputStream standardInput;
    private Path open;
    private LineReader lines;
    private Input next;

    private Inputs(List<Path> files, InputStream standardInput) {
        this.files = files;
        this.left = files.iterator();
        this.standardInput = standardInput;
    }

    /**
     * The sheets of folders and files. A file whose name ends like that of a sheet is one sheet, and any other, or
     * {@code -} for the standard input, holds a sheet in JSON on each line.
     *
     * @throws FaultsException where one of them is no file or a folder holds no sheet
     */
    public static Inputs of(List<Path> given, InputStream standardInput) throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        List<Path> files = new ArrayList<>();
        for (Path each : given) {
            if (Files.isDirectory(each)) {
                files.addAll(sheets(each, faults));
            } else if (each.equals(InputFile.STANDARD_INPUT) || InputFile.check(each, faults)) {
                files.add(each);
            }
        }
        if (!faults.isEmpty()) {
            throw new FaultsException(faults);
        }
        return new Inputs(files, standardInput);
    }

    private static List<Path> sheets(Path folder, List<Fault> faults) {
        try (Stream<Path> all = Files.list(folder)) {
            List<Path> sheets = all.filter(file -> isOneSheet(file) && !Files.isDirectory(file))
                    .sorted()
                    .toList();
            if (sheets.isEmpty()) {
                faults.add(new Fault(
                        Place.of(folder.toString()),
                        "",
                        "there is no sheet in this folder",
                        "a folder of *.yaml, *.yml or *.json"));
            }
            return sheets;
        } catch (IOException e) {
            faults.add(
                    new Fault(Place.of(folder.toString()), "", "the folder cannot be read", "check its permissions"));
            return List.of();
        }
    }

    private static boolean isOneSheet(Path file) {
        return file.toString().matches(".*\\.(yaml|yml|json)");
    }

    /** The files that are read; for the standard input the system's name of it, which may lead to one. */
    public List<Path> files() {
        return files.stream().map(InputFile::standing).toList();
    }

    /** How many sheets there are; unknown where a file holds many. */
    public OptionalInt count() {
        return files.stream().allMatch(Inputs::isOneSheet) ? OptionalInt.of(files.size()) : OptionalInt.empty();
    }

    @Override
    public boolean hasNext() {
        try {
            while (next == null && (lines != null || left.hasNext())) {
                if (lines == null) {
                    open(left.next());
                } else {
                    line();
                }
            }
            return next != null;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void open(Path file) throws IOException {
        if (isOneSheet(file)) {
            next = new Input(Place.of(file.toString()), null);
        } else {
            open = file;
            lines = new LineReader(
                    file.equals(InputFile.STANDARD_INPUT) ? standardInput : InputFile.open(file),
                    InputFile.LARGEST_BYTES + 1);
        }
    }

    /** Takes the next line; empty ones are passed over but counted. */
    private void line() throws IOException {
        byte[] line = lines.next();
        if (line == null) {
            close();
        } else if (!new String(line, StandardCharsets.ISO_8859_1).isBlank()) {
            next = new Input(Place.of(open.toString()).onLine(lines.number()), line);
        }
    }

    @Override
    public Input next() {
        if (!hasNext()) {
            throw new NoSuchElementException();
        }
        Input now = next;
        next = null;
        return now;
    }

    @Override
    public void close() throws IOException {
        if (lines != null) {
            lines.close();
            lines = null;
        }
    }
}
