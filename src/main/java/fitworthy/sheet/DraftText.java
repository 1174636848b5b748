package fitworthy.sheet;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** How a new sheet writes names and fields. */
final class DraftText {

    private static final Pattern BARE = Pattern.compile("\\p{L}[\\p{L}\\p{N}./]*([ -][\\p{L}\\p{N}./]+)*");
    /** What YAML or a sheet would take for something else than a name. */
    private static final Set<String> TAKEN = Set.of("yes", "no", "true", "false", "on", "off", "null", "y", "n");

    private DraftText() {}

    static String quoted(String name) {
        return BARE.matcher(name).matches() && !TAKEN.contains(name.toLowerCase(Locale.ROOT))
                ? name
                : '"' + name.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    /** Fields as they follow others in a group. */
    static String fields(Map<String, String> said) {
        return said.entrySet().stream()
                .map(field -> ", " + field.getKey() + ": " + field.getValue())
                .collect(Collectors.joining());
    }

    /**
     * What is taken from the shelf: by its name alone, or with what is otherwise on this sheet.
     *
     * @param own what it is called on this sheet
     * @param more fields as they follow others
     */
    static String taken(String name, String own, String more) {
        String others = (own.equals(name) ? "" : ", name: " + quoted(own)) + more;
        return others.isEmpty() ? quoted(name) : "{from: " + quoted(name) + others + "}";
    }

    static String orAsk(String figure) {
        return figure.isEmpty() ? "ask" : figure;
    }
}
