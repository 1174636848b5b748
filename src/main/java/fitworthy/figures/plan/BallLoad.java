package fitworthy.figures.plan;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.measure.Working.Input;
import fitworthy.quantity.Derived;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Trailer;
import fitworthy.sheet.Trailer.Stowed;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The load on the ball by moments about the trailer's axles. What stands at x behind the coupling brings
 * {@code m (1 - x / d)} to the ball, d from the coupling to the centre of the axles: all of it at the coupling, nothing
 * over the axles, less than nothing behind them. The trailer is rigid and stands level; of several axles each carries
 * as much, so that their centre is the pivot. In kg and m.
 *
 * @param trailer as the sheet gives it, with the tolerances taken where it gives none
 */
public record BallLoad(Trailer trailer) {

    /** What is left of trailer and ball without some of the supplies. */
    public record Left(Figure ball, Figure mass, List<Stowed> gone) {}

    /** That of a sheet's trailer. */
    public static Optional<BallLoad> of(Sheet sheet) {
        return sheet.trailer()
                .map(trailer -> new BallLoad(trailer.orTolerance(AssumedTolerance.of(sheet), Places.assumed(sheet))));
    }

    /** Whether the sheet lists what is aboard. */
    public boolean isListed() {
        return !aboard().isEmpty();
    }

    /** Whether the load on the ball is worked out, because the sheet lists what is aboard and does not give it. */
    public boolean isWorkedOut() {
        return isListed() && !trailer.ball().known();
    }

    /** The trailer with the load on its ball: the one that the sheet gives, else the one worked out. */
    public Trailer filledIn() {
        return isWorkedOut() ? trailer.withBall(listed()) : trailer;
    }

    /** The load on the ball that the list comes to, in kg. */
    public Figure listed() {
        return moved(trailer.bare().ball(), aboard(), 1);
    }

    /** The mass that the list comes to, in kg. */
    public Figure listedMass() {
        return mass(trailer.bare().mass(), aboard(), 1);
    }

    /** Bare trailer and list, as parts of {@link #listedMass}. */
    public Working masses(String result) {
        return new Working.Sum(
                result,
                Stream.concat(
                                Stream.of(in("bare", trailer.bare().mass(), "kg")),
                                aboard().stream().map(each -> in(each.name(), each.mass(), "kg")))
                        .toList());
    }

    /** How {@link #listed} came about. */
    public Working[] loads(String result) {
        List<Input> parts = new ArrayList<>(List.of(in("bare", trailer.bare().ball(), "kg")));
        parts.addAll(onBall(aboard()));
        return new Working[] {new Working.Sum(result, parts), each()};
    }

    /** The same where the load on the ball is worked out, nothing where the sheet gives it. */
    public Working[] working() {
        return isWorkedOut() ? loads("ball") : new Working[0];
    }

    /** With the supplies gone that leave the least share of the trailer on the ball. */
    public Left lightest() {
        List<Stowed> byPlace = new ArrayList<>(trailer.supplies());
        byPlace.sort(Comparator.comparingDouble(each -> each.behind().value()));
        Left lightest = left(List.of());
        // A kilogram further forward has more of itself on the ball, so that the share is least without the foremost
        // ones.
        for (int i = 1; i <= byPlace.size(); i++) {
            Left next = left(byPlace.subList(0, i));
            if (share(next).isBelow(share(lightest))) {
                lightest = next;
            }
        }
        return lightest;
    }

    /** With all supplies gone. */
    public Left withoutSupplies() {
        return left(trailer.supplies());
    }

    /** With the supplies gone that stand behind the axles, which leaves the greatest load on the ball. */
    public Left heaviest() {
        return left(trailer.supplies().stream()
                .filter(each -> each.behind().isAbove(trailer.axle()))
                .toList());
    }

    /** With the supplies gone that stand ahead of the axles, which leaves the least load on the ball. */
    public Left lowest() {
        return left(trailer.supplies().stream()
                .filter(each -> each.behind().isBelow(trailer.axle()))
                .toList());
    }

    /** What is left of the trailer, and what is on its ball, in kg; not known where one of the supplies is not. */
    private Left left(List<Stowed> gone) {
        List<Stowed> staying = new ArrayList<>(aboard());
        gone.forEach(staying::remove);
        Figure ball = isWorkedOut() ? moved(trailer.bare().ball(), staying, 1) : moved(trailer.ball(), gone, -1);
        return new Left(
                moved(ball, trailer.supplies(), 1).missingWith(ball, ball), mass(trailer.mass(), gone, -1), gone);
    }

    /** What the ball carries less of than with everything aboard, in kg; not known where one of the supplies is not. */
    public Figure off(Left left) {
        Figure off = moved(Figure.of(0, 0), left.gone(), 1);
        return moved(off, trailer.supplies(), 1).missingWith(off, off);
    }

    /** How the load left on the ball follows from the whole one; nothing where it is not known. */
    public Working[] working(String result, Left left) {
        if (!left.ball().known()) {
            return new Working[0];
        }
        List<Input> off = onBall(left.gone());
        List<Working> lines = new ArrayList<>();
        lines.add(new Working.Formula(
                result + " = ball - off",
                List.of(in("ball", filledIn().ball(), "kg"), in("off", Working.total(off), "kg"))));
        lines.add(new Working.Sum("off", off));
        lines.addAll(List.of(working()));
        if (!isWorkedOut() && !off.isEmpty()) {
            lines.add(each());
        }
        return lines.toArray(Working[]::new);
    }

    /** Share of the trailer on its ball. */
    public static Figure share(Left left) {
        return left.ball().dividedBy(left.mass());
    }

    /** All that the sheet lists in it. */
    public List<Stowed> aboard() {
        return Stream.concat(trailer.stowed().stream(), trailer.supplies().stream())
                .toList();
    }

    private static Figure mass(Figure base, List<Stowed> things, int sign) {
        return things.stream().map(each -> each.mass().times(sign)).reduce(base, Figure::plus);
    }

    /** A load on the ball with these things put in or taken out. The place of the axles enters with each of them. */
    private Figure moved(Figure base, List<Stowed> things, int sign) {
        if (things.isEmpty()) {
            return base;
        }
        Figure[] inputs = Stream.concat(
                        Stream.of(base, trailer.axle()),
                        things.stream().flatMap(each -> Stream.of(each.mass(), each.behind())))
                .toArray(Figure[]::new);
        return Derived.of(
                v -> {
                    double ball = v[0];
                    for (int i = 2; i < v.length; i += 2) {
                        ball += sign * v[i] * (1 - v[i + 1] / v[1]);
                    }
                    return ball;
                },
                inputs);
    }

    /** What one of these puts on the ball, in kg: below zero behind the axles, {@code m (1 - place / axle)}. */
    public Figure onBall(Stowed thing) {
        return moved(Figure.of(0, 0), List.of(thing), 1);
    }

    private List<Input> onBall(List<Stowed> things) {
        return things.stream()
                .map(each -> in(
                        each.name() + ", " + in("", each.mass(), "kg").shown() + " at "
                                + in("", each.behind(), "mm").shown(),
                        onBall(each),
                        "kg"))
                .toList();
    }

    private Working each() {
        return () -> List.of("of each: mass x (1 - place / axle), axle = "
                + in("", trailer.axle(), "mm").shown());
    }
}
