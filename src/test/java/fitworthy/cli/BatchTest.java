package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.engine.BooksOfOneRule;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command batch: many sheets in, a line of JSON out for each. */
class BatchTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder;

    /** The plain wagon of 2520 kg with this GVM. */
    private static String plain(int gvm) throws IOException {
        return Files.readString(Books.RULES.resolve("plain-sheet.yaml"))
                .replace("gvm: 3000 kg", "gvm: " + gvm + " kg")
                .replaceFirst("title: .*", "title: Wagon " + gvm);
    }

    private static Object plain(Node node) {
        if (node instanceof Node.Mapping mapping) {
            Map<String, Object> fields = new LinkedHashMap<>();
            mapping.entries().forEach((key, entry) -> fields.put(key, plain(entry.value())));
            return fields;
        }
        return node instanceof Node.Listing list
                ? list.items().stream().map(BatchTest::plain).toList()
                : ((Node.Scalar) node).text();
    }

    /** A sheet as one line of JSON. */
    static String line(String yaml) throws IOException {
        return JSON.writeValueAsString(plain(NodeReader.read("f", yaml, new ArrayList<>())));
    }

    static Ran piped(String in, String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Fitworthy.run(
                new ByteArrayInputStream(in.getBytes(StandardCharsets.UTF_8)),
                new PrintWriter(out),
                new PrintWriter(err),
                Map.of("FITWORTHY_CACHE", Books.CACHE.toString(), "FITWORTHY_RULES", Books.RULES.toString()),
                args);
        return new Ran(code, out.toString(), err.toString());
    }

    private static List<JsonNode> answers(String text) throws IOException {
        List<JsonNode> answers = new ArrayList<>();
        for (String line : text.split("\n")) {
            answers.add(JSON.readTree(line));
        }
        return answers;
    }

    @Test
    void folderIsAnsweredInTheOrderOfItsNamesWithManyJobs() throws IOException {
        List<Integer> gvms = IntStream.range(0, 40)
                .map(each -> each % 2 == 0 ? 2400 + each : 3000 + each)
                .boxed()
                .toList();
        for (int i = 0; i < gvms.size(); i++) {
            Files.writeString(folder.resolve((char) ('a' + i / 10) + "" + i % 10 + ".yaml"), plain(gvms.get(i)));
        }
        Ran ran = Ran.of("batch", folder.toString(), "--jobs", "8");
        assertEquals(1, ran.code(), ran.err());
        List<JsonNode> answers = answers(ran.out());
        assertEquals(
                gvms.stream().map(each -> "Wagon " + each).toList(),
                answers.stream().map(each -> each.get("title").asText()).toList());
        assertEquals(
                folder.resolve("a0.yaml").toString(),
                answers.get(0).get("sheet").asText());
        assertEquals(
                gvms.stream().map(each -> each < 2520 ? "stop" : "none").toList(),
                answers.stream().map(each -> each.get("worst").asText()).toList());
    }

    /** 2520 kg: 10 kg over the maker's GVM, and within what the kit raises it to once somebody approves it. */
    @Test
    void howThePlanStandsUntilAKitIsApprovedIsToldToProgramsToo() throws IOException {
        Path raised = folder.resolve("a.yaml");
        Files.writeString(
                raised,
                plain(2510)
                        + "\nfitments: [{name: Kit, kind: rating-upgrade, mass: 0 kg, suits: yes, gvm: 3000 kg}]\n");
        Files.writeString(folder.resolve("b.yaml"), plain(3000));
        List<JsonNode> answers = answers(Ran.of("batch", folder.toString()).out());
        JsonNode checked = JSON.readTree(
                Ran.of("check", raised.toString(), "--format", "json").out());
        for (JsonNode told : List.of(answers.get(0), checked)) {
            JsonNode until = told.get("until-approved");
            assertEquals("Kit", until.get("part").asText());
            assertEquals(1, until.get("over").size(), until::toString);
            assertEquals("GVM", until.get("over").get(0).get("limit").asText());
            assertEquals(-10, until.get("over").get(0).get("margin").asDouble(), 1e-9);
            assertEquals(
                    "everything aboard", until.get("over").get(0).get("case").asText());
        }
        assertFalse(answers.get(1).has("until-approved"));
    }

    /**
     * Over twenty parts of this plan have slack; five of them at a time are more combinations than a rule may look at.
     */
    @Test
    void aRuleThatRunsAwayIsNamedAndIsNoFaultOfTheSheet() throws Exception {
        BooksOfOneRule.of(
                folder,
                "    $m : Measure(name == \"mass.loaded\", known)\n"
                        + "    Measure(name == \"order.slack\", known)\n".repeat(5),
                "mass.loaded, order.slack");
        Ran ran = piped(
                JSON.writeValueAsString(plain(Sheets.scenario("touring"))),
                "batch",
                "-",
                "--rules",
                folder.resolve("rules").toString());
        assertEquals(3, ran.code(), ran.err());
        JsonNode fault = answers(ran.out()).get(0).get("faults").get(0);
        assertEquals(
                folder.resolve("rules/mass/mass.drl") + ":1", fault.get("place").asText());
        assertEquals(
                "the rule 'mass.gvm-over' would look at more than 1000000 combinations of measures",
                fault.get("problem").asText());
    }

    /** 2520 kg against a GVM of 2400 kg. */
    @Test
    void lineSaysInShortWhatCheckSays() throws IOException {
        JsonNode answer = answers(piped(line(plain(2400)), "batch", "-").out()).get(0);
        assertEquals(
                "[\"sheet\",\"title\",\"worst\",\"findings\",\"not-assessed\",\"figures-missing\",\"met\",\"in-order-if-guesses-hold\",\"caution\"]",
                JSON.writeValueAsString(
                        answer.properties().stream().map(Map.Entry::getKey).toList()));
        assertTrue(answer.get("sheet").isInt());
        String sheet =
                Files.writeString(folder.resolve("sheet.yaml"), plain(2400)).toString();
        JsonNode checked =
                JSON.readTree(Ran.of("check", sheet, "--format", "json").out());
        assertEquals(
                checked.get("counts").get("not-assessed").asInt(),
                answer.get("not-assessed").asInt());
        assertEquals(
                checked.get("counts").get("figures-missing").asInt(),
                answer.get("figures-missing").asInt());
        assertEquals(checked.get("counts").get("met").asInt(), answer.get("met").asInt());
        assertEquals(checked.get("caution"), answer.get("caution"));
        assertEquals(checked.get("findings").size(), answer.get("findings").size());
        for (int i = 0; i < answer.get("findings").size(); i++) {
            JsonNode whole = checked.get("findings").get(i);
            answer.get("findings")
                    .get(i)
                    .properties()
                    .forEach(each -> assertEquals(whole.get(each.getKey()), each.getValue()));
        }
        JsonNode over = answer.get("findings").get(0);
        assertEquals(
                "mass.gvm-over stop vehicle kg 2520.0 2400.0 -120.0",
                Stream.of("id", "severity", "subject", "unit", "value", "limit", "margin")
                        .map(each -> over.get(each).asText())
                        .reduce((a, b) -> a + " " + b)
                        .orElseThrow());
    }

    @Test
    void badLineIsAnsweredInItsPlaceAndTheOthersGoOn() throws IOException {
        String in = line(plain(3000)) + "\n" + line(plain(3000).replace("seats: 5", "seets: 5")) + "\nhello\n\n"
                + line(plain(3001)) + "\n";
        Ran ran = piped(in, "batch", "-", "--jobs", "3");
        assertEquals(2, ran.code(), ran.err());
        List<JsonNode> answers = answers(ran.out());
        assertEquals(
                List.of(1, 2, 3, 5),
                answers.stream().map(each -> each.get("sheet").asInt()).toList());
        assertEquals(2, answers.get(1).size());
        JsonNode fault = answers.get(1).get("faults").get(0);
        assertTrue(fault.get("place").asText().matches("-:2:\\d+"), fault.toString());
        assertEquals("vehicle.seets", fault.get("about").asText());
        assertEquals(
                "no field has this name (did you mean 'seats'?)",
                fault.get("problem").asText());
        assertTrue(fault.get("right").asText().contains("seats"), fault.toString());
        assertEquals(
                "the line is not a JSON object",
                answers.get(2).at("/faults/0/problem").asText());
        assertEquals("Wagon 3001", answers.get(3).get("title").asText());
    }

    @Test
    void codesAreThoseOfCheck() throws IOException {
        assertEquals(0, piped(line(plain(3000)), "batch", "-").code());
        assertEquals(0, piped(line(plain(2550)), "batch", "-").code(), "a note asks for nothing");
        assertEquals(
                1,
                piped(line(plain(3000)) + "\n" + line(plain(2500)), "batch", "-")
                        .code());
        assertEquals(0, piped("", "batch", "-").code(), "nothing in, nothing out");
        Ran.of("batch", "none").refused(2, "none: there is no such file");
        Ran.of("batch", folder.toString()).refused(2, "there is no sheet in this folder");
        Ran.of("batch", folder.toString(), "--jobs", "0").refused(2, "--jobs takes a number from 1 to 256, not 0");
    }

    @Test
    void regionDayAndHouseAreThoseOfTheCommandLine() throws IOException {
        String house = Files.writeString(
                        folder.resolve("house.yml~"),
                        "shop: Saltbush Fit-out\nseverities:\n" + "  - {rule: mass.gvm-tight, severity: change}\n")
                .toString();
        String tight = line(plain(2550));
        assertEquals(
                "note",
                answers(piped(tight, "batch", "-").out()).get(0).get("worst").asText());
        assertEquals(
                "change",
                answers(piped(tight, "batch", "-", "--house", house).out())
                        .get(0)
                        .get("worst")
                        .asText());
        piped(tight, "batch", "-", "--region", "au-nws")
                .refused(2, "--region: the rule book has no region 'au-nws' (did you" + " mean 'au-nsw'?)");
        piped(tight, "batch", "-", "--as-of", "2026-13-01").refused(2, "--as-of: '2026-13-01' is not a date");
    }

    @Test
    void fileIsThereWhenAllIsDoneOrStaysAsItWas() throws IOException {
        Path out = Files.writeString(folder.resolve("advice.ndjson"), "earlier\n");
        String all = line(plain(3000)) + "\n" + line(plain(2500)) + "\n";
        Ran ran = piped(all, "batch", "-", "--out", out.toString());
        assertEquals("", ran.out() + ran.err());
        assertEquals(piped(all, "batch", "-").out(), Files.readString(out));
        Ran failed = piped(
                all, "batch", "-", "--out", folder.resolve("none/advice.ndjson").toString());
        failed.refused(74, folder.resolve("none/advice.ndjson") + ": there is no such folder");
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(out), left.toList());
        }
    }

    @Test
    void brokenBookEndsWithThreeBeforeAnySheet() {
        Ran ran = Ran.of("batch", "scenarios", "--rules", folder.toString());
        ran.refused(3, "there is no book.yaml in this folder");
        assertFalse(Files.exists(folder.resolve("advice.ndjson")));
    }
}
