package fitworthy.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Units that the trade writes and that no sheet has, since they are two in one, run the other way round or are two of one
 * name: what to write in their place.
 */
final class OtherUnits {

    private static final double KG_IN_STONE = 6.35029318;
    /** In m/s2, exact by definition: what turns a force into the mass that weighs as much. */
    private static final double STANDARD_GRAVITY = 9.80665;

    /** L/100km times miles a gallon: 100 x 3.785411784 / 1.609344, and 100 x 4.54609 / 1.609344. */
    private static final double US_MILES = 235.214583;

    private static final double UK_MILES = 282.480936;

    private static final MathContext DIGITS = new MathContext(4);
    private static final Pattern FEET_AND_INCHES =
            Pattern.compile("(?:ft|feet|foot|')[.,]?\\s*([0-9]+(?:\\.[0-9]+)?)\\s*(?:in|inch|inches|\"|'')?\\.?");

    private static final Pattern GAUGE = Pattern.compile("(/0)? ?(?:awg|b ?& ?s)");

    private OtherUnits() {}

    /** @return what to write instead; null where it is no such unit, or none of this dimension */
    static String instead(double value, String unit, Dimension dimension) {
        String plain = unit.strip().toLowerCase(Locale.ROOT).replace("\u00B0", "deg");
        return switch (dimension) {
            case MASS -> mass(value, plain);
            case CURRENT ->
                // So many times its capacity in an hour, as batteries' data sheets have it.
                plain.equals("c")
                        ? written(value, "A for each Ah of its capacity,") + " " + written(value * 100, "A")
                                + " for one of 100 Ah"
                        : null;
            case POWER -> power(value, plain);
            case LENGTH -> length(value, plain);
            case TEMPERATURE ->
                plain.matches("(deg ?)?f|fahrenheit|degrees fahrenheit") ? written((value - 32) * 5 / 9, "degC") : null;
            case AREA -> gauge(value, plain);
            case CONSUMPTION -> consumption(value, plain);
            default -> null;
        };
    }

    private static String mass(double value, String unit) {
        return switch (unit) {
            case "st", "stone", "stones" -> written(value * KG_IN_STONE, "kg");
            case "kn" -> written(value * 1000 / STANDARD_GRAVITY, "kg");
            case "dan" -> written(value * 10 / STANDARD_GRAVITY, "kg");
            case "n" -> written(value / STANDARD_GRAVITY, "kg");
            case "lbf" -> written(value, "lb");
            case "kgf" -> written(value, "kg");
            default -> null;
        };
    }

    /** Behind a motor or a transformer fewer watts are as many volt-amperes; how many hangs on what is connected. */
    private static String power(double value, String unit) {
        double watts = unit.equals("kva") ? value * 1000 : value;
        return unit.matches("k?va")
                ? "the W that its data sheet gives, at most " + written(watts, "W") + " and often a fifth less"
                : null;
    }

    private static String length(double feet, String unit) {
        Matcher inches = FEET_AND_INCHES.matcher(unit);
        return inches.matches() ? written((feet * 12 + Double.parseDouble(inches.group(1))) * 25.4, "mm") : null;
    }

    private static String consumption(double value, String unit) {
        if (value <= 0) {
            return null;
        }
        if (unit.matches("km ?/ ?l|kpl|kmpl|km per litre")) {
            return written(100 / value, "L/100km");
        }
        return unit.matches("mpg|miles per gallon")
                ? written(US_MILES / value, "L/100km") + " for US gallons or " + written(UK_MILES / value, "L/100km")
                        + " for imperial ones"
                : null;
    }

    /** The thickest are numbered the other way round: 2/0 is the one after 1/0, which is gauge 0. */
    private static String gauge(double number, String unit) {
        Matcher named = GAUGE.matcher(unit);
        return !named.matches()
                ? null
                : written(WireGauge.section(named.group(1) == null ? number : 1 - number), "mm2");
    }

    private static String written(double value, String unit) {
        return BigDecimal.valueOf(value).round(DIGITS).stripTrailingZeros().toPlainString() + " " + unit;
    }
}
