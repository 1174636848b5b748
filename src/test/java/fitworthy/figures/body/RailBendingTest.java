package fitworthy.figures.body;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.figures.plan.PointMass;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Point;
import org.junit.jupiter.api.Test;

class RailBendingTest {

    private static final double G = 9.81;

    /** The handbooks' beam on two supports under a load between them: {@code M = P a b / L} under the load. From memory. */
    @Test
    void agreesWithABeamOnTwoSupports() {
        assertEquals(200 * G * 1.2 * 1.8 / 3, moment(200, 1.2, 1.2, 3), 1e-9);
    }

    /**
     * A worked example of a page for civil engineers (read, "a simply supported beam of 8 m long has a point load of 10
     * kN at its centre",
     * https://civilguruvu.com/q-a-simply-supported-beam-of-8-m-long-has-a-point-load-of-10-kn-at-its-centre-determine-the-reactions-of-supports-and-maximum-bending-moment):
     * supports of 5 kN, "Max BM occurs at C = 20 kNm".
     */
    @Test
    void agreesWithAWorkedExampleOfABeam() {
        assertEquals(20e3, moment(10e3 / G, 4, 4, 8), 1e-6);
    }

    /** Beside the load it falls in a straight line to nothing at the supports: {@code M = P b x / L}. */
    @Test
    void fallsToNothingAtTheSupports() {
        assertEquals(200 * G * 1.8 * 0.6 / 3, moment(200, 1.2, 0.6, 3), 1e-9);
        assertEquals(200 * G * 1.2 * 0.9 / 3, moment(200, 1.2, 2.1, 3), 1e-9);
        assertEquals(0, moment(200, 1.2, 3, 3), 1e-9);
    }

    /** The handbooks' beam that hangs over: {@code M = -P a} at the support, and {@code -P a x / L} between the supports. */
    @Test
    void agreesWithABeamThatHangsOver() {
        assertEquals(-100 * G * 0.7, moment(100, 3.7, 3, 3), 1e-9);
        assertEquals(-100 * G * 0.7 * 1.5 / 3, moment(100, 3.7, 1.5, 3), 1e-9);
        assertEquals(-100 * G * 0.2, moment(100, 3.7, 3.5, 3), 1e-9);
    }

    /** What is weighed at its axles does what its parts do: 500 kg at 0.4 m and 300 kg at 2.6 m, looked at from 2 m. */
    @Test
    void aVehicleDoesWhatItsPartsDo() {
        double onRear = (500 * 0.4 + 300 * 2.6) / 3;
        double own = RailBending.own(Figure.of(onRear), Figure.of(300), Figure.of(2.6), Figure.of(2), Figure.of(3))
                .value();
        assertEquals(moment(500, 0.4, 2, 3) + moment(300, 2.6, 2, 3), own, 1e-9);
    }

    /**
     * A crane maker's table of truck frames prints 10.2 in3 for a channel of 10 by 1.5 by 3/8 in, and 11.9 in3 for 11 in
     * (seen, page 133 of https://www.easymanua.ls/manitowoc/national-crane-500e2/manual/809105).
     */
    @Test
    void agreesWithATableOfChannels() {
        assertEquals(10.2, channel(10), 0.05);
        assertEquals(11.9, channel(11), 0.05);
    }

    private static double channel(double depth) {
        return RailBending.modulus(Figure.of(depth), Figure.of(1.5), Figure.of(1.5 - 0.375), Figure.of(0.375))
                .value();
    }

    private static double moment(double mass, double x, double at, double wheelbase) {
        Point place = new Point(Figure.of(x), Figure.of(0), Figure.of(1));
        PointMass load = new PointMass("load", PointMass.Sort.CARGO, Figure.of(mass), place, Choice.of(YesNo.NO), 0);
        return RailBending.of(load, Figure.of(at), Figure.of(wheelbase)).value();
    }
}
