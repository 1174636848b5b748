package fitworthy.figures.order;

import fitworthy.figures.plan.Plan;
import fitworthy.sheet.ElectricalDetails.Battery;
import fitworthy.sheet.ElectricalDetails.BatteryPlace;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Fitment.Kind;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Which parts can be fitted only once the canopy is there beside what the sheet or a place says stands in it. */
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

    /** For each canopy in which of the loadings it is off. */
    private final Set<List<Boolean>> without;
    /** What each loading names as off. */
    private final List<Set<String>> off;

    InCanopy(Plan plan) {
        List<String> canopies =
                plan.fitments(Kind.CANOPY).stream().map(Fitment::name).toList();
        off = plan.cases().stream().map(loadCase -> Set.copyOf(loadCase.off())).toList();
        without = canopies.stream()
                .map(this::off)
                .filter(cases -> cases.contains(true))
                .collect(Collectors.toSet());
    }

    boolean is(Fitment part) {
        return part.details() instanceof Battery battery && battery.place().is(BatteryPlace.CANOPY)
                || AT_HOME.contains(part.kind()) && without.contains(off(part.name()));
    }

    private List<Boolean> off(String name) {
        return off.stream().map(names -> names.contains(name)).toList();
    }
}
