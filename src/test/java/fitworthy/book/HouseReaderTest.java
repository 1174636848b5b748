package fitworthy.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.rules.Stricter;
import fitworthy.source.FaultsException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a shop may set over the shipped book and what it has to sign for. The book allows 6 % between left and right
 * anywhere (lower is stricter), wants 3 % of the GVM free anywhere (higher is stricter), calls a GVM light up to 4500
 * kg in Australia and up to 3500 kg in the United Kingdom, and records nothing of it elsewhere.
 */
class HouseReaderTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final String SIGNED = ", reason: Every wheel is weighed, name: Workshop manager}";

    @TempDir
    private Path folder;

    private Book with(String... lines) throws FaultsException, IOException {
        Path file = folder.resolve("house.yaml");
        Files.writeString(file, "shop: Saltbush Fit-out\n" + String.join("\n", lines) + "\n");
        return Books.shipped().with(HouseReader.read(file, Books.shipped()));
    }

    private List<String> faults(String... lines) {
        return assertThrows(FaultsException.class, () -> with(lines)).faults().stream()
                .map(String::valueOf)
                .map(each -> each.substring(each.indexOf("house.yaml")))
                .toList();
    }

    private static Practice found(Book book, String id, String region, LocalDate day) {
        return ((Practice.Lookup.Found) book.lookup(id, region, day)).practice();
    }

    private static String value(String practice, String value) {
        return "values: [{practice: " + practice + ", region: any, from: 2026-01-01, value: " + value;
    }

    @Test
    void aValueBeginsOnADayThatCanBeMeant() throws FaultsException, IOException {
        String value = value("mass.side-most", "5.9 %") + "}]";
        with(value.replace("2026-01-01", "2099-12-31"));
        List<String> refused = faults(value.replace("2026-01-01", "2100-01-01"));
        assertEquals(1, refused.size(), refused::toString);
        assertTrue(
                refused.get(0)
                        .contains("values.1.from: is '2100-01-01', which is not between 1980-01-01 and 2099-12-31"),
                refused.get(0));
    }

    @Test
    void anExampleOfAValueIsOfTheKindOfItsPracticeValue() {
        String told = String.join(
                "\n", faults("values:", "  - {practice: mass.behind-axle-most, region: any, from: 2026-01-01}"));
        assertTrue(told.contains("right: value: 2400 kg"), told);
        String share =
                String.join("\n", faults("values:", "  - {practice: mass.side-most, region: any, from: 2026-01-01}"));
        assertTrue(share.contains("right: value: 90 %"), share);
    }

    /** Each value with whether it may stand without a reason and a name; the book's own lies between the two sides. */
    @TestFactory
    Stream<DynamicTest> aLooserValueIsSignedForAndAStricterNeedNotBe() {
        return Stream.of(new String[][] {
                    {"mass.side-most", "5.9 %", "6.1 %"}, {"mass.gvm-reserve", "3.1 %", "2.9 %"},
                    {"body.hold-down-points-least", "100", "0"}, {"mass.behind-axle-most", "54 lb", "56 lb"}
                })
                .map(each -> DynamicTest.dynamicTest(each[0], () -> {
                    assertFalse(found(with(value(each[0], each[1]) + "}]"), each[0], "au", DAY)
                            .house()
                            .orElseThrow()
                            .looser());
                    List<String> refused = faults(value(each[0], each[2]) + "}]");
                    assertEquals(1, refused.size(), refused::toString);
                    assertTrue(
                            refused.get(0)
                                    .contains(
                                            "values.1.value: " + each[2]
                                                    + " is looser than the book's, which takes a reason and a name. In place of "),
                            refused.get(0));
                    assertEquals(
                            1,
                            faults(value(each[0], each[2]) + ", reason: Weighed}]")
                                    .size(),
                            "a reason without a name");
                    assertEquals(
                            1,
                            faults(value(each[0], each[2]) + ", reason: Weighed, name: ' '}]")
                                    .size());
                    assertTrue(found(with(value(each[0], each[2]) + SIGNED + "]"), each[0], "au", DAY)
                            .house()
                            .orElseThrow()
                            .looser());
                }));
    }

    @Test
    void whereTheRulesDoNotTellWhichWayIsStricterAnyChangeIsSignedFor() throws FaultsException, IOException {
        for (String value : List.of("29 m", "31 m")) {
            assertTrue(faults(value("mirrors.far-distance", value) + "}]")
                    .get(0)
                    .contains("values.1.value: " + value
                            + " changes a value of which the rules do not tell which way is stricter"));
            with(value("mirrors.far-distance", value) + SIGNED + "]");
        }
    }

    /** A value where nothing is recorded lets a check be met that was not assessed. */
    @Test
    void aValueWhereNothingIsRecordedIsSignedFor() throws FaultsException, IOException {
        String light = "values: [{practice: mass.light-gvm-most, region: %s, from: 2026-01-01, value: 3000 kg";
        with(String.format(light, "au") + "}]");
        assertTrue(faults(String.format(light, "any") + "}]")
                .get(0)
                .contains("3000 kg would let a check be met that is not assessed now, which takes a reason and a name."
                        + " The book records nothing here."));
        Practice set = found(with(String.format(light, "any") + SIGNED + "]"), "mass.light-gvm-most", "any", DAY);
        assertTrue(set.house().orElseThrow().looser());
    }

    /** A limit where the book says that there is none can only be stricter. */
    @Test
    void aValueWhereNoLimitAppliesNeedNotBeSignedFor() throws FaultsException, IOException {
        Book book = Books.shipped();
        String[] none = book.practice().entrySet().stream()
                .flatMap(entry -> entry.getValue().values().stream()
                        .filter(value ->
                                value.none() && Stricter.of(book.rules().values(), entry.getKey()) != Stricter.UNTOLD)
                        .map(value -> new String[] {
                            entry.getKey(), value.region(), entry.getValue().unit()
                        }))
                .findFirst()
                .orElseThrow();
        Book over = with("values: [{practice: " + none[0] + ", region: " + none[1] + ", from: 2026-01-01, value: 5 "
                + none[2] + "}]");
        assertEquals(
                "The book says that no such limit applies here.",
                found(over, none[0], none[1], DAY).house().orElseThrow().inPlaceOf());
    }

    /**
     * It begins on its day, holds in the regions below its own, ends with the shop's next one, and is not known
     * elsewhere.
     */
    @Test
    void aValueHoldsFromItsDayInItsRegionAndThoseBelow() throws FaultsException, IOException {
        Book book = with(
                "values:",
                "  - {practice: mass.side-most, region: au, from: 2026-07-01, value: 5 %}",
                "  - {practice: mass.side-most, region: au, from: 2026-11-25, value: 4 %}",
                "  - {practice: mass.side-most, region: au-sa, from: 2026-07-01, value: 3 %}");
        assertEquals(
                0.06,
                found(book, "mass.side-most", "au-nsw", LocalDate.of(2026, 6, 30))
                        .value());
        assertEquals(
                0.05,
                found(book, "mass.side-most", "au-nsw", LocalDate.of(2026, 7, 1))
                        .value());
        assertEquals(
                0.05, found(book, "mass.side-most", "au-nsw", DAY.minusDays(1)).value());
        assertEquals(0.04, found(book, "mass.side-most", "au-nsw", DAY).value());
        assertEquals(0.03, found(book, "mass.side-most", "au-sa", DAY).value());
        assertEquals(0.06, found(book, "mass.side-most", "uk", DAY).value());
        assertTrue(found(book, "mass.side-most", "uk", DAY).house().isEmpty());
    }

    /** Stricter in one region below its own and looser in another is looser. */
    @Test
    void aValueIsHeldAgainstEveryRegionBelowItsOwn() throws FaultsException, IOException {
        String line = "values: [{practice: mass.light-gvm-most, region: %s, from: 2026-01-01, value: 4400 kg";
        with(String.format(line, "au") + "}]");
        assertEquals(1, faults(String.format(line, "any") + "}]").size());
        Book book = with(String.format(line, "any") + SIGNED + "]");
        assertFalse(found(book, "mass.light-gvm-most", "au", DAY)
                .house()
                .orElseThrow()
                .looser());
        assertTrue(found(book, "mass.light-gvm-most", "uk", DAY)
                .house()
                .orElseThrow()
                .looser());
    }

    /** Stricter for newer vehicles and looser for older ones is looser. */
    @Test
    void aValueIsHeldAgainstThoseOfOlderVehiclesToo() throws FaultsException, IOException {
        String line = "values: [{practice: mirrors.beyond-trailer-most, region: uk, from: 2026-01-01, value: %s}]";
        with(String.format(line, "190 mm"));
        assertEquals(1, faults(String.format(line, "220 mm")).size());
    }

    @Test
    void theBookKeepsItsOwnValuesAndTheUseSaysWhatItReplaced() throws FaultsException, IOException {
        Book book = with(value("mass.side-most", "8 %") + SIGNED + "]");
        assertEquals(Books.shipped().practice(), book.practice());
        assertEquals(Books.shipped().hash(), book.hash());
        Practice set = found(book, "mass.side-most", "au", DAY);
        assertEquals(Basis.HOUSE, set.entry().basis().value());
        assertEquals(
                "In place of 6 %, any from 2000-01-01, common practice of the trade. Looser: Every wheel is "
                        + "weighed. (Workshop manager)",
                set.entry().note());
    }

    @Test
    void aSeverityMayBeRaisedButIsSignedForWhereItIsMilder() throws FaultsException, IOException {
        Book raised = with("severities: [{rule: mass.gvm-tight, severity: stop}]");
        assertTrue(raised.cards().get("mass.gvm-tight").severity().is(Severity.STOP));
        assertFalse(raised.house().severities().get("mass.gvm-tight").milder());
        String milder = "severities: [{rule: mass.gvm-over, severity: change";
        assertEquals(
                List.of("house.yaml:2:46: severities.1.severity: change is milder than the book's stop, which "
                        + "takes a reason and a name\n    right: reason: why the shop may, and name: who stands for it, such "
                        + "as Workshop manager"),
                faults(milder + "}]"));
        assertTrue(with(milder + SIGNED + "]")
                .house()
                .severities()
                .get("mass.gvm-over")
                .milder());
    }

    @Test
    void whatSaysTheSameAsTheBookReplacesNothing() throws FaultsException, IOException {
        Book book = with(value("mass.side-most", "6 %") + "}]", "severities: [{rule: mass.gvm-over, severity: stop}]");
        assertTrue(found(book, "mass.side-most", "au", DAY).house().isEmpty());
        assertTrue(book.house().severities().isEmpty());
    }

    /**
     * A share between left and right is never below zero, the coldest night and the height of the ball over the coupling
     * may be; no rule holds a figure against the distance at which a mirror is looked into.
     */
    @Test
    void aValueIsBelowZeroOnlyWhereWhatIsHeldAgainstItMayBe() throws FaultsException, IOException {
        assertEquals(
                List.of(
                        "house.yaml:2:75: values.1.value: '-5 %' is below zero, which what is held against it never is: "
                                + "mass.side, mass.side-emptied\n    right: value: 6 %"),
                faults(value("mass.side-most", "-5 %") + SIGNED + "]"));
        assertEquals(
                List.of(
                        "house.yaml:2:81: values.1.value: '-5 m' is below zero, and no rule holds a figure against it that "
                                + "could be\n    right: value: 20 m"),
                faults(value("mirrors.far-distance", "-5 m") + SIGNED + "]"));
        assertEquals(
                -2,
                found(with(value("water.frost", "-2 degC") + SIGNED + "]"), "water.frost", "au", DAY)
                        .value());
        assertEquals(
                0,
                found(with(value("mass.side-most", "0 %") + "}]"), "mass.side-most", "au", DAY)
                        .value());
    }

    @Test
    void aValueHasNoTolerance() {
        assertEquals(
                List.of(
                        "house.yaml:2:75: values.1.value: '5 % +/- 1 %' has a tolerance, which no limit has\n    right: "
                                + "value: 6 %"),
                faults(value("mass.side-most", "5 % +/- 1 %") + "}]"));
    }

    @Test
    void everyFaultIsToldWithItsPlaceAndWhatWouldBeRight() {
        List<String> faults = faults(
                "values:",
                "  - {practice: mass.side-mots, region: any, from: 2026-01-01, value: 5 %}",
                "  - {practice: mass.side-most, region: auu, from: 2026-01-01, value: 5 kg}",
                "  - {practice: mass.side-most, region: au, from: 2026-13-01, value: none}",
                "  - {practice: mass.gvm-reserve, region: au, from: 2026-01-01, value: 4}",
                "  - {practice: mass.gvm-reserve, region: au, from: 2026-01-01, value: 4 %, because: x}",
                "severities:",
                "  - {rule: mass.gvm-ovr, severity: stop}",
                "  - {rule: mass.gvm-over, severity: note}",
                "  - {rule: mass.gvm-over, severity: halt}");
        List<String> beginnings = List.of(
                "house.yaml:3:16: values.1.practice: the rule book has no practice value 'mass.side-mots' (did you mean"
                        + " 'mass.side-most'?)\n    right: an id",
                "house.yaml:4:40: values.2.region: the rule book has no region 'auu' (did you mean 'au'?)\n    "
                        + "right: one of any, au",
                "house.yaml:4:70: values.2.value: '5 kg' has a unit of mass where one of share belongs\n    right: "
                        + "value: 6 %",
                "house.yaml:5:50: values.3.from: is '2026-13-01', which is not a date\n    right: from: 2026-07-01",
                "house.yaml:5:69: values.3.value: a shop cannot do away with a limit\n    right: value: 6 %, or a "
                        + "milder",
                "house.yaml:6:71: values.4.value: '4' has no unit\n    right: value: 3 %",
                "house.yaml:7:16: values.5.practice: two values of mass.gvm-reserve begin in au on 2026-01-01\n    "
                        + "right: one",
                "house.yaml:7:76: values.5.because: no field has this name",
                "house.yaml:9:12: severities.1.rule: the rule book has no rule 'mass.gvm-ovr' (did you mean "
                        + "'mass.gvm-over'?)",
                "house.yaml:10:37: severities.2.severity: note is milder than the book's stop",
                "house.yaml:11:12: severities.3.rule: mass.gvm-over is given a severity twice\n    right: one a rule",
                "house.yaml:11:37: severities.3.severity: is 'halt', which is not one of the answers");
        assertEquals(beginnings.size(), faults.size(), () -> String.join("\n", faults));
        for (int i = 0; i < beginnings.size(); i++) {
            assertTrue(faults.get(i).startsWith(beginnings.get(i)), faults.get(i) + "\nis not\n" + beginnings.get(i));
        }
    }

    /** What is held against the book is told beside what cannot be read. */
    @Test
    void aLooserValueIsToldInTheRunThatTellsWhatElseIsWrong() {
        List<String> faults = faults(
                "values:",
                "  - {practice: mass.side-most, region: any, from: 2026-01-01, value: 7 %}",
                "  - {practice: mass.gvm-reserve, region: any, from: 2026-01-01}",
                "  - {practice: mass.side-most, region: any, from: soon, value: 9 %}",
                "severities:",
                "  - {rule: mass.gvm-ovr, severity: stop}",
                "color: red");
        List<String> beginnings = List.of(
                "house.yaml:3:70: values.1.value: 7 % is looser than the book's",
                "house.yaml:4:5: values.2.value: is missing",
                "house.yaml:5:51: values.3.from: is 'soon', which is not a date",
                "house.yaml:7:12: severities.1.rule: the rule book has no rule 'mass.gvm-ovr'",
                "house.yaml:8:1: color: no field has this name");
        assertEquals(beginnings.size(), faults.size(), () -> String.join("\n", faults));
        for (int i = 0; i < beginnings.size(); i++) {
            assertTrue(faults.get(i).startsWith(beginnings.get(i)), faults.get(i) + "\nis not\n" + beginnings.get(i));
        }
    }
}
