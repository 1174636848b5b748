package fitworthy.counter.edit;

import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.List;
import java.util.Map;

/** Changes as a person would say them. */
public final class Labels {

    private static final String PLACE = ".at.";
    private static final Map<String, String> AXES =
            Map.of("x", "place of %s along the vehicle", "y", "place of %s across the vehicle", "z", "height of %s");

    private Labels() {}

    /** {@code fitments.Front bar.mass} as {@code mass of Front bar}. */
    public static String field(String path) {
        int place = path.lastIndexOf(PLACE);
        String axis = place < 0 ? "" : path.substring(place + PLACE.length());
        if (AXES.containsKey(axis)) {
            return String.format(AXES.get(axis), item(path.substring(0, place)));
        }
        List<String> steps = List.of(path.split("\\.(?=[^0-9 ])"));
        return steps.size() < 2
                ? path
                : steps.get(steps.size() - 1)
                        + " of "
                        + String.join(" ", steps.subList(steps.size() > 2 ? 1 : 0, steps.size() - 1));
    }

    /** The same of the path of a value or of a word in a list. */
    static String field(NodePath path, Node.Mapping tree) {
        boolean isWord = path.last() instanceof NodePath.Item && path.in(tree) instanceof Node.Scalar;
        return field((isWord ? path.above() : path).byNames(tree));
    }

    /** What an item is called by the last step of its path. */
    static String item(String path) {
        return path.substring(path.indexOf('.') + 1);
    }
}
