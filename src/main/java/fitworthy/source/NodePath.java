package fitworthy.source;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The way from the top of a tree of nodes to one of its values, such as {@code fitments.3.at} or
 * {@code fitments.Steel bar.at}.
 *
 * @param above the way to what holds the value; null at the top
 * @param last the last step; null at the top
 */
public record NodePath(NodePath above, Step last) {

    /** The way to the whole tree. */
    public static final NodePath TOP = new NodePath(null, null);

    private static final String POSITION = "[1-9][0-9]{0,6}";

    /** One step down. */
    public sealed interface Step {}

    /** To the field of this name; in a list to the item whose {@code name} it is, or to the very word. */
    public record Named(String name) implements Step {
        @Override
        public String toString() {
            return name;
        }
    }

    /** To an item of a list. @param position counted from one */
    public record Item(int position) implements Step {
        @Override
        public String toString() {
            return String.valueOf(position);
        }
    }

    /** The path of these names. */
    public static NodePath of(String... names) {
        NodePath path = TOP;
        for (String name : names) {
            path = path.to(name);
        }
        return path;
    }

    /** The path that a text writes with dots; a step of digits is the position of an item. */
    public static NodePath parse(String text) {
        NodePath path = TOP;
        for (String step : text.split("\\.")) {
            path = step.matches(POSITION) ? path.to(Integer.parseInt(step)) : path.to(step);
        }
        return path;
    }

    /**
     * The path that a person writes with dots, in a tree whose items are called by names that may have dots themselves.
     *
     * @return it by the positions of items, or null where a list has no such item; a field need not be there yet
     */
    public static NodePath find(String text, Node root) {
        return find(text, root, TOP);
    }

    private static NodePath find(String rest, Node node, NodePath found) {
        if (rest.isEmpty()) {
            return found;
        }
        if (node instanceof Node.Listing listing) {
            List<String> names = IntStream.rangeClosed(1, listing.items().size())
                    .mapToObj(
                            position -> listing.items().get(position - 1) instanceof Node.Scalar word && !word.number()
                                    ? word.text()
                                    : TOP.to(position).byNames(listing))
                    .toList();
            String name = beginning(rest, names);
            String first = name == null ? rest.split("\\.", 2)[0] : name;
            int index = name == null && first.matches(POSITION) ? Integer.parseInt(first) - 1 : names.indexOf(first);
            return index < 0 || index >= names.size()
                    ? null
                    : find(behind(rest, first), listing.items().get(index), found.to(index + 1));
        }
        Node.Mapping group = node instanceof Node.Mapping mapping ? mapping : new Node.Mapping(null, Map.of());
        String known = beginning(rest, group.entries().keySet());
        String name = known == null ? rest.split("\\.", 2)[0] : known;
        return find(behind(rest, name), group.get(name), found.to(name));
    }

    /** The longest of some names that a path begins with, or null. */
    private static String beginning(String path, Collection<String> names) {
        return names.stream()
                .filter(name -> path.equals(name) || path.startsWith(name + "."))
                .max(Comparator.comparingInt(String::length))
                .orElse(null);
    }

    private static String behind(String path, String name) {
        return path.length() <= name.length() ? "" : path.substring(name.length() + 1);
    }

    public NodePath to(String name) {
        return new NodePath(this, new Named(name));
    }

    /** @param position counted from one */
    public NodePath to(int position) {
        return new NodePath(this, new Item(position));
    }

    /** This way, and from where it leads to on by another. */
    public NodePath to(NodePath further) {
        return further.isTop() ? this : new NodePath(to(further.above), further.last);
    }

    public boolean isTop() {
        return above == null;
    }

    /** The steps from the top down. */
    public List<Step> steps() {
        List<Step> steps = above == null ? new ArrayList<>() : above.steps();
        if (above != null) {
            steps.add(last);
        }
        return steps;
    }

    /** The same path with one name in place of another. */
    public NodePath renamed(String name, String other) {
        return above == null
                ? this
                : new NodePath(above.renamed(name, other), last.equals(new Named(name)) ? new Named(other) : last);
    }

    /** What it leads to, or null. */
    public Node in(Node root) {
        return above == null ? root : below(above.in(root), last);
    }

    /** What it leads to, or the last that there is on the way. */
    public Node nearestIn(Node root) {
        if (above == null) {
            return root;
        }
        Node found = in(root);
        return found == null ? above.nearestIn(root) : found;
    }

    /** As a person would write it, with the names of the items in lists where they have one. */
    public String byNames(Node root) {
        if (above == null) {
            return "";
        }
        Node item = last instanceof Item ? in(root) : null;
        String name = item == null ? null : item.name();
        return joined(above.byNames(root), name == null ? last.toString() : name);
    }

    private static Node below(Node node, Step step) {
        if (node instanceof Node.Mapping mapping && step instanceof Named named) {
            return mapping.get(named.name());
        }
        if (node instanceof Node.Listing listing) {
            int index = index(listing, step);
            return index < 0 ? null : listing.items().get(index);
        }
        return null;
    }

    /** Where in a list a step leads to, counted from zero; -1 where to nothing. */
    static int index(Node.Listing listing, Step step) {
        List<Node> items = listing.items();
        if (step instanceof Item item) {
            return item.position() >= 1 && item.position() <= items.size() ? item.position() - 1 : -1;
        }
        for (int i = 0; i < items.size(); i++) {
            if (step.toString().equals(nameOrWord(items.get(i)))) {
                return i;
            }
        }
        return -1;
    }

    private static String nameOrWord(Node item) {
        return item instanceof Node.Scalar scalar ? scalar.text() : item.name();
    }

    private static String joined(String path, String step) {
        return path.isEmpty() ? step : path + "." + step;
    }

    /** By the positions of items in lists, as faults tell it. */
    @Override
    public String toString() {
        return above == null ? "" : joined(above.toString(), last.toString());
    }
}
