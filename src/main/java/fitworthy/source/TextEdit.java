package fitworthy.source;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Puts a value into a YAML or JSON text and leaves all else as its author wrote it: comments, order and layout. No text
 * comes out that does not read back as the same tree with that value in it.
 */
public final class TextEdit {

    private TextEdit() {}

    /**
     * The text with a value at a path: in place of what stands there, else as a new entry at the end of its group, which
     * is made where there is none.
     *
     * @param text what {@link NodeReader} reads without a fault
     * @param path to a single value; an item of a list on the way has to be there
     * @return empty where that cannot be written, as where a list stands at the path
     */
    public static Optional<String> with(String text, NodePath path, String value) {
        return with(text, path, new Node.Scalar(Place.of(""), value, false));
    }

    /** The same for a value that may be a group or a list of others, which then stands on one line. */
    public static Optional<String> with(String text, NodePath path, Node value) {
        Node.Mapping before = read(text);
        if (before == null || path.isTop()) {
            return Optional.empty();
        }
        Node wanted = Trees.making(before, path, value);
        return Stream.of(false, true)
                .flatMap(quoted -> YamlText.with(text, path, value, quoted).stream())
                .filter(edited -> Trees.alike(wanted, read(edited)))
                .findFirst();
    }

    /** Null where the text has a fault. */
    private static Node.Mapping read(String text) {
        List<Fault> faults = new ArrayList<>();
        Node.Mapping root = NodeReader.read("", text, faults);
        return faults.isEmpty() ? root : null;
    }
}
