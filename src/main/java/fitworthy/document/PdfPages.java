package fitworthy.document;

import com.openhtmltopdf.pdfboxout.PageSupplier;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * The pages of the PDF, each tidied when the next is begun. The renderer marks a background behind every box, to be
 * left out of reading, though most have none; what describes these marks took more memory than all else drawn.
 */
final class PdfPages implements PageSupplier {
    /** A mark around nothing. No text looks like it: one with a line's end in it is written in hexadecimal. */
    private static final Pattern EMPTY = Pattern.compile("/Artifact /(\\w+) BDC\nEMC\n");

    private PDPage last;

    @Override
    public PDPage requestPage(PDDocument document, float width, float height, int number, int shadow) {
        if (last != null) {
            tidy();
        }
        last = new PDPage(new PDRectangle(width, height));
        document.addPage(last);
        return last;
    }

    /** Drops empty marks from the last page; what describes the others is written with the page. */
    void tidy() {
        COSDictionary marks = last.getResources().getCOSObject().getCOSDictionary(COSName.PROPERTIES);
        COSStream content = last.getCOSObject().getCOSStream(COSName.CONTENTS);
        try {
            String drawn;
            try (InputStream in = content.createInputStream()) {
                drawn = new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
            }
            String tidy = EMPTY.matcher(drawn).replaceAll(mark -> {
                marks.removeItem(COSName.getPDFName(mark.group(1)));
                return "";
            });
            try (OutputStream out = content.createOutputStream(COSName.FLATE_DECODE)) {
                out.write(tidy.getBytes(StandardCharsets.ISO_8859_1));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        marks.getValues().forEach(mark -> mark.setDirect(true));
    }
}
