package fitworthy.source;

import fitworthy.source.YamlPlaces.Spot;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/** A text into which a value is put; whether it reads back is for the caller to see. */
final class YamlText {

    private static final String COMMENT = "#[^\n]*";

    private final YamlPlaces places;
    private final OneLine line;
    private final Node value;

    private YamlText(YamlPlaces places, Node value, boolean quoted) {
        this.places = places;
        this.value = value;
        this.line = new OneLine(quoted, places.isJson());
    }

    /**
     * The text with a value at a path, see {@link TextEdit}.
     *
     * @param quoted whether the value is to be in quotes; where it takes the place of one in quotes it always is
     */
    static Optional<String> with(String text, NodePath path, Node value, boolean quoted) {
        return edited(text, value, quoted, yaml -> yaml.put(path));
    }

    /** The text with a value in place of whatever stands at a path. */
    static Optional<String> exchanged(String text, NodePath path, Node value, boolean quoted) {
        return edited(text, value, quoted, yaml -> yaml.exchanged(yaml.places.find(path)));
    }

    /** The text with one more item at the end of a list. */
    static Optional<String> appended(String text, NodePath list, Node item, boolean quoted) {
        return edited(text, item, quoted, yaml -> yaml.appended(list));
    }

    private static Optional<String> edited(String text, Node value, boolean quoted, Function<YamlText, String> edit) {
        try {
            return Optional.ofNullable(edit.apply(new YamlText(new YamlPlaces(text), value, quoted)));
        } catch (YAMLException e) {
            return Optional.empty();
        }
    }

    /** @return null where the path leads to no place for a value */
    private String put(NodePath path) {
        NodePath above = path;
        while (places.find(above) == null) {
            above = above.above();
        }
        Spot spot = places.find(above);
        List<NodePath.Step> further =
                path.steps().subList(above.steps().size(), path.steps().size());
        if (spot.node() instanceof ScalarNode scalar) {
            return further.isEmpty()
                    ? replaced(scalar, written(scalar))
                    : scalar.getTag().equals(Tag.NULL) ? replaced(scalar, inGroups(further)) : null;
        }
        return further.isEmpty() || spot.node() instanceof SequenceNode ? null : added(spot, entry(further));
    }

    private String exchanged(Spot spot) {
        if (spot.node() instanceof ScalarNode scalar) {
            return replaced(scalar, written(scalar));
        }
        int begin = places.at(spot.node().getStartMark());
        if (spot.isFlow()) {
            return places.spliced(begin, places.at(spot.node().getEndMark()), line.of(value));
        }
        int end = places.end(spot);
        if (spot.key() == null) {
            return places.spliced(begin, end, line.of(value));
        }
        // What follows the name on its line is said of it and stays.
        int colon = colon(spot);
        String rest = places.text().substring(colon, places.lineEnd(colon));
        return places.spliced(colon, places.lineEnd(end), " " + line.of(value) + rest);
    }

    private String appended(NodePath list) {
        Spot spot = places.find(list);
        if (spot == null) {
            Spot group = places.find(list.above());
            return group == null || !(group.node() instanceof MappingNode) || group.isWithinFlow()
                    ? null
                    : added(group, list.last() + ":" + begun(places.begin(group.at(0))));
        }
        if (spot.node() instanceof SequenceNode items && !items.getValue().isEmpty()) {
            return added(spot, spot.isFlow() ? line.of(value) : "- " + line.of(value));
        }
        boolean isBlank =
                spot.node() instanceof ScalarNode scalar && scalar.getTag().equals(Tag.NULL);
        int begin = places.at(spot.node().getStartMark());
        int end = places.at(spot.node().getEndMark());
        boolean alone = spot.key() != null && !spot.above().isWithinFlow() && places.isBlank(end, places.lineEnd(end));
        if (!isBlank && !(spot.node() instanceof SequenceNode)) {
            return null;
        }
        return alone
                ? places.spliced(colon(spot), end, begun(places.begin(spot)))
                : places.spliced(begin, end, (begin == end ? " " : "") + "[" + line.of(value) + "]");
    }

    /** The first item of a list, on a line of its own. @param name where the name of the list stands */
    private String begun(int name) {
        return places.lineBreak(name) + "  - " + line.of(value);
    }

    /** Behind the colon of a field. */
    private int colon(Spot field) {
        return places.text().indexOf(':', places.at(field.key().getEndMark())) + 1;
    }

    private String written(ScalarNode old) {
        boolean wasQuoted =
                old.getScalarStyle() == ScalarStyle.DOUBLE_QUOTED || old.getScalarStyle() == ScalarStyle.SINGLE_QUOTED;
        return wasQuoted && value instanceof Node.Scalar word ? OneLine.inQuotes(word.text()) : line.of(value);
    }

    /** A field with its value, or with the group that holds it, on one line. */
    private String entry(List<NodePath.Step> steps) {
        return line.named(steps.get(0).toString(), inGroups(steps.subList(1, steps.size())));
    }

    private String inGroups(List<NodePath.Step> steps) {
        return steps.isEmpty() ? line.of(value) : "{" + entry(steps) + "}";
    }

    private String replaced(ScalarNode old, String by) {
        int begin = places.at(old.getStartMark());
        int end = places.at(old.getEndMark());
        return begin == end
                ? places.spliced(begin, begin, " " + by)
                : places.spliced(begin, places.end(new Spot(null, 0, old)), by);
    }

    private String added(Spot group, String entry) {
        return group.isFlow() ? addedInBraces(group, entry) : addedBelow(group, entry);
    }

    /** A new line behind those of a group whose entries stand one a line. */
    private String addedBelow(Spot group, String entry) {
        int end = places.lineEnd(places.end(group));
        return places.spliced(end, end, places.lineBreak(places.begin(group.at(0))) + entry);
    }

    private String addedInBraces(Spot group, String entry) {
        int open = places.at(group.node().getStartMark());
        int close = places.at(group.node().getEndMark()) - 1;
        if (group.entries().isEmpty()) {
            return places.spliced(open + 1, close, entry);
        }
        String text = places.text();
        int first = places.begin(group.at(0));
        int last = places.end(group.at(group.entries().size() - 1));
        String between = text.substring(last, close);
        boolean comma = between.replaceAll(COMMENT, "").contains(",");
        boolean onLines = between.contains("\n") && places.lineBegin(first) > open;
        if (onLines) {
            int end = places.lineEnd(last);
            return text.substring(0, last)
                    + (comma ? "" : ",")
                    + text.substring(last, end)
                    + places.lineBreak(first)
                    + entry
                    + (comma ? "," : "")
                    + text.substring(end);
        }
        return comma ? places.spliced(close, close, " " + entry) : places.spliced(last, last, ", " + entry);
    }
}
