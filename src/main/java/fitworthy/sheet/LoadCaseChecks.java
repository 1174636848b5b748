package fitworthy.sheet;

import fitworthy.quantity.YesNo;
import fitworthy.source.NodePath;
import java.util.List;

/** What must hold of the ways of loading. */
final class LoadCaseChecks {

    private final Sheet sheet;
    private final SheetFaults faults;
    private final List<String> occupants;
    private final List<String> cargo;
    private final List<String> fitments;
    private final List<String> tanks;

    LoadCaseChecks(Sheet sheet, SheetFaults faults) {
        this.sheet = sheet;
        this.faults = faults;
        this.occupants = sheet.occupants().stream().map(Sheet.Load::name).toList();
        this.cargo = sheet.cargo().stream().map(Sheet.Load::name).toList();
        this.fitments = sheet.fitments().stream().map(Fitment::name).toList();
        this.tanks = sheet.tanks().stream().map(Tank::name).toList();
    }

    void run() {
        for (int i = 1; i <= sheet.cases().size(); i++) {
            loadCase(sheet.cases().get(i - 1), NodePath.of("cases").to(i));
        }
    }

    private void loadCase(LoadCase loadCase, NodePath path) {
        names(loadCase.aboard().orElse(List.of()), "occupants", occupants, path.to("aboard"));
        names(loadCase.carrying().orElse(List.of()), "cargo", cargo, path.to("carrying"));
        names(loadCase.off(), "fitments", fitments, path.to("off"));
        for (int i = 1; i <= loadCase.off().size(); i++) {
            removable(loadCase.off().get(i - 1), path.to("off").to(i));
        }
        loadCase.filled().forEach((tank, share) -> {
            faults.name(tank, "tanks", tanks, path.to("filled").to(tank));
            faults.share(share, path.to("filled").to(tank));
        });
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

    /** A part that a load case leaves off comes off at all. */
    private void removable(String part, NodePath path) {
        int index = fitments.indexOf(part);
        if (index < 0) {
            return;
        }
        NodePath fitment = NodePath.of("fitments").to(index + 1);
        if (!sheet.fitments().get(index).removable().is(YesNo.YES) && faults.complete("removable", fitment)) {
            faults.tell(
                    "'" + part + "' is off here, but the part is not marked as removable",
                    "removable: yes, in " + fitment,
                    path);
        }
    }
}
