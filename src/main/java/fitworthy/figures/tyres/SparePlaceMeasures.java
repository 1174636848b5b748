package fitworthy.figures.tyres;

import static fitworthy.figures.measure.MeasureKind.word;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Alterations;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.sheet.Tank;
import fitworthy.sheet.Vehicle;
import java.util.List;

/** Where the spare goes once a planned tank may hang in its place. */
final class SparePlaceMeasures implements Topic {
    private static final MeasureKind PLACE =
            word("tyres.spare-place", "where the spare goes", Vehicle.Spare.Place.class);

    @Override
    public List<MeasureKind> kinds() {
        return List.of(PLACE);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        Choice<Vehicle.Spare.Place> place = plan.vehicle().spare().place();
        if (place.known() || plan.sheet().tanks().stream().anyMatch(tank -> mayTakeIt(plan, tank))) {
            measures.add(Measure.of(PLACE, "spare", place));
        }
    }

    /** One behind the rear axle, or of which nobody knows that it is not. */
    private static boolean mayTakeIt(Plan plan, Tank tank) {
        return Alterations.underFloor(plan, tank) && !plan.places().of(tank).x().isAtMost(plan.wheelbase());
    }
}
