package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Waiving.State;
import fitworthy.book.Severity;
import fitworthy.search.Mender;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The plain wagon with 20 kg too much, in the one loading it has: a stop on the vehicle. Its day is 2026-11-25. */
class WaivingTest {

    private static final String HEAVY = "vehicle: {ratings: {gvm: 2500 kg}}\n";
    private static final String WHOLE = "rule: mass.gvm-over, subject: vehicle, in: everything aboard";

    private static String waivers(String what, String until) {
        return "waivers: [{" + what + ", reason: Weighed again on Friday, by: workshop manager, until: " + until
                + "}]\n";
    }

    private static Advice advise(String changes) throws FaultsException {
        return Adviser.advise(Books.engine(), Sheets.plainWith(changes));
    }

    private static Finding over(Advice advice) {
        return advice.findings().stream()
                .filter(each -> each.judged().id().equals("mass.gvm-over"))
                .findFirst()
                .orElseThrow();
    }

    private static void waivesNothing(State state, Advice advice) {
        assertEquals(
                List.of(state), advice.waivers().stream().map(Waiving::state).toList());
        assertTrue(advice.findings().stream().allMatch(each -> each.waiver().isEmpty()));
    }

    @Test
    void aWaivedStopStaysAmongTheFindingsButDoesNotCount() throws FaultsException {
        assertEquals(Optional.of(Severity.STOP), advise(HEAVY).worst());
        Advice waived = advise(HEAVY + waivers(WHOLE, "2026-12-31"));
        assertEquals("workshop manager", over(waived).waiver().orElseThrow().by());
        assertTrue(over(waived).judged().card().severity().is(Severity.STOP));
        assertEquals(advise(HEAVY).findings().size(), waived.findings().size());
        assertEquals(Optional.empty(), waived.worst());
        assertFalse(waived.asksForAction());
        assertEquals(
                List.of(State.ACTIVE),
                waived.waivers().stream().map(Waiving::state).toList());
    }

    @Test
    void itCountsOnItsLastDayAndNotAfter() throws FaultsException {
        assertTrue(over(advise(HEAVY + waivers(WHOLE, "2026-11-25"))).waiver().isPresent());
        Advice late = advise(HEAVY + waivers(WHOLE, "2026-11-24"));
        waivesNothing(State.EXPIRED, late);
        assertEquals(Optional.of(Severity.STOP), late.worst());
    }

    @Test
    void aStopIsWaivedOnlyForANamedSubjectAndLoading() throws FaultsException {
        for (String wide : List.of(
                "rule: mass.gvm-over",
                "rule: mass.gvm-over, subject: vehicle",
                "rule: mass.gvm-over, in: everything aboard")) {
            Advice advice = advise(HEAVY + waivers(wide, "2026-12-31"));
            waivesNothing(State.TOO_WIDE, advice);
            assertEquals(Optional.of(Severity.STOP), advice.worst(), wide);
        }
    }

    /** A circuit without a fuse is so in every loading, so there is none to name. */
    @Test
    void aStopThatDoesNotDependOnTheLoadingIsWaivedByItsSubjectAlone() throws FaultsException {
        String unfused = "circuits: [{name: Radio, voltage: 12 V, current: 6 A, battery: starter, need: other,"
                + " fuse: {rating: 0 A}}]\n";
        Finding stop = advise(unfused).findings().stream()
                .filter(each -> each.judged().id().equals("electrical.no-fuse"))
                .findFirst()
                .orElseThrow();
        assertEquals("", stop.judged().loadCase());
        assertTrue(stop.judged().card().severity().is(Severity.STOP));
        Advice waived = advise(unfused + waivers("rule: electrical.no-fuse, subject: Radio", "2026-12-31"));
        assertEquals(
                List.of(State.ACTIVE),
                waived.waivers().stream().map(Waiving::state).toList());
        assertEquals(
                List.of("electrical.no-fuse"),
                waived.findings().stream()
                        .filter(each -> each.waiver().isPresent())
                        .map(each -> each.judged().id())
                        .toList());
        waivesNothing(State.TOO_WIDE, advise(unfused + waivers("rule: electrical.no-fuse", "2026-12-31")));
    }

    /** 77 kg left of 2597 kg is less than 3 %: a note, which may be waived wherever it comes up. */
    @Test
    void aMilderFindingMayBeWaivedWhereverItComesUp() throws FaultsException {
        String tight = "vehicle: {ratings: {gvm: 2597 kg}}\n";
        assertEquals(Optional.of(Severity.NOTE), advise(tight).worst());
        assertEquals(
                Optional.empty(),
                advise(tight + waivers("rule: mass.gvm-tight", "2026-12-31")).worst());
    }

    @Test
    void anotherSubjectOrLoadingIsNotWaived() throws FaultsException {
        waivesNothing(
                State.NOTHING_FOUND,
                advise(HEAVY
                        + waivers(
                                "rule: mass.gvm-over, subject: rear axle," + " in: everything aboard", "2026-12-31")));
        waivesNothing(State.NOTHING_FOUND, advise(waivers(WHOLE, "2026-12-31")));
        String cases = "cases: [{name: empty, carrying: []}, {name: laden}]\n";
        Advice advice = advise("vehicle: {ratings: {gvm: 2400 kg}}\n" + cases
                + waivers("rule: mass.gvm-over, subject: vehicle, in: laden", "2026-12-31"));
        assertEquals(
                List.of("laden"),
                advice.findings().stream()
                        .filter(each -> each.waiver().isPresent())
                        .map(each -> each.judged().loadCase())
                        .toList());
        assertEquals(Optional.of(Severity.STOP), advice.worst());
    }

    /** A waiver of a loading that was not looked at is not called idle. */
    @Test
    void aLoadingThatWasNotLookedAtSaysNothingOfItsWaivers() throws FaultsException {
        Advice advice = Adviser.advise(
                Books.engine(),
                Sheets.plainWith("cases: [{name: empty, carrying: []}, {name: laden}]\n"
                        + waivers("rule: mass.gvm-over, subject: vehicle, in: laden", "2026-12-31")),
                Set.of("empty"));
        assertEquals(List.of(), advice.waivers());
    }

    @Test
    void whatIsNotAssessedCannotBeWaived() throws FaultsException {
        Advice advice = advise("vehicle: {ratings: {gvm: }}\n" + waivers(WHOLE, "2026-12-31"));
        waivesNothing(State.NOT_ASSESSED, advice);
        assertTrue(advice.notAssessed().stream()
                .anyMatch(each -> each.judged().id().equals("mass.gvm-over")));
        assertTrue(advice.asksForAction());
    }

    /** A waiver lets a plan go ahead, but takes no kilogram off the axle: mending still offers the way without it. */
    @Test
    void mendingTreatsAWaivedStopAsStillThere() throws FaultsException {
        var tree = Sheets.treeWith(HEAVY + waivers(WHOLE, "2026-12-31"));
        var mending = Mender.mend(Books.engine(), tree, Sheets.read(tree), () -> false, tried -> {});
        assertFalse(mending.offers().isEmpty());
        mending.offers()
                .forEach(offer -> assertTrue(offer.advice().findings().stream()
                        .noneMatch(each -> each.judged().id().equals("mass.gvm-over"))));
    }

    @Test
    void everyFieldButTheScopeIsNeededAndTheRuleAndLoadingHaveToExist() {
        assertEquals(
                4,
                assertThrows(FaultsException.class, () -> advise("waivers: [{subject: vehicle}]"))
                        .faults()
                        .size());
        List<Fault> faults = new ArrayList<>();
        Waiving.check(Sheets.treeWith(waivers("rule: mass.gvm-ovr", "2026-12-31")), book(), faults);
        assertEquals(
                List.of(
                        "waivers.1.rule: the rule book has no rule 'mass.gvm-ovr', the id printed under the very finding"
                                + " that it is to waive; one that is only like it may be another stop"),
                faults.stream()
                        .map(each -> each.path() + ": " + each.problem() + ", " + each.mend())
                        .toList());
        String unknown = assertThrows(
                        FaultsException.class,
                        () -> advise(
                                "cases: [{name: laden}]\n" + waivers("rule: mass.gvm-over, in: landed", "2026-12-31")))
                .getMessage();
        assertTrue(unknown.contains("waivers.1.in: 'landed' is not among the cases (did you mean 'laden'?)"), unknown);
    }

    private static fitworthy.book.Book book() {
        try {
            return Books.shipped();
        } catch (FaultsException e) {
            throw new IllegalStateException(e);
        }
    }
}
