package fitworthy.figures.plan;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.BallLoad.Left;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.quantity.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * A loading later on the way, with those things used up that leave an axle its most or its least: nobody knows in which
 * order they are. Supplies that stood behind the trailer's axles leave the ball heavier, those ahead of them lighter.
 *
 * @param masses what the vehicle carries then
 * @param tanks what was in those of its own tanks that are empty
 * @param trailer what is gone of the trailer's supplies, where that changes the load on the ball
 */
public record UsedUp(List<PointMass> masses, List<PointMass> tanks, Optional<Gone> trailer) {

    /** @param load with all aboard @param left without what is gone */
    public record Gone(BallLoad load, Left left) {

        /** What the ball carries less, in kg; below zero where it is more. */
        Figure off() {
            return load.off(left);
        }
    }

    /** The greatest load on the ball. */
    public static Optional<UsedUp> heaviestBall(Loading loading) {
        return gone(loading, BallLoad::heaviest).map(gone -> of(loading, List.of(), Optional.of(gone)));
    }

    /** Nothing in the vehicle's own tanks that lifts the front axle. */
    public static Optional<UsedUp> nothingBehind(Loading loading) {
        return without(behind(loading), loading);
    }

    /** Nothing in the vehicle's own tanks that lifts the rear axle. */
    public static Optional<UsedUp> nothingAhead(Loading loading) {
        return without(ahead(loading), loading);
    }

    private static Optional<UsedUp> without(List<PointMass> tanks, Loading loading) {
        return tanks.isEmpty() ? Optional.empty() : Optional.of(of(loading, tanks, Optional.empty()));
    }

    /** The greatest load on the rear axle that supplies in the trailer leave: the same with the ball at its heaviest. */
    public static Optional<UsedUp> heaviestRear(Loading loading) {
        return gone(loading, BallLoad::heaviest).map(gone -> of(loading, ahead(loading), Optional.of(gone)));
    }

    /** The greatest load on the front axle that supplies in the trailer leave: the same with the ball lifting least. */
    public static Optional<UsedUp> heaviestFront(Loading loading) {
        return gone(loading, isAhead(loading) ? BallLoad::heaviest : BallLoad::lowest)
                .map(gone -> of(loading, behind(loading), Optional.of(gone)));
    }

    /** The least load on the front axle: nothing in tanks ahead of the rear axle, and the ball lifting most. */
    public static Optional<UsedUp> lightestFront(Loading loading) {
        List<PointMass> tanks = tanks(loading, x -> !x.isAtLeast(loading.plan().wheelbase()));
        Optional<Gone> gone = gone(loading, isAhead(loading) ? BallLoad::lowest : BallLoad::heaviest);
        return tanks.isEmpty() && gone.isEmpty() ? Optional.empty() : Optional.of(of(loading, tanks, gone));
    }

    /**
     * The highest centre of gravity: nothing in the vehicle's own tanks that are below it, or may be, with the load on the ball
     * or without, whichever is the higher.
     */
    public static Optional<UsedUp> highest(Loading loading) {
        return Stream.<UnaryOperator<UsedUp>>of(
                        coupled -> coupled, coupled -> coupled.without(mass -> mass.sort() == Sort.BALL))
                .flatMap(driven -> highest(loading, driven).stream())
                .reduce((one, other) -> other.height().isAbove(one.height()) ? other : one);
    }

    private static Optional<UsedUp> highest(Loading loading, UnaryOperator<UsedUp> driven) {
        List<PointMass> tanks = tanks(loading, anywhere -> true);
        UsedUp state = driven.apply(of(loading, List.of(), Optional.empty()));
        List<PointMass> below = below(state, tanks);
        // Each that goes lifts the centre, so that others may come to be below it.
        while (below.size() > state.tanks.size()) {
            state = driven.apply(of(loading, below, Optional.empty()));
            below = below(state, tanks);
        }
        return below.isEmpty() ? Optional.empty() : Optional.of(state);
    }

    /** Nothing in the vehicle's own tanks on one side, the others full. @param side whether a place, in m to the left, is there */
    public static Optional<UsedUp> nothingAside(Loading loading, Predicate<Figure> side) {
        List<PointMass> tanks = tanks(loading, anywhere -> true).stream()
                .filter(mass -> !mass.at().y().known() || side.test(mass.at().y()))
                .toList();
        // What nobody knows the place of stays in, so that the centre is not known either.
        List<PointMass> placed =
                tanks.stream().filter(mass -> mass.at().y().known()).toList();
        return tanks.isEmpty() ? Optional.empty() : Optional.of(of(loading, placed, Optional.empty()));
    }

    /** How high its centre of gravity is, in m. */
    public Figure height() {
        return Centre.of(masses).z();
    }

    private static List<PointMass> below(UsedUp state, List<PointMass> tanks) {
        Figure centre = state.height();
        return tanks.stream().filter(tank -> !tank.height().isAtLeast(centre)).toList();
    }

    /** What the front axle carries then, in kg, with the bars of a load-levelling hitch on. */
    public Figure front(Plan plan) {
        return AxleLoads.front(onFront(plan), plan.wheelbase());
    }

    /** The masses as the front axle carries them, with those bars on. */
    public List<PointMass> onFront(Plan plan) {
        return Levelling.onFront(plan, masses, off());
    }

    /** The same without the trailer: of the ball that what its supplies change there, whatever it weighs. */
    public UsedUp uncoupled() {
        return new UsedUp(
                masses.stream()
                        .map(mass -> mass.sort() == Sort.BALL ? mass.of(off().times(-1)) : mass)
                        .toList(),
                tanks,
                trailer);
    }

    /** The same without some of its masses. */
    public UsedUp without(Predicate<PointMass> some) {
        return new UsedUp(masses.stream().filter(some.negate()).toList(), tanks, trailer);
    }

    /** Whether this is one of the tanks that are empty, by the name of what was in it. */
    public boolean empties(String name) {
        return tanks.stream().anyMatch(mass -> mass.name().equals(name));
    }

    /** What the ball carries less than as the bars were set, in kg. */
    public Figure off() {
        return trailer.map(Gone::off).orElse(Figure.ZERO);
    }

    /**
     * How a load follows from the one as planned.
     *
     * @param now as planned, kg
     * @param then in this state, kg
     * @param share what of a mass it is, kg
     */
    public Working[] working(Figure now, Figure then, Function<PointMass, Figure> share) {
        List<Working.Input> using = tanks.stream()
                .map(mass -> in("using " + mass.name(), share.apply(mass).times(-1), "kg"))
                .toList();
        List<Working> lines = new ArrayList<>();
        List<Working.Input> parts = new ArrayList<>(List.of(in("as planned", now, "kg")));
        if (trailer.isEmpty()) {
            parts.addAll(using);
            return new Working[] {new Working.Sum("load", parts)};
        }
        Gone gone = trailer.get();
        Figure used = Working.total(using);
        Figure more = then.minus(now).minus(used);
        Figure ball = gone.load.filledIn().ball();
        if (!using.isEmpty()) {
            parts.add(in("tanks", used, "kg"));
        }
        parts.add(in("more", more, "kg"));
        lines.add(new Working.Formula(
                using.isEmpty() ? "load = as planned + more" : "load = as planned + tanks + more", parts));
        lines.add(new Working.Sum("tanks", using));
        lines.add(new Working.Formula(
                "more = share x (ball then - ball)",
                List.of(
                        in("share", more.dividedBy(gone.left.ball().minus(ball)), ""),
                        in("ball then", gone.left.ball(), "kg"),
                        in("ball", ball, "kg"))));
        lines.addAll(List.of(gone.load.working("ball then", gone.left)));
        return lines.toArray(Working[]::new);
    }

    private static UsedUp of(Loading loading, List<PointMass> tanks, Optional<Gone> gone) {
        // Where it is not known where all of these are, nobody knows the load: they stay in, and with them what is not
        // known.
        boolean placed = tanks.stream().allMatch(mass -> mass.at().x().known());
        return new UsedUp(
                loading.masses().stream()
                        .filter(mass -> !placed || !tanks.contains(mass))
                        .map(mass -> mass.sort() == Sort.BALL
                                ? gone.map(some -> mass.of(some.left.ball())).orElse(mass)
                                : mass)
                        .toList(),
                tanks,
                gone);
    }

    /** What is in the tanks behind the rear axle, or may be where it or the axle is nobody knows. */
    private static List<PointMass> behind(Loading loading) {
        return tanks(loading, x -> !x.isAtMost(loading.plan().wheelbase()));
    }

    /** What is in the tanks ahead of the front axle, or may be. */
    private static List<PointMass> ahead(Loading loading) {
        return tanks(loading, x -> !x.isAtLeast(Figure.ZERO));
    }

    /** What is in the tanks there. @param there of a place along the vehicle, which may not be known */
    private static List<PointMass> tanks(Loading loading, Predicate<Figure> there) {
        return setsOut(loading)
                ? loading.masses().stream()
                        .filter(mass -> mass.sort() == Sort.LIQUID
                                && there.test(mass.at().x()))
                        .toList()
                : List.of();
    }

    /** What is gone of the trailer, where it changes the load on the ball, or may as its place is not known. */
    private static Optional<Gone> gone(Loading loading, Function<BallLoad, Left> state) {
        return setsOut(loading) && loading.trailer().isPresent()
                ? BallLoad.of(loading.plan().sheet())
                        .filter(load -> !load.trailer().supplies().isEmpty())
                        .map(load -> new Gone(load, state.apply(load)))
                        .filter(gone ->
                                !gone.left.gone().isEmpty() || !gone.left.ball().known())
                : Optional.empty();
    }

    /** Whether the ball, or the pin, presses the front axle down. */
    private static boolean isAhead(Loading loading) {
        return loading.plan().ballOverhang().value() < 0;
    }

    /** Nobody sets out from the weighbridge. */
    private static boolean setsOut(Loading loading) {
        return loading.loadCase().weighed().isEmpty();
    }
}
