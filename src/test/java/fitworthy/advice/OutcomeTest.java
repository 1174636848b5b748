package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Outcome.Check;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.DoesNotApply;
import fitworthy.advice.Outcome.Met;
import fitworthy.advice.Outcome.Reason;
import fitworthy.book.Practice;
import fitworthy.source.FaultsException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is held against what; left and right of the plain wagon carry the same, where 6 % are allowed. */
class OutcomeTest {

    private static Met met(String id) throws FaultsException {
        return Adviser.advise(Books.engine(), Sheets.plainWith("title: plain")).met().stream()
                .filter(outcome -> outcome.judged().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Practice other(double value) {
        return new Practice("mass.other-most", value, "%", "something else", null, Optional.empty());
    }

    @Test
    void aValueIsHeldAgainstThePracticeValueThatTheCardNames() throws FaultsException {
        Met side = met("mass.lopsided");
        Practice most = side.practice().get(0);
        Met amongOthers = new Met(side.judged(), side.evidence(), List.of(other(99), most, other(98)));
        Comparison comparison = amongOthers.comparison().orElseThrow();
        assertEquals(0.06, comparison.limit(), 1e-9);
        assertEquals(0.06, comparison.margin(), 1e-9);
        assertFalse(comparison.house());
    }

    @Test
    void aHousesValueIsTold() throws FaultsException {
        Met side = met("mass.lopsided");
        Practice most = side.practice().get(0);
        Practice houses = new Practice(
                most.id(),
                0.05,
                most.unit(),
                most.meaning(),
                most.entry(),
                Optional.of(new Practice.HouseValue(null, new Practice.Lookup.NotRecorded(), false)));
        Comparison comparison = new Met(side.judged(), side.evidence(), List.of(other(99), houses))
                .comparison()
                .orElseThrow();
        assertEquals(0.05, comparison.limit(), 1e-9);
        assertTrue(comparison.house());
    }

    @Test
    void aMeasureIsHeldAgainstItsOwnLimitOrAgainstNothing() throws FaultsException {
        assertEquals(480, met("mass.gvm-over").comparison().orElseThrow().margin(), 1e-6);
        assertFalse(met("mass.gvm-over").comparison().orElseThrow().house());
        assertEquals(Optional.empty(), met("fuel.wrong-fuel").comparison());
    }

    @Test
    void onlyWhereTheRestOfTheConditionFailsIsThereSomethingToCompare() throws FaultsException {
        Met gvm = met("mass.gvm-over");
        for (Reason reason : Reason.values()) {
            assertEquals(
                    reason == Reason.GUARD,
                    new DoesNotApply(gvm.judged(), gvm.practice(), reason)
                            .comparison()
                            .isPresent(),
                    reason.name());
        }
        DoesNotApply guarded = new DoesNotApply(gvm.judged(), gvm.practice(), Reason.GUARD);
        assertEquals(480, guarded.comparison().orElseThrow().margin(), 1e-6);
    }

    /** Either side of the limit, by less than the tolerance or by all of it. */
    @Test
    void aVerdictIsUncertainWithinTheTolerance() {
        assertTrue(leaves(1).uncertain());
        assertTrue(leaves(-1).uncertain());
        assertFalse(leaves(2).uncertain());
        assertFalse(leaves(-3).uncertain());
    }

    private static Comparison leaves(double margin) {
        return new Comparison(10, 10 + margin, margin, 2, 0, Optional.empty());
    }

    @Test
    void aCheckIsARuleOnASubject() throws FaultsException {
        assertEquals(new Check("mass.gvm-over", "vehicle"), met("mass.gvm-over").check());
    }

    @Test
    void whyAQuestionDoesNotAriseEndsASentence() {
        assertEquals(
                List.of(
                        "no such limit applies in this region",
                        "the plan has nothing else that it looks at",
                        "another condition of it is not met",
                        "a finding as severe already covers the same measure"),
                Arrays.stream(Reason.values()).map(Reason::words).toList());
    }
}
