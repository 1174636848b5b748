package fitworthy.figures.across;

import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.AxleLoads;
import fitworthy.figures.plan.BallLoad;
import fitworthy.figures.plan.BallLoad.Left;
import fitworthy.figures.plan.Levelling;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PointMass;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.figures.plan.WheelbaseStretch;
import fitworthy.quantity.Figure;
import java.util.List;
import java.util.function.Function;

/**
 * What the towing vehicle carries as supplies in the trailer run out. Without those behind the trailer's axles the ball is
 * at its heaviest, for the rear axle and the whole; without those ahead of them it is at its lightest and lifts the front
 * least.
 */
final class SuppliesLoads {

    private static final MeasureKind USED_SUPPLIES = rated(
                    "across.used-supplies", "kg", 0, "load once supplies in the trailer are used up", "limit")
            .byLoading();

    static final List<MeasureKind> KINDS = List.of(USED_SUPPLIES);

    private SuppliesLoads() {}

    static void loading(Loading loading, List<Measure> measures) {
        Plan plan = loading.plan();
        // Nobody sets out from the weighbridge.
        if (loading.trailer().isPresent() && loading.loadCase().weighed().isEmpty()) {
            BallLoad.of(plan.sheet())
                    .filter(load -> !load.trailer().supplies().isEmpty())
                    .ifPresent(load -> emptied(loading, load, measures));
        }
    }

    private static void emptied(Loading loading, BallLoad load, List<Measure> measures) {
        Plan plan = loading.plan();
        Left heaviest = load.heaviest();
        Left lowest = load.lowest();
        WheelbaseStretch stretch = plan.stretch();
        Figure rear = plan.ratings().rearAxle();
        Figure front = plan.ratings().frontAxle();
        if (changes(heaviest)) {
            used(
                    "vehicle",
                    loading,
                    load,
                    heaviest,
                    masses -> axles(plan, masses).total(),
                    plan.ratings().gvm(),
                    measures);
            used(
                    "rear axle",
                    loading,
                    load,
                    heaviest,
                    masses -> stretch.against(axles(plan, masses).rear(), rear),
                    rear,
                    measures);
        }
        if (changes(lowest)) {
            used(
                    "front axle",
                    loading,
                    load,
                    lowest,
                    masses -> stretch.against(Levelling.front(plan, masses), front),
                    front,
                    measures);
        }
    }

    /** Or may, as where a tank stands is not known. */
    private static boolean changes(Left left) {
        return !left.gone().isEmpty() || !left.ball().known();
    }

    private static AxleLoads axles(Plan plan, List<PointMass> masses) {
        return AxleLoads.of(masses, plan.wheelbase());
    }

    /** What is overloaded already is a matter of its own. */
    private static void used(
            String subject,
            Loading loading,
            BallLoad load,
            Left left,
            Function<List<PointMass>, Figure> carried,
            Figure limit,
            List<Measure> measures) {
        Figure now = carried.apply(loading.masses());
        if (!now.isAbove(limit)) {
            List<PointMass> then = loading.masses().stream()
                    .map(mass -> mass.sort() == Sort.BALL ? mass.of(left.ball()) : mass)
                    .toList();
            Figure used = carried.apply(then);
            Figure more = used.minus(now);
            Figure gained = left.ball().minus(load.filledIn().ball());
            measures.add(Measure.of(USED_SUPPLIES, subject, used, limit)
                    .worked("load = as planned + more", in("as planned", now, "kg"), in("more", more, "kg"))
                    .worked(
                            "more = share x (ball then - ball)",
                            in("share", more.dividedBy(gained), ""),
                            in("ball then", left.ball(), "kg"),
                            in("ball", load.filledIn().ball(), "kg"))
                    .worked(load.working("ball then", left)));
        }
    }
}
