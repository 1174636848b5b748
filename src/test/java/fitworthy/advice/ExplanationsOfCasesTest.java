package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.proof.Cases.Case;
import fitworthy.source.FaultsException;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class ExplanationsOfCasesTest {

    /** The engine is the reference: over every case of the book an explanation must agree with what fired. */
    @Test
    void explanationsAgreeWithTheEngineOnEveryCase() throws FaultsException {
        int compared = 0;
        for (Case each : Books.cases()) {
            Advice advice = Adviser.advise(Books.engine(), each.sheet());
            Set<String> fired = new TreeSet<>();
            advice.findings()
                    .forEach(finding -> fired.add(
                            finding.judged().id() + "|" + finding.judged().subject()));
            Set<String> explained = new TreeSet<>();
            Set<String> topicIds = new TreeSet<>(Books.shipped().cards().keySet());
            topicIds.removeIf(id -> !id.startsWith(each.topic() + "."));
            for (String id : topicIds) {
                for (Explanation explanation : Explanation.of(advice, id)) {
                    compared++;
                    if (explanation.holds()) {
                        explained.add(id + "|" + explanation.judged().getSubject());
                    }
                }
            }
            fired.removeIf(id -> !id.startsWith(each.topic() + "."));
            assertEquals(fired, explained, each.toString());
        }
        assertTrue(compared > 1000, "compared " + compared);
    }
}
