package fitworthy.figures.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
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

    /** A question that hangs on an answer that was not given lacks that answer, whether a number or a word answers it. */
    @Test
    void anAnswerThatIsAskedIsLacking() {
        Choice<YesNo> asked = Choice.missing(new Missing("vehicle.open", "whether it is open", "the vehicle"));
        MeasureKind kind = MeasureKind.yesNo("mass.how", "how it is done");
        Measure number = Measure.of(LOAD, "axle", Figure.of(800, 10), Figure.of(900, 0));
        Measure word = Measure.of(kind, "axle", Choice.of(YesNo.YES)).in("full");
        assertSame(number, number.given(Choice.of(YesNo.NO)));
        for (Measure each : new Measure[] {number.given(asked), word.given(Choice.of(YesNo.NO), asked, asked)}) {
            assertEquals(List.of(asked.missing()), each.missing());
            assertEquals("", each.getWord());
            assertTrue(Double.isNaN(each.getValue()));
        }
        assertEquals("full", word.given(asked).getLoadCase());
        assertEquals(900, number.given(asked).getLimit(), 0);
        assertEquals(10, number.getTolerance(), 0);
        assertEquals(0, number.given(asked).getTolerance(), 0);
    }

    @Test
    void itReadsAsItWouldBeSaid() {
        MeasureKind kind = MeasureKind.yesNo("mass.how", "how it is done");
        assertEquals(
                "mass.how [axle, full] = yes",
                Measure.of(kind, "axle", Choice.of(YesNo.YES)).in("full").toString());
        Figure one = Figure.of(1);
        assertEquals("mass.load [axle] = " + one, Measure.of(LOAD, "axle", one).toString());
        assertEquals(
                "mass.load [axle] = " + one + " of " + one,
                Measure.of(LOAD, "axle", one, one).toString());
    }

    @Test
    void workingsAreKeptInTheOrderInWhichTheyWereAdded() {
        Measure worked = Measure.of(LOAD, "axle", Figure.of(3))
                .worked("load = a + b", Working.in("a", Figure.of(1), "kg"))
                .worked("a = b");
        assertEquals(
                List.of("load = a + b, a = 1 kg", "a = b"),
                worked.workings().stream()
                        .flatMap(each -> each.lines().stream())
                        .toList());
        assertFalse(worked.workings().get(0).listsMasses());
    }
}
