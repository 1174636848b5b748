package fitworthy.figures.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.figures.across.Boxes;
import fitworthy.figures.electrical.BatteryLife;
import fitworthy.figures.electrical.Cable;
import fitworthy.figures.intake.AirFlow;
import fitworthy.figures.mirrors.SightLine;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.figures.radio.RadioRange;
import fitworthy.figures.recovery.WinchRun;
import fitworthy.figures.suspension.SpringRate;
import fitworthy.figures.tyres.TyreFigures;
import fitworthy.figures.water.WaterSupply;
import fitworthy.quantity.Derived;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Point;
import fitworthy.sheet.Space;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The tolerance that a formula gives against one worked out from its values alone: each input is moved a little, and
 * the slopes are taken together as the root of the sum of squares (JCGM 100:2008, clause 5.1.2, from memory; the slope
 * by central difference as in its note to 5.1.3, from memory too).
 */
class ToleranceTest {

    private record Formula(String name, Function<Figure[], Figure> of, double... values) {}

    private static List<Formula> formulas() {
        return List.of(
                new Formula("flow drawn", v -> AirFlow.drawn(v[0], v[1], v[2], v[3]), 2.8, 3400, 0.88, 2.1),
                new Formula("density of the charge", v -> AirFlow.densityRatio(v[0], v[1]), 130e3, 50),
                new Formula("speed of the air", v -> AirFlow.velocity(v[0], v[1]), 0.12, 0.08),
                new Formula("bore", v -> AirFlow.boreNeeded(v[0], v[1]), 0.12, 25),
                new Formula("approach angle", v -> GroundAngle.at(v[0], v[1], v[2]), 0.55, 0.8, 0.4),
                new Formula(
                        "approach angle below the wheel's centre",
                        v -> GroundAngle.at(v[0], v[1], v[2]),
                        0.3,
                        0.9,
                        0.41),
                new Formula("crest", v -> GroundAngle.over(v[0], v[1], v[2], v[3]), 0.25, 1.3, 1.6, 0.41),
                new Formula("sun", v -> BatteryLife.solar(v[0], v[1], v[2]), 180, 5, 12.8),
                new Formula("depth of discharge", v -> BatteryLife.depth(v[0], v[1], v[2], v[3]), 40, 25, 48, 120),
                new Formula("voltage lost", v -> Cable.drop(v[0], v[1], v[2], v[3]), 4.5, 30, 6e-6, 60),
                new Formula("force on the coupling", v -> Coupling.d(v[0], v[1]), 3000, 2200),
                new Formula("force on a fifth wheel", v -> Coupling.fifthWheel(v[0], v[1], v[2]), 3500, 4500, 700),
                new Formula("range", v -> FuelRange.metres(v[0], v[1]), 80, 12.5),
                new Formula("box behind the axle", v -> LoadBox.behindAxle(v[0], v[1], v[2]), 1.8, 1.9, 2.85),
                new Formula("hold-down", v -> LoadBox.holdDown(v[0], v[1], v[2]), 6, 250, 420),
                new Formula(
                        "tipping forward",
                        v -> LoadBox.tipsForward(v[0], v[1], v[2], v[3], v[4]),
                        0.9,
                        1.5,
                        150,
                        1.1,
                        400),
                new Formula(
                        "pull down", v -> LoadBox.downNeeded(v[0], v[1], v[2], v[3], v[4]), 0.8, 0.9, 1.5, 1.1, 400),
                new Formula("tipping angle", v -> LoadBox.tippingAngle(v[0], v[1]), 1.5, 1.7),
                new Formula("feet", v -> LoadBox.feetNeeded(v[0], v[1]), 12, 1.7),
                new Formula(
                        "sight",
                        v -> RadioRange.sightAngle(level(v[0], v[1]), level(v[2], v[3])),
                        1.5,
                        -0.4,
                        -0.9,
                        0.3),
                new Formula(
                        "aerials apart",
                        v -> RadioRange.wavelengths(new Point(v[0], v[1], v[2]), new Point(v[3], v[4], v[5]), v[6]),
                        -0.8,
                        0.7,
                        1.2,
                        2.1,
                        -0.3,
                        1.9,
                        477e6),
                new Formula(
                        "road in a flat glass", v -> seen(v, Double.POSITIVE_INFINITY), 1.4, 0.37, 0.8, 1.309, 0.15),
                new Formula("road in a convex glass", v -> seen(v, 1.4), 1.4, -0.37, 0.8, 1.35, 0.17),
                new Formula("spaces", v -> Boxes.overlap(box(v[0], v[1]), box(v[2], v[3])), 2.0, 3.0, 2.9, 3.5),
                new Formula("radio horizon", v -> RadioRange.horizon(v[0], v[1]), 2.3, 1.8),
                new Formula("rate at the wheel", v -> SpringRate.atWheel(v[0], v[1]), 85e3, 0.6),
                new Formula("frequency", v -> SpringRate.frequency(v[0], v[1]), 34e3, 450),
                new Formula("deflection", v -> SpringRate.deflection(v[0], v[1]), 120, 34e3),
                new Formula("pressure", v -> TyreFigures.pressureNeeded(v[0], v[1], v[2]), 250e3, 900, 1120),
                new Formula("speed shown", v -> TyreFigures.speedShown(v[0], v[1], v[2]), 0.04, 0.776, 0.831),
                new Formula("water for each", v -> WaterSupply.perPersonAndDay(v[0], v[1], v[2]), 80, 2, 144),
                new Formula("water left", v -> WaterSupply.reserve(v[0], v[1], v[2], v[3]), 80, 2, 5, 144),
                new Formula("winching", v -> WinchRun.hours(v[0], v[1], v[2]), 90, 400, 130),
                new Formula("centre of gravity along", v -> Centre.of(two(v)).x(), 1800, 0.3, 900, 2.9),
                new Formula("load on the front axle", v -> loads(v).front(), 1800, 0.3, 900, 2.9),
                new Formula("load on the rear axle", v -> loads(v).rear(), 1800, 0.3, 900, 2.9));
    }

    private static Point level(Figure x, Figure y) {
        return new Point(x, y, Figure.ZERO);
    }

    private static Space box(Figure front, Figure rear) {
        return new Space(new Point(front, Figure.ZERO, Figure.ZERO), new Point(rear, Figure.of(1), Figure.of(1)));
    }

    /** Of eye (both ways), glass, its outer edge and what of it is clear, 20 m behind the eye. */
    private static Figure seen(Figure[] v, double radius) {
        return Derived.of(at -> new SightLine(at[0], at[1], at[2], radius).seen(at[4], at[3], 20), v);
    }

    /** Two masses and their places. */
    private static List<PointMass> two(Figure[] v) {
        Figure zero = Figure.of(0, 0);
        return List.of(
                new PointMass("one", Sort.CARGO, v[0], new Point(v[1], zero, zero), false),
                new PointMass("two", Sort.CARGO, v[2], new Point(v[3], zero, zero), false));
    }

    private static AxleLoads loads(Figure[] v) {
        return AxleLoads.of(two(v), Figure.of(2.85, 0));
    }

    private static double at(Formula formula, int moved, double step) {
        List<Figure> figures = new ArrayList<>();
        for (int i = 0; i < formula.values.length; i++) {
            figures.add(Figure.of(formula.values[i] + (i == moved ? step : 0), 0));
        }
        return formula.of.apply(figures.toArray(Figure[]::new)).value();
    }

    @TestFactory
    Stream<DynamicTest> eachInputCountsBySlope() {
        return formulas().stream().flatMap(formula -> Stream.iterate(0, i -> i < formula.values.length, i -> i + 1)
                .map(i -> DynamicTest.dynamicTest(formula.name + ", input " + (i + 1), () -> {
                    double tolerance = Math.abs(formula.values[i]) * 1e-3;
                    List<Figure> figures = new ArrayList<>();
                    for (int j = 0; j < formula.values.length; j++) {
                        figures.add(Figure.of(formula.values[j], i == j ? tolerance : 0));
                    }
                    double slope = Math.abs(at(formula, i, tolerance) - at(formula, i, -tolerance)) / 2;
                    assertEquals(
                            slope,
                            formula.of.apply(figures.toArray(Figure[]::new)).tolerance(),
                            slope * 0.01 + Math.abs(at(formula, i, 0)) * 1e-9);
                })));
    }

    @TestFactory
    Stream<DynamicTest> allInputsCountTogether() {
        return formulas().stream()
                .map(formula -> DynamicTest.dynamicTest(formula.name, () -> {
                    List<Figure> figures = new ArrayList<>();
                    double squares = 0;
                    for (int i = 0; i < formula.values.length; i++) {
                        double tolerance = Math.abs(formula.values[i]) * 1e-3;
                        figures.add(Figure.of(formula.values[i], tolerance));
                        squares += Math.pow((at(formula, i, tolerance) - at(formula, i, -tolerance)) / 2, 2);
                    }
                    double together = Math.sqrt(squares);
                    assertEquals(
                            together,
                            formula.of.apply(figures.toArray(Figure[]::new)).tolerance(),
                            together * 0.02);
                }));
    }
}
