package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fitworthy.Books;
import fitworthy.Folders;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * The command effect, on two copies of the shipped book that only keep its water topic. Two people are seven days away
 * from supplies, so a tank of 84 L holds the 6 L for each person and day that South Australia asks for.
 */
class EffectTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    /** The value of South Australia and the day it holds from. */
    private static final String LEAST = "    - region: au-sa\n      from: 2000-01-01\n      value: 6 L\n";

    @TempDir
    private static Path folder;

    private static Path rules;
    private static Path edited;

    @TempDir
    private Path sheets;

    private final List<Runnable> undo = new ArrayList<>();

    @BeforeAll
    static void copyOneTopicTwice() throws IOException {
        rules = copy("rules");
        edited = copy("edited");
        // So that no later run has to say that it compiles.
        for (Path each : List.of(rules, edited)) {
            Ran.of("cases", "--rules", each.toString(), "--region", "us");
        }
    }

    private static Path copy(String name) throws IOException {
        Path copy = folder.resolve(name);
        Folders.copy(
                Books.RULES,
                copy,
                inside -> inside.getNameCount() == 1 || inside.startsWith("tables") || inside.startsWith("water"));
        return copy;
    }

    @BeforeEach
    void writeSheets() throws IOException {
        sheet("a-short", 80, "");
        sheet("b-tight", 90, "");
        sheet("c-ample", 120, "");
    }

    @AfterEach
    void undoEdits() {
        undo.forEach(Runnable::run);
    }

    private static String text(String title, int litres, String more) throws IOException {
        return Files.readString(Books.RULES.resolve("plain-sheet.yaml"))
                        .replaceFirst("title: .*", "title: " + title)
                        .replaceFirst("region: \\S+", "region: au-sa")
                        .replaceFirst(
                                "(?m)^tanks:\n",
                                "tanks:\n  - {name: Water tank, liquid: water, capacity: " + litres
                                        + " L, fill: 100 %, stock: no, mass: 6 kg, at: {x: 2400 mm, y: 0 mm, z: 700 mm}, water: "
                                        + "{potable: yes, baffled: yes, frost-guarded: yes, clearance: 200 mm}}\n")
                        .replaceFirst(
                                "(?m)^trip:\n",
                                "trip:\n  people: 2\n  days: 7 days\n  water-use: 8 L\n  coldest: 5 degC\n")
                + more;
    }

    private Path sheet(String title, int litres, String more) throws IOException {
        return Files.writeString(sheets.resolve(title + ".yaml"), text(title, litres, more));
    }

    /** Puts one text in place of another in the edited book until the test ends. */
    private void edit(String file, String old, String now) throws IOException {
        Path path = edited.resolve(file);
        String before = Files.readString(path);
        assertTrue(before.contains(old), () -> file + " has no " + old);
        Files.writeString(path, before.replace(old, now));
        undo.add(0, () -> {
            try {
                Files.writeString(path, before);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    private String[] effect(String... more) {
        return Stream.concat(Stream.of("effect", sheets.toString(), "--rules", rules.toString()), Stream.of(more))
                .toArray(String[]::new);
    }

    /** The lines of JSON of a run that ends with a code. */
    private List<JsonNode> lines(int code, String... more) throws IOException {
        return lines(
                code,
                Ran.of(Stream.concat(Stream.of(effect(more)), Stream.of("--format", "json"))
                        .toArray(String[]::new)));
    }

    private static List<JsonNode> lines(int code, Ran ran) throws IOException {
        assertEquals(code, ran.code(), ran.out() + ran.err());
        List<JsonNode> lines = new ArrayList<>();
        for (String line : ran.out().split("\n")) {
            lines.add(JSON.readTree(line));
        }
        return lines;
    }

    /** Each difference as {@code title: ways id before after}, a side as {@code outcome value/limit/margin}. */
    private static List<String> told(List<JsonNode> lines) {
        List<String> told = new ArrayList<>();
        for (JsonNode sheet : lines.subList(1, lines.size())) {
            for (JsonNode each : sheet.path("differences")) {
                List<String> ways = new ArrayList<>();
                each.get("what").forEach(way -> ways.add(way.asText()));
                told.add(sheet.get("title").asText() + ": " + String.join("+", ways) + " "
                        + each.get("id").asText()
                        + ", "
                        + side(each.get("before")) + ", " + side(each.get("after")));
            }
        }
        return told;
    }

    private static String side(JsonNode state) {
        return state.get("outcome").asText()
                + (state.has("waived") ? " waived" : "")
                + (state.has("limit")
                        ? " " + state.get("value").asText() + "/"
                                + state.get("limit").asText() + "/"
                                + state.get("margin").asText() + " "
                                + state.get("unit").asText()
                        : "")
                + (state.has("missing") ? " " + state.get("missing").get(0).asText() : "");
    }

    /** 80 L are 5.714 L and 90 L are 6.429 L for each person and day. */
    @Test
    void higherLimitGainsAFindingAndChangesFigures() throws IOException {
        edit("water/practice.yaml", LEAST, LEAST.replace("6 L", "6.5 L"));
        List<JsonNode> lines = lines(1, "--with-rules", edited.toString());
        assertEquals(
                List.of(
                        "a-short: figures water.short, change 5.714/6.0/-0.286 L, change 5.714/6.5/-0.786 L",
                        "b-tight: gained water.short, met 6.429/6.0/0.429 L, change 6.429/6.5/-0.071 L"),
                told(lines).stream()
                        .filter(each -> each.contains("water.short"))
                        .toList());
        JsonNode head = lines.get(0);
        assertEquals(
                "fitworthy-effect/1 3 0",
                head.get("shape").asText() + " " + head.get("sheets") + " " + head.get("bad"));
        assertEquals(
                "{\"figures\":1,\"gained\":1,\"sheets\":2}",
                head.at("/rules/water.short").toString());
        assertTrue(!head.at("/before/content").equals(head.at("/after/content")), head.toString());
    }

    /** Two days from supplies count as remote in the book, three after the change; the trip takes seven. */
    @Test
    void aFigureThatAFindingNamesBesidesIsAFigureOfItToo() throws IOException {
        edit("water/practice.yaml", "value: 2 days", "value: 3 days");
        List<JsonNode> lines = lines(1, "--with-rules", edited.toString());
        String figures = "a-short: figures water.short, change 5.714/6.0/-0.286 L, change 5.714/6.0/-0.286 L";
        assertTrue(told(lines).contains(figures), told(lines).toString());
        assertEquals(
                "{\"water.remote-days\":\"2 days -> 3 days\"}",
                lines.get(1).at("/differences/0/besides").toString());
        Ran.of(effect("--with-rules", edited.toString()))
                .printed(1)
                .says("margin -0.3 L, water.remote-days 2 days -> 3 days");
    }

    /** A territory that went by Australia's 6 L gets 6.5 L of its own. */
    @Test
    void aRegionThatOnlyTheNewBookHasIsHeldAgainstWhatHeldThereBefore() throws IOException {
        edit("book.yaml", "  au-act:", "  au-bay: {name: Bay Territory, parent: au}\n  au-act:");
        edit(
                "water/practice.yaml",
                LEAST,
                "    - {region: au-bay, from: 2000-01-01, value: 6.5 L, basis: common-practice}\n" + LEAST);
        Path sheet = sheet("a-short", 80, "");
        Files.writeString(sheet, Files.readString(sheet).replace("region: au-sa", "region: au-bay"));
        List<JsonNode> lines = lines(1, "--with-rules", edited.toString());
        assertEquals(
                List.of("a-short: figures water.short, change 5.714/6.0/-0.286 L, change 5.714/6.5/-0.786 L"),
                told(lines));
        assertEquals("au", lines.get(1).get("before-region").asText());
        Ran.of(effect("--with-rules", edited.toString()))
                .printed(1)
                .says("a-short (its region is new; before the change by au)");
        assertEquals(
                3,
                told(lines(1, "--with-rules", edited.toString(), "--region", "au-bay")).stream()
                                .filter(each -> each.contains("water.short"))
                                .count()
                        + 1);
        Ran.of(effect("--with-rules", edited.toString(), "--region", "au-bai"))
                .refused(2, "--region: the rule book has no region 'au-bai'");
    }

    @Test
    void aCheckThatWasInOrderAndIsNotAskedAnyMoreIsTold() throws IOException {
        edit("water/practice.yaml", LEAST, LEAST.replace("6 L", "none"));
        List<String> told = told(lines(1, "--with-rules", edited.toString()));
        assertTrue(
                told.contains("a-short: lost water.short, change 5.714/6.0/-0.286 L, does-not-apply"), told.toString());
        assertTrue(
                told.contains("b-tight: silenced water.short, met 6.429/6.0/0.429 L, does-not-apply"), told.toString());
    }

    @Test
    void theSameTheOtherWayRoundLosesIt() throws IOException {
        edit("water/practice.yaml", LEAST, LEAST.replace("6 L", "5.5 L"));
        assertTrue(told(lines(1, "--with-rules", edited.toString()))
                .contains("a-short: lost water.short, change 5.714/6.0/-0.286 L, met 5.714/5.5/0.214 L"));
    }

    @Test
    void severityOfACardChangesAndSoDoesTheVerdict() throws IOException {
        String cards = Files.readString(edited.resolve("water/cards.yaml"));
        String card = cards.substring(cards.indexOf("water.short:"));
        card = card.substring(0, card.indexOf("severity: change") + "severity: change".length());
        edit("water/cards.yaml", card, card.replace("severity: change", "severity: stop"));
        List<JsonNode> lines = lines(1, "--with-rules", edited.toString());
        assertEquals(
                List.of("a-short: severity water.short, change 5.714/6.0/-0.286 L, stop 5.714/6.0/-0.286 L"),
                told(lines));
        assertEquals(
                "{\"before\":\"change\",\"after\":\"stop\"}",
                lines.get(1).get("worst").toString());
        assertEquals(1, lines.get(0).get("worst-changed").asInt());
    }

    /** The book records days of reserve for Australia alone. */
    @Test
    void whatIsNoLongerAssessedAndWhatNowIsAreBothTold() throws IOException {
        Path abroad = sheet("d-abroad", 160, "");
        Files.writeString(abroad, Files.readString(abroad).replace("region: au-sa", "region: uk"));
        String value = "water.reserve-least:\n  unit: days\n  meaning: Days of water that should be left at the next "
                + "supplies\n"
                + "  values:\n";
        edit(
                "water/practice.yaml",
                value,
                value + "    - {region: any, from: 2000-01-01, value: 2 days, basis: memory}\n");
        List<String> there = told(lines(1, "--with-rules", edited.toString()));
        assertEquals(
                List.of("d-abroad: assessed water.no-reserve, not-assessed practice value water.reserve-least,"
                        + " met 3.0/2.0/1.0 days"),
                there);
        Ran back = Ran.of("effect", abroad.toString(), "--rules", edited.toString(), "--with-rules", rules.toString());
        back.printed(1)
                .says("not assessed water.no-reserve [drinking water, everything aboard]: met -> not assessed, "
                        + "missing practice value water.reserve-least; value 3.0 days");
    }

    @Test
    void valueCountsFromItsDayOn() throws IOException {
        edit(
                "water/practice.yaml",
                LEAST,
                LEAST.replace(
                                "2000-01-01\n      value: 6 L",
                                "2027-01-01\n      value: 6.5 L\n" + "      basis: memory\n")
                        + LEAST);
        String[] before = {"--with-rules", edited.toString(), "--as-of", "2026-12-31"};
        assertEquals(1, lines(0, before).size(), "the day before: the counts alone");
        String[] from = {"--with-rules", edited.toString(), "--as-of", "2027-01-01"};
        assertEquals(
                2,
                told(lines(1, from)).stream()
                        .filter(each -> each.contains("water.short"))
                        .count());
        Ran sameBook = Ran.of(
                "effect",
                sheets.toString(),
                "--rules",
                edited.toString(),
                "--as-of",
                "2026-12-31",
                "--with-as-of",
                "2027-01-01");
        sameBook.printed(1)
                .says("gained water.short [drinking water, everything aboard]: met -> change; value 6.4 L, "
                        + "limit 6.0 L -> 6.5 L, margin 0.4 L -> -0.1 L");
        Ran.of(
                        "effect",
                        sheets.toString(),
                        "--rules",
                        edited.toString(),
                        "--as-of",
                        "2026-12-30",
                        "--with-as-of",
                        "2026-12-31")
                .printed(0)
                .says("3 sheets looked at: 0 changed, 3 unchanged, 0 cannot be used.");
    }

    @Test
    void houseValueIsHeldAgainstTheBookWithout() throws IOException {
        String house = Files.writeString(
                        folder.resolve("house.yaml"),
                        "shop: Saltbush Fit-out\nvalues:\n"
                                + "  - {practice: water.person-day-least, region: au, from: 2026-01-01, value: 7 L}\nseverities:\n"
                                + "  - {rule: water.short, severity: stop, reason: No camp has a tap, name: Foreman}\n")
                .toString();
        List<JsonNode> lines = lines(1, "--with-house", house);
        assertEquals(
                List.of(
                        "a-short: severity+figures water.short, change 5.714/6.0/-0.286 L, stop "
                                + "5.714/7.0/-1.286 L",
                        "b-tight: gained water.short, met 6.429/6.0/0.429 L, stop 6.429/7.0/-0.571 L"),
                told(lines).stream()
                        .filter(each -> each.contains("water.short"))
                        .toList());
        assertEquals("Saltbush Fit-out", lines.get(0).at("/after/shop").asText());
        assertTrue(lines.get(0).at("/before/shop").isMissingNode());
        // Where the shop's value holds on both sides, an edit of the book changes nothing.
        edit("water/practice.yaml", LEAST, LEAST.replace("6 L", "6.5 L"));
        assertEquals(List.of(), told(lines(0, "--house", house, "--with-rules", edited.toString())));
    }

    @Test
    void waiverThatRunsOutIsAChange() throws IOException {
        sheet(
                "a-short",
                80,
                "waivers:\n  - {rule: water.short, subject: drinking water, in: everything aboard,\n"
                        + "    reason: A camp has a tap, by: Una Reed, until: 2026-12-31}\n");
        List<JsonNode> lines = lines(1, "--as-of", "2026-12-31", "--with-as-of", "2027-01-01");
        assertEquals(
                List.of("a-short: severity water.short, change waived 5.714/6.0/-0.286 L, change 5.714/6.0/-0.286 L"),
                told(lines));
    }

    @Test
    void badSheetIsToldAndTheOthersGoOn() throws IOException {
        edit("water/practice.yaml", LEAST, LEAST.replace("6 L", "6.5 L"));
        Path bad = sheet("a-bad", 90, "");
        Files.writeString(bad, Files.readString(bad).replace("seats: 5", "seets: 5"));
        List<JsonNode> lines = lines(2, "--with-rules", edited.toString());
        assertEquals(
                2,
                told(lines).stream()
                        .filter(each -> each.contains("water.short"))
                        .count());
        JsonNode last = lines.get(lines.size() - 1);
        assertEquals(bad.toString(), last.get("sheet").asText());
        assertEquals("vehicle.seets", last.at("/faults/0/about").asText());
        Ran.of(effect("--with-rules", edited.toString()))
                .printed(2)
                .says("vehicle.seets: no field has this name (did" + " you mean 'seats'?) right: one of ");
    }

    /** Ends the check of the edited book on 1 March 2027. */
    private void retire() throws IOException {
        edit("water/cards.yaml", "water.short:\n", "water.short:\n  ends: 2027-03-01\n");
    }

    @Test
    void checkThatVanishesIsToldMetOrNot() throws IOException {
        retire();
        String[] book = {"--with-rules", edited.toString(), "--as-of"};
        assertEquals(1, lines(0, book[0], book[1], book[2], "2027-02-28").size(), "the day before: the counts alone");
        List<JsonNode> lines = lines(1, book[0], book[1], book[2], "2027-03-01");
        assertEquals(
                List.of(
                        "a-short: lost+gone water.short, change 5.714/6.0/-0.286 L, none",
                        "b-tight: gone water.short, met 6.429/6.0/0.429 L, none",
                        "c-ample: gone water.short, met 8.571/6.0/2.571 L, none"),
                told(lines));
        Ran.of(effect("--with-rules", edited.toString(), "--as-of", "2027-03-01"))
                .printed(1)
                .says("water.short sheets 3: 1 lost, 3 no longer checked; it ends on 2027-03-01");
    }

    @Test
    void ruleUnderAnotherNameIsTheSameRuleWhereItSaysSo() throws IOException {
        edit("water/cards.yaml", "water.short:\n", "water.scarce:\n  formerly: [water.short]\n");
        edit("water/water.drl", "\"water.short\"", "\"water.scarce\"");
        sheet(
                "a-short",
                80,
                "waivers:\n  - {rule: water.short, subject: drinking water, in: everything aboard,\n"
                        + "    reason: A camp has a tap, by: Una Reed, until: 2027-12-31}\n");
        JsonNode head = lines(0, "--with-rules", edited.toString()).get(0);
        assertEquals(
                "{\"water.short\":\"water.scarce\"} 0",
                head.get("renamed") + " " + head.get("changed").asText());
        Ran.of("effect", sheets.toString(), "--rules", edited.toString(), "--with-rules", rules.toString())
                .printed(0)
                .says("water.short is now water.scarce")
                .says("3 sheets looked at: 0 changed, 3 unchanged, 0 cannot be used.");
    }

    /** What was told of two rules and is told of one that bears both their names is not the same. */
    @Test
    void rulesThatBecameOneAreNotTakenForOne() throws IOException {
        edit("water/cards.yaml", "water.short:\n", "water.scarce:\n  formerly: [water.short, water.use-low]\n");
        edit("water/cards.yaml", "water.use-low:\n", "water.use-small:\n");
        edit("water/water.drl", "\"water.short\"", "\"water.scarce\"");
        edit("water/water.drl", "\"water.use-low\"", "\"water.use-small\"");
        List<JsonNode> lines = lines(1, "--with-rules", edited.toString());
        assertEquals("{}", lines.get(0).get("renamed").toString());
        assertTrue(told(lines).contains("a-short: lost+gone water.short, change 5.714/6.0/-0.286 L, none"));
    }

    /** A rule under another name: it goes, another comes, and a sheet that waives it can no longer be used. */
    @Test
    void sheetThatOnlyOneBookCanReadSaysWhich() throws IOException {
        edit("water/cards.yaml", "water.short:", "water.scarce:");
        edit("water/water.drl", "\"water.short\"", "\"water.scarce\"");
        sheet(
                "b-tight",
                90,
                "waivers:\n  - {rule: water.short, reason: A camp has a tap, by: Una Reed, until: 2027-12-31}\n");
        List<JsonNode> lines = lines(2, "--with-rules", edited.toString());
        assertEquals(
                List.of(
                        "a-short: gained water.scarce, none, change 5.714/6.0/-0.286 L",
                        "a-short: lost+gone water.short, change 5.714/6.0/-0.286 L, none",
                        "c-ample: gone water.short, met 8.571/6.0/2.571 L, none"),
                told(lines));
        assertEquals(
                "after: the rule book has no rule 'water.short'",
                lines.get(lines.size() - 1).at("/faults/0/problem").asText());
    }

    @Test
    void whatIsWrongWithTheCommandIsToldAtOnce() throws IOException {
        Ran.of(effect()).refused(2, "nothing is different after the change");
        Ran.of(effect("--with-as-of", "2027-02-30")).refused(2, "--with-as-of: '2027-02-30' is not a date");
        Ran.of(effect("--with-region", "atlantis")).refused(2, "--with-region: the rule book has no region 'atlantis'");
        Ran.of(effect("--with-rules", sheets.toString())).refused(3, "there is no book.yaml in this folder");
        Ran.of(effect("--with-house", sheets.resolve("none").toString())).refused(2, "The house file cannot be used");
        Path other = Files.writeString(folder.resolve("other.txt"), "a letter\n");
        Ran.of(effect("--with-as-of", "2027-01-01", "--resume", other.toString()))
                .refused(2, "is not a journal of this command");
        assertEquals("a letter\n", Files.readString(other));
    }

    /** The lines of the journal after its head. */
    private static List<String> entries(Path journal) throws IOException {
        return Files.exists(journal)
                ? Files.readAllLines(journal).stream().skip(1).toList()
                : List.of();
    }

    @Test
    void secondRunTakesFinishedSheetsFromTheJournalAndAddsNothing() throws IOException {
        edit("water/practice.yaml", LEAST, LEAST.replace("6 L", "6.5 L"));
        Path journal = folder.resolve("second.ndjson");
        String[] run = {"--with-rules", edited.toString(), "--resume", journal.toString()};
        List<JsonNode> first = lines(1, run);
        assertEquals(3, entries(journal).size());
        assertEquals(first, lines(1, run));
        assertEquals(3, entries(journal).size());
        // That it is the journal which is read shows where the journal says something else.
        Files.writeString(journal, Files.readString(journal).replace("b-tight", "B-TIGHT"));
        assertTrue(told(lines(1, run)).stream().anyMatch(each -> each.startsWith("B-TIGHT: gained water.short")));
        // A sheet of the same text is known under another name.
        Files.move(sheets.resolve("b-tight.yaml"), sheets.resolve("z-tight.yaml"));
        List<JsonNode> moved = lines(1, run);
        assertEquals(
                sheets.resolve("z-tight.yaml").toString(),
                moved.get(moved.size() - 1).get("sheet").asText());
        assertEquals(3, entries(journal).size());
    }

    @Test
    void aJournalMayLieUnderAPathWithSpaces() throws IOException {
        edit("water/practice.yaml", LEAST, LEAST.replace("6 L", "6.5 L"));
        Path journal = Files.createDirectories(folder.resolve("what is done")).resolve("a journal of ours.ndjson");
        String[] run = {"--with-rules", edited.toString(), "--resume", journal.toString()};
        List<JsonNode> first = lines(1, run);
        assertEquals(3, entries(journal).size());
        assertEquals(first, lines(1, run));
        assertEquals(3, entries(journal).size());
    }

    @Test
    void changedSheetOrBookOrDayIsDoneAgain() throws IOException {
        edit("water/practice.yaml", LEAST, LEAST.replace("6 L", "6.5 L"));
        Path journal = folder.resolve("changed.ndjson");
        String[] run = {"--with-rules", edited.toString(), "--resume", journal.toString()};
        lines(1, run);
        sheet("c-ample", 70, "");
        assertTrue(told(lines(1, run))
                .contains("c-ample: figures water.short, change 5.0/6.0/-1.0 L, change 5.0/6.5/-1.5 L"));
        assertEquals(4, entries(journal).size());
        edit("water/practice.yaml", LEAST.replace("6 L", "6.5 L"), LEAST.replace("6 L", "7 L"));
        assertTrue(told(lines(1, run))
                .contains("c-ample: figures water.short, change 5.0/6.0/-1.0 L, change 5.0/7.0/-2.0 L"));
        assertEquals(7, entries(journal).size());
        lines(
                1,
                Stream.concat(Stream.of(run), Stream.of("--as-of", "2026-12-01"))
                        .toArray(String[]::new));
        assertEquals(10, entries(journal).size());
    }

    /** A kill in the middle of a write leaves the beginning of a line, and one at the very start that of the head. */
    @Test
    void tornLineIsPassedOverAndItsSheetDoneAgain() throws IOException {
        edit("water/practice.yaml", LEAST, LEAST.replace("6 L", "6.5 L"));
        Path journal = folder.resolve("torn.ndjson");
        String[] run = {"--with-rules", edited.toString(), "--resume", journal.toString()};
        List<JsonNode> whole = lines(1, run);
        String text = Files.readString(journal);
        for (int length : new int[] {text.length() - 1, text.length() - 40, 10}) {
            Files.writeString(journal, text.substring(0, length));
            assertEquals(whole, lines(1, run), "cut to " + length);
            assertTrue(Files.readString(journal).startsWith(text.substring(0, length)), "cut to " + length);
        }
        assertEquals(whole, lines(1, run), "read again after it was mended");
    }

    /** The process is killed while it waits for more sheets, with some of them in its journal. */
    @Test
    @Timeout(240)
    void killedProcessIsGoneOnWith() throws IOException, InterruptedException {
        Path journal = folder.resolve("killed.ndjson");
        List<String> all = new ArrayList<>();
        for (int litres = 70; litres < 90; litres++) {
            all.add(BatchTest.line(text("Tank of " + litres, litres, "")) + "\n");
        }
        Path file = Files.writeString(folder.resolve("sheets.ndjson"), String.join("", all));
        ProcessBuilder builder = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                "fitworthy.cli.Main",
                "effect",
                "-",
                "--rules",
                rules.toString(),
                "--with-region",
                "any",
                "--jobs",
                "2",
                "--resume",
                journal.toString());
        builder.environment().put("FITWORTHY_CACHE", Books.CACHE.toString());
        Path said = folder.resolve("said.txt");
        Process process =
                builder.redirectErrorStream(true).redirectOutput(said.toFile()).start();
        try (OutputStream in = process.getOutputStream()) {
            in.write(String.join("", all.subList(0, 12)).getBytes(StandardCharsets.UTF_8));
            in.flush();
            while (entries(journal).size() < 5) {
                assertTrue(process.isAlive(), () -> "ended early, see " + said);
                Thread.sleep(20);
            }
            process.destroyForcibly().waitFor();
        }
        String[] rest = {
            "effect", file.toString(), "--rules", rules.toString(), "--with-region", "any", "--format", "json"
        };
        List<JsonNode> whole = lines(1, Ran.of(rest));
        assertEquals(20, whole.get(0).get("sheets").asInt());
        String before = Files.readString(journal);
        assertEquals(
                whole,
                lines(
                        1,
                        Ran.of(Stream.concat(Stream.of(rest), Stream.of("--resume", journal.toString()))
                                .toArray(String[]::new))));
        assertTrue(Files.readString(journal).startsWith(before.substring(0, before.lastIndexOf('\n') + 1)));
        assertEquals(20, entries(journal).stream().distinct().count());
    }
}
