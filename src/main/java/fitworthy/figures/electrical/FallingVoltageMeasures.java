package fitworthy.figures.electrical;

import static fitworthy.figures.measure.MeasureKind.yesNo;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.sheet.Fitment;
import java.util.List;

/** Whether what charges the second battery stops as the alternator lowers its voltage. */
final class FallingVoltageMeasures implements Topic {
    private static final MeasureKind FALLS =
            yesNo("electrical.charge-falls", "whether it stops charging when the alternator lowers its voltage");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(FALLS);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        for (Fitment fitment : plan.fitments(Fitment.Kind.CHARGER)) {
            if (FallingVoltage.isAsked(plan, fitment)) {
                measures.add(Measure.of(FALLS, fitment.name(), FallingVoltage.stops(plan, fitment)));
            }
        }
    }
}
