package fitworthy.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.source.FaultsException;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Runs every case of the shipped rule book, tells of each in a test of its own, and checks that they reach every rule. */
class BookCasesTest {

    private static Proof proof;

    @BeforeAll
    static void everyCaseIsRun() throws FaultsException {
        proof = Proof.of(Books.RULES, Books.engine(), LocalDate.of(2026, 12, 1), run -> {});
    }

    @TestFactory
    Stream<DynamicTest> everyCaseGivesTheAdviceItNames() {
        return proof.trials().stream()
                .map(trial -> DynamicTest.dynamicTest(
                        trial.text().toString(),
                        () -> assertTrue(
                                trial.problems().isEmpty(),
                                () -> trial.text().place() + "\n  " + String.join("\n  ", trial.problems()))));
    }

    @Test
    void noCaseIsLeftOut() throws FaultsException {
        assertEquals(
                Books.cases().stream().map(Cases.Case::toString).toList(),
                proof.trials().stream().map(trial -> trial.text().toString()).toList());
    }

    /**
     * Also is each comparison turned both ways, so that none can be deleted unseen, and no value is due to be looked
     * at.
     */
    @Test
    void everyRuleFiresInACaseAndIsMetInAnotherNearItsLimit() {
        assertEquals(List.of(), proof.faults());
        assertEquals(List.of(), proof.reminders());
    }
}
