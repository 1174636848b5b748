package fitworthy.sheet;

import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.source.Fault;
import fitworthy.source.Node;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What must hold between the fields of a sheet before anything is computed from it. A sheet with faults is checked too,
 * so that its author hears of everything at once; a check whose own fields are among the faults is left out, since what
 * it would say follows from them.
 */
final class SheetChecks {

    /** How far the two axle masses may be from the kerb mass: the step of a usual weighbridge, common practice. */
    private static final double WEIGHBRIDGE_STEP_KG = 20;
    /** Ten years: a time that no supplier or workshop means. */
    private static final double MOST_DAYS = 3650;

    private final Node.Mapping root;
    private final Sheet sheet;
    private final Set<String> regions;
    private final Set<String> strays;
    private final Set<String> told = new HashSet<>();
    private final List<Fault> faults;

    /**
     * @param root the tree the sheet was made of
     * @param strays paths of groups in which a field has no known name
     * @param faults what was found wrong so far; gets what is found here
     */
    SheetChecks(Node.Mapping root, Sheet sheet, Set<String> regions, Set<String> strays, List<Fault> faults) {
        this.root = root;
        this.sheet = sheet;
        this.regions = regions;
        this.strays = strays;
        this.faults = faults;
        faults.forEach(fault -> told.add(fault.path()));
    }

    void run() {
        if (!told.contains("region") && !regions.contains(sheet.region())) {
            tell(
                    "the rule book has no region '" + sheet.region() + "'" + Words.suggestion(sheet.region(), regions),
                    "region: one of " + String.join(", ", regions),
                    "region");
        }
        vehicle();
        fitments();
        joints();
        tanks();
        uniqueNames("fitments", sheet.fitments().stream().map(Fitment::name).toList());
        uniqueNames("tanks", tankNames());
        uniqueNames("jobs", sheet.jobs().stream().map(Job::name).toList());
        work();
        uniqueNames(
                "occupants", sheet.occupants().stream().map(Sheet.Load::name).toList());
        uniqueNames("cargo", sheet.cargo().stream().map(Sheet.Load::name).toList());
        uniqueNames("circuits", sheet.circuits().stream().map(Circuit::name).toList());
        uniqueNames("cases", sheet.cases().stream().map(LoadCase::name).toList());
        uniqueNames("options", sheet.options().stream().map(Sheet.Option::name).toList());
        for (int i = 1; i <= sheet.options().size(); i++) {
            option(sheet.options().get(i - 1), i);
        }
        for (int i = 1; i <= sheet.cases().size(); i++) {
            loadCase(sheet.cases().get(i - 1), i);
        }
        for (int i = 1; i <= sheet.circuits().size(); i++) {
            circuit(sheet.circuits().get(i - 1), i);
        }
        waivers();
    }

    /** A load case that a waiver names; without any there is one, which is not named in the sheet. */
    private void waivers() {
        for (int i = 1; i <= sheet.waivers().size(); i++) {
            String in = sheet.waivers().get(i - 1).in();
            if (!in.isEmpty() && !sheet.cases().isEmpty()) {
                name(in, "cases", sheet.cases().stream().map(LoadCase::name).toList(), "waivers", i, "in");
            }
        }
    }

    private void vehicle() {
        tyres(sheet.vehicle().tyres(), "vehicle", "tyres");
        tyreSize(sheet.vehicle().spare().size(), "vehicle", "spare");
        Vehicle.Masses mass = sheet.vehicle().mass();
        boolean above = aboveZero(mass.kerb(), "kerb", "2340 kg")
                & aboveZero(mass.frontAxle(), "front-axle", "1290 kg")
                & aboveZero(mass.rearAxle(), "rear-axle", "1050 kg");
        double sum = mass.frontAxle().value() + mass.rearAxle().value();
        double allowed = Math.max(WEIGHBRIDGE_STEP_KG, mass.kerb().tolerance());
        if (above && Math.abs(sum - mass.kerb().value()) > allowed) {
            tell(
                    String.format(
                            Locale.ROOT,
                            "front and rear axle sum to %.0f kg, but the kerb mass is %.0f kg",
                            sum,
                            mass.kerb().value()),
                    String.format(Locale.ROOT, "kerb: %.0f kg, or axle masses that sum to it", sum),
                    "vehicle",
                    "mass",
                    "kerb");
        }
        unsprung("front", sheet.vehicle().suspension().front(), mass.frontAxle());
        unsprung("rear", sheet.vehicle().suspension().rear(), mass.rearAxle());
        Figure wheelbase = sheet.vehicle().size().wheelbase();
        if (wheelbase.known() && !(wheelbase.value() > 0.5 && wheelbase.value() < 12)) {
            tell("is not between 0.5 m and 12 m", "wheelbase: 2850 mm", "vehicle", "size", "wheelbase");
        }
        boolean stockTank = sheet.tanks().stream().anyMatch(tank -> tank.stock().is(YesNo.YES));
        if (mass.kerbFuel().value() > 0 && !stockTank && settled("tanks", "stock")) {
            tell(
                    "counts fuel in the kerb mass, but no tank is marked 'stock: yes'",
                    "list the maker's tank under tanks with 'stock: yes'",
                    "vehicle",
                    "mass",
                    "kerb-fuel");
        }
        if (mass.kerbDriver().value() > 0 && sheet.occupants().isEmpty() && settled("occupants")) {
            tell(
                    "counts a driver in the kerb mass, but no occupant says where he sits",
                    "list the driver first under occupants",
                    "vehicle",
                    "mass",
                    "kerb-driver");
        }
        share(mass.kerbFuel(), "vehicle", "mass", "kerb-fuel");
    }

    /** Whether a mass of the bare vehicle is known and above zero; a fault where it is known and is not. */
    private boolean aboveZero(Figure mass, String name, String example) {
        if (mass.known() && mass.value() <= 0) {
            tell("is not above zero", name + ": " + example, "vehicle", "mass", name);
        }
        return mass.value() > 0;
    }

    private void unsprung(String end, Vehicle.AxleSuspension suspension, Figure axle) {
        if (suspension.unsprung().value() >= axle.value()) {
            tell(
                    "leaves nothing of the axle's kerb mass for the springs",
                    "unsprung: 180 kg",
                    "vehicle",
                    "suspension",
                    end,
                    "unsprung");
        }
    }

    private void fitments() {
        for (int i = 1; i <= sheet.fitments().size(); i++) {
            Fitment fitment = sheet.fitments().get(i - 1);
            if (fitment.mass().value() > 0 && fitment.at().isEmpty() && complete("at", "fitments", i)) {
                tell("has a mass but no place", "at: {x: 2950 mm, y: 0 mm, z: 900 mm}", "fitments", i, "at");
            }
            if (fitment.details() instanceof Vehicle.Tyres tyres) {
                tyres(tyres, "fitments", i);
            }
        }
    }

    private void work() {
        Set<String> all = new LinkedHashSet<>(tankNames());
        sheet.fitments().forEach(each -> all.add(each.name()));
        sheet.jobs().forEach(each -> all.add(each.name()));
        boolean settled = settled("fitments", "name") && settled("tanks", "name") && settled("jobs", "name");
        for (int i = 1; i <= sheet.fitments().size(); i++) {
            Fitment each = sheet.fitments().get(i - 1);
            work(each.name(), each.work(), settled, all, "fitments", i);
            leadTime(each.leadTime(), "fitments", i);
        }
        for (int i = 1; i <= sheet.tanks().size(); i++) {
            Tank each = sheet.tanks().get(i - 1);
            work(each.name(), each.work(), settled, all, "tanks", i);
            leadTime(each.leadTime(), "tanks", i);
        }
        for (int i = 1; i <= sheet.jobs().size(); i++) {
            Job each = sheet.jobs().get(i - 1);
            work(each.name(), each.work(), settled, all, "jobs", i);
        }
    }

    /** @param settled whether it is known what {@code all} parts and jobs are called */
    private void work(String name, Work work, boolean settled, Set<String> all, Object... group) {
        Object[] steps = then(group, "work");
        for (int i = 1; settled && i <= work.after().size(); i++) {
            Object[] after = then(then(steps, "after"), i);
            listed(work.after().get(i - 1), "fitments, tanks and jobs", all, after);
            if (work.after().get(i - 1).equals(name)) {
                tell("'" + Words.shortened(name, 60) + "' cannot come after itself", "leave it out", after);
            }
        }
        if (work.days().value() > MOST_DAYS) {
            tell("is longer than ten years", "days: 1.5", then(steps, "days"));
        }
    }

    private void leadTime(Figure leadTime, Object... group) {
        if (leadTime.value() > MOST_DAYS * Dimension.size("days")) {
            tell("is longer than ten years", "lead-time: 21 days", then(group, "lead-time"));
        }
    }

    private void tyres(Vehicle.Tyres tyres, Object... group) {
        tyreSize(tyres.size(), group);
        double rim = TyreSize.read(tyres.size()).map(TyreSize::rim).orElse(0.0);
        if (tyres.diameter().value() <= rim) {
            tell("is no larger than the rim", "diameter: 802 mm", then(group, "diameter"));
        }
    }

    private void tyreSize(String size, Object... group) {
        if (!size.isEmpty() && TyreSize.read(size).isEmpty()) {
            tell(
                    "'" + Words.shortened(size, 60) + "' is not a tyre size",
                    "size: 265/65R17, 33x12.50R15 or 7.50R16, without load index and speed symbol",
                    then(group, "size"));
        }
    }

    /** Joints of all snorkels together: the advice tells them apart by name. */
    private void joints() {
        Set<String> seen = new HashSet<>();
        for (int i = 1; i <= sheet.fitments().size(); i++) {
            if (sheet.fitments().get(i - 1).details() instanceof Details.Snorkel snorkel) {
                for (int j = 1; j <= snorkel.joints().size(); j++) {
                    uniqueName(snorkel.joints().get(j - 1).name(), seen, "fitments", i, "joints", j);
                }
            }
        }
    }

    private void tanks() {
        for (int i = 1; i <= sheet.tanks().size(); i++) {
            share(sheet.tanks().get(i - 1).fill(), "tanks", i, "fill");
        }
    }

    private void share(Figure share, Object... steps) {
        if (share.value() > 1) {
            tell("is more than full", steps[steps.length - 1] + ": 100 % or less", steps);
        }
    }

    private void circuit(Circuit circuit, int number) {
        if (!circuit.part().isEmpty()) {
            name(
                    circuit.part(),
                    "fitments",
                    sheet.fitments().stream().map(Fitment::name).toList(),
                    "circuits",
                    number,
                    "part");
        }
        if (circuit.voltage().value() <= 0) {
            tell("is not above zero", "voltage: 12 V", "circuits", number, "voltage");
        }
        if (circuit.cable().section().value() <= 0) {
            tell("is not above zero", "section: 6 mm2", "circuits", number, "cable", "section");
        }
    }

    private void loadCase(LoadCase loadCase, int number) {
        names(
                loadCase.aboard().orElse(List.of()),
                "occupants",
                sheet.occupants().stream().map(Sheet.Load::name).toList(),
                "cases",
                number,
                "aboard");
        names(
                loadCase.carrying().orElse(List.of()),
                "cargo",
                sheet.cargo().stream().map(Sheet.Load::name).toList(),
                "cases",
                number,
                "carrying");
        List<String> fitments = sheet.fitments().stream().map(Fitment::name).toList();
        names(loadCase.off(), "fitments", fitments, "cases", number, "off");
        for (int i = 1; i <= loadCase.off().size(); i++) {
            int position = fitments.indexOf(loadCase.off().get(i - 1)) + 1;
            if (position > 0
                    && !sheet.fitments().get(position - 1).removable().is(YesNo.YES)
                    && complete("removable", "fitments", position)) {
                tell(
                        "'" + fitments.get(position - 1) + "' is off here, but the part is not marked as removable",
                        "removable: yes, in fitments." + position,
                        "cases",
                        number,
                        "off",
                        i);
            }
        }
        loadCase.filled().forEach((tank, share) -> {
            name(tank, "tanks", tankNames(), "cases", number, "filled", tank);
            share(share, "cases", number, "filled", tank);
        });
        if (loadCase.towing().is(YesNo.YES) && sheet.trailer().isEmpty() && complete("trailer")) {
            tell(
                    "tows, but the sheet has no trailer",
                    "trailer: {name: Camper, mass: 1400 kg, ball: 130 kg}",
                    "cases",
                    number,
                    "towing");
        }
    }

    private void option(Sheet.Option option, int number) {
        List<Sheet.Alternative> choices = option.choices();
        if (choices.size() < 2 && complete("choices", "options", number)) {
            tell(
                    "there are fewer than two to choose from",
                    "choices: [{name: alloy, parts: [Alloy tray]}, {name: steel, parts: [Steel tray]}]",
                    "options",
                    number,
                    "choices");
        }
        List<String> parts = new ArrayList<>(tankNames());
        sheet.fitments().forEach(each -> parts.add(each.name()));
        boolean partsSettled = settled("fitments", "name") && settled("tanks", "name");
        Set<String> seen = new HashSet<>();
        for (int i = 1; i <= choices.size(); i++) {
            uniqueName(choices.get(i - 1).name(), seen, "options", number, "choices", i);
            for (int j = 1; partsSettled && j <= choices.get(i - 1).parts().size(); j++) {
                listed(
                        choices.get(i - 1).parts().get(j - 1),
                        "fitments and tanks",
                        parts,
                        "options",
                        number,
                        "choices",
                        i,
                        "parts",
                        j);
            }
        }
        String beginning = path("options", number, "choices");
        if (!option.take().isEmpty() && told.stream().noneMatch(each -> each.startsWith(beginning))) {
            listed(
                    option.take(),
                    "choices",
                    choices.stream().map(Sheet.Alternative::name).toList(),
                    "options",
                    number,
                    "take");
        }
    }

    private List<String> tankNames() {
        return sheet.tanks().stream().map(Tank::name).toList();
    }

    private void names(List<String> used, String list, List<String> known, Object... steps) {
        for (int i = 1; i <= used.size(); i++) {
            name(used.get(i - 1), list, known, then(steps, i));
        }
    }

    private void name(String name, String list, List<String> known, Object... steps) {
        if (!known.contains(name) && settled(list, "name")) {
            listed(name, list, known, steps);
        }
    }

    /** A fault where a name is not among those known. */
    private void listed(String name, String where, Collection<String> known, Object... steps) {
        if (!known.contains(name) && !told.contains(path(steps))) {
            tell(
                    "'" + Words.shortened(name, 60) + "' is not among the " + where + Words.suggestion(name, known),
                    known.isEmpty() ? "leave it out, or add it there" : "one of " + String.join(", ", known),
                    steps);
        }
    }

    private void uniqueNames(String list, List<String> names) {
        Set<String> seen = new HashSet<>();
        for (int i = 1; i <= names.size(); i++) {
            uniqueName(names.get(i - 1), seen, list, i);
        }
    }

    private void uniqueName(String name, Set<String> seen, Object... group) {
        if (!name.isEmpty() && !seen.add(name)) {
            tell(
                    "two of them are called '" + Words.shortened(name, 60) + "'",
                    "a name of its own for each",
                    then(group, "name"));
        }
    }

    /** Whether nothing found so far puts in doubt which entries a list has, and what this field of them is. */
    private boolean settled(String list, String... field) {
        if (!complete(list)) {
            return false;
        }
        int size =
                root.get(list) instanceof Node.Listing listing ? listing.items().size() : 0;
        for (int i = 1; i <= size; i++) {
            if (told.contains(path(list, i)) || field.length > 0 && !complete(field[0], list, i)) {
                return false;
            }
        }
        return true;
    }

    /**
     * Whether a group says of a field what its author meant to say: not with a fault, nor perhaps under a wrong name.
     */
    private boolean complete(String field, Object... group) {
        if (told.isEmpty() && strays.isEmpty()) {
            return true;
        }
        boolean given = root.nearest(group) instanceof Node.Mapping mapping && mapping.get(field) != null;
        return !told.contains(path(then(group, field))) && (given || !strays.contains(path(group)));
    }

    /** Adds a fault. @param steps the way to its field: names, and positions in lists counted from one */
    private void tell(String problem, String mend, Object... steps) {
        faults.add(new Fault(root.nearest(steps).place(), path(steps), problem, mend));
    }

    private static Object[] then(Object[] steps, Object next) {
        Object[] longer = Arrays.copyOf(steps, steps.length + 1, Object[].class);
        longer[steps.length] = next;
        return longer;
    }

    private static String path(Object... steps) {
        return Arrays.stream(steps).map(String::valueOf).collect(Collectors.joining("."));
    }
}
