package fitworthy.shelf;

import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reads a wish as letters have it, such as "a canopy about 1.8 m long" or "a 60 litre fridge".
 *
 * @param known whether words name a part
 */
record LetterWish(Predicate<String> known) {

    private static final Pattern ARTICLE = Pattern.compile("^(?:an?|the)\\s+");
    /** The units that letters spell out, each as a sheet writes it. */
    private static final Map<String, String> SPELT =
            Map.of("litre", "L", "litres", "L", "l", "L", "watt", "W", "watts", "W", "metre", "m", "metres", "m");

    private static final String AMOUNT =
            "((?:about\\s+)?[0-9][0-9.]*)\\s*(mm|cm|m|kg|L|Ah|W|" + String.join("|", SPELT.keySet()) + ")";
    /** A canopy about 1.8 m long, a lift kit, 50 mm, a water tank of 60 litres. */
    private static final Pattern BEHIND = Pattern.compile("(.+?),?\\s+(?:of\\s+)?" + AMOUNT + "(?:\\s+long)?");
    /** A 200 watt solar panel. */
    private static final Pattern BEFORE = Pattern.compile(AMOUNT + "\\s+(.+)");
    /** 265/70R17 tyres. */
    private static final Pattern SIZED = Pattern.compile("(.*?)[\\s,]*\\b([0-9]{3}/[0-9]{2}R[0-9]{2})\\b[\\s,]*(.*)");

    private record Part(String name, String figure) {

        String typed() {
            return figure.isEmpty() ? name : name + "=" + figure;
        }
    }

    /** The name of the part, with its figure behind an equals sign; the wish itself where it does not name one. */
    String typed(String wish) {
        String bare = ARTICLE.matcher(wish).replaceFirst("");
        return Stream.of(behind(bare), before(bare), sized(bare), Optional.of(new Part(bare, "")))
                .flatMap(Optional::stream)
                .filter(part -> known.test(part.name()))
                .map(Part::typed)
                .findFirst()
                .orElse(wish);
    }

    private static Optional<Part> behind(String bare) {
        Matcher read = BEHIND.matcher(bare);
        return read.matches()
                ? Optional.of(new Part(read.group(1), amount(read.group(2), read.group(3))))
                : Optional.empty();
    }

    private static Optional<Part> before(String bare) {
        Matcher read = BEFORE.matcher(bare);
        return read.matches()
                ? Optional.of(new Part(read.group(3), amount(read.group(1), read.group(2))))
                : Optional.empty();
    }

    private static Optional<Part> sized(String bare) {
        Matcher read = SIZED.matcher(bare);
        return read.matches()
                ? Optional.of(new Part((read.group(1) + " " + read.group(3)).strip(), read.group(2)))
                : Optional.empty();
    }

    private static String amount(String number, String unit) {
        return number + " " + SPELT.getOrDefault(unit, unit);
    }
}
