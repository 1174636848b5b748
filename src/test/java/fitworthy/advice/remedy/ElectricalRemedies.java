package fitworthy.advice.remedy;

import static fitworthy.advice.remedy.Act.less;
import static fitworthy.advice.remedy.Act.more;
import static fitworthy.advice.remedy.Act.set;
import static fitworthy.advice.remedy.Doing.says;
import static fitworthy.advice.remedy.Fields.changed;
import static fitworthy.advice.remedy.Where.at;
import static fitworthy.advice.remedy.Where.of;

import fitworthy.sheet.Circuit;
import fitworthy.sheet.Fitment;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Trees;
import java.util.List;

/** Batteries, cables, fuses and panels. */
final class ElectricalRemedies {

    private static final Where FUSE = (tree, sheet, finding) -> {
        String subject = finding.judged().subject();
        String far = " at the far end";
        return List.of(
                subject.endsWith(far)
                        ? "circuits." + subject.substring(0, subject.length() - far.length()) + ".far-fuse"
                        : "circuits." + subject + ".fuse");
    };

    private static final Where BOARD = (tree, sheet, finding) -> sheet.planned().circuits().stream()
            .filter(circuit -> circuit.name().equals(finding.judged().subject()))
            .map(circuit -> "circuits." + circuit.board() + ".cable.section")
            .toList();

    private ElectricalRemedies() {}

    static void into(RemedyTable table) {
        table.rule(
                "electrical.alternator-over",
                says("alternator of at least ", "\\.", set(at("vehicle.engine.alternator"))));
        table.rule(
                "electrical.lead-too-deep electrical.lithium-too-deep",
                says("capacity of at least ", ",", set(of(Fitment.Kind.BATTERY, "vehicle", "capacity"))));
        table.rule("electrical.starter-drained", says("no more than ", " is drawn", (tree, sheet, finding, amount) -> {
            Node.Mapping changed = tree;
            for (Circuit circuit : sheet.planned().circuits()) {
                changed = Trees.with(changed, NodePath.of("circuits", circuit.name(), "current"), "0 A");
                changed = Trees.with(changed, NodePath.of("circuits", circuit.name(), "standby"), "0 mA");
            }
            return List.of(
                    changed(changed, NodePath.parse("vehicle.engine.own-standby"), now -> amount.value(), "mA", true));
        }));
        table.rule(
                "electrical.drop-critical electrical.drop-other",
                says("Use ", ", or a run", set(at("circuits.{subject}.cable.section"))),
                says(", or a run ", " shorter", less(at("circuits.{subject}.cable.length"))),
                says("shorter\\. ", " would", set(at("circuits.{subject}.cable.section"))));
        table.rule(
                "electrical.way-drop",
                says("Use ", " copper to it", set(at("circuits.{subject}.cable.section")))
                        .and(says("to it and ", " to ", set(BOARD))));
        table.rule("electrical.voltage-wrong", says("name ", " in the circuit", set(at("circuits.{subject}.voltage"))));
        table.rule("electrical.cable-thin", says("at least ", " instead", set(at("circuits.{subject}.cable.section"))));
        // At the heat of its place, as the remedy has it.
        table.rule("electrical.cable-over-rating", says("at least ", ",", (tree, sheet, finding, amount) -> set(at(
                        "circuits.{subject}.cable.rating"))
                .done(
                        Trees.with(
                                tree,
                                NodePath.of("circuits", finding.judged().subject(), "cable", "rating-hot"),
                                "yes"),
                        sheet,
                        finding,
                        amount)));
        table.rule(
                "electrical.exhaust-close", says("it ", " further", more(at("circuits.{subject}.cable.exhaust-gap"))));
        table.rule("electrical.fuse-below-load", says("at least ", " if", set(fuse("rating"))));
        table.rule(
                "electrical.no-fuse-suits",
                says("cable of ", " (?:or more )?and", set(at("circuits.{subject}.cable.section")))
                        .and(says("fuse of ", "\\.", set(fuse("rating")))));
        table.rule(
                "electrical.fuse-above-cable electrical.fuse-far-above-cable",
                says("no more than ", "\\.", set(fuse("rating"))));
        table.rule(
                "electrical.fuse-far electrical.fuse-far-enclosed",
                says("within ", " of", set(fuse("distance"))),
                says("terminal, ", " nearer", less(fuse("distance"))));
        table.rule(
                "electrical.panel-full", says("with ", " ways", set(of(Fitment.Kind.SWITCH_PANEL, "vehicle", "ways"))));
        table.rule(
                "electrical.panels-regroup",
                says("Connect ", " in each", set(at("fitments.{subject}.in-series")))
                        .and(says("string, and ", " strings", set(at("fitments.{subject}.strings")))));
        table.rule(
                "electrical.charge-over",
                says("charged with at least ", "\\.", set(of(Fitment.Kind.BATTERY, "vehicle", "most-charge"))));
        table.rule(
                "electrical.discharge-over",
                says("battery that gives ", " without", set(of(Fitment.Kind.BATTERY, "vehicle", "most-discharge"))));
        table.rule(
                "electrical.inverter-weak",
                says("at least ", " without stopping", set(at("fitments.{subject}.continuous"))));
        table.rule("electrical.inverter-together", says("at least ", "\\.", set(at("fitments.{subject}.continuous"))));
        table.rule(
                "electrical.inverter-start-weak",
                says("at least ", " for a moment", set(at("fitments.{subject}.surge"))));
        table.rule(
                "electrical.inverter-start-beside",
                says("at least ", " for a moment", set(at("fitments.{subject}.surge"))));
        table.told(RemedyTable.LEFT_OR_USUAL, "electrical.charger-hot");
        table.told(
                RemedyTable.LEFT_OR_USUAL,
                "electrical.batteries-apart electrical.batteries-mixed electrical.charger-gains electrical.lithium-charged-in-frost electrical.lithium-idle-in-frost"
                        + " electrical.panels-over electrical.panels-over-cold electrical.panels-strong electrical.panels-unlike");
    }

    private static Where fuse(String field) {
        return (tree, sheet, finding) -> FUSE.paths(tree, sheet, finding).stream()
                .map(path -> path + "." + field)
                .toList();
    }
}
