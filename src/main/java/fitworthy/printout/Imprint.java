package fitworthy.printout;

import fitworthy.advice.View;
import fitworthy.shelf.Shelf;
import fitworthy.shelf.Taken;
import fitworthy.source.Digests;
import java.time.Instant;
import java.util.HexFormat;

/**
 * What a printout was made from and when, so that it can be made again.
 *
 * @param sheetFile name of the sheet's file
 * @param sheetHash SHA-256 of its bytes, in hexadecimal
 * @param shelf what it takes from a shelf, and how that is known again; empty where nothing
 * @param software name and version of the program
 * @param printedAt when it was printed
 */
public record Imprint(String sheetFile, String sheetHash, String shelf, String software, Instant printedAt) {

    /** The imprint of this program. @param content the bytes of the sheet's file */
    public static Imprint of(String sheetFile, byte[] content, View.Read read, Shelf shelf, Instant printedAt) {
        return new Imprint(
                sheetFile,
                HexFormat.of().formatHex(Digests.sha256().digest(content)),
                taken(read, shelf),
                thisProgram(),
                printedAt);
    }

    private static String taken(View.Read read, Shelf shelf) {
        int taken = Taken.in(read.tree()).size();
        return taken == 0 ? "" : taken + (taken == 1 ? " thing" : " things") + ", content " + shelf.content();
    }

    /** Name and version of this program, from the manifest of its jar. */
    public static String thisProgram() {
        String version = Imprint.class.getPackage().getImplementationVersion();
        return "fitworthy " + (version == null ? "(not packaged)" : version);
    }
}
