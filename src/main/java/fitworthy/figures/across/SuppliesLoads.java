package fitworthy.figures.across;

import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
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

/**
 * What the towing vehicle carries as supplies in the trailer run out. Without those behind the trailer's axles the ball is
 * at its heaviest, for the rear axle and the whole; without those ahead of them it is at its lightest and lifts the front
 * least: together with what is in the vehicle's own tanks behind its rear axle, as both may be used up at the end of a leg.
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
        WheelbaseStretch stretch = plan.stretch();
        if (changes(load.heaviest())) {
            Left left = load.heaviest();
            Figure gvm = plan.ratings().gvm();
            Figure limit = plan.ratings().rearAxle();
            AxleLoads now = loading.axles();
            AxleLoads then = AxleLoads.of(with(left.ball(), loading.masses()), plan.wheelbase());
            used("vehicle", now.total(), List.of(), then.total(), gvm, load, left, measures);
            used(
                    "rear axle",
                    stretch.against(now.rear(), limit),
                    List.of(),
                    stretch.against(then.rear(), limit),
                    limit,
                    load,
                    left,
                    measures);
        }
        if (changes(load.lowest())) {
            Left left = load.lowest();
            Figure limit = plan.ratings().frontAxle();
            List<PointMass> tanks = TankLoads.behind(loading);
            List<PointMass> then = with(left.ball(), TankLoads.without(loading, tanks));
            used(
                    "front axle",
                    stretch.against(Levelling.front(loading), limit),
                    TankLoads.using(plan, tanks).toList(),
                    stretch.against(Levelling.front(plan, then, load.off(left)), limit),
                    limit,
                    load,
                    left,
                    measures);
        }
    }

    /** Or may, as where a tank stands is not known. */
    private static boolean changes(Left left) {
        return !left.gone().isEmpty() || !left.ball().known();
    }

    private static List<PointMass> with(Figure ball, List<PointMass> masses) {
        return masses.stream()
                .map(mass -> mass.sort() == Sort.BALL ? mass.of(ball) : mass)
                .toList();
    }

    /** What is overloaded already is a matter of its own. @param tanks what using up the vehicle's own adds */
    private static void used(
            String subject,
            Figure now,
            List<Working.Input> tanks,
            Figure then,
            Figure limit,
            BallLoad load,
            Left left,
            List<Measure> measures) {
        if (now.isAbove(limit)) {
            return;
        }
        Figure ball = load.filledIn().ball();
        Figure used = Working.total(tanks);
        Figure more = then.minus(now).minus(used);
        Measure measure = Measure.of(USED_SUPPLIES, subject, then, limit);
        Measure summed = tanks.isEmpty()
                ? measure.worked("load = as planned + more", in("as planned", now, "kg"), in("more", more, "kg"))
                : measure.worked(
                                "load = as planned + tanks + more",
                                in("as planned", now, "kg"),
                                in("tanks", used, "kg"),
                                in("more", more, "kg"))
                        .worked(new Working.Sum("tanks", tanks));
        measures.add(summed.worked(
                        "more = share x (ball then - ball)",
                        in("share", more.dividedBy(left.ball().minus(ball)), ""),
                        in("ball then", left.ball(), "kg"),
                        in("ball", ball, "kg"))
                .worked(load.working("ball then", left)));
    }
}
