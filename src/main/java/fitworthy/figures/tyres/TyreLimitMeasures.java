package fitworthy.figures.tyres;

import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.MeasureKind.yesNo;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Levelling;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.PassengerTyres;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.RunningGear;
import fitworthy.figures.plan.Topic;
import fitworthy.figures.plan.Weighed;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.TyreDetails;
import java.util.List;
import java.util.stream.Stream;

/** Most air in a tyre, passenger tyres on what is no car, and whether the sheet weighs what is changed. */
final class TyreLimitMeasures implements Topic {
    private static final MeasureKind PRESSURE_MOST = rated(
                    "tyres.pressure-most", "kPa", 0, "planned pressure", "most that the tyre allows cold")
            .bothWays();
    private static final MeasureKind PASSENGER_LOAD = rated(
                    "tyres.passenger-load", "kg", 0, "load on the axle", "what passenger tyres count for on a truck")
            .byLoading();
    private static final MeasureKind WEIGHED =
            yesNo("tyres.weighed", "whether the sheet has a mass for the new ones and for those they replace");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(PRESSURE_MOST, PASSENGER_LOAD, WEIGHED);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        TyreDetails.Tyres front = plan.tyres(false);
        TyreDetails.Tyres rear = plan.tyres(true);
        measures.add(Measure.of(
                PRESSURE_MOST, "front axle", front.frontPressure(), mostAllowed(front, front.frontPressure())));
        measures.add(
                Measure.of(PRESSURE_MOST, "rear axle", rear.rearPressure(), mostAllowed(rear, rear.rearPressure())));
        Stream.of(Fitment.Kind.TYRES, Fitment.Kind.WHEELS)
                .flatMap(kind -> plan.fitments(kind).stream())
                .filter(set -> !set.isDone())
                .forEach(set -> measures.add(Measure.of(WEIGHED, set.name(), Weighed.withReplaced(set))));
    }

    /**
     * What stands on the sidewall. A tyre allows at least the pressure that its load index holds at, so up to that one
     * nothing is asked; how far beyond it differs from tyre to tyre.
     */
    private static Figure mostAllowed(TyreDetails.Tyres tyres, Figure planned) {
        return tyres.mostPressure().known()
                ? tyres.mostPressure()
                : planned.isAtMost(tyres.referencePressure()) ? tyres.referencePressure() : tyres.mostPressure();
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        Plan plan = loading.plan();
        if (!RunningGear.onTheRoad(plan).countInFull()) {
            Figure carried = RunningGear.tyresCarry(plan, false);
            passenger(plan, "front axle", Levelling.front(loading), carried, measures);
            passenger(plan, "rear axle", loading.axles().rear(), RunningGear.tyresCarry(plan, true), measures);
        }
    }

    /** More than the tyres carry by their index is a fault of its own. */
    private static void passenger(Plan plan, String axle, Figure load, Figure carried, List<Measure> measures) {
        if (!plan.stretch().against(load, carried).isAbove(carried)) {
            PassengerTyres tyres = RunningGear.onTheRoad(plan);
            Figure counted = tyres.counted(carried, load);
            measures.add(Measure.of(PASSENGER_LOAD, axle, plan.stretch().against(load, counted), counted)
                    .worked(tyres.working(carried, counted)));
        }
    }
}
