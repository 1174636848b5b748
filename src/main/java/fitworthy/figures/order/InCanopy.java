package fitworthy.figures.order;

import fitworthy.figures.plan.Plan;
import fitworthy.sheet.ElectricalDetails.Battery;
import fitworthy.sheet.ElectricalDetails.BatteryPlace;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Fitment.Kind;
import fitworthy.sheet.LoadCase;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Which parts can be fitted only once the canopy is there: what the sheet says is in it, or comes off with it. */
final class InCanopy {

    /** What is at home in or on a canopy; a bar that comes off in the same loading is not. */
    private static final Set<Kind> AT_HOME = EnumSet.of(
            Kind.OTHER,
            Kind.LOCKER,
            Kind.ROOF_RACK,
            Kind.BATTERY,
            Kind.CHARGER,
            Kind.INVERTER,
            Kind.SOLAR_PANEL,
            Kind.SWITCH_PANEL,
            Kind.GAS_BOTTLE,
            Kind.FIREARM_BOX,
            Kind.REAR_CAMERA,
            Kind.RADIO,
            Kind.AERIAL,
            Kind.RECOVERY_KIT);

    private InCanopy() {}

    static boolean is(Plan plan, Fitment part) {
        return holds(plan, part.name())
                || part.details() instanceof Battery battery && battery.place().is(BatteryPlace.CANOPY)
                || AT_HOME.contains(part.kind())
                        && plan.fitments(Kind.CANOPY).stream().anyMatch(canopy -> comesOffWith(plan, part, canopy));
    }

    /** Whether a part or tank stands in or on a canopy by what the sheet says, or in what does. */
    static boolean holds(Plan plan, String name) {
        List<String> canopies =
                plan.fitments(Kind.CANOPY).stream().map(Fitment::name).toList();
        return !canopies.contains(name) && plan.sheet().withContents(canopies).contains(name);
    }

    private static boolean comesOffWith(Plan plan, Fitment part, Fitment canopy) {
        List<LoadCase> without = plan.cases().stream()
                .filter(loadCase -> loadCase.off().contains(canopy.name()))
                .toList();
        return !without.isEmpty()
                && plan.cases().stream()
                        .filter(loadCase -> loadCase.off().contains(part.name()))
                        .toList()
                        .equals(without);
    }
}
