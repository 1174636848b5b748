package fitworthy.source;

import java.io.StringReader;
import java.util.List;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.nodes.CollectionNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;

/**
 * A text with the places where its values begin and end. Of JSON it takes what YAML does, which is all but tabs.
 */
final class YamlPlaces {

    private final String text;
    private final Spot top;

    /**
     * A value of the text.
     *
     * @param above the group or list that it stands in; null at the top
     * @param index where among those of its group or list, from zero
     */
    record Spot(Spot above, int index, Node node) {

        boolean isTop() {
            return above == null;
        }

        /** The name of the field, where it is one; else null. */
        Node key() {
            return above != null && above.entries().get(index) instanceof NodeTuple field ? field.getKeyNode() : null;
        }

        List<?> entries() {
            return node instanceof CollectionNode<?> group ? group.getValue() : List.of();
        }

        Spot at(int position) {
            Object entry = entries().get(position);
            return new Spot(this, position, entry instanceof NodeTuple field ? field.getValueNode() : (Node) entry);
        }

        /** Whether it stands in braces or brackets. */
        boolean isFlow() {
            return node instanceof CollectionNode<?> group && group.getFlowStyle() == FlowStyle.FLOW;
        }

        /** Whether it or anything that holds it does. */
        boolean isWithinFlow() {
            return isFlow() || above != null && above.isWithinFlow();
        }
    }

    /** @throws org.yaml.snakeyaml.error.YAMLException where it is no YAML */
    YamlPlaces(String text) {
        this.text = text;
        this.top = new Spot(null, 0, new Yaml(new LoaderOptions()).compose(new StringReader(text)));
    }

    boolean isJson() {
        return text.stripLeading().startsWith("{");
    }

    /** Where a path leads to; null where to nothing. */
    Spot find(NodePath path) {
        if (path.isTop()) {
            return top;
        }
        Spot group = find(path.above());
        for (int i = 0; group != null && i < group.entries().size(); i++) {
            Spot entry = group.at(i);
            boolean same = entry.key() instanceof ScalarNode key
                    ? path.last().equals(new NodePath.Named(key.getValue()))
                    : path.last().equals(new NodePath.Item(i + 1));
            if (same) {
                return entry;
            }
        }
        return null;
    }

    int at(Mark mark) {
        return text.offsetByCodePoints(0, mark.getIndex());
    }

    /** Where a field with its name begins, or an item with its dash. */
    int begin(Spot spot) {
        int begin = at((spot.key() == null ? spot.node : spot.key()).getStartMark());
        return spot.key() == null && !spot.above.isFlow() ? text.lastIndexOf('-', begin - 1) : begin;
    }

    /** Where the last letter of a value stands; a group without braces ends with the last of its own. */
    int end(Spot spot) {
        if (!spot.entries().isEmpty() && !spot.isFlow()) {
            return end(spot.at(spot.entries().size() - 1));
        }
        int end = at(spot.node.getEndMark());
        // A text below a bar takes the break of its last line along.
        while (end > at(spot.node.getStartMark()) && Character.isWhitespace(text.charAt(end - 1))) {
            end--;
        }
        return end;
    }

    int lineBegin(int from) {
        return text.lastIndexOf('\n', from - 1) + 1;
    }

    int lineEnd(int from) {
        int end = text.indexOf('\n', from);
        int last = end < 0 ? text.length() : end;
        return last > from && text.charAt(last - 1) == '\r' ? last - 1 : last;
    }

    boolean isBlank(int begin, int end) {
        return text.substring(begin, end).isBlank();
    }

    /** The end of a line and as much room as stands before this place. */
    String lineBreak(int place) {
        return lineBreak() + " ".repeat(place - lineBegin(place));
    }

    String lineBreak() {
        return text.contains("\r\n") ? "\r\n" : "\n";
    }

    String spliced(int begin, int end, String by) {
        return text.substring(0, begin) + by + text.substring(end);
    }

    String text() {
        return text;
    }
}
