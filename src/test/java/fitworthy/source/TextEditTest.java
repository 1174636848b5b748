package fitworthy.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A value goes into a text, and every other letter of it stays. */
class TextEditTest {

    private static final String SHEET =
            """
            # The van of a friend
            title: "Van: the first"   # as it is called
            vehicle:
              name: Van
              ratings: {gvm: 3500 kg, gcm: 6000 kg}  # plate
              size:
                wheelbase: about 3.2 m   # by pacing

              # Told later
              spare:
            fitments:
              - name: Front bar
                kind: front-bar   # steel
                at: {x: -700 mm,
                     y: 0 mm}
              - {name: Tank 2.0, note: a}
            papers: {}
            trip:
              note: |
                Over the
                mountains
            """;

    private static Node.Mapping tree(String text) {
        List<Fault> faults = new ArrayList<>();
        Node.Mapping root = NodeReader.read("sheet", text, faults);
        assertEquals(List.of(), faults, text);
        return root;
    }

    private static String with(String text, String path, String value) {
        return TextEdit.with(text, NodePath.find(path, tree(text)), value).orElse("not to be written");
    }

    /** The lines that a change took out and put in. */
    private static String changed(String text, String path, String value) {
        String edited = with(text, path, value);
        List<String> before = new ArrayList<>(text.lines().toList());
        List<String> after = new ArrayList<>(edited.lines().toList());
        while (!before.isEmpty() && !after.isEmpty() && before.get(0).equals(after.get(0))) {
            before.remove(0);
            after.remove(0);
        }
        while (!before.isEmpty()
                && !after.isEmpty()
                && before.get(before.size() - 1).equals(after.get(after.size() - 1))) {
            before.remove(before.size() - 1);
            after.remove(after.size() - 1);
        }
        return before.stream().map(line -> "-" + line + "\n").collect(Collectors.joining())
                + after.stream().map(line -> "+" + line + "\n").collect(Collectors.joining());
    }

    @Test
    void aValueTakesThePlaceOfAnotherAndItsCommentStays() {
        assertEquals(
                "-    wheelbase: about 3.2 m   # by pacing\n+    wheelbase: 3210 mm   # by pacing\n",
                changed(SHEET, "vehicle.size.wheelbase", "3210 mm"));
        assertEquals(
                "-    kind: front-bar   # steel\n+    kind: winch   # steel\n",
                changed(SHEET, "fitments.Front bar.kind", "winch"));
        assertEquals(
                "-  ratings: {gvm: 3500 kg, gcm: 6000 kg}  # plate\n+  ratings: {gvm: 3300 kg, gcm: 6000 kg}  # plate\n",
                changed(SHEET, "vehicle.ratings.gvm", "3300 kg"));
        assertEquals(
                "-title: \"Van: the first\"   # as it is called\n+title: \"Van\"   # as it is called\n",
                changed(SHEET, "title", "Van"));
        assertEquals(
                "-  note: |\n-    Over the\n-    mountains\n+  note: Along the coast\n",
                changed(SHEET, "trip.note", "Along the coast"));
    }

    @Test
    void aFieldThatIsNotThereComesAtTheEndOfItsGroup() {
        assertEquals("+  seats: 3\n", changed(SHEET, "vehicle.seats", "3"));
        assertEquals(
                "-  ratings: {gvm: 3500 kg, gcm: 6000 kg}  # plate\n"
                        + "+  ratings: {gvm: 3500 kg, gcm: 6000 kg, ball: 140 kg}  # plate\n",
                changed(SHEET, "vehicle.ratings.ball", "140 kg"));
        assertEquals("+    mass: about 58 kg\n", changed(SHEET, "fitments.Front bar.mass", "about 58 kg"));
        assertEquals(
                "-         y: 0 mm}\n+         y: 0 mm, z: 640 mm}\n",
                changed(SHEET, "fitments.Front bar.at.z", "640 mm").replace("             y", "     y"));
        assertEquals("+region: au-sa\n", changed(SHEET, "region", "au-sa"));
        assertEquals("-papers: {}\n+papers: {warranty: asked}\n", changed(SHEET, "papers.warranty", "asked"));
        assertEquals(
                "-  - {name: Tank 2.0, note: a}\n+  - {name: Tank 2.0, note: a, mass: 7 kg}\n",
                changed(SHEET, "fitments.Tank 2.0.mass", "7 kg"),
                "a name may have a dot");
    }

    @Test
    void aGroupThatIsNotThereIsMade() {
        assertEquals("-  spare:\n+  spare: {size: 265/65R17}\n", changed(SHEET, "vehicle.spare.size", "265/65R17"));
        assertEquals(
                "+  recovery: {front: {limit: 5000 kg}}\n", changed(SHEET, "vehicle.recovery.front.limit", "5000 kg"));
        assertEquals("-papers: {}\n+papers: {first: {by: \"a, b\"}}\n", changed(SHEET, "papers.first.by", "a, b"));
    }

    @Test
    void whatWouldReadOtherwiseIsPutInQuotes() {
        for (String value :
                List.of("a: b", "a # b", "null", "- a", "\"a", "'a'", "*a", "{a", "a\\", "~", "@a", "[a]")) {
            for (String path :
                    List.of("vehicle.name", "vehicle.ratings.gvm", "trip.note", "vehicle.new", "vehicle.a.b")) {
                Node.Mapping edited = tree(with(SHEET, path, value));
                assertEquals(value, ((Node.Scalar) NodePath.find(path, edited).in(edited)).text());
            }
        }
    }

    @Test
    void windowsLinesAndTheEndOfAFileStayAsTheyAre() {
        assertEquals("a: 1\r\nb: 2", with("a: 1", "b", "2").replace("\n", "\r\n"));
        assertEquals("a: {x: 1}\r\nc: 5\r\nb: 2\r\n", with("a: {x: 1}\r\nc: 5\r\n", "b", "2"));
    }

    @Test
    void jsonStaysJson() {
        String json =
                "{\n  \"title\": \"Van\",\n  \"vehicle\": {\n    \"seats\": 5,\n    \"size\": {\"a\": 1}\n  }\n}\n";
        assertEquals(json.replace("5", "\"7\""), with(json, "vehicle.seats", "7"));
        assertEquals(
                json.replace("1}\n", "1},\n    \"name\": \"B\"\n"),
                with(json, "vehicle.name", "B"),
                "a line of its own");
        assertEquals(json.replace("1}", "1, \"b\": \"2 m\"}"), with(json, "vehicle.size.b", "2 m"));
        assertEquals("{\"a\":\"2\"}", with("{\"a\":1}", "a", "2"));
        assertEquals("not to be written", with("{\n\t\"a\": 1}", "b", "2"), "tabs are no YAML");
    }

    @Test
    void aValueTakesNeitherThePlaceOfAListNorOfAGroupNorComesBelowAValue() {
        for (String path : List.of("vehicle", "fitments", "fitments.Front bar", "title.a", "vehicle.name.a.b")) {
            assertEquals("not to be written", with(SHEET, path, "a"), path);
        }
    }

    /** Every scenario and every case with its sheet, each value of them. */
    @Test
    void everyValueCanBeReplacedAndAllOtherLinesStay() throws IOException {
        int values = 0;
        for (String text : texts()) {
            Node.Mapping root = tree(text);
            for (NodePath path : paths(root, NodePath.TOP, Node.Scalar.class).toList()) {
                String value = ODD.get(values++ % ODD.size());
                String edited = TextEdit.with(text, path, value).orElseThrow(() -> new AssertionError(path + text));
                assertTrue(Trees.alike(Trees.with(root, path, value), tree(edited)), path::toString);
                List<String> before = text.lines().toList();
                List<String> after = edited.lines().toList();
                int line = path.in(root).place().line();
                int lost = before.size() - after.size();
                assertEquals(before.subList(0, line - 1), after.subList(0, line - 1));
                assertEquals(before.subList(line + lost, before.size()), after.subList(line, after.size()));
            }
        }
        assertTrue(values > 10_000, "only " + values);
    }

    /** The same for a field that is not there, in each of their groups. */
    @Test
    void everyGroupTakesAFieldAndAllOtherLinesStay() throws IOException {
        int groups = 0;
        for (String text : texts()) {
            Node.Mapping root = tree(text);
            for (NodePath path : paths(root, NodePath.TOP, Node.Mapping.class).toList()) {
                groups++;
                NodePath field = path.to("not-there");
                String edited = TextEdit.with(text, field, "7 kg").orElseThrow(() -> new AssertionError(path + text));
                assertTrue(Trees.alike(Trees.with(root, field, "7 kg"), tree(edited)), path::toString);
                List<String> lost = new ArrayList<>(text.lines().toList());
                edited.lines().forEach(lost::remove);
                assertTrue(lost.size() <= 1, lost::toString);
                assertEquals(text, edited.replaceFirst("(\n *|, |(?<=\\{))not-there: 7 kg", ""));
            }
        }
        assertTrue(groups > 1000, "only " + groups);
    }

    private static final List<String> ODD = List.of("about 7 kg +/- 1 kg", "a, b: \"c\" # d", "no", "7", "{x: 1}");

    static List<String> texts() throws IOException {
        List<String> texts = new ArrayList<>();
        for (Path file : files("scenarios", "scenarios/.*yaml")) {
            texts.add(Files.readString(file));
        }
        texts.add(Files.readString(Path.of("rules/plain-sheet.yaml")));
        for (Path file : files("rules", ".*/cases.yaml")) {
            String[] parts = Files.readString(file).split("(?m)^cases:$");
            if (parts[0].contains("sheet:")) {
                texts.add(parts[0]);
            }
            for (String one : parts[1].split("(?m)^  - ")) {
                String text = one.replaceAll("(?m)^    ", "").replaceAll("(?m)^  #.*\n", "");
                if (!text.replaceAll("#.*", "").isBlank()) {
                    texts.add(text);
                }
            }
        }
        return texts;
    }

    static List<Path> files(String folder, String pattern) throws IOException {
        try (Stream<Path> all = Files.walk(Path.of(folder))) {
            return all.filter(file -> file.toString().matches(pattern)).sorted().toList();
        }
    }

    private static Stream<NodePath> paths(Node node, NodePath path, Class<? extends Node> wanted) {
        Stream<NodePath> own = wanted.isInstance(node) ? Stream.of(path) : Stream.of();
        if (node instanceof Node.Mapping group) {
            return Stream.concat(
                    own,
                    group.entries().entrySet().stream()
                            .flatMap(entry -> paths(entry.getValue().value(), path.to(entry.getKey()), wanted)));
        }
        return node instanceof Node.Listing list
                ? IntStream.rangeClosed(1, list.items().size())
                        .boxed()
                        .flatMap(i -> paths(list.items().get(i - 1), path.to(i), wanted))
                : own;
    }
}
