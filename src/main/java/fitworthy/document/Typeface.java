package fitworthy.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** How much room text takes in the typeface of the PDF. */
final class Typeface {

    private static final String REGULAR = "/liberation/LiberationSans-Regular.ttf";
    private static final String BOLD = "/liberation/LiberationSans-Bold.ttf";
    /** What a letter counts that the typeface has not, as a share of its size. */
    private static final double OTHERS = 1.1;

    private static final Typeface[] BY_WEIGHT = {new Typeface(REGULAR), new Typeface(BOLD)};

    private final TrueTypeFont outlines;
    private final CmapLookup glyphs;
    private final double unitsPerEm;

    private Typeface(String name) {
        try (InputStream in = Typeface.class.getResourceAsStream(name)) {
            outlines = new TTFParser().parse(new RandomAccessReadBuffer(in));
            glyphs = outlines.getUnicodeCmapLookup();
            unitsPerEm = outlines.getUnitsPerEm();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Typeface regular() {
        return BY_WEIGHT[0];
    }

    static Typeface bold() {
        return BY_WEIGHT[1];
    }

    /** In points. @param size of the letters in points */
    double width(String text, double size) {
        return text.codePoints().mapToDouble(this::width).sum() * size;
    }

    private double width(int letter) {
        try {
            int glyph = glyphs.getGlyphId(letter);
            return glyph == 0 ? OTHERS : outlines.getAdvanceWidth(glyph) / unitsPerEm;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** In how many lines text stands in a column. @param room the width of the column in points */
    int lines(String text, double size, double room) {
        double space = width(' ') * size;
        int lines = 1;
        double used = 0;
        for (String word : words(text)) {
            double width = width(word, size);
            if (used > 0 && used + space + width > room) {
                lines++;
                used = 0;
            }
            used += (used > 0 ? space : 0) + width;
            // A word that is longer than a line is broken.
            while (used > room) {
                lines++;
                used -= room;
            }
        }
        return lines;
    }

    /** A line may be broken at spaces and behind hyphens. */
    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        for (String word : text.strip().split("\\s+")) {
            words.add(word);
        }
        return words;
    }
}
