package fitworthy.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a value is meant, and how far a guess may be off. */
class MarkTest {

    private static final Missing FIELD = new Missing("cargo.Tent.mass", "what it weighs", "a scale");

    @ParameterizedTest
    @CsvSource({
        "95 kg, STATED, 95 kg",
        "about 95 kg, ABOUT, 95 kg",
        "about  no, ABOUT, no",
        "usual 95 kg, USUAL, 95 kg",
        "usual yes, USUAL, yes",
        "usual, USUAL, ''",
        "unusual 95 kg, STATED, unusual 95 kg",
        "ask, ASKED, ''",
        "unknown, ASKED, ''",
        "about, STATED, about",
        "ask them, STATED, ask them",
        "About 95 kg, STATED, About 95 kg"
    })
    void isReadOffTheValue(String written, Mark mark, String text) {
        assertEquals(new Mark.Marked(mark, text), Mark.read(written));
    }

    /** By hand: 15 % of 100 kg, 10 % of 3 m, 5 % of 0.84, 20 % of 50 A, a place no less than 0.1 m. */
    @ParameterizedTest
    @CsvSource({
        "100, MASS, false, 15",
        "3, LENGTH, false, 0.3",
        "3, LENGTH, true, 0.3",
        "0.9, LENGTH, true, 0.1",
        "-2, LENGTH, true, 0.2",
        "0.84, DENSITY, false, 0.042",
        "50, CURRENT, false, 10",
        "12, VOLTAGE, false, 0.6",
        "20, TEMPERATURE, true, 5",
        "0.9, SHARE, false, 0.09"
    })
    void isOffByAShareUnlessItSays(double value, Dimension dimension, boolean signed, double tolerance) {
        assertEquals(
                tolerance, GuessSpread.of(Figure.of(value), dimension, signed).tolerance(), 1e-12);
        assertEquals(
                0.01, GuessSpread.of(Figure.of(value, 0.01), dimension, signed).tolerance());
    }

    @Test
    void whatIsWorkedOutOfAGuessIsNoneByItself() {
        Figure guess = Figure.of(95, 5).guessedFor(FIELD);
        assertEquals(Optional.of(FIELD), guess.guess());
        assertEquals(95, guess.value());
        assertTrue(guess.known());
        assertEquals(Optional.empty(), guess.plus(Figure.of(5)).guess());
        assertEquals(Optional.empty(), Figure.missing(FIELD).guess());
    }

    @Test
    void anAnswerMayBeOne() {
        Choice<YesNo> guess = Choice.of(YesNo.NO).guessedFor(FIELD);
        assertTrue(guess.known() && guess.is(YesNo.NO));
        assertEquals(Optional.of(FIELD), guess.guess());
        assertEquals(Optional.empty(), Choice.<YesNo>missing(FIELD).guess());
        assertEquals(Optional.empty(), Choice.of(YesNo.NO).guess());
    }
}
