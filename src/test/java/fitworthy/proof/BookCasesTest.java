package fitworthy.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.source.FaultsException;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Runs every case of the shipped rule book as a test of its own, and checks that they reach every rule. */
class BookCasesTest {

    @TestFactory
    Stream<DynamicTest> everyCaseGivesTheAdviceItNames() throws FaultsException {
        return Cases.read(Books.RULES, Books.shipped()).stream()
                .map(each -> DynamicTest.dynamicTest(each.toString(), () -> {
                    List<String> problems = CaseResult.of(Books.engine(), each).problems();
                    assertTrue(problems.isEmpty(), () -> each.place() + "\n  " + String.join("\n  ", problems));
                }));
    }

    /**
     * Also is each comparison turned both ways, so that none can be deleted unseen, and no value is due to be looked
     * at.
     */
    @Test
    void everyRuleFiresInACaseAndIsMetInAnotherNearItsLimit() throws FaultsException {
        Proof proof = Proof.of(Books.RULES, Books.engine(), LocalDate.of(2026, 11, 25), run -> {});
        assertEquals(List.of(), proof.faults());
        assertEquals(List.of(), proof.reminders());
    }
}
