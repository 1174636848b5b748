package fitworthy.cli;

import fitworthy.shelf.Shelf;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Place;
import fitworthy.source.Standing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A folder whose sheets a person works on. */
final class WorkFolder {

    private static final String OPTION = "FOLDER";
    private static final String RIGHT = "a folder of sheets, such as scenarios";

    private WorkFolder() {}

    /**
     * Refuses a folder that is none, that does not let its files be read and written, or that holds what is read besides.
     *
     * @param shelf null where none was named
     * @param house null where none was named
     */
    static void check(Path folder, Path rules, Path shelf, Path house) throws FaultsException {
        try {
            Standing standing = Standing.at(folder);
            if (standing != Standing.FOLDER) {
                throw fault(folder, standing == Standing.NOTHING ? "there is no such folder" : standing.words(), RIGHT);
            }
            if (!Files.isReadable(folder) || !Files.isWritable(folder) || !Files.isExecutable(folder)) {
                throw fault(folder, "its files cannot be read and written by you", "chmod u+rwx " + folder);
            }
            Path real = folder.toRealPath();
            if (isWithin(real, rules)) {
                throw fault(folder, "this is of the rule book " + rules, RIGHT);
            }
            if (isWithin(real, shelf) || real.endsWith(Shelf.FOLDER)) {
                throw fault(folder, "this is a shelf, which sheets take from", "the folder of the sheets beside it");
            }
            if (house != null
                    && Files.exists(house)
                    && house.toRealPath().getParent().equals(real)) {
                throw fault(folder, "the house file " + house + " is in it", "the house file in another folder");
            }
        } catch (IOException e) {
            throw fault(folder, "it cannot be read: " + e.getMessage(), RIGHT);
        }
    }

    private static boolean isWithin(Path real, Path folder) throws IOException {
        return folder != null && Files.exists(folder) && real.startsWith(folder.toRealPath());
    }

    private static FaultsException fault(Path folder, String problem, String mend) {
        return new FaultsException(List.of(new Fault(Place.of(OPTION), folder.toString(), problem, mend)));
    }
}
