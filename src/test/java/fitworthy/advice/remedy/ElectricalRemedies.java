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
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Batteries, cables, fuses and panels. */
public final class ElectricalRemedies {

    private static final Where FUSE = (tree, sheet, finding) -> {
        String subject = finding.judged().subject();
        String circuit = Circuit.named(subject);
        return List.of("circuits." + circuit + (circuit.equals(subject) ? ".fuse" : ".far-fuse"));
    };

    private static final Pattern CABLE_AND_FUSE =
            Pattern.compile("(the planned |more than )?([0-9.]+) mm2(?: \\([0-9/]+ AWG\\))?"
                    + "(?: rated for ([0-9.]+ A) or more)?(?: \\(beyond the table[^)]*\\))?(?: or more)? and "
                    + "(?:(?:the planned fuses?|fuses|a fuse) of (?:at most )?([0-9.]+ A)|a fuse that it carries)");
    private static final Pattern WAY = Pattern.compile(" to it and (.*) to (.*), or a shorter way");

    /** The one cable and fuse of the circuit, and of the board on its way. */
    public static final Doing SUITED = (tree, sheet, finding, remedy) -> {
        Matcher way = WAY.matcher(remedy);
        Node.Mapping changed = suited(tree, Circuit.named(finding.judged().subject()), remedy);
        return changed == tree
                ? List.of()
                : List.of(way.find() ? suited(changed, way.group(2), way.group(1)) : changed);
    };

    private static Node.Mapping suited(Node.Mapping tree, String circuit, String words) {
        Matcher said = CABLE_AND_FUSE.matcher(words);
        if (!said.find()) {
            if (words.startsWith("the planned cable") || words.startsWith("Use a fuse that its cable carries")) {
                return tree;
            }
            throw new AssertionError("names no cable and fuse: " + words);
        }
        NodePath path = NodePath.of("circuits", circuit);
        NodePath cable = path.to("cable");
        Node.Mapping changed = tree;
        if (!"the planned ".equals(said.group(1))) {
            String more = said.group(1) == null ? "" : "9";
            changed = Trees.with(changed, cable.to("section"), said.group(2) + more + " mm2");
        }
        if (said.group(3) != null) {
            changed = Trees.with(Trees.with(changed, cable.to("rating"), said.group(3)), cable.to("rating-hot"), "yes");
        }
        if (said.group(4) != null) {
            changed = Trees.with(changed, path.to("fuse").to("rating"), said.group(4));
            if (words.contains("at both ends")
                    || path.to("far-fuse").to("rating").in(changed) != null) {
                changed = Trees.with(changed, path.to("far-fuse").to("rating"), said.group(4));
            }
        }
        return changed;
    }

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
                says(", or a run ", " shorter", less(at("circuits.{subject}.cable.length"))),
                says("For the loss alone ", " instead", set(at("circuits.{subject}.cable.section"))));
        table.rule(
                "electrical.drop-critical electrical.drop-other electrical.way-drop electrical.cable-thin"
                        + " electrical.cable-over-rating electrical.no-fuse electrical.far-end-unfused"
                        + " electrical.fuse-below-load electrical.fuse-above-cable electrical.fuse-far-above-cable"
                        + " electrical.no-fuse-suits",
                SUITED);
        table.rule("electrical.voltage-wrong", says("name ", " in the circuit", set(at("circuits.{subject}.voltage"))));
        table.rule("electrical.cable-thin", says(" alone ", " instead", set(at("circuits.{subject}.cable.section"))));
        // At the heat of its place, as the remedy has it.
        table.rule(
                "electrical.cable-over-rating", says("rated for ", " would", (tree, sheet, finding, amount) -> set(at(
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
        table.rule("electrical.fuse-below-load", says("fuse of at least ", ",", set(fuse("rating"))));
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
