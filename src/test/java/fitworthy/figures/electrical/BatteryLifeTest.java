package fitworthy.figures.electrical;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.quantity.Figure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BatteryLifeTest {

    private static Figure exact(double value) {
        return Figure.of(value, 0);
    }

    /**
     * A caravan magazine's rule (second-hand): half of a lead-acid battery and nine tenths of a lithium one can be
     * used. A fridge that draws 40 Ah a day empties 100 Ah that far in 50 / 40 = 1.25 and 90 / 40 = 2.25 days.
     */
    @Test
    void aFridgeEmptiesABatteryToItsUsableShareInTheDaysTheRuleGives() {
        assertEquals(0.50, depth(40, 0, 1.25 * 24, 100), 1e-9);
        assertEquals(0.90, depth(40, 0, 2.25 * 24, 100), 1e-9);
    }

    /**
     * A solar supplier's handbook (seen): 2.22 kWh a day for 1 kW in Melbourne's worst month; 200 W are 444 Wh, 37 Ah
     * at 12 V.
     */
    @Test
    void twoHundredWattsGiveThirtySevenAmpereHoursOnAWinterDay() {
        assertEquals(37, BatteryLife.solar(exact(200), exact(2.22), exact(12)).value(), 1e-9);
    }

    /** 19.7 Ah a day, of which 16 hours in the dark: two thirds, however much the sun gives by day. */
    @Test
    void aSunnyStayTakesWhatANightTakes() {
        assertEquals(13.13, depth(19.7, 40, 72, 100) * 100, 0.01);
        assertEquals(13.13, depth(19.7, 19.7, 72, 100) * 100, 0.01);
    }

    /** Stepped through hour by hour from dusk, the battery full. */
    @ParameterizedTest
    @CsvSource({"40, 0, 3", "40, 10, 3", "40, 30, 3", "40, 39, 5", "40, 41, 5", "40, 100, 2", "40, 30, 0.25"})
    void comesToWhatStepsOfAMinuteDo(double drawn, double sun, double days) {
        double left = 0;
        double least = 0;
        int minutes = (int) Math.round(days * 1440);
        for (int i = 0; i < minutes; i++) {
            left -= drawn / 1440;
            if (i % 1440 >= 960) {
                left = Math.min(0, left + sun / 480);
            }
            least = Math.min(least, left);
        }
        assertEquals(-least, depth(drawn, sun, days * 24, 100) * 100, 0.05);
    }

    private static double depth(double drawn, double sun, double parked, double capacity) {
        return BatteryLife.depth(exact(drawn), exact(sun), exact(parked), exact(capacity))
                .value();
    }
}
