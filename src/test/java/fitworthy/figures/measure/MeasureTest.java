package fitworthy.figures.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.quantity.Figure;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** No comparison with what is no number holds, so that a rule would be called met by it. */
class MeasureTest {

    private static final MeasureKind LOAD = MeasureKind.rated("mass.load", "kg", 0, "load", "its limit");

    @Test
    void whatADivisionByZeroLeavesIsNotKnown() {
        Figure none = Figure.of(0, 0).dividedBy(Figure.of(0, 0));
        Figure endless = Figure.of(1, 0).dividedBy(Figure.of(0, 0));
        Figure one = Figure.of(1, 0);
        for (Measure each : new Measure[] {
            Measure.of(LOAD, "axle", none),
            Measure.of(LOAD, "axle", endless),
            Measure.of(LOAD, "axle", none, one),
            Measure.of(LOAD, "axle", one, endless),
            Measure.of(LOAD, "axle", Figure.of(1, Double.POSITIVE_INFINITY)),
            Measure.enough(LOAD, "axle", none)
        }) {
            assertFalse(each.isKnown(), each.toString());
            assertEquals(
                    "load, for which the figures of the sheet give no number",
                    each.missing().get(0).meaning());
        }
        assertTrue(Measure.of(LOAD, "axle", one, Figure.of(0)).isKnown());
    }

    @Test
    void lastBitOfAToleranceTurnsNothing() {
        assertEquals(0.3, Measure.of(LOAD, "axle", Figure.of(1, 0.1 + 0.2)).getTolerance(), 0);
    }

    /** Ten digits as decimal arithmetic has them, at ties, powers of ten and either end of what a double holds too. */
    @Test
    void figuresAreRoundedAsDecimalsAre() {
        MathContext ten = new MathContext(10);
        Random random = new Random(20261126);
        for (int i = 0; i < 100_000; i++) {
            double tie = (Math.floor(random.nextDouble() * 1e10) + 0.5) / Math.pow(10, random.nextInt(14));
            double anywhere = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(60) - 30);
            double power = Math.pow(10, random.nextInt(40) - 20);
            for (double value : new double[] {
                tie,
                Math.nextUp(tie),
                Math.nextDown(tie),
                anywhere,
                power,
                Math.nextUp(power),
                Math.nextDown(power),
                Double.longBitsToDouble(random.nextLong())
            }) {
                if (Double.isFinite(value)) {
                    assertEquals(
                            new BigDecimal(value).round(ten).doubleValue(),
                            Measure.of(LOAD, "axle", Figure.of(value, 0)).getValue(),
                            0.0,
                            () -> "" + value);
                }
            }
        }
    }
}
