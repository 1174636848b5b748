package fitworthy.usual;

import fitworthy.book.UsualPlace.Spot;
import fitworthy.book.UsualPlace.Start;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Binder;
import fitworthy.schema.Field;
import fitworthy.sheet.BodyDetails;
import fitworthy.sheet.BodyDetails.SeatChange;
import fitworthy.sheet.Contents;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.LoadCase;
import fitworthy.sheet.MassDetails.ChassisExtension;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.TowingDetails;
import fitworthy.sheet.Vehicle;
import fitworthy.source.Node;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What places are measured from, in m behind the front axle and up from the ground: of the vehicle as it will be, with
 * what is taken of the options, or as it stands. Figures that are stated are taken as exact, since a place's own spread
 * is far wider; a guess keeps its spread and stays one.
 */
final class Landmarks {

    private static final Figure NOTHING = Figure.of(0, 0);
    private static final Figure NO_BODY = Figure.missing(new Missing("fitments", "the tray or canopy", "the plan"));
    private static final Set<String> MOVING = Set.of("tray", "canopy", "chassis-extension", "tow-bar", "seat-change");

    /** The part of a sheet that places are measured on, read without regard to what is wrong with the rest. */
    public record Ground(
            @Field("the vehicle") Frame vehicle,
            @Field("the parts that move a point or change the seats") List<Fitment> fitments,
            @Field("what is still to be chosen") List<Sheet.Option> options,
            @Field("how it will be loaded") List<LoadCase> cases) {}

    /** Of the vehicle. */
    public record Frame(
            @Field("its dimensions") Vehicle.Size size,
            @Field("the tow bar it has") TowingDetails.TowBar towBar,
            @Field("how many seats it has") Figure seats,
            @Field("whether it has a tub") Choice<YesNo> tub) {}

    private final Ground ground;
    private final List<Fitment> parts;
    private final List<ChassisExtension> extensions;
    private final Figure made;
    private final Figure wheelbase;

    private Landmarks(Ground ground, Predicate<Fitment> taken) {
        this.ground = ground;
        this.parts = ground.fitments().stream().filter(taken).toList();
        this.extensions = details(ChassisExtension.class).toList();
        this.made = asFarAsKnown(ground.vehicle().size().wheelbase());
        this.wheelbase =
                extensions.stream().map(ChassisExtension::wheelbaseAdded).reduce(made, Landmarks::sum);
    }

    /** Of the vehicle as it will be. */
    static Landmarks planned(Node.Mapping tree) {
        Ground ground = ground(tree);
        Set<String> left = new HashSet<>();
        ground.options().forEach(option -> option.choices().forEach(choice -> left.addAll(choice.parts())));
        ground.options().forEach(option -> left.removeAll(option.taken().parts()));
        Set<String> gone = new Contents(ground.fitments(), List.of()).with(left);
        return new Landmarks(ground, part -> !gone.contains(part.name()));
    }

    /** Of the vehicle as it stands. */
    static Landmarks standing(Node.Mapping tree) {
        return new Landmarks(ground(tree), Fitment::isDone);
    }

    private static Ground ground(Node.Mapping tree) {
        return Binder.bind(Ground.class, tree.with("fitments", moving(tree)), new ArrayList<>())
                .record();
    }

    private static Node moving(Node.Mapping tree) {
        return new Node.Listing(
                tree.place(),
                tree.get("fitments") instanceof Node.Listing listing
                        ? listing.items().stream()
                                .filter(item -> item instanceof Node.Mapping part && moves(part))
                                .map(item -> (Node)
                                        ((Node.Mapping) item).without("at").without("removes"))
                                .toList()
                        : List.of());
    }

    private static boolean moves(Node.Mapping part) {
        return part.get("kind") instanceof Node.Scalar kind && MOVING.contains(kind.text());
    }

    /** How many seats the vehicle came with. */
    Figure seats() {
        return ground.vehicle().seats();
    }

    /** As many as there may be: with every change of seats that is taken, or without it where another may be. */
    Figure seatsAtMost() {
        boolean fixed = ground.options().isEmpty() && ground.cases().isEmpty();
        Stream<Figure> changed = details(SeatChange.class).map(SeatChange::seats);
        return (fixed ? changed : Stream.concat(Stream.of(seats()), changed))
                .reduce(Figure::most)
                .orElse(seats());
    }

    /** Whether a tray or a tub begins behind its cab. */
    boolean isUtility() {
        return ground.vehicle().tub().is(YesNo.YES) || begins(Fitment.Kind.TRAY).isPresent();
    }

    /**
     * How far behind the front axle a spot is, with its spread.
     *
     * @param in the part that what is there stands in or on; empty where the sheet does not say
     */
    Figure along(Spot spot, String in) {
        Start start = spot.start().value();
        Figure measure = start.isOfBody() ? body(start, in, BodyDetails.Body::length) : made;
        Figure share = spot.share().known() ? measure.times(spot.share()) : NOTHING;
        Figure along = point(start, in).plus(share).plus(spot.back().or(NOTHING));
        return start == Start.FRONT_AXLE ? behindCut(along) : along;
    }

    /**
     * Where the trays begin that are planned or there, or the canopies; nothing where there is none, missing where a sheet
     * does not say of any.
     */
    Optional<Figure> begins(Fitment.Kind kind) {
        return parts.stream()
                .filter(part -> part.kind() == kind)
                .map(part -> asFarAsKnown(((BodyDetails.Body) part.details()).front()))
                .reduce(Figure::least);
    }

    /** How far above the ground a spot is, with its spread; nothing where the book does not say. */
    Optional<Figure> up(Spot spot, String in) {
        Figure up = spot.aboveFloor().known() ? floor(spot.start().value(), in).plus(spot.aboveFloor()) : spot.z();
        return Optional.of(up).filter(Figure::known);
    }

    /** How far behind the front axle a point is that places are measured from; a guess where it rests on one. */
    Figure point(Start start, String in) {
        return switch (start) {
            case FRONT_AXLE -> NOTHING;
            case REAR_AXLE -> wheelbase;
            case MIDDLE -> wheelbase.times(0.5);
            case TOW_BALL -> sum(wheelbase, ballOverhang());
            case REAR_END -> sum(wheelbase, rearOverhang());
            case TRAY, CANOPY, LOAD_AREA -> body(start, in, BodyDetails.Body::front);
        };
    }

    /** What is counted from the front as the maker built it has gone back where it is behind the cut. */
    private Figure behindCut(Figure along) {
        return extensions.stream().map(ChassisExtension::cut).anyMatch(along::isAtLeast)
                ? along.plus(wheelbase).minus(made.exact())
                : along;
    }

    private Figure ballOverhang() {
        return details(TowingDetails.TowBar.class)
                .findFirst()
                .map(TowingDetails.TowBar::ballOverhang)
                .orElseGet(() -> ground.vehicle()
                        .towBar()
                        .ballOverhang()
                        .or(ground.vehicle().size().ballOverhang()));
    }

    private Figure rearOverhang() {
        return extensions.stream()
                .findFirst()
                .map(ChassisExtension::rearOverhang)
                .orElse(ground.vehicle().size().rearOverhang());
    }

    private Figure floor(Start start, String in) {
        Figure own = body(start, in, BodyDetails.Body::floor);
        return own.known() ? own : body(Start.TRAY, "", BodyDetails.Body::floor);
    }

    /** A figure of the tray or canopy: the one that it is said to be in, else the first there is. */
    private Figure body(Start start, String in, Function<BodyDetails.Body, Figure> figure) {
        List<Fitment> bodies = parts.stream()
                .filter(part -> part.kind() == Fitment.Kind.TRAY && start != Start.CANOPY
                        || part.kind() == Fitment.Kind.CANOPY && start != Start.TRAY)
                .sorted(Comparator.comparing((Fitment part) -> !part.name().equals(in))
                        .thenComparing(part -> part.kind() == Fitment.Kind.CANOPY))
                .toList();
        return bodies.isEmpty()
                ? NO_BODY
                : asFarAsKnown(figure.apply((BodyDetails.Body) bodies.get(0).details()));
    }

    private <D> Stream<D> details(Class<D> type) {
        return parts.stream().map(Fitment::details).filter(type::isInstance).map(type::cast);
    }

    /** Exact where it is stated; a guess stays one. */
    private static Figure asFarAsKnown(Figure figure) {
        return figure.guess().isPresent() ? figure : figure.exact();
    }

    /** A sum that is a guess where either part is one. */
    private static Figure sum(Figure one, Figure other) {
        Figure sum = asFarAsKnown(one).plus(asFarAsKnown(other));
        return one.guess().or(other::guess).map(sum::guessedFor).orElse(sum);
    }
}
