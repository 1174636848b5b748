package fitworthy.printout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.source.FaultsException;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class WantedTest {

    private static final String POINT = "{name: %s, kind: recovery-point, mass: 0 kg, end: %s}";

    private static List<Wanted> wanted(String... points) throws FaultsException {
        Advice advice = Adviser.advise(
                Books.engine(),
                Sheets.plainWith(
                        """
                papers: {insurer-told: yes, warranty: asked}
                vehicle: {recovery: {rear: {made-for: recovery, limit: 5000 kg}}}
                fitments: [%s]
                """
                                .formatted(String.join(", ", points))));
        return Wanted.of(advice.notAssessed());
    }

    @Test
    void theSameFigureOfTwoPartsIsAskedForOnce() throws FaultsException {
        assertEquals(
                List.of("fitments: limit of Hook, Eye"),
                wanted(POINT.formatted("Hook", "front"), POINT.formatted("Eye", "rear")).stream()
                        .map(Wanted::what)
                        .toList());
    }

    @Test
    void oneOfItsKindKeepsItsPathAndNamesTheRulesThatWait() throws FaultsException {
        Wanted only = wanted(POINT.formatted("Hook", "front")).get(0);
        assertEquals("fitments.Hook.limit", only.what());
        assertEquals(Set.of("recovery.point-weak"), only.rules());
    }
}
