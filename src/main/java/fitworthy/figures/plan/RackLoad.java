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
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What stands on a rack whose maker names what it may carry: what the sheet says stands in or on it, be the rack on the roof
 * or on a canopy, and on the only rack on the roof the cargo up there. Where it says so of nothing, parts on the roof stand on
 * that rack too; else they may be fixed to the roof itself.
 *
 * @param rack the name of the rack
 * @param load what stands on it, without itself
 * @param most what it may carry, kg; missing where it takes knowing on which of several racks something stands
 * @param standing the rack and all that the sheet puts on it, by name
 * @param bearsRoof whether it is the only one on the roof
 */
public record RackLoad(String rack, RoofLoad load, Figure most, Set<String> standing, boolean bearsRoof) {

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
        racks.forEach(rack -> standing.put(rack, standing(sheet, rack)));
        Set<String> onSome = standing.values().stream().flatMap(Set::stream).collect(Collectors.toSet());
        RoofLoad open = RoofLoad.of(loading).only(name -> !onSome.contains(name));
        List<Fitment> above = racks.stream()
                .filter(rack -> !Masses.onRoof(rack, sheet).is(YesNo.NO))
                .toList();
        Set<String> cargo = sheet.cargo().stream().map(Sheet.Load::name).collect(Collectors.toSet());
        List<RackLoad> loads = new ArrayList<>();
        standing.forEach((rack, names) -> {
            Figure most = most(rack, RoofLimit.leavesTheSeal(sheet));
            if (most.known()) {
                RoofLoad told = RoofLoad.standing(loading, names).only(name -> !name.equals(rack.name()));
                boolean only = above.equals(List.of(rack));
                RoofLoad load = !only ? told : told.loads().isEmpty() ? open : told.with(open.only(cargo::contains));
                boolean decides = above.size() > 1
                        && above.contains(rack)
                        && load.sum().isAtMost(most)
                        && !load.sum().plus(open.sum()).isAtMost(most);
                loads.add(new RackLoad(rack.name(), load, decides ? Figure.missing(on(open)) : most, names, only));
            }
        });
        return loads;
    }

    /** Whether it would carry something. @param in what that stands in or on @param roof whether it is on the roof */
    public boolean takes(String in, Choice<YesNo> roof) {
        return standing.contains(in) || bearsRoof && !roof.is(YesNo.NO);
    }

    /** Whether a mass is part of what stands on it. */
    public boolean bears(PointMass mass) {
        return load.loads().stream().anyMatch(on -> on.name().equals(mass.name()));
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
                .flatMap(rack -> standing(sheet, rack).stream().filter(name -> !name.equals(rack.name())))
                .collect(Collectors.toSet());
    }

    /** A rack and all that the sheet puts on it, or in what stands there; of tanks what they hold, too. */
    private static Set<String> standing(Sheet sheet, Fitment rack) {
        Set<String> names = new HashSet<>(new Contents(sheet.fitments(), sheet.tanks()).with(List.of(rack.name())));
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
