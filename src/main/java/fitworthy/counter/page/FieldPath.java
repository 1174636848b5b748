package fitworthy.counter.page;

import fitworthy.source.NodePath;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;

/**
 * The way to a field as a page sends it: by the positions of items, which stay while a name is typed in. A name with a
 * dot or of digits alone is written with signs for them, so that it is never taken for two steps or for a position.
 */
public final class FieldPath {

    private static final String DIGITS = "[0-9]+";

    private FieldPath() {}

    public static String text(NodePath path) {
        return path.steps().stream().map(FieldPath::text).collect(Collectors.joining("."));
    }

    private static String text(NodePath.Step step) {
        if (step instanceof NodePath.Item item) {
            return String.valueOf(item.position());
        }
        String name = URLEncoder.encode(step.toString(), StandardCharsets.UTF_8).replace(".", "%2E");
        return name.matches(DIGITS) ? "%3" + name : name;
    }

    /** @throws IllegalArgumentException where it is no path */
    public static NodePath of(String text) {
        NodePath path = NodePath.TOP;
        for (String step : text.split("\\.")) {
            path = step.matches("[1-9][0-9]{0,6}")
                    ? path.to(Integer.parseInt(step))
                    : path.to(URLDecoder.decode(step, StandardCharsets.UTF_8));
        }
        return path;
    }

    /** The id that the element of a field has. */
    public static String id(NodePath path) {
        return "f-" + text(path).replace('.', '_').replaceAll("[^A-Za-z0-9_-]", "-");
    }
}
