package fitworthy.figures.across;

import static fitworthy.figures.measure.MeasureKind.rated;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.AxleLoads;
import fitworthy.figures.plan.Levelling;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PointMass;
import fitworthy.figures.plan.UsedUp;
import fitworthy.figures.plan.WheelbaseStretch;
import fitworthy.quantity.Figure;
import java.util.List;
import java.util.function.Function;

/**
 * What the towing vehicle carries as supplies in the trailer run out. Without those behind the trailer's axles the ball is
 * at its heaviest, for the rear axle and the whole; without those ahead of them it is at its lightest and lifts the front
 * least: together with what is in the vehicle's own tanks beyond the other axle, as both may be used up at the end of a leg.
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
        Figure wheelbase = plan.wheelbase();
        UsedUp.heaviestBall(loading)
                .ifPresent(state -> used(
                        "vehicle",
                        loading.axles().total(),
                        AxleLoads.of(state.masses(), wheelbase).total(),
                        plan.ratings().gvm(),
                        PointMass::mass,
                        state,
                        measures));
        UsedUp.heaviestRear(loading).ifPresent(state -> {
            Figure limit = plan.ratings().rearAxle();
            used(
                    "rear axle",
                    stretch.against(loading.axles().rear(), limit),
                    stretch.against(AxleLoads.of(state.masses(), wheelbase).rear(), limit),
                    limit,
                    mass -> mass.onRear(wheelbase),
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
                    mass -> mass.onFront(wheelbase),
                    state,
                    measures);
        });
    }

    /** What is overloaded already is a matter of its own. */
    private static void used(
            String subject,
            Figure now,
            Figure then,
            Figure limit,
            Function<PointMass, Figure> share,
            UsedUp state,
            List<Measure> measures) {
        if (!now.isAbove(limit)) {
            measures.add(Measure.of(USED_SUPPLIES, subject, then, limit).worked(state.working(now, then, share)));
        }
    }
}
