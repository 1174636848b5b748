package fitworthy.advice.remedy;

import static fitworthy.advice.remedy.Act.less;
import static fitworthy.advice.remedy.Act.more;
import static fitworthy.advice.remedy.Act.set;
import static fitworthy.advice.remedy.Doing.says;
import static fitworthy.advice.remedy.Fields.changed;
import static fitworthy.advice.remedy.Fields.parsed;
import static fitworthy.advice.remedy.Where.at;
import static fitworthy.advice.remedy.Where.of;

import fitworthy.advice.Outcome.Finding;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.MirrorDetails;
import fitworthy.sheet.Sheet;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.List;

/** Lamps, mirrors and aerials. */
final class SightRemedies {

    private SightRemedies() {}

    static void into(RemedyTable table) {
        Act fewerLamps = (tree, sheet, finding, amount) -> {
            double more = finding.judged().measure().getValue() - amount.value();
            return less(of(Fitment.Kind.LAMPS, "vehicle", "count")).done(tree, sheet, finding, new Amount(more, ""));
        };
        table.rule("front.lamps-many", says("no more than ", " driving", fewerLamps));
        table.rule("front.fog-lamps-many", says("no more than ", " front fog", fewerLamps));
        table.rule("mirrors.trailer-hides", says("glass reaches ", " or more", withEdge(set(mirror("reach")))));
        table.rule("mirrors.load-hides", says("takes [^,]*, ", " more", withEdge(more(mirror("reach")))));
        table.rule("mirrors.sticks-out", says("in by ", "\\.", less(mirror("edge"))));
        table.rule("mirrors.left-out", says("retracts ", " farther", less(mirror("edge-stowed"))));
        for (String id : List.of("mirrors.field-narrow", "mirrors.near-narrow")) {
            table.rule(id, (tree, sheet, finding, remedy) -> {
                List<Node.Mapping> ways = says("glass reaches ", " from", withEdge(set(mirror("reach"))))
                        .ways(tree, sheet, finding, remedy);
                return ways.isEmpty()
                        ? ways
                        : says("with ", " of its width", set(mirror("glass")))
                                .ways(ways.get(0), sheet, finding, remedy);
            });
        }
        table.rule("radio.in-sight", says("Move it ", " or more", (tree, sheet, finding, amount) -> {
            double eye = sheet.planned().vehicle().view().eye().y().value();
            double planned = sheet.planned().fitments().stream()
                    .filter(part -> part.name().equals(finding.judged().subject()))
                    .findFirst()
                    .orElseThrow()
                    .at()
                    .orElseThrow()
                    .y()
                    .value();
            return set(at("fitments.{subject}.at.y"))
                    .done(
                            tree,
                            sheet,
                            finding,
                            new Amount(planned + Math.signum(-eye) * amount.value(), amount.unit()));
        }));
        table.rule("radio.too-high", says("by ", "\\.", less(at("fitments.{subject}.tip"))));
        table.rule("radio.power-over", says("set of ", " or less", set(at("fitments.{subject}.power"))));
        table.rule("radio.range-short", says("Plan on ", " at best", set(at("trip.radio-range"))));
        table.rule("radio.gain-high", says("whip of ", " or less", set(of(Fitment.Kind.AERIAL, "vehicle", "gain"))));
        table.rule("radio.gain-low", says("whip of ", " or more", set(of(Fitment.Kind.AERIAL, "vehicle", "gain"))));
        table.told("the authority is asked first", "mirrors.out-past-what-stays");
        table.told("wavelengths are no field; the distance goes by the lower frequency", "radio.too-near");
        table.told(RemedyTable.LEFT_OR_USUAL, "front.approach-low front.grille-hidden");
    }

    private static Where mirror(String field) {
        return (tree, sheet, finding) -> {
            String side = finding.judged().subject().split(" ")[0];
            List<String> planned =
                    of(Fitment.Kind.MIRRORS, "", side + "." + field).paths(tree, sheet, finding);
            return planned.isEmpty() || areOff(sheet, finding)
                    ? at("vehicle.view.mirrors." + side + "." + field).paths(tree, sheet, finding)
                    : planned;
        };
    }

    /** Whether planned mirrors came off in the finding's loading, as without a trailer some do. */
    private static boolean areOff(Sheet sheet, Finding finding) {
        return sheet.cases().stream()
                        .filter(loading ->
                                loading.name().equals(finding.judged().loadCase()))
                        .noneMatch(loading -> loading.towing().is(YesNo.YES))
                && sheet.planned().fitments().stream()
                        .anyMatch(part -> part.details() instanceof MirrorDetails.Mirrors mirrors
                                && mirrors.stow().is(MirrorDetails.Stow.COMES_OFF));
    }

    /** A glass that reaches farther takes the edge of its housing along. */
    private static Act withEdge(Act act) {
        return (tree, sheet, finding, amount) -> act.done(tree, sheet, finding, amount).stream()
                .map(moved -> {
                    Node.Mapping whole = moved;
                    for (String path : mirror("edge").paths(tree, sheet, finding)) {
                        NodePath edge = NodePath.parse(path);
                        NodePath reach = NodePath.parse(path.replaceAll("edge$", "reach"));
                        if (edge.in(moved) != null && reach.in(moved) instanceof Node.Scalar glass) {
                            double out = parsed(glass.text(), "mm").value();
                            whole = changed(whole, edge, now -> Math.max(now, out), "mm", false);
                        }
                    }
                    return whole;
                })
                .toList();
    }
}
