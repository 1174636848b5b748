package fitworthy.proof;

import fitworthy.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The numbers that a quoted text names, in digits or in words. */
final class QuotedNumbers {

    private static final Pattern DIGITS = Pattern.compile("\\d{1,3}(?:[ ,]\\d{3})+(?:\\.\\d+)?|\\d+(?:\\.\\d+)?");
    /** A thousand may be two numbers that stand beside each other. */
    private static final Pattern PLAIN = Pattern.compile("\\d+(?:\\.\\d+)?");

    private static final Pattern WORD = Pattern.compile("[a-z]+(?: and a half)?");
    private static final String AND_A_HALF = " and a half";

    private static final Map<String, Double> WORDS = Map.ofEntries(
            Map.entry("zero", 0.0),
            Map.entry("half", 0.5),
            Map.entry("one", 1.0),
            Map.entry("single", 1.0),
            Map.entry("once", 1.0),
            Map.entry("two", 2.0),
            Map.entry("twice", 2.0),
            Map.entry("double", 2.0),
            Map.entry("three", 3.0),
            Map.entry("four", 4.0),
            Map.entry("five", 5.0),
            Map.entry("six", 6.0),
            Map.entry("seven", 7.0),
            Map.entry("eight", 8.0),
            Map.entry("nine", 9.0),
            Map.entry("ten", 10.0),
            Map.entry("twelve", 12.0),
            Map.entry("twenty", 20.0),
            Map.entry("thirty", 30.0));

    /** Two readings of one number differ by no more than this share of it. */
    private static final double SAME = 1e-6;

    private QuotedNumbers() {}

    /** Whether a text names a quantity, in whatever unit of its kind. @param value in the unit used inside */
    static boolean name(String text, double value, Dimension dimension) {
        return of(text).stream().anyMatch(number -> Stream.concat(Stream.of(1.0), dimension.units().values().stream())
                .anyMatch(unit -> Math.abs(number * unit - value) <= SAME * Math.abs(value)));
    }

    /** Whether a text names a number. */
    static boolean name(String text, double number) {
        return of(text).contains(number);
    }

    private static List<Double> of(String text) {
        List<Double> numbers = new ArrayList<>();
        for (Pattern pattern : List.of(DIGITS, PLAIN)) {
            pattern.matcher(text)
                    .results()
                    .map(found -> Double.valueOf(found.group().replaceAll("[ ,]", "")))
                    .forEach(numbers::add);
        }
        Matcher word = WORD.matcher(text.toLowerCase(Locale.ROOT));
        while (word.find()) {
            boolean half = word.group().endsWith(AND_A_HALF);
            Double number = WORDS.get(half ? word.group().replace(AND_A_HALF, "") : word.group());
            if (number != null) {
                numbers.add(half ? number + 0.5 : number);
            }
        }
        return numbers;
    }
}
