package fitworthy.proof;

import fitworthy.quantity.Dimension;
import fitworthy.quantity.QuantityText;
import fitworthy.quantity.UnitWords;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The numbers that a quoted text names, in digits or in words, each with the unit that stands right behind it. */
final class QuotedNumbers {

    private static final Map<String, Double> WORDS =
            new HashMap<>(Map.of("half", 0.5, "single", 1.0, "once", 1.0, "twice", 2.0, "double", 2.0, "dozen", 12.0));

    static {
        String[] counted = ("zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen"
                        + " fifteen sixteen seventeen eighteen nineteen")
                .split(" ");
        for (int i = 0; i < counted.length; i++) {
            WORDS.put(counted[i], (double) i);
        }
        String[] tens = "twenty thirty forty fifty sixty seventy eighty ninety".split(" ");
        for (int i = 0; i < tens.length; i++) {
            WORDS.put(tens[i], 20.0 + 10 * i);
            for (int one = 1; one < 10; one++) {
                WORDS.put(tens[i] + "-" + counted[one], 20.0 + 10 * i + one);
            }
        }
    }

    /** In words; or in digits, where a comma before three of them parts thousands and is a point before others. */
    private static final Pattern NUMBER =
            Pattern.compile("(?<word>(?i)[a-z]+(?:-(?:one|two|three|four|five|six|seven|eight|nine)\\b)?)"
                    + "(?<times>(?i) hundred| thousand)?(?<half>(?i) and a half)?"
                    + "|[1-9]\\d{0,2}(?:,\\d{3})+(?:\\.\\d+)?(?![,\\d])|\\d+(?:[.,]\\d+)?");
    /** What may be a thousand as well as two numbers that stand beside each other. */
    private static final Pattern SPACED =
            Pattern.compile("(?<![\\d.,])[1-9]\\d{0,2}(?:[ \u00A0\u202F]\\d{3})+(?:\\.\\d+)?(?!\\d)");

    private static final String BLANKS = "[ \u00A0\u2009\u202F]";
    private static final String DASH = "[-\u2010-\u2014]";

    private static final int LONGEST_UNIT = 25;

    /** Units that no sheet has, or that there mean another kind of quantity: of which kind they are, and how much one is. */
    private static final Map<String, Map<Dimension, List<Double>>> FURTHER = Map.ofEntries(
            Map.entry("ton", Map.of(Dimension.MASS, List.of(1000.0, 907.18474, 1016.0469088))),
            Map.entry("gal", Map.of(Dimension.VOLUME, List.of(3.785411784, 4.54609))),
            Map.entry("gallon", Map.of(Dimension.VOLUME, List.of(3.785411784, 4.54609))),
            Map.entry("fpm", Map.of(Dimension.SPEED, List.of(0.00508))),
            Map.entry("ft/min", Map.of(Dimension.SPEED, List.of(0.00508))),
            Map.entry("feet per minute", Map.of(Dimension.SPEED, List.of(0.00508))),
            Map.entry("miles per hour", Map.of(Dimension.SPEED, List.of(0.44704))),
            Map.entry("kilometres per hour", Map.of(Dimension.SPEED, List.of(1 / 3.6))),
            Map.entry("kilometers per hour", Map.of(Dimension.SPEED, List.of(1 / 3.6))),
            Map.entry("metres per second", Map.of(Dimension.SPEED, List.of(1.0))),
            Map.entry("pounds per square inch", Map.of(Dimension.PRESSURE, List.of(6894.757293168))),
            Map.entry("newton", Map.of(Dimension.FORCE, List.of(1.0))),
            Map.entry("kilonewton", Map.of(Dimension.FORCE, List.of(1000.0))),
            Map.entry("kilopascal", Map.of(Dimension.PRESSURE, List.of(1000.0))),
            // As a share of the weight that a fastening has to hold.
            Map.entry("g", Map.of(Dimension.COUNT, List.of(1.0))),
            Map.entry("degree", Map.of(Dimension.TEMPERATURE, List.of(1.0))),
            Map.entry("\u00B0", Map.of(Dimension.TEMPERATURE, List.of(1.0))),
            // Counted from another zero, so that no number of them is looked for.
            Map.entry("\u00B0f", Map.of()),
            Map.entry("\u00B0 f", Map.of()),
            Map.entry("degrees f", Map.of()),
            Map.entry("degrees fahrenheit", Map.of()),
            Map.entry("fahrenheit", Map.of()));

    /** 'in' as no inch. */
    private static final Pattern WITHIN = Pattern.compile(
            "in (?:[A-Z0-9]|(?:an?|all|any|each|every|its|the|this|that|these|those|your|total|addition|combination|force"
                    + "|width|height|length|mass|weight)\\b)");

    /** Two readings of one number differ by no more than this share of it. */
    private static final double SAME = 1e-6;
    /** By which share at most a number may be off that was converted and then rounded. */
    private static final double ROUNDED = 0.01;

    private QuotedNumbers() {}

    /** @param unit as it stands in the text; empty where none stands there */
    private record Quoted(double number, String unit, String written) {

        /** What one of them may be in the unit used inside. */
        Stream<Double> sizes(Dimension dimension) {
            if (unit.isEmpty()) {
                return Stream.concat(Stream.of(1.0), dimension.units().values().stream());
            }
            return Stream.concat(
                    Stream.ofNullable(UnitWords.size(dimension, unit)),
                    further(unit).orElse(Map.of()).getOrDefault(dimension, List.of()).stream());
        }
    }

    /**
     * A value to be looked for.
     *
     * @param number as it is written
     * @param decimals how many it is written with
     * @param size what one of its unit is in the unit used inside
     */
    private record Value(double number, int decimals, double size, Dimension dimension) {

        /** Whether it is the same; where another measure was converted, rounded as the value is written. */
        boolean is(double other, double unit) {
            double converted = other * unit / size;
            if (Math.abs(converted - number) <= SAME * Math.abs(number)) {
                return true;
            }
            double power = Math.log10(unit / size);
            return Math.abs(power - Math.rint(power)) > SAME
                    && Math.abs(converted - number) <= 0.5 * Math.pow(10, -decimals)
                    && Math.abs(converted - number) <= ROUNDED * Math.abs(number);
        }

        boolean is(Quoted quoted) {
            return quoted.sizes(dimension).anyMatch(unit -> is(quoted.number(), unit));
        }
    }

    /**
     * Whether a text names a quantity: with its unit or one that comes to the same, or with none.
     *
     * @param written the quantity as the book has it, checked before
     */
    static boolean name(String text, String written, Dimension dimension) {
        return of(text).stream().anyMatch(value(written, dimension)::is);
    }

    /** The number of a quantity that a text names with a unit which does not come to the same, as it stands there. */
    static Optional<String> otherwise(String text, String written, Dimension dimension) {
        double number = value(written, dimension).number();
        return of(text).stream()
                .filter(quoted -> quoted.number() == number)
                .map(Quoted::written)
                .findFirst();
    }

    /** Whether a text names a number. */
    static boolean name(String text, double number) {
        return of(text).stream().anyMatch(quoted -> quoted.number() == number);
    }

    private static Value value(String written, Dimension dimension) {
        try {
            double inside = QuantityText.parse(written, dimension).value();
            String digits = written.strip().replace(',', '.').replaceFirst("(?<=\\d)(?![\\d.]).*", "");
            double number = Double.parseDouble(digits);
            int point = digits.indexOf('.');
            return new Value(
                    number, point < 0 ? 0 : digits.length() - point - 1, number == 0 ? 1 : inside / number, dimension);
        } catch (QuantityText.Unreadable e) {
            throw new IllegalStateException("a value was checked but is unreadable", e);
        }
    }

    private static List<Quoted> of(String text) {
        List<Quoted> numbers = new ArrayList<>();
        Matcher found = NUMBER.matcher(text);
        while (found.find()) {
            number(found).ifPresent(number -> numbers.add(quoted(text, found, number)));
        }
        Matcher spaced = SPACED.matcher(text);
        while (spaced.find()) {
            numbers.add(quoted(text, spaced, Double.parseDouble(spaced.group().replaceAll("[^\\d.]", ""))));
        }
        return numbers;
    }

    private static Optional<Double> number(Matcher found) {
        if (found.group("word") != null) {
            return Optional.ofNullable(WORDS.get(found.group("word").toLowerCase(Locale.ROOT)))
                    .map(number -> (found.group("half") == null ? number : number + 0.5) * times(found.group("times")));
        }
        String digits = found.group();
        boolean thousands = digits.matches("[1-9]\\d{0,2}(,\\d{3})+(\\.\\d+)?");
        return Optional.of(Double.valueOf(thousands ? digits.replace(",", "") : digits.replace(',', '.')));
    }

    private static int times(String word) {
        return word == null ? 1 : word.strip().equalsIgnoreCase("hundred") ? 100 : 1000;
    }

    private static Quoted quoted(String text, Matcher found, double number) {
        String unit = unit(text.substring(found.end()).replaceFirst("^(?:" + BLANKS + "|" + DASH + ")", ""));
        return new Quoted(
                number, unit, text.substring(found.start(), found.end()) + (unit.isEmpty() ? "" : " " + unit));
    }

    /** The longest unit that a text begins with; a single letter is one only where it is written in its own case. */
    private static String unit(String text) {
        if (WITHIN.matcher(text).lookingAt()) {
            return "";
        }
        for (int end = Math.min(text.length(), LONGEST_UNIT); end > 0; end--) {
            String unit = text.substring(0, end);
            boolean ends =
                    end == text.length() || !Character.isLetterOrDigit(text.charAt(end)) && text.charAt(end) != '/';
            if (ends && isUnit(unit)) {
                return unit;
            }
        }
        return "";
    }

    private static boolean isUnit(String unit) {
        boolean letter = Character.isLetter(unit.charAt(0));
        if (letter && unit.length() == 1) {
            return Dimension.ofUnit(unit) != null;
        }
        // A mark of feet or inches is more often the end of a quotation.
        return (letter || "%\u00B0\u2032\u2033".indexOf(unit.charAt(0)) >= 0)
                && !Character.isWhitespace(unit.charAt(unit.length() - 1))
                && (UnitWords.isUnit(unit) || further(unit).isPresent());
    }

    private static Optional<Map<Dimension, List<Double>>> further(String unit) {
        String plain = unit.toLowerCase(Locale.ROOT);
        return Optional.ofNullable(FURTHER.get(plain))
                .or(() -> Optional.ofNullable(FURTHER.get(plain.replaceFirst("s$", ""))));
    }
}
