package fitworthy.advice.remedy;

import static fitworthy.advice.remedy.Act.less;
import static fitworthy.advice.remedy.Act.set;
import static fitworthy.advice.remedy.Doing.says;
import static fitworthy.advice.remedy.Fields.changed;
import static fitworthy.advice.remedy.Fields.parsed;
import static fitworthy.advice.remedy.Fields.written;
import static fitworthy.advice.remedy.Where.at;

import fitworthy.advice.Outcome.Finding;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SuspensionDetails;
import fitworthy.sheet.VehicleEnd;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.NodeReader;
import java.util.ArrayList;
import java.util.List;

/** Recovery gear, and springs and lifts. */
final class RecoveryRemedies {

    private static final Where SUBJECT_LIMIT = at("fitments.{subject}.limit");
    /** The springs and body lifts at an end, the first that is high enough. */
    private static final Act LOWER_LIFT = (tree, sheet, finding, amount) -> {
        boolean front = finding.judged().subject().startsWith("front");
        return sheet.planned().fitments().stream()
                .filter(part -> part.kind() == Fitment.Kind.BODY_LIFT
                        || part.details() instanceof SuspensionDetails.Springs springs
                                && springs.end().is(front ? VehicleEnd.FRONT : VehicleEnd.REAR))
                .map(part -> NodePath.of("fitments", part.name(), "lift"))
                .filter(path -> path.in(tree) instanceof Node.Scalar lift
                        && parsed(lift.text(), "mm").value() >= amount.value())
                .map(path -> changed(tree, path, now -> now - amount.value(), "mm", false))
                .toList();
    };

    private RecoveryRemedies() {}

    static void into(RemedyTable table) {
        table.rule(
                "recovery.point-weak", says("at least ", " at the", (tree, sheet, finding, amount) -> set((a, b, c) ->
                                pointsAt(tree, sheet, finding))
                        .done(tree, sheet, finding, amount)));
        table.rule("recovery.winch-small", says("Fit one for ", " or more", set(at("fitments.{subject}.pull"))));
        table.rule("recovery.line-weak", says("strength above ", ",", (tree, sheet, finding, amount) -> set(at(
                        "fitments.{subject}.line"))
                .done(tree, sheet, finding, new Amount(amount.value() + 0.001, amount.unit()))));
        table.rule("recovery.feed-weak", says("chosen for ", "\\.", set(at("fitments.{subject}.feed"))));
        table.rule(
                "recovery.strap-weak recovery.strap-stiff",
                says("strength of ", " or (?:more|less)", set(at("fitments.{subject}.strength"))));
        table.rule("recovery.shackles-weak recovery.block-weak", says("at least ", "[,.] ", set(SUBJECT_LIMIT)));
        table.rule(
                "recovery.tree-strap-weak", says("at least ", ", as", set(at("fitments.{subject}.tree-strap-limit"))));
        table.rule("suspension.lift-uncertified suspension.stability-control", says("Take ", " out", LOWER_LIFT));
        table.rule("suspension.body-lifted", says("Leave the ", " of spacers", LOWER_LIFT));
        table.rule("suspension.lift-too-high", says("at least ", " out", LOWER_LIFT));
        table.rule("suspension.height-change", says("by ", " less", (tree, sheet, finding, amount) -> {
            NodePath lift = NodePath.of("fitments", finding.judged().subject(), "lift");
            return List.of(changed(tree, lift, now -> now - Math.signum(now) * amount.value(), amount.unit(), false));
        }));
        table.rule(
                "suspension.springs-overloaded",
                says("made for ", " of fixed", set(at("fitments.{subject}.load-most"))));
        table.rule(
                "suspension.springs-underloaded",
                says("springs for ", " of fixed", set(at("fitments.{subject}.load-least"))));
        table.rule(
                "suspension.front-springs-left", says("dampers for ", " of fixed", (tree, sheet, finding, amount) -> {
                    List<Node> parts = new ArrayList<>(((Node.Listing) tree.get("fitments")).items());
                    parts.add(NodeReader.read(
                            "springs",
                            """
                    name: Springs to suit
                    kind: springs
                    end: front
                    mass: 0 kg +/- 0 kg
                    at: {x: 0 mm, y: 0 mm, z: 500 mm}
                    lift: 0 mm
                    load-least: 0 kg
                    load-most:\s"""
                                    + written(amount.value(), "kg"),
                            new ArrayList<>()));
                    return List.of(tree.with("fitments", new Node.Listing(tree.place(), parts)));
                }));
        table.rule("suspension.too-soft suspension.sags", says("springs of ", " or more", set(springs("rate"))));
        table.rule("suspension.joint-angle", says("by ", " with", less(at("fitments.{subject}.joint-angle"))));
        table.told(
                RemedyTable.LEFT_OR_USUAL,
                "recovery.winch-coupled suspension.dampers-short suspension.too-stiff suspension.rear-slow"
                        + " suspension.travel-lost");
    }

    private static Where springs(String field) {
        return (tree, sheet, finding) -> sheet.planned().fitments().stream()
                .filter(part -> part.details() instanceof SuspensionDetails.Springs springs
                        && finding.judged().subject().startsWith(springs.end().is(VehicleEnd.FRONT) ? "front" : "rear"))
                .map(part -> "fitments." + part.name() + "." + field)
                .toList();
    }

    private static List<String> pointsAt(Node.Mapping tree, Sheet sheet, Finding finding) {
        String end = finding.judged().subject();
        List<String> planned = sheet.planned().fitments().stream()
                .filter(part -> part.kind() == Fitment.Kind.RECOVERY_POINT
                        && NodePath.of("fitments", part.name(), "end").in(tree) instanceof Node.Scalar stands
                        && stands.text().equals(end))
                .map(part -> "fitments." + part.name() + ".limit")
                .toList();
        return planned.isEmpty() ? List.of("vehicle.recovery." + end + ".limit") : planned;
    }
}
