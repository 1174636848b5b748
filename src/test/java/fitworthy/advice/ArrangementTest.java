package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Check;
import fitworthy.book.Consequence;
import fitworthy.book.Severity;
import fitworthy.source.FaultsException;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Checks over several loadings, the heaviest neither first nor last. The plain wagon without load weighs 2460 kg. */
class ArrangementTest {

    private static final Check GVM = new Check("mass.gvm-over", "vehicle");

    /** Four loadings of 3000 kg GVM, by what is carried in them. */
    private static Arrangement carrying(int light, int heavy, int middle) throws FaultsException {
        return arranged(
                """
                cargo:
                  - {name: Light, mass: %d kg +/- 0 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}}
                  - {name: Heavy, mass: %d kg +/- 0 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}}
                  - {name: Middle, mass: %d kg +/- 0 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}}
                cases:
                  - {name: light, carrying: [Light]}
                  - {name: heavy, carrying: [Heavy]}
                  - {name: heavy again, carrying: [Heavy]}
                  - {name: middle, carrying: [Middle]}
                """
                        .formatted(light, heavy, middle));
    }

    private static Arrangement arranged(String changes) throws FaultsException {
        return Arrangement.of(Adviser.advise(Books.engine(), Sheets.plainWith(changes)));
    }

    private static <O extends Assessed> Group<O> gvm(List<Group<O>> groups) {
        return groups.stream()
                .filter(group -> group.outcomes().get(0).check().equals(GVM))
                .findFirst()
                .orElseThrow();
    }

    private static long margin(Assessed outcome) {
        return Math.round(outcome.comparison().orElseThrow().margin());
    }

    @Test
    void theWorstFindingOfACheckLeavesLeast() throws FaultsException {
        Group<Outcome.Finding> group = gvm(carrying(560, 660, 600).findings());
        assertEquals("heavy", group.worst().judged().loadCase());
        assertEquals(-120, margin(group.worst()));
        assertEquals(Severity.STOP, group.severity());
    }

    @Test
    void theClosestOfWhatIsMetLeavesLeast() throws FaultsException {
        Group<Outcome.Met> group = gvm(carrying(100, 300, 200).met());
        assertEquals("heavy", group.worst().judged().loadCase());
        assertEquals(240, margin(group.worst()));
    }

    @Test
    void loadingsWithTheSameFiguresStandTogether() throws FaultsException {
        assertEquals(
                Map.of(-20L, List.of("light"), -120L, List.of("heavy", "heavy again"), -60L, List.of("middle")),
                gvm(carrying(560, 660, 600).findings()).loadings(ArrangementTest::margin));
    }

    @Test
    void whatIsMetByTopicIsThatOfTheLoadingThatLeavesLeast() throws FaultsException {
        Outcome.Met met = carrying(100, 300, 200)
                .metByTopic()
                .get("mass")
                .get("mass.gvm-over")
                .get(0);
        assertEquals("heavy", met.judged().loadCase());
    }

    @Test
    void theLeastMarginOfALimitIsThatOfTheHeaviestLoading() throws FaultsException {
        Margin gvm = carrying(560, 660, 100).margins().stream()
                .filter(margin -> margin.limit().equals("vehicle: GVM"))
                .findFirst()
                .orElseThrow();
        assertEquals(
                List.of("light", "heavy", "heavy again", "middle"),
                List.copyOf(gvm.left().keySet()));
        assertEquals(-120, gvm.least(), 1e-6);
        assertEquals(440, gvm.left().get("middle"), 1e-6);
    }

    @Test
    void aCheckCountsOnceOverAllAndOnceInEachLoading() throws FaultsException {
        Arrangement arrangement = carrying(100, 660, 100);
        long inAll = arrangement.findings().stream()
                .filter(group -> group.severity() == Severity.STOP)
                .count();
        assertEquals(inAll, arrangement.counts().found(Severity.STOP));
        assertEquals(
                arrangement.advice().findings().stream()
                        .filter(finding -> finding.judged().card().severity().is(Severity.STOP))
                        .filter(finding -> finding.judged().loadCase().equals("heavy"))
                        .count(),
                arrangement.counts("heavy").found(Severity.STOP));
        assertEquals(0, arrangement.counts("light").found(Severity.STOP));
    }

    @Test
    void whatIsWaivedInOneLoadingStandsInTheOthers() throws FaultsException {
        Arrangement arrangement = arranged(
                """
                cargo:
                  - {name: Heavy, mass: 660 kg +/- 0 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}}
                cases: [{name: first}, {name: second}]
                waivers:
                  - {rule: mass.gvm-over, subject: vehicle, in: first, reason: Weighed, by: Sam Fitter, until: 2026-12-31}
                """);
        assertEquals(List.of("first"), loadings(gvm(arrangement.waived())));
        assertEquals(List.of("second"), loadings(gvm(arrangement.standing())));
        assertEquals(List.of("first", "second"), loadings(gvm(arrangement.findings())));
        assertEquals(1, arrangement.counts("first").waived());
        assertEquals(1, arrangement.counts().waived());
    }

    /** Of one severity what cannot be undone comes before what can hurt, and that before what breaks a rule. */
    @Test
    void ofOneSeverityTheGravestConsequenceComesFirst() throws FaultsException {
        List<String> changes = arranged(PLATES).findings().stream()
                .filter(group -> group.severity() == Severity.CHANGE)
                .map(group -> group.card().follows().name())
                .toList();
        assertEquals(
                changes.stream()
                        .sorted(Comparator.comparing(Consequence::valueOf))
                        .toList(),
                changes);
        assertEquals(List.of("INJURY", "FORMAL"), changes.stream().distinct().toList());
    }

    /** Of stops as grave, what is sure comes before what is guessed and what is too close, then what is heaviest. */
    @Test
    void ofWhatIsAsGraveTheSureAndTheHeaviestComeFirst() throws FaultsException {
        String over = "vehicle: {ratings: {gvm: %s, front-axle: 1320 kg, rear-axle: 1180 kg, gcm: 4000 kg}}\n";
        assertEquals(
                List.of("vehicle 20", "rear axle 11", "front axle 9"),
                overloads(arranged(over.formatted("2500 kg"))),
                "the heaviest first");
        assertEquals(
                List.of("rear axle 11", "front axle 9", "vehicle 20"),
                overloads(arranged(over.formatted("about 2500 kg +/- 10 kg"))),
                "what rests on a guess after what is stated");
        assertEquals(
                List.of("rear axle 11", "front axle 9", "vehicle 20"),
                overloads(arranged(over.formatted("2500 kg +/- 60 kg"))),
                "what is too close to call last");
    }

    /** A guess that may clear a change puts it behind what is sure, whatever comes of it; a stop never waits for it. */
    @Test
    void whatBetterFiguresMayClearComesLastOfItsSeverity() throws FaultsException {
        assertEquals(List.of("radio.in-sight", "across.no-plate"), whipOrPlate("0 mm"), "too close, but stated");
        assertEquals(
                List.of("across.no-plate", "radio.in-sight, guesses decide"),
                whipOrPlate("about 0 mm"),
                "a guess decides");
        assertEquals(
                List.of("radio.in-sight", "across.no-plate"),
                whipOrPlate("about -300 mm"),
                "no guess so near can clear it");
        Arrangement stop = arranged("vehicle: {ratings: {gvm: about 2500 kg +/- 60 kg}}\n");
        assertFalse(stop.findings().stream()
                .filter(group -> group.severity() == Severity.STOP)
                .anyMatch(stop::isDecidedByGuesses));
    }

    /** No plate is to be seen, and a whip stands so far aside on a bar; ten degrees of the driver's view are at 27 mm. */
    private static List<String> whipOrPlate(String aside) throws FaultsException {
        Arrangement arrangement = arranged("vehicle: {view: {eye: {x: 1450 mm, y: -370 mm, z: 1450 mm}}}\n" + PLATES
                + "  - {name: Whip, kind: aerial, mass: 0.5 kg, at: {x: -800 mm, y: %s, z: 1200 mm}, place: bar}\n"
                        .formatted(aside));
        return arrangement.findings().stream()
                .filter(group -> Set.of("radio.in-sight", "across.no-plate").contains(group.id()))
                .map(group -> group.id() + (arrangement.isDecidedByGuesses(group) ? ", guesses decide" : ""))
                .toList();
    }

    /**
     * The ball carries 30 kg too much, 1140 mm behind an axle 2850 mm behind the other: 42 kg on the rear axle. Where that is over by
     * no more the ball comes first, since it clears the axle too.
     */
    @Test
    void whatComesOffTheBallIsToldFirstWhereItClearsTheRearAxle() throws FaultsException {
        String towing =
                """
                vehicle: {ratings: {ball: 220 kg, rear-axle: %s kg}, tow-bar: {plate: {trailer: 3000 kg, ball: 300 kg}}}
                trailer: {name: Van, mass: 2400 kg +/- 0 kg, ball: 250 kg +/- 0 kg, rated: 3000 kg, gtm: 2700 kg, brakes: electric,
                  coupling: {trailer: 3000 kg, ball: 300 kg}}
                cases: [{name: towing, towing: yes}]
                """;
        double rear = arranged(towing.formatted(1000)).findings().stream()
                .filter(group -> group.id().equals("mass.axle-over"))
                .mapToDouble(group -> group.worst().judged().measure().getValue())
                .findFirst()
                .orElseThrow();
        assertEquals(
                List.of("towing.ball-over", "mass.axle-over"),
                ballAndAxle(towing.formatted(String.format(Locale.ROOT, "%.1f", rear - 41))));
        assertEquals(
                List.of("mass.axle-over", "towing.ball-over"),
                ballAndAxle(towing.formatted(String.format(Locale.ROOT, "%.1f", rear - 43))));
    }

    private static List<String> ballAndAxle(String changes) throws FaultsException {
        return arranged(changes).findings().stream()
                .map(Group::id)
                .filter(Set.of("towing.ball-over", "mass.axle-over")::contains)
                .toList();
    }

    private static List<String> overloads(Arrangement arrangement) {
        return arrangement.findings().stream()
                .filter(group -> group.id().startsWith("mass.") && group.severity() == Severity.STOP)
                .map(group -> group.worst().judged().subject() + " " + -margin(group.worst()))
                .toList();
    }

    @Test
    void whatBelongsToOneMistakeIsToldOnceWithItsParts() throws FaultsException {
        Arrangement arrangement = arranged(PLATES);
        assertEquals(
                List.of("across.no-plate: body.plate-gone front.plate-hidden", "front.lamps-alone: front.lamps-alone"),
                parts(arrangement.told(Severity.CHANGE)));
        assertEquals(
                List.of("front.lamps-alone: front.lamps-alone"),
                parts(arranged(PLATES + "  - {name: Cover, kind: tray, mass: 0 kg, rear: {plate: own}}\n")
                        .told(Severity.CHANGE)),
                "no plate is hidden at the rear");
    }

    /** Each of the two plates is then told by itself. */
    @Test
    void nothingIsToldUnderAFindingThatIsWaived() throws FaultsException {
        assertEquals(
                List.of("front.lamps-alone: front.lamps-alone"),
                parts(arranged(
                                PLATES
                                        + """
                                        waivers:
                                          - {rule: across.no-plate, subject: Bar, reason: Show car, by: Sam Fitter, until: 2026-12-31}
                                        """)
                        .told(Severity.CHANGE)));
    }

    /** Both plates hidden, and two pairs of lamps wired wrongly. */
    private static final String PLATES =
            """
            fitments:
              - {name: Bar, kind: bar, mass: 0 kg, plate-visible: no}
              - {name: Left lamps, kind: lamps, mass: 0 kg, count: 1, with-main-beam: no}
              - {name: Right lamps, kind: lamps, mass: 0 kg, count: 1, with-main-beam: no}
              - {name: Tray, kind: tray, mass: 0 kg, rear: {plate: hidden}}
            """;

    @Test
    void whatIsToldOfASeverityLeavesTheMilderOut() throws FaultsException {
        Arrangement arrangement = arranged(PLATES + "vehicle: {ratings: {gvm: 2500 kg}}\n");
        Set<Severity> all = severities(arrangement.told());
        assertTrue(all.containsAll(Set.of(Severity.STOP, Severity.CHANGE)), all::toString);
        assertTrue(all.size() > 2, all::toString);
        assertEquals(Set.of(Severity.STOP, Severity.CHANGE), severities(arrangement.told(Severity.CHANGE)));
        assertEquals(Set.of(Severity.STOP), severities(arrangement.told(Severity.STOP)));
        assertTrue(arrangement.finds(Severity.STOP));
        assertFalse(arranged(PLATES).finds(Severity.STOP));
    }

    private static Set<Severity> severities(List<Arrangement.Told> told) {
        return told.stream().flatMap(Arrangement.Told::all).map(Group::severity).collect(Collectors.toSet());
    }

    /** Every finding is told once: as a heading or under one; what is waived is no heading to be counted. */
    @Test
    void everyFindingIsAHeadingOrToldUnderOne() throws FaultsException {
        Arrangement arrangement = arranged(PLATES);
        List<Group<Outcome.Finding>> told =
                arrangement.told().stream().flatMap(Arrangement.Told::all).toList();
        assertEquals(arrangement.findings().size(), told.size());
        assertEquals(Set.copyOf(arrangement.findings()), Set.copyOf(told));
        assertEquals(3, arrangement.headings().under());
        assertEquals(
                told.size() - 3,
                arrangement.headings().found().values().stream()
                        .mapToLong(Long::longValue)
                        .sum());
        Arrangement waived = arranged(
                PLATES + "waivers: [{rule: front.lamps-alone, reason: Show car, by: Sam Fitter, until: 2026-12-31}]\n");
        assertEquals(2, waived.headings().under());
        assertEquals(
                arrangement.headings().of(Severity.CHANGE) - 1,
                waived.headings().of(Severity.CHANGE));
    }

    @Test
    void aGroupIsWaivedWhereEachOfItsLoadingsIs() throws FaultsException {
        String heavy =
                """
                vehicle: {ratings: {gvm: 2400 kg}}
                cases: [{name: first}, {name: second}]
                waivers:
                """;
        String waiver =
                "  - {rule: mass.gvm-over, subject: vehicle, in: %s, reason: Weighed, by: Sam Fitter, until: 2026-12-31}\n";
        assertFalse(gvm(arranged(heavy + waiver.formatted("first")).findings()).isWaived());
        Group<Outcome.Finding> both = gvm(arranged(heavy + waiver.formatted("first") + waiver.formatted("second"))
                .findings());
        assertTrue(both.isWaived());
        assertEquals(
                List.of(List.of("first"), List.of("second")),
                List.copyOf(both.waivers().values()));
        assertEquals("mass.gvm-over", both.id());
        assertFalse(gvm(carrying(100, 300, 200).met()).isWaived(), "what is met has no waiver");
    }

    /** Two of the front axle and two of the rear axle, of the loading that leaves least, that subject first. */
    @Test
    void ofWhatIsMetTheSubjectWithLeastLeftComesFirst() throws FaultsException {
        Map<String, List<Outcome.Met>> mass =
                carrying(100, 300, 200).metByTopic().get("mass");
        List<Outcome.Met> axles = mass.get("mass.axle-over");
        assertEquals(2, axles.size());
        assertTrue(margin(axles.get(0)) < margin(axles.get(1)));
        assertEquals(
                List.of("heavy", "heavy"),
                axles.stream().map(met -> met.judged().loadCase()).toList());
        assertTrue(mass.keySet().stream().allMatch(rule -> rule.startsWith("mass.")));
    }

    /** The rear axle's limit is wanted by two checks of each of two loadings, and by one that no loading changes. */
    @Test
    void figuresAreCountedOnceAndChecksOnceASubject() throws FaultsException {
        Arrangement arrangement =
                arranged("vehicle: {ratings: {rear-axle: }}\ncases: [{name: first}, {name: second}]\n");
        Advice advice = arrangement.advice();
        assertEquals(5, advice.notAssessed().size());
        assertEquals(3, arrangement.counts().notAssessed());
        assertEquals(2, arrangement.counts("second").notAssessed());
        assertEquals(1, arrangement.counts("").notAssessed());
        for (Counts counts : List.of(arrangement.counts(), arrangement.counts("second"), arrangement.counts(""))) {
            assertEquals(1, counts.figuresMissing());
            assertEquals(0, counts.waived());
            assertEquals(0, counts.found(Severity.STOP));
        }
        assertEquals(0, arrangement.counts("third").figuresMissing());
        long met = advice.met().stream().map(Outcome::check).distinct().count();
        long off = advice.doesNotApply().stream().map(Outcome::check).distinct().count();
        assertTrue(met < advice.met().size() && off > 0);
        assertEquals(met, arrangement.counts().met());
        assertEquals(off, arrangement.counts().doesNotApply());
        assertEquals(
                met, arrangement.counts("").met() + arrangement.counts("first").met(), "of a loading or of none");
        assertTrue(arrangement.counts("").met() > 0);
    }

    @Test
    void aFindingThatIsWaivedIsCountedAsSuchAlone() throws FaultsException {
        Arrangement arrangement = arranged(
                """
                vehicle: {ratings: {gvm: 2597 kg}}
                waivers: [{rule: mass.gvm-tight, reason: Weighed, by: Sam Fitter, until: 2026-12-31}]
                """);
        assertEquals(0, arrangement.counts().found(Severity.NOTE));
        assertEquals(1, arrangement.counts().waived());
    }

    private static List<String> parts(List<Arrangement.Told> told) {
        return told.stream()
                .filter(each -> !each.parts().isEmpty())
                .map(each -> each.head().id() + ": "
                        + each.parts().stream().map(Group::id).sorted().collect(Collectors.joining(" ")))
                .sorted()
                .toList();
    }

    private static List<String> loadings(Group<Outcome.Finding> group) {
        return group.outcomes().stream()
                .map(finding -> finding.judged().loadCase())
                .toList();
    }
}
