package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fitworthy.Books;
import fitworthy.Folders;
import fitworthy.book.Severity;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** The check command, run in process: its exit codes, its streams and its options. */
class CheckTest {

    private static final String PLAIN = Books.RULES.resolve("plain-sheet.yaml").toString();

    @TempDir
    private static Path folder;

    private record Run(int code, String out, String err) {
        List<String> lines() {
            return out.lines().toList();
        }
    }

    private static Run run(String... args) {
        return run(Map.of(), args);
    }

    private static Run run(Map<String, String> more, String... args) {
        Map<String, String> environment = new HashMap<>(more);
        environment.put("FITWORTHY_CACHE", Books.CACHE.toString());
        environment.putIfAbsent("FITWORTHY_RULES", Books.RULES.toString());
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Fitworthy.run(new PrintWriter(out), new PrintWriter(err), environment, args);
        return new Run(code, out.toString(), err.toString());
    }

    private static String sheet(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    /** A sheet that is over its GVM in one of its two load cases. */
    private static String heavy() throws IOException {
        return sheet(
                "heavy.yaml",
                Files.readString(Path.of(PLAIN))
                                .replace(
                                        "{name: Luggage, mass: 60 kg +/- 0 kg", "{name: Luggage, mass: 700 kg +/- 0 kg")
                        + "cases:\n  - {name: empty, carrying: []}\n  - name: laden\n");
    }

    private static void refused(int code, Run run) {
        assertEquals(code, run.code(), run.err());
        assertEquals("", run.out());
        assertFalse(run.err().contains("\tat "), run.err());
        assertFalse(run.err().contains("Exception"), run.err());
    }

    @Test
    void plainSheetHasNothingToAnswerFor() {
        Run run = run("check", PLAIN);
        assertEquals(0, run.code(), run.out() + run.err());
        assertTrue(run.out().contains("No fault found in what was checked."), run.out());
    }

    @Test
    void badSheetEndsWithTwoAndAllItsFaults() throws IOException {
        String bad = sheet(
                "bad.yaml",
                Files.readString(Path.of(PLAIN))
                        .replace("gvm: 3000 kg", "gvm: 3000")
                        .replaceFirst("region: \\S+", "region: atlantis")
                        .replace("seats: 5", "seets: 5"));
        Run run = run("check", bad);
        refused(2, run);
        assertTrue(
                run.err()
                        .startsWith("The sheet cannot be used:\n" + bad
                                + ":3:9: region: the rule book has no region 'atlantis'\n    | region: atlantis\n    |         ^\n   "
                                + " right: region: one of any, au, "),
                run.err());
        assertTrue(run.err().contains("vehicle.seets: no field has this name (did you mean 'seats'?)"), run.err());
        assertTrue(
                run.err()
                        .contains("vehicle.ratings.gvm: '3000' has no unit\n    |     gvm: 3000\n    |          ^\n"
                                + "    right: gvm: 3100 kg (units: "),
                run.err());
    }

    @TestFactory
    Stream<DynamicTest> unusableInputEndsWithTwo() {
        return Stream.of(
                refusedInput("no such sheet", "there is no such file", "check", "none.yaml"),
                refusedInput("folder", "this is a folder", "check", "rules"),
                refusedInput("no sheet", "Missing required parameter: 'SHEET'", "check"),
                refusedInput("no command", "Say which command: check"),
                refusedInput("unknown command", "Unmatched argument at index 0: 'chek'", "chek"),
                refusedInput("unknown option", "Unknown option: '--fast'", "check", PLAIN, "--fast"),
                refusedInput("bad --format", "expected one of [text, json", "check", PLAIN, "--format", "xml"),
                refusedInput(
                        "bad --least",
                        "expected one of [stop, change, confirm, note]",
                        "check",
                        PLAIN,
                        "--least",
                        "bad"),
                refusedInput(
                        "bad --region",
                        "--region: region: the rule book has no region 'au-nws' (did you mean 'au-nsw'?)",
                        "check",
                        PLAIN,
                        "--region",
                        "au-nws"),
                refusedInput(
                        "--region in words",
                        "--region: region: the rule book has no region 'Europe' (did you mean 'eu'?)",
                        "check",
                        PLAIN,
                        "--region",
                        "Europe"),
                refusedInput(
                        "--region by another name",
                        "--region: region: the rule book has no region 'great britain' (did you mean 'uk'?)",
                        "check",
                        PLAIN,
                        "--region",
                        "great britain"),
                refusedInput(
                        "--region by its full name",
                        "--region: region: the rule book has no region 'New South Wales' (did you mean 'au-nsw'?)",
                        "check",
                        PLAIN,
                        "--region",
                        "New South Wales"),
                refusedInput(
                        "bad --as-of",
                        "--as-of: as-of: is '2026-13-01', which is not a date\n"
                                + "    right: as-of: 2026-11-25 (year-month-day)",
                        "check",
                        PLAIN,
                        "--as-of",
                        "2026-13-01"),
                refusedInput(
                        "bad --case",
                        "--case: the sheet has no load case 'towing'",
                        "check",
                        PLAIN,
                        "--case",
                        "towing"));
    }

    private static DynamicTest refusedInput(String what, String message, String... args) {
        return DynamicTest.dynamicTest(what, () -> {
            Run run = run(args);
            refused(2, run);
            assertTrue(run.err().contains(message), run.err());
        });
    }

    @Test
    void helpSaysHowToBeginAndWhatTheExitCodesMean() {
        for (String[] args : new String[][] {{"--help"}, {"check", "--help"}}) {
            Run run = run(args);
            assertEquals(0, run.code());
            assertEquals("", run.err());
            assertTrue(run.out().contains("Example:\n  fitworthy check scenarios/touring.yaml"), run.out());
            run.lines().forEach(line -> assertTrue(line.length() <= 80, line));
        }
        assertTrue(run("--help").out().contains("3  the rule book is wrong"));
    }

    @Test
    void textIsNoWiderThanEightyColumnsAndWithoutColour() throws IOException {
        List<String> sheets = new ArrayList<>(List.of(PLAIN, heavy()));
        if (Files.exists(Path.of("scenarios/touring.yaml"))) {
            sheets.add("scenarios/touring.yaml");
        }
        for (String each : sheets) {
            for (Run run : List.of(
                    run("check", each), run("check", each, "--all"), run(Map.of("NO_COLOR", "1"), "check", each))) {
                assertFalse(run.out().isEmpty(), run.err());
                run.lines().forEach(line -> assertTrue(line.length() <= 80, () -> each + ": " + line));
                assertFalse(run.out().contains("\u001b"), "an escape sequence");
            }
        }
    }

    @Test
    void jsonParsesAndSaysTheSame() throws IOException {
        Run run = run("check", heavy(), "--format", "json");
        assertEquals(1, run.code(), run.err());
        JsonNode json = new ObjectMapper().readTree(run.out());
        assertEquals("stop", json.get("worst").asText());
        assertTrue(json.get("findings").findValuesAsText("id").contains("mass.gvm-over"), run.out());
        assertTrue(run("check", heavy()).out().contains("mass.gvm-over"));
    }

    @Test
    void leastLeavesOutMilderFindingsButNotFromTheExitCode() throws IOException {
        JsonNode json = new ObjectMapper()
                .readTree(run("check", heavy(), "--format", "json", "--least", "stop")
                        .out());
        assertEquals(
                List.of("stop"),
                json.get("findings").findValuesAsText("severity").stream()
                        .distinct()
                        .toList());
        String note = sheet("note.yaml", Files.readString(Path.of(PLAIN)).replace("gvm: 3000 kg", "gvm: 2550 kg"));
        assertEquals(0, run("check", note).code(), "a note asks for nothing");
        assertTrue(run("check", note).out().contains("mass.gvm-tight"));
        assertFalse(run("check", note, "--least", "confirm").out().contains("mass.gvm-tight"));
        assertEquals(1, run("check", heavy(), "--least", "stop").code());
    }

    @Test
    void caseLooksAtThatLoadingOnly() throws IOException {
        assertEquals(1, run("check", heavy()).code());
        assertFalse(run("check", heavy(), "--case", "empty").out().contains("mass.gvm-over"));
        assertTrue(run("check", heavy(), "--case", "empty", "--case", "laden")
                .out()
                .contains("mass.gvm-over"));
    }

    @Test
    void regionAndDayOfTheCommandLineReplaceTheSheets() throws IOException {
        JsonNode json = new ObjectMapper()
                .readTree(run("check", PLAIN, "--format", "json", "--region", "au-sa", "--as-of", "2026-12-24")
                        .out());
        assertEquals("au-sa", json.get("region").asText());
        assertEquals("2026-12-24", json.get("as-of").asText());
    }

    /** One thing broken in a copy of the shipped book. */
    private record Broken(
            String what, String file, String old, String now, String place, String problem, String mend) {}

    @TestFactory
    Stream<DynamicTest> brokenBookEndsWithThreeAndThePlaceAndTheMend() {
        String drl = "mass/mass.drl";
        String cards = "mass/cards.yaml";
        String practice = "mass/practice.yaml";
        return Stream.of(
                        new Broken(
                                "syntax error",
                                drl,
                                "when\n    $load : Measure(name == \"mass.loaded\", known, headroom < 0)",
                                "when\n    $load : Measure(name == \"mass.loaded\", known headroom < 0)",
                                drl + ":3",
                                "'known headroom < 0' is not a plain comparison",
                                "headroom < 0"),
                        new Broken(
                                "number in a rule",
                                drl,
                                "known, headroom < 0)",
                                "known, headroom < 5)",
                                drl + ":3",
                                "the number 5 stands in a rule; numbers belong in practice.yaml",
                                "a practice value, such as value > $most.value"),
                        new Broken(
                                "import",
                                drl,
                                "rule \"mass.gvm-over\"",
                                "import java.io.File\nrule \"mass.gvm-over\"",
                                drl + ":1",
                                "'import' has no place in a rule file",
                                "rules only"),
                        new Broken(
                                "unknown measure",
                                drl,
                                "name == \"mass.loaded\", known, headroom < 0",
                                "name == \"mass.laoded\", known, headroom < 0",
                                drl + ":3",
                                "there is no measure 'mass.laoded' (did you mean 'mass.loaded'?)",
                                "docs/measures.md"),
                        new Broken(
                                "rule without card",
                                cards,
                                "mass.gvm-tight:\n",
                                "mass.gvm-tight-not:\n",
                                drl + ":15",
                                "this rule has no card (did you mean 'mass.gvm-tight-not'?)",
                                "an entry 'mass.gvm-tight:'"),
                        new Broken(
                                "card without rule",
                                cards,
                                "mass.gvm-tight:\n",
                                "mass.gvm-tight-not:\n",
                                cards + ":",
                                "this card has no rule (did you mean 'mass.gvm-tight'?)",
                                "rule \"mass.gvm-tight-not\""),
                        new Broken(
                                "unknown practice id",
                                cards,
                                "practice: [mass.gvm-reserve]",
                                "practice: [mass.gvm-spare]",
                                drl + ":15",
                                "its card names [mass.gvm-spare]",
                                "the same in both places"),
                        new Broken(
                                "removed practice value",
                                practice,
                                "mass.gvm-reserve:\n",
                                "mass.other:\n",
                                drl + ":15",
                                "uses the practice value 'mass.gvm-reserve', which is not in the book",
                                "an entry 'mass.gvm-reserve:'"),
                        new Broken(
                                "removed value of practice",
                                practice,
                                "mass.side-most:\n  unit: \"%\"\n  meaning: Largest difference"
                                        + " between left and right as a share of the loaded mass\n  values:\n    - {region: any, from:"
                                        + " 2000-01-01, value: 6 %, basis: common-practice}\n",
                                "mass.side-most:\n  unit: \"%\"\n  meaning: x\n" + "  values:\n",
                                practice + ":",
                                "mass.side-most.values: is left empty",
                                "with a line '- {region: au"),
                        new Broken(
                                "removed table row",
                                "tables/load-index.csv",
                                "\n61,257 kg,",
                                "\n0,257 kg,",
                                "tables/load-index.csv:3",
                                "the row for load index 61 is missing",
                                "61,<load> kg"),
                        new Broken(
                                "duplicate key",
                                cards,
                                "  severity: stop\n",
                                "  severity: stop\n  severity: note\n",
                                cards + ":4:3",
                                "mass.gvm-over.severity: 'severity' is given twice; first on line 3",
                                "keep one of the two"),
                        new Broken(
                                "unknown unit",
                                practice,
                                "unit: kg\n",
                                "unit: stone\n",
                                practice + ":",
                                "'stone' is not a unit",
                                "unit: kg"),
                        new Broken(
                                "source not listed",
                                cards,
                                "sources: [club-handbook-gvm]",
                                "sources: [club-handbok-gvm]",
                                cards + ":32:13: mass.gvm-over",
                                "cites 'club-handbok-gvm', which sources.yaml does not list (did you mean"
                                        + " 'club-handbook-gvm'?)",
                                "an entry 'club-handbok-gvm:' in sources.yaml"),
                        new Broken(
                                "no regions",
                                "book.yaml",
                                "regions:\n",
                                "areas:\n",
                                "book.yaml:1:1",
                                "regions: is missing",
                                "regions: {any: {name: Anywhere}}"))
                .map(each -> DynamicTest.dynamicTest(each.what(), () -> broken(each)));
    }

    private static void broken(Broken broken) throws IOException {
        Path rules = folder.resolve("rules");
        Folders.copy(Books.RULES, rules);
        Path file = rules.resolve(broken.file());
        String text = Files.readString(file);
        int at = text.indexOf(broken.old());
        assertTrue(at >= 0, () -> file + " has no '" + broken.old() + "'");
        Files.writeString(
                file,
                text.substring(0, at)
                        + broken.now()
                        + text.substring(at + broken.old().length()));
        Run run = run("check", PLAIN, "--rules", rules.toString());
        refused(3, run);
        assertTrue(run.err().contains("The rule book cannot be used, so no advice is given:\n"), run.err());
        String[] lines = run.err().split("\n");
        assertTrue(
                Arrays.stream(lines)
                        .anyMatch(line ->
                                line.startsWith(rules.resolve(broken.place()).toString())
                                        && line.contains(broken.problem())),
                () -> broken.place() + ": " + broken.problem() + " is not in\n" + run.err());
        for (int i = 0; i < lines.length; i++) {
            if (lines[i].contains(broken.problem())) {
                String right = Arrays.stream(lines)
                        .skip(i)
                        .filter(line -> line.startsWith("    right: "))
                        .findFirst()
                        .orElse("");
                assertTrue(right.contains(broken.mend()), right);
            }
        }
    }

    @Test
    void colourEndsWhereItsWordEnds() {
        for (Severity severity : Severity.values()) {
            String painted = Check.painted(severity, severity.name());
            assertTrue(painted.matches("\u001B\\[1m(\u001B\\[3\\dm)?" + severity + ".*\u001B\\[0m"), painted);
        }
        assertFalse(run("check", PLAIN).out().contains("\u001B"));
    }
}
