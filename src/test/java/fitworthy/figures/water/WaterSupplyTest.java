package fitworthy.figures.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import org.junit.jupiter.api.Test;

class WaterSupplyTest {

    private static final Figure TWO = Figure.of(2, 0);
    private static final Figure WEEK = Figure.of(7 * 24, 0);

    /**
     * A South Australian government leaflet on remote travel (seen): at least 6 L a person and day, and three to four
     * days of reserve. For two people, seven days and four of reserve that is 2 x 6 x 11 = 132 L.
     */
    @Test
    void theLeafletsSupplyForTwoLeavesItsReserveAfterAWeek() {
        assertEquals(
                4 * 24,
                WaterSupply.reserve(Figure.of(132, 0), TWO, Figure.of(6, 0), WEEK)
                        .value(),
                1e-9);
    }

    /**
     * A university course that quotes a relief handbook of 2011 (second-hand): 7.5 L is its least for a person and day.
     */
    @Test
    void theReliefHandbooksLeastIsFoundAgainFromTheSupplyItMakes() {
        double litres = 7.5 * 2 * 7;
        assertEquals(
                7.5,
                WaterSupply.perPersonAndDay(Figure.of(litres, 0), TWO, WEEK).value(),
                1e-9);
    }

    @Test
    void waterThatRunsOutOnTheWayLeavesANegativeReserve() {
        assertEquals(
                -24,
                WaterSupply.reserve(Figure.of(72, 0), TWO, Figure.of(6, 0), WEEK)
                        .value(),
                1e-9);
    }

    /** Common practice, and a page on liquid surge (seen): a full tank cannot move, a half-full one moves most. */
    @Test
    void surgeIsGreatestHalfFullAndNothingInAFullTank() {
        Figure tank = Figure.of(80, 0);
        assertEquals(0, WaterSupply.surge(tank, Figure.of(1, 0)).value(), 1e-9);
        assertEquals(40, WaterSupply.surge(tank, Figure.of(0.5, 0)).value(), 1e-9);
        assertEquals(20, WaterSupply.surge(tank, Figure.of(0.75, 0)).value(), 1e-9);
        assertEquals(20, WaterSupply.surge(tank, Figure.of(0.25, 0)).value(), 1e-9);
    }

    /** A tank of 80 L that is used up passes half, 40 L, from any fill above it; from a quarter it only gets less. */
    @Test
    void aTankThatIsUsedUpPassesItsWorst() {
        Figure tank = Figure.of(80, 0);
        assertEquals(40, WaterSupply.mostSurge(tank, Figure.of(1, 0)).value(), 1e-9);
        assertEquals(40, WaterSupply.mostSurge(tank, Figure.of(0.5, 0)).value(), 1e-9);
        assertEquals(20, WaterSupply.mostSurge(tank, Figure.of(0.25, 0)).value(), 1e-9);
    }

    @Test
    void anUnknownUseLeavesTheReserveUnknown() {
        Figure use = Figure.missing(new Missing("trip.water-use", "use", "the owner"));
        assertFalse(WaterSupply.reserve(Figure.of(72, 0), TWO, use, WEEK).known());
    }

    /** By hand: two people, 6 L each, ten days: 120 L. */
    @Test
    void waterForAWay() {
        assertEquals(
                120, WaterSupply.needed(TWO, Figure.of(6, 0), Figure.of(240, 0)).value(), 1e-9);
    }
}
