package fitworthy.figures.body;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.quantity.Figure;
import org.junit.jupiter.api.Test;

class BatteryVentTest {

    private static final Figure TWELVE_VOLTS = Figure.of(12, 0);
    private static final Figure HUNDRED_AMPERE_HOURS = Figure.of(100, 0);

    /**
     * The factors as a battery maker's page quotes them from EN 50272-3 (second-hand): dilution 24, 0.42e-3 m3 of
     * hydrogen an ampere-hour, safety 5, six cells, 2 A for 100 Ah. The page rounds their product 0.0504 to 0.05.
     */
    @Test
    void theAirIsWhatTheFactorsOfTheStandardMake() {
        double byFactors = 24 * 0.42e-3 * 5 * 6 * 2;
        assertEquals(
                byFactors,
                BatteryVent.air(TWELVE_VOLTS, HUNDRED_AMPERE_HOURS, true).value(),
                0.01 * byFactors);
    }

    /** By hand, our arithmetic: 0.05 x 6 x 2 = 0.60 m3/h, times 28 is 16.8 cm2; half of that with valves. */
    @Test
    void aHundredAmpereHoursAskForSeventeenSquareCentimetresOrHalfWithValves() {
        assertEquals(
                16.8e-4,
                BatteryVent.area(TWELVE_VOLTS, HUNDRED_AMPERE_HOURS, true).value(),
                1e-12);
        assertEquals(
                8.4e-4,
                BatteryVent.area(TWELVE_VOLTS, HUNDRED_AMPERE_HOURS, false).value(),
                1e-12);
    }

    /**
     * An engineer's page gives the stationary standard's form, 0.05 n I C / 1000 with I in mA for each Ah
     * (second-hand): 20 mA for a flooded battery being boosted make the same 0.60 m3/h.
     */
    @Test
    void theStationaryFormAgrees() {
        double stationary = 0.05 * 6 * 20 * 100 / 1000;
        assertEquals(
                stationary,
                BatteryVent.air(TWELVE_VOLTS, HUNDRED_AMPERE_HOURS, true).value(),
                1e-12);
    }
}
