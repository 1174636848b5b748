package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.source.FaultsException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The plain wagon weighs 2520 kg; of its GVM 3 % should be left. */
class AdviceTest {

    private static Advice advise(String changes) throws FaultsException {
        return Adviser.advise(Books.engine(), Sheets.plainWith(changes));
    }

    @Test
    void whatIsWorseThanANoteOrLacksAFigureAsksForAction() throws FaultsException {
        Advice plain = advise("title: plain");
        assertFalse(plain.asksForAction());
        assertEquals("none", plain.worstWord());
        Advice tight = advise("vehicle: {ratings: {gvm: 2597 kg}}");
        assertEquals("note", tight.worstWord());
        assertFalse(tight.asksForAction());
        Advice over = advise("vehicle: {ratings: {gvm: 2500 kg}}");
        assertEquals("stop", over.worstWord());
        assertTrue(over.asksForAction());
        Advice open = advise("vehicle: {ratings: {gvm: }}");
        assertEquals("none", open.worstWord());
        assertTrue(open.asksForAction());
    }

    @Test
    void everythingThatIsSaidIsAmongTheOutcomesTheFindingsFirst() throws FaultsException {
        Advice advice = advise("vehicle: {ratings: {gvm: 2500 kg, rear-axle: }}");
        List<Outcome> all = advice.outcomes().toList();
        assertEquals(
                advice.findings().size()
                        + advice.notAssessed().size()
                        + advice.met().size()
                        + advice.doesNotApply().size(),
                all.size());
        assertEquals(advice.findings().get(0), all.get(0));
        assertTrue(all.containsAll(advice.notAssessed()));
    }
}
