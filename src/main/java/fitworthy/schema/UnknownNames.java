package fitworthy.schema;

import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Trees;
import fitworthy.source.Words;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Names that no field of a page has: what may be meant, and where such a field does stand. */
final class UnknownNames {

    private static final int MOST_GROUPS = 3;

    /** What follows a decimal comma that stands within braces. */
    private static final Pattern CUT = Pattern.compile("[0-9].*");

    private final Class<? extends Record> page;
    private final BoundTree tree;
    private final Set<String> doubtful = new HashSet<>();
    private final Map<NodePath, String> misspelt = new LinkedHashMap<>();

    UnknownNames(Class<? extends Record> page, BoundTree tree) {
        this.page = page;
        this.tree = tree;
    }

    /** The paths, from the top of the page, of what may be given under a wrong name. */
    Set<String> doubtful() {
        return doubtful;
    }

    /** Groups and lists under a wrong name that is near a right one, each with that. */
    Map<NodePath, String> misspelt() {
        return misspelt;
    }

    /** The tree with the right names of what is misspelt, so that what stands below them is looked at as well. */
    Node asMeant(Node root) {
        Node.Mapping meant = (Node.Mapping) root;
        for (Map.Entry<NodePath, String> wrong : misspelt.entrySet()) {
            NodePath path = wrong.getKey();
            Node value = path.in(meant);
            meant = Trees.without(meant, path);
            NodePath group = path.above();
            Node.Mapping in = (Node.Mapping) group.in(meant);
            meant = group.isTop()
                    ? in.with(wrong.getValue(), value)
                    : Trees.with(meant, group, in.with(wrong.getValue(), value));
        }
        return meant;
    }

    /** Tells of the names in a group that no field has. @param ofKind null where it has no fields by a kind */
    void tell(RecordSchema schema, RecordSchema ofKind, Node.Mapping mapping, NodePath path) {
        Set<String> names = new LinkedHashSet<>(schema.names());
        if (ofKind != null) {
            names.addAll(ofKind.names());
        }
        mapping.entries().forEach((name, entry) -> {
            if (!names.contains(name)) {
                String near = Words.nearest(name, names);
                String suggested = Words.suggestions(name, names);
                String kinds = kindsWith(schema, name);
                String known = suggested + (kinds.isEmpty() ? elsewhere(name) : kinds);
                if (near != null && mapping.get(near) == null && !(entry.value() instanceof Node.Scalar)) {
                    misspelt.putIfAbsent(path.to(name), near);
                }
                if (near != null || known.isEmpty()) {
                    doubtful.add(tree.inPage(near == null ? path : path.to(near)));
                }
                boolean cut = CUT.matcher(name).matches() && entry.value() instanceof Node.Blank;
                tree.tell(
                        entry.place(),
                        path.to(name),
                        "no field has this name" + (cut ? "; within braces a comma ends the value before it" : known),
                        cut
                                ? "a decimal point, or the value in quotes, as in '" + before(mapping, name) + ","
                                        + name + "'"
                                : FieldPlaces.written(page, name)
                                        .filter(there -> kinds.isEmpty())
                                        .orElse("one of " + String.join(", ", names)));
            }
        });
    }

    /** The value that stands before a name in a group, as a comma has cut it off. */
    private static String before(Node.Mapping mapping, String name) {
        String value = "";
        for (Map.Entry<String, Node.Entry> entry : mapping.entries().entrySet()) {
            if (entry.getKey().equals(name)) {
                break;
            }
            value = entry.getValue().value() instanceof Node.Scalar scalar ? scalar.text() : "";
        }
        return value;
    }

    /** The groups that do have a field of this name, where they are few. */
    private String elsewhere(String name) {
        List<String> groups = FieldPlaces.of(page, name);
        return groups.isEmpty() || groups.size() > MOST_GROUPS ? "" : "; it stands " + String.join(" and ", groups);
    }

    /** The kinds of part that do have a field, where this kind does not. */
    private static String kindsWith(RecordSchema schema, String name) {
        List<String> kinds = schema.kinds()
                .filter(kind -> RecordSchema.of(kind.details()).names().contains(name))
                .map(kind -> Words.hyphenated(((Enum<?>) kind).name()))
                .toList();
        return kinds.isEmpty() ? "" : "; one of kind " + String.join(" or ", kinds) + " has it";
    }
}
