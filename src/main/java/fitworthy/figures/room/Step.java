package fitworthy.figures.room;

import fitworthy.figures.measure.Working;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;

/**
 * A limit that is met as more of something is taken.
 *
 * @param limit which one
 * @param left what is left of it with none taken, kg; negative by how much it is passed then
 * @param takes what each unit takes of it, kg; negative where more of it leaves more
 * @param spread tolerance of what is left of it with so many units taken, kg
 * @param working how {@link #most} is worked out, and {@link #left} where that is below zero
 */
public record Step(Limit limit, Figure left, Figure takes, DoubleUnaryOperator spread, Working working) {

    /** A limit of what is taken itself, whose error is that of the limit alone. */
    static Step plain(Limit limit, Figure most, Working working) {
        return new Step(limit, most, Figure.of(1, 0), units -> most.tolerance(), working);
    }

    /** The same where the sheet gives the heaviest trailer. */
    static Step stated(Limit limit, Figure heaviest) {
        return plain(
                limit, heaviest, new Working.Formula("heaviest = limit", List.of(Working.in("limit", heaviest, "kg"))));
    }

    /** A limit of what is on the trailer's axles. @param held what of the trailer's mass the vehicle holds up, kg */
    static Step onAxles(Limit limit, Figure axles, Working.Input held, Figure trailer, Working... before) {
        Figure share = held.figure().dividedBy(trailer);
        return new Step(
                limit,
                axles,
                Figure.of(1, 0).minus(share),
                units -> Math.hypot(axles.tolerance(), units * share.tolerance()),
                () -> Stream.concat(
                                Stream.of(new Working.Formula(
                                        "heaviest = axles / (1 - " + held.name() + " / trailer)",
                                        List.of(
                                                Working.in("axles", axles, "kg"),
                                                held,
                                                Working.in("trailer", trailer, "kg")))),
                                Stream.of(before))
                        .flatMap(working -> working.lines().stream())
                        .toList());
    }

    boolean known() {
        return left.known() && takes.known();
    }

    /** What has to be known before it can be told. */
    public List<Missing> missing() {
        return left.missingWith(takes, left).missing();
    }

    /** Whether it is met at all, however much is taken. */
    boolean bounds() {
        return Figure.rounded(takes.value()) > 0;
    }

    /** How many units may be taken before it is met. */
    public Figure most() {
        double units = left.value() / takes.value();
        return Figure.of(units, spread.applyAsDouble(Math.max(0, units)) / takes.value());
    }

    /** Whether it is one of the mass of what is taken and of nothing else about it. */
    public boolean isOfMassAlone() {
        return takes.known() && takes.value() == 1;
    }

    /** What is left of it with so many units taken, kg. */
    public Figure leftAt(double units) {
        return Figure.of(left.value() - takes.value() * units, spread.applyAsDouble(units));
    }

    boolean isPassedAt(double units) {
        double used = takes.value() * units;
        // What cancels to ten digits is nothing.
        return left.value() - used < -1e-9 * Math.max(1, Math.abs(used));
    }
}
