package fitworthy.figures.body;

import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** Which loads walls keep where they are. A tray, a shelf or a mat has none, and what stands on a rack is in nothing. */
final class ClosedIn {

    private ClosedIn() {}

    /** Whether what a load is said to stand in has walls on all sides, or stands in something that has. */
    static boolean by(Sheet sheet, Sheet.Load load) {
        Set<String> seen = new HashSet<>();
        Optional<Fitment> carrier = part(sheet, load.in());
        while (carrier.isPresent() && seen.add(carrier.get().name())) {
            switch (carrier.get().kind()) {
                case CANOPY, LOCKER, FIREARM_BOX -> {
                    return true;
                }
                case ROOF_RACK -> {
                    return false;
                }
                default -> carrier = part(sheet, carrier.get().in());
            }
        }
        return false;
    }

    /** Whether it stands on a rack. */
    static boolean onRack(Sheet sheet, Sheet.Load load) {
        return part(sheet, load.in())
                .filter(carrier -> carrier.kind() == Fitment.Kind.ROOF_RACK)
                .isPresent();
    }

    /**
     * Whether it counts among what lies loose. What is in or on a part may be held by that, so that only a sheet that says
     * otherwise counts; by itself nothing holds it until somebody says so.
     */
    static boolean liesLoose(Sheet sheet, Sheet.Load load) {
        return load.in().isEmpty()
                ? !load.secured().is(YesNo.YES)
                : load.secured().is(YesNo.NO) && !by(sheet, load);
    }

    private static Optional<Fitment> part(Sheet sheet, String name) {
        return sheet.fitments().stream()
                .filter(part -> part.name().equals(name))
                .findFirst();
    }
}
