package fitworthy.figures.plan;

import fitworthy.quantity.Figure;
import fitworthy.sheet.Point;
import java.util.List;
import java.util.function.Function;

/**
 * Static load on two axles and the centre of gravity, by moments about the axles. A mass behind the rear axle loads the
 * rear by more than itself and takes the difference off the front. Level ground, rigid frame.
 *
 * @param front load on the front axle, kg
 * @param rear load on the rear axle, kg
 * @param total sum of the masses, kg
 * @param cogX centre of gravity behind the front axle, m
 * @param cogY centre of gravity left of the centre line, m
 * @param cogZ height of the centre of gravity, m
 */
public record AxleLoads(Figure front, Figure rear, Figure total, Figure cogX, Figure cogY, Figure cogZ) {

    /**
     * Computes the loads of a set of masses. Tolerances of mass and place are taken as independent and combined to
     * first order; the source of the method is the lever law, checked against a truck maker's body-builder example.
     *
     * @param wheelbase in m, above zero
     * @return loads that are missing where any mass or the place it needs is
     */
    public static AxleLoads of(List<PointMass> masses, Figure wheelbase) {
        Figure total = Figure.of(0, 0);
        Figure front = Figure.of(0, 0);
        Figure rear = Figure.of(0, 0);
        for (PointMass mass : masses) {
            total = total.plus(mass.mass());
            front = front.plus(mass.onFront(wheelbase));
            rear = rear.plus(mass.mass().times(mass.at().x().dividedBy(wheelbase)));
        }
        return new AxleLoads(
                front,
                rear,
                total,
                centre(masses, Point::x, total),
                centre(masses, Point::y, total),
                centre(masses, Point::z, total));
    }

    /**
     * Mass-weighted mean of a coordinate, with the tolerance {@code sqrt(sum ((c - mean) dm)^2 + (m dc)^2) / total}.
     */
    private static Figure centre(List<PointMass> masses, Function<Point, Figure> coordinate, Figure total) {
        Figure moment = Figure.ZERO;
        for (PointMass mass : masses) {
            moment = moment.plus(mass.mass().times(coordinate.apply(mass.at())));
        }
        if (!moment.known()) {
            return moment;
        }
        double mean = moment.value() / total.value();
        double squares = 0;
        for (PointMass mass : masses) {
            Figure place = coordinate.apply(mass.at());
            squares += Math.pow((place.value() - mean) * mass.mass().tolerance(), 2)
                    + Math.pow(mass.mass().value() * place.tolerance(), 2);
        }
        return Figure.of(mean, Math.sqrt(squares) / Math.abs(total.value()));
    }
}
