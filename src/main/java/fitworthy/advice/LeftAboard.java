package fitworthy.advice;

import fitworthy.figures.plan.Alterations;
import fitworthy.figures.plan.PointMass;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Fitment.Removed;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What is aboard once all is left out that can be but one planned part: the vehicle, its people and animals, what is done
 * already, the part and what it stands in or on. Of a tank its contents are left out, and of a trailer what is on the ball.
 *
 * @param in by part or tank what it stands in or on
 * @param takenOff by part or tank what comes off for it, as its mass is called
 * @param always the names of the masses that stay whatever the part is, beside those of the vehicle and its people
 */
record LeftAboard(Map<String, String> in, Map<String, String> takenOff, Set<String> always) {

    static LeftAboard of(Sheet sheet) {
        Map<String, String> in = new HashMap<>();
        Map<String, String> takenOff = new HashMap<>();
        sheet.fitments().forEach(part -> put(part.name(), part.in(), part.removes(), in, takenOff));
        sheet.tanks().forEach(tank -> put(tank.name(), tank.in(), tank.removes(), in, takenOff));
        Set<String> always = new HashSet<>();
        Stream.concat(
                        sheet.fitments().stream().filter(Fitment::isDone).map(Fitment::name),
                        sheet.tanks().stream()
                                .filter(tank -> tank.isDone() || !Alterations.added(tank))
                                .map(Tank::name))
                .forEach(name -> add(name, takenOff, always));
        sheet.cargo().stream().filter(Sheet.Load::isAlive).map(Sheet.Load::name).forEach(always::add);
        return new LeftAboard(in, takenOff, always);
    }

    private static void put(
            String name,
            String where,
            Optional<Removed> removes,
            Map<String, String> in,
            Map<String, String> takenOff) {
        in.put(name, where);
        removes.ifPresent(removed -> takenOff.put(name, PointMass.takenOff(removed.name())));
    }

    private static boolean add(String name, Map<String, String> takenOff, Set<String> names) {
        Optional.ofNullable(takenOff.get(name)).ifPresent(names::add);
        return names.add(name);
    }

    /** Whether a mass stays whatever the part is. */
    boolean keeps(PointMass mass) {
        return switch (mass.sort()) {
            case VEHICLE, COUNTED, RESIDUAL, OCCUPANT -> true;
            case FITMENT, TANK, CARGO, REMOVED -> always.contains(mass.name());
            case LIQUID, BALL -> false;
        };
    }

    /** The names of the masses that stay for a part or tank, its own among them. */
    Set<String> with(String it) {
        Set<String> names = new LinkedHashSet<>();
        for (String next = it; next != null && add(next, takenOff, names); ) {
            next = in.get(next);
        }
        names.removeAll(always);
        return names;
    }
}
