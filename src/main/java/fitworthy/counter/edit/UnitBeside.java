package fitworthy.counter.edit;

import fitworthy.quantity.Mark;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The unit that stands beside a box, for a figure or its tolerance that was typed without any. */
public final class UnitBeside {

    private static final Pattern FIGURE =
            Pattern.compile("([-+\\u2212]?[0-9]+(?:[.,][0-9]+)?)(\\s*[^\\s0-9+\u00b1][^+\u00b1]*?)?"
                    + "(?:\\s*(?:\\+/-|\u00b1)\\s*([0-9]+(?:[.,][0-9]+)?)(\\s*\\S+)?)?");

    private UnitBeside() {}

    /**
     * A figure as a sheet writes it; a mark before it stays. What was typed with other units than the one beside the box,
     * or is no figure, stays as it was typed.
     *
     * @param unit beside the box; empty where none is
     */
    public static String of(String unit, String typed) {
        Mark.Marked read = Mark.read(typed.strip());
        return read.mark().isGuess() && !read.text().isEmpty()
                ? read.mark().before(bare(unit, read.text().strip()))
                : bare(unit, typed.strip());
    }

    private static String bare(String unit, String text) {
        Matcher figure = FIGURE.matcher(text);
        if (unit.isEmpty() || !figure.matches() || !isBeside(unit, figure.group(2))) {
            return text;
        }
        String value = figure.group(1) + " " + unit;
        String off = figure.group(4);
        if (figure.group(3) == null) {
            return value;
        }
        if (off != null && off.strip().equals("%")) {
            return value + " +/- " + figure.group(3) + "%";
        }
        return isBeside(unit, off) ? value + " +/- " + figure.group(3) + " " + unit : text;
    }

    /** Whether it is the one beside the box, which it is where none was typed. */
    private static boolean isBeside(String unit, String typed) {
        return typed == null || typed.strip().equals(unit);
    }
}
