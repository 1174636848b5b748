package fitworthy.source;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Changed copies of node trees. A path is a list of steps; a step into a list is the {@code name} of one of its items.
 * What is not changed is shared with the first tree, and keeps its place in the file.
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
                && changes.items().stream().allMatch(each -> name(each) != null)) {
            List<Node> items = new ArrayList<>(old.items());
            for (Node item : changes.items()) {
                int same = indexOf(items, name(item));
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

    /** What the path leads to, or null. */
    public static Node at(Node root, List<String> path) {
        Node node = root;
        for (String step : path) {
            if (node instanceof Node.Listing listing) {
                int index = indexOf(listing.items(), step);
                node = index < 0 ? null : listing.items().get(index);
            } else {
                node = node instanceof Node.Mapping mapping ? mapping.get(step) : null;
            }
        }
        return node;
    }

    /** A copy without what the path leads to. */
    public static Node.Mapping without(Node.Mapping root, List<String> path) {
        return (Node.Mapping) changed(root, path, null);
    }

    /** A copy in which the path leads to this text; a mapping on the way that is absent is not made. */
    public static Node.Mapping with(Node.Mapping root, List<String> path, String text) {
        return (Node.Mapping) changed(root, path, text);
    }

    private static Node changed(Node node, List<String> path, String text) {
        String step = path.get(0);
        List<String> rest = path.subList(1, path.size());
        if (node instanceof Node.Mapping mapping) {
            if (!rest.isEmpty()) {
                return mapping.get(step) == null ? mapping : mapping.with(step, changed(mapping.get(step), rest, text));
            }
            return text == null
                    ? mapping.without(step)
                    : mapping.with(step, new Node.Scalar(mapping.place(), text, false));
        }
        if (node instanceof Node.Listing listing) {
            List<Node> items = new ArrayList<>(listing.items());
            int index = indexOf(items, step);
            if (index < 0) {
                items.removeIf(each -> text == null
                        && each instanceof Node.Scalar scalar
                        && scalar.text().equals(step));
            } else if (rest.isEmpty()) {
                items.remove(index);
            } else {
                items.set(index, changed(items.get(index), rest, text));
            }
            return new Node.Listing(listing.place(), items);
        }
        return node;
    }

    private static int indexOf(List<Node> items, String name) {
        for (int i = 0; i < items.size(); i++) {
            if (name.equals(name(items.get(i)))) {
                return i;
            }
        }
        return -1;
    }

    /** The text of a mapping's {@code name}, or null. */
    public static String name(Node node) {
        return node instanceof Node.Mapping mapping && mapping.get("name") instanceof Node.Scalar scalar
                ? scalar.text()
                : null;
    }
}
