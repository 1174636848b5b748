package fitworthy.figures.mass;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Masses;
import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import java.util.ArrayList;
import java.util.List;

/**
 * How high the centre of gravity is before anything is carried: that of the bare vehicle. A cab chassis is made to carry
 * a body, and nobody drives it without one, so its tray counts in; common practice.
 */
final class BareHeight {

    private BareHeight() {}

    static Figure of(Plan plan) {
        Figure kerb = plan.vehicle().mass().kerb();
        Figure height = plan.vehicle().mass().cogHeight();
        Figure whole = kerb;
        Figure moment = Figure.of(0, 0);
        for (Fitment tray : trays(plan)) {
            Figure mass = Masses.of(tray, plan.sheet());
            // One that was on the vehicle when it was weighed is in its kerb mass.
            whole = tray.isDone() ? whole : whole.plus(mass);
            moment = moment.plus(mass.times(tray.at().orElseThrow().z().minus(height)));
        }
        return height.plus(moment.dividedBy(whole));
    }

    /** How it is worked out; nothing where it is the bare vehicle's own. */
    static List<Working> working(Plan plan) {
        List<Fitment> trays = trays(plan);
        if (trays.isEmpty()) {
            return List.of();
        }
        List<Working.Input> inputs = new ArrayList<>(List.of(
                in("kerb", plan.vehicle().mass().kerb(), "kg"),
                in("vehicle", plan.vehicle().mass().cogHeight(), "mm")));
        for (Fitment tray : trays) {
            inputs.add(in("tray", Masses.of(tray, plan.sheet()), "kg"));
            inputs.add(in("tray height", tray.at().orElseThrow().z(), "mm"));
        }
        return List.of(
                new Working.Formula("bare = vehicle + tray x (tray height - vehicle) / (kerb, with the tray)", inputs));
    }

    static boolean isCabChassis(Plan plan) {
        return plan.vehicle().tub().is(YesNo.NO)
                && !plan.fitments(Fitment.Kind.TRAY).isEmpty();
    }

    private static List<Fitment> trays(Plan plan) {
        return isCabChassis(plan)
                ? plan.fitments(Fitment.Kind.TRAY).stream()
                        .filter(tray -> tray.at().isPresent())
                        .toList()
                : List.of();
    }
}
