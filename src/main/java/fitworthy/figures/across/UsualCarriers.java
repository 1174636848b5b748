package fitworthy.figures.across;

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
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The kind of part that a thing usually stands in or on, where the sheet does not say what it does: a winch on a bar, what
 * is on the roof on a rack, lamps, aerials and batteries by their place. Common practice.
 */
final class UsualCarriers {

    private UsualCarriers() {}

    /**
     * What has none of its usual carriers left, by name.
     *
     * @param aboard the parts that are there
     * @param cargo what is carried beside them
     * @param gone the parts of the sheet that are not there
     */
    static Set<String> without(List<Fitment> aboard, List<Sheet.Load> cargo, List<Fitment> gone) {
        Set<Kind> left = kinds(gone);
        left.removeAll(kinds(aboard));
        Map<String, Kind> carried = new TreeMap<>();
        aboard.stream().filter(part -> part.in().isEmpty()).forEach(part -> of(part).ifPresent(
                        kind -> carried.put(part.name(), kind)));
        cargo.stream()
                .filter(load -> load.in().isEmpty() && load.roof().is(YesNo.YES))
                .forEach(load -> carried.put(load.name(), Kind.ROOF_RACK));
        return carried.entrySet().stream()
                .filter(each -> left.contains(each.getValue()))
                .map(Map.Entry::getKey)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<Kind> kinds(List<Fitment> parts) {
        return parts.stream().map(Fitment::kind).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Optional<Kind> of(Fitment part) {
        return Stream.of(
                        kindIf(part.kind() == Kind.WINCH, Kind.BAR),
                        kindIf(part.details() instanceof Lamps lamps && onBar(lamps.place()), Kind.BAR),
                        kindIf(
                                part.details() instanceof Aerial aerial
                                        && aerial.place().is(AerialPlace.BAR),
                                Kind.BAR),
                        kindIf(
                                part.details() instanceof Battery battery
                                        && battery.place().is(BatteryPlace.CANOPY),
                                Kind.CANOPY),
                        kindIf(part.roof().is(YesNo.YES) && part.kind() != Kind.ROOF_RACK, Kind.ROOF_RACK))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static boolean onBar(Choice<LampPlace> place) {
        return place.is(LampPlace.BEHIND_BAR) || place.is(LampPlace.AHEAD_OF_BAR) || place.is(LampPlace.ON_TOP_OF_BAR);
    }

    private static Optional<Kind> kindIf(boolean is, Kind kind) {
        return is ? Optional.of(kind) : Optional.empty();
    }
}
