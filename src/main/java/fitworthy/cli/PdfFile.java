package fitworthy.cli;

import fitworthy.document.PdfLayout;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;

/** A PDF that a command was told to write. */
final class PdfFile {

    /** How one is laid out. */
    interface Layout {
        PdfLayout made() throws PdfLayout.TooLarge;
    }

    private PdfFile() {}

    /**
     * The bytes of one; says on the error stream which letters it lacks.
     *
     * @throws NotWritten where it takes more memory than there is
     */
    static byte[] bytes(Path file, PrintWriter err, String others, Layout layout) throws NotWritten {
        try {
            PdfLayout made = layout.made();
            if (!made.lacking().isEmpty()) {
                err.println("The PDF has no letters for " + made.lacking() + " and shows \uFFFD in their place; "
                        + others + ".");
            }
            return made.bytes();
        } catch (PdfLayout.TooLarge e) {
            throw new NotWritten(file, new IOException(e.getMessage(), e));
        }
    }
}
