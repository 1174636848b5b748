package fitworthy.printout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Arrangement;
import fitworthy.document.Report.Points;
import fitworthy.document.Report.Subheading;
import fitworthy.printout.words.ClearedWords;
import fitworthy.printout.words.Verdict;
import fitworthy.search.Change;
import fitworthy.search.Mender.Mending;
import fitworthy.search.Mender.Offer;
import fitworthy.search.Terms;
import fitworthy.source.FaultsException;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said of a changed plan, the change itself made by hand. The plain wagon without load weighs 2460 kg. */
class ChangeWordsTest {

    private static final String AXLES =
            "vehicle: {ratings: {gvm: 2500 kg, front-axle: 1320 kg, rear-axle: %s, gcm: 4000 kg}}\n";

    private static Advice advice(String changes) throws FaultsException {
        return Adviser.advise(Books.engine(), Sheets.plainWith(changes));
    }

    private static Offer offer(Advice then) {
        return offer("Sand", then);
    }

    private static Offer offer(String left, Advice then) {
        return new Offer(List.of(new Change.LeaveBehind(left)), 0, BigDecimal.ZERO, 0, Terms.of(then), then);
    }

    /** 3000 kg GVM in two loadings. */
    private static Advice carrying(int light, int heavy) throws FaultsException {
        return advice(
                """
                cargo:
                  - {name: Light, mass: %d kg +/- 0 kg, at: {x: 1400 mm, y: 0 mm, z: 900 mm}}
                  - {name: Heavy, mass: %d kg +/- 0 kg, at: {x: 1400 mm, y: 0 mm, z: 900 mm}}
                cases: [{name: light, carrying: [Light]}, {name: heavy, carrying: [Heavy]}]
                """
                        .formatted(light, heavy));
    }

    /** The loading that is cleared leaves 140 kg; what counts is the one that is not. */
    @Test
    void whatIsLeftIsThatOfTheWorstLoading() throws FaultsException {
        Advice planned = carrying(600, 660);
        assertTrue(
                ChangeWords.terms(planned, offer(carrying(400, 600))).stream()
                        .anyMatch(line -> line.startsWith("Left then: ") && line.contains("GVM 60 kg over (heavy)")),
                "still over in one");
        assertTrue(
                ChangeWords.terms(planned, offer(carrying(400, 500))).stream()
                        .anyMatch(line -> line.startsWith("Left then: ") && line.contains("GVM 40 kg spare (heavy)")),
                "within it in both");
    }

    /** 2.5 mm2 of copper bears 30 A behind the dash; 60 A ask for more of it, of which there is too little and not too much. */
    @Test
    void whatIsTooLittleIsShortAndNotOver() throws FaultsException {
        Advice planned = advice(
                """
                fitments: [{name: Fridge, kind: other, mass: 40 kg +/- 0 kg, at: {x: 2900 mm, y: 0 mm, z: 900 mm}}]
                circuits:
                  - {name: Feed, part: Fridge, current: 60 A, fuse: {rating: 70 A, distance: 100 mm},
                     cable: {section: 2.5 mm2, length: 1 m, engine-bay: no, insulation: 105 degC}}
                """);
        String left = ChangeWords.terms(planned, offer(planned)).stream()
                .filter(line -> line.startsWith("Left then: "))
                .findFirst()
                .orElseThrow();
        assertTrue(left.matches(".*Feed \\(least section[^)]*\\) [0-9.]+ mm2 short.*"), left);
        assertFalse(left.contains("mm2 over"), left);
    }

    /** The rear axle is over, then 80 kg further. */
    @Test
    void whatIsWorseIsNamed() throws FaultsException {
        Advice planned = advice(AXLES.formatted("1180 kg"));
        assertTrue(ChangeWords.effects(planned, offer(advice(AXLES.formatted("1100 kg"))))
                .contains("orse: rear axle limit"));
        assertFalse(ChangeWords.effects(planned, offer(planned)).contains("orse: "));
    }

    /** 20 kg over; then 0.4 kg spare, known to 14 kg or not at all in doubt. */
    @Test
    void whatIsClearedByTooLittleIsTooCloseToCall() throws FaultsException {
        String plan = "vehicle: {ratings: {gvm: 2520 kg}}\ncargo: [{name: Luggage, mass: %s}]\n";
        Advice planned = advice(plan.formatted("80 kg +/- 0 kg"));
        assertEquals(
                "Clears 1 stop (Loaded mass is above the GVM). Then too close to call: GVM (everything aboard). No stop"
                        + " remains.",
                ClearedWords.cleared(planned, offer(advice(plan.formatted("59.6 kg +/- 14 kg"))), true));
        assertEquals(
                "Clears 1 stop (Loaded mass is above the GVM). No stop remains.",
                ClearedWords.cleared(planned, offer(advice(plan.formatted("46 kg +/- 14 kg"))), true));
    }

    /** GVM, and both axles told as one: the verdict counts two, and so does what a change leaves. */
    @Test
    void stopsAreCountedAsTheVerdictCountsThem() throws FaultsException {
        Advice planned = advice(AXLES.formatted("1180 kg"));
        assertTrue(Verdict.of(Arrangement.of(planned)).contains(" 2 stops"), Verdict.of(Arrangement.of(planned)));
        assertEquals(
                "Clears part of 1 stop (The rear axle carries more than its limit). 2 stops remain.",
                ClearedWords.cleared(planned, offer(advice(AXLES.formatted("1300 kg"))), true));
        Advice then = advice(AXLES.formatted("1300 kg").replace("1320", "1400"));
        assertEquals(
                "Clears 1 stop (The rear axle carries more than its limit). 1 stop remains.",
                ClearedWords.cleared(planned, offer(then), true));
        assertEquals(
                1,
                ChangeWords.terms(planned, offer(then)).stream()
                        .filter(line -> line.startsWith("Stop that remains: "))
                        .count());
    }

    /** An offer comes first; without one the changes, joined or single, that leave least over, three in all. */
    @Test
    void aQuoteTellsTheFewBestWays() throws FaultsException {
        Advice planned = carrying(600, 660);
        List<Offer> none = List.of();
        List<Offer> clears = List.of(offer(carrying(300, 300)));
        assertEquals(
                "Ways to get within the ratings",
                heading(planned, new Mending(none, clears, none, List.of(), 9, true)));
        List<Offer> lighter = List.of(offer("Stones", carrying(300, 635)));
        List<Offer> best = List.of(
                offer(carrying(600, 650)),
                offer(carrying(600, 700)),
                offer(carrying(600, 610)),
                offer(carrying(600, 637)));
        Mending mending = new Mending(best, none, lighter, List.of(), 9, false);
        assertEquals("What comes nearest to the ratings", heading(planned, mending));
        List<String> ways = ((Points) Changes.ways(planned, mending).get(1)).texts();
        assertEquals(3, ways.size(), ways.toString());
        for (int i = 0; i < 3; i++) {
            assertTrue(ways.get(i).contains("GVM " + List.of(70, 95, 97).get(i) + " kg over (heavy)"), ways.toString());
        }
        assertEquals(3, Changes.ways(planned, mending).size(), "and that not all was tried");
        assertEquals(List.of(), Changes.ways(carrying(100, 100), new Mending(best, none, none, List.of(), 9, true)));
    }

    /** The fuse is 60 A on a cable of 4 mm2 that bears 38; a plan over its GVM is told what gets within the ratings. */
    @Test
    void aQuoteTellsWhatTheStopItselfAsksForBeforeWhatIsGivenUp() throws FaultsException {
        String plan =
                """
                vehicle: {ratings: {gvm: %s}}
                fitments: [{name: Fridge, kind: other, mass: 40 kg +/- 0 kg, at: {x: 2900 mm, y: 0 mm, z: 900 mm}}]
                circuits:
                  - {name: Feed, part: Fridge, current: 12 A, fuse: {rating: 60 A, distance: 100 mm},
                     cable: {section: 4 mm2, length: 5 m, engine-bay: yes, insulation: 105 degC}}
                """;
        Mending mending = new Mending(List.of(offer(advice("title: none"))), List.of(), 1, true);
        Advice planned = advice(plan.formatted("3000 kg"));
        assertEquals("Ways to clear the stops", heading(planned, mending));
        List<String> ways = ((Points) Changes.ways(planned, mending).get(1)).texts();
        assertEquals(
                "What the stop itself asks for clears it: Use the planned 4 mm2 or more and a fuse of 15 A.",
                ways.get(0));
        assertTrue(ways.get(1).startsWith("Leave 'Sand' behind: no stop remains."), ways.get(1));
        Mending nothing = new Mending(List.of(), List.of(), 1, true);
        assertEquals(1, ((Points) Changes.ways(planned, nothing).get(1)).texts().size());
        Advice over = advice(plan.formatted("2550 kg"));
        assertEquals("Ways to get within the ratings", heading(over, mending));
        assertEquals(1, ((Points) Changes.ways(over, mending).get(1)).texts().size());
        Mending nearest = new Mending(mending.offers(), List.of(), List.of(), List.of(), 1, true);
        assertEquals("What comes nearest to the ratings", heading(over, nearest));
        List<String> beside = ((Points) Changes.ways(over, nearest).get(1)).texts();
        assertEquals(2, beside.size(), "a stop that the ways leave is not beyond help");
        assertEquals(ways.get(0), beside.get(1));
    }

    private static String heading(Advice planned, Mending mending) {
        return ((Subheading) Changes.ways(planned, mending).get(0)).text();
    }
}
