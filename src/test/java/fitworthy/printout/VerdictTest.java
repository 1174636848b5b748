package fitworthy.printout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Arrangement;
import fitworthy.advice.BuyList;
import fitworthy.advice.BuyList.Decision;
import fitworthy.advice.Counts;
import fitworthy.advice.Margin;
import fitworthy.book.Severity;
import fitworthy.source.FaultsException;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The first sentences, on the plain wagon: 2520 kg loaded, a GVM of 3000 kg, a tow rating of 3000 kg. */
class VerdictTest {

    private static final String BAR = "vehicle: {tow-bar: {plate: {trailer: 3500 kg, ball: 350 kg}}}\n";
    private static final String VAN = BAR
            + """
                    trailer: {name: Van, mass: %s kg +/- 0 kg, ball: %s kg +/- 0 kg, rated: 3500 kg, gtm: 3300 kg,
                      brakes: electric, lightest: 800 kg, coupling: {trailer: 3500 kg, ball: 350 kg}}
                    """;
    private static final String BOX =
            """
            fitments:
              - {name: Box, kind: other, mass: 40 kg +/- 0 kg, at: {x: 2700 mm, y: 0 mm, z: 700 mm}}
              - {name: Sticker, kind: other, mass: 0 kg}
            """;

    private static Advice advice(String changes) throws FaultsException {
        return Adviser.advise(Books.engine(), Sheets.plainWith(changes));
    }

    private static Map<String, Decision> decisions(String changes) throws FaultsException {
        return BuyList.of(Arrangement.of(advice(changes))).parts().stream()
                .collect(Collectors.toMap(BuyList.Part::name, BuyList.Part::decision));
    }

    /** What nobody can bring is told beside the number of all that is missing, where it is more than half of it. */
    @Test
    void whatTheRuleBookLacksIsToldBesideTheNumber() {
        assertEquals(
                "39 checks not made: 33 answers missing, of which the rule book itself lacks 27",
                Verdict.open(new Counts(Map.of(), 0, 39, 33, 27, 0, 0, 0)));
        assertEquals("2 checks not made: 1 answer missing", Verdict.open(new Counts(Map.of(), 0, 2, 1, 0, 0, 0, 0)));
        assertEquals(
                "2 checks not made: 2 answers missing", Verdict.open(new Counts(Map.of(), 0, 2, 2, 1, 0, 0, 0)));
        assertEquals(
                "2 checks not made: 3 answers missing, of which the rule book itself lacks 2",
                Verdict.open(new Counts(Map.of(), 0, 2, 3, 2, 0, 0, 0)));
    }

    @Test
    void aTrailerThatNoLoadingTowsIsSaidWithHowMuchItIsTooHeavy() throws FaultsException {
        String alone = "cases: [{name: alone}]\n";
        String heavy = Verdict.loaded(advice(VAN.formatted(3100, 310) + alone));
        assertTrue(heavy.endsWith("No loading tows Van; at 3100 kg it is 100 kg too heavy (tow rating)."), heavy);
        String light = Verdict.loaded(advice(VAN.formatted(2000, 200) + alone));
        assertTrue(light.endsWith("No loading tows Van, so what it does to the vehicle is not checked."), light);
        assertFalse(Verdict.loaded(advice(VAN.formatted(2000, 200))).contains("No loading"), "the one loading tows it");
        assertEquals(
                Map.of("Box", Decision.WAIT, "Sticker", Decision.ORDER_NOW),
                decisions(BOX + VAN.formatted(2000, 200) + alone));
    }

    /** 2520 kg of wagon and 3000 kg on the plate of a trailer that nobody has weighed. */
    @Test
    void aTrailerThatNobodyHasWeighedIsHeldAgainstTheGcmAtItsPlate() throws FaultsException {
        String van = VAN.formatted("0", 200)
                .replace("mass: 0 kg +/- 0 kg", "mass: ask")
                .replace("3500 kg, gtm: 3300 kg", "3000 kg, gtm: 2800 kg");
        String at = van.replace("350 kg}}}\n", "350 kg}}, ratings: {gcm: %d kg}}\n");
        assertSays(
                Verdict.loaded(advice(at.formatted(5519))),
                "What Van weighs is not known; at its plate, the most it may weigh (3000 kg), it would be over: GCM by 1 kg (");
        assertFalse(Verdict.loaded(advice(at.formatted(5520))).contains("at its plate"), "just at it");
        assertFalse(
                Verdict.loaded(advice(at.replace("mass: ask", "mass: 2900 kg").formatted(5519)))
                        .contains("at its plate"),
                "what it weighs is known");
    }

    @Test
    void withoutARatingNothingIsJudgedAndNothingThatWeighsIsOrdered() throws FaultsException {
        assertTrue(Verdict.of(Arrangement.of(advice("title: Plain"))).startsWith("No fault found"), "all is known");
        String unknown = "vehicle: {ratings: {gvm: unknown}}\n";
        String verdict = Verdict.of(Arrangement.of(advice(unknown)));
        assertTrue(verdict.startsWith("This plan cannot be judged yet"), verdict);
        assertEquals(Map.of("Box", Decision.ORDER_NOW, "Sticker", Decision.ORDER_NOW), decisions(BOX));
        assertEquals(Map.of("Box", Decision.WAIT, "Sticker", Decision.ORDER_NOW), decisions(BOX + unknown));
    }

    /** The wagon weighs 2520 kg with everything, 2480 kg with 40 kg less; the other loading is told with its own figure. */
    @Test
    void eachLoadingIsToldWithItsOwnFigure() throws FaultsException {
        String cargo = "cargo: [{name: Luggage, mass: %d kg +/- 0 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}}]\n"
                + "vehicle: {ratings: {gvm: 2400 kg}}\n";
        String two = cargo + "cases: [{name: packed}, {name: empty, carrying: []}]\n";
        String three = cargo + "cases: [{name: packed}, {name: empty, carrying: []}, {name: bare, carrying: []}]\n";
        assertSays(Verdict.loaded(advice(two.formatted(40))), "GVM by 100 kg (packed; 60 kg empty)");
        assertSays(Verdict.loaded(advice(three.formatted(40))), "GVM by 100 kg (packed; less in 2)");
        assertSays(brief(two.formatted(40)), "2500 kg, 100 kg over (packed; 60 kg over empty).");
        assertSays(brief(two.formatted(0)), "2460 kg, 60 kg over (packed; also empty).");
        assertSays(brief(three.formatted(0)), "2460 kg, 60 kg over (packed and 2 more).");
    }

    private static String brief(String changes) throws FaultsException {
        return FindingBrief.all(Arrangement.of(advice(changes)), Severity.STOP, false)
                .get(0)
                .whatToDo();
    }

    private static void assertSays(String text, String words) {
        assertTrue(text.contains(words), () -> "'" + words + "' in " + text);
    }

    /** 2520 kg on the maker's 2400 kg, until the kit's 3000 kg hold. */
    @Test
    void whatIsOverUntilTheKitIsApprovedIsSaid() throws FaultsException {
        String kit = "fitments: [{name: Kit, kind: rating-upgrade, mass: 0 kg, gvm: 3000 kg}]\n";
        String over = Verdict.loaded(advice(kit + "vehicle: {ratings: {gvm: 2400 kg}}"));
        assertTrue(
                over.contains("once Kit is approved; until then over: GVM by 120 kg (everything aboard); least spare"),
                over);
        String kept = Verdict.loaded(advice(kit + "vehicle: {ratings: {gvm: 2520 kg}}"));
        assertTrue(kept.contains("in every loading, with Kit approved or not; least spare"), kept);
    }

    /** 2520 kg loaded; what is spare is told to the safe side, in whole kilograms. */
    @Test
    void aLimitThatIsJustKeptLeavesNothingToSpare() throws FaultsException {
        String gvm = "vehicle: {ratings: {gvm: %s}}\n";
        assertSays(Verdict.loaded(advice(gvm.formatted("2521 kg"))), "; least spare: GVM 1 kg (everything aboard).");
        assertSays(Verdict.loaded(advice(gvm.formatted("2520.5 kg"))), "; nothing to spare: GVM (everything aboard).");
        assertSays(
                Verdict.loaded(advice(gvm.formatted("2520 kg +/- 15 kg"))),
                "; nothing to spare +/- 15 kg: GVM (everything aboard)");
        assertSays(Verdict.loaded(advice(gvm.formatted("2519 kg"))), "over its ratings: GVM by 1 kg");
    }

    /** 2520 kg and a van of 2900 kg, of which 290 kg are on the ball: a GCM of 5420 kg is just kept. */
    @Test
    void theTrailerAsPlannedIsToldWhereTheTwoAreOver() throws FaultsException {
        String at = VAN.formatted(2900, 290).replace("350 kg}}}\n", "350 kg}}, ratings: {gcm: %d kg}}\n");
        assertEquals("", Verdict.overWithTrailer(advice(at.formatted(5420))));
        assertEquals(
                " With the trailer as planned it is over: GCM by 1 kg (everything aboard).",
                Verdict.overWithTrailer(advice(at.formatted(5419))));
        assertEquals(
                " With the trailer as planned it is over: braked trailer (the vehicle's tow rating) by 1 kg.",
                Verdict.overWithTrailer(advice(VAN.formatted(3001, 290))));
    }

    /** 290 kg on a ball rated for 300 kg: less is spare than of the tow rating, 100 kg, or of any axle. */
    @Test
    void theRatingThatTheVerdictNamesIsInTheTable() throws FaultsException {
        Advice ball = advice(VAN.formatted(2900, 290));
        assertTrue(Verdict.loaded(ball).contains("least spare: ball load limit 10 kg"), Verdict.loaded(ball));
        List<Margin> row = Arrangement.of(ball).margins().stream()
                .filter(margin -> margin.limit().equals("vehicle: ball load limit"))
                .toList();
        assertEquals(Map.of("everything aboard", 10.0), row.get(0).left());
        assertEquals(
                List.of(Map.of("everything aboard", 200.0)),
                Arrangement.of(advice(VAN.formatted(1000, 100))).margins().stream()
                        .filter(margin -> margin.limit().contains("ball"))
                        .map(Margin::left)
                        .toList(),
                "the closest of the limits of the ball, though more is spare than of the front axle");
        assertTrue(Arrangement.of(advice("title: Plain\n")).margins().stream()
                .noneMatch(margin -> margin.limit().contains("ball")));
    }
}
