package fitworthy.fuzz;

import fitworthy.Books;
import fitworthy.shelf.Kind;
import fitworthy.shelf.Shelf;
import fitworthy.shelf.ShelfReader;
import fitworthy.shelf.Shelves;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Whatever bytes stand in the file of a shelf, a sheet that takes everything from it gets advice, or the faults of either
 * are told. Of vehicles and trailers, of which a sheet has one, the first is taken.
 */
public final class ShelfFuzz {

    private static final Place NOWHERE = Place.of("sheet");

    private static Path folder;

    private ShelfFuzz() {}

    /** The book is loaded before the first input is timed. */
    public static void fuzzerInitialize() throws IOException, FaultsException {
        SheetFuzz.fuzzerInitialize();
        taken(Files.readAllBytes(Path.of("scenarios", "shelf", "vehicles.yaml")));
    }

    public static void fuzzerTestOneInput(byte[] data) throws IOException, FaultsException {
        long began = SheetFuzz.processorNanos();
        taken(data);
        SheetFuzz.inTime(began);
    }

    /** @return whether advice was given */
    public static synchronized boolean taken(byte[] data) throws IOException, FaultsException {
        if (folder == null) {
            folder = Files.createTempDirectory("fuzzed-shelf");
        }
        Files.write(folder.resolve("things.yaml"), data);
        Shelf shelf = ShelfReader.readAndChecked(folder);
        if (!shelf.faults().isEmpty()) {
            SheetFuzz.told(shelf.faults());
        }
        Node.Mapping sheet = NodeReader.read(Books.RULES.resolve("plain-sheet.yaml"), new ArrayList<>());
        for (Map.Entry<Kind, Map<String, Node.Mapping>> kind : shelf.things().entrySet()) {
            Stream<Node> names = kind.getValue().keySet().stream().map(name -> new Node.Scalar(NOWHERE, name, false));
            boolean isOne = kind.getKey() == Kind.VEHICLES || kind.getKey() == Kind.TRAILERS;
            sheet = sheet.with(
                    kind.getKey().inSheet(),
                    isOne ? names.findFirst().orElseThrow() : new Node.Listing(NOWHERE, names.toList()));
        }
        return SheetFuzz.advised(Books.engine(), Shelves.in(folder), sheet, new ArrayList<>());
    }
}
