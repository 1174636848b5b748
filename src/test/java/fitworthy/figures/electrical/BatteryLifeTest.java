package fitworthy.figures.electrical;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.quantity.Figure;
import org.junit.jupiter.api.Test;

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
        assertEquals(
                0.50, BatteryLife.depth(exact(40), exact(1.25 * 24), exact(100)).value(), 1e-9);
        assertEquals(
                0.90, BatteryLife.depth(exact(40), exact(2.25 * 24), exact(100)).value(), 1e-9);
    }

    /**
     * A solar supplier's handbook (seen): 2.22 kWh a day for 1 kW in Melbourne's worst month; 200 W are 444 Wh, 37 Ah
     * at 12 V.
     */
    @Test
    void twoHundredWattsGiveThirtySevenAmpereHoursOnAWinterDay() {
        assertEquals(37, BatteryLife.solar(exact(200), exact(2.22), exact(12)).value(), 1e-9);
    }

    @Test
    void aSunnyStayTakesNothing() {
        assertEquals(0, BatteryLife.depth(exact(-5), exact(72), exact(100)).value(), 1e-9);
    }
}
