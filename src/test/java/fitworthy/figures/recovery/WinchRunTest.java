package fitworthy.figures.recovery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import org.junit.jupiter.api.Test;

class WinchRunTest {

    private static double minutes(double battery, double winch, double left) {
        return 60
                * WinchRun.hours(Figure.of(battery, 0), Figure.of(winch, 0), Figure.of(left, 0))
                        .value();
    }

    /**
     * By hand: an alternator of 130 A gives 97.5 A hot (an inverter maker's guide, 25 % less), of which a vehicle that
     * draws 45 A leaves 52.5 A, so a winch of 352.5 A takes 300 A from the battery; 50 Ah, half of 100 Ah, last a sixth
     * of an hour.
     */
    @Test
    void halfOfAHundredAmpereHoursLastsTenMinutesAtThreeHundredAmperes() {
        assertEquals(10, minutes(100, 352.5, 97.5 - 45), 1e-9);
    }

    @Test
    void aWinchThatIsFedByWhatTheVehicleLeavesRunsWithoutEnd() {
        assertEquals(Double.POSITIVE_INFINITY, minutes(50, 75, 75));
        assertEquals(Double.POSITIVE_INFINITY, minutes(50, 60, 75));
    }

    /** By hand: a vehicle that needs 20 A more than the alternator gives takes them from the battery too. */
    @Test
    void aVehicleThatNeedsMoreThanItsAlternatorGivesShortensTheTime() {
        assertEquals(60 * 50 / 300.0, minutes(100, 280, -20), 1e-9);
    }

    @Test
    void anUnknownCurrentLeavesTheTimeUnknown() {
        assertFalse(WinchRun.hours(Figure.of(50), Figure.missing(new Missing("current", "", "")), Figure.of(100))
                .known());
    }
}
