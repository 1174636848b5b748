package fitworthy.figures.mass;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Masses;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PointMass;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import java.util.List;

/**
 * How high the centre of gravity is before anything is carried: that of the bare vehicle. A cab chassis is made to carry
 * a body, and nobody drives it without one, so its tray counts in; common practice.
 */
final class BareHeight {

    private BareHeight() {}

    static Figure of(Plan plan) {
        Figure height = plan.vehicle().mass().cogHeight();
        Figure whole = plan.vehicle().mass().kerb();
        Figure moment = Figure.of(0, 0);
        for (PointMass tray : trays(plan)) {
            // One that was on the vehicle when it was weighed is in its kerb mass.
            whole = isDone(tray, plan) ? whole : whole.plus(tray.mass());
            moment = moment.plus(tray.mass().times(tray.at().z().minus(height)));
        }
        return height.plus(moment.dividedBy(whole));
    }

    /** How it is worked out; nothing where it is the bare vehicle's own. */
    static List<Working> working(Plan plan) {
        List<PointMass> trays = trays(plan);
        // One on the vehicle already is in its kerb mass, and of several the sum says too little.
        if (trays.size() != 1 || isDone(trays.get(0), plan)) {
            return List.of();
        }
        return List.of(new Working.Formula(
                "unladen = vehicle + tray x (tray height - vehicle) / (kerb + tray)",
                List.of(
                        in("kerb", plan.vehicle().mass().kerb(), "kg"),
                        in("vehicle", plan.vehicle().mass().cogHeight(), "mm"),
                        in("tray", trays.get(0).mass(), "kg"),
                        in("tray height", trays.get(0).at().z(), "mm"))));
    }

    static boolean isCabChassis(Plan plan) {
        return plan.vehicle().tub().is(YesNo.NO)
                && !plan.fitments(Fitment.Kind.TRAY).isEmpty();
    }

    private static List<PointMass> trays(Plan plan) {
        List<String> names =
                plan.fitments(Fitment.Kind.TRAY).stream().map(Fitment::name).toList();
        return isCabChassis(plan)
                ? Masses.fixed(plan).stream()
                        .filter(mass -> mass.sort() == PointMass.Sort.FITMENT && names.contains(mass.name()))
                        .toList()
                : List.of();
    }

    private static boolean isDone(PointMass tray, Plan plan) {
        return plan.fitments(Fitment.Kind.TRAY).stream()
                .anyMatch(part -> part.name().equals(tray.name()) && part.isDone());
    }
}
