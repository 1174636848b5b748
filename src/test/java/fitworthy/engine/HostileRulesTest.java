package fitworthy.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.rules.RuleParser;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.kie.api.runtime.KieSession;

/**
 * A rule file is code, and here are some that mean harm. Each is put where the one rule of a book stands whose every
 * other file is right; none is compiled, and each is answered with its line and what is wrong with it. The files are
 * made of the tables in {@code src/test/resources/hostile}: a template, and below the dashes what is put into it, after
 * the line and the message wanted. In them {@code ¶} is a new line and {@code <U+0000>} a character that nobody could
 * see.
 */
class HostileRulesTest {

    /** What much of the code would make, in the folder that the tests run in. */
    private static final Path MARK = Path.of("hostile-ran");

    private static final Pattern CHARACTER = Pattern.compile("<U\\+([0-9A-F]{4})>");
    private static final Pattern ROW = Pattern.compile("(\\d+): (.+?) => (.*)");

    @TempDir
    private Path home;

    private Path drl;

    @BeforeEach
    void book() throws IOException {
        BooksOfOneRule.write(home.resolve("rules"));
        drl = home.resolve("rules/mass/mass.drl");
        Files.deleteIfExists(MARK);
    }

    @AfterEach
    void nothingRan() throws IOException {
        assertFalse(Files.deleteIfExists(MARK));
    }

    /** A hostile file. @param line where the fault is wanted @param message words of it */
    private record Hostile(String what, String text, int line, String message) {}

    private static List<Hostile> table(String name) throws IOException {
        try (InputStream in = HostileRulesTest.class.getResourceAsStream("/hostile/" + name + ".txt")) {
            String[] parts = new String(in.readAllBytes(), StandardCharsets.UTF_8).split("----\n", 2);
            String template = parts[0].substring(parts[0].indexOf('\n') + 1);
            List<Hostile> table = new ArrayList<>();
            for (String each : parts[1].split("\n")) {
                Matcher row = ROW.matcher(each);
                assertTrue(row.matches(), each);
                table.add(new Hostile(
                        name + ": " + row.group(3),
                        template.replace("{}", shown(row.group(3))),
                        Integer.parseInt(row.group(1)),
                        row.group(2)));
            }
            return table;
        }
    }

    private static String shown(String code) {
        return CHARACTER
                .matcher(code.replace(" ¶ ", "\n").replace("¶", "\n"))
                .replaceAll(
                        found -> Matcher.quoteReplacement(String.valueOf((char) Integer.parseInt(found.group(1), 16))));
    }

    @TestFactory
    Stream<DynamicTest> noneIsCompiledAndEachIsTold() throws IOException {
        List<Hostile> all = new ArrayList<>(large());
        for (String name : List.of("consequence", "attribute", "file", "rule", "condition", "comparison", "escape")) {
            all.addAll(table(name));
        }
        assertTrue(all.size() > 250, "tables cut short: " + all.size());
        return all.stream().map(each -> DynamicTest.dynamicTest(each.what(), () -> refused(each)));
    }

    private void refused(Hostile hostile) throws IOException {
        Files.writeString(drl, hostile.text());
        List<String> told = new ArrayList<>();
        List<Fault> faults = assertThrows(
                        FaultsException.class,
                        () -> BookLoader.load(home.resolve("rules"), home.resolve("cache"), told::add))
                .faults();
        assertEquals(List.of(), told, "it was given to the compiler");
        assertFalse(Files.exists(MARK), "it ran");
        Fault first = faults.get(0);
        assertEquals(
                drl.toString() + ":" + hostile.line(),
                first.place().onLine(first.place().line()).toString(),
                first::toString);
        assertTrue(first.problem().contains(hostile.message()), first::toString);
        assertFalse(first.mend().isBlank());
    }

    private static String rule(String condition) {
        return "rule \"mass.gvm-over\"\nwhen\n    $m : Measure(name == \"mass.loaded\", known)\n    " + condition
                + "\nthen\n    advice.give(\"mass.gvm-over\", $m);\nend\n";
    }

    private static Hostile large(String what, String condition, int line, String message) {
        return new Hostile("large: " + what, rule(condition), line, message);
    }

    /** Files that would eat the time or the memory of whoever reads, compiles or runs them. */
    private static List<Hostile> large() {
        String axle = "Measure(name == \"mass.axle\")";
        String deep = "brackets stand in brackets more than 8 deep";
        return List.of(
                large("brackets in a condition", "(".repeat(3000) + axle + ")".repeat(3000), 4, deep),
                large("nots", "not (".repeat(3000) + axle + ")".repeat(3000), 4, deep),
                large("bare nots", "not ".repeat(3000) + axle, 4, "not readable"),
                large(
                        "brackets in a comparison",
                        "Measure(name == \"mass.axle\", " + "(".repeat(3000) + "known" + ")".repeat(3000) + ")",
                        4,
                        deep),
                large("open brackets", "(".repeat(3000), 4, deep),
                large("calls in calls", "Measure(" + "f(".repeat(3000) + ")".repeat(3000) + ")", 4, deep),
                large(
                        "casts",
                        "Measure(name == \"mass.axle\", " + "(value)".repeat(3000) + "known)",
                        4,
                        "'value' is a number that is compared with nothing"),
                large(
                        "negations",
                        "Measure(name == \"mass.axle\", " + "!".repeat(3000) + "known)",
                        4,
                        "is not a plain comparison"),
                large(
                        "square brackets",
                        "Measure(known == " + "[".repeat(30) + "]".repeat(30) + ")",
                        4,
                        "'[' has no place in a rule file"),
                large(
                        "a long comparison",
                        "Measure(name == \"mass.axle\", known" + " && known".repeat(100) + ")",
                        4,
                        "this comparison is longer than 300 characters"),
                large(
                        "a long word",
                        "Measure(name == \"mass.axle\", word == \"" + "x".repeat(1000) + "\")",
                        4,
                        "this comparison is longer than 300 characters"),
                large(
                        "alternatives",
                        "(Advised(id == \"mass.gvm-over\") or Advised(id == \"mass.gvm-over\"))\n".repeat(24),
                        1,
                        "more than 50 alternatives once 'or' is multiplied out"),
                large(
                        "alternatives in exists",
                        "exists (Advised(id == \"mass.gvm-over\") or Advised(id == \"mass.gvm-over\"))\n".repeat(24),
                        1,
                        "more than 50 alternatives once 'or' is multiplied out"),
                large(
                        "comparisons in a pattern",
                        "Measure(name == \"mass.axle\"" + ", known".repeat(1000) + ")",
                        1,
                        "more than 12 comparisons in a pattern"),
                large(
                        "patterns in a group under not",
                        "not (" + axle + (" and " + axle).repeat(7) + ")",
                        1,
                        "joins more than 8 patterns"),
                large("patterns", (axle + "\n").repeat(8), 1, "joins more than 8 patterns"),
                large("length", "// " + "x".repeat(1 << 16), 1, "the file is longer than 65536 characters"));
    }

    /** A rule that fires over its own advice ends all the same, since advice is given once a subject. */
    @Test
    void whatIsAllowedStaysAllowed() throws Exception {
        Files.writeString(
                drl,
                "// A note, with 'quotes' [and] {brackets}.\n/* Another\n   one. */\n"
                        + rule("Measure(name == \"mass.axle\", subject == \"front axle\", !(known && (value > 0 || limit < "
                                        + "$m.value))) or Advised(id == \"mass.gvm-over\", subject == $m.subject)")
                                .replace("\n", "\r\n"));
        String cards = Files.readString(drl.resolveSibling("cards.yaml"));
        Files.writeString(
                drl.resolveSibling("cards.yaml"),
                cards.replace("about: [mass.loaded]", "about: [mass.loaded, mass.axle]"));
        List<String> told = new ArrayList<>();
        RuleEngine engine = BookLoader.load(home.resolve("rules"), home.resolve("cache"), told::add);
        assertEquals(1, told.size());
        assertNotNull(engine.sessions());
    }

    /** Every part of an 'or' gives the name a meaning, so it has one outside. */
    @Test
    void aNameBoundInEveryPartOfAnOrIsBound() throws Exception {
        List<Fault> faults = new ArrayList<>();
        RuleParser.parse(
                "a.drl",
                "rule \"mass.gvm-over\" when ($m : Measure(name == \"mass.loaded\") or $m : Measure(name =="
                        + " \"mass.axle\")) then advice.give(\"mass.gvm-over\", $m); end",
                Set.of("mass.loaded", "mass.axle"),
                faults);
        assertEquals(List.of(), faults);
    }

    /** The compiler itself names no line, or one of the code that it made. */
    @Test
    void whatOnlyTheCompilerFindsIsToldAtItsRule() {
        String rule = "rule \"%s\"\nwhen\n    %s Measure(name == \"mass.loaded\")\nthen\n    advice.give(\"%s\", "
                + "$m);\nend\n\n";
        List<Fault> faults = new ArrayList<>();
        Map<String, byte[]> compiled = RuleCompiler.compile(
                Map.of(
                        "a/a.drl",
                        rule.formatted("a.one", "$m :", "a.one")
                                + rule.formatted("a.two", "not $m :", "a.two")
                                + rule.formatted("a.three", "$m :", "a.three"),
                        "b/b.drl",
                        rule.formatted("b.one", "$m :", "b.one")),
                faults);
        assertEquals(Map.of(), compiled);
        assertEquals(
                List.of("a/a.drl:8"),
                faults.stream().map(each -> each.place().toString()).toList());
        assertEquals(
                "does not compile: $m cannot be resolved to a variable",
                faults.get(0).problem());
    }

    /** That the mark is not there says something only if this code makes it. */
    @Test
    void theSameCodeWouldRunIfItWereCompiled() throws Exception {
        for (String text : List.of(
                "rule \"a\" when eval(new java.io.File(\"hostile-ran\").mkdir()) then end\n",
                "rule \"a\" when then new java.io.File(\"hostile-ran\").mkdir(); end\n",
                "rule \"a\" when then Runtime.getRuntime().exec(\"mkdir hostile-ran\").waitFor(); end\n")) {
            List<Fault> faults = new ArrayList<>();
            Map<String, byte[]> compiled = RuleCompiler.compileAsWritten(Map.of("a/a.drl", text), Map.of(), faults);
            assertEquals(List.of(), faults);
            KieSession session = RuleCompiler.load(compiled).newKieSession();
            session.fireAllRules();
            session.dispose();
            assertTrue(Files.deleteIfExists(MARK), text);
        }
    }
}
