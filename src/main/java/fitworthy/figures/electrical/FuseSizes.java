package fitworthy.figures.electrical;

import fitworthy.quantity.Figure;
import java.util.stream.DoubleStream;

/** The ratings in which fuses for vehicles are sold, A: blade fuses up to 40 A, bolted ones above that (common practice). */
final class FuseSizes {

    private static final double[] SIZES = {
        1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 225, 250, 300, 350,
        400, 450, 500
    };

    private FuseSizes() {}

    /** The least that carries a current in A; the current itself beyond the largest. */
    static Figure next(Figure current) {
        return !current.known()
                ? current
                : DoubleStream.of(SIZES)
                        .mapToObj(size -> Figure.of(size, 0))
                        .filter(current::isAtMost)
                        .findFirst()
                        .orElse(current);
    }

    /** The largest that is no larger than a current in A; none, 0, where even the least is. */
    static Figure most(Figure current) {
        return Figure.of(
                DoubleStream.of(SIZES)
                        .filter(size -> Figure.of(size, 0).isAtMost(current))
                        .max()
                        .orElse(0),
                0);
    }
}
