package fitworthy.figures.across;

import fitworthy.quantity.Figure;
import fitworthy.sheet.Point;
import fitworthy.sheet.Space;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Boxes with sides along the axes of the vehicle, for the question whether two parts want one place. */
public final class Boxes {

    private static final List<Function<Point, Figure>> AXES = List.of(Point::x, Point::y, Point::z);

    private Boxes() {}

    /**
     * How deep two boxes reach into each other, in m: the least distance along an axis by which one has to be moved to
     * stand clear; 0 where they stand clear, and where one holds the other whole, as a canopy holds a battery. Plain
     * geometry. What stands clear along one axis does so whatever is missing along another; the tolerance is then how
     * deep they may reach into each other all the same.
     */
    public static Figure overlap(Space one, Space other) {
        List<Figure> depths = depths(one, other);
        OptionalDouble clear = depths.stream()
                .filter(depth -> depth.value() < 0)
                .mapToDouble(Boxes::deepest)
                .min();
        if (clear.isPresent()) {
            return Figure.of(0, Math.max(0, clear.getAsDouble()));
        }
        Figure least = depths.stream().reduce(Figure::least).orElseThrow();
        return least.known() && (holds(one, other) || holds(other, one)) ? Figure.of(0, 0) : least;
    }

    /** The same along each axis, in m, in the order of x, y, z; negative where they stand clear along it. */
    static List<Figure> depths(Space one, Space other) {
        return AXES.stream()
                .map(axis -> high(one, axis)
                        .minus(low(other, axis))
                        .least(high(other, axis).minus(low(one, axis))))
                .toList();
    }

    /** The foremost that a box may reach, in m: anywhere where its place is not known. */
    static double front(Space space) {
        Figure front = low(space, Point::x);
        return front.known() ? front.value() - front.tolerance() : Double.NEGATIVE_INFINITY;
    }

    /** The rearmost that a box may reach, in m. */
    static double rear(Space space) {
        Figure rear = high(space, Point::x);
        return rear.known() ? deepest(rear) : Double.POSITIVE_INFINITY;
    }

    private static double deepest(Figure depth) {
        return depth.value() + depth.tolerance();
    }

    private static boolean holds(Space outer, Space inner) {
        return AXES.stream()
                .allMatch(axis -> low(outer, axis).isAtMost(low(inner, axis))
                        && high(inner, axis).isAtMost(high(outer, axis)));
    }

    private static Figure low(Space space, Function<Point, Figure> axis) {
        return axis.apply(space.from()).least(axis.apply(space.to()));
    }

    private static Figure high(Space space, Function<Point, Figure> axis) {
        return axis.apply(space.from()).most(axis.apply(space.to()));
    }
}
