package fitworthy.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.rules.Condition.All;
import fitworthy.rules.Condition.Any;
import fitworthy.rules.Condition.Match;
import fitworthy.rules.Condition.None;
import fitworthy.rules.Condition.Some;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a condition comes to once its 'or' is multiplied out. */
class ConditionTest {

    private static final Match A = new Match("$a", Fact.MEASURE, "mass.loaded", List.of());
    private static final Match B = new Match(null, Fact.MEASURE, "mass.axle", List.of());

    private static final Condition TWO = new Any(List.of(A, B));
    private static final Condition THREE = new Any(List.of(A, TWO));

    @Test
    void anOrAddsAndAnAndMultiplies() {
        assertEquals(1, A.alternatives(50));
        assertEquals(1, new All(List.of(A, B)).alternatives(50));
        assertEquals(2, TWO.alternatives(50));
        assertEquals(3, THREE.alternatives(50));
        assertEquals(6, new All(List.of(TWO, THREE)).alternatives(50));
        assertEquals(5, new Any(List.of(TWO, THREE)).alternatives(50));
        assertEquals(3, new Some(THREE).alternatives(50));
        assertEquals(6, new All(List.of(TWO, new None(THREE))).alternatives(50));
    }

    @Test
    void theyAreCountedToOneMoreThanTheMost() {
        assertEquals(6, new All(List.of(TWO, THREE)).alternatives(6));
        assertEquals(6, new All(List.of(TWO, THREE)).alternatives(5));
        assertEquals(4, new All(Collections.nCopies(40, TWO)).alternatives(3));
        assertEquals(4, new Any(Collections.nCopies(40, A)).alternatives(3));
    }

    @Test
    void whatIsJoinedIsTheLongestAlternativeOutsideNotAndExists() {
        assertEquals(List.of(A), A.joined());
        assertEquals(List.of(A, B), new All(List.of(A, B)).joined());
        assertEquals(List.of(A), new All(List.of(A, new None(B), new Some(B))).joined());
        assertEquals(List.of(A, A, B), new All(List.of(A, new None(new All(List.of(A, B))), new Some(B))).joined());
        assertEquals(
                List.of(A, A, B, B),
                new All(List.of(A, new None(new All(List.of(A, B))), new Some(new All(List.of(A, B, B))))).joined());
        assertEquals(List.of(A, B), new Any(List.of(B, new All(List.of(A, B)))).joined());
        assertEquals(List.of(A, B), new Any(List.of(new All(List.of(A, B)), B)).joined());
    }

    @Test
    void everyPatternIsFoundInTheOrderOfWriting() {
        assertEquals(
                List.of(A, B, B, A), new All(List.of(A, new None(B), new Some(new Any(List.of(B, A))))).patterns());
    }
}
