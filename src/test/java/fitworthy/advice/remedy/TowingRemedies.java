package fitworthy.advice.remedy;

import static fitworthy.advice.remedy.Act.less;
import static fitworthy.advice.remedy.Act.more;
import static fitworthy.advice.remedy.Act.set;
import static fitworthy.advice.remedy.Doing.says;
import static fitworthy.advice.remedy.Fields.changed;
import static fitworthy.advice.remedy.Fields.parsed;
import static fitworthy.advice.remedy.Masses.OFF_TRAILER;
import static fitworthy.advice.remedy.Masses.loaded;
import static fitworthy.advice.remedy.Masses.off;
import static fitworthy.advice.remedy.Where.at;
import static fitworthy.advice.remedy.Where.of;

import fitworthy.quantity.Figure;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Trailer;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;

/** The trailer, its coupling and the ball. */
final class TowingRemedies {

    /** What a load on the ball puts on the rear axle, ample for any overhang. */
    private static final double BEHIND_AXLE = 2;

    /** Where the vehicle alone is too much for the class no plate helps, and the class is what is left. */
    private static final Act PLATED_LOWER = (tree, sheet, finding, amount) -> {
        if (amount.value() >= sheet.trailer().orElseThrow().rated().value()) {
            return List.of();
        }
        Node.Mapping changed = tree;
        for (String field : List.of("rated", "gtm")) {
            NodePath path = NodePath.of("trailer", field);
            changed = path.in(changed) == null
                    ? changed
                    : changed(changed, path, now -> Math.max(0, now - amount.value()), "kg", false);
        }
        Trailer trailer = sheet.trailer().orElseThrow();
        double plate = trailer.rated().value() - amount.value();
        double share =
                trailer.ball().known() ? trailer.ball().value() / trailer.mass().value() : 0;
        double axles = (trailer.gtm().value() - amount.value()) / (1 - share);
        return loaded(changed, trailer.gtm().known() ? Math.min(plate, axles) : plate);
    };

    private TowingRemedies() {}

    static void into(RemedyTable table) {
        table.rule("towing.trailer-over", says("at least ", " lighter", OFF_TRAILER));
        table.rule("towing.unrated-over", says("down to ", "\\.", set(at("trailer.mass"))));
        table.rule("towing.unbraked-by-share", says("down to ", ", or", set(at("trailer.mass"))));
        table.rule("towing.plate-over", says("at least ", " out", OFF_TRAILER));
        table.rule(
                "towing.coupling-over", says("take ", " out", OFF_TRAILER), says("at least ", ",", plate("trailer")));
        table.rule(
                "towing.coupling-below-plate",
                says("plated ", " lower", PLATED_LOWER),
                says("at least ", ",", plate("trailer")));
        table.rule("towing.axles-over towing.tyres-over", says("at least ", " off", OFF_TRAILER));
        table.rule("towing.trailer-wide", says("Take ", " in all", less(at("trailer.width"))));
        table.rule("towing.trailer-long", says("at least ", " shorter", less(at("trailer.length"))));
        table.rule("towing.force-over", says("at least ", " on", (tree, sheet, finding, amount) -> plate(
                        finding.judged().subject().split(", ")[1].toLowerCase(Locale.ROOT))
                .done(tree, sheet, finding, amount)));
        table.rule(
                "towing.ball-over",
                says(
                        "carries ",
                        " less",
                        (tree, sheet, finding, amount) ->
                                less(at("trailer.ball")).done(tree, sheet, finding, amount).stream()
                                        .flatMap(moved -> Stream.concat(
                                                Stream.of(moved),
                                                OFF_TRAILER.done(moved, sheet, finding, amount).stream()))
                                        .toList()));
        table.rule("towing.pin-over", says("with ", " less", less(at("trailer.ball"))));
        // Packed further forward, or where nothing bears that a lighter trailer with as much on its pin.
        table.rule("towing.pin-light", says("pin carries ", "\\.", (tree, sheet, finding, amount) -> {
            Trailer trailer = sheet.trailer().orElseThrow();
            double mass = trailer.mass().value() * trailer.ball().value() / amount.value();
            return Stream.of(
                            set(at("trailer.ball")).done(tree, sheet, finding, amount),
                            set(at("trailer.mass")).done(tree, sheet, finding, new Amount(mass, "kg")))
                    .flatMap(List::stream)
                    .toList();
        }));
        table.rule("towing.ball-light", says("ball carries ", "\\.", (tree, sheet, finding, amount) -> {
            double more = amount.value() - sheet.trailer().orElseThrow().ball().value();
            return set(at("trailer.ball")).done(tree, sheet, finding, amount).stream()
                    .flatMap(stowed -> Stream.of(
                                    List.of(stowed), off(stowed, BEHIND_AXLE * more, 0), lighter(stowed, sheet))
                            .flatMap(List::stream))
                    .toList();
        }));
        table.rule("towing.ball-slight", says("at least ", " more", more(at("trailer.ball"))));
        table.rule(
                "towing.unbraked-by-axles towing.unbraked-by-mass towing.unbraked-camp towing.plain-brakes towing.some-wheels"
                        + " towing.pair-heavy towing.pair-heavy-with-trailer towing.trailer-heavy-class",
                says("plated ", " lower", PLATED_LOWER));
        table.rule("towing.breakaway-short", says("brakes hold ", "\\.", set(at("trailer.breakaway-hold"))));
        table.rule("towing.chains-few", says("at least ", " rated", set(at("trailer.chains"))));
        table.rule("towing.chains-few-heavy", says("at least ", " where", set(at("trailer.chains"))));
        table.rule("towing.held-by-one", says("Fit ", " rated", set(at("trailer.chains"))));
        Act tension = set(of(Fitment.Kind.TOW_BAR, "vehicle.tow-bar", "levelling-share"));
        table.rule("towing.levelling-slack", says("at least ", " of", tension));
        table.rule("towing.levelling-tight", says("until ", " or", tension));
        table.rule(
                "towing.bars-weak",
                says("bars for ", " on the ball", set(of(Fitment.Kind.TOW_BAR, "vehicle.tow-bar", "bars-most"))));
        table.rule(
                "towing.bars-stiff",
                says("made for ", " on the ball", set(of(Fitment.Kind.TOW_BAR, "vehicle.tow-bar", "bars-least"))));
        table.rule("towing.levelled-over", says("at least ", " out", OFF_TRAILER));
        table.rule("towing.outweighed", says("trailer by ", " or", OFF_TRAILER));
        table.rule("towing.too-fast towing.too-fast-heavy", says("Plan on ", " or", set(at("trip.top-speed"))));
        table.rule("towing.nose-up", says("by ", " with", ball(Act::less)));
        table.rule("towing.nose-up-far", says("at least ", " with", ball(Act::less)));
        table.rule("towing.nose-down", says("by ", " with", ball(Act::more)));
        table.told(
                RemedyTable.LEFT_OR_USUAL,
                "towing.trailer-unsure towing.ball-unsure towing.axles-untold towing.ball-heavy towing.pin-heavy towing.pin-behind towing.ratio-high towing.overhang-long towing.list-disagrees"
                        + " towing.ball-light-emptied towing.pin-light-emptied towing.ball-over-emptied towing.ball-unsure-emptied towing.levelling-tightens");
    }

    /** The trailer, with its share still on the ball, as light as the ball's limit asks. */
    private static List<Node.Mapping> lighter(Node.Mapping tree, Sheet sheet) {
        Figure limit = sheet.planned().vehicle().ratings().ball();
        double ball = parsed(((Node.Scalar) NodePath.parse("trailer.ball").in(tree)).text(), "kg")
                .value();
        return limit.value() < ball
                ? loaded(tree, sheet.trailer().orElseThrow().mass().value() * limit.value() / ball)
                : List.of();
    }

    private static Act plate(String field) {
        return (tree, sheet, finding, amount) -> {
            if (finding.judged().subject().contains("coupling")) {
                return set(at("trailer.coupling." + field)).done(tree, sheet, finding, amount);
            }
            return set(of(Fitment.Kind.TOW_BAR, "vehicle.tow-bar", "plate." + field))
                    .done(tree, sheet, finding, amount);
        };
    }

    private static Act ball(Function<Where, Act> moved) {
        return (tree, sheet, finding, amount) -> {
            List<Node.Mapping> bar = moved.apply(of(Fitment.Kind.TOW_BAR, "vehicle.tow-bar", "ball-height"))
                    .done(tree, sheet, finding, amount);
            return bar.isEmpty() ? moved.apply(at("vehicle.size.ball-height")).done(tree, sheet, finding, amount) : bar;
        };
    }
}
