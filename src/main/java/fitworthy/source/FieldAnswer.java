package fitworthy.source;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What somebody answers for a field of a file.
 *
 * @param place where it was typed
 * @param field the path of the field, by the names of items in lists
 * @param value as the file is to have it
 */
public record FieldAnswer(Place place, String field, String value) {

    private static final String EXAMPLE = "path=value, such as \"fitments.Front bar.mass=95 kg\"";

    /** What was typed as {@code path=value}; null with a fault where it is not of that form. */
    public static FieldAnswer parse(Place place, String typed, List<Fault> faults) {
        String[] parts = typed.split("=", 2);
        if (parts.length < 2 || parts[0].isBlank() || parts[1].isBlank()) {
            faults.add(new Fault(place, "", "'" + Words.shortened(typed, 60) + "' is no answer to a field", EXAMPLE));
            return null;
        }
        return new FieldAnswer(place, parts[0].strip(), parts[1].strip());
    }

    /** Where its field stands; null with a fault where a list on the way has no such item. */
    public NodePath path(Node.Mapping tree, List<Fault> faults) {
        NodePath path = field.isEmpty() ? null : NodePath.find(field, tree);
        if (path == null) {
            faults.add(new Fault(
                    place, field, "no item of the list has this name" + Words.suggestion(field, near(tree)), EXAMPLE));
        }
        return path;
    }

    /** The same field of each item of the lists at the top. */
    private List<String> near(Node.Mapping tree) {
        String last = field.substring(field.lastIndexOf('.') + 1);
        List<String> fields = new ArrayList<>();
        tree.entries().forEach((name, entry) -> {
            if (entry.value() instanceof Node.Listing list) {
                list.items().forEach(item -> fields.add(name + "." + item.name() + "." + last));
            }
        });
        return fields;
    }

    /** A tree with it. @param path where its field stands @param words where a word makes room for it */
    public Node.Mapping in(Node.Mapping tree, NodePath path, WordField words) {
        Node.Mapping made = tree;
        NodePath above = NodePath.TOP;
        for (NodePath.Step step : path.above().steps()) {
            above = new NodePath(above, step);
            Optional<String> field = words.at(above);
            if (field.isPresent() && above.in(made) instanceof Node.Scalar word) {
                made = Trees.with(made, above, new Node.Mapping(word.place(), Map.of()).with(field.get(), word));
            }
        }
        return Trees.making(made, path, scalar());
    }

    private Node.Scalar scalar() {
        return new Node.Scalar(place, value, false);
    }

    /**
     * A text with it, all else as it was; null with a fault where it can only be written by hand.
     *
     * @param text the file, of which the tree may have more than stands in it itself
     * @param tree what was read
     * @param path where its field stands in the tree
     * @param words where a word makes room for it
     */
    public ReadText in(ReadText text, Node.Mapping tree, NodePath path, WordField words, List<Fault> faults) {
        Optional<ReadText> edited = Insertion.of(text.tree(), tree, path, scalar(), words)
                .flatMap(insertion -> TextEdit.with(text, insertion.path(), insertion.value()));
        if (edited.isEmpty()) {
            faults.add(byHand(path));
        }
        return edited.orElse(null);
    }

    /** That somebody has to write it. @param path where its field stands */
    public Fault byHand(NodePath path) {
        return new Fault(
                place,
                field,
                "this cannot be written into the file as it is laid out",
                "write '" + path.last() + ": " + Words.shortened(value, 60) + "' there by hand");
    }
}
