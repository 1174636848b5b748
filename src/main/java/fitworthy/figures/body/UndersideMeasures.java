package fitworthy.figures.body;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Alterations;
import fitworthy.figures.plan.GroundAngle;
import fitworthy.figures.plan.LowPlace;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.LowPoint;
import fitworthy.sheet.MassDetails.ChassisExtension;
import fitworthy.sheet.Point;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What hangs low behind the rear axle or between the axles, against the ground. The front is told with its bar. */
final class UndersideMeasures implements Topic {
    private static final MeasureKind DEPARTURE = number("body.departure", "deg", 1, "departure angle below it");
    private static final MeasureKind BREAKOVER =
            number("body.breakover", "deg", 1, "angle of the sharpest crest that it clears");

    private static final String UNDERSIDE = "underside";
    private static final Figure NOT_LISTED = Figure.missing(new Missing(
            "vehicle.low-points",
            "what hangs lowest between the axles and behind them, with place and height",
            "a tape, with the planned parts held in place"));

    /** Kinds of part that may hang under a vehicle. */
    private static final Set<Fitment.Kind> HANGING = EnumSet.of(
            Fitment.Kind.OTHER,
            Fitment.Kind.LOCKER,
            Fitment.Kind.TOW_BAR,
            Fitment.Kind.BAR,
            Fitment.Kind.EXHAUST,
            Fitment.Kind.BATTERY,
            Fitment.Kind.GAS_BOTTLE);

    @Override
    public List<MeasureKind> kinds() {
        return List.of(DEPARTURE, BREAKOVER);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        if (!plan.sheet().trip().terrain().is(Sheet.Terrain.TOWN)) {
            List<LowPoint> points = plan.vehicle().lowPoints();
            points.stream().filter(point -> isMadeWorse(plan, point)).forEach(point -> angle(plan, point, measures));
            if (points.isEmpty()) {
                untold(plan, measures);
            }
        }
    }

    /** What the plan leaves as it was made is the maker's, and what it lifts alone is no worse for it. */
    private static boolean isMadeWorse(Plan plan, LowPoint point) {
        LowPlace place = LowPlace.of(plan, point);
        return !plan.toBeDone(ChassisExtension.class).isEmpty()
                || !place.growth().times(0.5).plus(place.lift()).isAtLeast(Figure.of(0, 0))
                || plan.sheet().tanks().stream()
                        .anyMatch(tank -> Alterations.added(tank) && !tank.isDone() && mayBe(plan, tank, point))
                || plan.sheet().fitments().stream().anyMatch(part -> !part.isDone() && mayBe(plan, part, point));
    }

    private static boolean mayBe(Plan plan, Tank tank, LowPoint point) {
        Optional<Point> at = Optional.of(plan.places().of(tank));
        return isCalled(tank.name(), point) || Alterations.underFloor(plan, tank) && mayHang(plan, at, point);
    }

    private static boolean mayBe(Plan plan, Fitment part, LowPoint point) {
        boolean hangs = HANGING.contains(part.kind()) && part.in().isEmpty();
        return isCalled(part.name(), point)
                || hangs && mayHang(plan, plan.places().of(part), point);
    }

    private static boolean isCalled(String name, LowPoint point) {
        return name.equalsIgnoreCase(point.name());
    }

    /** Whether something may hang under the floor on the same side of the rear axle. */
    private static boolean mayHang(Plan plan, Optional<Point> at, LowPoint point) {
        Figure axle = plan.wheelbase();
        return at.isEmpty()
                || at.filter(place -> !place.z().isAbove(plan.practice(PracticeId.BODY_UNDER_FLOOR_MOST)))
                        .filter(place -> !(place.x().isAbove(axle) && point.x().isAtMost(axle)
                                || place.x().isAtMost(axle) && point.x().isAbove(axle)))
                        .isPresent();
    }

    /** Asked where a tank or part under the floor is planned, or a longer wheelbase. */
    private static void untold(Plan plan, List<Measure> measures) {
        List<Figure> hanging = Stream.concat(
                        plan.sheet().tanks().stream()
                                .filter(tank -> Alterations.underFloor(plan, tank))
                                .map(tank -> plan.places().of(tank).x()),
                        plan.sheet().fitments().stream()
                                .filter(part -> !part.isDone() && part.in().isEmpty())
                                .flatMap(part -> low(plan, part).stream()))
                .toList();
        Figure wheelbase = plan.wheelbase();
        if (hanging.stream().anyMatch(x -> !x.isAtMost(wheelbase))) {
            measures.add(Measure.of(DEPARTURE, UNDERSIDE, NOT_LISTED));
        }
        if (!plan.details(ChassisExtension.class).isEmpty() || hanging.stream().anyMatch(x -> !x.isAbove(wheelbase))) {
            measures.add(Measure.of(BREAKOVER, UNDERSIDE, NOT_LISTED));
        }
    }

    /**
     * Where a part hangs low by its kind or its place: a tow bar, and what has its middle as low as a step or a rear bar. What
     * is ahead of the front axle is told with the bar there.
     */
    private static Optional<Figure> low(Plan plan, Fitment part) {
        if (part.kind() == Fitment.Kind.TOW_BAR) {
            // A pin over the load bed does not hang.
            return Optional.of(plan.ballOverhang())
                    .filter(behind -> !behind.isBelow(Figure.ZERO))
                    .map(plan.wheelbase()::plus);
        }
        return plan.places()
                .of(part)
                .filter(at -> part.kind() == Fitment.Kind.OTHER)
                .filter(at -> at.z().isAtMost(plan.practice(PracticeId.BODY_PART_LOW_MOST)))
                .map(Point::x)
                .filter(x -> !x.isAtMost(Figure.ZERO));
    }

    /** Of a place that is not told it is not known which of the two is asked. */
    private static void angle(Plan plan, LowPoint point, List<Measure> measures) {
        LowPlace place = LowPlace.of(plan, point);
        Figure wheelbase = plan.wheelbase();
        Figure centre = plan.vehicle().size().wheelCentre();
        Figure behind = place.x().minus(wheelbase);
        if (!(behind.value() <= 0)) {
            measures.add(worked(
                    point,
                    place,
                    Measure.of(DEPARTURE, point.name(), GroundAngle.at(place.height(), behind, centre))
                            .worked(
                                    "angle = atan((height - centre) / behind) + asin(centre / sqrt((height - centre)^2 + "
                                            + "behind^2))",
                                    in("height", place.height(), "mm"),
                                    in("centre", centre, "mm"),
                                    in("behind", behind, "mm"))
                            .worked(
                                    "behind = x - wheelbase",
                                    in("x", place.x(), "mm"),
                                    in("wheelbase", wheelbase, "mm"))));
        }
        if (!(behind.value() > 0)) {
            Figure ahead = behind.times(-1);
            measures.add(worked(
                    point,
                    place,
                    Measure.of(BREAKOVER, point.name(), GroundAngle.over(place.height(), place.x(), ahead, centre))
                            .worked(
                                    "angle = atan((height - centre) / front) + asin(centre / sqrt((height - centre)^2 + front^2))"
                                            + " + atan((height - centre) / rear) + asin(centre / sqrt((height - centre)^2 + "
                                            + "rear^2))",
                                    in("height", place.height(), "mm"),
                                    in("centre", centre, "mm"),
                                    in("front", place.x(), "mm"),
                                    in("rear", ahead, "mm"))
                            .worked(
                                    "rear = wheelbase - front",
                                    in("wheelbase", wheelbase, "mm"),
                                    in("front", place.x(), "mm"))));
        }
    }

    private static Measure worked(LowPoint point, LowPlace place, Measure angle) {
        return place.isRaised()
                ? angle.worked(
                        "height = taped + growth / 2 + lift",
                        in("taped", point.z(), "mm"),
                        in("growth", place.growth(), "mm"),
                        in("lift", place.lift(), "mm"))
                : angle;
    }
}
