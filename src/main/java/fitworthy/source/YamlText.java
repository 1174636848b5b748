package fitworthy.source;

import java.io.StringReader;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.CollectionNode;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * A text with the places where its values begin and end, so that one can be exchanged. Of JSON it takes what YAML does,
 * which is all but tabs.
 */
final class YamlText {

    private static final String COMMENT = "#[^\n]*";

    private final String text;
    private final boolean json;
    private final boolean quoted;
    private final fitworthy.source.Node value;

    private YamlText(String text, fitworthy.source.Node value, boolean quoted) {
        this.text = text;
        this.value = value;
        this.json = text.stripLeading().startsWith("{");
        this.quoted = quoted || json;
    }

    /**
     * The text with a value at a path, see {@link TextEdit}; whether it reads back is for the caller to see.
     *
     * @param quoted whether the value is to be in quotes; where it takes the place of one in quotes it always is
     */
    static Optional<String> with(String text, NodePath path, fitworthy.source.Node value, boolean quoted) {
        try {
            Node root = new Yaml(new LoaderOptions()).compose(new StringReader(text));
            return Optional.ofNullable(new YamlText(text, value, quoted).put(root, path.steps()));
        } catch (YAMLException e) {
            return Optional.empty();
        }
    }

    /** @return null where the steps lead to no place for a value */
    private String put(Node node, List<NodePath.Step> steps) {
        if (node instanceof ScalarNode scalar) {
            return steps.isEmpty() ? replaced(scalar, written(scalar)) : inPlaceOfNothing(scalar, steps);
        }
        if (steps.isEmpty()) {
            return null;
        }
        List<NodePath.Step> rest = steps.subList(1, steps.size());
        if (node instanceof SequenceNode list) {
            int index = steps.get(0) instanceof NodePath.Item item ? item.position() - 1 : -1;
            return index < 0 || index >= list.getValue().size()
                    ? null
                    : put(list.getValue().get(index), rest);
        }
        MappingNode group = (MappingNode) node;
        for (NodeTuple entry : group.getValue()) {
            if (entry.getKeyNode() instanceof ScalarNode key
                    && key.getValue().equals(steps.get(0).toString())) {
                return put(entry.getValueNode(), rest);
            }
        }
        return group.getFlowStyle() == FlowStyle.FLOW
                ? addedInBraces(group, entry(steps))
                : addedBelow(group, entry(steps));
    }

    private String written(ScalarNode old) {
        boolean wasQuoted =
                old.getScalarStyle() == ScalarStyle.DOUBLE_QUOTED || old.getScalarStyle() == ScalarStyle.SINGLE_QUOTED;
        return wasQuoted && value instanceof fitworthy.source.Node.Scalar word ? quoted(word.text()) : written(value);
    }

    /** A value on one line. */
    private String written(fitworthy.source.Node node) {
        if (node instanceof fitworthy.source.Node.Mapping group) {
            return group.entries().entrySet().stream()
                    .map(field -> named(field.getKey(), written(field.getValue().value())))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (node instanceof fitworthy.source.Node.Listing list) {
            return list.items().stream().map(this::written).collect(Collectors.joining(", ", "[", "]"));
        }
        String word = node instanceof fitworthy.source.Node.Scalar scalar ? scalar.text() : "";
        return quoted ? quoted(word) : word;
    }

    private String named(String name, String written) {
        return (json ? quoted(name) : name) + ": " + written;
    }

    private static String quoted(String word) {
        return '"'
                + word.replace("\\", "\\\\")
                        .replace("\"", "\\\"")
                        .replace("\n", "\\n")
                        .replace("\t", "\\t")
                + '"';
    }

    /** A field with its value, or with the group that holds it, on one line. */
    private String entry(List<NodePath.Step> steps) {
        return named(steps.get(0).toString(), inGroups(steps.subList(1, steps.size())));
    }

    private String inGroups(List<NodePath.Step> steps) {
        return steps.isEmpty() ? written(value) : "{" + entry(steps) + "}";
    }

    private String inPlaceOfNothing(ScalarNode scalar, List<NodePath.Step> steps) {
        return scalar.getTag().equals(Tag.NULL) ? replaced(scalar, inGroups(steps)) : null;
    }

    private String replaced(ScalarNode old, String by) {
        int begin = at(old.getStartMark());
        if (begin == at(old.getEndMark())) {
            return spliced(begin, begin, " " + by);
        }
        return spliced(begin, end(old), by);
    }

    /** A new line behind those of a group whose fields stand one a line. */
    private String addedBelow(MappingNode group, String entry) {
        int end = lineEnd(end(group));
        return spliced(end, end, lineBreak(first(group)) + entry);
    }

    private String addedInBraces(MappingNode group, String entry) {
        int close = at(group.getEndMark()) - 1;
        if (group.getValue().isEmpty()) {
            return spliced(at(group.getStartMark()) + 1, close, entry);
        }
        int last = end(group.getValue().get(group.getValue().size() - 1).getValueNode());
        String between = text.substring(last, close);
        boolean comma = between.replaceAll(COMMENT, "").contains(",");
        boolean onLines = between.contains("\n")
                && first(group).getStartMark().getLine() > group.getStartMark().getLine();
        if (onLines) {
            int end = lineEnd(last);
            return text.substring(0, last)
                    + (comma ? "" : ",")
                    + text.substring(last, end)
                    + lineBreak(first(group))
                    + entry
                    + (comma ? "," : "")
                    + text.substring(end);
        }
        return comma ? spliced(close, close, " " + entry) : spliced(last, last, ", " + entry);
    }

    private static Node first(MappingNode group) {
        return group.getValue().get(0).getKeyNode();
    }

    /** The end of a line and as much room as stands before a field. */
    private String lineBreak(Node field) {
        return (text.contains("\r\n") ? "\r\n" : "\n")
                + " ".repeat(field.getStartMark().getColumn());
    }

    /** Where the last letter of a value stands; a group without braces ends with the last of its own. */
    private int end(Node node) {
        if (node instanceof CollectionNode<?> group && group.getFlowStyle() != FlowStyle.FLOW) {
            Object last = group.getValue().get(group.getValue().size() - 1);
            return end(last instanceof NodeTuple entry ? entry.getValueNode() : (Node) last);
        }
        int end = at(node.getEndMark());
        // A text below a bar takes the break of its last line along.
        while (end > at(node.getStartMark()) && Character.isWhitespace(text.charAt(end - 1))) {
            end--;
        }
        return end;
    }

    private int lineEnd(int from) {
        int end = text.indexOf('\n', from);
        int last = end < 0 ? text.length() : end;
        return last > from && text.charAt(last - 1) == '\r' ? last - 1 : last;
    }

    private int at(Mark mark) {
        return text.offsetByCodePoints(0, mark.getIndex());
    }

    private String spliced(int begin, int end, String by) {
        return text.substring(0, begin) + by + text.substring(end);
    }
}
