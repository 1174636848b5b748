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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a shop or a person answers for, on every printout: house values and severities, and waivers. */
class HouseTest {

    private static final String HOUSE =
            """
            shop: Saltbush Fit-out
            values:
              - {practice: mass.gvm-reserve, region: any, from: 2026-01-01, value: 2 %, reason: All are weighed, name: Foreman}
              - {practice: mass.side-most, region: au, from: 2026-01-01, value: 5 %}
              - {practice: mass.ball-lift-most, region: au, from: 2026-01-01, value: 100 kg}
              - {practice: mass.cog-rise-most, region: us, from: 2026-01-01, value: 10 %}
            severities:
              - {rule: mass.gvm-tight, severity: change}
              - {rule: mass.gvm-over, severity: confirm, reason: We re-rate all of them, name: Foreman}
              - {rule: mass.gcm-over, severity: change, reason: We do not tow, name: Foreman}
            """;
    private static final String REPLACED = "In place of 3 %, any from 2000-01-01, common practice of the trade. "
            + "Looser: All are weighed. (Foreman)";

    @TempDir
    private Path folder;

    private String house;

    @BeforeEach
    void writeHouse() throws IOException {
        house = Files.writeString(folder.resolve("house.yaml"), HOUSE).toString();
    }

    private static Ran run(String... args) {
        Ran run = Ran.of(args);
        if (!run.out().startsWith("{")) {
            run.out().lines().forEach(line -> assertTrue(line.length() <= 80, line));
        }
        return run;
    }

    /** The plain wagon of 2520 kg with another GVM, and what is put at its end. */
    private String sheet(String gvm, String end) throws IOException {
        return Files.writeString(
                        folder.resolve("sheet.yaml"),
                        Files.readString(Books.RULES.resolve("plain-sheet.yaml"))
                                        .replace("gvm: 3000 kg", "gvm: " + gvm)
                                + end)
                .toString();
    }

    private static void says(Ran run, String text) {
        assertTrue(run.out().replaceAll("\\s+", " ").contains(text), () -> "no '" + text + "' in\n" + run.out());
    }

    /** 50 kg are 1.9 % of 2570 kg, 77 kg are 3.0 % of 2597 kg. */
    @Test
    void aFindingShowsTheHouseValueAndWhatItReplaced() throws IOException {
        Ran run = run("check", "--full", sheet("2570 kg", ""), "--house", house);
        assertEquals(1, run.code(), run.err());
        says(run, "House Saltbush Fit-out, ");
        says(
                run,
                "LOOSER THAN THE BOOK, as decided by Saltbush Fit-out: - mass.gvm-reserve 2 %, any from 2026-01-01. "
                        + REPLACED);
        says(run, "CHANGE Little of the GVM is left");
        says(run, "Severity: change, set by the shop in place of note.");
        says(run, "50 kg is spare; allow 51 kg, 2 % (house value) of the GVM.");
        says(run, "mass.gvm-reserve 2 % (any from 2026-01-01, set by the shop; " + REPLACED + ")");
        assertEquals(
                0,
                run("check", "--full", sheet("2597 kg", ""), "--house", house).code(),
                "allowed by the house");
        says(run("check", "--full", sheet("2597 kg", "")), "NOTE Little of the GVM is left");
    }

    @Test
    void whatIsMetIsMarkedToo() throws IOException {
        Ran run = run("check", "--full", sheet("3000 kg", ""), "--all", "--house", house);
        says(run, "at most 5.0 % (house value)");
        says(
                run,
                "mass.side-most 5 %, set by the shop. In place of 6 %, any from 2000-01-01, common practice of the "
                        + "trade.");
    }

    @Test
    void entriesWithoutEffectAreReported() throws IOException {
        Ran run = run("check", "--full", sheet("3000 kg", ""), "--house", house);
        says(run, "Changing nothing in this region on this day: mass.cog-rise-most of us from 2026-01-01");
        says(run, "Not asked for by this sheet: mass.ball-lift-most of au from 2026-01-01; mass.gcm-over");
        says(run, "OTHERWISE SET by Saltbush Fit-out: - mass.side-most 5 %, au from 2026-01-01.");
    }

    @Test
    void jsonCarriesTheHouseAndEachReplacement() throws IOException {
        JsonNode json = new ObjectMapper()
                .readTree(run("check", "--full", sheet("2570 kg", ""), "--house", house, "--format", "json")
                        .out());
        assertEquals("Saltbush Fit-out", json.at("/house/shop").asText());
        JsonNode finding = json.get("findings").get(0);
        assertEquals("mass.gvm-tight", finding.get("id").asText());
        assertEquals("note", finding.at("/house-severity/in-place-of").asText());
        assertFalse(finding.at("/house-severity/milder").asBoolean());
        JsonNode value = finding.get("practice").get(0);
        assertEquals("2 %", value.get("value").asText());
        assertEquals("house", value.get("basis").asText());
        assertTrue(value.at("/house/looser").asBoolean());
        assertEquals("All are weighed", value.at("/house/reason").asText());
        assertEquals("Foreman", value.at("/house/name").asText());
        assertEquals("3 %", value.at("/house/in-place-of/value").asText());
        assertEquals("2000-01-01", value.at("/house/in-place-of/from").asText());
        assertEquals("common-practice", value.at("/house/in-place-of/basis").asText());
        assertEquals(3, json.at("/house/without-effect").size());
        JsonNode plain = new ObjectMapper()
                .readTree(run("check", "--full", sheet("2570 kg", ""), "--format", "json")
                        .out());
        assertFalse(plain.has("house"));
    }

    @Test
    void explainMendAndCompareShowIt() throws IOException {
        Ran explained = run("explain", sheet("2570 kg", ""), "mass.gvm-tight", "--house", house);
        says(explained, "Practice mass.gvm-reserve: 2 %, any from 2026-01-01, set by the shop. " + REPLACED);
        says(explained, "Severity change, set by the shop in place of note.");
        says(explained, "reserve.value is 2 % (house value)");
        says(
                run("mend", sheet("2500 kg", ""), "--house", house),
                "Looser than the book: mass.gvm-over: confirm, set by the"
                        + " shop in place of stop. Milder: We re-rate all of them. (Foreman)");
        says(
                run("compare", "scenarios/touring.yaml", "--option", "Tray", "--house", house),
                "Looser than the book: mass.gvm-reserve 2 %");
    }

    @Test
    void aBadHouseFileEndsWithTwoAndAllItsFaults() throws IOException {
        String bad = Files.writeString(
                        folder.resolve("bad.yaml"),
                        HOUSE.replace("value: 2 %, reason: All are weighed, name:" + " Foreman", "value: 2 %")
                                .replace("mass.side-most", "mass.sides-most"))
                .toString();
        Ran run = run("check", "--full", sheet("3000 kg", ""), "--house", bad);
        assertEquals(2, run.code());
        assertEquals("", run.out());
        assertTrue(
                run.err()
                        .startsWith(
                                "The house file cannot be used, so no advice is given:\n" + bad
                                        + ":3:72: values.1.value: 2 % is looser than the book's, which takes a reason and a name."),
                run.err());
        assertTrue(
                run.err()
                        .contains(
                                bad
                                        + ":4:16: values.2.practice: the rule book has no practice value 'mass.sides-most' (did you mean"),
                run.err());
        Ran none = run(
                "check",
                sheet("3000 kg", ""),
                "--house",
                folder.resolve("none.yaml").toString());
        assertEquals(2, none.code());
        assertTrue(none.err().contains("there is no such file"), none.err());
    }

    private static final String WAIVER = "waivers: [{rule: mass.gvm-over, subject: vehicle, in: everything aboard, "
            + "reason: It is weighed again, by: workshop manager, until: %s}]\n";

    @Test
    void aWaivedStopIsSeenButDoesNotDecide() throws IOException {
        String sheet = sheet("2500 kg", String.format(WAIVER, "2026-12-31"));
        Ran run = run("check", "--full", sheet);
        assertEquals(0, run.code(), run.out());
        says(
                run,
                "No fault found except what is waived. Not counted: 1 stop waived by workshop manager until 2026-12-31.");
        says(run, "STOP Waived: Loaded mass is above the GVM mass.gvm-over");
        says(run, "Waived in everything aboard by workshop manager until 2026-12-31: It is weighed again");
        JsonNode json = new ObjectMapper()
                .readTree(run("check", "--full", sheet, "--format", "json").out());
        assertEquals("none", json.get("worst").asText());
        assertEquals("stop", json.at("/findings/0/severity").asText());
        assertEquals("workshop manager", json.at("/findings/0/waiver/by").asText());
        assertEquals("active", json.at("/waivers/0/state").asText());
        says(
                run("explain", sheet, "mass.gvm-over"),
                "found; waived by workshop manager until 2026-12-31: It is weighed again");
        Ran mended = run("mend", sheet);
        says(mended, "1 stop waived by workshop manager");
        says(mended, "OFFER 1");
        assertFalse(mended.out().contains("no stop to clear"));
    }

    @Test
    void aWaiverThatDoesNotCountIsReported() throws IOException {
        Ran expired = run("check", "--full", sheet("2500 kg", String.format(WAIVER, "2026-11-24")));
        assertEquals(1, expired.code());
        says(expired, "Do not go ahead with this plan as it stands. 1 stop.");
        says(
                expired,
                "WAIVERS THAT DO NOT COUNT: - mass.gvm-over [vehicle], everything aboard, waived by workshop "
                        + "manager until 2026-11-24: It is weighed again - its last day is past");
        says(
                run("check", "--full", sheet("3000 kg", String.format(WAIVER, "2026-12-31"))),
                "- there is no such finding");
        Ran wide = run(
                "check",
                "--full",
                sheet("2500 kg", String.format(WAIVER, "2026-12-31").replace("subject: vehicle, ", "")));
        assertEquals(1, wide.code());
        says(wide, "- a stop is waived only with its subject and load case named ('subject:' and 'in:')");
    }

    @Test
    void aWaiverOfAnUnknownRuleIsAFaultOfTheSheetAndIsLedToNoOther() throws IOException {
        Ran run = run(
                "check",
                "--full",
                sheet("2500 kg", String.format(WAIVER, "2026-12-31").replace("gvm-over", "gvm-ovr")));
        assertEquals(2, run.code());
        assertTrue(
                run.err().contains("waivers.1.rule: the rule book has no rule 'mass.gvm-ovr'\n")
                        && !run.err().contains("mass.gvm-over"),
                run.err());
    }
}
