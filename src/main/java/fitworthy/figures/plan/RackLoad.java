package fitworthy.figures.plan;

import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Contents;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.MassDetails.RoofRack;
import fitworthy.sheet.Sheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What stands on a roof rack whose maker names what it may carry: what the sheet says stands in or on it. Where it says so of
 * nothing on the roof, all of it stands on the only rack.
 *
 * @param rack the name of the rack
 * @param load what stands on it, without itself
 * @param most what it may carry, kg; missing where it takes knowing on which of several racks something stands
 * @param takes whether it would carry what is put on the roof, by what that stands in or on
 */
public record RackLoad(String rack, RoofLoad load, Figure most, Predicate<String> takes) {

    /** Those of the racks that are on the roof in a loading, or may be. */
    public static List<RackLoad> of(Loading loading) {
        List<Fitment> racks = loading.plan().fitments(Fitment.Kind.ROOF_RACK).stream()
                .filter(rack -> loading.carries(rack) && !rack.roof().is(YesNo.NO))
                .toList();
        if (racks.isEmpty()) {
            return List.of();
        }
        Sheet sheet = loading.plan().sheet();
        Map<Fitment, Predicate<String>> on = new LinkedHashMap<>();
        racks.forEach(rack -> on.put(rack, on(sheet, rack)));
        Set<String> names = racks.stream().map(Fitment::name).collect(Collectors.toSet());
        RoofLoad onRoof = RoofLoad.of(loading).only(name -> !names.contains(name));
        Predicate<String> onSome = on.values().stream().reduce(name -> false, Predicate::or);
        RoofLoad open = onRoof.only(onSome.negate());
        boolean all = racks.size() == 1 && onRoof.only(onSome).loads().isEmpty();
        List<RackLoad> loads = new ArrayList<>();
        on.forEach((rack, stands) -> {
            Figure most = most(rack, RoofLimit.leavesTheSeal(sheet));
            if (most.known()) {
                Predicate<String> takes = all ? name -> true : stands;
                RoofLoad load = onRoof.only(takes);
                boolean decides = racks.size() > 1
                        && load.sum().isAtMost(most)
                        && !load.sum().plus(open.sum()).isAtMost(most);
                loads.add(new RackLoad(rack.name(), load, decides ? Figure.missing(on(open)) : most, takes));
            }
        });
        return loads;
    }

    private static Missing on(RoofLoad open) {
        return new Missing(
                "fitments", "on which rack " + open.loads().get(0).name() + " stands, in its 'in'", "the plan");
    }

    /** Whether something of this name stands on a rack, or in what does. */
    private static Predicate<String> on(Sheet sheet, Fitment rack) {
        Set<String> parts = new Contents(sheet.fitments(), sheet.tanks()).with(List.of(rack.name()));
        Set<String> cargo = sheet.cargo().stream()
                .filter(load -> parts.contains(load.in()))
                .map(Sheet.Load::name)
                .collect(Collectors.toSet());
        return name -> parts.contains(name) || cargo.contains(name);
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
