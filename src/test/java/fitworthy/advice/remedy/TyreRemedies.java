package fitworthy.advice.remedy;

import static fitworthy.advice.remedy.Act.less;
import static fitworthy.advice.remedy.Act.more;
import static fitworthy.advice.remedy.Act.set;
import static fitworthy.advice.remedy.Doing.says;
import static fitworthy.advice.remedy.Fields.changed;
import static fitworthy.advice.remedy.Masses.OFF_AXLE;
import static fitworthy.advice.remedy.Where.at;
import static fitworthy.advice.remedy.Where.of;

import fitworthy.advice.Outcome.Finding;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.TyreDetails;
import fitworthy.sheet.TyreSize;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.List;

/** Tyres and wheels. */
final class TyreRemedies {

    private static final Where WHEELS = of(Fitment.Kind.WHEELS, "vehicle.wheels", "rating");
    private static final Where INDEX = (tree, sheet, finding) -> tyres(
                    finding.judged().subject().equals("rear axle")
                                    && sheet.planned()
                                            .vehicle()
                                            .wheels()
                                            .dualRear()
                                            .is(YesNo.YES)
                            ? "dual-load-index"
                            : "load-index")
            .paths(tree, sheet, finding);
    /** On one set of tyres where some stand two and two, both of its indices. */
    private static final Doing INDEX_AS_MARKED = (tree, sheet, finding, remedy) -> (remedy.contains("(single/dual)")
                    ? says("load index ", "/", set((node, of, about) -> tyres("load-index")
                                    .paths(node, of, about)))
                            .and(says("load index [0-9]+/", " \\(", set((node, of, about) -> tyres("dual-load-index")
                                    .paths(node, of, about))))
                    : says("load index ", " (?:\\(dual\\) )?or higher", set(INDEX)))
            .ways(tree, sheet, finding, remedy);

    private static final Act DIAMETER_LESS = (tree, sheet, finding, amount) -> diameter(tree, sheet, -amount.value());
    private static final Act DIAMETER_MORE = (tree, sheet, finding, amount) -> diameter(tree, sheet, amount.value());

    private TyreRemedies() {}

    static void into(RemedyTable table) {
        table.rule("tyres.load-over", says("at least ", " off", OFF_AXLE), INDEX_AS_MARKED);
        table.rule("tyres.weaker-than-axle", INDEX_AS_MARKED);
        table.rule(
                "tyres.wheel-over", says("at least ", " off", OFF_AXLE), says("rated for ", " or more", set(WHEELS)));
        table.rule("tyres.wheel-weaker-than-axle", says("rated for ", " or more", set(WHEELS)));
        table.rule("tyres.load-over-emptied tyres.wheel-over-emptied", says("at least ", " less", OFF_AXLE));
        table.rule("tyres.too-slow", says("no faster than ", ", or", set(at("trip.top-speed"))));
        table.rule("tyres.diameter-grown tyres.diameter-grown-passenger", says("at least ", " smaller", DIAMETER_LESS));
        table.rule("tyres.diameter-shrunk", says("at least ", " larger", DIAMETER_MORE));
        table.rule(
                "tyres.rim-narrow",
                says("rims of ", " or wider", set(of(Fitment.Kind.WHEELS, "vehicle.wheels", "width"))));
        table.rule(
                "tyres.rim-wide",
                says("rims of ", " or narrower", set(of(Fitment.Kind.WHEELS, "vehicle.wheels", "width"))));
        table.rule(
                "tyres.track-wide tyres.track-wide-passenger",
                says(
                        "Take ",
                        " off",
                        (tree, sheet, finding, amount) ->
                                further(tree, sheet, finding, new Amount(amount.value() / 2, amount.unit()))));
        table.rule("tyres.outside", says("in by ", " with", TyreRemedies::further));
        table.rule("tyres.spacer-thread-short", says("hold ", " of thread", set(at("fitments.{subject}.engaged"))));
        table.rule("tyres.pressure-low", says("plan ", " or more", (tree, sheet, finding, amount) -> set(tyres(
                        finding.judged().subject().split(" ")[0] + "-pressure"))
                .done(tree, sheet, finding, amount)));
        table.rule("tyres.pressure-off-road", says("Plan ", " or more", (tree, sheet, finding, amount) -> set(tyres(
                        finding.judged().subject().split(" ")[0] + "-pressure"))
                .done(tree, sheet, finding, amount)));
        table.rule("tyres.pressure-high", says("Plan ", " or less", (tree, sheet, finding, amount) -> set(tyres(
                        finding.judged().subject().split(" ")[0] + "-pressure"))
                .done(tree, sheet, finding, amount)));
        table.rule("tyres.passenger-on-truck", says("at least ", " off", OFF_AXLE));
        table.rule("tyres.clearance-small", says("Gain ", " at", more(tyres("clearance"))));
        table.told(
                "a symbol or an index is chosen from a table by what it has to carry",
                "tyres.speed-symbol-low tyres.spare-weak");
        table.told(
                RemedyTable.LEFT_OR_USUAL,
                "tyres.load-unsure tyres.load-unsure-emptied tyres.wheel-unsure tyres.wheel-unsure-emptied tyres.load-tight tyres.gearing-long tyres.lift-counts tyres.wheel-weaker-than-tyre tyres.below-maker"
                        + " tyres.speedometer-low tyres.wide tyres.diameter-share tyres.brakes-weaker");
    }

    /** Each wheel further in: by its offset, or where the maker's wheels stay by thinner spacers. */
    private static List<Node.Mapping> further(Node.Mapping tree, Sheet sheet, Finding finding, Amount inwards) {
        boolean spacersAlone = sheet.planned().fitments().stream().noneMatch(part -> part.kind() == Fitment.Kind.WHEELS)
                && sheet.planned().fitments().stream().anyMatch(part -> part.kind() == Fitment.Kind.WHEEL_SPACERS);
        return (spacersAlone
                        ? less(of(Fitment.Kind.WHEEL_SPACERS, "", "thickness"))
                        : more(of(Fitment.Kind.WHEELS, "vehicle.wheels", "offset")))
                .done(tree, sheet, finding, inwards);
    }

    private static Where tyres(String field) {
        return (tree, sheet, finding) -> {
            String own = "vehicle.tyres";
            Where there = TyresAt.path(sheet, finding.judged().subject()).equals(own)
                    ? at(own + "." + field)
                    : of(Fitment.Kind.TYRES, own, field);
            return there.paths(tree, sheet, finding);
        };
    }

    private static List<Node.Mapping> diameter(Node.Mapping tree, Sheet sheet, double more) {
        return sheet.planned().fitments().stream()
                .filter(part -> part.details() instanceof TyreDetails.Tyres)
                .map(part -> {
                    TyreDetails.Tyres tyres = (TyreDetails.Tyres) part.details();
                    double now = tyres.diameter().known()
                            ? tyres.diameter().value()
                            : TyreSize.read(tyres.size())
                                    .orElseThrow()
                                    .diameter()
                                    .orElseThrow();
                    return changed(
                            tree, NodePath.of("fitments", part.name(), "diameter"), none -> now + more, "mm", true);
                })
                .toList();
    }
}
