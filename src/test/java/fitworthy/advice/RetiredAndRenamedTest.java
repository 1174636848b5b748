package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.EditedBook;
import fitworthy.Sheets;
import fitworthy.advice.Waiving.State;
import fitworthy.book.HouseReader;
import fitworthy.book.Severity;
import fitworthy.engine.RuleEngine;
import fitworthy.printout.explain.ExplanationPrintout;
import fitworthy.printout.json.JsonPrintout;
import fitworthy.printout.screen.TextPrintout;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.NodeReader;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/**
 * Rules and practice values that end, and rules that were called otherwise before, on the plain wagon: with a GVM of
 * 2500 kg it is 20 kg over, with one of 2597 kg its 77 kg left are less than 3 %. Its day is 2026-11-25.
 */
class RetiredAndRenamedTest {

    private static final String HEAVY = "vehicle: {ratings: {gvm: 2500 kg}}\n";
    private static final String TIGHT = "vehicle: {ratings: {gvm: 2597 kg}}\n";
    private static final String DAY = "2026-11-25";
    private static final String NEXT_DAY = "2026-11-26";

    private static String waiver(String rule) {
        return "waivers: [{rule: " + rule + ", subject: vehicle, in: everything aboard, reason: Weighed again, "
                + "by: manager, until: 2026-12-31}]\n";
    }

    private static Advice advise(EditedBook book, String changes) throws FaultsException {
        return advise(book.engine(), changes);
    }

    /** As a sheet from a file is read and advised on. */
    private static Advice advise(RuleEngine engine, String changes) throws FaultsException {
        return new View(engine, null, null).advise(Sheets.treeWith(changes), new ArrayList<>());
    }

    private static boolean speaksOf(Advice advice, String rule) {
        return advice.outcomes().anyMatch(outcome -> outcome.judged().id().equals(rule));
    }

    private static String printed(Consumer<PrintWriter> printout) {
        StringWriter out = new StringWriter();
        printout.accept(new PrintWriter(out));
        return out.toString().replaceAll("\\s+", " ");
    }

    private static String text(Advice advice) {
        return printed(out -> new TextPrintout(out, TextPrintout.Painter.NONE, false).print(advice, Severity.NOTE));
    }

    private static void says(String text, String words) {
        assertTrue(text.contains(words), () -> "no '" + words + "' in " + text);
    }

    private static RuleEngine withHouse(EditedBook book, String page) throws FaultsException {
        String text = "shop: Saltbush Fit-out\n" + page;
        List<Fault> faults = new ArrayList<>();
        RuleEngine engine = book.engine();
        return engine.with(HouseReader.read(
                NodeReader.read("house.yaml", text, faults), "house.yaml", text, engine.book(), faults));
    }

    @Test
    void aRuleIsCheckedUntilTheDayBeforeItEnds() throws FaultsException {
        assertTrue(speaksOf(advise(new EditedBook().rule("mass.gvm-over", NEXT_DAY), HEAVY), "mass.gvm-over"));
        Advice after = advise(new EditedBook().rule("mass.gvm-over", DAY), HEAVY);
        assertFalse(speaksOf(after, "mass.gvm-over"));
        assertTrue(speaksOf(after, "mass.axle-over"));
    }

    @Test
    void aPracticeValueEndsWithEveryRuleThatComparesWithIt() throws FaultsException {
        assertTrue(speaksOf(advise(new EditedBook().value("mass.gvm-reserve", NEXT_DAY), TIGHT), "mass.gvm-tight"));
        assertFalse(speaksOf(advise(new EditedBook().value("mass.gvm-reserve", DAY), TIGHT), "mass.gvm-tight"));
    }

    @Test
    void aWaiverOfARetiredRuleIsReadAndSaysThatItIsNotNeeded() throws FaultsException {
        Advice advice = advise(new EditedBook().rule("mass.gvm-over", DAY), HEAVY + waiver("mass.gvm-over"));
        assertEquals(
                List.of(State.RETIRED),
                advice.waivers().stream().map(Waiving::state).toList());
        says(text(advice), "the rule mass.gvm-over was retired on 2026-11-25; the waiver is not needed");
        says(printed(out -> JsonPrintout.print(out, advice, Severity.NOTE)), "\"state\" : \"retired\"");
        assertEquals(
                State.ACTIVE,
                advise(new EditedBook().rule("mass.gvm-over", NEXT_DAY), HEAVY + waiver("mass.gvm-over"))
                        .waivers()
                        .get(0)
                        .state());
        says(
                text(advise(new EditedBook().value("mass.gvm-reserve", DAY), TIGHT + waiver("mass.gvm-tight"))),
                "the rule mass.gvm-tight was retired on 2026-11-25 with the practice value mass.gvm-reserve; the waiver "
                        + "is not needed");
    }

    @Test
    void whatAShopSetsForWhatIsRetiredIsReadAndNotNeeded() throws FaultsException {
        String page = "values: [{practice: mass.gvm-reserve, region: any, from: 2026-01-01, value: 4 %}]\n"
                + "severities: [{rule: mass.gvm-tight, severity: change}]\n";
        String before = text(advise(withHouse(new EditedBook().value("mass.gvm-reserve", NEXT_DAY), page), TIGHT));
        says(before, "CHANGE Little of the GVM is left");
        assertFalse(before.contains("retired"), before);
        Advice after = advise(withHouse(new EditedBook().value("mass.gvm-reserve", DAY), page), TIGHT);
        assertFalse(speaksOf(after, "mass.gvm-tight"));
        says(
                text(after),
                "mass.gvm-reserve of any from 2026-01-01: the practice value mass.gvm-reserve was retired on 2026-11-25;"
                        + " what the shop sets for it is not needed");
        says(
                text(after),
                "mass.gvm-tight: the rule mass.gvm-tight was retired on 2026-11-25 with the practice value"
                        + " mass.gvm-reserve; what the shop sets for it is not needed");
    }

    @Test
    void explainSaysWhenARuleEndsOrEnded() throws FaultsException {
        Advice after = advise(new EditedBook().rule("mass.gvm-over", DAY), HEAVY);
        says(
                printed(out -> ExplanationPrintout.print(out, after, "mass.gvm-over")),
                "The rule mass.gvm-over was retired on 2026-11-25, so it is not checked on 2026-11-25.");
        Advice before = advise(new EditedBook().rule("mass.gvm-over", NEXT_DAY), HEAVY);
        String text = printed(out -> ExplanationPrintout.print(out, before, "mass.gvm-over"));
        says(text, "ending on 2026-11-26");
        says(text, ": found");
    }

    @Test
    void aFormerIdLeadsAWaiverToTheSameRuleAndNoOther() throws FaultsException {
        EditedBook book = new EditedBook().rule("mass.gvm-over", "", "mass.too-heavy");
        Advice advice = advise(book, HEAVY + waiver("mass.too-heavy"));
        assertEquals(
                List.of("mass.gvm-over"),
                advice.findings().stream()
                        .filter(finding -> finding.waiver().isPresent())
                        .map(finding -> finding.judged().id())
                        .toList());
        says(
                text(advice),
                "Waived in everything aboard by manager until 2026-12-31: Weighed again "
                        + "(mass.too-heavy is now mass.gvm-over)");
        String json = printed(out -> JsonPrintout.print(out, advice, Severity.NOTE));
        says(json, "\"rule\" : \"mass.gvm-over\", \"formerly\" : \"mass.too-heavy\"");
        assertFalse(text(advise(book, HEAVY + waiver("mass.gvm-over"))).contains("is now"));
    }

    @Test
    void aHouseFileMayNameRulesAndValuesAsTheyWereCalled() throws FaultsException {
        EditedBook book = new EditedBook()
                .rule("mass.gvm-tight", "", "mass.gvm-little")
                .value("mass.gvm-reserve", "", "mass.gvm-spare");
        Advice advice = advise(
                withHouse(
                        book,
                        "values: [{practice: mass.gvm-spare, region: any, from: 2026-01-01, value: 4 %}]\n"
                                + "severities: [{rule: mass.gvm-little, severity: change}]\n"),
                TIGHT);
        String text = text(advice);
        says(text, "CHANGE Little of the GVM is left");
        says(text, "4 % (house value)");
        says(text, "mass.gvm-little is now mass.gvm-tight; the house file may say so");
        says(text, "mass.gvm-spare is now mass.gvm-reserve; the house file may say so");
    }

    @Test
    void explainFollowsAFormerId() throws FaultsException {
        Advice advice = advise(new EditedBook().rule("mass.gvm-over", "", "mass.too-heavy"), HEAVY);
        says(
                printed(out -> ExplanationPrintout.print(out, advice, "mass.too-heavy")),
                "mass.too-heavy is now mass.gvm-over. mass.gvm-over: ");
    }
}
