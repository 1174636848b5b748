package fitworthy.figures.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.sheet.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The table of masses: 100 +/- 6 kg at 1 m and 50 kg at 4 m of a wheelbase of 4 m. */
class MassWorkingsTest {

    private static final Figure UNKNOWN = Figure.missing(new Missing("cargo.Box.mass", "its mass", "a scale"));

    private static PointMass mass(String name, Figure mass, double x) {
        return new PointMass(
                name, Sort.CARGO, mass, new Point(Figure.of(x, 0), Figure.of(0, 0), Figure.of(1, 0)), false);
    }

    private static final List<PointMass> TWO =
            List.of(mass("Bar", Figure.of(100, 6), 1), mass("Wheel", Figure.of(50, 0), 4));

    @Test
    void eachMassHasWhatItPutsOnEitherAxle() {
        Working working = MassWorkings.axles(TWO, Figure.of(4, 0));
        assertTrue(working.listsMasses());
        assertEquals(
                List.of(
                        "front = mass x (1 - at / wheelbase), rear = mass x at / wheelbase, wheelbase = 4000 mm",
                        Working.row("", "mass", "+/-", "at", "front", "rear"),
                        Working.row("", "kg", "kg", "mm", "kg", "kg"),
                        Working.row("Bar", "100.0", "6.0", "1000", "75.0", "25.0"),
                        Working.row("Wheel", "50.0", "0.0", "4000", "0.0", "50.0"),
                        Working.row("sum", "150.0", "6.0", "", "75.0", "75.0"),
                        Working.row("its tolerance", "", "", "", "4.5", "1.5")),
                working.lines());
    }

    @Test
    void theCentreIsTheMomentOverTheMass() {
        assertEquals(
                List.of(
                        "x = 1000 x moment / mass, of the sums of moment = mass x at / 1000",
                        Working.row("", "mass", "at", "moment"),
                        Working.row("", "kg", "mm", "kg m"),
                        Working.row("Bar", "100.0", "1000", "100.0"),
                        Working.row("Wheel", "50.0", "4000", "200.0"),
                        Working.row("sum", "150.0", "", "300.0")),
                MassWorkings.centre(TWO, "x", mass -> mass.at().x()).lines());
    }

    @Test
    void whatIsNotKnownIsAQuestionMark() {
        List<String> lines = MassWorkings.axles(List.of(mass("Box", UNKNOWN, 1)), Figure.of(4, 0))
                .lines();
        assertEquals(Working.row("Box", "?", "?", "1000", "?", "?"), lines.get(3));
    }
}
