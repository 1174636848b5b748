package fitworthy.figures.electrical;

import static fitworthy.figures.measure.MeasureKind.yesNo;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.EnergyFlow;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.ElectricalDetails.Charger;
import fitworthy.sheet.Fitment;
import java.util.List;

/**
 * Whether what charges the second battery stops as the alternator lowers its voltage: a relay that joins the batteries,
 * or a charger that goes by the voltage at its input. One that the ignition starts does not.
 */
final class FallingVoltageMeasures implements Topic {
    private static final MeasureKind FALLS =
            yesNo("electrical.charge-falls", "whether it stops charging when the alternator lowers its voltage");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(FALLS);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        Choice<YesNo> lowers = plan.vehicle().engine().alternatorLowers();
        for (Fitment fitment : plan.fitments(Fitment.Kind.CHARGER)) {
            Charger charger = (Charger) fitment.details();
            boolean relay = charger.isolator().is(YesNo.YES);
            if (EnergyFlow.fromAlternator(fitment)
                    && (relay || charger.startsBy().known() || lowers.known())) {
                measures.add(Measure.of(FALLS, fitment.name(), falls(charger.startsBy(), relay, lowers)));
            }
        }
    }

    private static Choice<?> falls(Choice<Charger.Start> startsBy, boolean relay, Choice<YesNo> lowers) {
        if (lowers.is(YesNo.NO) || !relay && startsBy.is(Charger.Start.IGNITION)) {
            return Choice.of(YesNo.NO);
        }
        return relay || startsBy.known() ? lowers : startsBy;
    }
}
