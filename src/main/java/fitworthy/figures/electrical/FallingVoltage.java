package fitworthy.figures.electrical;

import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Choice;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.ElectricalDetails.Charger;
import fitworthy.sheet.Fitment;

/**
 * Whether what charges the second battery stops as the alternator lowers its voltage: a relay that joins the batteries,
 * or a charger that goes by the voltage at its input. One that the ignition starts does not.
 */
final class FallingVoltage {

    private FallingVoltage() {}

    /** Whether the sheet tells anything of it; a charger of which it does not is taken to go on. */
    static boolean isTold(Plan plan, Fitment fitment) {
        Charger charger = (Charger) fitment.details();
        return charger.fromAlternator()
                && (isRelay(charger)
                        || charger.startsBy().known()
                        || plan.vehicle().engine().alternatorLowers().known());
    }

    /** Whether it stops, or what has to be told to know that. */
    static Choice<YesNo> stops(Plan plan, Fitment fitment) {
        Choice<YesNo> lowers = plan.vehicle().engine().alternatorLowers();
        Charger charger = (Charger) fitment.details();
        boolean relay = isRelay(charger);
        if (!isTold(plan, fitment)
                || lowers.is(YesNo.NO)
                || !relay && charger.startsBy().is(Charger.Start.IGNITION)) {
            return Choice.of(YesNo.NO);
        }
        return relay || charger.startsBy().known()
                ? lowers
                : Choice.missing(charger.startsBy().missing());
    }

    private static boolean isRelay(Charger charger) {
        return charger.isolator().is(YesNo.YES);
    }
}
