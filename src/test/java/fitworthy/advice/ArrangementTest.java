package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
import java.util.Map;
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
