package fitworthy.figures.tyres;

import static fitworthy.figures.measure.MeasureKind.rated;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
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
import java.util.function.UnaryOperator;

/** What tyres and wheels carry on the way, as tanks and supplies in the trailer are used up. */
final class TyreEmptiedMeasures implements Topic {

    private static final MeasureKind LOAD = rated(
                    "tyres.load-emptied",
                    "kg",
                    0,
                    "load on the axle once tanks and supplies are used up",
                    "what its tyres carry")
            .byLoading();
    private static final MeasureKind WHEEL_LOAD = rated(
                    "tyres.wheel-load-emptied",
                    "kg",
                    0,
                    "load on the axle once tanks and supplies are used up",
                    "what its wheels carry")
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
                .ifPresent(state -> axle(
                        plan,
                        loading.axles().rear(),
                        AxleLoads.of(state.masses(), plan.wheelbase()).rear(),
                        true,
                        state,
                        measures));
        UsedUp.heaviestFront(loading)
                .or(() -> UsedUp.nothingBehind(loading))
                .ifPresent(state -> axle(plan, Levelling.front(loading), state.front(plan), false, state, measures));
    }

    /** @param now its load as planned, kg @param then its load in that state, kg */
    private static void axle(Plan plan, Figure now, Figure then, boolean rear, UsedUp state, List<Measure> measures) {
        PassengerTyres tyres = RunningGear.onTheRoad(plan);
        Figure carried = RunningGear.tyresCarry(plan, rear);
        Figure counted = tyres.counted(carried, then);
        Working[] worked =
                state.working(now, then, mass -> rear ? mass.onRear(plan.wheelbase()) : mass.onFront(plan.wheelbase()));
        held(LOAD, plan, now, then, counted, rear, measures, measure -> measure.worked(tyres.working(carried, counted))
                .worked(RunningGear.tyresCarried(plan, rear))
                .worked(worked));
        if (RunningGear.wheelsInQuestion(plan)) {
            held(
                    WHEEL_LOAD,
                    plan,
                    now,
                    then,
                    RunningGear.wheelsCarry(plan, rear),
                    rear,
                    measures,
                    measure -> measure.worked(RunningGear.wheelsCarried(plan, rear))
                            .worked(worked));
        }
    }

    /** What is overloaded already is a matter of its own. */
    private static void held(
            MeasureKind kind,
            Plan plan,
            Figure now,
            Figure then,
            Figure limit,
            boolean rear,
            List<Measure> measures,
            UnaryOperator<Measure> worked) {
        if (!plan.stretch().against(now, limit).isAbove(limit)) {
            measures.add(worked.apply(Measure.of(
                    kind, rear ? "rear axle" : "front axle", plan.stretch().against(then, limit), limit)));
        }
    }
}
