package fitworthy.sheet;

import fitworthy.quantity.YesNo;
import fitworthy.source.NodePath;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What must hold of the ways of loading. */
final class LoadCaseChecks {

    private final Sheet sheet;
    private final SheetFaults faults;
    private final List<String> occupants;
    private final List<String> cargo;
    private final List<String> fitments;
    private final List<String> tanks;
    private final List<String> parts = new ArrayList<>();
    /** Whether it is known what all parts and tanks are called. */
    private final boolean partsSettled;

    LoadCaseChecks(Sheet sheet, SheetFaults faults) {
        this.sheet = sheet;
        this.faults = faults;
        this.occupants = sheet.occupants().stream().map(Sheet.Person::name).toList();
        this.cargo = sheet.cargo().stream().map(Sheet.Load::name).toList();
        this.fitments = sheet.fitments().stream().map(Fitment::name).toList();
        this.tanks = sheet.tanks().stream().map(Tank::name).toList();
        parts.addAll(fitments);
        parts.addAll(tanks);
        this.partsSettled = faults.settled("fitments", "name") && faults.settled("tanks", "name");
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
        for (int i = 1; i <= loadCase.off().size(); i++) {
            String part = loadCase.off().get(i - 1);
            if (partsSettled) {
                faults.listed(part, "fitments and tanks", parts, path.to("off").to(i));
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

    private void names(List<String> used, String list, List<String> known, NodePath path) {
        for (int i = 1; i <= used.size(); i++) {
            faults.name(used.get(i - 1), list, known, path.to(i));
        }
    }

    /** What a load case takes along does not stand in or on what it leaves off. */
    private void carrying(List<String> taken, LoadCase loadCase, NodePath path) {
        Set<String> off = sheet.withContents(loadCase.off());
        for (Sheet.Load load : sheet.cargo()) {
            if (taken.contains(load.name()) && !load.in().isEmpty() && off.contains(load.in())) {
                faults.tell(
                        "'" + load.name() + "' is taken along, but '" + load.in()
                                + "', which it stands in or on, is off",
                        "leave it out here, or its 'in'",
                        path.to(taken.indexOf(load.name()) + 1));
            }
        }
    }

    /** What a load case leaves off comes off at all, by itself or with what it stands in. */
    private void removable(String part, NodePath path) {
        int fitment = fitments.indexOf(part);
        int tank = tanks.indexOf(part);
        if (fitment >= 0) {
            Fitment off = sheet.fitments().get(fitment);
            removable(
                    part,
                    off.removable().is(YesNo.YES) || !off.in().isEmpty(),
                    path,
                    NodePath.of("fitments").to(fitment + 1));
        } else if (tank >= 0) {
            Tank off = sheet.tanks().get(tank);
            removable(
                    part,
                    off.comesOff() || !off.in().isEmpty(),
                    path,
                    NodePath.of("tanks").to(tank + 1));
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
