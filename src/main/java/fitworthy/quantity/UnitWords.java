package fitworthy.quantity;

import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The names of units as people write them: those of {@link Dimension} in large or small letters, and the further ones of
 * the trade that can be nothing else. Which of them is meant hangs on the kind of quantity wanted, so that {@code C} is
 * a degree where a temperature belongs and nothing elsewhere.
 */
public final class UnitWords {

    /** Further names of a unit, in small letters and as {@link #plain} leaves them. */
    private static final Map<String, List<String>> FURTHER = Map.ofEntries(
            Map.entry("kg", List.of("kgs", "kilo", "kilos", "kilogram", "kilograms", "kilogramme", "kilogrammes")),
            Map.entry("t", List.of("tonne", "tonnes")),
            Map.entry("g", List.of("gram", "grams", "gramme", "grammes")),
            Map.entry("lb", List.of("lbs", "pound", "pounds")),
            Map.entry("m", List.of("metre", "metres", "meter", "meters")),
            Map.entry("mm", List.of("millimetre", "millimetres", "millimeter", "millimeters")),
            Map.entry("cm", List.of("centimetre", "centimetres", "centimeter", "centimeters")),
            Map.entry("km", List.of("kms", "kilometre", "kilometres", "kilometer", "kilometers")),
            Map.entry("micron", List.of("microns")),
            Map.entry("in", List.of("inch", "inches", "\"", "''")),
            Map.entry("ft", List.of("foot", "feet", "'")),
            Map.entry("mi", List.of("mile", "miles")),
            Map.entry("mm2", List.of("mm^2", "sqmm", "sq mm")),
            Map.entry("cm2", List.of("cm^2", "sqcm", "sq cm")),
            Map.entry("L", List.of("litre", "litres", "liter", "liters", "ltr", "ltrs")),
            Map.entry("mL", List.of("millilitre", "millilitres", "milliliter", "milliliters")),
            Map.entry("cc", List.of("ccm", "cm3")),
            Map.entry("US gal", List.of("us gallon", "us gallons")),
            Map.entry("imp gal", List.of("imperial gallon", "imperial gallons", "imperial gal")),
            Map.entry("km/h", List.of("kph", "kmh", "kmph", "km/hr")),
            Map.entry("L/h", List.of("l/hr", "litres/hour", "liters/hour")),
            Map.entry("L/min", List.of("litres/min", "liters/min")),
            Map.entry("L/100km", List.of("litres/100km", "liters/100km", "litres/100 km", "liters/100 km")),
            Map.entry("lb/in", List.of("lbs/in", "lb/inch", "lbs/inch")),
            Map.entry("kg/mm", List.of("kgf/mm")),
            Map.entry("rpm", List.of("r/min")),
            Map.entry("A", List.of("amp", "amps", "ampere", "amperes")),
            Map.entry("V", List.of("volt", "volts")),
            Map.entry("W", List.of("watt", "watts")),
            Map.entry("kW", List.of("kilowatt", "kilowatts")),
            Map.entry("Wh", List.of("watt hours", "watt-hours")),
            Map.entry("Ah", List.of("amp hours", "amp-hours", "amp hour", "amp-hour")),
            Map.entry("h", List.of("hr", "hrs", "hour", "hours")),
            Map.entry("min", List.of("mins", "minute", "minutes")),
            Map.entry("s", List.of("sec", "secs", "second", "seconds")),
            Map.entry("week", List.of("wk", "wks")),
            Map.entry("%", List.of("percent", "per cent")),
            Map.entry("deg", List.of("degree", "degrees")),
            Map.entry("degC", List.of("c", "deg c", "celsius", "degrees celsius")));

    /** Names of which nobody can tell the unit, with what to write. */
    private static final Map<String, String> DOUBTFUL = Map.of(
            "gal", "'US gal' or 'imp gal'",
            "gallon", "'US gal' or 'imp gal'",
            "gallons", "'US gal' or 'imp gal'",
            "ton", "'t' for 1000 kg, or 'kg' or 'lb'",
            "tons", "'t' for 1000 kg, or 'kg' or 'lb'");

    private static final Map<Dimension, Map<String, Double>> SIZES = sizes();

    private static final Pattern SPACES = Pattern.compile(QuantityText.SPACE + "+");
    /** Signs that are written in several ways, as {@link #plain} writes them, with the class of all of them. */
    private static final Map<String, String> SIGNS = Map.of(
            "\"", "[\"\\u201D\\u2033]",
            "'", "['\\u2019\\u2032]",
            "2", "[2\\u00B2]",
            "3", "[3\\u00B3]",
            "u", "[uU\\u00B5\\u03BC]",
            "\u00B0", "(?:[dD][eE][gG]|\\u00B0)",
            " ", QuantityText.SPACE + "+");

    private UnitWords() {}

    private static Map<Dimension, Map<String, Double>> sizes() {
        Map<Dimension, Map<String, Double>> sizes = new EnumMap<>(Dimension.class);
        for (Dimension dimension : Dimension.values()) {
            Map<String, Double> own = new HashMap<>();
            dimension.units().forEach((unit, size) -> {
                own.put(unit.toLowerCase(Locale.ROOT), size);
                FURTHER.getOrDefault(unit, List.of()).forEach(word -> own.put(word, size));
            });
            sizes.put(dimension, own);
        }
        return sizes;
    }

    /** How much one such unit is in the unit used inside; null where the dimension has none of this name. */
    public static Double size(Dimension dimension, String written) {
        Double size = dimension.units().get(written);
        return size != null ? size : SIZES.get(dimension).get(plain(written));
    }

    /** The dimension that has a unit of this name, one that writes it just so before others; null where none has. */
    static Dimension dimension(String written) {
        Dimension exact = Dimension.ofUnit(written);
        if (exact != null) {
            return exact;
        }
        String plain = plain(written);
        return SIZES.entrySet().stream()
                .filter(sizes -> sizes.getValue().containsKey(plain))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(null);
    }

    /** Whether any dimension has a unit of this name. */
    public static boolean isUnit(String written) {
        return dimension(written) != null;
    }

    /** What to write in place of a name that may be either of two units; null for any other. */
    static String doubtful(String written) {
        return DOUBTFUL.get(plain(written));
    }

    /** In small letters, without the point of a short form, signs as a plain keyboard has them. */
    private static String plain(String written) {
        String text = SPACES.matcher(written.strip()).replaceAll(" ");
        String whole = text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
        return whole.toLowerCase(Locale.ROOT)
                .replace("\u00B0", "deg")
                .replace("\u00B2", "2")
                .replace("\u00B3", "3")
                .replaceAll("[\u00B5\u03BC]", "u")
                .replaceAll("[\u201D\u2033]", "\"")
                .replaceAll("[\u2019\u2032]", "'");
    }

    /** What {@link #size} takes of these dimensions, as a regular expression that needs no flags. */
    public static String pattern(Collection<Dimension> dimensions) {
        Set<String> words = new TreeSet<>();
        dimensions.forEach(dimension -> words.addAll(SIZES.get(dimension).keySet()));
        boolean none = words.remove("");
        return words.isEmpty()
                ? ""
                : words.stream().map(UnitWords::pattern).collect(Collectors.joining("|", "(?:(?:", ")\\.?)"))
                        + (none ? "?" : "");
    }

    private static String pattern(String word) {
        StringBuilder pattern = new StringBuilder();
        for (char letter : word.replace("deg", "\u00B0").toCharArray()) {
            String small = String.valueOf(letter);
            pattern.append(
                    SIGNS.containsKey(small)
                            ? SIGNS.get(small)
                            : Character.isLetter(letter)
                                    ? "[" + small + small.toUpperCase(Locale.ROOT) + "]"
                                    : small.replace("^", "\\^"));
        }
        return pattern.toString();
    }
}
