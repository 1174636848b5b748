package fitworthy.figures.plan;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Contents;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.MassDetails.RoofRack;
import fitworthy.sheet.Sheet;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What stands on a rack whose maker names what it may carry, or ought to, since much is on the roof: what the sheet says stands in or on it, be the rack on the roof
 * or on a canopy, and on the only rack on either the cargo up there. Where it says so of nothing, parts up there stand on
 * that rack too; else they may be fixed to the roof or the canopy itself.
 *
 * @param rack the name of the rack
 * @param load what stands on it, without itself
 * @param most what it may carry, kg; missing where it takes knowing on which of several racks something stands
 * @param standing the rack and all that the sheet puts on it, by name
 * @param onRoof whether it is on the roof
 * @param open what stands on it or on another, as the sheet does not say on which
 */
public record RackLoad(String rack, RoofLoad load, Figure most, Set<String> standing, boolean onRoof, RoofLoad open) {

    private static final RoofLoad NOTHING = new RoofLoad(List.of(), List.of());

    /** Those of the racks that are on in a loading. */
    public static List<RackLoad> of(Loading loading) {
        List<Fitment> racks = loading.plan().fitments(Fitment.Kind.ROOF_RACK).stream()
                .filter(loading::carries)
                .toList();
        if (racks.isEmpty()) {
            return List.of();
        }
        Sheet sheet = loading.plan().sheet();
        Map<Fitment, Set<String>> standing = new LinkedHashMap<>();
        racks.forEach(rack -> standing.put(rack, standing(sheet, rack.name())));
        Set<String> onSome = standing.values().stream().flatMap(Set::stream).collect(Collectors.toSet());
        RoofLoad onRoof = RoofLoad.of(loading).only(name -> !onSome.contains(name));
        List<Fitment> above = racks.stream()
                .filter(rack -> !OnRoof.of(rack, sheet).is(YesNo.NO))
                .toList();
        boolean muchUp = !RoofLoad.of(loading).sum().isAtMost(RoofLimit.asked(loading.plan()));
        Set<String> cargo = sheet.cargo().stream().map(Sheet.Load::name).collect(Collectors.toSet());
        List<RackLoad> loads = new ArrayList<>();
        standing.forEach((rack, names) -> {
            Figure most = most(rack, RoofLimit.leavesTheSeal(sheet));
            boolean roof = above.contains(rack);
            if (most.known() || muchUp && roof) {
                RoofLoad told = RoofLoad.standing(loading, names).only(name -> !name.equals(rack.name()));
                Optional<CanopyTop> canopy = roof ? Optional.empty() : CanopyTop.under(sheet, rack);
                RoofLoad open = roof
                        ? onRoof
                        : canopy.map(top -> onTop(loading, top, onSome)).orElse(NOTHING);
                boolean only = roof
                        ? above.size() == 1
                        : canopy.filter(top -> top.isOnly(racks)).isPresent();
                RoofLoad load = !only ? told : told.loads().isEmpty() ? open : told.with(open.only(cargo::contains));
                // Of an empty one nothing is asked.
                if (!most.known() && load.loads().isEmpty()) {
                    return;
                }
                boolean decides = !only
                        && load.sum().isAtMost(most)
                        && !load.sum().plus(open.sum()).isAtMost(most);
                loads.add(new RackLoad(
                        rack.name(),
                        load,
                        decides ? Figure.missing(on(open)) : most,
                        names,
                        roof,
                        only ? NOTHING : open));
            }
        });
        return loads;
    }

    /** What is on top of a canopy, or may be, and on no rack by the words of the sheet. */
    private static RoofLoad onTop(Loading loading, CanopyTop canopy, Set<String> onSome) {
        Sheet sheet = loading.plan().sheet();
        return canopy.standing().entrySet().stream()
                .filter(up -> !onSome.contains(up.getKey()))
                .map(up -> RoofLoad.standing(loading, standing(sheet, up.getKey()), up.getValue()))
                .reduce(NOTHING, RoofLoad::with);
    }

    /** Whether it would carry something, or may. @param in what that stands in or on @param roof whether it is on the roof */
    public boolean takes(String in, Choice<YesNo> roof) {
        return standing.contains(in) || onRoof && !roof.is(YesNo.NO);
    }

    /** What is on it already where something stands there too; with all that may be, where no one says that it stands on this one. */
    public RoofLoad beside(String in) {
        return standing.contains(in) ? load : load.with(open);
    }

    /** Whether a mass is part of what stands on it. @param mass by name */
    public boolean bears(String mass) {
        return load.loads().stream().anyMatch(on -> on.name().equals(mass));
    }

    private static Missing on(RoofLoad open) {
        return new Missing(
                "fitments", "on which rack " + open.loads().get(0).name() + " stands, in its 'in'", "the plan");
    }

    /** All that the sheet puts on the racks that are on, by name. */
    public static Set<String> onRacks(Loading loading) {
        Sheet sheet = loading.plan().sheet();
        return loading.plan().fitments(Fitment.Kind.ROOF_RACK).stream()
                .filter(loading::carries)
                .flatMap(rack -> standing(sheet, rack.name()).stream().filter(name -> !name.equals(rack.name())))
                .collect(Collectors.toSet());
    }

    /** A rack, or what else has a name, and all that the sheet puts on it, or in what stands there; of tanks what they hold, too. */
    private static Set<String> standing(Sheet sheet, String carrier) {
        Set<String> names = new HashSet<>(new Contents(sheet.fitments(), sheet.tanks()).with(List.of(carrier)));
        sheet.cargo().stream()
                .filter(load -> names.contains(load.in()))
                .map(Sheet.Load::name)
                .toList()
                .forEach(names::add);
        sheet.tanks().stream()
                .filter(tank -> names.contains(tank.name()))
                .map(Liquids::name)
                .toList()
                .forEach(names::add);
        return names;
    }

    /** What its maker names for the way of the trip, else what he names for the road; off the road alone counts there. */
    private static Figure most(Fitment rack, boolean offRoad) {
        RoofRack details = (RoofRack) rack.details();
        if (!offRoad || !details.carriesOffRoad().known()) {
            return details.carries();
        }
        return details.carries().known() ? details.carries().least(details.carriesOffRoad()) : details.carriesOffRoad();
    }
}
