package fitworthy.advice.remedy;

import static fitworthy.advice.remedy.Act.less;
import static fitworthy.advice.remedy.Act.set;
import static fitworthy.advice.remedy.Doing.says;
import static fitworthy.advice.remedy.Fields.changed;
import static fitworthy.advice.remedy.Fields.parsed;
import static fitworthy.advice.remedy.Masses.OFF_AXLE;
import static fitworthy.advice.remedy.Masses.OFF_TRAILER;
import static fitworthy.advice.remedy.Masses.OUT;
import static fitworthy.advice.remedy.Masses.heaviest;
import static fitworthy.advice.remedy.Masses.loaded;
import static fitworthy.advice.remedy.Masses.off;
import static fitworthy.advice.remedy.Where.at;
import static fitworthy.advice.remedy.Where.of;

import fitworthy.figures.plan.Track;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.TyreDetails;
import fitworthy.sheet.Vehicle;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Masses, axle loads and raised ratings. */
final class MassRemedies {

    private static final String UNBRAKED = "vehicle.ratings.towing-unbraked";
    private static final Where GVM = of(Fitment.Kind.RATING_UPGRADE, "vehicle.ratings", "gvm");
    private static final Act GVM_AND_LOAD =
            (tree, sheet, finding, amount) -> set(GVM).done(tree, sheet, finding, amount).stream()
                    .flatMap(lower -> off(lower, Math.max(0, heaviest(sheet) - amount.value()), 0.4).stream())
                    .toList();

    private MassRemedies() {}

    static void into(RemedyTable table) {
        table.rule("mass.gvm-over", says("at least ", " out", OUT));
        table.rule("mass.axle-over", says("at least ", " off", OFF_AXLE));
        table.rule("mass.gcm-over", says("at least ", " lighter", OUT), says("at least ", " lighter", OFF_TRAILER));
        table.rule("mass.ball-takes-payload", says("take ", " out", OUT));
        table.rule("mass.front-light", says("axle carries ", "\\.", (tree, sheet, finding, amount) -> {
            double bare = sheet.planned().vehicle().mass().frontAxle().value();
            double now = bare * (1 - finding.judged().measure().getValue());
            return shifted(
                    tree,
                    sheet,
                    "x",
                    (amount.value() - now)
                            * sheet.planned().vehicle().size().wheelbase().value());
        }));
        table.rule(
                "mass.lopsided",
                says(
                        "move ",
                        " from",
                        (tree, sheet, finding, amount) -> shifted(tree, sheet, "y", amount.value() * track(sheet))));
        table.rule(
                "mass.roof-over mass.rack-over",
                says("at least ", " off", (tree, sheet, finding, amount) -> Stream.concat(
                                sheet.planned().fitments().stream()
                                        .filter(part -> part.mass().value() >= amount.value())
                                        .map(part -> "fitments." + part.name()),
                                sheet.planned().cargo().stream()
                                        .filter(load -> load.mass().value() >= amount.value())
                                        .map(load -> "cargo." + load.name()))
                        .filter(item -> NodePath.parse(item + ".roof").in(tree) != null)
                        .map(item ->
                                changed(tree, NodePath.parse(item + ".mass"), now -> now - amount.value(), "kg", false))
                        .toList()));
        table.rule("mass.roof-at-rest-over", says("at least ", " less", less(at("trip.roof-sleepers"))));
        table.rule(
                "mass.raised-gvm-gcm-left", says("no more than ", "\\.", (tree, sheet, finding, amount) -> set(
                                of(Fitment.Kind.RATING_UPGRADE, "vehicle.ratings", "towing"))
                        .done(tree, sheet, finding, amount)
                        .stream()
                        // What may be towed without brakes is no more than what may be towed with them.
                        .map(lower -> NodePath.parse(UNBRAKED).in(lower) == null
                                ? lower
                                : changed(
                                        lower,
                                        NodePath.parse(UNBRAKED),
                                        rated -> Math.min(rated, amount.value()),
                                        "kg",
                                        true))
                        // The load on the ball stays: it is in the GVM that is full.
                        .map(lower -> sheet.trailer()
                                        .filter(trailer -> trailer.mass().known())
                                        .isEmpty()
                                ? lower
                                : changed(
                                        lower,
                                        NodePath.parse("trailer.mass"),
                                        mass -> Math.min(mass, amount.value()),
                                        "kg",
                                        true))
                        .toList()));
        table.rule("mass.raised-gvm-trailer", says("at least ", " below", (tree, sheet, finding, amount) -> {
            double gvm = parsed(
                            ((Node.Scalar) NodePath.parse(GVM.paths(tree, sheet, finding)
                                                    .get(0))
                                            .in(tree))
                                    .text(),
                            "kg")
                    .value();
            return GVM_AND_LOAD.done(tree, sheet, finding, new Amount(gvm - amount.value(), "kg"));
        }));
        table.rule(
                "mass.gcm-raise-refused",
                says(
                        "GCM of ", ",", (tree, sheet, finding, amount) -> set(
                                        of(Fitment.Kind.RATING_UPGRADE, "vehicle.ratings", "gcm"))
                                .done(tree, sheet, finding, amount)
                                .stream()
                                .flatMap(lower -> sheet.trailer().isPresent()
                                        ? loaded(lower, amount.value() - heaviest(sheet)).stream()
                                        : Stream.of(lower))
                                .toList()));
        table.rule("mass.raised-gvm-axles", says("Count on ", " at most", GVM_AND_LOAD));
        table.rule("mass.heavy-class", says("GVM at ", " or less", GVM_AND_LOAD));
        table.told(
                RemedyTable.LEFT_OR_USUAL,
                "mass.lopsided-emptied mass.gvm-unsure mass.axle-unsure mass.gcm-unsure mass.roof-unsure mass.rack-unsure"
                        + " mass.roof-at-rest-unsure mass.gvm-tight mass.behind-axle"
                        + " mass.front-light-emptied mass.ball-lever mass.ball-lever-emptied mass.cog-high mass.cog-over mass.cog-over-emptied mass.cog-untold across.tanks-unsure across.supplies-unsure mass.weighbridge-disagrees mass.weighbridge-beyond-guesses"
                        + " mass.weighbridge-on-guesses mass.found-takes-payload mass.tips-sooner");
    }

    /** The track on the wheels as planned, in m. */
    private static double track(Sheet sheet) {
        Vehicle vehicle = sheet.vehicle();
        return vehicle.size().track().value()
                + sheet.planned().fitments().stream()
                        .map(Fitment::details)
                        .filter(TyreDetails.Wheels.class::isInstance)
                        .map(wheels -> Track.added(vehicle.wheels().offset(), ((TyreDetails.Wheels) wheels).offset()))
                        .filter(Figure::known)
                        .mapToDouble(Figure::value)
                        .sum();
    }

    /** A thing aboard moved along or across by as much as brings so much from one side to the other. */
    private static List<Node.Mapping> shifted(Node.Mapping tree, Sheet sheet, String axis, double moment) {
        List<Node.Mapping> ways = new ArrayList<>();
        Stream.concat(
                        sheet.planned().fitments().stream()
                                .filter(part -> part.mass().value() > 0)
                                .map(part -> Map.entry(
                                        "fitments." + part.name(), part.mass().value())),
                        sheet.planned().cargo().stream()
                                .map(load -> Map.entry(
                                        "cargo." + load.name(), load.mass().value())))
                .forEach(load -> {
                    NodePath path = NodePath.parse(load.getKey() + ".at." + axis);
                    if (path.in(tree) != null) {
                        for (int way : new int[] {-1, 1}) {
                            ways.add(changed(tree, path, now -> now + way * moment / load.getValue(), "mm", false));
                        }
                    }
                });
        return ways;
    }
}
