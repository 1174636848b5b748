package fitworthy.counter.edit;

import fitworthy.source.Fault;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Changes as a person would say them. */
public final class Labels {

    private static final String PLACE = ".at.";
    private static final Map<String, String> AXES =
            Map.of("x", "place of %s along the vehicle", "y", "place of %s across the vehicle", "z", "height of %s");

    /** Lists of a sheet that a counter has another word for. */
    private static final Map<String, String> LISTS = Map.of(
            "fitments", "parts",
            "occupants", "people",
            "cases", "loadings",
            "options", "choices",
            "jobs", "work",
            "waivers", "accepted findings",
            "removes", "what comes off for it");

    private Labels() {}

    /** What a list or group of a sheet is called, in small letters. */
    public static String list(String name) {
        return LISTS.getOrDefault(name, name.replace('-', ' '));
    }

    /** A step of a path; an item of a list, where it has no name, by its number. */
    private static String step(String step) {
        int dot = step.lastIndexOf('.');
        return dot > 0 ? list(step.substring(0, dot)) + " " + step.substring(dot + 1) : list(step);
    }

    /** A fault as a person is told it: by its line, and by what its field is called. @param tree null where there is none */
    public static String fault(Fault fault, Node.Mapping tree) {
        NodePath path = tree == null || fault.path().isEmpty() ? null : NodePath.find(fault.path(), tree);
        String field = path == null ? fault.path() : path.byNames(tree);
        return Stream.of(
                                fault.place().line() > 0
                                        ? "Line " + fault.place().line()
                                        : "",
                                field.isEmpty() ? "" : field(field))
                        .filter(part -> !part.isEmpty())
                        .collect(Collectors.joining(", ", "", ": "))
                        .replaceFirst("^: ", "")
                + fault.problem() + ". Right: " + fault.mend();
    }

    /** {@code fitments.Front bar.mass} as {@code mass of Front bar}. */
    public static String field(String path) {
        int place = path.lastIndexOf(PLACE);
        String axis = place < 0 ? "" : path.substring(place + PLACE.length());
        if (AXES.containsKey(axis)) {
            return String.format(AXES.get(axis), item(path.substring(0, place)));
        }
        List<String> steps = List.of(path.split("\\.(?=[^0-9 ])"));
        if (steps.size() < 2) {
            // An item without a field keeps its list before it.
            return path.indexOf('.') < 0
                    ? list(path)
                    : list(path.substring(0, path.indexOf('.'))) + " " + path.substring(path.indexOf('.') + 1);
        }
        return list(steps.get(steps.size() - 1))
                + " of "
                + steps.subList(steps.size() > 2 ? 1 : 0, steps.size() - 1).stream()
                        .map(Labels::step)
                        .collect(Collectors.joining(" "));
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
