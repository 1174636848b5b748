package fitworthy.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class DerivedTest {

    /** By hand: x squared at 3 +/- 0.1 moves from 8.41 to 9.61, so by 0.6 either way; 4 y moves by 0.8; together 1. */
    @Test
    void anInputThatStandsTwiceIsCountedOnce() {
        Figure result = Derived.of(in -> in[0] * in[0] + 4 * in[1], Figure.of(3, 0.1), Figure.of(5, 0.2));
        assertEquals(29, result.value(), 1e-12);
        assertEquals(1.0, result.tolerance(), 1e-9);
    }

    @Test
    void whatAnyInputLacksIsLacking() {
        Missing first = new Missing("a", "a", "a");
        Missing second = new Missing("b", "b", "b");
        assertEquals(
                List.of(first, second),
                Derived.of(in -> in[0], Figure.missing(second), Figure.of(1, 0), Figure.missing(first))
                        .missing());
    }
}
