package fitworthy.sheet;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The nominal dimensions that a size on a sidewall gives. A fitted tyre differs a little from them with its make, its
 * rim and its wear.
 *
 * @param width section width, m
 * @param rim rim diameter, m
 * @param height section height as a share of the width; absent where the size gives the diameter or neither
 * @param diameter overall diameter, m; absent for a numeric size such as 7.50R16, which does not name its height
 */
public record TyreSize(double width, double rim, OptionalDouble height, OptionalDouble diameter) {

    private static final double INCH = 0.0254;
    private static final String RIM = "\\s*(?:ZR|R|D|B|-)\\s*([12]\\d(?:\\.5)?)\\s*(?:C|LT)?";
    /**
     * 265/65R17, LT265/65R17, P265/65R17, 265/65 R 17 C: width in mm, height in per cent of the width, rim in inches.
     */
    private static final Pattern METRIC =
            Pattern.compile("(?:P|LT)?\\s*([1-9]\\d{2})\\s*/\\s*([2-9]\\d|1[0-2]\\d)" + RIM);
    /** 33x12.50R15, 35x12.5R17LT: diameter, width and rim in inches. */
    private static final Pattern INCHES =
            Pattern.compile("([2-9]\\d(?:\\.\\d{1,2})?)\\s*[xX]\\s*([1-9]\\d?(?:\\.\\d{1,2})?)" + RIM);
    /** 7.50R16: width and rim in inches. */
    private static final Pattern NUMERIC = Pattern.compile("([1-9]\\d?\\.\\d{1,2})" + RIM);

    /**
     * Reads a size. A metric one has the diameter {@code rim + 2 * width * height / 100}, which follows from what its
     * numbers mean.
     *
     * @return nothing where the text is not a size
     */
    public static Optional<TyreSize> read(String text) {
        String size = text.strip();
        Matcher metric = METRIC.matcher(size);
        if (metric.matches()) {
            double width = number(metric, 1) / 1000;
            double rim = number(metric, 3) * INCH;
            double height = number(metric, 2) / 100;
            return Optional.of(
                    new TyreSize(width, rim, OptionalDouble.of(height), OptionalDouble.of(rim + 2 * width * height)));
        }
        Matcher inches = INCHES.matcher(size);
        if (inches.matches()) {
            double rim = number(inches, 3) * INCH;
            double diameter = number(inches, 1) * INCH;
            return diameter <= rim
                    ? Optional.empty()
                    : Optional.of(new TyreSize(
                            number(inches, 2) * INCH, rim, OptionalDouble.empty(), OptionalDouble.of(diameter)));
        }
        Matcher numeric = NUMERIC.matcher(size);
        return numeric.matches()
                ? Optional.of(new TyreSize(
                        number(numeric, 1) * INCH,
                        number(numeric, 2) * INCH,
                        OptionalDouble.empty(),
                        OptionalDouble.empty()))
                : Optional.empty();
    }

    /** Whether a size is marked as a passenger tyre's, with P, or as another's, with LT or C; nothing without a mark. */
    public static Optional<Boolean> passenger(String text) {
        String size = text.strip();
        return size.startsWith("P")
                ? Optional.of(true)
                : size.startsWith("LT") || size.endsWith("LT") || size.endsWith("C")
                        ? Optional.of(false)
                        : Optional.empty();
    }

    private static double number(Matcher matcher, int group) {
        return Double.parseDouble(matcher.group(group));
    }
}
