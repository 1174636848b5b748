package fitworthy.figures.plan;

import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Papers.Alteration;
import fitworthy.sheet.Tank;
import java.util.EnumSet;
import java.util.Set;

/** Which of the alterations that may have to be certified a plan makes; the one list that every topic goes by. */
public final class Alterations {

    private Alterations() {}

    /** Those of the plan, in the order in which the sheet's format lists them. */
    public static Set<Alteration> of(Plan plan) {
        Set<Alteration> all = EnumSet.noneOf(Alteration.class);
        plan.sheet().fitments().forEach(fitment -> all.addAll(of(fitment.kind())));
        if (plan.sheet().tanks().stream()
                .anyMatch(tank -> added(tank) && !tank.isCan() && !tank.liquid().is(Tank.Liquid.WATER))) {
            all.add(Alteration.FUEL_TANK);
        }
        return all;
    }

    private static Set<Alteration> of(Fitment.Kind kind) {
        return switch (kind) {
            case CHASSIS_EXTENSION -> Set.of(Alteration.CHASSIS);
            case RATING_UPGRADE -> Set.of(Alteration.RATINGS);
            case SEAT_CHANGE -> Set.of(Alteration.SEATS);
            case TYRES -> Set.of(Alteration.TYRES, Alteration.RIDE_HEIGHT);
            case WHEELS -> Set.of(Alteration.TYRES);
            case SPRINGS, BODY_LIFT -> Set.of(Alteration.RIDE_HEIGHT);
            default -> Set.of();
        };
    }

    /** Whether a tank is not the maker's own. */
    public static boolean added(Tank tank) {
        return tank.stock().is(YesNo.NO);
    }
}
