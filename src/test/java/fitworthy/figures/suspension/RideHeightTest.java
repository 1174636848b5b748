package fitworthy.figures.suspension;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.quantity.Figure;
import org.junit.jupiter.api.Test;

class RideHeightTest {

    private static Figure metres(double value) {
        return Figure.of(value, 0);
    }

    /** A magazine on Queensland's rules (second-hand): 50 mm by the springs and 50 mm of tyre diameter make 75 mm. */
    @Test
    void springsCountInFullAndTyresByHalf() {
        assertEquals(
                75 * 0.001,
                RideHeight.lift(metres(0.05), metres(0), metres(0.8263 - 0.7763))
                        .value(),
                0);
    }

    /** 67.25 mm, in millimetres and by way of inches. */
    @Test
    void halfATenthGoesUpInAnyUnit() {
        assertEquals(
                0.0673,
                RideHeight.lift(metres(40 * 0.001), metres(0), metres(0.8308 - 0.7763))
                        .value(),
                1e-12);
        assertEquals(
                0.0673,
                RideHeight.lift(metres(0.067249999999999), metres(0), metres(0)).value(),
                1e-12);
    }

    @Test
    void smallerTyresTakeFromALift() {
        assertEquals(
                0.055,
                RideHeight.lift(metres(0.04), metres(0.025), metres(-0.02)).value(),
                1e-12);
    }
}
