package fitworthy.sheet;

import fitworthy.quantity.YesNo;
import fitworthy.source.NodePath;
import fitworthy.source.Words;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What must hold of the ways of loading. */
final class LoadCaseChecks {

    private static final String PARTS = "fitments and tanks";

    /** A part or tank that may be left off. @param where its place in the sheet */
    private record Listed(boolean comesOff, NodePath where) {}

    private final Sheet sheet;
    private final SheetFaults faults;
    private final Set<String> occupants;
    private final Set<String> cargo;
    private final Set<String> tanks;
    /** The parts and tanks by name, of two of one name the first. */
    private final Map<String, Listed> listed = new LinkedHashMap<>();
    /** Whether it is known what all parts and tanks are called. */
    private final boolean partsSettled;

    LoadCaseChecks(Sheet sheet, SheetFaults faults) {
        this.sheet = sheet;
        this.faults = faults;
        this.occupants = names(sheet.occupants(), Sheet.Person::name);
        this.cargo = names(sheet.cargo(), Sheet.Load::name);
        this.tanks = names(sheet.tanks(), Tank::name);
        for (int i = 1; i <= sheet.fitments().size(); i++) {
            Fitment part = sheet.fitments().get(i - 1);
            boolean comesOff = part.removable().is(YesNo.YES) || !part.in().isEmpty();
            listed.putIfAbsent(
                    part.name(), new Listed(comesOff, NodePath.of("fitments").to(i)));
        }
        for (int i = 1; i <= sheet.tanks().size(); i++) {
            Tank tank = sheet.tanks().get(i - 1);
            boolean comesOff = tank.comesOff() || !tank.in().isEmpty();
            listed.putIfAbsent(
                    tank.name(), new Listed(comesOff, NodePath.of("tanks").to(i)));
        }
        this.partsSettled = faults.settled("fitments", "name") && faults.settled("tanks", "name");
    }

    private static <T> Set<String> names(List<T> entries, Function<T, String> name) {
        return entries.stream().map(name).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    void run() {
        for (int i = 1; i <= sheet.cases().size(); i++) {
            loadCase(sheet.cases().get(i - 1), NodePath.of("cases").to(i));
        }
    }

    private void loadCase(LoadCase loadCase, NodePath path) {
        names(loadCase.aboard().orElse(List.of()), "occupants", occupants, path.to("aboard"));
        names(loadCase.carrying().orElse(List.of()), "cargo", cargo, path.to("carrying"));
        carrying(loadCase.carrying().orElse(List.of()), loadCase, path.to("carrying"));
        faults.namedOnce(loadCase.off(), path.to("off"));
        for (int i = 1; i <= loadCase.off().size(); i++) {
            String part = loadCase.off().get(i - 1);
            if (partsSettled && !elsewhere(part, PARTS, path.to("off").to(i))) {
                faults.listed(part, PARTS, listed.keySet(), path.to("off").to(i));
            }
            removable(part, path.to("off").to(i));
        }
        loadCase.filled()
                .keySet()
                .forEach(tank ->
                        faults.name(tank, "tanks", tanks, path.to("filled").to(tank)));
        if (loadCase.towing().is(YesNo.YES) && sheet.trailer().isEmpty() && faults.complete("trailer", NodePath.TOP)) {
            faults.tell(
                    "tows, but the sheet has no trailer",
                    "trailer: {name: Camper, mass: 1400 kg, ball: 130 kg}",
                    path.to("towing"));
        }
    }

    private void names(List<String> used, String list, Set<String> known, NodePath path) {
        faults.namedOnce(used, path);
        for (int i = 1; i <= used.size(); i++) {
            if (!elsewhere(used.get(i - 1), list, path.to(i))) {
                faults.name(used.get(i - 1), list, known, path.to(i));
            }
        }
    }

    /** Tells of a name that stands in another list than the field takes, which field takes it. */
    private boolean elsewhere(String name, String list, NodePath path) {
        boolean person = occupants.contains(name);
        boolean load = cargo.contains(name);
        boolean part = listed.containsKey(name);
        if (person && list.equals("occupants")
                || load && list.equals("cargo")
                || part && list.equals(PARTS)
                || !person && !load && !part) {
            return false;
        }
        faults.tell(
                "'" + Words.shortened(name, 60) + "' is not among the " + list + " but among the "
                        + (person ? "occupants" : load ? "cargo" : PARTS),
                person
                        ? "leave it out here; aboard names the people who are aboard"
                        : load
                                ? "leave it out here; carrying names the cargo that is taken along"
                                : "leave it out here; off names the parts and tanks that are off, and all others are on",
                path);
        return true;
    }

    /** What a load case takes along does not stand in or on what it leaves off. */
    private void carrying(List<String> taken, LoadCase loadCase, NodePath path) {
        Set<String> off = sheet.withContents(loadCase.off());
        for (Sheet.Load load : sheet.cargo()) {
            if (!load.in().isEmpty() && off.contains(load.in()) && taken.contains(load.name())) {
                faults.tell(
                        "'" + load.name() + "' is taken along, but '" + load.in()
                                + "', which it stands in or on, is off",
                        "leave it out here, since it is left with the part; a load that is moved elsewhere stands once more under"
                                + " cargo, with another name and that place",
                        path.to(taken.indexOf(load.name()) + 1));
            }
        }
    }

    /** What a load case leaves off comes off at all, by itself or with what it stands in. */
    private void removable(String part, NodePath path) {
        Listed off = listed.get(part);
        if (off != null) {
            removable(part, off.comesOff(), path, off.where());
        }
    }

    private void removable(String part, boolean comesOff, NodePath path, NodePath where) {
        if (!comesOff && faults.complete("removable", where)) {
            faults.tell(
                    "'" + part + "' is off here, but the part is not marked as removable",
                    "removable: yes, in " + where,
                    path);
        }
    }
}
