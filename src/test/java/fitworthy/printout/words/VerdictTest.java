package fitworthy.printout.words;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
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
                      brakes: electric, lightest: 800 kg, coupling: {trailer: 3500 kg, ball: 350 kg},
                      tyres: {count: 2, load-index: 121}}
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

    /** Whether the bar's maker speaks of the airbags could stop the plan; that the grille is hidden is a note. */
    @Test
    void aNoteDoesNotComeBeforeWhatCouldStopThePlan() throws FaultsException {
        String bar =
                """
                region: au-sa
                papers: {insurer-told: yes, warranty: asked}
                fitments:
                  - {name: Bar, kind: bar, mass: 40 kg +/- 0 kg, at: {x: -700 mm, y: 0 mm, z: 800 mm}, airbag-statement: %s,
                     marked: yes, sensors: none-fitted, plate-visible: yes, lamps-visible: yes, lowest: 500 mm, ahead: 500 mm,
                     grille-hidden: %s}
                jobs: [{name: Aim, kind: lamp-aim}, {name: Camera, kind: calibration}]
                """;
        Arrangement open = Arrangement.of(advice(bar.formatted("ask", "40 %")));
        assertSays(
                Verdict.of(open),
                "Find out first what is missing: 1 check that could stop this plan is not made. 1 note,");
        assertEquals(1, Verdict.leading(open).size());
        Arrangement told = Arrangement.of(advice(bar.formatted("yes", "40 %")));
        assertSays(Verdict.of(told), "Nothing stands in the way. Some points are worth knowing. 1 note");
        assertEquals(List.of(), Verdict.leading(told));
        // A stop that is found comes before one that may be.
        assertSays(
                Verdict.of(Arrangement.of(
                        advice(bar.formatted("ask", "40 %").replace("lamps-visible: yes", "lamps-visible: no")))),
                "Do not go ahead with this plan as it stands.");
    }

    @Test
    void whichOfAnOpenChoiceItIsToldWithIsSaid() throws FaultsException {
        String choice =
                """
                fitments:
                  - {name: Box, kind: other, mass: 40 kg +/- 0 kg, at: {x: 2700 mm, y: 0 mm, z: 700 mm}}
                options: [{name: Storage, %schoices: [{name: without, parts: []}, {name: box, parts: [Box]}]}]
                """;
        assertSays(
                LoadedVerdict.loadedAsChosen(advice(choice.formatted(""))),
                "Choices still open, told here with: without (Storage).");
        assertFalse(LoadedVerdict.loadedAsChosen(advice(choice.formatted("take: box, ")))
                .contains("still open"));
    }

    /** What nobody can bring is told beside the number of all that is missing, where it is more than half of it. */
    @Test
    void whatTheRuleBookLacksIsToldBesideTheNumber() {
        assertEquals(
                "39 checks not made: 33 answers missing, of which the rule book itself lacks 27",
                Verdict.open(new Counts(Map.of(), 0, 39, 33, 27, 0, 0, 0)));
        assertEquals("2 checks not made: 1 answer missing", Verdict.open(new Counts(Map.of(), 0, 2, 1, 0, 0, 0, 0)));
        assertEquals("2 checks not made: 2 answers missing", Verdict.open(new Counts(Map.of(), 0, 2, 2, 1, 0, 0, 0)));
        assertEquals(
                "2 checks not made: 3 answers missing, of which the rule book itself lacks 2",
                Verdict.open(new Counts(Map.of(), 0, 2, 3, 2, 0, 0, 0)));
    }

    @Test
    void aTrailerThatNoLoadingTowsIsSaidWithHowMuchItIsTooHeavy() throws FaultsException {
        String alone = "cases: [{name: alone}]\n";
        String heavy = LoadedVerdict.loaded(advice(VAN.formatted(3100, 310) + alone));
        assertTrue(heavy.endsWith("No loading tows Van; at 3100 kg it is 100 kg too heavy (tow rating)."), heavy);
        String light = LoadedVerdict.loaded(advice(VAN.formatted(2000, 200) + alone));
        assertTrue(light.endsWith("No loading tows Van, so what it does to the vehicle is not checked."), light);
        assertFalse(
                LoadedVerdict.loaded(advice(VAN.formatted(2000, 200))).contains("No loading"),
                "the one loading tows it");
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
                LoadedVerdict.loaded(advice(at.formatted(5519))),
                "What Van weighs is not known; at its plate, the most it may weigh (3000 kg), it would be over: GCM by 1 kg (");
        assertFalse(LoadedVerdict.loaded(advice(at.formatted(5520))).contains("at its plate"), "just at it");
        assertFalse(
                LoadedVerdict.loaded(
                                advice(at.replace("mass: ask", "mass: 2900 kg").formatted(5519)))
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
        assertSays(LoadedVerdict.loaded(advice(two.formatted(40))), "GVM by 100 kg (packed; 60 kg empty)");
        assertSays(LoadedVerdict.loaded(advice(three.formatted(40))), "GVM by 100 kg (packed; less in 2)");
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
        String over = LoadedVerdict.loaded(advice(kit + "vehicle: {ratings: {gvm: 2400 kg}}"));
        assertTrue(over.contains("within its ratings once Kit is approved; least spare"), over);
        assertTrue(over.endsWith(" Until then over: GVM by 120 kg (everything aboard)."), over);
        String kept = LoadedVerdict.loaded(advice(kit + "vehicle: {ratings: {gvm: 2520 kg}}"));
        assertTrue(
                kept.endsWith(" Until then within its ratings too, least spare: GVM 0 kg (everything aboard)."), kept);
    }

    /** 2520 kg +/- 28 kg until then: 24 kg spare or 11 kg over is no more than a guess, 28 kg of either is sure. */
    @Test
    void whatIsTooCloseToCallUntilTheKitIsApprovedIsSaid() throws FaultsException {
        String plan =
                """
                fitments: [{name: Kit, kind: rating-upgrade, mass: 0 kg, gvm: 3000 kg}]
                cargo: [{name: Luggage, mass: 60 kg +/- 28 kg}]
                vehicle: {ratings: {gvm: %s}}
                """;
        Map.of(
                        "2544 kg", "too close to call: GVM 24 kg spare +/- 28 kg (everything aboard).",
                        "2520.2 kg", "too close to call: GVM nothing to spare +/- 28 kg (everything aboard).",
                        "2509.2 kg", "too close to call: GVM over by 11 kg +/- 28 kg (everything aboard).",
                        "2548 kg", "within its ratings too, least spare: GVM 28 kg (everything aboard).",
                        "2492 kg", "over: GVM by 28 kg (everything aboard).")
                .forEach((gvm, told) -> assertDoesNotThrow(() -> {
                    String loaded = LoadedVerdict.loaded(advice(plan.formatted(gvm)));
                    assertTrue(loaded.endsWith(" Until then " + told), loaded);
                    assertFalse(loaded.contains("approved or not"), loaded);
                }));
        String unknown = LoadedVerdict.loaded(advice(plan.formatted("unknown")));
        assertTrue(unknown.endsWith(" Until then not known: GVM."), unknown);
    }

    /** Sure by 4 kg in one loading, by more than that but less than can be known in the other. */
    @Test
    void whatIsSureInOneLoadingIsToldAsSure() throws FaultsException {
        String plan =
                """
                vehicle: {ratings: {gvm: 2516 kg}}
                cargo:
                  - {name: Luggage, mass: 60 kg +/- 0 kg}
                  - {name: Camp gear, mass: 6 kg +/- 14 kg, at: {x: 2700 mm, y: 0 mm, z: 900 mm}}
                cases: [{name: light, carrying: [Luggage]}, {name: full}]
                """;
        assertEquals(
                "Loaded as planned it is over its ratings: GVM by 4 kg (light; further, but too close to call: full).",
                LoadedVerdict.loaded(advice(plan)));
        assertTrue(
                LoadedVerdict.loaded(advice(plan.replace("2516", "2520")))
                        .startsWith(
                                "Loaded as planned it is too close to call whether it is within its ratings: GVM over by"
                                        + " 6 kg +/- 14 kg (full)."),
                LoadedVerdict.loaded(advice(plan.replace("2516", "2520"))));
    }

    /** Surely over by 60 kg in one loading, and kept by 8 kg +/- 14 kg in the other: that is no pass either. */
    @Test
    void aLoadingInWhichItIsKeptByTooLittleIsToldBesideTheOther() throws FaultsException {
        String plan =
                """
                vehicle: {ratings: {gvm: 2528 kg}}
                cargo:
                  - {name: Luggage, mass: 60 kg +/- %d kg}
                  - {name: Camp gear, mass: 68 kg +/- 0 kg, at: {x: 2700 mm, y: 0 mm, z: 900 mm}}
                cases: [{name: light, carrying: [Luggage]}, {name: full}]
                """;
        assertEquals(
                "Loaded as planned it is over its ratings: GVM by 60 kg (full). Too close to call: GVM 8 kg spare +/- 14 kg"
                        + " (light).",
                LoadedVerdict.loaded(advice(plan.formatted(14))));
        assertEquals(
                "Loaded as planned it is over its ratings: GVM by 60 kg (full).",
                LoadedVerdict.loaded(advice(plan.formatted(8))));
        assertEquals("", LoadedVerdict.keptElsewhere(advice(plan.formatted(14))));
        assertEquals(" GVM: light 8 kg below it.", LoadedVerdict.keptElsewhere(advice(plan.formatted(8))));
    }

    /** 2520 kg loaded; what is spare is told to the safe side, in whole kilograms. */
    @Test
    void aLimitThatIsJustKeptLeavesNothingToSpare() throws FaultsException {
        String gvm = "vehicle: {ratings: {gvm: %s}}\n";
        assertSays(
                LoadedVerdict.loaded(advice(gvm.formatted("2521 kg"))), "; least spare: GVM 1 kg (everything aboard).");
        assertSays(
                LoadedVerdict.loaded(advice(gvm.formatted("2520.5 kg"))),
                "; nothing to spare: GVM (everything aboard).");
        assertSays(
                LoadedVerdict.loaded(advice(gvm.formatted("2520 kg +/- 15 kg"))),
                "; nothing to spare +/- 15 kg: GVM (everything aboard)");
        assertSays(LoadedVerdict.loaded(advice(gvm.formatted("2519 kg"))), "over its ratings: GVM by 1 kg");
    }

    /** 2520 kg and a van of 2900 kg, of which 290 kg are on the ball: a GCM of 5420 kg is just kept. */
    @Test
    void theTrailerAsPlannedIsToldWhereTheTwoAreOver() throws FaultsException {
        String at = VAN.formatted(2900, 290).replace("350 kg}}}\n", "350 kg}}, ratings: {gcm: %d kg}}\n");
        assertEquals("", LoadedVerdict.overWithTrailer(advice(at.formatted(5420))));
        assertEquals(
                " With the trailer as planned it is over: GCM by 1 kg (everything aboard).",
                LoadedVerdict.overWithTrailer(advice(at.formatted(5419))));
        assertEquals(
                " With the trailer as planned it is over: braked trailer (the vehicle's tow rating) by 1 kg.",
                LoadedVerdict.overWithTrailer(advice(VAN.formatted(3001, 290))));
    }

    /**
     * 60 kg as far behind the trailer's axles as these are behind the ball leave 160 kg on it, and with 1191.05 kg 1415.05 kg on
     * the rear axle; 5 kg more or less on the ball are 7 kg there.
     */
    @Test
    void whatIsOverOnTheWayIsSaid() throws FaultsException {
        String van =
                """
                vehicle: {ratings: {rear-axle: %s kg}, tow-bar: {plate: {trailer: 3500 kg, ball: 350 kg}}}
                trailer: {name: Camper, mass: 1400 kg +/- 0 kg, ball: %s, rated: 2000 kg, gtm: 1900 kg, brakes: electric,
                  axle: 3000 mm, coupling: {trailer: 3500 kg, ball: 350 kg}, tyres: {count: 2, load-index: 121},
                  supplies: [{name: Tank, mass: 60 kg +/- 0 kg, behind: 6000 mm +/- 0 mm}]}
                """;
        assertSays(
                LoadedVerdict.loaded(advice(van.formatted("1410", "100 kg +/- 0 kg"))),
                " On the way, as tanks and supplies are used up, it is over: rear axle limit by 5.1 kg (everything aboard).");
        assertSays(
                LoadedVerdict.loaded(advice(van.formatted("1420", "100 kg +/- 5 kg"))),
                " On the way, as tanks and supplies are used up, too close to call: rear axle limit 4 kg spare +/- 7 kg"
                        + " (everything aboard).");
        String kept = LoadedVerdict.loaded(advice(van.formatted("1423", "100 kg +/- 5 kg")));
        assertFalse(kept.contains("On the way"), kept);
    }

    /** 290 kg on a ball rated for 300 kg: less is spare than of the tow rating, 100 kg, or of any axle. */
    @Test
    void theRatingThatTheVerdictNamesIsInTheTable() throws FaultsException {
        Advice ball = advice(VAN.formatted(2900, 290));
        assertTrue(
                LoadedVerdict.loaded(ball).contains("least spare: ball load limit 10 kg"), LoadedVerdict.loaded(ball));
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
