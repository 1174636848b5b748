package fitworthy.advice;

import fitworthy.figures.plan.Alterations;
import fitworthy.figures.plan.PointMass;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Fitment.Removed;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What is aboard once all is left out that can be but one planned part: the vehicle, its people and animals, what is done
 * already, the part and what it stands in or on. Of a tank its contents are left out, and of a trailer what is on the ball.
 *
 * @param it the part or tank
 * @param staying all parts and tanks that stay, and animals, by name
 * @param takenOff what comes off for these, as its mass is called
 */
record LeftAboard(String it, Set<String> staying, Set<String> takenOff) {

    static LeftAboard with(String it, Sheet sheet) {
        Map<String, String> in = new HashMap<>();
        sheet.fitments().forEach(part -> in.put(part.name(), part.in()));
        sheet.tanks().forEach(tank -> in.put(tank.name(), tank.in()));
        Set<String> staying = new HashSet<>();
        for (String next = it; next != null && staying.add(next); ) {
            next = in.get(next);
        }
        sheet.fitments().stream().filter(Fitment::isDone).map(Fitment::name).forEach(staying::add);
        sheet.tanks().stream()
                .filter(tank -> tank.isDone() || !Alterations.added(tank))
                .map(Tank::name)
                .forEach(staying::add);
        sheet.cargo().stream().filter(Sheet.Load::isAlive).map(Sheet.Load::name).forEach(staying::add);
        Set<String> takenOff = new HashSet<>();
        sheet.fitments().forEach(part -> add(part.name(), part.removes(), staying, takenOff));
        sheet.tanks().forEach(tank -> add(tank.name(), tank.removes(), staying, takenOff));
        return new LeftAboard(it, staying, takenOff);
    }

    private static void add(String name, Optional<Removed> removes, Set<String> staying, Set<String> takenOff) {
        removes.filter(removed -> staying.contains(name))
                .ifPresent(removed -> takenOff.add(PointMass.takenOff(removed.name())));
    }

    /** Whether a mass is among it. */
    boolean holds(PointMass mass) {
        return switch (mass.sort()) {
            case VEHICLE, COUNTED, RESIDUAL, OCCUPANT -> true;
            case FITMENT, TANK, CARGO -> staying.contains(mass.name());
            case REMOVED -> takenOff.contains(mass.name());
            case LIQUID, BALL -> false;
        };
    }

    /** Whether a mass is the part or tank itself. */
    boolean isIt(PointMass mass) {
        return (mass.sort() == Sort.FITMENT || mass.sort() == Sort.TANK)
                && mass.name().equals(it);
    }
}
