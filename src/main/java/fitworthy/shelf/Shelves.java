package fitworthy.shelf;

import fitworthy.source.Fault;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/** Which shelf sheets take from. Each is read once, when the first sheet asks for it. */
public final class Shelves {

    /** No sheet takes anything from a shelf. */
    public static final Shelves NONE = new Shelves(null, false);

    private static final String STANDARD_INPUT = "-";

    private final Path named;
    private final boolean beside;
    private final Map<Path, Shelf> read = new ConcurrentHashMap<>();

    private Shelves(Path named, boolean beside) {
        this.named = named;
        this.beside = beside;
    }

    /** One folder for all sheets. */
    public static Shelves in(Path folder) {
        return new Shelves(folder, false);
    }

    /** The folder beside each sheet's file; none for the standard input. */
    public static Shelves beside() {
        return new Shelves(null, true);
    }

    /** The one for all sheets, where there is one. */
    public Optional<Shelf> named() {
        return Optional.ofNullable(named).map(this::read);
    }

    /** The shelf of the sheets in a file, {@code -} for the standard input. */
    public Shelf of(String file) {
        if (named != null) {
            return read(named);
        }
        Path folder = beside && !file.equals(STANDARD_INPUT) ? Path.of(file).resolveSibling(Shelf.FOLDER) : null;
        return folder != null && Files.isDirectory(folder) ? read(folder) : Shelf.NONE;
    }

    private Shelf read(Path folder) {
        return read.computeIfAbsent(folder, ShelfReader::read);
    }

    /** The files of the shelves of these files of sheets. */
    public List<Path> files(Collection<Path> sheets) {
        return sheets.stream()
                .map(sheet -> of(sheet.toString()))
                .distinct()
                .flatMap(shelf -> shelf.files().stream())
                .toList();
    }

    /**
     * A sheet with what it takes from its shelf written out in its place.
     *
     * @param sheet null where it could not be read
     * @param faults gets what is wrong with the shelf, where the sheet asks for it, and what the shelf does not have
     * @return the sheet itself where it takes nothing; null where its shelf cannot be used
     */
    public Node.Mapping expanded(Node.Mapping sheet, List<Fault> faults) {
        if (sheet == null || !Expansion.isAsked(sheet)) {
            return sheet;
        }
        Shelf shelf = of(sheet.place().file());
        faults.addAll(shelf.faults());
        return shelf.faults().isEmpty() ? new Expansion(shelf, faults).of(sheet) : null;
    }

    /** The field that the name of a thing from the shelf stands under once others stand beside it. */
    public static Optional<String> wordField(NodePath path) {
        List<NodePath.Step> steps = path.steps();
        boolean isItem = steps.size() == 2 && steps.get(1) instanceof NodePath.Item;
        return !steps.isEmpty()
                        && (isItem || steps.size() == 1)
                        && Stream.of(Kind.values()).anyMatch(kind -> kind.inSheet()
                                .equals(steps.get(0).toString()))
                ? Optional.of(Expansion.FROM)
                : Optional.empty();
    }
}
