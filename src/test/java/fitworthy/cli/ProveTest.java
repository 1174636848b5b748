package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fitworthy.Books;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands prove and cases, on a copy of the shipped book that only keeps its water topic, and on worse ones. */
class ProveTest {

    @TempDir
    private static Path folder;

    private static Path rules;

    @BeforeAll
    static void copyOneTopic() throws IOException {
        rules = Books.copyOf("water", folder.resolve("rules"));
    }

    /** Runs a command on the copy with one text in one file put in place of another. */
    private static Ran with(String file, String old, String now, String... args) throws IOException {
        Path path = rules.resolve(file);
        String before = Files.readString(path);
        assertTrue(before.contains(old), () -> file + " has no " + old);
        Files.writeString(path, before.replace(old, now));
        try {
            return Ran.of(args);
        } finally {
            Files.writeString(path, before);
        }
    }

    private static String[] prove(String... more) {
        return Stream.concat(Stream.of("prove", "--rules", rules.toString(), "--as-of", "2026-11-25"), Stream.of(more))
                .toArray(String[]::new);
    }

    @Test
    void theTopicAsShippedHasNoFault() throws IOException {
        Ran ran = Ran.of(prove("--format", "json"));
        JsonNode proof = new ObjectMapper().readTree(ran.out());
        assertEquals("fitworthy-proof/1", proof.get("shape").asText());
        assertEquals(0, proof.get("failed").asInt());
        assertEquals(0, proof.get("faults").size(), ran.out());
        assertTrue(proof.get("cases").asInt() > 20, ran.out());
        assertEquals(proof.get("reminders").isEmpty() ? 0 : 1, ran.code());
    }

    @Test
    void aCaseThatComesOutOtherwiseIsShownFigureForFigure() throws IOException {
        Ran ran = with("water/cases.yaml", "aboard, value: 5.9 L", "aboard, value: 5.8 L", prove());
        assertEquals(3, ran.code(), ran.out() + ran.err());
        assertTrue(ran.out().contains("1 come out other than they say; 1 faults"), ran.out());
        assertTrue(
                ran.out()
                        .lines()
                        .anyMatch(line -> line.startsWith(rules.resolve("water/cases.yaml") + ":")
                                && line.endsWith(
                                        "A little less than 6 L for each person and day: water.short: value expected 5.8 L, "
                                                + "got 5.9 L")),
                ran.out());
        assertTrue(ran.out().contains("    |   - name: A little less than 6 L for each person and day\n"), ran.out());
    }

    @Test
    void aFindingTooManyAndOneTooFewAreSaid() throws IOException {
        Ran ran = with("water/cases.yaml", "- {id: water.short, limit: 6.0 L}", "- {id: water.surges}", prove());
        assertEquals(3, ran.code(), ran.out() + ran.err());
        ran.says("water.surges: expected, but it does not apply:");
        ran.says("water.short: not expected, but found: [drinking water, everything aboard]");
    }

    /** What is severe is said twice, on the card and in a case, so that a slip in one of them is seen. */
    @Test
    void aSeverityIsHeldByACaseThatNamesIt() throws IOException {
        String said = "id: water.too-near, severity: change,";
        String card = "electrics\"\n  severity: change";
        with("water/cases.yaml", said, "id: water.too-near,", prove())
                .says("water.too-near: no case says that it is a change")
                .says("right: in a case that fires it: expect: [{id: water.too-near, severity: change}]");
        for (String slip : List.of("note", "stop")) {
            Ran ran = with("water/cards.yaml", card, card.replace("change", slip), prove());
            assertEquals(3, ran.code(), ran.out() + ran.err());
            ran.says("A tank 99 mm from the exhaust: water.too-near: severity expected change, got " + slip);
        }
        String cases = Files.readString(rules.resolve("water/cases.yaml"));
        String shop = "    house: {shop: Hill Fit-out, severities: [{rule: water.too-near, severity: stop}]}\n";
        String name = "  - name: A tank 99 mm from the exhaust\n";
        with(
                        "water/cases.yaml",
                        cases,
                        cases.replace(name, name + shop).replace(said, said.replace("change", "stop")),
                        prove())
                .says("water.too-near: no case says that it is a change");
    }

    /** Of two rules on one measure the milder is silent where the other is found; which is the milder, the cards say. */
    @Test
    void whatIsSilentBesideAFindingIsToldWithBothSeverities() throws IOException {
        Path mass = Books.copyOf("mass", folder.resolve("mass"));
        Path cards = mass.resolve("mass/cards.yaml");
        Files.writeString(
                cards,
                Files.readString(cards)
                        .replaceAll("  with: .*(across|paperwork).*\n", "")
                        .replaceFirst("severity: stop", "severity: note"));
        Path cases = mass.resolve("mass/cases.yaml");
        String all = Files.readString(cases);
        int last = all.indexOf("  - name: Exactly at the GVM is allowed");
        Files.writeString(cases, all.substring(0, all.indexOf("\n  - name: ", last) + 1));
        Ran.of("cases", "--rules", mass.toString(), "--rule", "mass.gvm-over")
                .says("mass.gvm-over: severity expected stop, got note")
                .says("a finding as severe already covers the same measure, mass.gvm-tight, whose severity is note, "
                        + "while its own is note");
    }

    /** Eight kilograms for a person passes what eighty would not. */
    @Test
    void aUsualFigureIsHeldByACaseThatNamesIt() throws IOException {
        Path book = Books.copyOf("water", folder.resolve("usual"));
        Files.createDirectories(book.resolve("usual"));
        Path page = book.resolve("usual/aboard.yaml");
        Path cases = book.resolve("usual/cases.yaml");
        String[] prove = {"prove", "--rules", book.toString(), "--as-of", "2026-11-25"};
        String values = "person.mass:\n  meaning: A person\n  values:\n"
                + "    - {region: any, from: 2000-01-01, value: 80 kg +/- 20 kg, basis: memory}\n";
        String left =
                "cases:\n  - name: Somebody\n    sheet: {occupants: [{name: Driver, mass: %s}]}\n    usual: [%s]\n";
        String says = "{id: person.mass, value: 80 kg +/- 20 kg}";
        Files.writeString(page, values);
        Files.writeString(cases, left.formatted("usual", says));
        assertEquals(0, Ran.of(prove).code(), Ran.of(prove).out());
        Files.writeString(page, values.replace("80", "8"));
        Ran.of(prove)
                .says("Somebody: person.mass: usually expected 80 kg +/- 20 kg, but the book has 8 kg +/- 20 kg")
                .says("person.mass: no case says that it is usually 8 kg +/- 20 kg");
        Files.writeString(page, values);
        Files.writeString(cases, left.formatted("usual", ""));
        Ran.of(prove).says("person.mass: no case says that it is usually 80 kg +/- 20 kg");
        Files.writeString(cases, left.formatted("80 kg", says));
        Ran.of(prove)
                .says("usually expected 80 kg +/- 20 kg, but the sheet leaves no such field to the book")
                .says("no case leaves its field to the book where it is usually 80 kg +/- 20 kg")
                .says("a case of rules/usual/cases.yaml of any on 2000-01-01 or later");
        String far = "80 kg +/- 20 kg of any became %s of any from 2027-04-01, which is more than half away";
        String later = "    - {region: any, from: 2027-04-01, value: %s, basis: memory%s}\n";
        Files.writeString(page, values + later.formatted("121 kg +/- 20 kg", ""));
        Ran.of(prove).says(far.formatted("121 kg +/- 20 kg")).says("of any on 2027-04-01 or later");
        Files.writeString(page, values + later.formatted("120 kg +/- 20 kg", ""));
        Ran.of(prove).saysNot("more than half away");
        Files.writeString(page, values + later.formatted("121 kg +/- 20 kg", ", note: Until then 80 kg +/- 20 kg."));
        Ran.of(prove).saysNot("more than half away");
    }

    @Test
    void aRuleThatNoCaseFiresIsAFault() throws IOException {
        String cases = Files.readString(rules.resolve("water/cases.yaml"));
        String none = cases.substring(0, cases.indexOf("  # Litres a person and day"));
        Ran ran = with("water/cases.yaml", cases, none, prove());
        assertEquals(3, ran.code(), ran.out() + ran.err());
        ran.says("water.short: no case fires it");
        ran.says("right: a case in cases.yaml next to its limit, with it under 'expect'");
    }

    @Test
    void aLimitWithoutACaseNearItIsAFault() throws IOException {
        String cases = Files.readString(rules.resolve("water/cases.yaml"));
        Ran ran = with(
                "water/cases.yaml",
                cases,
                """
                sheet: {region: au-sa, trip: {people: 2, days: 7 days, water-use: 6 L, coldest: 5 degC}}
                cases:
                  - name: Far too little water
                    sheet:
                      tanks:
                        - {name: Water tank, liquid: water, capacity: 20 L, fill: 100 %, stock: yes,
                          at: {x: 2400 mm, y: 0 mm, z: 700 mm}}
                    expect: []
                """,
                prove());
        assertEquals(3, ran.code(), ran.out() + ran.err());
        ran.says("water.short: no case meets it");
    }

    /** 'None' for a day count that says only when a trip is remote ends the checks of the water too. */
    @Test
    void eachRuleThatAValueSilencesNeedsACaseOfItsOwn() throws IOException {
        String remote = "    - {region: any, from: 2000-01-01, value: 2 days, basis: common-practice}\n";
        String cases = Files.readString(rules.resolve("water/cases.yaml"));
        String practice = Files.readString(rules.resolve("water/practice.yaml"));
        String silent = "    - {region: nz, from: 2000-01-01, value: none, basis: memory}\n";
        String said = "water.remote-days: no case of nz from 2000-01-01 shows that it silences water.no-reserve and ";
        with("water/practice.yaml", remote, remote + silent, prove())
                .says(said + "water.one-tank and water.short and water.use-low");
        Files.writeString(rules.resolve("water/practice.yaml"), practice.replace(remote, remote + silent));
        try {
            String seen =
                    "  - name: Nothing of one tank there\n    sheet: {region: nz}\n    does-not-apply: [water.one-tank]\n";
            with("water/cases.yaml", cases, cases + seen, prove()).says(said + "water.short and water.use-low");
        } finally {
            Files.writeString(rules.resolve("water/practice.yaml"), practice);
        }
    }

    @Test
    void aCaseThatExpectsNothingIsAFaultUnlessItSaysSo() throws IOException {
        String met = "    met: [water.too-near]\n";
        Ran ran = with("water/cases.yaml", met, "", prove());
        assertEquals(3, ran.code(), ran.out() + ran.err());
        assertTrue(
                (ran.out() + ran.err()).contains("A tank 100 mm from it: expects nothing in particular"),
                ran.out() + ran.err());
        Ran bare = with("water/cases.yaml", met, "    expect: []\n", prove());
        assertTrue(!(bare.out() + bare.err()).contains("expects nothing in particular"), bare.out() + bare.err());
    }

    @Test
    void aPracticeValueLeadsToTheRulesThatUseIt() {
        Ran.of("handbook", "water.largest-most", "--rules", rules.toString()).says("water.one-tank");
        Ran.of("handbook", "water.remote-days", "--rules", rules.toString())
                .refused(2, "one of water.no-reserve, water.one-tank, water.short, water.use-low");
    }

    /** The can beside the tank is for drinking water, so the rule is met there. */
    @Test
    void aCaseThatFiresARuleIsNoLookAlikeThatIsFine() throws IOException {
        String all = Files.readString(rules.resolve("water/cases.yaml"));
        String hose = "  - name: A garden hose is not for drinking water\n"
                + "    sheet: {tanks: [{name: Water tank, water: {potable: no}}]}\n"
                + "    expect:\n      - {id: water.not-potable, subject: Water tank}\n";
        String[] page = {"handbook", "water.not-potable", "--rules", rules.toString()};
        String alone = all.substring(0, all.indexOf("cases:\n")) + "cases:\n" + hose;
        Ran ran = with("water/cases.yaml", all, alone, page);
        ran.says("- A garden hose is not for drinking water");
        assertFalse(ran.out().contains("Look-alikes that are fine"), ran.out());
        with("water/cases.yaml", all, alone + "  - name: As it is\n    expect: []\n", page)
                .says("Look-alikes that are fine");
    }

    /** Whoever does not prove would believe that it is in force. */
    @Test
    void whatNothingReadsIsToldByOtherCommandsToo() throws IOException {
        Path stray = Files.writeString(rules.resolve("water/practice (2).yaml"), "none: {}\n");
        try {
            Ran ran = Ran.of("due", "--rules", rules.toString());
            assertTrue(ran.err().contains("practice (2).yaml: nothing reads this"), ran.err());
        } finally {
            Files.delete(stray);
        }
    }

    @Test
    void aRegionGoesByTheCountryThatItsIdBeginsWith() throws IOException {
        String told = "regions.au-sa: its id begins with 'au', and its parent is ";
        String line = "au-sa: {name: South Australia, parent: au}";
        Ran other = with("book.yaml", line, line.replace("parent: au", "parent: uk"), prove());
        assertTrue(other.err().contains(told + "'uk'"), other.err());
        Ran none = with("book.yaml", line, line.replace(", parent: au", ""), prove());
        assertTrue(none.err().contains(told + "left out"), none.err());
        Ran himself = with(
                "book.yaml",
                line,
                line.replace("parent: au", "parent: au, asked-instead: [{of: engineer, ask: engineer}]"),
                prove());
        assertTrue(himself.err().contains("asks somebody in place of himself"), himself.err());
    }

    /** A condition more than the rule had keeps it silent for water that is not fit to drink, in no case of these. */
    @Test
    void aConditionThatNoCaseTurnsIsAFault() throws IOException {
        Path cards = rules.resolve("water/cards.yaml");
        String words = Files.readString(cards);
        String gap = "    $gap : Measure(name == \"water.clearance\", known, value < $least.value)\n";
        Files.writeString(cards, words.replace("[water.clearance]", "[water.clearance, water.potable]"));
        try {
            Ran ran = with(
                    "water/water.drl", gap, gap + "    Measure(name == \"water.potable\", word == \"yes\")\n", prove());
            assertEquals(3, ran.code(), ran.out() + ran.err());
            ran.says("water.too-near: never false in these cases: water.potable");
        } finally {
            Files.writeString(cards, words);
        }
    }

    @Test
    void aDateWithoutACaseOnBothItsSidesIsAFault() throws IOException {
        Ran ran = with("water/cases.yaml", "as-of: 2010-12-31", "as-of: 2010-12-30", prove());
        assertEquals(3, ran.code(), ran.out() + ran.err());
        ran.says("water.person-day-least: no case of any stands on 2010-12-31, next to the day on which 7.5 L begins");
        ran = with("water/cases.yaml", "as-of: 2011-01-01", "as-of: 2011-01-02", prove());
        ran.says("no case of any stands on 2011-01-01");
    }

    /** Proves the copy with the end of a rule or a value, and cases at the end of the topic's. */
    private static Ran ending(String file, String id, String cases) throws IOException {
        Path path = rules.resolve(file);
        String before = Files.readString(path);
        Files.writeString(path, before.replace("\n" + id + ":\n", "\n" + id + ":\n  ends: 2027-03-01\n"));
        String all = Files.readString(rules.resolve("water/cases.yaml"));
        try {
            return with("water/cases.yaml", all, all + cases, prove());
        } finally {
            Files.writeString(path, before);
        }
    }

    private static String oneTank(String day, String says) {
        return "  - name: One tank on " + day + "\n    sheet: {as-of: " + day
                + ", tanks: [{name: Can, capacity: 19.9 L}], trip: {days: 2 days}}\n    " + says + "\n";
    }

    /** What is said of one sheet on the day before and on the day on which a rule or a value of it ends. */
    @Test
    void anEndIsShownByACaseOnTheDayBeforeAndOneOnTheDay() throws IOException {
        String none = "water.one-tank: no sheet is found fault with on 2027-02-28 and not on 2027-03-01, when it ends";
        String before = oneTank("2027-02-28", "expect: [{id: water.one-tank, value: 75.1 %}]");
        String after = oneTank("2027-03-01", "retired: [water.one-tank]");
        ending("water/cards.yaml", "water.one-tank", "").says(none);
        ending("water/cards.yaml", "water.one-tank", before).says(none);
        ending("water/cards.yaml", "water.one-tank", after).says(none);
        Ran shown = ending("water/cards.yaml", "water.one-tank", before + after);
        assertEquals(0, shown.code(), shown.out());
        Ran value = ending("water/practice.yaml", "water.largest-most", before + after);
        assertEquals(0, value.code(), value.out());
        ending("water/practice.yaml", "water.largest-most", before).says(none.replace("one-tank", "largest-most"));
    }

    @Test
    void aCaseCannotSayThatARuleIsRetiredWhichIsNot() throws IOException {
        String early = oneTank("2027-02-28", "retired: [water.one-tank]\n    expect: [{id: water.one-tank}]");
        ending("water/cards.yaml", "water.one-tank", early)
                .says("water.one-tank: expected to be retired, but it was found");
        String late = oneTank("2027-03-01", "met: [water.one-tank]");
        ending("water/cards.yaml", "water.one-tank", late)
                .says("water.one-tank: expected to be met, but the rule water.one-tank was retired on 2027-03-01");
    }

    /** Cases that stand after its end hold nothing in place, neither the rule nor its value. */
    @Test
    void aRetiredRuleKeepsItsCasesFromBefore() throws IOException {
        String cases = Files.readString(rules.resolve("water/cases.yaml"));
        Path plain = rules.resolve("plain-sheet.yaml");
        Path cards = rules.resolve("water/cards.yaml");
        String sheet = Files.readString(plain);
        String words = Files.readString(cards);
        Files.writeString(plain, sheet.replaceFirst("as-of: \\S+", "as-of: 2027-04-01"));
        Files.writeString(cards, words.replace("\nwater.surges:\n", "\nwater.surges:\n  ends: 2027-03-01\n"));
        try {
            Ran ran = with("water/cases.yaml", cases, cases, prove());
            ran.says("water.surges: no case fires it");
            ran.says("water.surge-most: no case of any from 2000-01-01 comes within 5 % above 30 L");
        } finally {
            Files.writeString(plain, sheet);
            Files.writeString(cards, words);
        }
    }

    /** A slip of the pen in any kind of value; in each the unit and all else stay right. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // of the book's first day
                "value: 30 L|value: 300 L|water.surge-most: no case of any from 2000-01-01 comes within 5 % above 300 L",
                "value: 30 L|value: 3 L|water.surge-most: no case of any from 2000-01-01 comes within 5 % below 3 L",
                "value: 30 L|value: 33 L|water.surge-most: no case of any from 2000-01-01 comes within 5 % above 33 L",
                // of a later day
                "value: 7.5 L|value: 75 L|water.person-day-least: no case of any from 2011-01-01 comes within 5 % below 75 L",
                "value: 7.5 L|value: 0.75 L|water.person-day-least: no case of any from 2011-01-01 comes within 5 % above 0.75 L",
                // of a region, beside the same value of the region above
                "value: 3 days;basis: published;|value: 30 days;basis: published;"
                        + "|water.reserve-least: no case of au-sa from 2000-01-01 comes within 5 % below 30 days",
                "value: 3 days;basis: published;|value: 0.3 days;basis: published;"
                        + "|water.reserve-least: no case of au-sa from 2000-01-01 comes within 5 % above 0.3 days",
                // of the region above it
                "value: 6 L;basis: common-practice;|value: 60 L;basis: common-practice;"
                        + "|water.person-day-least: no case of au from 2000-01-01 comes within 5 % above 60 L",
                "value: 6 L;basis: common-practice;|value: 0.6 L;basis: common-practice;"
                        + "|water.person-day-least: no case of au from 2000-01-01 comes within 5 % above 0.6 L",
                // a temperature, and one that only says whether a question arises
                "value: 2 degC|value: 25 degC|water.frost: no case of any from 2000-01-01 comes within 1 degC above 25 degC",
                "value: 2 days|value: 20 days|water.remote-days: no case of any from 2000-01-01 comes within 5 % above 20 days",
                "value: 2 days|value: 0.2 days|water.remote-days: no case of any from 2000-01-01 comes within 5 % below 0.2 days",
            })
    void aValueTenTimesOrATenthOfWhatItShouldBeIsAFault(String old, String now, String said) throws IOException {
        Ran ran = with("water/practice.yaml", lines(old), lines(now), prove());
        assertEquals(3, ran.code(), ran.out() + ran.err());
        ran.says(said);
    }

    private static String lines(String text) {
        return text.replace(";", "\n      ").stripTrailing();
    }

    @Test
    void casesFarFromAValueDoNotHoldIt() throws IOException {
        Ran ran = with("water/cases.yaml", "capacity: 61 L", "capacity: 80 L", prove());
        ran.says("water.surge-most: no case of any from 2000-01-01 comes within 5 % above 30 L");
        ran.says("right: a case in which the figure is between 30 L and 31.5 L");
        ran = with("water/practice.yaml", "value: 30 L", "value: 30000 cc", prove());
        assertTrue(!ran.out().contains("between 30000 cc"), ran.out());
        ran = with("water/practice.yaml", "value: 30 L", "value: 100000 cc", prove());
        ran.says("right: a case in which the figure is between 100000 cc and 105000 cc");
    }

    @Test
    void aValueForVehiclesFromADayOnIsShownOnThatDayAndTheDayBefore() throws IOException {
        String from = "from: 2011-01-01\n";
        with("water/practice.yaml", from, from + "      registered-from: 2024-06-01\n", prove())
                .says("water.person-day-least: no sheet comes out differently in any for a vehicle first registered on "
                        + "2024-05-31 and on 2024-06-01");
    }

    @Test
    void aSheetOfItsOwnOnTheDayBeforeShowsNothingOfAValue() throws IOException {
        String before = "as-of: 2010-12-31, vehicle: {registered: 2010-01-01}";
        String other = "as-of: 2010-12-31, vehicle: {registered: 2010-01-02}";
        with("water/cases.yaml", before, other, prove())
                .says("water.person-day-least: no sheet comes out differently in any on 2010-12-31 and on 2011-01-01, "
                        + "when 7.5 L begins");
        String first = "  - name: On the day it counts from it is applied\n";
        String cases = Files.readString(rules.resolve("water/cases.yaml"));
        Ran said = with(
                "water/cases.yaml",
                cases,
                cases.replace(before, other).replace(first, first + "    same-before: The sheets differ.\n"),
                prove());
        assertEquals(0, said.code(), said.out() + said.err());
        String second = "    sheet: {trip: {days: 8 days}}\n    met: [water.no-reserve]\n";
        with("water/cases.yaml", second, second + "    same-before: The same was said.\n", prove())
                .says(
                        "Three days are left: says 'same-before', but no value that its rules look at begins on 2026-11-25");
    }

    @Test
    void aValueFarFromTheOneBeforeItIsToBeLookedAtTwice() throws IOException {
        String older = "      value: 3 days\n      basis: published\n";
        String newer = older.replace("published", "memory").replace("3 days", "6 days");
        String value = "    - region: au-sa\n      from: 2027-07-01\n" + newer;
        String reminder = "3 days of au-sa became 6 days of au-sa from 2027-07-01, which is more than half away";
        String head = "    - region: au-sa\n      from: 2000-01-01\n" + older;
        with("water/practice.yaml", head, value + head, prove()).says(reminder);
        Ran noted = with("water/practice.yaml", head, value + "      note: Until then 3 days.\n" + head, prove());
        assertTrue(!noted.out().contains("more than half away"), noted.out());
    }

    @Test
    void aValueIsRemindedOfFromItsReviewDayOn() throws IOException {
        String value = "      value: 7.5 L\n";
        String reviewed = "the value 7.5 L of any from 2011-01-01 was to be looked at again by 2026-11-2";
        assertTrue(with(
                                "water/practice.yaml",
                                value,
                                value + "      checked: 2026-11-20\n      review: 2026-11-25\n",
                                prove())
                        .says(reviewed + "5")
                        .code()
                == 1);
        Ran before = with(
                "water/practice.yaml", value, value + "      checked: 2026-11-20\n      review: 2026-11-26\n", prove());
        assertTrue(!before.out().contains("looked at again"), before.out());
    }

    /** The place of a text in a page of the book, as line and column. */
    private String place(String file, String text) throws IOException {
        String before = Files.readString(rules.resolve(file)).split(text, 2)[0];
        return file + ":" + (before.lines().count()) + ":" + (before.length() - before.lastIndexOf('\n'));
    }

    @Test
    void whatIsWrongWithAValueIsToldAtTheValue() throws IOException {
        String at = place("water/practice.yaml", "7[.]5 L");
        Ran ran = with("water/practice.yaml", "value: 7.5 L", "value: 7.5 kg", prove());
        assertTrue(ran.err().contains(at + ": water.person-day-least: the value "), ran.err());
        at = place("water/practice.yaml", "au-sa\n");
        ran = with("water/practice.yaml", "region: au-sa\n", "region: au-se\n", prove());
        assertTrue(
                ran.err().contains(at + ": ") && ran.err().contains("'au-se' is not a region (did you mean 'au-sa'?)"),
                ran.err());
    }

    @Test
    void aCaseThatNamesNoRuleIsToldSo() throws IOException {
        with("water/cases.yaml", "met: [water.too-near]", "met: [water.to-near]", prove())
                .says("water.to-near: expected to be met, but there is no such rule (did you mean 'water.too-near'?)");
    }

    @Test
    void aDayThatIsNoneIsToldInPlainWords() {
        Ran ran = Ran.of("prove", "--rules", rules.toString(), "--as-of", "1/7/2027");
        assertEquals(2, ran.code());
        assertTrue(
                ran.err().contains("'1/7/2027' is not a date; right: 2026-11-25 (year-month-day)")
                        && !ran.err().contains("java."),
                ran.err());
    }

    @Test
    void faultsOfPagesAndOfRuleFilesAreToldTogether() throws IOException {
        Path drl = rules.resolve("water/water.drl");
        String before = Files.readString(drl);
        Files.writeString(drl, before.replaceFirst("value < \\$least.value", "value < 6"));
        try {
            Ran ran = with("water/cards.yaml", "severity: change", "severity: chnage", prove("--format", "json"));
            assertEquals(3, ran.code(), ran.out() + ran.err());
            JsonNode faults = new ObjectMapper().readTree(ran.out()).get("faults");
            assertTrue(faults.toString().contains("chnage"), faults.toString());
            assertTrue(faults.findValuesAsText("file").contains(drl.toString()), faults.toString());
        } finally {
            Files.writeString(drl, before);
        }
    }

    @Test
    void aNumberInTheWordsOfACardIsAFault() throws IOException {
        String why = "    Rain, a breakdown";
        Ran ran = with("water/cards.yaml", why, "    At least 3 days of rain, a breakdown", prove());
        assertEquals(3, ran.code(), ran.out() + ran.err());
        ran.says("water.no-reserve: '3 days' stands in its words as a number, which no change of a value reaches");
        assertEquals(
                0,
                with("water/cards.yaml", why, "    Rain for {water.reserve-least}, a breakdown", prove())
                        .code());
    }

    @Test
    void aPartyThatIsNoneIsToldWithThoseThatThereAre() throws IOException {
        Ran ran = with("water/cards.yaml", "    - party: builder", "    - party: bilder", prove());
        assertEquals(3, ran.code(), ran.out() + ran.err());
        assertTrue(
                ran.err().contains("party: is 'bilder', which is not one of the answers (did you mean 'builder'?)")
                        && ran.err().contains("right: party: one of customer, builder, part-maker,"),
                ran.err());
    }

    @Test
    void aCardThatSaysTheSameInBothCasesIsRemindedOf() throws IOException {
        with(
                        "water/cards.yaml",
                        "  title: Too little water is left for a delay",
                        "  title: Water is left for a delay",
                        prove())
                .says("water.no-reserve: its title and what is said where it is met are the same words");
    }

    @Test
    void whatNothingReadsInTheFolderIsAFault() throws IOException {
        for (String stray : new String[] {"water/cards.yml", "notes.txt", "tables/wire.csv", "water/old.drl"}) {
            Path file = Files.createFile(rules.resolve(stray));
            Ran ran = Ran.of(prove());
            Files.delete(file);
            assertEquals(3, ran.code(), ran.out() + ran.err());
            ran.says(file + ": nothing reads this, so what it says holds nowhere");
        }
        Path second = Files.createFile(rules.resolve("water/Cards.yml"));
        Ran beside = Ran.of(prove());
        Files.delete(second);
        beside.says("right: what is to hold in cards.yaml, which is there too");
        Path hidden = Files.createFile(rules.resolve("water/.cards.yaml.swp"));
        assertEquals(0, Ran.of(prove()).code(), "hidden files are an editor's");
        Files.delete(hidden);
    }

    /** The rest of the book cannot be read without it, so that its name is what is wrong first of all. */
    @ParameterizedTest
    @CsvSource({
        "water/practice.yaml, water/practice.yml",
        "water/practice.yaml, water/Practice.yaml",
        "water/practice.yaml, water/practices.yaml",
        "water/practice.yaml, water/practice.yaml.txt",
        "water/cards.yaml, water/cards.yml",
        "water/water.drl, water/water.drl.txt",
        "sources.yaml, source.yaml",
        "tables/cable.csv, tables/Cable.csv"
    })
    void aFileUnderAWrongNameIsToldWithTheRightOne(String right, String wrong) throws IOException {
        Path page = rules.resolve(right);
        Path misnamed = Files.move(page, rules.resolve(wrong));
        try {
            Ran ran = Ran.of(prove());
            assertEquals(3, ran.code(), ran.out() + ran.err());
            String told = misnamed + ": nothing reads this, so what it says holds nowhere: it is not called "
                    + page.getFileName() + "\n    right: call it " + page.getFileName();
            assertTrue(ran.err().contains(told), ran.err());
            assertFalse(ran.err().contains("which is not in the book"), ran.err());
        } finally {
            Files.move(misnamed, page);
        }
    }

    @Test
    void aCoverUnderAWrongNameIsToldWithTheRightOne() throws IOException {
        Path cover = rules.resolve("book.yaml");
        Path misnamed = Files.move(cover, rules.resolve("book.yml"));
        try {
            Ran.of(prove()).refused(3, "right: call book.yml book.yaml");
        } finally {
            Files.move(misnamed, cover);
        }
    }

    /** Each of the fields that say what comes of a case is enough. */
    @ParameterizedTest
    @ValueSource(
            strings = {"expect", "met", "held", "does-not-apply", "not-assessed", "figures", "retired", "unsure", "sure"
            })
    void anyFieldThatSaysWhatComesOfACaseWillDo(String field) throws IOException {
        Ran ran = with("water/cases.yaml", "    met: [water.too-near]\n", "    " + field + ": []\n", prove());
        assertFalse((ran.out() + ran.err()).contains("expects nothing in particular"), ran.out() + ran.err());
    }

    @Test
    void fieldsThatOnlyMakeTheSheetOfACaseSayNothing() throws IOException {
        Ran ran = with(
                "water/cases.yaml",
                "    met: [water.too-near]\n",
                "    without: [trip.days]\n    same-before: As ever.\n",
                prove());
        assertEquals(3, ran.code(), ran.out() + ran.err());
        ran.refused(
                3, "one of expect, not-assessed, figures, usual, met, held, does-not-apply, retired, unsure, sure;");
    }

    /** What a message proposes is of the kind of quantity that belongs there. */
    @ParameterizedTest
    @CsvSource({
        "value: 75 %, right: value: 90 %",
        "value: 30 L, right: value: 80 L",
        "value: 3 days, right: value: 14 days"
    })
    void anExampleOfAValueIsOfItsKind(String value, String right) throws IOException {
        with("water/practice.yaml", "      " + value + "\n", "", prove()).refused(3, right);
    }

    @Test
    void aGradeThatNoPageMayGiveIsNotProposed() throws IOException {
        with("water/practice.yaml", "basis: common-practice", "basis: yes", prove())
                .refused(
                        3,
                        "right: basis: one of published, calculation, published-secondhand, common-practice, memory\n");
    }

    @Test
    void aDashBeforeAFieldThatGoesOnWithItsEntryIsTold() throws IOException {
        Ran ran = with("water/practice.yaml", "      value: 75 %", "    - value: 75 %", prove());
        ran.refused(
                3, "water.largest-most.values.2: a dash stands before this, which begins another entry of the list");
        // An entry of which much is missing lacks no more than that.
        Ran lacking = with("water/practice.yaml", "      value: 75 %\n", "", prove());
        assertFalse(lacking.err().contains("a dash stands before this"), lacking.err());
    }

    @Test
    void aDecimalCommaWithinBracesIsShownWithItsOwnValue() throws IOException {
        with("water/practice.yaml", "value: 2 degC,", "value: 2,5 degC,", prove())
                .refused(3, "right: a decimal point, or the value in quotes, as in '2,5 degC'");
    }

    /** The condition fires where water runs short; a card that allows at most so much says the opposite. */
    @Test
    void aCardThatAllowsWhatItsRuleFiresOnIsAFault() throws IOException {
        String card = "  against: water.reserve-least\n  allowed: at-least\n";
        Ran ran = with("water/cards.yaml", card, "  against: water.reserve-least\n", prove());
        assertEquals(3, ran.code(), ran.out() + ran.err());
        ran.says(
                "water.no-reserve: fires as water.reserve gets better by its card, which allows at-most water.reserve-least");
    }

    @Test
    void unlikeQuantitiesAreNotCompared() throws IOException {
        Ran ran = with(
                "water/water.drl",
                "$least : Practice(id == \"water.reserve-least\")",
                "$least : Practice(id == \"water.largest-most\")",
                prove());
        assertEquals(3, ran.code(), ran.out() + ran.err());
        assertTrue(
                ran.err().replaceAll("\\s+", " ").contains("compares a quantity in h with a quantity in %"), ran.err());
    }

    /** A word that a measure never says, in a rule file that is otherwise as shipped: told with the line of its rule. */
    @Test
    void aWordThatItsMeasureNeverSaysIsAFault() throws IOException {
        String pattern = "Measure(name == \"water.potable\", word == \"no\")";
        List<String> lines = Files.readAllLines(rules.resolve("water/water.drl"));
        int line = 0;
        for (int i = 0; !lines.get(i).contains(pattern); i++) {
            line = lines.get(i).startsWith("rule ") ? i + 1 : line;
        }
        Ran ran = with("water/water.drl", pattern, pattern.replace("\"no\"", "\"not\""), prove());
        assertEquals(3, ran.code(), ran.out() + ran.err());
        String told = ran.err().replaceAll("\\s+", " ");
        assertTrue(told.contains("water.drl:" + line + ": "), told);
        assertTrue(
                told.contains("asks whether water.potable says 'not', which it never does (did you mean 'no'?)"), told);
        assertTrue(told.contains("one of yes, no"), told);
        told = with("water/water.drl", pattern, pattern.replace("word", "known, !known, word"), prove())
                .err()
                .replaceAll("\\s+", " ");
        assertTrue(told.contains("nothing ever matches 'known' together with '!known'"), told);
    }

    /** Days between supplies are never below zero; the coldest night may be. */
    @Test
    void aLimitIsBelowZeroOnlyWhereWhatIsHeldAgainstItMayBe() throws IOException {
        Ran ran = with("water/practice.yaml", "value: 7.5 L", "value: -7.5 L", prove());
        assertEquals(3, ran.code(), ran.out() + ran.err());
        String told = ran.err().replaceAll("\\s+", " ");
        assertTrue(told.matches(".*water/practice.yaml:\\d+:\\d+: .*"), told);
        assertTrue(
                told.contains(
                        "the value '-7.5 L' is below zero, which what is held against it never is: water.person-day"),
                told);
        ran = with("water/practice.yaml", "value: 2 degC", "value: -2 degC", prove());
        assertTrue(!ran.err().contains("below zero"), ran.err());
    }

    @Test
    void aLimitHasNoToleranceAndARegionAName() throws IOException {
        assertTrue(with("water/practice.yaml", "value: 7.5 L", "value: 7.5 L +/- 1 L", prove())
                .err()
                .contains("the value '7.5 L +/- 1 L' has a tolerance, which no limit has"));
        Ran ran = with("book.yaml", "{name: South Australia", "{name: ''", prove());
        assertTrue(ran.err().contains("au-sa.name: is blank: its name"), ran.err());
        ran = with("book.yaml", "  uk:", "  u k:", prove());
        assertTrue(ran.err().contains("regions.u k: 'u k' is no id of a region"), ran.err());
    }

    @Test
    void casesAreChosenByTopicRuleAndRegion() throws IOException {
        int all = run();
        int british = run("--region", "uk");
        int american = run("--region", "us");
        int both = run("--region", "uk", "--region", "us");
        assertTrue(0 < british && british < all, british + " of " + all);
        assertEquals(british + american, both);
        assertEquals(all, run("--topic", "water"));
        int named = run("--rule", "water.freezes");
        assertTrue(0 < named && named < all, named + " of " + all);
        Ran.of("cases", "--rules", rules.toString(), "--topic", "watr").refused(2, "no 'watr' (did you mean 'water'?)");
    }

    private static int run(String... more) throws IOException {
        Ran ran = Ran.of(
                Stream.concat(Stream.of("cases", "--rules", rules.toString(), "--format", "json"), Stream.of(more))
                        .toArray(String[]::new));
        assertEquals(0, ran.code(), ran.out() + ran.err());
        return new ObjectMapper().readTree(ran.out()).get("cases").asInt();
    }

    /** What is wrong with an entry of sources.yaml, its line, and what the message says would be right. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "title:|titel:|2:3: sphere-course.titel: no field has this name (did you mean 'title'?)|one of title, kind, edition, link, seen",
                "seen:|sean:|2:3: sphere-course.seen: is missing: what was seen of it|seen: read in full",
                "title: A course|title: [A course]|2:10: sphere-course.title: is a list where words belong|title: Light vehicle",
                "seen: the table|seen:|5:3: sphere-course.seen: is left empty: what was seen of it|seen: read in full",
                "kind: trade|kind: law|3:9: sphere-course: is a law without an edition, and such are amended|edition: as amended to 1 July 2026",
                "kind: trade|kind: standard|3:9: sphere-course: is a standard without an edition|edition: as amended to 1 July 2026; or edition: undated copy",
                "kind: trade|'kind: law\n  edition:'|3:9: sphere-course: is a law without an edition|edition: as amended to 1 July 2026",
                "link: |link: see |4:9: sphere-course: 'see https://example.org' is no link|link: https://example.org/leaflet",
                "sphere-course:|Sphere course:|1:1: Sphere course: 'Sphere course' is no id of a source|small letters",
                "(?s)course:.*|course: the handbook|1:1: sphere-course: is 'the handbook' where a group of fields belongs|sphere-course: with",
            })
    void whatIsWrongWithASourceIsToldAtItsLine(String old, String now, String said, String right) throws IOException {
        String entry =
                "sphere-course:\n  title: A course\n  kind: trade\n  link: https://example.org\n  seen: the table";
        String all = Files.readString(rules.resolve("sources.yaml"));
        String rest = all.replaceFirst("(?s)sphere-course:\n.*?(?=\n\\S|\\z)\n?", "");
        Ran ran = with("sources.yaml", all, entry.replaceFirst(old, now) + "\n" + rest, prove());
        assertEquals(3, ran.code(), ran.out() + ran.err());
        assertTrue(ran.err().contains(rules.resolve("sources.yaml") + ":" + said), ran.err());
        assertTrue(ran.err().contains("    right: " + right), ran.err());
    }

    /** Of what is not amended an edition may be told all the same, and it is printed before what was seen. */
    @Test
    void anEditionIsToldOfALaw() throws IOException {
        for (String kind : List.of("law\n  edition: undated copy", "trade", "trade\n  edition: of 2019")) {
            Ran ran = with("sources.yaml", "  kind: trade\n", "  kind: " + kind + "\n", prove());
            assertFalse(ran.err().contains("edition"), ran.err());
        }
        Ran pages = with(
                "sources.yaml",
                "  kind: trade\n",
                "  kind: law\n  edition: annual edition of 2015\n",
                "handbook",
                "--rules",
                rules.toString());
        pages.says("Seen: law, annual edition of 2015, read on 2026-11-25: ");
    }

    /** So that a reader sees how old what was read is, whether the text shows a day of its own or not. */
    @Test
    void aTextTellsItsEditionAndTheDayOfTheLook() throws IOException {
        String[] handbook = {"handbook", "--rules", rules.toString()};
        Ran.of(handbook).says("Seen: trade, undated, read on 2026-11-25: ");
        with("sources.yaml", "  kind: trade\n", "  kind: trade\n  edition: of May 2019\n", handbook)
                .says("Seen: trade, of May 2019, read on 2026-11-25: ");
    }

    /** A page that quotes a law is not the law; a source that bears it out beside it is enough. */
    @Test
    void whatIsCalledPublishedRestsOnATextThatSpeaksForItself() throws IOException {
        String course = "  kind: trade\n";
        String head = "      value: 3 days\n      basis: published\n";
        String value = head + "      sources: [sphere-course]\n";
        String page = Files.readString(rules.resolve("water/practice.yaml"));
        String sources = Files.readString(rules.resolve("sources.yaml"));
        assertTrue(sources.contains(course), sources);
        String published = page.replaceFirst(head + "      sources: \\[[^\n]*\n", value);
        assertTrue(!published.equals(page), page);
        Ran ran = with("water/practice.yaml", page, published, prove());
        assertEquals(3, ran.code(), ran.out() + ran.err());
        assertTrue(ran.err().contains("is called published but cites only what tells of a text: trade"), ran.err());
        Ran borne = with(
                "water/practice.yaml",
                page,
                published.replace("[sphere-course]", "[sphere-course, sa-remote-travel]"),
                prove());
        assertTrue(!borne.err().contains("cites only what tells"), borne.err());
    }

    @Test
    void whatAStopOrAChangeRestsOnHasToBeKnownAndToBeFound() throws IOException {
        String words =
                "      clause: on water\n      quote: \"6 litres per person per day minimum plus a 3-4 day reserve supply\"\n";
        with("water/practice.yaml", words, words.lines().findFirst().orElseThrow() + "\n", prove())
                .refused(3, "water.reserve-least: has a clause without a quote");
        with("water/practice.yaml", "quote: \"6 litres", "quote: \"" + "a ".repeat(13) + "6 litres", prove())
                .refused(3, "water.person-day-least: quotes more than 25 words");
        Ran quoted =
                with("water/practice.yaml", "quote: \"6 litres", "quote: \"" + "a ".repeat(12) + "6 litres", prove());
        assertFalse(quoted.out().contains("quotes more"), quoted.out());
        with("water/practice.yaml", "basis: published-secondhand", "basis: memory", prove())
                .says("water.person-day-least: a stop or a change rests on a value from memory");
        Ran note = with(
                "water/practice.yaml",
                "meaning: Largest share of all the water that one tank should hold away from supplies\n  values:\n"
                        + "    - region: any\n      from: 2000-01-01\n      value: 75 %\n      basis: common-practice",
                "meaning: Largest share of all the water that one tank should hold away from supplies\n  values:\n"
                        + "    - region: any\n      from: 2000-01-01\n      value: 75 %\n      basis: memory",
                prove());
        assertFalse(note.out().contains("from memory"), "a note may rest on memory: " + note.out());
    }

    /** Behind a stop or a change as behind a note. */
    @Test
    void whatIsPublishedSaysWhere() throws IOException {
        String file = "water/practice.yaml";
        String fault = ": is called published, without clause and quote";
        assertFalse(Ran.of(prove()).out().contains(fault));
        String words =
                "      clause: on water\n      quote: \"6 litres per person per day minimum plus a 3-4 day reserve supply\"\n";
        Ran change = with(file, words, "", prove());
        change.says("water.person-day-least" + fault);
        change.says("right: clause and quote as the text has them; or basis: published-secondhand");
        String note = "value: 75 %\n      basis: common-practice\n      sources: [remote-rescue-water]\n";
        String published =
                note.replace("common-practice", "published").replace("remote-rescue-water", "sa-remote-travel");
        with(file, note, published, prove()).says("water.largest-most" + fault);
        Ran said =
                with(file, note, published + "      clause: on tanks\n      quote: \"75 % of it at most\"\n", prove());
        assertFalse(said.out().contains(fault), said.out());
        with(file, note, published.replace("published", "published-secondhand"), prove())
                .says("0 faults");
    }

    /** A published value of 6 litres a day. */
    @Test
    void whatIsPublishedSaysTheValue() throws IOException {
        String file = "water/practice.yaml";
        String fault = "water.person-day-least: the quote does not hold 6 L";
        String quote = "quote: \"6 litres";
        assertFalse(Ran.of(prove()).out().contains(fault));
        with(file, quote, "quote: \"7 litres", prove()).says(fault);
        with(file, quote, "quote: \"6 kilograms", prove()).says(fault + ": it says '6 kilograms'");
        Ran millilitres = with(file, quote, "quote: \"6000 mL", prove());
        assertFalse(millilitres.out().contains(fault), millilitres.out());
        with(file, quote, "quoted: \"8\"\n      quote: \"7 litres", prove()).says(fault);
        Ran quoted = with(file, quote, "quoted: \"7\"\n      quote: \"7 litres", prove());
        assertFalse(quoted.out().contains(fault), quoted.out());
        with(file, quote, "quoted: 7 L\n      quote: \"7 litres", prove())
                .refused(3, "'quoted' is not a number that a quote holds");
    }

    /** Proved as on 25 November 2026; the edition is that month's. */
    @Test
    void aLookThatIsYetToComeIsRemindedOf() throws IOException {
        String file = "water/practice.yaml";
        String old = "value: 75 %\n      basis: common-practice\n";
        String told = "water.largest-most: was looked at on 2026-12-01 by its 'checked', which is yet to come";
        Ran ran = with(file, old, old + "      checked: 2026-12-01\n", prove());
        assertEquals(1, ran.code(), ran.out() + ran.err());
        ran.says(told);
        ran.says("right: the day of that look, such as checked: 2026-11-25");
        Ran edition = with(file, old, old + "      checked: 2026-11-30\n", prove());
        assertFalse(edition.out().contains("yet to come"), edition.out());
        String[] later = {"prove", "--rules", rules.toString(), "--as-of", "2026-12-01"};
        Ran come = with(file, old, old + "      checked: 2026-12-01\n", later);
        assertFalse(come.out().contains("yet to come"), come.out());
        with("sources.yaml", "checked: 2026-11-2", "checked: 2027-11-2", prove())
                .says("was looked at on 2027-11-2");
    }

    /** From its first day on such a value holds for no vehicle that there is. */
    @Test
    void vehiclesRegisteredOnADayToComeAreRemindedOf() throws IOException {
        String file = "water/practice.yaml";
        String old = "    - region: any\n      from: 2000-01-01\n      value: 75 %";
        String now = old.replace("value", "registered-from: 2026-12-01\n      value");
        with(file, old, now, prove())
                .says(
                        "water.largest-most: holds from 2000-01-01 for vehicles registered from 2026-12-01, which is yet to come");
        Ran law = with(file, old, now.replace("from: 2000-01-01", "from: 2026-12-01"), prove());
        assertFalse(law.out().contains("yet to come"), law.out());
        Ran past = with(file, old, now.replace("registered-from: 2026-12-01", "registered-from: 2026-11-30"), prove());
        assertFalse(past.out().contains("yet to come"), past.out());
    }

    @Test
    void aSourceThatNobodyCitesIsRemindedOf() throws IOException {
        String all = Files.readString(rules.resolve("sources.yaml"));
        Ran ran = with(
                "sources.yaml",
                all,
                "left-over:\n  title: A leaflet\n  kind: guidance\n  seen: read in full\n" + all,
                prove());
        assertEquals(1, ran.code(), ran.out() + ran.err());
        ran.says(rules.resolve("sources.yaml") + ":1:1: left-over: no card and no value cites this source");
    }

    /** A rule that cannot be read, one with a wrong character, one without its card and a value without its text. */
    @Test
    void whatIsWrongInOneFileHidesNothingInAnother() throws IOException {
        Path drl = rules.resolve("water/water.drl");
        String before = Files.readString(drl);
        Path practice = rules.resolve("water/practice.yaml");
        String values = Files.readString(practice);
        Files.writeString(
                drl,
                before.replace("\"water.reserve\", known, value", "\"water.reserve\", known value")
                        .replace("value > $most.value)\n    $days", "value > $most.value \\)\n    $days")
                        .replace("water.not-potable", "water.undrinkable"));
        Files.writeString(practice, values.replace("sources: [sphere-course]", "sources: [sphere-corse]"));
        try {
            Ran ran = with("sources.yaml", "  seen: ", "  sean: ", prove());
            assertEquals(3, ran.code(), ran.out() + ran.err());
            String told = ran.err();
            for (String fault : new String[] {
                "water.drl:15:55: ",
                "water.drl:38:69: a backslash has no place in a rule file",
                "water.drl:53: water.undrinkable: this rule has no card",
                "cites 'sphere-corse', which sources.yaml does not list",
                "no field has this name"
            }) {
                assertTrue(told.contains(fault), fault + " is not told in\n" + ran.err());
            }
            // The rules that could not be read are not missed, nor are the values that they use.
            assertTrue(!told.contains("no rule uses this practice value") && !told.contains("has no rule"), told);
        } finally {
            Files.writeString(drl, before);
            Files.writeString(practice, values);
        }
    }
}
