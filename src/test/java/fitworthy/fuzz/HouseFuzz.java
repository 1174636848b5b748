package fitworthy.fuzz;

import fitworthy.Books;
import fitworthy.book.House;
import fitworthy.book.HouseReader;
import fitworthy.shelf.Shelves;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.InputFile;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Whatever bytes are given as a house file, the touring sheet gets advice by it, or the file's faults are told. */
public final class HouseFuzz {

    private static final Path SHEET = Path.of("scenarios", "touring.yaml");

    private HouseFuzz() {}

    /** The book is loaded before the first input is timed. */
    public static void fuzzerInitialize() throws IOException, FaultsException {
        SheetFuzz.fuzzerInitialize();
        advised("shop: Saltbush Fit-out".getBytes(StandardCharsets.UTF_8));
    }

    public static void fuzzerTestOneInput(byte[] data) throws IOException, FaultsException {
        long began = SheetFuzz.processorNanos();
        advised(data);
        SheetFuzz.inTime(began);
    }

    /** @return whether the house file is right */
    public static boolean advised(byte[] data) throws IOException, FaultsException {
        List<Fault> faults = new ArrayList<>();
        House house;
        try {
            String text = InputFile.text(data, Place.of("house"), faults);
            Node.Mapping root = NodeReader.read("house", text, faults);
            FaultsException.refuse(root == null ? faults : List.of());
            house = HouseReader.read(root, "house", text, Books.shipped(), faults);
        } catch (FaultsException e) {
            SheetFuzz.told(e.faults());
            return false;
        }
        List<Fault> none = new ArrayList<>();
        Node.Mapping sheet = NodeReader.read(SHEET, none);
        if (!SheetFuzz.advised(Books.engine().with(house), Shelves.beside(), sheet, none)) {
            throw new IllegalStateException("a house file that was read stops a sheet");
        }
        return true;
    }
}
