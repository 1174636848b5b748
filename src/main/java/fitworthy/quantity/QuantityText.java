package fitworthy.quantity;

import fitworthy.source.Words;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads and writes quantities as the trade does: {@code 650 mm}, {@code 2.4 t}, {@code 85 kg +/- 4 kg}, {@code 90 %}.
 */
public final class QuantityText {

    /** A text that is no quantity of the kind wanted; the message says why. */
    public static final class Unreadable extends Exception {
        public Unreadable(String message) {
            super(message);
        }
    }

    public static final int LONGEST = 100;
    public static final String NUMBER = "[0-9]{1,12}(?:\\.[0-9]{1,12})?";
    /** Spaces and a minus sign that look like the plain ones, as they come with copied text. */
    public static final String SPACE = "[\\s\\u00A0\\u2007\\u2009\\u202F]";

    public static final String MINUS = "[-\\u2212]";
    public static final String TOLERANCE = "(?:\\+/-|\\u00B1)";

    private static final MathContext SHOWN = new MathContext(6, RoundingMode.HALF_UP);
    private static final Pattern SPACES = Pattern.compile(SPACE);
    private static final Pattern MINUSES = Pattern.compile(MINUS);
    private static final Pattern QUANTITY = Pattern.compile("([-+]?" + NUMBER + ")\\s*([^0-9\\s+\u00B1-][^+\u00B1]*?)?"
            + "(?:\\s*" + TOLERANCE + "\\s*(" + NUMBER + ")\\s*(.*?))?");

    private QuantityText() {}

    /**
     * Reads a quantity of the dimension wanted.
     *
     * @return its value and tolerance in the unit used inside
     * @throws Unreadable with what is wrong, in words that follow a field's name
     */
    public static Figure parse(String text, Dimension dimension) throws Unreadable {
        if (text.length() > LONGEST) {
            throw new Unreadable(quoted(text) + " is too long for a quantity");
        }
        boolean typed = text.chars().allMatch(letter -> letter >= ' ' && letter <= '~');
        Matcher matcher = QUANTITY.matcher((typed
                        ? text
                        : MINUSES.matcher(SPACES.matcher(text).replaceAll(" ")).replaceAll("-"))
                .strip());
        if (!matcher.matches()) {
            throw new Unreadable(quoted(text) + " is not a quantity");
        }
        double size = size(text, "", matcher.group(2), dimension);
        double value = Double.parseDouble(matcher.group(1));
        if (matcher.group(3) == null) {
            return Figure.of(value * size);
        }
        double tolerance = Double.parseDouble(matcher.group(3));
        boolean share = "%".equals(matcher.group(4)) && dimension != Dimension.SHARE;
        return Figure.of(
                value * size,
                share
                        ? Math.abs(value) * size * tolerance / 100
                        : tolerance * size(text, ", after +/-,", matcher.group(4), dimension));
    }

    /** A value from the unit used inside, written in the unit given with up to six digits and no more than it needs. */
    public static String shown(double value, String unit) {
        String digits = BigDecimal.valueOf(value / Dimension.size(unit))
                .round(SHOWN)
                .stripTrailingZeros()
                .toPlainString();
        return unit.isEmpty() ? digits : digits + " " + unit;
    }

    private static String quoted(String text) {
        return "'" + Words.shortened(text, 60) + "'";
    }

    private static double size(String text, String where, String unit, Dimension dimension) throws Unreadable {
        String given = unit == null ? "" : unit;
        Double size = dimension.units().get(given);
        if (size != null) {
            return size;
        }
        String shown = quoted(text) + where;
        if (given.isEmpty()) {
            throw new Unreadable(shown + " has no unit");
        }
        throw new Unreadable(
                Dimension.ofUnit(given) == null
                        ? shown + " has a unit that is not known"
                                + Words.suggestion(given, dimension.units().keySet())
                        : shown + " has a unit of "
                                + Words.hyphenated(Dimension.ofUnit(given).name()) + " where one of "
                                + Words.hyphenated(dimension.name()) + " belongs");
    }
}
