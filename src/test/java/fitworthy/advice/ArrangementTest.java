package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Check;
import fitworthy.book.Severity;
import fitworthy.source.FaultsException;
import java.util.List;
import java.util.Map;
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

    private static List<String> loadings(Group<Outcome.Finding> group) {
        return group.outcomes().stream()
                .map(finding -> finding.judged().loadCase())
                .toList();
    }
}
