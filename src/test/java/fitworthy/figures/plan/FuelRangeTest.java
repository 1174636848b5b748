package fitworthy.figures.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import java.util.List;
import org.junit.jupiter.api.Test;

class FuelRangeTest {

    /**
     * A magazine's worked example: 80 L at 13.3 L/100km last 601.5 km,
     * https://practicalmotoring.com.au/car-advice/how-to-calculate-fuel-consumption-the-right-way/
     */
    @Test
    void eightyLitresLastAsFarAsTheWorkedExampleSays() {
        assertEquals(601_500, FuelRange.metres(Figure.of(80), Figure.of(13.3)).value(), 50);
    }

    /** By hand: 140 L / 17.5 L/100km = 800 km. */
    @Test
    void twoTanksTowingByHand() {
        assertEquals(
                800_000,
                FuelRange.metres(Figure.of(90).plus(Figure.of(50)), Figure.of(17.5))
                        .value(),
                1e-6);
    }

    /** Shares of 3 % and 4 % combine to 5 %. */
    @Test
    void tolerancesOfFuelAndConsumptionCombine() {
        Figure range = FuelRange.metres(Figure.of(100, 3), Figure.of(10, 0.4));
        assertEquals(0.05, range.tolerance() / range.value(), 1e-9);
    }

    @Test
    void withoutAConsumptionThereIsNoRange() {
        Missing log = new Missing("vehicle.engine.consumption", "what it burns", "a fuel log");
        assertEquals(
                List.of(log),
                FuelRange.metres(Figure.of(100), Figure.missing(log)).missing());
    }

    /** By hand: 625 km at 16 L/100km take 100 L. */
    @Test
    void fuelForAWay() {
        assertEquals(
                100, FuelRange.litres(Figure.of(625_000, 0), Figure.of(16, 0)).value(), 1e-9);
    }
}
