package fitworthy.printout.picture;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;

/** How much room text takes, and text cut to the room there is. */
final class Lettering {

    /** Marks set on one letter; more of them would climb into the lines above and below. */
    private static final int MOST_MARKS = 2;

    private static final String CUT = "...";

    private Lettering() {}

    /**
     * Width of a line, in the unit of {@code size}. Which typeface a reader has is not known, so letters count as wide
     * as in the widest of the usual sans-serif ones, and what is not Latin as a square.
     */
    static double width(String text, double size) {
        return text.codePoints().mapToDouble(Lettering::width).sum() * size;
    }

    private static double width(int letter) {
        if (mark(letter)) {
            return 0;
        }
        if (letter > 0x24F) {
            return 1.1;
        }
        if ("ijl|!'.,:;I ".indexOf(letter) >= 0) {
            return 0.34;
        }
        if ("frt()[]/-".indexOf(letter) >= 0) {
            return 0.42;
        }
        if ("mwMW%@".indexOf(letter) >= 0) {
            return 1;
        }
        return Character.isUpperCase(letter) ? 0.76 : 0.64;
    }

    /**
     * Text on one line that an XML document can hold, without the characters that turn the direction of what follows.
     */
    static String clean(String text) {
        StringBuilder clean = new StringBuilder();
        int marks = 0;
        for (int letter :
                Normalizer.normalize(text, Normalizer.Form.NFC).codePoints().toArray()) {
            int type = Character.getType(letter);
            boolean turns = letter == 0x061C
                    || letter == 0x200E
                    || letter == 0x200F
                    || letter >= 0x202A && letter <= 0x202E
                    || letter >= 0x2066 && letter <= 0x2069;
            marks = mark(letter) ? marks + 1 : 0;
            if (type == Character.CONTROL
                    || type == Character.LINE_SEPARATOR
                    || type == Character.PARAGRAPH_SEPARATOR) {
                clean.append(' ');
            } else if (!turns && marks <= MOST_MARKS && type != Character.SURROGATE && (letter & 0xFFFE) != 0xFFFE) {
                clean.appendCodePoint(letter);
            }
        }
        return clean.toString();
    }

    private static boolean mark(int letter) {
        int type = Character.getType(letter);
        return type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK || letter == 0x200D;
    }

    /** The text, cut where it would be wider than {@code width}. */
    static String fitted(String text, double size, double width) {
        String clean = clean(text).strip();
        if (width(clean, size) <= width) {
            return clean;
        }
        int[] letters = clean.codePoints().toArray();
        int kept = letters.length;
        while (kept > 0 && width(new String(letters, 0, kept) + CUT, size) > width) {
            kept--;
        }
        return new String(letters, 0, kept).strip() + CUT;
    }

    /** The text in lines no wider than {@code width}; a longer word is broken. */
    static List<String> lines(String text, double size, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : clean(text).strip().split(" +")) {
            if (!line.isEmpty() && width(line + " " + word, size) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ");
            for (int letter : word.codePoints().toArray()) {
                if (width(line + Character.toString(letter), size) > width && !line.isEmpty()) {
                    lines.add(line.toString());
                    line.setLength(0);
                }
                line.appendCodePoint(letter);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    /** A name for running text, where a very long one would drown the rest. */
    static String named(String name) {
        return fitted(name, 1, 30);
    }
}
