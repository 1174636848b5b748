package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.book.HouseReader;
import fitworthy.engine.BookLoader;
import fitworthy.engine.BooksOfOneRule;
import fitworthy.printout.screen.FaultPrintout;
import fitworthy.sheet.SheetReader;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.RandomAccessFile;
import java.io.StringWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Texts that mean harm, each given as a sheet, as a page of the book and as a house file: all are refused with their
 * line, and within little memory.
 */
class HostileTextTest {

    private static final int HUNDRED_MB = 100_000_000;

    @TempDir
    private Path home;

    private Path rules;

    @BeforeEach
    void book() throws IOException {
        rules = home.resolve("rules");
        BooksOfOneRule.write(rules);
    }

    /** @param place the line and column, or nothing where the file was not read */
    private record Hostile(String what, byte[] bytes, String place, String problem) {}

    private static Hostile text(String what, String text, String place, String problem) {
        return encoded(what, text, StandardCharsets.UTF_8, place, problem);
    }

    private static Hostile encoded(String what, String text, Charset charset, String place, String problem) {
        return new Hostile(what, text.getBytes(charset), place, problem);
    }

    private static String laughs() {
        StringBuilder text = new StringBuilder("a0: &a0 [ha, ha, ha, ha, ha, ha, ha, ha, ha]\n");
        for (int i = 1; i < 40; i++) {
            text.append("a%d: &a%d [".formatted(i, i))
                    .append("*a%d, ".formatted(i - 1).repeat(9))
                    .append("*a0]\n");
        }
        return text.toString();
    }

    private static List<Hostile> all() {
        String anchors = "anchors and aliases (& and *) are not read here";
        String tags = "tags (! and what follows it) are not read here";
        String deep = "nested deeper than 40 levels";
        return List.of(
                text("aliases of aliases", laughs(), ":1:5", anchors),
                text(
                        "more aliases than anybody wants to hear of",
                        "a: &a 1\nb:\n" + "- *a\n".repeat(200_000),
                        ":102:3",
                        "more than 100 faults; it was not read further"),
                text("an alias of what it stands in", "a: &a {b: *a}\n", ":1:4", anchors),
                text("a merged group", "a: &a {b: 1}\nc: {<<: *a}\n", ":1:4", anchors),
                text(
                        "a tag of a class",
                        "a: !!javax.script.ScriptEngineManager [!!java.net.URL [\"http://localhost\"]]\n",
                        ":1:4",
                        tags),
                text("a tag of the text", "!!java.lang.Runtime {a: 1}\n", ":1:1", tags),
                text("a local tag", "a: !evil x\n", ":1:4", tags),
                text("a tag prefix", "%TAG !e! tag:yaml.org,2002:java.\n---\na: !e!lang.Runtime x\n", ":3:4", tags),
                text("lists in lists", "a: " + "[".repeat(500_000), ":1:42", deep),
                text("groups in groups", "a: " + "{b: ".repeat(200_000), ":1:", deep),
                text(
                        "groups below groups",
                        Stream.iterate(0, i -> i < 60, i -> i + 1)
                                .map(i -> " ".repeat(i) + "a:\n")
                                .reduce("", String::concat),
                        ":",
                        deep),
                text("JSON in JSON", "{\"a\":".repeat(150_000), ":1:", deep),
                text("a huge text", "a: " + "x".repeat(1_000_000) + "\n", ":1:4", "is longer than 10000 characters"),
                text(
                        "a huge folded text",
                        "a: >\n" + "  x y\n".repeat(170_000),
                        ":1:4",
                        "is longer than 10000 characters"),
                text("a huge name", "x".repeat(900_000) + ": 1\n", ":1:", "not readable as YAML"),
                text("a huge number", "{\"a\": 1" + "0".repeat(900_000) + "}", ":1:", "far too long"),
                text(
                        "the same name over and over",
                        "a: 1\n".repeat(200_000),
                        ":2:1",
                        "'a' is given twice; first on line 1"),
                text("the same name in JSON", "{\"a\": 1, \"a\": 2}", ":1:10", "'a' is given twice; first on line 1"),
                text(
                        "more values than a file has",
                        "a: [" + "1,".repeat(500_000) + "1]\n",
                        ":1:",
                        "more than 50000 values"),
                text("more empty values", "a:\n" + "-\n".repeat(500_000), ":", "more than 50000 values"),
                text(
                        "a name that would colour the screen",
                        "\"\\e[31m\": 1\n",
                        ":1:1",
                        "a name with the control character U+001B"),
                text(
                        "a line that turns round",
                        "a: x\u202Ey\u2066z\u0007\n",
                        ":1:9",
                        "the control character U+0007 stands here"),
                text("a zero", "a: 1\u0000\n", ":1:5", "the control character U+0000 stands here"),
                encoded(
                        "UTF-16, little end first",
                        "a: 1\n",
                        StandardCharsets.UTF_16LE,
                        ":1:2",
                        "the control character U+0000 stands here"),
                encoded(
                        "UTF-16, big end first",
                        "a: 1\n",
                        StandardCharsets.UTF_16BE,
                        ":1:1",
                        "the control character U+0000 stands here"),
                encoded("UTF-16 with its mark", "\uFEFFa: 1\n", StandardCharsets.UTF_16LE, ":1:1", "not UTF-8 text"),
                encoded(
                        "UTF-32",
                        "a: 1\n",
                        Charset.forName("UTF-32BE"),
                        ":1:1",
                        "the control character U+0000 stands here"),
                encoded("Latin-1", "a: 1\nb: caf\u00E9\n", StandardCharsets.ISO_8859_1, ":2:7", "not UTF-8 text"),
                new Hostile(
                        "a character cut short",
                        new byte[] {'a', ':', ' ', (byte) 0xE2, (byte) 0x82},
                        ":1:4",
                        "not UTF-8 text"),
                new Hostile(
                        "a zero written long",
                        new byte[] {'a', ':', ' ', (byte) 0xC0, (byte) 0x80},
                        ":1:4",
                        "not UTF-8 text"),
                new Hostile(
                        "half a surrogate",
                        new byte[] {'a', ':', ' ', (byte) 0xED, (byte) 0xA0, (byte) 0x80},
                        ":1:4",
                        "not UTF-8 text"),
                new Hostile(
                        "more than a mebibyte",
                        "a: 1 # x\n".repeat(120_000).getBytes(StandardCharsets.UTF_8),
                        "",
                        "the file is larger than 1 MiB"));
    }

    private interface Reading {
        void read() throws FaultsException;
    }

    private static void refused(Path file, Hostile hostile, Reading reading) {
        List<Fault> faults = assertThrows(FaultsException.class, reading::read).faults();
        StringWriter printed = new StringWriter();
        FaultPrintout.print(new PrintWriter(printed), faults);
        assertTrue(
                printed.toString()
                        .lines()
                        .anyMatch(line -> line.startsWith(file + hostile.place()) && line.contains(hostile.problem())),
                () -> start(printed.toString()));
        assertTrue(
                printed.toString().length() < 100_000,
                () -> "it says far too much: " + printed.toString().length());
        assertTrue(
                printed.toString().lines().noneMatch(line -> line.matches(".*[\\p{Cntrl}\\p{Cf}].*")),
                () -> start(printed.toString()));
    }

    private static String start(String text) {
        return text.substring(0, Math.min(text.length(), 2000));
    }

    @TestFactory
    Stream<DynamicTest> asASheet() {
        return all().stream()
                .map(each -> DynamicTest.dynamicTest(each.what(), () -> {
                    Path sheet = Files.write(home.resolve("sheet.yaml"), each.bytes());
                    refused(sheet, each, () -> SheetReader.read(sheet, Set.of("au")));
                }));
    }

    @TestFactory
    Stream<DynamicTest> asAPageOfTheBook() {
        return all().stream()
                .map(each -> DynamicTest.dynamicTest(each.what(), () -> {
                    Path page = Files.write(rules.resolve("mass/cards.yaml"), each.bytes());
                    refused(page, each, () -> BookLoader.load(rules, home.resolve("cache"), sentence -> {}));
                }));
    }

    @TestFactory
    Stream<DynamicTest> asAHouseFile() {
        return all().stream()
                .map(each -> DynamicTest.dynamicTest(each.what(), () -> {
                    Path house = Files.write(home.resolve("house.yaml"), each.bytes());
                    refused(house, each, () -> HouseReader.read(house, Books.shipped()));
                }));
    }

    /** In a Java of its own that may use 64 MB, so that whatever reads all of it, or makes much of it, fails. */
    private String inLittleMemory(int code, Path sheet) throws Exception {
        Path told = home.resolve("told.txt");
        ProcessBuilder builder = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx64m",
                "-cp",
                System.getProperty("java.class.path"),
                "fitworthy.cli.Main",
                "check",
                sheet.toString());
        builder.environment()
                .putAll(Map.of(
                        "FITWORTHY_CACHE", home.resolve("cache").toString(), "FITWORTHY_RULES", rules.toString()));
        Process process =
                builder.redirectErrorStream(true).redirectOutput(told.toFile()).start();
        assertTrue(process.waitFor(2, TimeUnit.MINUTES), "it does not end");
        assertEquals(code, process.exitValue(), () -> read(told));
        return read(told);
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void littleMemoryIsEnoughForALargeFileOrABomb() throws Exception {
        BookLoader.load(rules, home.resolve("cache"), sentence -> {});
        Path empty = home.resolve("empty.yaml");
        try (RandomAccessFile file = new RandomAccessFile(empty.toFile(), "rw")) {
            file.setLength(HUNDRED_MB);
        }
        Path large = home.resolve("large.yaml");
        byte[] line = new byte[HUNDRED_MB / 100];
        Arrays.fill(line, (byte) 'a');
        for (int i = 0; i < 100; i++) {
            Files.write(large, line, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        }
        for (Path each : List.of(empty, large)) {
            assertTrue(inLittleMemory(2, each).contains(each + ": the file is larger than 1 MiB"));
        }
        Path bomb = Files.writeString(home.resolve("bomb.yaml"), "a: &a 1\nb:\n" + "- *a\n".repeat(200_000));
        assertTrue(inLittleMemory(2, bomb).contains("more than 100 faults"));
        Path many = Files.writeString(home.resolve("many.yaml"), "a: [" + "1,".repeat(500_000) + "1]\n");
        assertTrue(inLittleMemory(2, many).contains("more than 50000 values"));
        Files.delete(rules.resolve("sources.yaml"));
        Files.move(large, rules.resolve("sources.yaml"));
        assertTrue(inLittleMemory(3, Books.RULES.resolve("plain-sheet.yaml"))
                .contains("sources.yaml: the file is larger than 1 MiB"));
    }
}
