package fitworthy.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Edits at random places of the shipped sheets, of their shelf and of the sheets that cases are made of. */
class TextEditProperties {

    private static final List<String> TEXTS = texts();
    private static final Place NOWHERE = Place.of("");

    private static final List<Node> ITEMS = List.of(
            word("Front bar"),
            word("a, b: \"c\" # d"),
            new Node.Mapping(NOWHERE, java.util.Map.of())
                    .with("name", word("Box"))
                    .with("mass", word("about 5 kg")));

    private static Node.Scalar word(String text) {
        return new Node.Scalar(NOWHERE, text, false);
    }

    /** What is taken out takes its own lines along, with comments straight above, and no letter of another. */
    @Property(tries = 1500)
    void whatIsTakenOutTakesNothingElseAlong(
            @ForAll @IntRange(max = 1_000_000) int file, @ForAll @IntRange(max = 1_000_000) int place) {
        String text = TEXTS.get(file % TEXTS.size());
        Node.Mapping root = tree(text);
        List<NodePath> paths = paths(root, NodePath.TOP).skip(1).toList();
        NodePath path = paths.get(place % paths.size());
        String edited = TextEdit.without(text, path).orElseThrow(() -> new AssertionError(path + "\n" + text));
        Node.Mapping left = tree(edited);
        // Nothing at the path, and every other value as it was, in the same order.
        List<String> before = values(root, NodePath.TOP);
        List<String> gone = values(path.in(root), NodePath.TOP);
        List<String> after = values(left, NodePath.TOP);
        int first = values(root, path).size();
        List<String> expected = new ArrayList<>(before.subList(0, first));
        expected.addAll(before.subList(first + gone.size(), before.size()));
        assertEquals(expected, after, path::toString);
        // Every line above the comments of what is gone, and every line below its last.
        List<String> lines = text.lines().toList();
        List<String> leftLines = edited.lines().toList();
        int above = path.above().in(root).place().line() - 1;
        assertEquals(lines.subList(0, Math.max(0, above - 1)), leftLines.subList(0, Math.max(0, above - 1)));
        // The second field of an item comes up to the dash where the first is gone.
        int joined = isFirst(path, root) ? 1 : 0;
        int last = Math.min(
                lines.size(), lastLine(path.in(root), path.in(root).place().line()) + joined);
        int below = lines.size() - last;
        assertEquals(lines.subList(last, lines.size()), leftLines.subList(leftLines.size() - below, leftLines.size()));
        // A comment goes only with what it stands beside or straight above.
        long comments = lines.subList(0, above).stream()
                .filter(line -> line.contains("#"))
                .count();
        assertTrue(leftLines.stream().filter(line -> line.contains("#")).count() >= comments - 1);
    }

    /** An item comes at the end of its list, on one line, and no letter of the text goes. */
    @Property(tries = 1500)
    void whatIsAddedLeavesEveryLetter(
            @ForAll @IntRange(max = 1_000_000) int file,
            @ForAll @IntRange(max = 1_000_000) int place,
            @ForAll @IntRange(max = 2) int kind) {
        String text = TEXTS.get(file % TEXTS.size());
        Node.Mapping root = tree(text);
        List<NodePath> lists = Stream.concat(
                        paths(root, NodePath.TOP).filter(path -> path.in(root) instanceof Node.Listing),
                        paths(root, NodePath.TOP)
                                .filter(path -> path.in(root) instanceof Node.Mapping)
                                .map(path -> path.to("not-there")))
                .toList();
        NodePath list = lists.get(place % lists.size());
        String edited = TextEdit.appended(text, list, ITEMS.get(kind))
                .orElseThrow(() -> new AssertionError(list + "\n" + text));
        int count = list.in(root) instanceof Node.Listing items ? items.items().size() : 0;
        Node.Listing after = (Node.Listing) list.in(tree(edited));
        assertEquals(count + 1, after.items().size());
        assertTrue(Trees.alike(ITEMS.get(kind), after.items().get(count)));
        boolean isNew = list.in(root) == null;
        if (isNew || count > 0) {
            NodePath added = isNew ? list : list.to(count + 1);
            assertEquals(text, TextEdit.without(edited, added).orElseThrow(), list::toString);
        }
    }

    /** Whatever stands at a path, something else takes its place on one line. */
    @Property(tries = 1500)
    void whatIsExchangedLeavesTheRest(
            @ForAll @IntRange(max = 1_000_000) int file,
            @ForAll @IntRange(max = 1_000_000) int place,
            @ForAll @IntRange(max = 2) int kind) {
        String text = TEXTS.get(file % TEXTS.size());
        Node.Mapping root = tree(text);
        List<NodePath> paths = paths(root, NodePath.TOP).skip(1).toList();
        NodePath path = paths.get(place % paths.size());
        String edited = TextEdit.exchanged(text, path, ITEMS.get(kind))
                .orElseThrow(() -> new AssertionError(path + "\n" + text));
        assertTrue(Trees.alike(Trees.with(root, path, ITEMS.get(kind)), tree(edited)), path::toString);
        List<String> lines = text.lines().toList();
        List<String> after = edited.lines().toList();
        int above = path.above().in(root).place().line() - 1;
        assertEquals(lines.subList(0, Math.max(0, above - 1)), after.subList(0, Math.max(0, above - 1)));
        int below = lines.size() - lastLine(path.in(root), path.in(root).place().line());
        assertEquals(
                lines.subList(lines.size() - below, lines.size()), after.subList(after.size() - below, after.size()));
    }

    private static Node.Mapping tree(String text) {
        List<Fault> faults = new ArrayList<>();
        Node.Mapping root = NodeReader.read("sheet", text, faults);
        assertEquals(List.of(), faults, text);
        return root;
    }

    private static boolean isFirst(NodePath path, Node root) {
        return children(path.above().in(root)).get(0) == path.in(root);
    }

    private static int lastLine(Node node, int line) {
        if (node instanceof Node.Scalar word && word.text().contains("\n")) {
            return line + (int) word.text().lines().count();
        }
        return children(node).stream()
                .mapToInt(child -> lastLine(child, child.place().line()))
                .reduce(line, Math::max);
    }

    private static List<Node> children(Node node) {
        return node instanceof Node.Mapping group
                ? group.entries().values().stream().map(Node.Entry::value).toList()
                : node instanceof Node.Listing list ? list.items() : List.of();
    }

    /** Every single value in order, down to where a path leads; all of them where that is the top. */
    private static List<String> values(Node node, NodePath until) {
        List<String> values = new ArrayList<>();
        collect(node, NodePath.TOP, until, values);
        return values;
    }

    /** @return whether the path has been reached */
    private static boolean collect(Node node, NodePath here, NodePath until, List<String> values) {
        if (!until.isTop() && here.equals(until)) {
            return true;
        }
        if (node instanceof Node.Mapping group) {
            return group.entries().entrySet().stream()
                    .anyMatch(field -> collect(field.getValue().value(), here.to(field.getKey()), until, values));
        }
        if (node instanceof Node.Listing list) {
            return IntStream.rangeClosed(1, list.items().size())
                    .anyMatch(i -> collect(list.items().get(i - 1), here.to(i), until, values));
        }
        values.add(node instanceof Node.Scalar word ? word.text() : "nothing");
        return false;
    }

    private static Stream<NodePath> paths(Node node, NodePath path) {
        Stream<NodePath> below = node instanceof Node.Mapping group
                ? group.entries().entrySet().stream()
                        .flatMap(field -> paths(field.getValue().value(), path.to(field.getKey())))
                : node instanceof Node.Listing list
                        ? IntStream.rangeClosed(1, list.items().size())
                                .boxed()
                                .flatMap(i -> paths(list.items().get(i - 1), path.to(i)))
                        : Stream.of();
        return Stream.concat(Stream.of(path), below);
    }

    private static List<String> texts() {
        try {
            List<String> texts = new ArrayList<>();
            // Sheets and their shelf as often as the many small sheets of the cases.
            for (int i = 0; i < 20; i++) {
                texts.addAll(TextEditTest.files("scenarios", "scenarios/.*yaml").stream()
                        .map(TextEditProperties::text)
                        .toList());
            }
            texts.addAll(TextEditTest.texts());
            return texts;
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
