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
            "waivers", "accepted findings");

    /** What is called by a phrase around what it is of. */
    private static final Map<String, String> PHRASES = Map.of(
            "removes",
            "what comes off for %s",
            "made-for",
            "what %s is made for",
            "suits",
            "whether %s is stated to suit");

    private Labels() {}

    /** What a list or group of a sheet is called, in small letters. */
    public static String list(String name) {
        return PHRASES.containsKey(name)
                ? String.format(PHRASES.get(name), "it")
                : LISTS.getOrDefault(name, name.replace('-', ' '));
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
            return String.format(AXES.get(axis), thing(steps(path.substring(0, place))));
        }
        List<String> steps = steps(path);
        if (steps.size() < 2) {
            // An item without a field keeps its list before it.
            return path.indexOf('.') < 0
                    ? list(path)
                    : list(path.substring(0, path.indexOf('.'))) + " " + path.substring(path.indexOf('.') + 1);
        }
        String last = steps.get(steps.size() - 1);
        String whole = thing(steps.subList(0, steps.size() - 1));
        return PHRASES.containsKey(last) ? within(whole, last) : list(last) + " of " + whole;
    }

    private static List<String> steps(String path) {
        return List.of(path.split("\\.(?=[^0-9 ])"));
    }

    /** What an item of a list is called, or what is within it; its list is left out. */
    private static String thing(List<String> steps) {
        return steps.stream()
                .skip(steps.size() > 1 ? 1 : 0)
                .reduce("", (whole, step) -> whole.isEmpty() ? step(step) : within(whole, step));
    }

    /** A thing within another: {@code recovery front}; or {@code what comes off for Alloy tray}. */
    private static String within(String whole, String step) {
        return PHRASES.containsKey(step) ? String.format(PHRASES.get(step), whole) : whole + " " + step(step);
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
