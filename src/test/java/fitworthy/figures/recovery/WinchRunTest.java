package fitworthy.figures.recovery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import org.junit.jupiter.api.Test;

class WinchRunTest {

    private static double minutes(double battery, double winch, double alternator) {
        return 60
                * WinchRun.hours(Figure.of(battery, 0), Figure.of(winch, 0), Figure.of(alternator, 0))
                        .value();
    }

    /**
     * By hand: an alternator of 130 A gives 97.5 A hot (an inverter maker's guide, 25 % less), so a winch of 397.5 A
     * takes 300 A from the battery; 50 Ah, half of 100 Ah, last a sixth of an hour.
     */
    @Test
    void halfOfAHundredAmpereHoursLastsTenMinutesAtThreeHundredAmperes() {
        assertEquals(10, minutes(100, 397.5, 130), 1e-9);
    }

    @Test
    void aWinchThatTheAlternatorFeedsAloneRunsWithoutEnd() {
        assertEquals(Double.POSITIVE_INFINITY, minutes(50, 75, 100));
        assertEquals(Double.POSITIVE_INFINITY, minutes(50, 60, 100));
    }

    @Test
    void anUnknownCurrentLeavesTheTimeUnknown() {
        assertFalse(WinchRun.hours(Figure.of(50), Figure.missing(new Missing("current", "", "")), Figure.of(100))
                .known());
    }
}
