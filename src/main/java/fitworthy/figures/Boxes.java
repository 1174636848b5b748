package fitworthy.figures;

import fitworthy.sheet.Figure;
import fitworthy.sheet.Point;
import fitworthy.sheet.Space;
import java.util.List;
import java.util.function.Function;

/** Boxes with sides along the axes of the vehicle, for the question whether two parts want one place. */
public final class Boxes {

    private static final List<Function<Point, Figure>> AXES = List.of(Point::x, Point::y, Point::z);

    private Boxes() {}

    /**
     * How deep two boxes reach into each other, in m: the least distance along an axis by which one has to be moved to stand
     * clear; 0 where they stand clear, and where one holds the other whole, as a canopy holds a battery. Plain geometry.
     */
    public static Figure overlap(Space one, Space other) {
        Figure least = Figure.of(Double.POSITIVE_INFINITY, 0);
        boolean holds = true;
        boolean held = true;
        for (Function<Point, Figure> axis : AXES) {
            Figure oneLow = axis.apply(one.from()).least(axis.apply(one.to()));
            Figure oneHigh = axis.apply(one.from()).most(axis.apply(one.to()));
            Figure otherLow = axis.apply(other.from()).least(axis.apply(other.to()));
            Figure otherHigh = axis.apply(other.from()).most(axis.apply(other.to()));
            holds &= oneLow.value() <= otherLow.value() && otherHigh.value() <= oneHigh.value();
            held &= otherLow.value() <= oneLow.value() && oneHigh.value() <= otherHigh.value();
            least = least.least(oneHigh.minus(otherLow).least(otherHigh.minus(oneLow)));
        }
        return least.known() && (holds || held || least.value() < 0) ? Figure.of(0, 0) : least;
    }
}
