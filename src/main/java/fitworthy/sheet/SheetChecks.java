package fitworthy.sheet;

import fitworthy.source.Fault;
import fitworthy.source.Node;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What must hold between the fields of a sheet before anything is computed from it. */
final class SheetChecks {

    /** How far the two axle masses may be from the kerb mass: the step of a usual weighbridge, common practice. */
    private static final double WEIGHBRIDGE_STEP_KG = 20;

    private final Node root;
    private final Sheet sheet;
    private final Set<String> regions;
    private final List<Fault> faults;

    SheetChecks(Node root, Sheet sheet, Set<String> regions, List<Fault> faults) {
        this.root = root;
        this.sheet = sheet;
        this.regions = regions;
        this.faults = faults;
    }

    void run() {
        if (!regions.contains(sheet.region())) {
            fault("region", "the rule book has no region '" + sheet.region() + "'"
                    + Words.suggestion(sheet.region(), regions), "one of " + String.join(", ", regions));
        }
        vehicle();
        fitments();
        joints();
        tanks();
        uniqueNames("fitments", sheet.fitments().stream().map(Fitment::name).toList());
        uniqueNames("tanks", tankNames());
        uniqueNames("occupants", sheet.occupants().stream().map(Sheet.Load::name).toList());
        uniqueNames("cargo", sheet.cargo().stream().map(Sheet.Load::name).toList());
        uniqueNames("cases", sheet.cases().stream().map(LoadCase::name).toList());
        uniqueNames("options", sheet.options().stream().map(Sheet.Option::name).toList());
        for (int i = 0; i < sheet.options().size(); i++) {
            option(sheet.options().get(i), "options." + (i + 1));
        }
        for (int i = 0; i < sheet.cases().size(); i++) {
            loadCase(sheet.cases().get(i), "cases." + (i + 1));
        }
    }

    private void vehicle() {
        tyres("vehicle.tyres", sheet.vehicle().tyres());
        tyreSize("vehicle.spare.size", sheet.vehicle().spare().size());
        Vehicle.Masses mass = sheet.vehicle().mass();
        double sum = mass.frontAxle().value() + mass.rearAxle().value();
        double allowed = Math.max(WEIGHBRIDGE_STEP_KG, mass.kerb().tolerance());
        if (mass.kerb().known() && Math.abs(sum - mass.kerb().value()) > allowed) {
            fault("vehicle.mass.kerb", String.format(Locale.ROOT,
                    "front and rear axle sum to %.0f kg, but the kerb mass is %.0f kg", sum, mass.kerb().value()),
                    String.format(Locale.ROOT, "kerb: %.0f kg, or axle masses that sum to it", sum));
        }
        if (mass.kerb().known() && mass.kerb().value() <= 0) {
            fault("vehicle.mass.kerb", "is not above zero", "kerb: 2340 kg");
        }
        unsprung("front", sheet.vehicle().suspension().front(), mass.frontAxle());
        unsprung("rear", sheet.vehicle().suspension().rear(), mass.rearAxle());
        Figure wheelbase = sheet.vehicle().size().wheelbase();
        if (!(wheelbase.value() > 0.5 && wheelbase.value() < 12)) {
            fault("vehicle.size.wheelbase", "is not between 0.5 m and 12 m", "wheelbase: 2850 mm");
        }
        boolean stockTank = sheet.tanks().stream().anyMatch(tank -> tank.stock().is(YesNo.YES));
        if (mass.kerbFuel().value() > 0 && !stockTank) {
            fault("vehicle.mass.kerb-fuel", "counts fuel in the kerb mass, but no tank is marked 'stock: yes'",
                    "list the maker's tank under tanks with 'stock: yes'");
        }
        if (mass.kerbDriver().value() > 0 && sheet.occupants().isEmpty()) {
            fault("vehicle.mass.kerb-driver", "counts a driver in the kerb mass, but no occupant says where he sits",
                    "list the driver first under occupants");
        }
    }

    private void unsprung(String end, Vehicle.AxleSuspension suspension, Figure axle) {
        if (suspension.unsprung().value() >= axle.value()) {
            fault("vehicle.suspension." + end + ".unsprung", "leaves nothing of the axle's kerb mass for the springs",
                    "unsprung: 180 kg");
        }
    }

    private void fitments() {
        for (int i = 0; i < sheet.fitments().size(); i++) {
            Fitment fitment = sheet.fitments().get(i);
            if (fitment.mass().value() > 0 && fitment.at().isEmpty()) {
                fault("fitments." + (i + 1), "'" + fitment.name() + "' has a mass but no place",
                        "at: {x: 2950 mm, y: 0 mm, z: 900 mm}");
            }
            if (fitment.details() instanceof Vehicle.Tyres tyres) {
                tyres("fitments." + (i + 1), tyres);
            }
        }
    }

    private void tyres(String path, Vehicle.Tyres tyres) {
        tyreSize(path + ".size", tyres.size());
        double rim = TyreSize.read(tyres.size()).map(TyreSize::rim).orElse(0.0);
        if (tyres.diameter().value() <= rim) {
            fault(path + ".diameter", "is no larger than the rim", "diameter: 802 mm");
        }
    }

    private void tyreSize(String path, String size) {
        if (!size.isEmpty() && TyreSize.read(size).isEmpty()) {
            fault(path, "'" + Words.shortened(size, 60) + "' is not a tyre size",
                    "size: 265/65R17, 33x12.50R15 or 7.50R16, without load index and speed symbol");
        }
    }

    private void joints() {
        uniqueNames("fitments", sheet.fitments().stream().map(Fitment::details)
                .filter(Details.Snorkel.class::isInstance).map(Details.Snorkel.class::cast)
                .flatMap(snorkel -> snorkel.joints().stream()).map(Details.Joint::name).toList());
    }

    private void tanks() {
        for (int i = 0; i < sheet.tanks().size(); i++) {
            share("tanks." + (i + 1) + ".fill", sheet.tanks().get(i).fill());
        }
        share("vehicle.mass.kerb-fuel", sheet.vehicle().mass().kerbFuel());
    }

    private void share(String path, Figure share) {
        if (share.value() > 1) {
            fault(path, "is more than full", "100 % or less");
        }
    }

    private void loadCase(LoadCase loadCase, String path) {
        loadCase.aboard().ifPresent(names -> known(names, path + ".aboard", "occupants",
                sheet.occupants().stream().map(Sheet.Load::name).toList()));
        loadCase.carrying().ifPresent(names -> known(names, path + ".carrying", "cargo",
                sheet.cargo().stream().map(Sheet.Load::name).toList()));
        List<String> removable = sheet.fitments().stream()
                .filter(fitment -> fitment.removable().is(YesNo.YES)).map(Fitment::name).toList();
        known(loadCase.off(), path + ".off", "fitments with 'removable: yes'", removable);
        known(loadCase.filled().keySet(), path + ".filled", "tanks", tankNames());
        loadCase.filled().forEach((tank, share) -> share(path + ".filled." + tank, share));
        if (loadCase.towing().is(YesNo.YES) && sheet.trailer().isEmpty()) {
            fault(path + ".towing", "tows, but the sheet has no trailer",
                    "trailer: {name: Camper, mass: 1400 kg, ball: 130 kg}");
        }
    }

    private void option(Sheet.Option option, String path) {
        List<String> parts = new ArrayList<>(tankNames());
        sheet.fitments().forEach(each -> parts.add(each.name()));
        List<String> choices = option.choices().stream().map(Sheet.Alternative::name).toList();
        if (choices.size() < 2) {
            fault(path + ".choices", "there are fewer than two to choose from",
                    "choices: [{name: alloy, parts: [Alloy tray]}, {name: steel, parts: [Steel tray]}]");
        }
        uniqueNames(path + ".choices", choices);
        option.choices().forEach(choice -> known(choice.parts(), path + ".choices", "fitments and tanks", parts));
        if (!option.take().isEmpty()) {
            known(List.of(option.take()), path + ".take", "choices", choices);
        }
    }

    private List<String> tankNames() {
        return sheet.tanks().stream().map(Tank::name).toList();
    }

    private void known(Collection<String> names, String path, String where, Collection<String> knownNames) {
        for (String name : names) {
            if (!knownNames.contains(name)) {
                fault(path, "'" + Words.shortened(name, 60) + "' is not among the " + where
                        + Words.suggestion(name, knownNames),
                        knownNames.isEmpty() ? "leave it out, or add it there" : "one of " + String.join(", ", knownNames));
            }
        }
    }

    private void uniqueNames(String path, List<String> names) {
        List<String> doubled = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String name : names) {
            if (!seen.add(name)) {
                doubled.add(name);
            }
        }
        for (String name : doubled) {
            fault(path, "two of them are called '" + Words.shortened(name, 60) + "'", "a name of its own for each");
        }
    }

    private void fault(String path, String problem, String mend) {
        faults.add(new Fault(root.nearest(path).place(), path, problem, mend));
    }
}
