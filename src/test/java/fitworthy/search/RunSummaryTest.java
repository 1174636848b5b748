package fitworthy.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Adviser;
import fitworthy.advice.Outcome.Key;
import fitworthy.search.RunSummary.Gap;
import fitworthy.source.FaultsException;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RunSummaryTest {

    private static final Key A = new Key("a", "car", "");
    private static final Terms NOTHING = new Terms(Map.of(), Optional.empty(), Map.of(), Map.of(), Map.of(), 0, 0);
    private static final Gap OPEN = new Gap("a", "");

    private static RunSummary summary(Map<Key, Double> margins, Set<Key> stops, Map<Gap, Long> open) {
        return new RunSummary(margins, stops, stops, Set.of(), open, Map.of(), NOTHING);
    }

    /** The wagon weighs 2520 kg: 20 over a GVM of 2500, 480 within one of 3000. */
    @Test
    void whatIsLeftOfALimitIsTakenFromFindingsAndWhatIsMet() throws FaultsException {
        RunSummary over =
                RunSummary.of(Adviser.advise(Books.engine(), Sheets.plainWith("vehicle: {ratings: {gvm: 2500 kg}}")));
        RunSummary within = RunSummary.of(Adviser.advise(Books.engine(), Sheets.plainWith("title: within")));
        Key gvm = over.stops().iterator().next();
        assertEquals(Set.of(gvm), over.stops());
        assertTrue(over.findings().contains(gvm));
        assertEquals("mass.gvm-over", gvm.rule());
        assertEquals(-20, over.margin(gvm), 1e-6);
        assertEquals(480, within.margin(gvm), 1e-6);
        assertEquals(500, within.gain(over, gvm), 1e-6);
        assertFalse(within.findings().contains(gvm));
    }

    @Test
    void aQuestionThatNoLongerArisesLeavesRoomWithoutEnd() {
        RunSummary asked = summary(Map.of(A, -3.0), Set.of(), Map.of());
        RunSummary gone = summary(Map.of(), Set.of(), Map.of());
        assertEquals(Double.POSITIVE_INFINITY, gone.gain(asked, A));
        assertEquals(0, gone.gain(gone, A), "not the difference of two infinities");
    }

    @Test
    void nothingIsOpenedWhereAsManySubjectsLackAFigureAsBefore() {
        RunSummary before = summary(Map.of(), Set.of(), Map.of(OPEN, 2L));
        assertTrue(summary(Map.of(), Set.of(), Map.of(OPEN, 2L)).opensNothing(before));
        assertTrue(summary(Map.of(), Set.of(), Map.of()).opensNothing(before));
        assertFalse(summary(Map.of(), Set.of(), Map.of(OPEN, 3L)).opensNothing(before));
        assertFalse(summary(Map.of(), Set.of(), Map.of(new Gap("b", ""), 1L)).opensNothing(before));
    }

    @Test
    void aStopIsNewUnlessThePlanHadIt() {
        RunSummary before = summary(Map.of(), Set.of(A), Map.of());
        assertTrue(summary(Map.of(), Set.of(), Map.of()).stopsNothingNew(before));
        assertTrue(summary(Map.of(), Set.of(A), Map.of()).stopsNothingNew(before));
        assertFalse(
                summary(Map.of(), Set.of(A, new Key("b", "car", "")), Map.of()).stopsNothingNew(before));
    }
}
