package fitworthy.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.sheet.Figure;
import org.junit.jupiter.api.Test;

/** No comparison with what is no number holds, so that a rule would be called met by it. */
class MeasureTest {

    private static final MeasureKind LOAD = MeasureKind.rated("mass.load", "kg", 0, "load", "its limit");

    @Test
    void whatADivisionByZeroLeavesIsNotKnown() {
        Figure none = Figure.of(0, 0).dividedBy(Figure.of(0, 0));
        Figure endless = Figure.of(1, 0).dividedBy(Figure.of(0, 0));
        Figure one = Figure.of(1, 0);
        for (Measure each : new Measure[] {Measure.of(LOAD, "axle", "", none), Measure.of(LOAD, "axle", "", endless),
            Measure.of(LOAD, "axle", "", none, one), Measure.of(LOAD, "axle", "", one, endless),
            Measure.of(LOAD, "axle", "", Figure.of(1, Double.POSITIVE_INFINITY)),
            Measure.enough(LOAD, "axle", "", none)}) {
            assertFalse(each.isKnown(), each.toString());
            assertEquals("load, for which the figures of the sheet give no number", each.missing().get(0).meaning());
        }
        assertTrue(Measure.of(LOAD, "axle", "", one, Figure.of(0)).isKnown());
    }

    @Test
    void lastBitOfAToleranceTurnsNothing() {
        assertEquals(0.3, Measure.of(LOAD, "axle", "", Figure.of(1, 0.1 + 0.2)).getTolerance(), 0);
    }
}
