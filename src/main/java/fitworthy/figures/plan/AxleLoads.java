package fitworthy.figures.plan;

import fitworthy.quantity.Figure;
import fitworthy.quantity.Total;
import fitworthy.sheet.Point;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Static load on two axles, by moments about them. A mass behind the rear axle loads the rear by more than itself and takes
 * the difference off the front. Level ground, rigid frame.
 *
 * @param front load on the front axle, kg
 * @param rear load on the rear axle, kg
 * @param total sum of the masses, kg
 */
public record AxleLoads(Figure front, Figure rear, Figure total) {

    /**
     * Computes the loads of a set of masses. Tolerances of mass and place are combined to first order, as independent
     * but for masses at one and the same place, such as a tank and what is in it, which share the error of the place. What is
     * taken away from there does not share it with what is put there.
     * The source of the method is the lever law, checked against a truck maker's body-builder example.
     *
     * @param wheelbase in m, above zero
     * @return loads that are missing where any mass or the place it needs is
     */
    public static AxleLoads of(List<PointMass> masses, Figure wheelbase) {
        int[] places = places(masses);
        return new AxleLoads(
                front(masses, places, wheelbase),
                rear(masses, places, wheelbase),
                Total.of(masses.stream().map(PointMass::mass)));
    }

    /** The load on the front axle alone, kg, as of {@link #of}. */
    public static Figure front(List<PointMass> masses, Figure wheelbase) {
        return front(masses, places(masses), wheelbase);
    }

    private static Figure front(List<PointMass> masses, int[] places, Figure wheelbase) {
        Total front = new Total();
        for (PointMass mass : masses) {
            Figure x = mass.at().x();
            double share = Figure.sum(1, -x.value() / wheelbase.value());
            front.add(mass.mass().value() * share, mass.mass(), x, wheelbase);
        }
        return front.within(tolerance(masses, places, wheelbase, 1, 0));
    }

    private static Figure rear(List<PointMass> masses, int[] places, Figure wheelbase) {
        Total rear = new Total();
        for (PointMass mass : masses) {
            Figure x = mass.at().x();
            double share = x.value() / wheelbase.value();
            rear.add(mass.mass().value() * share, mass.mass(), x, wheelbase);
        }
        return rear.within(tolerance(masses, places, wheelbase, 0, 1));
    }

    /**
     * What one set of masses puts on the axles beyond another. A mass that is in both has one error, which the
     * difference does not hold.
     */
    public static AxleLoads difference(List<PointMass> masses, List<PointMass> less, Figure wheelbase) {
        return of(difference(masses, less), wheelbase);
    }

    /** Those of some masses that are not among others, and what these others hold besides, turned round. */
    static List<PointMass> difference(List<PointMass> masses, List<PointMass> less) {
        Set<PointMass> taken = new HashSet<>(less);
        Set<PointMass> had = new HashSet<>(masses);
        return Stream.concat(
                        masses.stream().filter(mass -> !taken.contains(mass)),
                        less.stream().filter(mass -> !had.contains(mass)).map(PointMass::less))
                .toList();
    }

    /**
     * Tolerance of {@code front x onFront + rear x onRear}: each mass with what it adds to the sum, each place with the
     * masses there, {@code (onRear - onFront) m dx / wheelbase}, and the wheelbase with the moment of all of them.
     */
    public static double tolerance(List<PointMass> masses, Figure wheelbase, double onFront, double onRear) {
        return tolerance(masses, places(masses), wheelbase, onFront, onRear);
    }

    private static double tolerance(List<PointMass> masses, int[] at, Figure wheelbase, double onFront, double onRear) {
        double lever = (onRear - onFront) / wheelbase.value();
        double squares = 0;
        double moment = 0;
        double[] shifts = new double[masses.size()];
        for (int i = 0; i < masses.size(); i++) {
            PointMass mass = masses.get(i);
            double x = mass.at().x().value();
            squares += square(mass.mass().tolerance() * (onFront + lever * x));
            if (lever == 0) {
                continue; // Wherever it is, all of it counts.
            }
            shifts[at[i]] += mass.mass().value() * mass.at().x().tolerance();
            // The bare vehicle stands at the axles, wherever they are.
            moment += mass.sort() == PointMass.Sort.VEHICLE ? 0 : mass.mass().value() * x;
        }
        for (double shift : shifts) {
            squares += square(shift * lever);
        }
        return Math.sqrt(squares + square(moment * lever / wheelbase.value() * wheelbase.tolerance()));
    }

    /** For each mass the number of the first one that shares the error of its place. */
    static int[] places(List<PointMass> masses) {
        Map<Place, Integer> first = new HashMap<>(2 * masses.size());
        int[] places = new int[masses.size()];
        for (int i = 0; i < places.length; i++) {
            Integer other = first.putIfAbsent(Place.of(masses.get(i)), i);
            places[i] = other == null ? i : other;
        }
        return places;
    }

    /**
     * What tells places apart, in m to the digits that figures are compared by: units must not matter. What goes does not sit
     * in what comes, though one word may tell of both; liquids, people and the bare vehicle's share of them do.
     *
     * @param gone whether it is where something else goes
     */
    public record Place(double x, double y, double z, boolean gone) {
        public static Place of(PointMass mass) {
            Point at = mass.at();
            return new Place(
                    Figure.rounded(at.x().value()),
                    Figure.rounded(at.y().value()),
                    Figure.rounded(at.z().value()),
                    mass.mass().value() < 0 && !mass.sort().isInItsPlace());
        }
    }

    static double square(double number) {
        return number * number;
    }
}
