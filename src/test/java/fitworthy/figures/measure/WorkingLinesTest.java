package fitworthy.figures.measure;

import static fitworthy.figures.measure.Working.in;
import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How a figure's working is written. */
class WorkingLinesTest {

    private static final Figure UNKNOWN = Figure.missing(new Missing("trailer.ball", "load", "scale"));

    @Test
    void aFormulaIsFollowedByWhatIsPutIntoIt() {
        assertEquals(
                List.of("left = GCM - GVM, GCM = 6700 kg, GVM = not known"),
                new Working.Formula(
                                "left = GCM - GVM", List.of(in("GCM", Figure.of(6700), "kg"), in("GVM", UNKNOWN, "kg")))
                        .lines());
        assertEquals(
                "without bound",
                in("range", Figure.of(Double.POSITIVE_INFINITY), "km").shown());
    }

    @Test
    void aSumNamesItsPartsAndIsLeftOutWithoutAny() {
        List<Working.Input> parts = List.of(in("charger", Figure.of(30), "A"), in("lamps", Figure.of(9), "A"));
        assertEquals(List.of("drawn = 30 A (charger) + 9 A (lamps)"), new Working.Sum("drawn", parts).lines());
        assertEquals(39, Working.total(parts).value());
        assertEquals(List.of(), new Working.Sum("drawn", List.of()).lines());
    }

    /** A name in 30 columns, what is told of it in 8 each. */
    @Test
    void aRowSetsItsColumnsToTheRight() {
        assertEquals("Winch" + " ".repeat(25) + "    28.0" + "     900", Working.row("Winch", "28.0", "900"));
        assertEquals("A" + " ".repeat(29) + " 123456789", Working.row("A", "123456789"), "a blank stays between two");
        assertEquals("x".repeat(27) + "...", Working.row("x".repeat(31)));
    }

    /** 28.04 mm to a tenth: 28.0 is not above it, 28.1 not below; what is short of a digit by the last bit is that digit. */
    @Test
    void whatIsPrintedIsOnTheSafeSide() {
        MeasureKind step = MeasureKind.number("intake.step", "mm", 1, "step");
        assertEquals(0.0281, step.printed(0.02804, 1), 1e-12);
        assertEquals(0.0280, step.printed(0.02804, -1), 1e-12);
        assertEquals(0.0280, step.printed(0.028 + 1e-12, 1), 1e-12);
        assertEquals(0.0280, step.printed(0.028 - 1e-12, -1), 1e-12);
        assertEquals(-0.0280, step.printed(-0.02804, 1), 1e-12);
    }
}
