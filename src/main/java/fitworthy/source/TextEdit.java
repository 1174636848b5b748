package fitworthy.source;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * Puts a value into a YAML or JSON text, or takes one out, and leaves all else as its author wrote it: comments, order
 * and layout. No text comes out that does not read back as the same tree with that changed.
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
        return Optional.ofNullable(read("", text))
                .flatMap(tree -> with(new ReadText(text, tree), path, value))
                .map(ReadText::text);
    }

    /** The same for a text that has been read. */
    static Optional<ReadText> with(ReadText text, NodePath path, Node value) {
        return edited(
                text,
                path,
                before -> Trees.making(before, path, value),
                List.of(quoted -> YamlText.with(text.text(), path, value, quoted)));
    }

    /** The text with a value in place of whatever stands at a path, be it a group or a list. */
    public static Optional<String> exchanged(String text, NodePath path, Node value) {
        return edited(
                text,
                path,
                before -> path.in(before) == null ? null : Trees.with(before, path, value),
                List.of(quoted -> YamlText.exchanged(text, path, value, quoted)));
    }

    /**
     * The text with one more item at the end of a list, which is begun where it is not there.
     *
     * @param item a word, or a group, which stands on one line
     */
    public static Optional<String> appended(String text, NodePath path, Node item) {
        Node.Listing begun = new Node.Listing(item.place(), List.of(item));
        return edited(
                text,
                path,
                before -> Trees.making(
                        before, path, path.in(before) instanceof Node.Listing list ? list.and(item) : begun),
                List.of(
                        quoted -> YamlText.appended(text, path, item, quoted),
                        quoted -> YamlText.with(text, path, begun, quoted)));
    }

    /**
     * The text without the field or the item at a path, and without the comments that are its own. A group or list that
     * is left with nothing in it stays.
     *
     * @param path an item of a list by its position
     */
    public static Optional<String> without(String text, NodePath path) {
        return edited(
                text,
                path,
                before -> path.in(before) == null ? null : Trees.without(before, path),
                List.of(quoted -> YamlCut.without(text, path)));
    }

    private static Optional<String> edited(
            String text,
            NodePath path,
            UnaryOperator<Node.Mapping> wanted,
            List<Function<Boolean, Optional<String>>> ways) {
        return Optional.ofNullable(read("", text))
                .flatMap(tree -> edited(new ReadText(text, tree), path, wanted, ways))
                .map(ReadText::text);
    }

    /** @param wanted what is to come out of what stands there, null where that cannot be */
    private static Optional<ReadText> edited(
            ReadText text,
            NodePath path,
            UnaryOperator<Node.Mapping> wanted,
            List<Function<Boolean, Optional<String>>> ways) {
        Node.Mapping after = path.isTop() ? null : wanted.apply(text.tree());
        String file = text.tree().place().file();
        return after == null
                ? Optional.empty()
                : ways.stream()
                        .flatMap(way -> Stream.of(false, true).flatMap(quoted -> way.apply(quoted).stream()))
                        .map(edited -> new ReadText(edited, read(file, edited)))
                        .filter(edited -> Trees.alike(after, edited.tree()))
                        .findFirst();
    }

    /** Null where the text has a fault. */
    private static Node.Mapping read(String file, String text) {
        List<Fault> faults = new ArrayList<>();
        Node.Mapping root = NodeReader.read(file, text, faults);
        return faults.isEmpty() ? root : null;
    }
}
