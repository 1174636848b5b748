package fitworthy.sheet;

import fitworthy.quantity.Figure;
import fitworthy.schema.Bound;
import fitworthy.source.Fault;
import fitworthy.source.NodePath;
import fitworthy.source.Words;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What must hold between the fields of a sheet before anything is computed from it. A sheet with faults is checked too,
 * so that its author hears of everything at once.
 */
final class SheetChecks {

    private final Sheet sheet;
    private final Map<String, List<String>> regions;
    private final SheetFaults faults;

    /**
     * @param regions what people call each region of the rule book, by its id
     * @param faults what was found wrong so far; gets what is found here
     */
    SheetChecks(Bound<Sheet> read, Map<String, List<String>> regions, List<Fault> faults) {
        this.sheet = read.record();
        this.regions = regions;
        this.faults = new SheetFaults(read, faults);
    }

    void run() {
        region();
        new VehicleChecks(sheet, faults).run();
        new PartChecks(sheet, faults).run();
        faults.uniqueNames(
                "fitments", sheet.fitments().stream().map(Fitment::name).toList());
        faults.uniqueNames("tanks", sheet.tanks().stream().map(Tank::name).toList());
        faults.uniqueNames("jobs", sheet.jobs().stream().map(Job::name).toList());
        new WorkChecks(sheet, faults).run();
        faults.uniqueNames(
                "occupants", sheet.occupants().stream().map(Sheet.Person::name).toList());
        faults.uniqueNames("cargo", sheet.cargo().stream().map(Sheet.Load::name).toList());
        faults.uniqueNames(
                "circuits", sheet.circuits().stream().map(Circuit::name).toList());
        faults.uniqueNames("cases", sheet.cases().stream().map(LoadCase::name).toList());
        faults.uniqueNames(
                "options", sheet.options().stream().map(Sheet.Option::name).toList());
        new OptionChecks(sheet, faults).run();
        new LoadCaseChecks(sheet, faults).run();
        Set<String> fitments =
                sheet.fitments().stream().map(Fitment::name).collect(Collectors.toCollection(LinkedHashSet::new));
        for (int i = 1; i <= sheet.circuits().size(); i++) {
            circuit(
                    fitments,
                    sheet.circuits().get(i - 1),
                    NodePath.of("circuits").to(i));
        }
        new OrderChecks(sheet, faults).run();
        roofTent(fitments);
        aheadOfTheAxle();
        waivers();
        wanted();
    }

    /** Only the pin of a fifth wheel stands ahead of the rear axle; whether one is towed may not be said yet. */
    private void aheadOfTheAxle() {
        if (sheet.trailer().filter(trailer -> !trailer.onFifthWheel()).isEmpty()) {
            return;
        }
        NodePath vehicle = NodePath.of("vehicle");
        ahead(sheet.vehicle().size().ballOverhang(), vehicle.to("size"));
        ahead(sheet.vehicle().towBar().ballOverhang(), vehicle.to("tow-bar"));
        for (int i = 1; i <= sheet.fitments().size(); i++) {
            if (sheet.fitments().get(i - 1).details() instanceof TowingDetails.TowBar bar) {
                ahead(bar.ballOverhang(), NodePath.of("fitments").to(i));
            }
        }
    }

    private void ahead(Figure overhang, NodePath path) {
        if (overhang.value() < 0) {
            faults.tell(
                    "is ahead of the rear axle, where no ball is",
                    "ball-overhang: 1180 mm, or under the trailer hitch: fifth-wheel",
                    path.to("ball-overhang"));
        }
    }

    /** A day that is over before the sheet's own; another day to look at it on makes an old sheet late, not wrong. */
    private void wanted() {
        NodePath readyBy = NodePath.of("ready-by");
        if (sheet.readyBy() != null
                && sheet.asOf() != null
                && sheet.readyBy().isBefore(sheet.asOf())
                && faults.areOfOneFile(readyBy, NodePath.of("as-of"))) {
            faults.tell("is before the sheet's day, " + sheet.asOf(), "ready-by: a day that is still to come", readyBy);
        }
    }

    private void region() {
        NodePath region = NodePath.of("region");
        if (!faults.foundWhenReading(region) && !regions.containsKey(sheet.region())) {
            faults.tell(
                    "the rule book has no region '" + sheet.region() + "'"
                            + Words.suggestion(meant(sheet.region()), regions.keySet()),
                    "region: one of " + String.join(", ", regions.keySet()),
                    region);
        }
    }

    /** The id of the region that people call so; as written where none is. */
    private String meant(String written) {
        return regions.entrySet().stream()
                .filter(region -> Stream.concat(Stream.of(region.getKey()), region.getValue().stream())
                        .anyMatch(written::equalsIgnoreCase))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(written);
    }

    private void circuit(Set<String> fitments, Circuit circuit, NodePath path) {
        if (!circuit.part().isEmpty()) {
            faults.name(circuit.part(), "fitments", fitments, path.to("part"));
        }
        if (!circuit.board().isEmpty()) {
            board(circuit, path.to("board"));
        }
        if (!circuit.inverter().isEmpty()) {
            inverter(circuit, path.to("inverter"));
        }
    }

    /** What feeds a circuit of mains voltage is an inverter, on the same battery. */
    private void inverter(Circuit circuit, NodePath path) {
        List<String> inverters = sheet.fitments().stream()
                .filter(fitment -> fitment.kind() == Fitment.Kind.INVERTER)
                .map(Fitment::name)
                .toList();
        if (faults.settled("fitments", "kind")) {
            faults.listed(circuit.inverter(), "inverters", inverters, path);
        }
        if (circuit.voltage().known() && !circuit.isMains()) {
            faults.tell("is for circuits of mains voltage", "leave it out at a circuit of the battery's voltage", path);
        } else if (sheet.circuits().stream()
                .filter(feed -> !feed.isMains() && feed.part().equals(circuit.inverter()))
                .anyMatch(feed -> feed.battery().known()
                        && circuit.battery().known()
                        && !feed.battery().is(circuit.battery().value()))) {
            faults.tell("hangs on another battery than this circuit", "the same 'battery' at both", path);
        }
    }

    /** What a circuit hangs on is another one, of the same battery, and none that hangs on it. */
    private void board(Circuit circuit, NodePath path) {
        List<Circuit> all = sheet.circuits();
        faults.name(circuit.board(), "circuits", all.stream().map(Circuit::name).toList(), path);
        // More steps than there are circuits never come to a battery.
        List<Circuit> above = circuit.above(all).limit(all.size() + 1L).toList();
        if (above.size() > all.size()) {
            faults.tell("leads back to itself and to no battery", "leave it out at the one on the battery", path);
        } else if (above.stream()
                .anyMatch(feed -> feed.battery().known()
                        && circuit.battery().known()
                        && !feed.battery().is(circuit.battery().value()))) {
            faults.tell("hangs on another battery than this circuit", "the same 'battery' at both", path);
        } else if (circuit.isMains() || above.stream().anyMatch(Circuit::isMains)) {
            faults.tell(
                    "is for boards of the battery's voltage",
                    "leave it out at a circuit of mains voltage: it hangs on its inverter",
                    path);
        }
    }

    /** What people sleep in is a part or a load. */
    private void roofTent(Set<String> fitments) {
        String tent = sheet.trip().roofTent();
        if (!tent.isEmpty()) {
            List<String> names = Stream.concat(
                            fitments.stream(), sheet.cargo().stream().map(Sheet.Load::name))
                    .toList();
            faults.name(tent, "fitments", names, NodePath.of("trip", "roof-tent"));
        }
    }

    /** A load case that a waiver names; without any there is one, which is not named in the sheet. */
    private void waivers() {
        for (int i = 1; i <= sheet.waivers().size(); i++) {
            String in = sheet.waivers().get(i - 1).in();
            if (!in.isEmpty() && !sheet.cases().isEmpty()) {
                faults.name(
                        in,
                        "cases",
                        sheet.cases().stream().map(LoadCase::name).toList(),
                        NodePath.of("waivers").to(i).to("in"));
            }
        }
    }
}
