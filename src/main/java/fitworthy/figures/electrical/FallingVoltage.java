package fitworthy.figures.electrical;

import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.ElectricalDetails.Charger;
import fitworthy.sheet.Fitment;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * Whether what charges the second battery stops as the alternator lowers its voltage: a relay that joins the batteries,
 * or a charger that goes by the voltage at its input. One that the ignition starts does not.
 */
final class FallingVoltage {

    private FallingVoltage() {}

    /** Whether it is in question: a charger of which nothing is told is taken to go on behind an old alternator. */
    static boolean isAsked(Plan plan, Fitment fitment) {
        Charger charger = (Charger) fitment.details();
        return charger.fromAlternator()
                && (isRelay(charger)
                        || charger.startsBy().known()
                        || plan.vehicle().engine().alternatorLowers().known()
                        || !isOld(plan));
    }

    private static boolean isOld(Plan plan) {
        LocalDate registered = plan.vehicle().registered();
        return registered != null
                && Figure.of(Dimension.size("days")
                                * ChronoUnit.DAYS.between(
                                        registered, plan.sheet().asOf()))
                        .isAbove(plan.practice(PracticeId.ELECTRICAL_ALTERNATOR_STEADY));
    }

    /** Whether it stops, or what has to be told to know that. */
    static Choice<YesNo> stops(Plan plan, Fitment fitment) {
        Choice<YesNo> lowers = plan.vehicle().engine().alternatorLowers();
        Charger charger = (Charger) fitment.details();
        boolean relay = isRelay(charger);
        if (!isAsked(plan, fitment)
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
