package fitworthy.figures.plan;

import fitworthy.quantity.Choice;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.BodyDetails.SeatChange;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Papers.Alteration;
import fitworthy.sheet.Papers.Proof;
import fitworthy.sheet.Tank;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Which alterations that may have to be certified are made; the one list that every topic goes by. */
public final class Alterations {

    private Alterations() {}

    /**
     * A part or tank that makes some.
     *
     * @param name its name in the sheet
     * @param makes what it alters
     * @param done whether it is on the vehicle already
     * @param certificate whether the certificate for it is in hand
     */
    public record Altering(String name, Set<Alteration> makes, boolean done, Choice<Proof> certificate) {

        /** Whether it was certified in its day, so that nobody has to be asked any more. */
        boolean isCertified() {
            return certified(done, certificate);
        }
    }

    /** Those that the plan makes, in the order in which the sheet's format lists them; not those that are done. */
    public static Set<Alteration> of(Plan plan) {
        Set<Alteration> all = EnumSet.noneOf(Alteration.class);
        altering(plan).stream().filter(part -> !part.done()).forEach(part -> all.addAll(part.makes()));
        return all;
    }

    /** Every part and tank that makes one. */
    public static List<Altering> altering(Plan plan) {
        List<Altering> altering = new ArrayList<>();
        for (Fitment part : plan.sheet().fitments()) {
            Set<Alteration> makes = goesBack(plan, part) ? Set.of() : of(part.kind());
            if (!makes.isEmpty()) {
                altering.add(new Altering(part.name(), makes, part.isDone(), part.certificate()));
            }
        }
        for (Tank tank : plan.sheet().tanks()) {
            if (added(tank) && !tank.isCan() && !tank.liquid().is(Tank.Liquid.WATER)) {
                altering.add(
                        new Altering(tank.name(), Set.of(Alteration.FUEL_TANK), tank.isDone(), tank.certificate()));
            }
        }
        return altering;
    }

    /** Whether all that makes this alteration is done, with its certificate in hand; no where nothing makes it. */
    public static boolean certified(Plan plan, Alteration alteration) {
        List<Altering> making = altering(plan).stream()
                .filter(part -> part.makes().contains(alteration))
                .toList();
        return !making.isEmpty() && making.stream().allMatch(Altering::isCertified);
    }

    /** Whether a tank was certified in its day. */
    public static boolean certified(Tank tank) {
        return certified(tank.isDone(), tank.certificate());
    }

    /** Whether a part was certified in its day. */
    public static boolean certified(Fitment part) {
        return certified(part.isDone(), part.certificate());
    }

    private static boolean certified(boolean done, Choice<Proof> certificate) {
        return done && certificate.is(Proof.HELD);
    }

    /** Whether seats are out for a while alone and none are added. */
    private static boolean goesBack(Plan plan, Fitment part) {
        return part.details() instanceof SeatChange change
                && change.permanent().is(YesNo.NO)
                && change.seats().isAtMost(plan.vehicle().seats());
    }

    private static Set<Alteration> of(Fitment.Kind kind) {
        return switch (kind) {
            case CHASSIS_EXTENSION -> Set.of(Alteration.CHASSIS);
            case BODY_CUT -> Set.of(Alteration.BODY);
            case RATING_UPGRADE -> Set.of(Alteration.RATINGS);
            case SEAT_CHANGE -> Set.of(Alteration.SEATS);
            case TYRES -> Set.of(Alteration.TYRES, Alteration.RIDE_HEIGHT);
            case WHEELS, WHEEL_SPACERS -> Set.of(Alteration.TYRES);
            case SPRINGS, BODY_LIFT -> Set.of(Alteration.RIDE_HEIGHT);
            default -> Set.of();
        };
    }

    /** Whether a tank is added where it may hang under the floor, or of which nobody knows that it does not. */
    public static boolean underFloor(Plan plan, Tank tank) {
        return added(tank)
                && !tank.isCan()
                && tank.in().isEmpty()
                && !plan.places().of(tank).z().isAbove(plan.practice(PracticeId.BODY_UNDER_FLOOR_MOST));
    }

    /** Whether a tank is not the maker's own. */
    public static boolean added(Tank tank) {
        return tank.stock().is(YesNo.NO);
    }
}
