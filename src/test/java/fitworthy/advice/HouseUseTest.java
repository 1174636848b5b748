package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.book.HouseReader;
import fitworthy.book.Practice;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a house sets, on the plain wagon in Australia: it has a GVM and two axles, and no canopy or trailer. */
class HouseUseTest {

    @TempDir
    private Path folder;

    private HouseUse use(String sheet, String... house) throws Exception {
        Path file = folder.resolve("house.yaml");
        Files.writeString(file, "shop: Saltbush Fit-out\n" + String.join("\n", house) + "\n");
        return HouseUse.of(
                Adviser.advise(Books.engine().with(HouseReader.read(file, Books.shipped())), Sheets.plainWith(sheet)));
    }

    private static String value(String practice, String region, String from, String value) {
        return "  - {practice: " + practice + ", region: " + region + ", from: " + from + ", value: " + value + "}";
    }

    private static String rating(String rule, String severity) {
        return "  - {rule: " + rule + ", severity: " + severity + "}";
    }

    private static List<String> idle(HouseUse use) {
        return use.idle().stream().map(idle -> idle.entry() + ": " + idle.why()).toList();
    }

    @Test
    void aValueInForceIsUsedWhereTheSheetAsksForIt() throws Exception {
        HouseUse use = use("title: plain", "values:", value("mass.gvm-reserve", "any", "2026-01-01", "4 %"));
        assertEquals(
                List.of("mass.gvm-reserve"),
                use.values().stream().map(Practice::id).toList());
        assertEquals(0.04, use.values().get(0).value(), 1e-9);
        assertEquals(List.of(), idle(use));
    }

    @Test
    void aValueThatNothingOnTheSheetAsksForIsIdle() throws Exception {
        HouseUse use = use("title: plain", "values:", value("body.hold-down-points-least", "any", "2026-01-01", "100"));
        assertEquals(1, use.values().size());
        assertEquals(List.of("body.hold-down-points-least of any from 2026-01-01: NOT_ASKED"), idle(use));
    }

    /** One of another region, one that has not begun, and one of the region that the sheet is not in. */
    @Test
    void aValueThatDoesNotHoldHereOrTodayChangesNothing() throws Exception {
        HouseUse use = use(
                "title: plain",
                "values:",
                value("mass.gvm-reserve", "uk", "2026-01-01", "4 %"),
                value("mass.gvm-reserve", "au", "2026-11-26", "5 %"));
        assertEquals(List.of(), use.values());
        assertEquals(
                List.of(
                        "mass.gvm-reserve of uk from 2026-01-01: CHANGES_NOTHING",
                        "mass.gvm-reserve of au from 2026-11-26: CHANGES_NOTHING"),
                idle(use));
        assertEquals(
                List.of("mass.light-gvm-most of au from 2026-01-01: CHANGES_NOTHING"),
                idle(use("region: us", "values:", value("mass.light-gvm-most", "au", "2026-01-01", "4400 kg"))));
    }

    /** Of two in force in turn the later is used and the earlier changes nothing. */
    @Test
    void theValueThatIsInForceIsTheOneUsed() throws Exception {
        HouseUse use = use(
                "title: plain",
                "values:",
                value("mass.gvm-reserve", "any", "2026-01-01", "4 %"),
                value("mass.gvm-reserve", "any", "2026-06-01", "5 %"));
        assertEquals(List.of(0.05), use.values().stream().map(Practice::value).toList());
        assertEquals(List.of("mass.gvm-reserve of any from 2026-01-01: CHANGES_NOTHING"), idle(use));
    }

    @Test
    void aSeverityIsUsedWhereItDiffersAndTheQuestionArises() throws Exception {
        HouseUse use = use(
                "title: plain",
                "severities:",
                rating("mass.gvm-tight", "confirm"),
                rating("mass.gvm-over", "stop"),
                rating("body.seats-changed", "stop"));
        assertEquals(
                List.of("body.seats-changed", "mass.gvm-tight"),
                use.severities().stream().map(set -> set.set().rule()).sorted().toList());
        assertEquals(List.of("mass.gvm-over: CHANGES_NOTHING", "body.seats-changed: NOT_ASKED"), idle(use));
    }
}
