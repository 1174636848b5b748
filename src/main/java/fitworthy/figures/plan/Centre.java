package fitworthy.figures.plan;

import fitworthy.quantity.Figure;
import java.util.List;
import java.util.function.Function;

/**
 * Centre of gravity of a set of masses. Tolerances are combined as those of {@link AxleLoads}.
 *
 * @param x behind the front axle, m
 * @param y left of the centre line, m
 * @param z height, m
 */
public record Centre(Figure x, Figure y, Figure z) {

    /** @return places that are missing where any mass or coordinate is */
    public static Centre of(List<PointMass> masses) {
        Figure total = Figure.of(0, 0);
        for (PointMass mass : masses) {
            total = total.plus(mass.mass());
        }
        int[] places = AxleLoads.places(masses);
        return new Centre(
                mean(masses, places, mass -> mass.at().x(), total),
                mean(masses, places, mass -> mass.at().y(), total),
                mean(masses, places, PointMass::height, total));
    }

    /**
     * Mass-weighted mean of a coordinate, with the tolerance {@code sqrt(sum ((c - mean) dm)^2 + (m dc)^2) / total}.
     */
    private static Figure mean(List<PointMass> masses, int[] at, Function<PointMass, Figure> coordinate, Figure total) {
        Figure moment = Figure.ZERO;
        for (PointMass mass : masses) {
            moment = moment.plus(mass.mass().times(coordinate.apply(mass)));
        }
        if (!moment.known()) {
            return moment;
        }
        double mean = moment.value() / total.value();
        double squares = 0;
        double[] shifts = new double[masses.size()];
        for (int i = 0; i < masses.size(); i++) {
            PointMass mass = masses.get(i);
            squares += AxleLoads.square(
                    (coordinate.apply(mass).value() - mean) * mass.mass().tolerance());
            shifts[at[i]] += mass.mass().value() * coordinate.apply(mass).tolerance();
        }
        for (double shift : shifts) {
            squares += AxleLoads.square(shift);
        }
        return Figure.of(mean, Math.sqrt(squares) / Math.abs(total.value()));
    }
}
