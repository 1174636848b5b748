package fitworthy.advice.remedy;

import static fitworthy.advice.remedy.Act.less;
import static fitworthy.advice.remedy.Act.more;
import static fitworthy.advice.remedy.Act.set;
import static fitworthy.advice.remedy.Doing.says;
import static fitworthy.advice.remedy.Fields.changed;
import static fitworthy.advice.remedy.Fields.parsed;
import static fitworthy.advice.remedy.Masses.OFF_AXLE;
import static fitworthy.advice.remedy.Masses.OFF_TRAILER;
import static fitworthy.advice.remedy.Masses.OUT;
import static fitworthy.advice.remedy.Where.at;
import static fitworthy.advice.remedy.Where.of;

import fitworthy.advice.Outcome.Finding;
import fitworthy.sheet.Fitment;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Trees;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Trays, canopies, and what several parts do together. */
final class BodyRemedies {

    /** One of two that stand in each other's way, moved any way. */
    private static final Act MOVED = (tree, sheet, finding, amount) -> {
        List<Node.Mapping> ways = new ArrayList<>();
        for (String name : finding.judged().subject().split(" and ")) {
            for (String axis : List.of("x", "y", "z")) {
                for (int way : new int[] {-1, 1}) {
                    Node.Mapping changed = tree;
                    boolean there = false;
                    for (String list : List.of("fitments", "tanks")) {
                        for (String place : List.of("space.from." + axis, "space.to." + axis, "at." + axis)) {
                            NodePath path =
                                    NodePath.parse(list + ".NAME." + place).renamed("NAME", name);
                            if (path.in(tree) != null) {
                                there = true;
                                changed = changed(changed, path, now -> now + way * amount.value(), "mm", false);
                            }
                        }
                    }
                    if (there) {
                        ways.add(changed);
                    }
                }
            }
        }
        return ways;
    };

    /** That it stands in or on one of the parts that are off in that loading, which does not carry it then. */
    private static final Doing IN_WHAT_IS_OFF = (tree, sheet, finding, remedy) -> sheet.cases().stream()
            .filter(loadCase -> loadCase.name().equals(finding.judged().loadCase()))
            .flatMap(loadCase -> loadCase.off().stream())
            .flatMap(carrier -> in(notCarried(tree, finding), finding, carrier))
            .toList();

    /** That it stands in or on the tray, which stays. */
    private static final Doing ON_THE_TRAY = (tree, sheet, finding, remedy) -> sheet.fitments().stream()
            .filter(part -> part.kind() == Fitment.Kind.TRAY)
            .flatMap(tray -> in(tree, finding, tray.name()))
            .toList();

    private BodyRemedies() {}

    private static Node.Mapping notCarried(Node.Mapping tree, Finding finding) {
        NodePath carrying = NodePath.of("cases", finding.judged().loadCase(), "carrying");
        NodePath listed = carrying.to(finding.judged().subject());
        return carrying.in(tree) instanceof Node.Listing && listed.in(tree) != null
                ? Trees.without(tree, listed)
                : tree;
    }

    private static Stream<Node.Mapping> in(Node.Mapping tree, Finding finding, String carrier) {
        return Stream.of("fitments", "tanks", "cargo")
                .map(list -> NodePath.of(list, finding.judged().subject()))
                .filter(path -> path.in(tree) != null)
                .map(path -> Trees.with(tree, path.to("in"), carrier));
    }

    static void into(RemedyTable table) {
        table.rule(
                "body.slides-forward body.slides-aside",
                says("such straps to ", ",", set(at("cargo.{subject}.lashing.straps"))));
        table.rule("body.left-aboard", IN_WHAT_IS_OFF, ON_THE_TRAY);
        table.rule("across.left-in-air", IN_WHAT_IS_OFF);
        table.told("it asks in or on what else something stands, which is not on the sheet", "across.left-nowhere");
        table.told(
                RemedyTable.LEFT_OR_USUAL, "body.load-loose body.departure-low body.breakover-low body.straps-in-vain");
        table.rule(
                "body.tied-slides-forward body.tied-slides-aside body.tied-slides-back",
                says("lashings for ", " or more", set(at("cargo.{subject}.tied.limit"))));
        table.rule("body.load-tips-forward", says("need a base ", " long", set(at("cargo.{subject}.footing.length"))));
        table.rule("body.load-tips-aside", says("need a base ", " wide", set(at("cargo.{subject}.footing.width"))));
        table.rule("body.shaft-whirls", says("piece to ", " between", set(at("fitments.{subject}.shaft.span"))));
        table.rule("body.rails-weak body.rails-yield", says("yield at ", "\\.", set(at("vehicle.rails.yield"))));
        table.rule("body.fixing-weak", says("that bear ", " in all", (tree, sheet, finding, amount) -> {
            Fitment fixed = sheet.planned().fitments().stream()
                    .filter(part -> part.name().equals(finding.judged().subject()))
                    .findFirst()
                    .orElseThrow();
            if (fixed.kind() == Fitment.Kind.GAS_BOTTLE) {
                return set(at("fitments.{subject}.mount")).done(tree, sheet, finding, amount);
            }
            double points = fixed.fixing().orElseThrow().points().value();
            return set(at("fitments.{subject}.fixing.limit"))
                    .done(tree, sheet, finding, new Amount(amount.value() / points, amount.unit()));
        }));
        table.rule(
                "body.shaft-steep body.shaft-fast",
                says("joints to ", " or less", set(at("fitments.{subject}.shaft.joint-angle"))));
        table.rule("across.same-place", says("by ", " ?,", MOVED));
        table.rule(
                "across.tanks-not-full across.supplies-used-up",
                says("least ", " less", (tree, sheet, finding, amount) -> (finding.judged()
                                        .subject()
                                        .endsWith("axle")
                                ? OFF_AXLE
                                : OUT)
                        .done(tree, sheet, finding, amount)));
        table.rule("across.tanks-used-up", says("least ", " less", OFF_AXLE));
        table.rule("across.tanks-take-payload", says("at least ", " of other", OUT));
        table.rule(
                "across.kit-in-vain",
                says(
                        "more than ",
                        " lighter",
                        (tree, sheet, finding, amount) -> OFF_TRAILER.done(
                                tree, sheet, finding, new Amount(amount.value() + 0.001, amount.unit()))));
        table.rule("across.bar-wrong-twice", says("no more than ", " whose", set(at("fitments.{subject}.mass"))));
        table.rule(
                "across.seats-short", says("People: ", "\\.", set(of(Fitment.Kind.SEAT_CHANGE, "vehicle", "seats"))));
        table.rule(
                "across.trip-seats-short",
                says("Keep ", " seats", set(of(Fitment.Kind.SEAT_CHANGE, "vehicle", "seats"))));
        table.rule("across.people-more across.people-fewer", says(": ", " aboard", set(at("trip.people"))));
        table.rule("body.hold-down-weak", says("at least ", " in all", (tree, sheet, finding, amount) -> {
            NodePath points = NodePath.of("fitments", finding.judged().subject(), "hold-down", "points");
            double many = parsed(((Node.Scalar) points.in(tree)).text(), "").value();
            return set(at("fitments.{subject}.hold-down.limit"))
                    .done(tree, sheet, finding, new Amount(amount.value() / many, amount.unit()));
        }));
        table.rule(
                "body.canopy-slides-forward",
                says("at least ", " together", set(at("fitments.{subject}.hold-down.forward"))));
        table.rule(
                "body.canopy-slides-aside",
                says("at least ", " each way", set(at("fitments.{subject}.hold-down.aside"))));
        table.rule(
                "body.canopy-slides-back",
                says("at least ", " together", set(at("fitments.{subject}.hold-down.back"))));
        table.rule(
                "body.canopy-tips-forward",
                says("down with ", " or more", set(at("fitments.{subject}.hold-down.down"))));
        table.rule("body.guard-high", says("edge is ", " up or less", set(at("fitments.{subject}.rear.guard-height"))));
        table.rule("body.guard-deep", says("it is ", " or less from", set(at("fitments.{subject}.rear.guard-ahead"))));
        table.rule("body.guard-narrow", says("ends ", " or less from", set(at("fitments.{subject}.rear.guard-short"))));
        table.rule("body.too-wide", says("Take ", " in all", less(at("fitments.{subject}.width"))));
        table.rule("body.too-wide-passenger", says("Take ", " in all", less(at("fitments.{subject}.width"))));
        table.rule("body.hold-down-few", says("at ", " points", set(at("fitments.{subject}.hold-down.points"))));
        table.rule("body.leg-weak", says("carry ", " each", set(at("fitments.{subject}.legs.limit"))));
        table.rule("body.legs-tip", says("feet to ", "\\.", set(at("fitments.{subject}.legs.spacing"))));
        table.rule("body.gas-mount-weak", says("withstand ", " in", set(at("fitments.{subject}.mount"))));
        table.rule("body.door-meets-trailer", says("leave ", " more room", more(at("trailer.drawbar"))));
        table.rule(
                "body.battery-vent-small", says("at least ", " of free opening", set(at("fitments.{subject}.vents"))));
        table.rule("body.overhang-long", says("overhang is ", " or less", (tree, sheet, finding, amount) -> {
            double over = amount.value() * (finding.judged().measure().getValue() / share(finding) - 1);
            return sheet.planned().fitments().stream()
                    .map(part -> NodePath.of("fitments", part.name(), "length"))
                    .filter(path -> path.in(tree) != null)
                    .map(path -> changed(tree, path, now -> now - over, "mm", false))
                    .toList();
        }));
        table.told(
                RemedyTable.LEFT_OR_USUAL,
                "body.overhang-grown body.behind-axle body.canopy-slides-forward-unsure body.canopy-slides-aside-unsure"
                        + " body.canopy-slides-back-unsure body.canopy-tips-forward-unsure body.hold-down-unsure body.held-unsure across.lift-upsets-all across.one-seat");
    }

    private static double share(Finding finding) {
        return finding.comparison().orElseThrow().limit();
    }
}
