package fitworthy.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Texts and files that cannot be read, and what is said of them. */
class NodeReaderTest {

    private static final String QUOTES =
            "one 'name: value' a line, two spaces a level; put a value with : # [ ] { } , & * ! % in quotes";
    private static final String JSON = "not readable as JSON, which a file is that begins with '{': ";
    private static final String COMMAS =
            "names and words in double quotes, a comma between two fields, none after " + "the last";

    @TempDir
    private Path folder;

    /** Each fault as {@code place path: problem -> mend}. */
    private static List<String> faults(String text) {
        List<Fault> faults = new ArrayList<>();
        NodeReader.read("f", text, faults);
        return shown(faults);
    }

    private static List<String> shown(List<Fault> faults) {
        return faults.stream()
                .map(each -> each.place() + " " + each.path() + ": " + each.problem() + " -> " + each.mend())
                .toList();
    }

    private static DynamicTest refused(String what, String text, String fault) {
        return DynamicTest.dynamicTest(what, () -> assertEquals(List.of(fault), faults(text)));
    }

    @TestFactory
    Stream<DynamicTest> unreadableTextIsRefusedWithItsPlace() {
        String copied = " -> leave it out; most often it came with a copied text";
        return Stream.of(
                refused("empty", "", "f : the file is empty -> begin with 'title: Touring wagon'"),
                refused("comments alone", "# x\n", "f : the file is empty -> begin with 'title: Touring wagon'"),
                refused(
                        "document mark alone",
                        "---\n",
                        "f:2:1 : the file is empty -> begin with 'title: Touring wagon'"),
                refused(
                        "list",
                        "- a\n",
                        "f:1:1 : the file is a list, not a group of fields -> begin with 'title: Touring wagon'"),
                refused(
                        "words",
                        "hello\n",
                        "f:1:1 : the file is 'hello', not a group of fields -> begin with 'title: Touring wagon'"),
                refused(
                        "second document",
                        "a: 1\n---\nb: 2\n",
                        "f:3:1 : more text follows a line of three dashes or points, which ends the file -> take that line"
                                + " out"),
                refused(
                        "tab",
                        "a:\n\tb: 1\n",
                        "f:2:1 : not readable as YAML: a tab stands before this line -> spaces in its place, as many as"
                                + " stand before the lines that it belongs with"),
                refused(
                        "colon in a value",
                        "a: b: c\n",
                        "f:1:5 : not readable as YAML: a second colon with a space behind it stands in this line"
                                + " -> a: \"b: c\""),
                refused(
                        "open list",
                        "a: [1\nb: 2\n",
                        "f:1:4 : not readable as YAML: the [ that opens here is not closed"
                                + " -> a ] behind what belongs to it; in quotes a text that only begins with ["),
                refused(
                        "list as a name",
                        "? [a]\n: b\n",
                        "f:1:4 : not readable as YAML: Expected a field name (Scalar value in YAML) -> " + QUOTES),
                refused(
                        "JSON comma",
                        "{\"a\": 1,\n}",
                        "f:2:1 : " + JSON + "Unexpected character ('}' (code 125)): was"
                                + " expecting double-quote to start field name -> " + COMMAS),
                refused(
                        "JSON end",
                        "{\"a\": 1",
                        "f:1:8 : " + JSON + "Unexpected end-of-input: expected close marker for Object -> " + COMMAS),
                refused(
                        "JSON twice",
                        "{\"a\": 1}\n{}",
                        "f:2:1 : more text follows the end of the document -> keep one document in a file"),
                refused(
                        "duplicate",
                        "a: 1\nb: {c: 1, c: 2}\n",
                        "f:2:11 b.c: 'c' is given twice; first on line 2 -> keep one of the two"),
                refused(
                        "duplicate in JSON",
                        "{\"a\": 1,\n \"a\": 2}",
                        "f:2:2 a: 'a' is given twice; first on line 1 -> keep one of the two"),
                refused(
                        "anchor",
                        "a: &x [1]\n",
                        "f:1:4 a: anchors and aliases (& and *) are not read here -> text that begins so in quotes;"
                                + " else the value written out where it belongs"),
                refused(
                        "tag",
                        "a: [!!binary aGk=]\n",
                        "f:1:5 a.1: tags (! and what follows it) are not read here"
                                + " -> the value alone; in quotes where it begins with '!'"),
                refused(
                        "deep YAML",
                        "a: " + "[".repeat(5000) + "]".repeat(5000),
                        "f:1:42 : nested deeper than 40 levels -> keep it like the sheets in scenarios/"),
                refused(
                        "deep JSON",
                        "{\"a\":".repeat(5000) + "1" + "}".repeat(5000),
                        "f:1:197 : nested deeper than 40 levels -> keep it like the sheets in scenarios/"),
                refused(
                        "long JSON number",
                        "{\"a\": " + "1".repeat(2000) + "}",
                        "f:1:1 : a name or number is far too long -> keep it like the sheets in scenarios/"),
                refused(
                        "long words",
                        "a: " + "x".repeat(10_001),
                        "f:1:4 a: is longer than 10000 characters -> a few words"),
                refused(
                        "long name",
                        "{\"" + "x".repeat(201) + "\": 1}",
                        "f:1:2 " + "x".repeat(197) + "...: a name longer than 200 characters -> the name of a field"),
                refused(
                        "control character",
                        "a: 1\nb: x\u0007\n",
                        "f:2:5 : the control character U+0007 stands here" + copied),
                refused(
                        "escaped control character",
                        "a: \"\\e[31m\"\n",
                        "f:1:4 a: holds the control character U+001B" + copied),
                refused(
                        "escaped control character in JSON",
                        "{\"a\": \"\\u0000\"}",
                        "f:1:7 a: holds the control character U+0000" + copied));
    }

    @Test
    void aliasBombCostsNothing() {
        StringBuilder text = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i < 30; i++) {
            text.append("a%d: &a%d [*a%d, *a%d]\n".formatted(i, i, i - 1, i - 1));
        }
        assertEquals(30 + 2 * 29, faults(text.toString()).size());
    }

    private List<String> file(byte[] bytes) throws IOException {
        Path file = folder.resolve("sheet.yaml");
        Files.write(file, bytes);
        List<Fault> faults = new ArrayList<>();
        NodeReader.read(file, faults);
        return shown(faults).stream()
                .map(each -> each.replace(folder + "/", ""))
                .toList();
    }

    @Test
    void fileThatIsNotUtf8IsRefusedAtTheFirstBadByte() throws IOException {
        assertEquals(
                List.of("sheet.yaml:2:6 : the file is not UTF-8 text from here on -> save it as UTF-8"),
                file("a: 1\nb: Ca\u00F1on\n".getBytes(StandardCharsets.ISO_8859_1)));
        assertEquals(
                List.of("sheet.yaml:1:1 : the file is not UTF-8 text from here on -> save it as UTF-8"),
                file("\uFEFFa: 1\n".getBytes(StandardCharsets.UTF_16LE)));
    }

    @Test
    void byteOrderMarkIsSkipped() throws IOException {
        assertEquals(List.of(), file("\uFEFFa: 1\n".getBytes(StandardCharsets.UTF_8)));
        assertEquals(List.of(), file("\uFEFF{\"a\": 1}\n".getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void largeFileIsRefusedUnread() throws IOException {
        assertEquals(
                List.of("sheet.yaml : the file is larger than 1 MiB -> split it, or remove what does not belong "
                        + "in it"),
                file(new byte[InputFile.LARGEST_BYTES + 1]));
    }

    @Test
    void absentFileAndFolderAreToldApart() {
        List<Fault> faults = new ArrayList<>();
        assertNull(NodeReader.read(folder.resolve("none.yaml"), faults));
        assertNull(NodeReader.read(folder, faults));
        assertEquals(
                List.of("there is no such file", "this is a folder"),
                faults.stream().map(Fault::problem).toList());
    }

    @Test
    void nearestFollowsNamesWithDotsAndCountsFromOne() {
        List<Fault> faults = new ArrayList<>();
        Node.Mapping root = NodeReader.read("f", "a.b:\n  - {c: 1}\n  - {c.d: 2, 1: 3}\n", faults);
        Located places = Located.of(root);
        NodePath second = NodePath.of("a.b").to(2);
        assertEquals(new Place("f", 3, 11), places.place(second.to("c.d")));
        assertEquals(new Place("f", 3, 17), places.place(second.to("1")));
        assertEquals(new Place("f", 3, 5), places.place(second.to("x").to("y")));
        assertEquals(new Place("f", 2, 3), places.place(NodePath.of("a.b").to(3)));
        assertEquals(new Place("f", 2, 3), places.place(NodePath.of("a.b").to(0)));
    }

    @Test
    void nothingFromAFileReachesATerminalAsACommand() {
        Fault fault = new Fault(Place.of("f"), "a\u001b[31m", "x\u0007\ny", "z\r");
        assertEquals("f: a [31m: x y\n    right: z ", fault.toString());
        assertEquals("turned  back", Words.seen("turned \u202Eback"));
        assertEquals("told  to", Words.seen("told \u009Bto"));
    }
}
