package fitworthy.figures.body;

import static fitworthy.figures.measure.MeasureKind.word;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.sheet.BodyDetails.Alarms;
import fitworthy.sheet.BodyDetails.Burner;
import fitworthy.sheet.Fitment;
import java.util.List;

/** Whether alarms hang where people sleep beside a flame. */
final class BurnerMeasures implements Topic {
    private static final MeasureKind ALARMS =
            word("body.alarms", "which alarms hang where people sleep beside it", Alarms.class);

    @Override
    public List<MeasureKind> kinds() {
        return List.of(ALARMS);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        for (Fitment fitment : plan.fitments(Fitment.Kind.BURNER)) {
            measures.add(Measure.of(ALARMS, fitment.name(), ((Burner) fitment.details()).alarms()));
        }
    }
}
