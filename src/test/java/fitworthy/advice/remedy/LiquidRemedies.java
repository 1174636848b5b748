package fitworthy.advice.remedy;

import static fitworthy.advice.remedy.Act.less;
import static fitworthy.advice.remedy.Act.more;
import static fitworthy.advice.remedy.Act.set;
import static fitworthy.advice.remedy.Doing.says;
import static fitworthy.advice.remedy.Fields.changed;
import static fitworthy.advice.remedy.Masses.off;
import static fitworthy.advice.remedy.Where.at;
import static fitworthy.advice.remedy.Where.of;
import static fitworthy.advice.remedy.Where.path;

import fitworthy.advice.Outcome.Finding;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.LoadCase;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Trees;
import java.util.ArrayList;
import java.util.List;

/** Fuel, air and water. */
final class LiquidRemedies {

    private static final Where DEPTH = at("trip.water-depth");
    private static final Where BREATHERS = of(Fitment.Kind.BREATHER_KIT, "vehicle", "height");
    private static final Where FLOW = at("fitments.{subject}.rated-flow");
    private static final Where GAP = at("fitments.{subject}.exhaust-gap", "tanks.{subject}.built-in.exhaust-gap");
    /** The duct's bore, or an airbox's inlet. */
    private static final Where BORE = (tree, sheet, finding) -> {
        String subject = finding.judged().subject();
        return List.of("fitments."
                + (subject.endsWith(" inlet") ? subject.replace(" inlet", ".inlet-bore") : subject + ".bore"));
    };

    private static final Act FUEL = (tree, sheet, finding, amount) -> fill(tree, sheet, finding, amount, false);
    private static final Act WATER = (tree, sheet, finding, amount) -> fill(tree, sheet, finding, amount, true);

    private LiquidRemedies() {}

    static void into(RemedyTable table) {
        table.rule("fuel.range-short", says("Carry ", " of", FUEL));
        table.rule("fuel.finer-first", says("Choose ", " or coarser", (tree, sheet, finding, amount) -> set((a, b, c) ->
                        List.of("fitments." + finding.judged().subject().split(" ahead of ")[0] + ".rating"))
                .done(tree, sheet, finding, amount)));
        table.rule(
                "fuel.flow-low fuel.crankcase-small",
                says("for ", " or more", set(FLOW)),
                says("one is ", " short", more(FLOW)));
        table.rule("fuel.exhaust-touching", says("at least ", " further", (tree, sheet, finding, amount) -> {
            String shield = GAP.paths(tree, sheet, finding).get(0).replace("exhaust-gap", "shielded");
            return more(GAP).done(Trees.with(tree, path(shield, finding), "yes"), sheet, finding, amount);
        }));
        table.rule("fuel.exhaust-close", says("it ", " further", more(GAP)));
        table.rule(
                "intake.drain-under-water intake.fan-within-maker",
                says("deeper than ", "\\.", set(DEPTH)),
                says("plan is ", " deeper", less(DEPTH)));
        table.rule(
                "intake.too-deep", says("deeper than ", ",", set(DEPTH)), says("plan is ", " too deep", less(DEPTH)));
        table.rule(
                "intake.deeper-than-maker",
                says("deeper than ", ",", set(DEPTH)),
                says("plan is ", " deeper", less(DEPTH)));
        table.rule("intake.fan-in-water", says("Keep to ", " of", set(DEPTH)), says(", ", " less", less(DEPTH)));
        table.rule(
                "intake.bore-narrow", says("bore of ", " or more", set(BORE)), says("one is ", " short", more(BORE)));
        table.rule("intake.duct-fast", says("bore of ", " or more", set(BORE)));
        table.rule("intake.filter-overrun", says("after ", " at", set(at("trip.dust-distance"))));
        table.rule("intake.breathers-drown intake.breathers-left-low", says("breathers to ", " or", set(breathers())));
        table.rule("water.short water.no-reserve", says("Set out with ", "[,.] ", WATER));
        table.rule("water.use-low", says("at least ", " for each", set(at("trip.water-use"))));
        table.rule("water.too-near", says("gap is ", " too small", more(at("tanks.{subject}.water.clearance"))));
        table.told(
                RemedyTable.LEFT_OR_USUAL,
                "fuel.range-thin fuel.separator-missing fuel.tank-approval intake.bore-step"
                        + " intake.duct-brisk intake.little-freeboard intake.drain-near-water intake.snorkel-leaks-low water.one-tank water.surges water.freezes");
    }

    private static Where breathers() {
        return (tree, sheet, finding) -> {
            List<String> kit = BREATHERS.paths(tree, sheet, finding);
            return kit.isEmpty() ? at("vehicle.intake.breathers").paths(tree, sheet, finding) : kit;
        };
    }

    /** So much of it aboard in all: the first such tank holds what the others do not, in a larger one if need be. */
    private static List<Node.Mapping> fill(
            Node.Mapping tree, Sheet sheet, Finding finding, Amount amount, boolean water) {
        List<Tank> tanks = sheet.planned().tanks().stream()
                .filter(tank -> water
                        ? tank.liquid().is(Tank.Liquid.WATER)
                        : !tank.liquid().is(Tank.Liquid.WATER)
                                && !tank.builtIn().feedsEngine().is(YesNo.NO)
                                && !tank.portable().is(YesNo.YES))
                .filter(tank -> sheet.planned().tanks().stream().noneMatch(other -> other.removes()
                        .filter(gone -> gone.name().equals(tank.name()))
                        .isPresent()))
                .toList();
        List<Node.Mapping> ways = new ArrayList<>();
        for (Tank tank : tanks) {
            double others = tanks.stream()
                    .filter(other -> other != tank)
                    .mapToDouble(other -> other.capacity().value()
                            * filled(sheet, finding, other).value())
                    .sum();
            if (amount.value() <= others) {
                continue;
            }
            double more = amount.value()
                    - others
                    - tank.capacity().value() * filled(sheet, finding, tank).value();
            Node.Mapping changed = changed(
                    tree, NodePath.of("tanks", tank.name(), "capacity"), now -> amount.value() - others, "L", true);
            changed = Trees.with(changed, NodePath.of("tanks", tank.name(), "fill"), "100 % +/- 0 %");
            for (LoadCase each : sheet.cases()) {
                changed = Trees.without(changed, NodePath.of("cases", each.name(), "filled", tank.name()));
            }
            ways.add(changed);
            // Diesel and water weigh at most a kilogram a litre.
            ways.addAll(off(changed, more, 0));
            ways.addAll(off(changed, more, 1));
        }
        return ways;
    }

    private static Figure filled(Sheet sheet, Finding finding, Tank tank) {
        return sheet.cases().stream()
                .filter(loading -> loading.name().equals(finding.judged().loadCase()))
                .map(loading -> loading.filled().getOrDefault(tank.name(), tank.fill()))
                .findFirst()
                .orElse(tank.fill());
    }
}
