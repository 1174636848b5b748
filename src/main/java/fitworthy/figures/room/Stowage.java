package fitworthy.figures.room;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Held;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.OnRoof;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Sliding;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.BodyDetails;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Point;
import fitworthy.sheet.Sheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** How much more people and cargo may weigh at each place that the sheet has for them, each place by itself. */
final class Stowage {

    /**
     * A place for people or cargo.
     *
     * @param boxes the trays and canopies that it is in or on
     * @param on the name of what it is in or on, as far as that may be a rack; empty where nothing
     */
    private record Spot(String name, Point at, Choice<YesNo> roof, List<Fitment> boxes, String on) {
        Spot(String name, Point at, Choice<YesNo> roof, List<Fitment> boxes) {
            this(name, at, roof, boxes, "");
        }
    }

    private final Loading loading;
    private final Plan plan;
    private final Carrier carrier;
    private final Above above;

    private Stowage(Loading loading) {
        this.loading = loading;
        this.plan = loading.plan();
        this.carrier = Carrier.of(loading, "");
        this.above = new Above(loading);
    }

    /** In kg, by the name of the place. */
    static Map<String, Most> of(Loading loading) {
        Stowage stowage = new Stowage(loading);
        Map<String, Most> rooms = new LinkedHashMap<>();
        stowage.spots().forEach(spot -> rooms.putIfAbsent(spot.name(), stowage.most(spot)));
        return rooms;
    }

    private Most most(Spot spot) {
        Taken more = new Taken("most", Sort.CARGO, spot.at(), Figure.of(1, 0), "", List.of());
        List<Step> steps = new ArrayList<>(carrier.steps(more));
        Above.Limits up = above.limits(more, spot.on(), spot.roof(), "");
        steps.addAll(up.steps());
        spot.boxes().forEach(part -> {
            holdDowns(part).ifPresent(steps::add);
            if (part.removable().is(YesNo.YES)) {
                legs(part).ifPresent(steps::add);
            }
        });
        return Most.added(steps, up.bounds());
    }

    /**
     * What the hold-downs of a canopy leave over what they are to hold, in the weakest direction that is told; of one that
     * stays on nothing where nothing is.
     */
    private Optional<Step> holdDowns(Fitment part) {
        BodyDetails.HoldDown holdDown = ((BodyDetails.Body) part.details()).holdDown();
        Figure held = Held.of(plan, part, holdDown.loaded()).mass();
        Bears points =
                new Bears(holdDown.points().times(holdDown.limit()), plan.practice(PracticeId.BODY_HOLD_DOWN_LEAST));
        Stream<Bears> told = Stream.concat(
                        Stream.of(points),
                        Stream.of(Sliding.values()).map(way -> new Bears(way.holds(holdDown), way.least(plan))))
                .filter(way -> way.together().known()
                        || way == points && part.removable().is(YesNo.YES));
        return told.reduce((one, other) -> other.holds().isBelow(one.holds()) ? other : one)
                .map(weakest -> holdDowns(weakest, held));
    }

    private static Step holdDowns(Bears weakest, Figure held) {
        Figure holds = weakest.holds();
        return Step.plain(Limit.HOLD_DOWNS, holds.minus(held), () -> {
            List<String> lines = new ArrayList<>(left(holds, held).lines());
            lines.addAll(new Working.Formula(
                            "limit = together / least",
                            List.of(in("together", weakest.together(), "kg"), in("least", weakest.least(), "")))
                    .lines());
            return lines;
        });
    }

    /** @param together what all points bear in a direction, kg @param least what they have to over what they hold */
    private record Bears(Figure together, Figure least) {
        Figure holds() {
            return together.dividedBy(least);
        }
    }

    /**
     * What two of the legs that lift it off leave over what is in it; nothing where the sheet says how much they lift at the
     * most.
     */
    private Optional<Step> legs(Fitment part) {
        BodyDetails.Body body = (BodyDetails.Body) part.details();
        BodyDetails.Legs legs = body.legs();
        if (legs.lifted().known()) {
            return Optional.empty();
        }
        Figure lifted = Held.of(plan, part, body.holdDown().loaded()).mass();
        Figure limit = legs.limit().times(2);
        return Optional.of(Step.plain(Limit.LEGS, limit.minus(lifted), () -> {
            List<String> lines = new ArrayList<>(left(limit, lifted).lines());
            lines.addAll(new Working.Formula("limit = 2 x each", List.of(in("each", legs.limit(), "kg"))).lines());
            return lines;
        }));
    }

    /** The trays and canopies in or on which something stands, by the name of what it is in. */
    private List<Fitment> around(String in) {
        return loading.bodies().stream()
                .filter(part -> plan.sheet().withContents(Set.of(part.name())).contains(in))
                .toList();
    }

    /** Whether its place is in what is off. */
    private boolean isLeftBehind(Sheet.Load piece) {
        return piece.in().isEmpty()
                && plan.fitments(Fitment.Kind.CANOPY).stream()
                        .filter(canopy -> loading.isOff(canopy.name()))
                        .anyMatch(canopy ->
                                Held.byPlace(plan, canopy, plan.places().of(piece)));
    }

    /** Those that hold what stands at a place and is said to be in nothing. */
    private List<Fitment> aroundPlace(Point at) {
        return loading.bodies().stream()
                .filter(part -> Held.byPlace(plan, part, at))
                .toList();
    }

    private static Working left(Figure limit, Figure load) {
        return new Working.Formula("left = limit - load", List.of(in("limit", limit, "kg"), in("load", load, "kg")));
    }

    private List<Spot> spots() {
        List<Spot> spots = new ArrayList<>();
        seats(spots);
        boxes(spots);
        racks(spots);
        cargo(spots);
        rearEnd(spots);
        return spots;
    }

    /** A row of seats for those who sit as far back. */
    private void seats(List<Spot> spots) {
        Map<Double, List<Sheet.Person>> rows = new LinkedHashMap<>();
        for (Sheet.Person person : plan.sheet().occupants()) {
            double row = Figure.rounded(plan.places().of(person).x().value());
            rows.computeIfAbsent(row, none -> new ArrayList<>()).add(person);
        }
        rows.values()
                .forEach(row -> spots.add(new Spot(
                        "in the seats of "
                                + String.join(
                                        " and ",
                                        row.stream().map(Sheet.Person::name).toList()),
                        plan.places().of(row.get(0)),
                        Choice.of(YesNo.NO),
                        List.of())));
    }

    /** The middle of a canopy, and of a tray that no canopy covers. */
    private void boxes(List<Spot> spots) {
        boolean covered = loading.bodies().stream().anyMatch(part -> part.kind() == Fitment.Kind.CANOPY);
        loading.bodies().stream()
                .filter(part -> part.kind() == Fitment.Kind.CANOPY || !covered)
                .forEach(part -> {
                    BodyDetails.Body body = (BodyDetails.Body) part.details();
                    spots.add(new Spot(
                            "in the middle of " + part.name(),
                            new Point(body.front().plus(body.length().times(0.5)), Figure.of(0, 0), Figure.of(0, 0)),
                            Choice.of(YesNo.NO),
                            around(part.name())));
                });
    }

    private void racks(List<Spot> spots) {
        plan.fitments(Fitment.Kind.ROOF_RACK).stream().filter(loading::carries).forEach(rack -> plan.places()
                .of(rack)
                .ifPresent(at -> spots.add(new Spot(
                        "on " + rack.name(), at, OnRoof.of(rack, plan.sheet()), around(rack.name()), rack.name()))));
    }

    /** As far back as anything can stand, where it puts most on the rear axle. */
    private void rearEnd(List<Spot> spots) {
        List<Fitment> bodies = loading.bodies();
        spots.add(new Spot(
                "at the rear end",
                new Point(plan.wheelbase().plus(loading.rearOverhang()), Figure.of(0, 0), Figure.of(0, 0)),
                Choice.of(YesNo.NO),
                bodies.isEmpty()
                        ? List.of()
                        : around(bodies.get(bodies.size() - 1).name())));
    }

    /** Where a piece of cargo has its place, whether it is aboard or not. */
    private void cargo(List<Spot> spots) {
        plan.sheet().cargo().stream()
                .filter(piece -> !loading.isOff(piece.in()) && !isLeftBehind(piece))
                .forEach(piece -> spots.add(new Spot(
                        "beside " + piece.name(),
                        plan.places().of(piece),
                        OnRoof.of(piece, plan.sheet()),
                        piece.in().isEmpty() ? aroundPlace(plan.places().of(piece)) : around(piece.in()),
                        above.under(piece.name(), piece.in()))));
    }
}
