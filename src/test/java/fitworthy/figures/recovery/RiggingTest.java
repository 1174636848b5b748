package fitworthy.figures.recovery;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.sheet.RecoveryDetails.Held;
import fitworthy.sheet.RecoveryDetails.Shackles;
import org.junit.jupiter.api.Test;

/** Balance of forces at a block, worked by hand: both parts of the line pull with 4300 kg, together with 8600 kg. */
class RiggingTest {

    private static final Rigging SINGLE = new Rigging(Figure.of(4300, 10), false);
    private static final Rigging DOUBLED = new Rigging(Figure.of(4300, 10), true);

    private static Shackles at(Held place) {
        return new Shackles(Figure.of(4750, 0), Choice.of(place));
    }

    @Test
    void aBlockBearsItsLineTwice() {
        assertEquals(8600, DOUBLED.farEnd().value());
        assertEquals(20, DOUBLED.farEnd().tolerance());
        assertEquals(8600, DOUBLED.at(at(Held.BLOCK)).value());
    }

    @Test
    void theEndOfTheLineAndASingleLineBearItOnce() {
        assertEquals(4300, DOUBLED.at(at(Held.LINE_END)).value());
        assertEquals(4300, SINGLE.farEnd().value());
        assertEquals(4300, SINGLE.at(at(Held.BLOCK)).value());
    }

    @Test
    void shacklesThatDoNotSayWhatTheyHoldAreAtTheBlock() {
        assertEquals(
                8600,
                DOUBLED.at(new Shackles(Figure.of(4750, 0), Choice.missing(null)))
                        .value());
    }
}
