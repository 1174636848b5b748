package fitworthy.source;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Changed copies of node trees. What is not changed is shared with the first tree, and keeps its place in the file.
 */
public final class Trees {

    private Trees() {}

    /** The base with the changes' fields in place of its own; lists of named things are merged by name. */
    public static Node.Mapping merged(Node.Mapping base, Node.Mapping changes) {
        Map<String, Node.Entry> entries = new LinkedHashMap<>(base.entries());
        changes.entries()
                .forEach((key, entry) -> entries.merge(
                        key,
                        entry,
                        (old, change) -> new Node.Entry(change.place(), merged(old.value(), change.value()))));
        return new Node.Mapping(base.place(), entries);
    }

    private static Node merged(Node base, Node change) {
        if (base instanceof Node.Mapping old && change instanceof Node.Mapping changes) {
            return merged(old, changes);
        }
        if (base instanceof Node.Listing old
                && change instanceof Node.Listing changes
                && changes.items().stream().allMatch(item -> item.name() != null)) {
            List<Node> items = new ArrayList<>(old.items());
            for (Node item : changes.items()) {
                int same = indexOf(items, item.name());
                if (same < 0) {
                    items.add(item);
                } else {
                    items.set(same, merged(items.get(same), item));
                }
            }
            return new Node.Listing(change.place(), items);
        }
        return change;
    }

    /** A copy without what the path leads to; of several words in a list that are the same none is left. */
    public static Node.Mapping without(Node.Mapping root, NodePath path) {
        return (Node.Mapping) changed(root, path.steps(), null);
    }

    /** A copy in which the path leads to this value; what is absent on the way there is not made. */
    public static Node.Mapping with(Node.Mapping root, NodePath path, Node value) {
        return (Node.Mapping) changed(root, path.steps(), value);
    }

    /** The same for a text, which stands where its group does. */
    public static Node.Mapping with(Node.Mapping root, NodePath path, String text) {
        return with(root, path, new Node.Scalar(path.above().nearestIn(root).place(), text, false));
    }

    /** A copy in which the path leads to this value, with the groups that are absent on the way there, at the nearest place. */
    public static Node.Mapping making(Node.Mapping root, NodePath path, Node value) {
        Node.Mapping made = root;
        NodePath above = NodePath.TOP;
        for (NodePath.Step step : path.above().steps()) {
            above = new NodePath(above, step);
            Node found = above.in(made);
            if (found == null || found instanceof Node.Blank) {
                made = with(made, above, new Node.Mapping(above.nearestIn(made).place(), Map.of()));
            }
        }
        return with(made, path, value);
    }

    /** Whether two trees say the same, wherever it stands and however it is written. */
    public static boolean alike(Node one, Node other) {
        if (one instanceof Node.Mapping group && other instanceof Node.Mapping with) {
            return group.entries().keySet().equals(with.entries().keySet())
                    && group.entries().keySet().stream().allMatch(name -> alike(group.get(name), with.get(name)));
        }
        if (one instanceof Node.Listing list && other instanceof Node.Listing with) {
            return list.items().size() == with.items().size()
                    && IntStream.range(0, list.items().size())
                            .allMatch(
                                    i -> alike(list.items().get(i), with.items().get(i)));
        }
        return one instanceof Node.Scalar word && other instanceof Node.Scalar with
                ? word.text().equals(with.text())
                : one instanceof Node.Blank && other instanceof Node.Blank;
    }

    /** @param value null to take out what stands there */
    private static Node changed(Node node, List<NodePath.Step> steps, Node value) {
        NodePath.Step step = steps.get(0);
        List<NodePath.Step> rest = steps.subList(1, steps.size());
        if (node instanceof Node.Mapping mapping && step instanceof NodePath.Named named) {
            String field = named.name();
            if (!rest.isEmpty()) {
                return mapping.get(field) == null
                        ? mapping
                        : mapping.with(field, changed(mapping.get(field), rest, value));
            }
            return value == null ? mapping.without(field) : mapping.with(field, value);
        }
        if (node instanceof Node.Listing listing) {
            List<Node> items = new ArrayList<>(listing.items());
            int index = NodePath.index(listing, step);
            if (index >= 0 && !rest.isEmpty()) {
                items.set(index, changed(items.get(index), rest, value));
            } else if (index >= 0 && value != null) {
                items.set(index, value);
            } else if (index >= 0 && items.get(index) instanceof Node.Scalar word && step instanceof NodePath.Named) {
                items.removeIf(item ->
                        item instanceof Node.Scalar other && other.text().equals(word.text()));
            } else if (index >= 0) {
                items.remove(index);
            }
            return new Node.Listing(listing.place(), items);
        }
        return node;
    }

    private static int indexOf(List<Node> items, String name) {
        for (int i = 0; i < items.size(); i++) {
            if (name.equals(items.get(i).name())) {
                return i;
            }
        }
        return -1;
    }
}
