package fitworthy.figures.tyres;

import static fitworthy.figures.measure.MeasureKind.rated;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.AxleLoads;
import fitworthy.figures.plan.Levelling;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.PassengerTyres;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.RunningGear;
import fitworthy.figures.plan.Topic;
import fitworthy.figures.plan.UsedUp;
import fitworthy.quantity.Figure;
import java.util.List;
import java.util.Optional;

/** What tyres and wheels carry on the way, as tanks and supplies in the trailer are used up. */
final class TyreEmptiedMeasures implements Topic {

    private static final MeasureKind LOAD = rated(
                    "tyres.load-emptied", "kg", 0, "load on the axle", "what its tyres carry")
            .onTheWay("once tanks and supplies are used up")
            .byLoading();
    private static final MeasureKind WHEEL_LOAD = rated(
                    "tyres.wheel-load-emptied", "kg", 0, "load on the axle", "what its wheels carry")
            .onTheWay("once tanks and supplies are used up")
            .byLoading();

    @Override
    public List<MeasureKind> kinds() {
        return List.of(LOAD, WHEEL_LOAD);
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        Plan plan = loading.plan();
        UsedUp.heaviestRear(loading)
                .or(() -> UsedUp.nothingAhead(loading))
                .map(state -> new Axle(
                        plan,
                        true,
                        loading.axles().rear(),
                        AxleLoads.of(state.masses(), plan.wheelbase()).rear(),
                        state))
                .ifPresent(axle -> axle.measure(measures));
        UsedUp.heaviestFront(loading)
                .or(() -> UsedUp.nothingBehind(loading))
                .map(state -> new Axle(plan, false, Levelling.front(loading), state.front(plan), state))
                .ifPresent(axle -> axle.measure(measures));
    }

    /** An axle on the way. @param now its load as planned, kg @param then its load in that state, kg */
    private record Axle(Plan plan, boolean rear, Figure now, Figure then, UsedUp state) {

        private void measure(List<Measure> measures) {
            PassengerTyres tyres = RunningGear.onTheRoad(plan);
            Figure carried = RunningGear.tyresCarry(plan, rear);
            Figure counted = tyres.counted(carried, then);
            held(LOAD, counted)
                    .map(measure -> measure.worked(tyres.working(carried, counted))
                            .worked(RunningGear.tyresCarried(plan, rear)))
                    .map(this::worked)
                    .ifPresent(measures::add);
            if (RunningGear.wheelsInQuestion(plan)) {
                held(WHEEL_LOAD, RunningGear.wheelsCarry(plan, rear))
                        .map(measure -> measure.worked(RunningGear.wheelsCarried(plan, rear)))
                        .map(this::worked)
                        .ifPresent(measures::add);
            }
        }

        /** None where it is overloaded as planned, which is a matter of its own. */
        private Optional<Measure> held(MeasureKind kind, Figure limit) {
            return plan.stretch().against(now, limit).isAbove(limit)
                    ? Optional.empty()
                    : Optional.of(Measure.of(
                            kind,
                            rear ? "rear axle" : "front axle",
                            plan.stretch().against(then, limit),
                            limit));
        }

        private Measure worked(Measure measure) {
            return measure.worked(state.working(
                    now, then, mass -> rear ? mass.onRear(plan.wheelbase()) : mass.onFront(plan.wheelbase())));
        }
    }
}
