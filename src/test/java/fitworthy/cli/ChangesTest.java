package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fitworthy.Books;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command changes, on two copies of the shipped book that only keep its water topic. */
class ChangesTest {

    private static final String SOUTH = "    - region: au-sa\n      from: 2000-01-01\n      value: 3 days\n";

    @TempDir
    private Path folder;

    private Path old;
    private Path now;

    @BeforeEach
    void copyTwice() throws IOException {
        old = Books.copyOf("water", folder.resolve("old"));
        now = Books.copyOf("water", folder.resolve("now"));
    }

    private static void edit(Path page, String was, String is) throws IOException {
        String before = Files.readString(page);
        assertTrue(before.contains(was), () -> page + " has no " + was);
        Files.writeString(page, before.replaceFirst(Pattern.quote(was), Matcher.quoteReplacement(is)));
    }

    private Ran changes(String... more) {
        List<String> args = new ArrayList<>(List.of("changes", old.toString(), now.toString()));
        args.addAll(List.of(more));
        return Ran.of(args.toArray(String[]::new));
    }

    /** What is told, each as {@code kind what id region from: name before>after, ...}; nothing ends with code 0. */
    private List<String> told() throws IOException {
        Ran ran = changes("--format", "json");
        List<String> told = new ArrayList<>();
        for (JsonNode change : new ObjectMapper().readTree(ran.out()).get("changes")) {
            List<String> fields = new ArrayList<>();
            change.get("fields")
                    .forEach(field -> fields.add(field.get("name").asText() + " "
                            + field.path("before").asText("-") + ">"
                            + field.path("after").asText("-")));
            told.add(change.get("kind").asText() + " " + change.get("what").asText() + " "
                    + change.get("id").asText() + " " + change.path("region").asText("") + " "
                    + change.path("from").asText("") + ": " + String.join(", ", fields));
        }
        assertEquals(told.isEmpty() ? 0 : 1, ran.code(), ran.out() + ran.err());
        return told;
    }

    private Path water(String file) {
        return now.resolve("water").resolve(file);
    }

    @Test
    void anotherLayoutIsNoChange() throws IOException {
        edit(water("practice.yaml"), SOUTH, "\n    # As the leaflet has it.\n" + SOUTH.replace("3 days", "72 h"));
        edit(water("cards.yaml"), "remedy: >-\n    Set out with", "remedy: >-\n    Set out\n    with");
        edit(water("cards.yaml"), "  severity: change\n", "");
        edit(water("cards.yaml"), "water.short:\n", "water.short:\n  severity: change\n  consequence: breaks-down\n");
        edit(
                water("water.drl"),
                "    $least : Practice(id == \"water.person-day-least\")\n"
                        + "    $water : Measure(name == \"water.person-day\", known, value < $least.value)\n"
                        + "    $needed : Measure(name == \"water.needed\")\n"
                        + "    $remote : Practice(id == \"water.remote-days\")\n"
                        + "    $days : Measure(name == \"water.days\", value >= $remote.value)\n"
                        + "then\n    advice.give(\"water.short\", $water, $needed, $days, $least, $remote);",
                "    // What is needed comes first.\n    $want : Measure(name == \"water.needed\")\n"
                        + "    $few : Practice(id == \"water.person-day-least\")\n"
                        + "    $water : Measure(name == \"water.person-day\", value < $few.value)\n"
                        + "    $remote : Practice(id == \"water.remote-days\")\n"
                        + "    $days : Measure(name == \"water.days\", value >= $remote.value)\n"
                        + "then\n    advice.give(\"water.short\", $water, $want, $days, $few, $remote);");
        edit(
                water("cards.yaml"),
                "sources: [sa-remote-travel]",
                "\n  # The leaflet.\n  sources:\n    - sa-remote-travel");
        edit(now.resolve("sources.yaml"), "council-water-carriers:\n", "# By name.\n\ncouncil-water-carriers:\n");
        assertEquals(List.of(), told());
        Ran same = changes().printed(0).says("Nothing differs in what the two say.");
        assertTrue(same.out().contains("content"), same.out());
    }

    /** Utah is new: until its first value it went by the United States', until its second one by its first. */
    @Test
    void aValueOfANewRegionSaysWhatHeldThereByInheritance() throws IOException {
        edit(now.resolve("book.yaml"), "  us-tx: {", "  us-ut: {name: Utah, parent: us}\n  us-tx: {");
        edit(
                water("practice.yaml"),
                "      value: 75 %\n",
                "      value: 75 %\n      basis: memory\n"
                        + "    - {region: us-ut, from: 2010-01-01, value: 60 %, basis: memory}\n"
                        + "    - region: us-ut\n      from: 2015-01-01\n      value: 50 %\n");
        changes()
                .printed(1)
                .says("Utah (us-ut) from 2010-01-01: 60 % (until then: 75 %)")
                .says("Utah (us-ut) from 2015-01-01: 50 % (until then: 60 %)");
    }

    @Test
    void valuesAreToldWithRegionDayAndBothFigures() throws IOException {
        edit(
                water("practice.yaml"),
                SOUTH,
                "    - {region: au-sa, from: 2027-07-01, value: 4 days, basis: memory}\n"
                        + "    - {region: us, from: 2027-07-01, value: none, basis: memory}\n" + SOUTH);
        edit(water("practice.yaml"), "value: 75 %", "value: 70 %");
        edit(water("practice.yaml"), "from: 2011-01-01", "from: 2012-01-01");
        edit(
                old.resolve("water/practice.yaml"),
                SOUTH,
                "    - {region: au-nsw, from: 2020-01-01, value: 2 days, basis: memory}\n" + SOUTH);
        assertEquals(
                List.of(
                        "value changed water.largest-most any 2000-01-01: value 75 %>70 %",
                        "value changed water.person-day-least any 2012-01-01: from 2011-01-01>2012-01-01",
                        "value added water.reserve-least au-sa 2027-07-01: value 3 days>4 days",
                        "value ended water.reserve-least us 2027-07-01: value ->none",
                        "value gone water.reserve-least au-nsw 2020-01-01: value 2 days>3 days"),
                told());
        changes()
                .printed(1)
                .says("Differences: practice values 5.")
                .says("added: South Australia (au-sa) from 2027-07-01: 4 days (until then: 3 days); memory"
                        + " (water/practice.yaml:")
                .says("ended: United States (us) from 2027-07-01: no such limit (until then: nothing recorded); memory")
                .says("taken out: New South Wales (au-nsw) from 2020-01-01: 2 days; in its place: 3 days; memory")
                .says("changed: Anywhere (any) from 2000-01-01: value: 70 % (before: 75 %); common-practice"
                        + " [remote-rescue-water]");
    }

    @Test
    void theUnitTheEvidenceAndTheEndOfAStandingValueAreTold() throws IOException {
        edit(water("practice.yaml"), SOUTH, SOUTH.replace("3 days", "none"));
        edit(water("practice.yaml"), "unit: \"%\"\n  meaning: Largest share", "unit: \"%\"\n  meaning: Greatest share");
        edit(
                water("practice.yaml"),
                "value: 2 days, basis: common-practice}",
                "value: 2 days, basis: memory, note: Nobody says., sources: [sa-remote-travel], review: 2027-07-01}");
        assertEquals(
                List.of(
                        "value changed water.largest-most  : meaning Largest share of all the water that one tank should"
                                + " hold away from supplies>Greatest share of all the water that one tank should hold away"
                                + " from supplies",
                        "value changed water.remote-days any 2000-01-01: basis common-practice>memory, note ->Nobody says.,"
                                + " review ->2027-07-01, sources ->sa-remote-travel",
                        "value ended water.reserve-least au-sa 2000-01-01: value 3 days>none"),
                told().stream().sorted().toList());
    }

    @Test
    void aRuleIsToldWithItsCardWhereItComesOrGoes() throws IOException {
        Ran begun = Ran.of(
                "begin",
                "rule",
                "water.plenty",
                "--about",
                "water.person-day",
                "--from",
                "2027-07-01",
                "--rules",
                now.toString());
        assertEquals(0, begun.code(), begun.err());
        List<String> added = told();
        assertEquals(3, added.size(), added.toString());
        assertTrue(added.get(2).startsWith("rule added water.plenty  : "), added.get(2));
        assertTrue(added.get(2).contains("severity ->note") && added.get(2).contains("fires where ->"), added.get(2));
        changes().printed(1).says("water.plenty: To be written").says("- added (water/water.drl:");
        Path kept = old;
        old = now;
        now = kept;
        List<String> gone = told();
        assertTrue(gone.get(2).startsWith("rule gone water.plenty  : "), gone.get(2));
        changes().printed(1).says("- taken out (water/water.drl:");
    }

    @Test
    void aChangedConditionIsToldInItsLines() throws IOException {
        edit(
                water("water.drl"),
                "\"water.reserve\", known, value < $least.value",
                "\"water.reserve\", known, value <= $least.value");
        assertEquals(
                List.of(
                        "rule changed water.no-reserve  : fires where $reserve is water.reserve, days of water left at the"
                                + " next supplies, with known and value < $least.value>$reserve is water.reserve, days of water left"
                                + " at the next supplies, with known and value <= $least.value"),
                told());
    }

    /** The same patterns, joined otherwise. */
    @Test
    void anotherGroupingIsTold() throws IOException {
        String days = "Measure(name == \"water.days\", known, value > 0)";
        String use = "Measure(name == \"water.use\", known, value > 0)";
        String needed = "Measure(name == \"water.needed\", known, value > 0)";
        for (Path book : List.of(old, now)) {
            edit(
                    book.resolve("water/water.drl"),
                    "    $needed : Measure(name == \"water.reserve-needed\")\n",
                    "    $needed : Measure(name == \"water.reserve-needed\")\n    "
                            + (book.equals(old)
                                    ? "((" + days + " and " + use + ") or " + needed + ")"
                                    : "(" + days + " or (" + use + " and " + needed + "))")
                            + "\n");
            edit(
                    book.resolve("water/cards.yaml"),
                    "about: [water.reserve, water.reserve-needed, water.reserve-short, water.days]",
                    "about: [water.reserve, water.reserve-needed, water.reserve-short, water.days, water.use, water.needed]");
        }
        List<String> told = told();
        assertEquals(1, told.size(), told.toString());
        assertTrue(told.get(0).startsWith("rule changed water.no-reserve  : fires where "), told.get(0));
        assertTrue(told.get(0).contains(" or "), told.get(0));
    }

    @Test
    void cardsAreToldFieldByField() throws IOException {
        edit(
                water("cards.yaml"),
                "  title: Too little water is left for a delay\n  severity: change\n",
                "  title: Too little is left for a delay\n  severity: stop\n");
        edit(water("cards.yaml"), "That leaves {limit} or more", "That leaves {limit}");
        asking(old, "  ask:\n    - {party: customer, what: what is used a day}\n    - party: builder\n");
        asking(
                now,
                "  ask:\n"
                        + "    - {party: customer, what: what is really used a day, bring: a note of one weekend}\n"
                        + "    - {party: part-maker, of: the tank}\n"
                        + "  in-region:\n"
                        + "    - {region: au, ask: [{party: route, what: where water is}]}\n");
        List<String> told = told();
        assertEquals(1, told.size(), told.toString());
        for (String part : List.of(
                "card changed water.no-reserve  : ",
                "severity change>stop",
                "title Too little water is left for a delay>Too little is left for a delay",
                "ask 1 what what is used a day>what is really used a day",
                "ask 1 bring ->a note of one weekend",
                "ask 2 party builder>part-maker",
                "ask 2 of ->the tank",
                "in-region au ask 1 party ->route",
                "in-region au ask 1 what ->where water is",
                "remedy Set out with {water.reserve-needed}, {water.reserve-short} more than planned. That leaves")) {
            assertTrue(told.get(0).contains(part), told.get(0));
        }
        changes().printed(1).says("- severity: stop (before: change)");
    }

    /** Puts what the card of water.no-reserve asks in place of what it asks. */
    private static void asking(Path book, String ask) throws IOException {
        Path page = book.resolve("water/cards.yaml");
        String before = Files.readString(page);
        int from = before.indexOf("  ask:\n", before.indexOf("water.no-reserve:"));
        Files.writeString(page, before.substring(0, from) + ask + before.substring(before.indexOf("  basis:", from)));
    }

    /** Which side is allowed is at-most where it is left out. */
    @Test
    void anotherSideIsTold() throws IOException {
        edit(
                old.resolve("water/cards.yaml"),
                "  against: water.largest-most\n",
                "  against: water.largest-most\n  allowed: at-most\n");
        assertEquals(List.of(), told());
        edit(
                water("cards.yaml"),
                "  against: water.largest-most\n",
                "  against: water.largest-most\n  allowed: at-least\n");
        assertEquals(List.of("card changed water.one-tank  : allowed at-most>at-least"), told());
    }

    @Test
    void sourcesRegionsTablesAndTheCoverAreTold() throws IOException {
        Files.writeString(
                now.resolve("sources.yaml"),
                Files.readString(now.resolve("sources.yaml"))
                        + "\nzz-new:\n  title: A new leaflet\n  kind: guidance\n  seen: all of it\n");
        edit(now.resolve("sources.yaml"), "seen: the page; written for businesses", "seen: the whole page");
        edit(now.resolve("book.yaml"), "    name: New Zealand", "    name: Both islands");
        edit(now.resolve("book.yaml"), "edition: \"2026.11\"", "edition: \"2027.07\"");
        edit(now.resolve("book.yaml"), "memory: 180 days", "memory: 10 weeks");
        edit(now.resolve("tables/load-index.csv"), "100,800 kg", "100,801 kg");
        assertEquals(
                List.of(
                        "source changed council-water-carriers  : seen the page; written for businesses>the whole page",
                        "source added zz-new  : kind ->guidance, seen ->all of it, title ->A new leaflet",
                        "region changed nz  : name New Zealand>Both islands",
                        "table changed load-index  : 100 800 kg>801 kg",
                        "cover changed book  : edition 2026.11>2027.07, review memory 180 days>70 days"),
                told());
    }

    @Test
    void markdownHasASectionAKind() throws IOException {
        edit(water("practice.yaml"), "value: 75 %", "value: 70 %");
        Ran ran = changes("--format", "markdown");
        assertEquals(1, ran.code(), ran.err());
        assertTrue(ran.out().contains("\n## Practice values\n\n### water.largest-most: "), ran.out());
        assertTrue(
                ran.out().contains("\n- changed: Anywhere (any) from 2000-01-01: value: 70 % (before: 75 %)"),
                ran.out());
    }

    @Test
    void aFaultInEitherIsToldWithItsFileAndLine() throws IOException {
        edit(old.resolve("water/practice.yaml"), "value: 75 %", "value: 75 kg");
        edit(water("practice.yaml"), "value: 75 %", "value: many");
        Ran ran = changes();
        ran.refused(3, "The rule book cannot be used");
        int line = (int) Files.readString(water("practice.yaml"))
                        .lines()
                        .takeWhile(text -> !text.contains("value: many"))
                        .count()
                + 1;
        assertTrue(ran.err().contains(old.resolve("water/practice.yaml") + ":" + line + ":"), ran.err());
        assertTrue(ran.err().contains(water("practice.yaml") + ":" + line + ":"), ran.err());
        Ran.of("changes", now.resolve("none").toString(), old.toString())
                .refused(3, "there is no book.yaml in this folder");
        Ran.of("changes", old.toString()).refused(2, "Missing required parameter");
    }
}
