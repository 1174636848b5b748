package fitworthy.counter.desk;

import fitworthy.source.Node;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** What of a tree a change touches: values by their way there, with the names of items. */
final class Touched {

    private static final String GROUP = "{}";

    private final Map<List<String>, String> before;
    private final Set<List<String>> touched = new HashSet<>();
    private final Set<List<String>> goneGroups = new HashSet<>();

    /** @param before null where it is no tree @param after the same */
    Touched(Node before, Node after) {
        this.before = values(before);
        Map<List<String>, String> then = values(after);
        Set<List<String>> all = new HashSet<>(this.before.keySet());
        all.addAll(then.keySet());
        all.stream()
                .filter(way -> !Objects.equals(this.before.get(way), then.get(way)))
                .forEach(way -> touch(way, !then.containsKey(way)));
    }

    /** A value, and that there is the group in which it stands. */
    private void touch(List<String> way, boolean gone) {
        touched.add(way);
        if (!way.isEmpty()) {
            touched.add(way.subList(0, way.size() - 1));
        }
        if (gone && before.get(way).equals(GROUP)) {
            goneGroups.add(way);
        }
    }

    /** Whether all of it is the same in another tree, and what goes has nothing new within. */
    boolean isSameIn(Node tree) {
        Map<List<String>, String> other = values(tree);
        return touched.stream().allMatch(way -> Objects.equals(before.get(way), other.get(way)))
                && other.keySet().stream().noneMatch(way -> !before.containsKey(way) && isWithinGone(way));
    }

    private boolean isWithinGone(List<String> way) {
        return goneGroups.stream()
                .anyMatch(group -> way.size() > group.size()
                        && way.subList(0, group.size()).equals(group));
    }

    private static Map<List<String>, String> values(Node tree) {
        Map<List<String>, String> values = new HashMap<>();
        collect(tree, List.of(), values);
        return values;
    }

    private static void collect(Node node, List<String> way, Map<List<String>, String> values) {
        if (node instanceof Node.Mapping group) {
            values.put(way, GROUP);
            group.entries().forEach((name, field) -> collect(field.value(), to(way, name), values));
        } else if (node instanceof Node.Listing list) {
            values.put(way, GROUP);
            for (Node item : list.items()) {
                List<String> one = to(way, called(item));
                while (values.containsKey(one)) {
                    one = to(way, one.get(one.size() - 1) + "'");
                }
                collect(item, one, values);
            }
        } else if (node instanceof Node.Scalar word) {
            values.put(way, word.text());
        }
    }

    private static List<String> to(List<String> way, String step) {
        List<String> longer = new ArrayList<>(way);
        longer.add(step);
        return List.copyOf(longer);
    }

    /** The name of an item, or the name under which it is taken from the shelf, whether alone or not. */
    private static String called(Node item) {
        if (item instanceof Node.Mapping group) {
            return item.name() == null && group.get("from") instanceof Node.Scalar from
                    ? from.text()
                    : String.valueOf(item.name());
        }
        return item instanceof Node.Scalar word ? word.text() : "";
    }
}
