package fitworthy.figures.electrical;

import static fitworthy.figures.measure.MeasureKind.number;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.ElectricalDetails.Charger;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Point;
import java.util.List;
import java.util.Optional;

/** Whether a charger under the bonnet bears the heat there. A relay has no electronics that it throttles. */
final class ChargerHeatMeasures implements Topic {
    private static final MeasureKind HEAT =
            number("electrical.charger-heat", "degC", 0, "heat at which its maker lets it work at full output");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(HEAT);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        for (Fitment fitment : plan.fitments(Fitment.Kind.CHARGER)) {
            Charger charger = (Charger) fitment.details();
            boolean asked = charger.engineBay().known()
                    ? charger.engineBay().is(YesNo.YES)
                    : fitment.in().isEmpty() && isForward(plan, fitment);
            if (asked && !charger.isolator().is(YesNo.YES)) {
                measures.add(
                        Measure.of(HEAT, fitment.name(), charger.mostHeat()).given(charger.engineBay()));
            }
        }
    }

    private static boolean isForward(Plan plan, Fitment charger) {
        Optional<Point> at = plan.places().of(charger);
        return at.isPresent() && at.get().x().isBelow(plan.practice(PracticeId.ELECTRICAL_FIREWALL));
    }
}
