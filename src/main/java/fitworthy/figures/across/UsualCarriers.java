package fitworthy.figures.across;

import fitworthy.figures.plan.OnRoof;
import fitworthy.quantity.Choice;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.ElectricalDetails.Battery;
import fitworthy.sheet.ElectricalDetails.BatteryPlace;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Fitment.Kind;
import fitworthy.sheet.FrontDetails.LampPlace;
import fitworthy.sheet.FrontDetails.Lamps;
import fitworthy.sheet.RadioDetails.Aerial;
import fitworthy.sheet.RadioDetails.AerialPlace;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The kind of part that a thing usually stands in or on, where the sheet does not say what it does: a winch on a bar, what
 * is on the roof on a rack, lamps, aerials and batteries by their place. Common practice.
 */
final class UsualCarriers {

    /** @param is whether the part stands there, as far as its place tells */
    private record Usual(Kind kind, Choice<YesNo> is) {}

    private UsualCarriers() {}

    /**
     * What has none of its usual carriers left, by name: yes, or open where it is not known whether it stood on one.
     *
     * @param aboard the parts that are there
     * @param tanks those that are on
     * @param cargo what is carried beside them
     * @param gone the parts of the sheet that are not there
     */
    static Map<String, Choice<YesNo>> without(
            List<Fitment> aboard, List<Tank> tanks, List<Sheet.Load> cargo, List<Fitment> gone) {
        Set<Kind> left = kinds(gone);
        left.removeAll(kinds(aboard));
        Map<String, Choice<YesNo>> without = new TreeMap<>();
        for (Fitment part : aboard) {
            if (part.in().isEmpty() && part.kind() != Kind.ROOF_RACK) {
                Optional<Usual> usual = of(part).filter(carrier -> left.contains(carrier.kind()));
                if (usual.isPresent()) {
                    without.put(part.name(), usual.get().is());
                } else if (left.contains(Kind.ROOF_RACK)) {
                    without.put(part.name(), OnRoof.of(part));
                }
            }
        }
        tanks.stream()
                .filter(tank -> tank.in().isEmpty() && left.contains(Kind.ROOF_RACK))
                .forEach(tank -> without.put(tank.name(), OnRoof.of(tank)));
        cargo.stream()
                .filter(load -> load.in().isEmpty() && left.contains(Kind.ROOF_RACK))
                .forEach(load -> without.put(load.name(), OnRoof.of(load)));
        without.values().removeIf(answer -> answer.is(YesNo.NO));
        return without;
    }

    private static Set<Kind> kinds(List<Fitment> parts) {
        return parts.stream().map(Fitment::kind).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Optional<Usual> of(Fitment part) {
        if (part.kind() == Kind.WINCH) {
            return Optional.of(new Usual(Kind.BAR, Choice.of(YesNo.YES)));
        }
        if (part.details() instanceof Lamps lamps) {
            return Optional.of(new Usual(
                    Kind.BAR,
                    stands(lamps.place(), LampPlace.BEHIND_BAR, LampPlace.AHEAD_OF_BAR, LampPlace.ON_TOP_OF_BAR)));
        }
        if (part.details() instanceof Aerial aerial) {
            return Optional.of(new Usual(Kind.BAR, stands(aerial.place(), AerialPlace.BAR)));
        }
        return part.details() instanceof Battery battery
                ? Optional.of(new Usual(Kind.CANOPY, stands(battery.place(), BatteryPlace.CANOPY)))
                : Optional.empty();
    }

    @SafeVarargs
    private static <E extends Enum<E>> Choice<YesNo> stands(Choice<E> place, E... there) {
        return place.known() ? Choice.yesNo(List.of(there).contains(place.value())) : Choice.missing(place.missing());
    }
}
