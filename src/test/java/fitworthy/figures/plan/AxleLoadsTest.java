package fitworthy.figures.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.sheet.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

class AxleLoadsTest {

    private static final Figure WHEELBASE = Figure.of(3, 0);

    private static PointMass mass(double kg, double tolerance, double x) {
        return new PointMass(
                "mass",
                Sort.CARGO,
                Figure.of(kg, tolerance),
                new Point(Figure.of(x, 0), Figure.of(0, 0), Figure.of(1, 0)),
                false);
    }

    /**
     * A truck maker's body-builder manual, its model 220 (read, https://www.easymanua.ls/peterbilt/220/manual/63601?p=77):
     * wheelbase 214 in, 100 lb at 133 in behind the front axle. It prints 62.14 lb on the rear and 38.86 lb on the
     * front; the front value does not sum to 100 with it, so the exact 62.15 and 37.85 lb are used here.
     */
    @Test
    void agreesWithTheCorrectedBodyBuilderExample() {
        double inch = 0.0254;
        double pound = 0.45359237;
        AxleLoads loads = AxleLoads.of(List.of(mass(100 * pound, 0, 133 * inch)), Figure.of(214 * inch, 0));
        assertEquals(62.15, loads.rear().value() / pound, 0.005);
        assertEquals(37.85, loads.front().value() / pound, 0.005);
    }

    /**
     * The same manual (read, https://www.easymanua.ls/peterbilt/220/manual/63601?p=81): a load spread evenly over a body
     * of 168 in that begins 72 in behind the front axle, so at 156 in, 14 500 lb in all. It prints 10 570 lb on the rear
     * axle and 3 929.9 lb on the front.
     */
    @Test
    void agreesWithTheBodyBuilderExampleOfALoadedBody() {
        double inch = 0.0254;
        double pound = 0.45359237;
        AxleLoads loads =
                AxleLoads.of(List.of(mass(14_500 * pound, 0, (168 / 2.0 + 72) * inch)), Figure.of(214 * inch, 0));
        assertEquals(10_570, loads.rear().value() / pound, 0.5);
        assertEquals(3_929.9, loads.front().value() / pound, 0.1);
    }

    /**
     * The example of a page on front axle weight (seen, https://codingace.net/physics/front_axle_weight_cal.html), measured
     * from the rear axle: a vehicle of 1800 kg at 135 cm, 160 kg at 205 cm, 250 kg at 60 cm, 50 kg at 145 cm and 90 kg on a
     * hitch at -60 cm have moments of 243000, 32800, 15000, 7250 and -5400 kg cm. It names no wheelbase; 300 cm are ours.
     */
    @Test
    void aLoadedVehicleHasTheMomentsThatArePrinted() {
        AxleLoads loads = AxleLoads.of(
                List.of(
                        mass(1800, 0, 3 - 1.35),
                        mass(160, 0, 3 - 2.05),
                        mass(250, 0, 3 - 0.60),
                        mass(50, 0, 3 - 1.45),
                        mass(90, 0, 3 + 0.60)),
                WHEELBASE);
        assertEquals(
                (243000 + 32800 + 15000 + 7250 - 5400) / 300.0, loads.front().value(), 1e-9);
        assertEquals(2350 - 975.5, loads.rear().value(), 1e-9);
    }

    /**
     * The lever law: 100 kg one metre behind the rear axle of a 3 m wheelbase puts 133.3 kg on it and lifts 33.3 kg.
     */
    @Test
    void aMassBehindTheRearAxleLiftsTheFront() {
        AxleLoads loads = AxleLoads.of(List.of(mass(100, 0, 4)), WHEELBASE);
        assertEquals(400 / 3.0, loads.rear().value(), 1e-9);
        assertEquals(-100 / 3.0, loads.front().value(), 1e-9);
        assertEquals(100, loads.total().value(), 1e-9);
    }

    @Test
    void aMassOverAnAxleLoadsThatAxleAlone() {
        List<PointMass> masses = List.of(mass(80, 0, 0), mass(70, 0, 3));
        AxleLoads loads = AxleLoads.of(masses, WHEELBASE);
        assertEquals(80, loads.front().value(), 1e-9);
        assertEquals(70, loads.rear().value(), 1e-9);
        assertEquals(1.4, Centre.of(masses).x().value(), 1e-9);
    }

    /** Independent tolerances add as the root of squares: 3 and 4 kg over the rear axle make 5 kg. */
    @Test
    void tolerancesOfIndependentMassesAddAsTheRootOfSquares() {
        AxleLoads loads = AxleLoads.of(List.of(mass(100, 3, 3), mass(100, 4, 3)), WHEELBASE);
        assertEquals(5, loads.rear().tolerance(), 1e-9);
        assertEquals(0, loads.front().tolerance(), 1e-9);
        assertEquals(5, loads.total().tolerance(), 1e-9);
    }

    /** A mass of 100 kg whose place is known to 30 mm shifts 1 kg between axles 3 m apart, and nothing of the total. */
    @Test
    void theToleranceOfAPlaceShiftsLoadBetweenAxles() {
        PointMass each = new PointMass(
                "mass",
                Sort.CARGO,
                Figure.of(100, 0),
                new Point(Figure.of(1, 0.03), Figure.of(0, 0), Figure.of(1, 0)),
                false);
        List<PointMass> masses = List.of(each);
        AxleLoads loads = AxleLoads.of(masses, WHEELBASE);
        assertEquals(1, loads.rear().tolerance(), 1e-9);
        assertEquals(1, loads.front().tolerance(), 1e-9);
        assertEquals(0, loads.total().tolerance(), 1e-9);
        assertEquals(0.03, Centre.of(masses).x().tolerance(), 1e-9);
    }

    @Test
    void aMissingMassLeavesTheLoadsMissing() {
        PointMass unknown = new PointMass(
                "ball",
                Sort.BALL,
                Figure.missing(new Missing("trailer.ball", "load", "scale")),
                new Point(Figure.of(4, 0), Figure.of(0, 0), Figure.of(1, 0)),
                false);
        List<PointMass> masses = List.of(mass(100, 0, 1), unknown);
        AxleLoads loads = AxleLoads.of(masses, WHEELBASE);
        assertFalse(loads.rear().known());
        assertEquals("trailer.ball", loads.rear().missing().get(0).path());
        assertEquals("trailer.ball", loads.total().missing().get(0).path());
        assertEquals("trailer.ball", Centre.of(masses).x().missing().get(0).path());
    }

    /** A tank of 20 kg and 40 kg in it, at one place known to 50 mm: 60 x 0.05 / 3 = 1 kg, and not sqrt(5) / 3. */
    @Test
    void massesAtOnePlaceShareItsError() {
        Point place = new Point(Figure.of(1, 0.05), Figure.of(0, 0), Figure.of(1, 0));
        List<PointMass> masses = List.of(
                new PointMass("tank", Sort.TANK, Figure.of(20, 0), place, false),
                new PointMass("liquid", Sort.LIQUID, Figure.of(40, 0), place, false));
        AxleLoads loads = AxleLoads.of(masses, WHEELBASE);
        assertEquals(1, loads.rear().tolerance(), 1e-9);
        assertEquals(1, loads.front().tolerance(), 1e-9);
        assertEquals(0.05, Centre.of(masses).x().tolerance(), 1e-9);
    }

    /** 100 +/- 12 kg in both and 50 +/- 5 kg in one: their difference is known to 5 kg, and not to 17.7. */
    @Test
    void whatIsInBothDoesNotBlurTheDifference() {
        PointMass both = mass(100, 12, 3);
        PointMass one = mass(50, 5, 3);
        AxleLoads difference = AxleLoads.difference(List.of(both, one), List.of(both), WHEELBASE);
        assertEquals(50, difference.rear().value(), 1e-9);
        assertEquals(5, difference.rear().tolerance(), 1e-9);
        AxleLoads weighed = AxleLoads.difference(List.of(both.exact(), one), List.of(both), WHEELBASE);
        assertEquals(50, weighed.rear().value(), 1e-9);
        assertEquals(13, weighed.rear().tolerance(), 1e-9);
    }

    /** 3 kg known to 1 kg in the middle: half a kilogram on each axle, and nothing on one less the other. */
    @Test
    void aSumOfBothAxlesCountsEachMassOnce() {
        List<PointMass> middle = List.of(mass(3, 1, 1.5));
        assertEquals(0.5, AxleLoads.tolerance(middle, WHEELBASE, 1, 0), 1e-9);
        assertEquals(1, AxleLoads.tolerance(middle, WHEELBASE, 1, 1), 1e-9);
        assertEquals(0, AxleLoads.tolerance(middle, WHEELBASE, -1, 1), 1e-9);
    }

    /** 100 kg known to 1 kg, a metre behind the front axle: 2/3 kg from the mass, 100 x 0.1 / 9 kg from a wheelbase of 3 +/- 0.1 m. */
    @Test
    void anUnsureWheelbaseBlursTheLoadsTogetherWithTheMass() {
        AxleLoads loads = AxleLoads.of(List.of(mass(100, 1, 1)), Figure.of(3, 0.1));
        assertEquals(Math.hypot(2 / 3.0, 10 / 9.0), loads.front().tolerance(), 1e-9);
        assertEquals(Math.hypot(1 / 3.0, 10 / 9.0), loads.rear().tolerance(), 1e-9);
    }

    private static PointMass near(Sort sort, double kg) {
        Point at = new Point(Figure.of(3, 0.15), Figure.of(0, 0), Figure.of(1, 0));
        return new PointMass("mass", sort, Figure.of(kg, 0), at, false);
    }

    private static double spread(Sort one, double kg, Sort other, double more) {
        return AxleLoads.of(List.of(near(one, kg), near(other, more)), WHEELBASE)
                .rear()
                .tolerance();
    }

    /** A tub of 200 kg goes and a tray of 220 kg comes, both within 150 mm of the rear axle: 10 and 11 kg, not 1 kg. */
    @Test
    void whatGoesDoesNotSitInWhatComes() {
        assertEquals(Math.hypot(10, 11), spread(Sort.REMOVED, -200, Sort.FITMENT, 220), 1e-9);
        assertEquals(Math.hypot(10, 2), spread(Sort.REMOVED, -200, Sort.CARGO, 40), 1e-9);
        assertEquals(Math.hypot(10, 2), spread(Sort.CARGO, -200, Sort.CARGO, 40), 1e-9);
    }

    @Test
    void whatIsInTheSamePlaceSharesItsErrorBothWays() {
        assertEquals(21, spread(Sort.FITMENT, 200, Sort.CARGO, 220), 1e-9);
        assertEquals(21, spread(Sort.REMOVED, -200, Sort.REMOVED, -220), 1e-9);
        assertEquals(1, spread(Sort.VEHICLE, -40, Sort.LIQUID, 60), 1e-9);
        assertEquals(1, spread(Sort.VEHICLE, -60, Sort.OCCUPANT, 80), 1e-9);
        assertEquals(1, spread(Sort.LIQUID, -40, Sort.LIQUID, 60), 1e-9);
    }
}
