package fitworthy.figures.across;

import static fitworthy.figures.measure.MeasureKind.rated;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.AxleLoads;
import fitworthy.figures.plan.Levelling;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.UsedUp;
import fitworthy.figures.plan.WheelbaseStretch;
import fitworthy.quantity.Figure;
import java.util.List;

/**
 * What the towing vehicle carries as supplies in the trailer run out. Without those behind the trailer's axles the ball is
 * at its heaviest, for the rear axle and the whole; without those ahead of them it is at its lightest and lifts the front
 * least: together with what is in the vehicle's own tanks behind its rear axle, as both may be used up at the end of a leg.
 */
final class SuppliesLoads {

    private static final MeasureKind USED_SUPPLIES = rated("across.used-supplies", "kg", 0, "load", "limit")
            .onTheWay("once supplies in the trailer are used up")
            .byLoading();

    static final List<MeasureKind> KINDS = List.of(USED_SUPPLIES);

    private SuppliesLoads() {}

    static void loading(Loading loading, List<Measure> measures) {
        Plan plan = loading.plan();
        WheelbaseStretch stretch = plan.stretch();
        UsedUp.heaviestBall(loading).ifPresent(state -> {
            Figure limit = plan.ratings().rearAxle();
            AxleLoads now = loading.axles();
            AxleLoads then = AxleLoads.of(state.masses(), plan.wheelbase());
            used("vehicle", now.total(), then.total(), plan.ratings().gvm(), plan, state, measures);
            used(
                    "rear axle",
                    stretch.against(now.rear(), limit),
                    stretch.against(then.rear(), limit),
                    limit,
                    plan,
                    state,
                    measures);
        });
        UsedUp.heaviestFront(loading).ifPresent(state -> {
            Figure limit = plan.ratings().frontAxle();
            used(
                    "front axle",
                    stretch.against(Levelling.front(loading), limit),
                    stretch.against(state.front(plan), limit),
                    limit,
                    plan,
                    state,
                    measures);
        });
    }

    /** What is overloaded already is a matter of its own. */
    private static void used(
            String subject, Figure now, Figure then, Figure limit, Plan plan, UsedUp state, List<Measure> measures) {
        if (!now.isAbove(limit)) {
            measures.add(
                    Measure.of(USED_SUPPLIES, subject, then, limit).worked(state.working(now, then, plan.wheelbase())));
        }
    }
}
