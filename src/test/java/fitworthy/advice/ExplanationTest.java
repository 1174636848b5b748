package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.proof.Cases;
import fitworthy.proof.Cases.Case;
import fitworthy.source.FaultsException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class ExplanationTest {

    /** The engine is the reference: over every case of the book an explanation must agree with what fired. */
    @Test
    void explanationsAgreeWithTheEngineOnEveryCase() throws FaultsException {
        int compared = 0;
        for (Case each : Cases.read(Books.RULES, Books.shipped())) {
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

    @Test
    void theFirstFalseComparisonIsNamed() throws FaultsException {
        Advice advice = Adviser.advise(Books.engine(), Sheets.plainWith("title: fine"));
        Explanation explanation = Explanation.of(advice, "mass.gvm-over").get(0);
        assertFalse(explanation.holds());
        assertEquals(
                List.of("known: true", "headroom < 0: false"),
                explanation.steps().get(0).checks().stream()
                        .map(check -> check.comparison() + ": " + check.holds())
                        .toList());
    }

    @Test
    void aRuleThatFiredShowsThePracticeValueItUsed() throws FaultsException {
        Advice advice = Adviser.advise(Books.engine(), Sheets.plainWith("vehicle: {ratings: {gvm: 2597 kg}}"));
        Explanation explanation = Explanation.of(advice, "mass.gvm-tight").get(0);
        assertTrue(explanation.holds());
        assertEquals("mass.gvm-reserve", explanation.steps().get(0).wanted().key());
        assertTrue(explanation.steps().stream().allMatch(Explanation.Step::holds));
    }
}
