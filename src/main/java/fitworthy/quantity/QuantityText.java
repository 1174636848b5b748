package fitworthy.quantity;

import fitworthy.source.Words;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    /** With a comma for the decimal point where it cannot stand between thousands. */
    public static final String WITH_COMMA = "(?:[0-9]{1,12},(?:[0-9]{1,2}|[0-9]{4,12})|0,[0-9]{3})";
    /** Spaces and a minus sign that look like the plain ones, as they come with copied text. */
    public static final String SPACE = "[\\s\\u00A0\\u2007\\u2009\\u202F]";

    public static final String MINUS = "[-\\u2212]";
    public static final String TOLERANCE = "(?:\\+/-|\\u00B1)";

    /** In none of them anything is printed alone. */
    private static final List<String> CUSTOMARY =
            List.of("lb", "in", "mi", "mph", "psi", "US gal", "imp gal", "lbf", "lb/in");

    /** The same by their size, put together once, since every figure of a sheet is looked up. */
    private static final Map<Dimension, Map<Double, String>> BY_SIZE = bySize();

    private static final Pattern IN_CUSTOMARY = Pattern.compile("[0-9.]+ (?:" + String.join("|", CUSTOMARY) + ")");

    private static final MathContext SHOWN = new MathContext(6, RoundingMode.HALF_UP);
    private static final Pattern SPACES = Pattern.compile(SPACE);
    private static final Pattern MINUSES = Pattern.compile(MINUS);
    private static final Pattern COMMA = Pattern.compile(WITH_COMMA);
    private static final String WRITTEN = "[0-9]{1,12}(?:[.,][0-9]{1,12})?";
    private static final Pattern QUANTITY = Pattern.compile("([-+]?" + WRITTEN
            + ")\\s*([^0-9\\s+\u00B1.,-][^+\u00B1]*?)?(?:\\s*" + TOLERANCE + "\\s*(" + WRITTEN + ")\\s*(.*?))?");
    /** More separators than a decimal point, or a space that separates. */
    private static final Pattern THOUSANDS =
            Pattern.compile("[-+]?[0-9]{1,3}(?: [0-9]{3}\\b|[.,][0-9]{3}(?=[.,][0-9])).*");

    /** A point behind which stand as many digits as between thousands. */
    private static final Pattern EITHER =
            Pattern.compile("([1-9][0-9]{0,2})\\.([0-9]{3})\\s*(kg|g|mm|lb)(?:\\s*" + TOLERANCE + ".*)?");

    /** Other words for what a sheet marks by 'about'. */
    private static final Pattern ROUGHLY =
            Pattern.compile("(?i)(?:ca|c|approx|approximately|circa|roughly|around|~)\\b?\\.?\\s*[0-9].*");

    /** Behind a whole number or alone, as on a tape in inches. */
    private static final Pattern FRACTION =
            Pattern.compile("(?:([0-9]{1,4})[ -])?([0-9]{1,2})/([1-9][0-9]?)\\s*([^0-9\\s].*)");

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
        String plain = (typed
                        ? text
                        : MINUSES.matcher(SPACES.matcher(text).replaceAll(" ")).replaceAll("-"))
                .strip();
        fraction(text, plain, dimension);
        Matcher matcher = QUANTITY.matcher(plain);
        if (!matcher.matches()) {
            throw new Unreadable(quoted(text)
                    + (THOUSANDS.matcher(plain).matches()
                            ? " separates thousands: write the number without, as in 1250 or 1250.5"
                            : " is not a quantity"
                                    + (ROUGHLY.matcher(plain).matches() ? ": write 'about' before a guess" : "")));
        }
        double value = number(text, matcher, 1);
        other(text, value, matcher, dimension);
        double size = size(text, "", matcher.group(2), dimension);
        String customary = customary(matcher.group(1), size, dimension);
        if (matcher.group(3) == null) {
            return Figure.of(value * size).writtenAs(customary);
        }
        double tolerance = number(text, matcher, 3);
        boolean share = dimension != Dimension.SHARE && UnitWords.size(Dimension.SHARE, matcher.group(4)) != null;
        return Figure.of(
                        value * size,
                        share
                                ? Math.abs(value) * size * tolerance / 100
                                : tolerance * size(text, ", after +/-,", matcher.group(4), dimension))
                .writtenAs(customary);
    }

    /** A recorded value where it is in such a unit, as the law or a plate says it; else empty. */
    public static String customary(String recorded) {
        return IN_CUSTOMARY.matcher(recorded).matches() ? recorded : "";
    }

    /** A number with the unit of the United States or the United Kingdom that it has; empty where it has another. */
    private static String customary(String number, double size, Dimension dimension) {
        String unit = BY_SIZE.get(dimension).get(size);
        return unit == null ? "" : number.replace(',', '.') + " " + unit;
    }

    private static Map<Dimension, Map<Double, String>> bySize() {
        Map<Dimension, Map<Double, String>> all = new EnumMap<>(Dimension.class);
        for (Dimension dimension : Dimension.values()) {
            Map<Double, String> units = new HashMap<>();
            CUSTOMARY.stream()
                    .filter(dimension.units()::containsKey)
                    .forEach(unit -> units.putIfAbsent(dimension.units().get(unit), unit));
            all.put(dimension, units);
        }
        return all;
    }

    /**
     * The two that may be meant by a mass or length that a person typed with three digits behind the point, as where a
     * point separates thousands: {@code 2000 kg or 2 kg}. Nobody weighs to the gram or measures to the micrometre.
     */
    public static Optional<String> eitherOf(String typed) {
        Matcher doubtful = EITHER.matcher(typed.strip());
        return doubtful.matches()
                ? Optional.of(doubtful.group(1) + doubtful.group(2) + " " + doubtful.group(3) + " or "
                        + new BigDecimal(doubtful.group(1) + "." + doubtful.group(2))
                                .stripTrailingZeros()
                                .toPlainString()
                        + " " + doubtful.group(3))
                : Optional.empty();
    }

    /** Tells what to write for a number with a fraction. */
    private static void fraction(String text, String plain, Dimension dimension) throws Unreadable {
        Matcher parts = FRACTION.matcher(plain);
        if (parts.matches() && UnitWords.size(dimension, parts.group(4)) != null) {
            double value = (parts.group(1) == null ? 0 : Double.parseDouble(parts.group(1)))
                    + Double.parseDouble(parts.group(2)) / Double.parseDouble(parts.group(3));
            throw new Unreadable(quoted(text) + " has a fraction: write "
                    + BigDecimal.valueOf(value)
                            .round(SHOWN)
                            .stripTrailingZeros()
                            .toPlainString() + " "
                    + parts.group(4));
        }
    }

    /** Tells what to write for a unit that no sheet has, and for one that stands behind the tolerance alone. */
    private static void other(String text, double value, Matcher quantity, Dimension dimension) throws Unreadable {
        String unit = quantity.group(2);
        String instead = unit == null || UnitWords.size(dimension, unit) != null
                ? null
                : OtherUnits.instead(value, unit, dimension);
        if (instead != null) {
            throw new Unreadable(quoted(text) + " has a unit that is not read here: write " + instead);
        }
        if (unit == null
                && quantity.group(3) != null
                && UnitWords.size(dimension, "") == null
                && UnitWords.size(dimension, quantity.group(4)) != null) {
            throw new Unreadable(quoted(text) + " has its unit behind the tolerance alone: write " + quantity.group(1)
                    + " " + quantity.group(4) + " +/- " + quantity.group(3) + " " + quantity.group(4));
        }
    }

    /** A number as written. @throws Unreadable where its comma may stand between thousands as well as for a point */
    private static double number(String text, Matcher quantity, int group) throws Unreadable {
        String written = quantity.group(group);
        String digits = written.replaceFirst("^[-+]", "");
        if (digits.contains(",") && !COMMA.matcher(digits).matches()) {
            String unit = quantity.group(group + 1) == null ? "" : " " + quantity.group(group + 1);
            throw new Unreadable(quoted(text) + " could be " + written.replace(",", "") + unit + " or "
                    + written.replace(',', '.') + unit + ": write the one that is meant");
        }
        return Double.parseDouble(written.replace(',', '.'));
    }

    /** A value from the unit used inside, written in the unit given with up to six digits and no more than it needs. */
    public static String shown(double value, String unit) {
        // In ten digits, as figures are compared: a binary fraction just below a tie is the tie.
        String digits = BigDecimal.valueOf(Figure.rounded(value / Dimension.size(unit)))
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
        Double size = UnitWords.size(dimension, given);
        if (size != null) {
            return size;
        }
        String shown = quoted(text) + where;
        if (given.isEmpty()) {
            throw new Unreadable(shown + " has no unit");
        }
        if (UnitWords.doubtful(given) != null) {
            throw new Unreadable(shown + " has a unit that could be either of two: write " + UnitWords.doubtful(given));
        }
        Dimension other = UnitWords.dimension(given);
        throw new Unreadable(
                other == null
                        ? shown + " has a unit that is not known"
                                + Words.suggestion(given, dimension.units().keySet())
                        : shown + " has a unit of " + Words.hyphenated(other.name()) + " where one of "
                                + Words.hyphenated(dimension.name()) + " belongs");
    }
}
