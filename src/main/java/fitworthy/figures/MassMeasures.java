package fitworthy.figures;

import static fitworthy.figures.MeasureKind.number;
import static fitworthy.figures.MeasureKind.rated;

import fitworthy.figures.PointMass.Sort;
import fitworthy.sheet.Choice;
import fitworthy.sheet.Details;
import fitworthy.sheet.Figure;
import fitworthy.sheet.Vehicle;
import java.util.List;
import java.util.Optional;

/** Masses, axle loads and the balance of the vehicle. */
final class MassMeasures implements Topic {

    private static final MeasureKind LOADED = rated("mass.loaded", "kg", 0, "loaded mass", "GVM");
    private static final MeasureKind AXLE = rated("mass.axle", "kg", 0, "load on the axle", "axle limit");
    private static final MeasureKind COMBINED = rated("mass.combined", "kg", 0,
            "loaded mass of vehicle and trailer together", "GCM");
    private static final MeasureKind BALL = number("mass.ball", "kg", 0, "load on the tow ball");
    private static final MeasureKind FRONT_LIFT = number("mass.front-lift", "%", 1,
            "front axle load lost against the bare vehicle");
    private static final MeasureKind BEHIND_AXLE = number("mass.behind-axle", "kg", 1,
            "load it lifts off the front axle");
    private static final MeasureKind BALL_LIFT = number("mass.ball-lift", "kg", 0,
            "load that the ball lifts off the front axle");
    private static final MeasureKind SIDE = number("mass.side", "%", 1,
            "difference between left and right, as a share of the loaded mass");
    private static final MeasureKind ROOF = rated("mass.roof", "kg", 0, "load on the roof", "roof limit");
    private static final MeasureKind COG_RISE = number("mass.cog-rise", "%", 1,
            "rise of the centre of gravity over the bare vehicle");
    private static final MeasureKind RATED_TRAILER = rated("mass.rated-trailer", "kg", 0,
            "heaviest trailer on paper", "what the GCM leaves at full GVM");
    private static final MeasureKind FULL_COMBINED = rated("mass.full-combined", "kg", 0,
            "the planned trailer behind the vehicle at full GVM", "GCM");
    private static final MeasureKind GVM = number("mass.gvm", "kg", 0, "GVM as planned");
    private static final MeasureKind GVM_OVER_AXLES = rated("mass.gvm-axles", "kg", 0, "GVM as planned",
            "sum of the axle limits");
    private static final MeasureKind RAISED = MeasureKind.word("mass.raised",
            "whether the GVM is raised before or after first registration");
    private static final MeasureKind WHEELBASE_ADDED = number("mass.wheelbase-added", "mm", 0, "added wheelbase");
    private static final MeasureKind RESIDUAL = rated("mass.residual", "kg", 0,
            "difference between weighbridge and summed parts", "their joint tolerance");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(LOADED, AXLE, COMBINED, BALL, FRONT_LIFT, BEHIND_AXLE, BALL_LIFT, SIDE, ROOF, COG_RISE,
                RATED_TRAILER, FULL_COMBINED, GVM, GVM_OVER_AXLES, RAISED, WHEELBASE_ADDED, RESIDUAL);
    }

    private enum Registration { BEFORE, AFTER }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        Vehicle.Ratings ratings = plan.ratings();
        Vehicle.Ratings made = plan.vehicle().ratings();
        measures.add(Measure.of(GVM, "vehicle", "", ratings.gvm()));
        boolean raised = plan.planned(Details.RatingUpgrade.class).filter(upgrade -> upgrade.gvm().known()).isPresent();
        if (raised) {
            measures.add(Measure.of(RAISED, "vehicle", "", Choice.of(
                    plan.registered() ? Registration.AFTER : Registration.BEFORE)));
            measures.add(Measure.of(RATED_TRAILER, "vehicle", "", ratings.towing(),
                    ratings.gcm().minus(ratings.gvm())));
            measures.add(Measure.of(GVM_OVER_AXLES, "vehicle", "", ratings.gvm(),
                    ratings.frontAxle().plus(ratings.rearAxle())));
            plan.sheet().trailer().ifPresent(trailer -> measures.add(Measure.of(FULL_COMBINED, "vehicle and trailer", "",
                    ratings.gvm().plus(trailer.mass()), ratings.gcm())));
        }
        Figure added = plan.wheelbase().minus(plan.vehicle().size().wheelbase());
        if (added.value() > 0) {
            measures.add(Measure.of(WHEELBASE_ADDED, "vehicle", "", added));
        }
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        String loadCase = loading.loadCase().name();
        Plan plan = loading.plan();
        Vehicle.Ratings ratings = plan.ratings();
        AxleLoads axles = loading.axles();
        measures.add(Measure.of(LOADED, "vehicle", loadCase, axles.total(), ratings.gvm()));
        measures.add(Measure.of(AXLE, "front axle", loadCase, axles.front(), ratings.frontAxle()));
        measures.add(Measure.of(AXLE, "rear axle", loadCase, axles.rear(), ratings.rearAxle()));
        Figure bareFront = plan.vehicle().mass().frontAxle();
        measures.add(Measure.of(FRONT_LIFT, "front axle", loadCase,
                Figure.of(1, 0).minus(axles.front().dividedBy(bareFront))));
        measures.add(Measure.of(SIDE, "vehicle", loadCase, sideShare(axles.cogY(), plan.vehicle().size().track())));
        Figure bareHeight = plan.vehicle().mass().cogHeight();
        measures.add(Measure.of(COG_RISE, "vehicle", loadCase,
                axles.cogZ().dividedBy(bareHeight).minus(Figure.of(1, 0))));
        loading.masses().stream().filter(each -> isCarried(each) && behindRearAxle(each, plan))
                .forEach(each -> measures.add(Measure.of(BEHIND_AXLE, each.name(), loadCase,
                        each.onFront(plan.wheelbase()).times(-1))));
        roofLoad(loading).ifPresent(roof -> measures.add(Measure.of(ROOF, "roof", loadCase, roof, ratings.roof())));
        loading.residual().ifPresent(residual -> {
            residual(measures, "front axle", loadCase, residual.front());
            residual(measures, "rear axle", loadCase, residual.rear());
        });
        if (loading.towing()) {
            towing(loading, measures);
        }
    }

    private static void towing(Loading loading, List<Measure> measures) {
        String loadCase = loading.loadCase().name();
        Plan plan = loading.plan();
        Figure ball = loading.masses().stream().filter(each -> each.sort() == Sort.BALL).findFirst().orElseThrow().mass();
        measures.add(Measure.of(COMBINED, "vehicle and trailer", loadCase, loading.combined(), plan.ratings().gcm()));
        measures.add(Measure.of(BALL, "tow ball", loadCase, ball));
        measures.add(Measure.of(BALL_LIFT, "front axle", loadCase,
                ball.times(plan.ballOverhang().dividedBy(plan.wheelbase()))));
    }

    /** {@code 2 |y| / track}: the difference between the two sides over the sum, from moments about the centre line. */
    private static Figure sideShare(Figure cogY, Figure track) {
        Figure share = cogY.times(2).dividedBy(track);
        return share.known() ? Figure.of(Math.abs(share.value()), share.tolerance()) : share;
    }

    private static boolean isCarried(PointMass each) {
        return switch (each.sort()) {
            case FITMENT, TANK, LIQUID, CARGO -> each.mass().value() > 0;
            default -> false;
        };
    }

    private static boolean behindRearAxle(PointMass each, Plan plan) {
        return each.at().x().value() > plan.wheelbase().value();
    }

    private static Optional<Figure> roofLoad(Loading loading) {
        return loading.masses().stream().filter(PointMass::roof).map(PointMass::mass).reduce(Figure::plus);
    }

    private static void residual(List<Measure> measures, String axle, String loadCase, Figure residual) {
        Figure size = residual.known() ? Figure.of(Math.abs(residual.value()), 0) : residual;
        measures.add(Measure.of(RESIDUAL, axle, loadCase, size,
                residual.known() ? Figure.of(residual.tolerance(), 0) : residual));
    }
}
