package fitworthy.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.learn.LeastSquares.Rows;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LeastSquaresTest {

    private static final double NOTHING = Double.POSITIVE_INFINITY;
    private static final int BAR = 0;
    private static final int RACK = 1;

    private static Rows row(double observed, double variance, Map<Integer, double[]> effects) {
        return new Rows(new double[] {observed}, new double[][] {{variance}}, effects);
    }

    private static double[] one() {
        return new double[] {1};
    }

    /**
     * A bar and a rack, weighed within a standard deviation of 1 kg: the bar alone shows 4 kg more than is written for it,
     * the rack alone 1 kg, both together 8 kg. With rows (1 0), (0 1), (1 1) the sum of squares is least where
     *
     * <pre>
     * 2 bar +   rack = 4 + 8 = 12
     *   bar + 2 rack = 1 + 8 =  9      so   bar = (2 x 12 - 9) / 3 = 5,  rack = (2 x 9 - 12) / 3 = 2.
     * </pre>
     *
     * What is left over is -1, -1 and +1 kg: squares of 3 with one reading more than unknowns. The inverse of (2 1; 1 2)
     * is (2 -1; -1 2) / 3, so each has a variance of 2/3 kg2 and an interval of 1.96 x sqrt(2/3) = 1.600 kg either way, and
     * the two go against each other by -1/2.
     */
    @Test
    void twoPartsAndThreeWeighings() {
        LeastSquares solution = LeastSquares.of(
                List.of(
                        row(4, 1, Map.of(BAR, one())),
                        row(1, 1, Map.of(RACK, one())),
                        row(8, 1, Map.of(BAR, one(), RACK, one()))),
                new double[] {NOTHING, NOTHING});
        assertEquals(5, solution.value(BAR), 1e-9);
        assertEquals(2, solution.value(RACK), 1e-9);
        assertEquals(1.600, solution.within(BAR), 0.0005);
        assertEquals(-0.5, solution.correlation(BAR, RACK), 1e-9);
        assertEquals(3, solution.scatter(), 1e-9);
        assertEquals(1, solution.free());
        assertFalse(solution.scatters());
    }

    /** A reading of variance 4 counts a quarter: (4 x 1 + 9 x 1/4) / (1 + 1/4) = 5, with a variance of 1 / 1.25 = 0.8. */
    @Test
    void aSurerReadingCountsMore() {
        LeastSquares solution = LeastSquares.of(
                List.of(row(4, 1, Map.of(BAR, one())), row(9, 4, Map.of(BAR, one()))), new double[] {NOTHING});
        assertEquals(5, solution.value(BAR), 1e-9);
        assertEquals(1.95996 * Math.sqrt(0.8), solution.within(BAR), 1e-4);
    }

    /** An axle that is known within 1 kg beforehand takes half of what a reading of the same weight shows. */
    @Test
    void whatIsKnownBeforehandCountsAsAReading() {
        LeastSquares solution = LeastSquares.of(List.of(row(4, 1, Map.of(0, one()))), new double[] {1});
        assertEquals(2, solution.value(0), 1e-9);
        assertEquals(1, solution.free());
    }

    @Test
    void whatAlwaysComesTogetherIsNotTold() {
        LeastSquares solution = LeastSquares.of(
                List.of(
                        row(4, 1, Map.of(0, one(), 1, one())),
                        row(5, 1, Map.of(0, one(), 1, one(), 2, one())),
                        row(3, 1, Map.of(0, one(), 1, one()))),
                new double[] {NOTHING, NOTHING, NOTHING});
        assertFalse(solution.tells(0));
        assertFalse(solution.tells(1));
        assertTrue(solution.tells(2));
        assertEquals(List.of(1), solution.mixedWith(0));
        assertEquals(List.of(0), solution.mixedWith(1));
        assertEquals(1.5, solution.value(2), 1e-9);
    }

    @Test
    void readingsThatScatterTooMuchWidenTheInterval() {
        List<Rows> rows = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            rows.add(row(i % 2 == 0 ? 5 : -5, 1, Map.of(BAR, one())));
        }
        LeastSquares solution = LeastSquares.of(rows, new double[] {NOTHING});
        assertTrue(solution.scatters());
        // Squares of 20 x 25 over 19, and 2.093 standard deviations for 19 left over.
        assertEquals(2.093 * Math.sqrt(500.0 / 19 / 20), solution.within(BAR), 0.001);
    }

    /** Six parts in forty weighings of two axles whose errors hang together; two thousand fleets. */
    @Test
    void intervalsHoldAsOftenAsTheySay() {
        Random random = new Random(20261128);
        int held = 0;
        int asked = 0;
        for (int run = 0; run < 2000; run++) {
            double[] more = random.doubles(6, -15, 15).toArray();
            List<Rows> rows = new ArrayList<>();
            for (int i = 0; i < 40; i++) {
                rows.add(made(more, random));
            }
            LeastSquares solution =
                    LeastSquares.of(rows, new double[] {NOTHING, NOTHING, NOTHING, NOTHING, NOTHING, NOTHING});
            for (int part = 0; part < more.length; part++) {
                asked++;
                held += Math.abs(solution.value(part) - more[part]) <= solution.within(part) ? 1 : 0;
            }
        }
        assertEquals(0.95, held / (double) asked, 0.01);
    }

    /** Errors: 5 kg of each axle, and 8 kg of a load in the middle that is in both. */
    private static Rows made(double[] more, Random random) {
        double load = 4 * random.nextGaussian();
        double[] observed = {load + 5 * random.nextGaussian(), load + 5 * random.nextGaussian()};
        Map<Integer, double[]> effects = new HashMap<>();
        for (int part = 0; part < more.length; part++) {
            if (random.nextBoolean()) {
                double[] onRows = {1 - part / 5.0, part / 5.0};
                effects.put(part, onRows);
                observed[0] += onRows[0] * more[part];
                observed[1] += onRows[1] * more[part];
            }
        }
        return new Rows(observed, new double[][] {{41, 16}, {16, 41}}, effects);
    }
}
