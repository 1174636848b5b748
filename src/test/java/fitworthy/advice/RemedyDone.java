package fitworthy.advice;

import fitworthy.Books;
import fitworthy.advice.Outcome.Finding;
import fitworthy.figures.Measures;
import fitworthy.figures.measure.Measure;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.QuantityText;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.LoadCase;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SuspensionDetails;
import fitworthy.sheet.Tank;
import fitworthy.sheet.Trailer;
import fitworthy.sheet.TyreDetails;
import fitworthy.sheet.TyreSize;
import fitworthy.sheet.VehicleEnd;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.NodeReader;
import fitworthy.source.Trees;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** How each remedy that names a figure is done on a sheet, by rule; and which figures are told and not to be done. */
final class RemedyDone {

    private static final String QUANTITY = "(-?[0-9]+(?:\\.[0-9]+)?(?: (?:[a-zA-Z/]+[0-9]?|%))?)";

    /** One thing that a remedy says. */
    interface Doing {
        /** The sheets that come of it, any of which will do; none where the sheet gives no such field. */
        List<Node.Mapping> ways(Node.Mapping tree, Sheet sheet, Finding finding, String remedy);
    }

    /** A figure of a remedy, in the unit used inside, and the unit it is printed in. */
    private record Amount(double value, String unit) {}

    /** What is done with a figure. */
    private interface Act {
        List<Node.Mapping> done(Node.Mapping tree, Sheet sheet, Finding finding, Amount amount);
    }

    /** Where a field stands that a finding is about; none where the sheet does not give it. */
    private interface Where {
        List<String> paths(Node.Mapping tree, Sheet sheet, Finding finding);
    }

    static final Map<String, List<Doing>> DOINGS = new TreeMap<>();
    /** Rules whose remedy tells figures and none to set something to, with the reason. */
    static final Map<String, String> ONLY_TOLD = new TreeMap<>();

    private RemedyDone() {}

    private static void rule(String ids, Doing... doings) {
        for (String id : ids.split(" ")) {
            DOINGS.computeIfAbsent(id, none -> new ArrayList<>()).addAll(List.of(doings));
        }
    }

    private static void told(String reason, String ids) {
        for (String id : ids.split(" ")) {
            ONLY_TOLD.put(id, reason);
        }
    }

    /** @param before what stands before the figure, and {@code after} what stands behind it, as patterns */
    private static Doing says(String before, String after, Act act) {
        Pattern pattern = Pattern.compile(before + QUANTITY + after);
        return (tree, sheet, finding, remedy) -> {
            Matcher matcher = pattern.matcher(remedy);
            if (!matcher.find()) {
                throw new AssertionError(finding.judged().id() + " does not say '" + pattern + "': " + remedy);
            }
            return act.done(tree, sheet, finding, amount(matcher.group(1)));
        };
    }

    private static Amount amount(String text) {
        String[] parts = text.split(" ");
        if (parts.length == 1 || Dimension.ofUnit(parts[1]) == null) {
            return new Amount(Double.parseDouble(parts[0]), "");
        }
        return new Amount(Double.parseDouble(parts[0]) * Dimension.size(parts[1]), parts[1]);
    }

    private static Where at(String... paths) {
        return (tree, sheet, finding) -> Stream.of(paths)
                .map(path -> path.replace("{subject}", finding.judged().subject()))
                .filter(path -> path(path, finding).in(tree) != null)
                .limit(1)
                .toList();
    }

    /** A field of every planned part of a kind that gives it, or else of the vehicle. */
    private static Where of(Fitment.Kind kind, String vehicle, String field) {
        return (tree, sheet, finding) -> {
            List<String> planned = sheet.planned().fitments().stream()
                    .filter(part -> part.kind() == kind)
                    .map(part -> "fitments." + part.name() + "." + field)
                    .filter(path -> NodePath.parse(path).in(tree) != null)
                    .toList();
            return !planned.isEmpty()
                    ? planned
                    : NodePath.parse(vehicle + "." + field).in(tree) == null
                            ? List.of()
                            : List.of(vehicle + "." + field);
        };
    }

    private static NodePath path(String path, Finding finding) {
        String subject = finding.judged().subject();
        return subject.contains(".")
                ? NodePath.parse(path.replace(subject, "SUBJECT")).renamed("SUBJECT", subject)
                : NodePath.parse(path);
    }

    private static Act set(Where where) {
        return (tree, sheet, finding, amount) -> each(where, tree, sheet, finding, now -> amount.value(), amount, true);
    }

    private static Act more(Where where) {
        return (tree, sheet, finding, amount) ->
                each(where, tree, sheet, finding, now -> now + amount.value(), amount, false);
    }

    private static Act less(Where where) {
        return (tree, sheet, finding, amount) ->
                each(where, tree, sheet, finding, now -> now - amount.value(), amount, false);
    }

    private static List<Node.Mapping> each(
            Where where,
            Node.Mapping tree,
            Sheet sheet,
            Finding finding,
            DoubleUnaryOperator change,
            Amount amount,
            boolean exact) {
        List<String> paths = where.paths(tree, sheet, finding);
        Node.Mapping changed = tree;
        for (String path : paths) {
            changed = changed(changed, path(path, finding), change, amount.unit(), exact);
        }
        return paths.isEmpty() ? List.of() : List.of(changed);
    }

    /** @param exact whether what was a tolerance of the old figure is none of the new one */
    private static Node.Mapping changed(
            Node.Mapping tree, NodePath path, DoubleUnaryOperator change, String unit, boolean exact) {
        String now = path.in(tree) instanceof Node.Scalar scalar ? scalar.text() : "0 " + unit;
        Figure figure = parsed(now, unit);
        double tolerance = exact ? 0 : figure.tolerance();
        return Trees.with(
                tree,
                path,
                written(change.applyAsDouble(figure.value()), unit)
                        + (unit.isEmpty() || !exact && !now.contains("+/-") ? "" : " +/- " + written(tolerance, unit)));
    }

    private static Figure parsed(String text, String unit) {
        try {
            return QuantityText.parse(text, unit.isEmpty() ? Dimension.COUNT : Dimension.ofUnit(unit));
        } catch (QuantityText.Unreadable e) {
            throw new AssertionError(e);
        }
    }

    private static String written(double value, String unit) {
        String number = new BigDecimal(value / Dimension.size(unit), new MathContext(12))
                .setScale(9, java.math.RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
        return unit.isEmpty() ? number : number + " " + unit;
    }

    /** Taken off the bare vehicle, so much of it off the front axle. */
    private static List<Node.Mapping> off(Node.Mapping tree, double kilograms, double front) {
        if (!(has(tree, "kerb", kilograms)
                && has(tree, "front-axle", kilograms * front)
                && has(tree, "rear-axle", kilograms * (1 - front)))) {
            return List.of();
        }
        Node.Mapping changed = changed(tree, NodePath.parse("vehicle.mass.kerb"), now -> now - kilograms, "kg", false);
        changed = changed(
                changed, NodePath.parse("vehicle.mass.front-axle"), now -> now - kilograms * front, "kg", false);
        return List.of(changed(
                changed, NodePath.parse("vehicle.mass.rear-axle"), now -> now - kilograms * (1 - front), "kg", false));
    }

    /** Whether the bare vehicle weighs so much that it stays one with this taken off: twice as much. */
    private static boolean has(Node.Mapping tree, String field, double kilograms) {
        return NodePath.of("vehicle", "mass", field).in(tree) instanceof Node.Scalar mass
                && parsed(mass.text(), "kg").value() / 2 > kilograms;
    }

    private static final Act OUT = (tree, sheet, finding, amount) -> off(tree, amount.value(), 0.4);
    /**
     * Not where the frame is stretched behind the axle, since the bare vehicle was weighed before that; nor where the
     * loading was weighed, which it has to be again.
     */
    private static final Act OFF_AXLE = (tree, sheet, finding, amount) ->
            sheet.planned().fitments().stream().anyMatch(part -> part.kind() == Fitment.Kind.CHASSIS_EXTENSION)
                            || sheet.cases().stream()
                                    .anyMatch(loading -> loading.weighed().isPresent())
                    ? List.of()
                    : off(tree, amount.value(), finding.judged().subject().startsWith("front") ? 1 : 0);

    /** Not where it does not weigh so much. */
    private static final Act OFF_TRAILER = (tree, sheet, finding, amount) -> sheet.trailer()
                    .filter(trailer -> trailer.mass().value() > amount.value())
                    .isPresent()
            ? less(at("trailer.mass")).done(tree, sheet, finding, amount)
            : List.of();

    private static final Act PLATED_LOWER = (tree, sheet, finding, amount) -> {
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

    /** The trailer loaded to no more than this, with the same share of it on the ball. */
    private static List<Node.Mapping> loaded(Node.Mapping tree, double most) {
        double now = parsed(((Node.Scalar) NodePath.parse("trailer.mass").in(tree)).text(), "kg")
                .value();
        if (!(now > most)) {
            return List.of(tree);
        }
        Node.Mapping changed = changed(tree, NodePath.parse("trailer.mass"), mass -> most, "kg", true);
        return List.of(
                NodePath.parse("trailer.ball").in(tree) == null
                        ? changed
                        : changed(changed, NodePath.parse("trailer.ball"), ball -> ball * most / now, "kg", false));
    }

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

    private static final Act DIAMETER_LESS = (tree, sheet, finding, amount) -> diameter(tree, sheet, -amount.value());
    private static final Act DIAMETER_MORE = (tree, sheet, finding, amount) -> diameter(tree, sheet, amount.value());

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

    private static final Act FUEL = (tree, sheet, finding, amount) -> fill(tree, sheet, finding, amount, false);
    private static final Act WATER = (tree, sheet, finding, amount) -> fill(tree, sheet, finding, amount, true);

    /** So much of it aboard in all: the first such tank holds what the others do not, in a larger one if need be. */
    private static List<Node.Mapping> fill(
            Node.Mapping tree, Sheet sheet, Finding finding, Amount amount, boolean water) {
        List<Tank> tanks = sheet.planned().tanks().stream()
                .filter(tank -> water
                        ? tank.liquid().is(Tank.Liquid.WATER)
                        : !tank.liquid().is(Tank.Liquid.WATER)
                                && !tank.builtIn().feedsEngine().is(fitworthy.quantity.YesNo.NO)
                                && !tank.portable().is(fitworthy.quantity.YesNo.YES))
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

    private static final Where SUBJECT_LIMIT = at("fitments.{subject}.limit");
    private static final Where FUSE = (tree, sheet, finding) -> {
        String subject = finding.judged().subject();
        String far = " at the far end";
        return List.of(
                subject.endsWith(far)
                        ? "circuits." + subject.substring(0, subject.length() - far.length()) + ".far-fuse"
                        : "circuits." + subject + ".fuse");
    };

    private static Where fuse(String field) {
        return (tree, sheet, finding) -> FUSE.paths(tree, sheet, finding).stream()
                .map(path -> path + "." + field)
                .toList();
    }

    private static Where springs(String field) {
        return (tree, sheet, finding) -> sheet.planned().fitments().stream()
                .filter(part -> part.details() instanceof SuspensionDetails.Springs springs
                        && finding.judged().subject().startsWith(springs.end().is(VehicleEnd.FRONT) ? "front" : "rear"))
                .map(part -> "fitments." + part.name() + "." + field)
                .toList();
    }

    private static Where tyres(String field) {
        return (tree, sheet, finding) ->
                of(Fitment.Kind.TYRES, "vehicle.tyres", field).paths(tree, sheet, finding);
    }

    private static final Where INDEX = (tree, sheet, finding) -> tyres(
                    finding.judged().subject().equals("rear axle")
                                    && sheet.planned()
                                            .vehicle()
                                            .wheels()
                                            .dualRear()
                                            .is(fitworthy.quantity.YesNo.YES)
                            ? "dual-load-index"
                            : "load-index")
            .paths(tree, sheet, finding);
    private static final Where WHEELS = of(Fitment.Kind.WHEELS, "vehicle.wheels", "rating");
    private static final Where GVM = of(Fitment.Kind.RATING_UPGRADE, "vehicle.ratings", "gvm");
    private static final Act GVM_AND_LOAD =
            (tree, sheet, finding, amount) -> set(GVM).done(tree, sheet, finding, amount).stream()
                    .flatMap(lower -> off(lower, Math.max(0, heaviest(sheet) - amount.value()), 0.4).stream())
                    .toList();
    /** What a load on the ball puts on the rear axle, ample for any overhang. */
    private static final double BEHIND_AXLE = 2;

    private static final Where DEPTH = at("trip.water-depth");
    private static final Where BREATHERS = of(Fitment.Kind.BREATHER_KIT, "vehicle", "height");
    private static final Where FLOW = at("fitments.{subject}.rated-flow");
    private static final Where GAP = at("fitments.{subject}.exhaust-gap", "tanks.{subject}.built-in.exhaust-gap");

    private static Where breathers() {
        return (tree, sheet, finding) -> {
            List<String> kit = BREATHERS.paths(tree, sheet, finding);
            return kit.isEmpty() ? at("vehicle.intake.breathers").paths(tree, sheet, finding) : kit;
        };
    }

    private static Where mirror(String field) {
        return (tree, sheet, finding) -> {
            String side = finding.judged().subject().split(" ")[0];
            List<String> planned =
                    of(Fitment.Kind.MIRRORS, "", side + "." + field).paths(tree, sheet, finding);
            return planned.isEmpty()
                    ? at("vehicle.view.mirrors." + side + "." + field).paths(tree, sheet, finding)
                    : planned;
        };
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

    /** The duct's bore, or an airbox's inlet. */
    private static final Where BORE = (tree, sheet, finding) -> {
        String subject = finding.judged().subject();
        return List.of("fitments."
                + (subject.endsWith(" inlet") ? subject.replace(" inlet", ".inlet-bore") : subject + ".bore"));
    };

    private static Act days(String field) {
        return more(at(field));
    }

    static {
        rule("across.same-place", says("by ", " ?,", MOVED));
        rule("across.tanks-not-full", says("least ", " less", (tree, sheet, finding, amount) -> (finding.judged()
                                .subject()
                                .endsWith("axle")
                        ? OFF_AXLE
                        : OUT)
                .done(tree, sheet, finding, amount)));
        rule("across.tanks-take-payload", says("passed by ", "\\.", OUT));
        rule(
                "across.kit-in-vain",
                says(
                        "more than ",
                        " lighter",
                        (tree, sheet, finding, amount) -> OFF_TRAILER.done(
                                tree, sheet, finding, new Amount(amount.value() + 0.001, amount.unit()))));
        rule("across.bar-wrong-twice", says("no more than ", " in its place", set(at("fitments.{subject}.mass"))));
        rule("across.seats-short", says("people: ", "\\.", set(of(Fitment.Kind.SEAT_CHANGE, "vehicle", "seats"))));
        rule("across.trip-seats-short", says("Keep ", " seats", set(of(Fitment.Kind.SEAT_CHANGE, "vehicle", "seats"))));
        rule("across.people-more across.people-fewer", says("trip that ", " travel", set(at("trip.people"))));

        rule("body.hold-down-weak", says("add up to ", ",", (tree, sheet, finding, amount) -> {
            NodePath points = NodePath.of("fitments", finding.judged().subject(), "hold-down", "points");
            double many = parsed(((Node.Scalar) points.in(tree)).text(), "").value();
            return set(at("fitments.{subject}.hold-down.limit"))
                    .done(tree, sheet, finding, new Amount(amount.value() / many, amount.unit()));
        }));
        rule("body.hold-down-few", says("at ", " points", set(at("fitments.{subject}.hold-down.points"))));
        rule("body.leg-weak", says("carry ", " each", set(at("fitments.{subject}.legs.limit"))));
        rule("body.legs-tip", says("feet to ", ",", set(at("fitments.{subject}.legs.spacing"))));
        rule("body.gas-mount-weak", says("withstand ", " in", set(at("fitments.{subject}.mount"))));
        rule("body.door-meets-trailer", says("leave ", " more room", more(at("trailer.drawbar"))));
        rule("body.battery-vent-small", says("at least ", " free", set(at("fitments.{subject}.vents"))));

        rule("body.overhang-long", says("overhang is ", ",", (tree, sheet, finding, amount) -> {
            double over = amount.value() * (finding.judged().measure().getValue() / share(finding) - 1);
            return sheet.planned().fitments().stream()
                    .map(part -> NodePath.of("fitments", part.name(), "length"))
                    .filter(path -> path.in(tree) != null)
                    .map(path -> changed(tree, path, now -> now - over, "mm", false))
                    .toList();
        }));

        rule("electrical.alternator-over", says("alternator of at least ", ":", set(at("vehicle.engine.alternator"))));
        rule(
                "electrical.lead-too-deep electrical.lithium-too-deep",
                says("capacity of at least ", ",", set(of(Fitment.Kind.BATTERY, "vehicle", "capacity"))));
        rule("electrical.starter-drained", says("no more than ", " is drawn", (tree, sheet, finding, amount) -> {
            Node.Mapping changed = tree;
            for (Circuit circuit : sheet.planned().circuits()) {
                changed = Trees.with(changed, NodePath.of("circuits", circuit.name(), "current"), "0 A");
                changed = Trees.with(changed, NodePath.of("circuits", circuit.name(), "standby"), "0 mA");
            }
            return List.of(
                    changed(changed, NodePath.parse("vehicle.engine.own-standby"), now -> amount.value(), "mA", true));
        }));
        rule(
                "electrical.drop-critical electrical.drop-other",
                says("copper of ", ",", set(at("circuits.{subject}.cable.section"))),
                says("planned, or shorten the run. ", " would", set(at("circuits.{subject}.cable.section"))));
        rule("electrical.cable-thin", says("at least ", ";", set(at("circuits.{subject}.cable.section"))));
        rule("electrical.cable-over-rating", says("at least ", ",", set(at("circuits.{subject}.cable.rating"))));
        rule("electrical.fuse-below-load", says("at least ", " if", set(fuse("rating"))));
        rule(
                "electrical.fuse-above-cable electrical.fuse-far-above-cable",
                says("no more than ", ",", set(fuse("rating"))));
        rule(
                "electrical.fuse-far electrical.fuse-far-enclosed",
                says("within ", " of", set(fuse("distance"))),
                says("terminal, ", " nearer", less(fuse("distance"))));
        rule("electrical.panel-full", says("with ", " ways", set(of(Fitment.Kind.SWITCH_PANEL, "vehicle", "ways"))));

        rule("front.lamps-many", says("no more than ", " driving", (tree, sheet, finding, amount) -> {
            double more = finding.judged().measure().getValue() - amount.value();
            return less(of(Fitment.Kind.LAMPS, "vehicle", "count")).done(tree, sheet, finding, new Amount(more, ""));
        }));

        rule("fuel.range-short", says("Carry ", " of", FUEL));
        rule("fuel.finer-first", says("Choose ", " or coarser", (tree, sheet, finding, amount) -> set((a, b, c) ->
                        List.of("fitments." + finding.judged().subject().split(" ahead of ")[0] + ".rating"))
                .done(tree, sheet, finding, amount)));
        rule(
                "fuel.flow-low fuel.crankcase-small",
                says("for ", " or more", set(FLOW)),
                says("one is ", " short", more(FLOW)));
        rule("fuel.exhaust-touching", says("at least ", " further", (tree, sheet, finding, amount) -> {
            String shield = GAP.paths(tree, sheet, finding).get(0).replace("exhaust-gap", "shielded");
            return more(GAP).done(Trees.with(tree, path(shield, finding), "yes"), sheet, finding, amount);
        }));
        rule("fuel.exhaust-close", says("it ", " further", more(GAP)));

        rule(
                "intake.drain-under-water",
                says("deeper than ", ";", set(DEPTH)),
                says("plan is ", " deeper", less(DEPTH)));
        rule("intake.too-deep", says("deeper than ", ",", set(DEPTH)), says("plan is ", " too deep", less(DEPTH)));
        rule(
                "intake.deeper-than-maker",
                says("deeper than ", ",", set(DEPTH)),
                says("plan is ", " deeper", less(DEPTH)));
        rule("intake.fan-in-water", says("Keep to ", ",", set(DEPTH)), says(", ", " less", less(DEPTH)));
        rule(
                "intake.fan-within-maker",
                says("deeper than ", ";", set(DEPTH)),
                says("plan is ", " deeper", less(DEPTH)));
        rule("intake.bore-narrow", says("bore of ", " or more", set(BORE)), says("one is ", " short", more(BORE)));
        rule("intake.duct-fast", says("bore of ", " or more", set(BORE)));
        rule("intake.filter-overrun", says("after ", " at", set(at("trip.dust-distance"))));
        rule("intake.breathers-drown intake.breathers-left-low", says("breathers to ", " or", set(breathers())));

        rule("mass.gvm-over", says("at least ", " out", OUT));
        rule("mass.axle-over", says("at least ", " off", OFF_AXLE));
        rule("mass.gcm-over", says("at least ", " when", OUT), says("at least ", " when", OFF_TRAILER));
        rule("mass.ball-takes-payload", says("passed by ", ";", OUT));
        rule("mass.front-light", says("axle carries ", ",", (tree, sheet, finding, amount) -> {
            double bare = sheet.planned().vehicle().mass().frontAxle().value();
            double now = bare * (1 - finding.judged().measure().getValue());
            return shifted(
                    tree,
                    sheet,
                    "x",
                    (amount.value() - now)
                            * sheet.planned().vehicle().size().wheelbase().value());
        }));
        rule(
                "mass.lopsided",
                says(
                        "such as ",
                        " from",
                        (tree, sheet, finding, amount) -> shifted(
                                tree,
                                sheet,
                                "y",
                                amount.value()
                                        * sheet.planned()
                                                .vehicle()
                                                .size()
                                                .track()
                                                .value())));
        rule("mass.roof-over", says("at least ", " off", (tree, sheet, finding, amount) -> Stream.concat(
                        sheet.planned().fitments().stream()
                                .filter(part -> part.mass().value() >= amount.value())
                                .map(part -> "fitments." + part.name()),
                        sheet.planned().cargo().stream()
                                .filter(load -> load.mass().value() >= amount.value())
                                .map(load -> "cargo." + load.name()))
                .filter(item -> NodePath.parse(item + ".roof").in(tree) != null)
                .map(item -> changed(tree, NodePath.parse(item + ".mass"), now -> now - amount.value(), "kg", false))
                .toList()));
        rule(
                "mass.raised-gvm-gcm-left", says("no more than ", ",", (tree, sheet, finding, amount) -> set(
                                of(Fitment.Kind.RATING_UPGRADE, "vehicle.ratings", "towing"))
                        .done(tree, sheet, finding, amount)
                        .stream()
                        .flatMap(lower ->
                                sheet.trailer().isPresent() ? loaded(lower, amount.value()).stream() : Stream.of(lower))
                        .toList()));
        rule("mass.raised-gvm-trailer", says("at least ", " below", (tree, sheet, finding, amount) -> {
            double gvm = parsed(
                            ((Node.Scalar) NodePath.parse(GVM.paths(tree, sheet, finding)
                                                    .get(0))
                                            .in(tree))
                                    .text(),
                            "kg")
                    .value();
            return GVM_AND_LOAD.done(tree, sheet, finding, new Amount(gvm - amount.value(), "kg"));
        }));
        rule(
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
        rule("mass.raised-gvm-axles", says("Count on ", " at most", GVM_AND_LOAD));
        rule("mass.heavy-class", says("GVM at ", " or less", GVM_AND_LOAD));

        rule("mirrors.trailer-hides", says("at least ", " from", withEdge(set(mirror("reach")))));
        rule("mirrors.load-hides", says(", ", " more", withEdge(more(mirror("reach")))));
        rule("mirrors.sticks-out", says("in by ", ";", less(mirror("edge"))));
        rule("mirrors.left-out", says("retracts ", " farther", less(mirror("edge-stowed"))));
        for (String id : List.of("mirrors.field-narrow", "mirrors.near-narrow")) {
            rule(id, (tree, sheet, finding, remedy) -> {
                List<Node.Mapping> ways = says("has to stand ", " from", withEdge(set(mirror("reach"))))
                        .ways(tree, sheet, finding, remedy);
                return ways.isEmpty()
                        ? ways
                        : says("with ", " of its width", set(mirror("glass")))
                                .ways(ways.get(0), sheet, finding, remedy);
            });
        }

        rule("radio.in-sight", says("stands ", " or more", (tree, sheet, finding, amount) -> {
            double eye = sheet.planned().vehicle().view().eye().y().value();
            return set(at("fitments.{subject}.at.y"))
                    .done(tree, sheet, finding, new Amount(eye + Math.signum(-eye) * amount.value(), amount.unit()));
        }));
        rule("radio.too-high", says("by ", ",", less(at("fitments.{subject}.tip"))));
        rule("radio.power-over", says("set of ", " or less", set(at("fitments.{subject}.power"))));
        rule("radio.range-short", says("Plan on ", " at best", set(at("trip.radio-range"))));
        rule("radio.gain-high", says("whip of ", " or less", set(of(Fitment.Kind.AERIAL, "vehicle", "gain"))));
        rule("radio.gain-low", says("whip of ", " or more", set(of(Fitment.Kind.AERIAL, "vehicle", "gain"))));

        rule("recovery.point-weak", says("at least ", " at the", (tree, sheet, finding, amount) -> set((a, b, c) ->
                        pointsAt(tree, sheet, finding))
                .done(tree, sheet, finding, amount)));
        rule("recovery.winch-small", says("rated for ", " or more", set(at("fitments.{subject}.pull"))));
        rule("recovery.line-weak", says("strength above ", ",", (tree, sheet, finding, amount) -> set(at(
                        "fitments.{subject}.line"))
                .done(tree, sheet, finding, new Amount(amount.value() + 0.001, amount.unit()))));
        rule("recovery.feed-weak", says("chosen for ", ";", set(at("fitments.{subject}.feed"))));
        rule(
                "recovery.strap-weak recovery.strap-stiff",
                says("vehicles, ", " for", set(at("fitments.{subject}.strength"))));
        rule("recovery.shackles-weak recovery.block-weak", says("at least ", "[,;]", set(SUBJECT_LIMIT)));
        rule("recovery.tree-strap-weak", says("at least ", " in", set(at("fitments.{subject}.tree-strap-limit"))));

        rule("suspension.lift-uncertified suspension.stability-control", says("Take ", " out", LOWER_LIFT));
        rule("suspension.body-lifted", says("Leave the ", " of spacers", LOWER_LIFT));
        rule("suspension.lift-too-high", says("at least ", " out", LOWER_LIFT));
        rule("suspension.height-change", says("by ", " less", (tree, sheet, finding, amount) -> {
            NodePath lift = NodePath.of("fitments", finding.judged().subject(), "lift");
            return List.of(changed(tree, lift, now -> now - Math.signum(now) * amount.value(), amount.unit(), false));
        }));
        rule("suspension.springs-overloaded", says("made for ", " of fixed", set(at("fitments.{subject}.load-most"))));
        rule(
                "suspension.springs-underloaded",
                says("springs for ", " of fixed", set(at("fitments.{subject}.load-least"))));
        rule("suspension.front-springs-left", says("dampers for ", " of fixed", (tree, sheet, finding, amount) -> {
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
        rule("suspension.too-soft suspension.sags", says("springs of ", " or more", set(springs("rate"))));
        rule("suspension.joint-angle", says("by ", " with", less(at("fitments.{subject}.joint-angle"))));

        rule("towing.trailer-over", says("at least ", " lighter", OFF_TRAILER));
        rule("towing.unrated-over", says("down to ", ",", set(at("trailer.mass"))));
        rule("towing.plate-over", says("at least ", " out", OFF_TRAILER));
        rule("towing.coupling-over", says("take ", " out", OFF_TRAILER), says("at least ", ",", plate("trailer")));
        rule(
                "towing.coupling-below-plate",
                says("plated ", " lower", PLATED_LOWER),
                says("at least ", ",", plate("trailer")));
        rule("towing.axles-over towing.tyres-over", says("at least ", " off", OFF_TRAILER));
        rule("towing.trailer-wide", says("trailer, ", " in all", less(at("trailer.width"))));
        rule("towing.trailer-long", says("at least ", " shorter", less(at("trailer.length"))));
        rule("towing.force-over", says("at least ", " on", (tree, sheet, finding, amount) -> plate(
                        finding.judged().subject().split(", ")[1].toLowerCase(java.util.Locale.ROOT))
                .done(tree, sheet, finding, amount)));
        rule(
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
        rule("towing.ball-light", says("ball carries ", ",", (tree, sheet, finding, amount) -> {
            double more = amount.value() - sheet.trailer().orElseThrow().ball().value();
            return set(at("trailer.ball")).done(tree, sheet, finding, amount).stream()
                    .flatMap(stowed -> Stream.of(
                                    List.of(stowed), off(stowed, BEHIND_AXLE * more, 0), lighter(stowed, sheet))
                            .flatMap(List::stream))
                    .toList();
        }));
        rule("towing.ball-slight", says("at least ", " more", more(at("trailer.ball"))));
        rule(
                "towing.unbraked-by-axles towing.unbraked-by-mass towing.plain-brakes",
                says("plated ", " lower", PLATED_LOWER));
        rule("towing.breakaway-short", says("brakes hold ", ";", set(at("trailer.breakaway-hold"))));
        rule("towing.chains-few", says("and ", " where", set(at("trailer.chains"))));
        rule("towing.outweighed", says("trailer by ", " or", OFF_TRAILER));
        rule("towing.nose-up", says("ball ", " lower", lowerBall()));
        rule("towing.nose-up-far", says("at least ", " with", lowerBall()));

        rule("tyres.load-over", says("at least ", " off", OFF_AXLE), says("load index ", " or higher", set(INDEX)));
        rule("tyres.weaker-than-axle", says("load index ", " or higher", set(INDEX)));
        rule("tyres.wheel-over", says("at least ", " off", OFF_AXLE), says("rated for ", " or more", set(WHEELS)));
        rule("tyres.wheel-weaker-than-axle", says("rated for ", " or more", set(WHEELS)));
        rule("tyres.too-slow", says("no faster than ", ", or", set(at("trip.top-speed"))));
        rule("tyres.diameter-grown tyres.diameter-grown-passenger", says("at least ", " smaller", DIAMETER_LESS));
        rule("tyres.diameter-shrunk", says("at least ", " larger", DIAMETER_MORE));
        rule(
                "tyres.rim-narrow",
                says("rims of ", " or wider", set(of(Fitment.Kind.WHEELS, "vehicle.wheels", "width"))));
        rule(
                "tyres.rim-wide",
                says("rims of ", " or narrower", set(of(Fitment.Kind.WHEELS, "vehicle.wheels", "width"))));
        rule(
                "tyres.track-wide tyres.track-wide-passenger",
                says("with ", " less", (tree, sheet, finding, amount) -> more(of(
                                Fitment.Kind.WHEELS, "vehicle.wheels", "offset"))
                        .done(tree, sheet, finding, new Amount(amount.value() / 2, amount.unit()))));
        rule("tyres.pressure-low", says("plan ", " or more", (tree, sheet, finding, amount) -> set(tyres(
                        finding.judged().subject().split(" ")[0] + "-pressure"))
                .done(tree, sheet, finding, amount)));
        rule("tyres.pressure-high", says("Plan ", " or less", (tree, sheet, finding, amount) -> set(tyres(
                        finding.judged().subject().split(" ")[0] + "-pressure"))
                .done(tree, sheet, finding, amount)));
        rule("tyres.passenger-on-truck", says("at least ", " off", OFF_AXLE));
        rule("tyres.clearance-small", says("Gain ", " at", more(tyres("clearance"))));

        rule("water.short water.no-reserve", says("Set out with ", ",", WATER));
        rule("water.use-low", says("at least ", " for each", set(at("trip.water-use"))));
        rule("water.too-near", says("gap is ", " too small", more(at("tanks.{subject}.water.clearance"))));

        rule("order.late order.late-in-turn", says("a day ", " later", later("ready-by")));
        rule("order.booked-early", says("at least ", " later", (tree, sheet, finding, amount) -> Stream.of(
                        "fitments.", "jobs.", "tanks.")
                .map(list -> list + finding.judged().subject() + ".work.booked")
                .filter(path -> NodePath.parse(path).in(tree) != null)
                .flatMap(path -> later(path).done(tree, sheet, finding, amount).stream())
                .toList()));
        rule("paperwork.delivered-late", says("held ", " longer", days("papers.offer")));

        told(
                "it names what is left, what is usual or what comes of it, and asks to weigh, to look or to ask",
                "mass.gvm-unsure mass.axle-unsure mass.gcm-unsure mass.gvm-tight mass.behind-axle mass.ball-lever"
                        + " mass.cog-high mass.weighbridge-disagrees mass.found-takes-payload towing.trailer-unsure towing.ball-heavy"
                        + " towing.ratio-high towing.overhang-long tyres.load-tight tyres.gearing-long"
                        + " tyres.lift-counts tyres.wheel-weaker-than-tyre tyres.speedometer-low tyres.wide"
                        + " tyres.diameter-share body.overhang-grown body.behind-axle front.approach-low"
                        + " front.grille-hidden fuel.range-thin fuel.separator-missing fuel.tank-approval"
                        + " intake.bore-step intake.duct-brisk intake.little-freeboard recovery.winch-coupled"
                        + " suspension.too-stiff suspension.rear-slow suspension.travel-lost across.lift-upsets-all"
                        + " order.order-now order.broken-up water.one-tank water.surges water.freezes"
                        + " electrical.charger-gains electrical.lithium-charged-in-frost"
                        + " electrical.lithium-idle-in-frost");
        told("wavelengths are no field; the distance goes by the lower frequency", "radio.too-near");
        told(
                "a symbol or an index is chosen from a table by what it has to carry",
                "tyres.speed-symbol-low tyres.spare-weak");
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

    /** The most that it weighs in any loading, kg. */
    private static double heaviest(Sheet sheet) {
        try {
            return Adviser.advise(Books.engine(), sheet).loadings().stream()
                    .flatMap(loading -> Measures.of(loading).stream())
                    .filter(measure -> measure.getName().equals("mass.loaded") && measure.isKnown())
                    .mapToDouble(Measure::getValue)
                    .max()
                    .orElse(0);
        } catch (FaultsException e) {
            throw new IllegalStateException(e);
        }
    }

    private static double share(Finding finding) {
        return finding.comparison().orElseThrow().limit();
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

    private static Act plate(String field) {
        return (tree, sheet, finding, amount) -> {
            if (finding.judged().subject().contains("coupling")) {
                return set(at("trailer.coupling." + field)).done(tree, sheet, finding, amount);
            }
            return set(of(Fitment.Kind.TOW_BAR, "vehicle.tow-bar", "plate." + field))
                    .done(tree, sheet, finding, amount);
        };
    }

    private static Act lowerBall() {
        return (tree, sheet, finding, amount) -> {
            List<Node.Mapping> bar = less(of(Fitment.Kind.TOW_BAR, "vehicle.tow-bar", "ball-height"))
                    .done(tree, sheet, finding, amount);
            return bar.isEmpty() ? less(at("vehicle.size.ball-height")).done(tree, sheet, finding, amount) : bar;
        };
    }

    private static Act later(String field) {
        return (tree, sheet, finding, amount) -> Arrays.asList(Trees.with(
                tree,
                NodePath.parse(field),
                java.time.LocalDate.parse(((Node.Scalar) NodePath.parse(field).in(tree)).text())
                        .plusDays(Math.round(amount.value() / Dimension.size("days")))
                        .toString()));
    }
}
