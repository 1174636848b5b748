package fitworthy.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TotalTest {

    private static final Missing MASS = new Missing("tanks.Main.mass", "the mass of the tank", "its data sheet");
    private static final Missing PLACE = new Missing("tanks.Main.at", "where the tank is", "a tape");

    /** Tolerances of independent figures add as the root of the sum of squares: JCGM 100:2008, 5.1.2, from memory. */
    @Test
    void addsTolerancesAsTheRootOfTheirSquares() {
        Figure sum = Total.of(Stream.of(Figure.of(10, 3), Figure.of(20, 4), Figure.of(5, 12)));
        assertEquals(Figure.of(35, 13), sum);
    }

    @Test
    void nothingComesToNothing() {
        assertEquals(Figure.of(0, 0), Total.of(Stream.of()));
    }

    /** 76.2 mm are 3 in by the international inch of 25.4 mm. */
    @Test
    void whatCancelsIsNothing() {
        assertEquals(
                0,
                Total.of(Stream.of(Figure.of(3 * 0.0254), Figure.of(-0.0762))).value());
    }

    @Test
    void lacksWhatAnyOfItLacks() {
        Total total = new Total();
        total.add(Figure.missing(MASS));
        total.add(Double.NaN, Figure.of(2), Figure.missing(PLACE));
        total.add(Figure.of(7));
        assertFalse(total.figure().known());
        assertEquals(List.of(PLACE, MASS), total.within(1).missing());
    }

    @Test
    void aNumberAddsNoTolerance() {
        Total total = new Total();
        total.add(Figure.of(4, 2));
        total.add(6, Figure.of(2, 1), Figure.of(3, 1));
        assertEquals(Figure.of(10, 2), total.figure());
        assertEquals(Figure.of(10, 5), total.within(5));
    }
}
