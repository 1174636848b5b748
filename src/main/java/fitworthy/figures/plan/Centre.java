package fitworthy.figures.plan;

import fitworthy.quantity.Figure;
import fitworthy.quantity.Total;
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
        Figure total = Total.of(masses.stream().map(PointMass::mass));
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
        Figure[] coordinates = new Figure[at.length];
        Total sum = new Total();
        for (int i = 0; i < at.length; i++) {
            Figure mass = masses.get(i).mass();
            coordinates[i] = coordinate.apply(masses.get(i));
            sum.add(mass.value() * coordinates[i].value(), mass, coordinates[i]);
        }
        Figure moment = sum.figure();
        if (!moment.known()) {
            return moment;
        }
        double mean = moment.value() / total.value();
        double squares = 0;
        double[] shifts = new double[masses.size()];
        for (int i = 0; i < at.length; i++) {
            Figure mass = masses.get(i).mass();
            squares += AxleLoads.square((coordinates[i].value() - mean) * mass.tolerance());
            shifts[at[i]] += mass.value() * coordinates[i].tolerance();
        }
        for (double shift : shifts) {
            squares += AxleLoads.square(shift);
        }
        return Figure.of(mean, Math.sqrt(squares) / Math.abs(total.value()));
    }
}
