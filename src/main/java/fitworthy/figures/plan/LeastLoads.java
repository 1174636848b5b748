package fitworthy.figures.plan;

import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.quantity.Figure;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What a set of masses comes to at least, by those of them that are known. A mass that is not known is left out where it
 * can only add: what is carried weighs no less than nothing, and loads an axle as long as it does not stand beyond the
 * other one. Where it may take load off, as what is taken off the vehicle does, nothing is known of the sum.
 *
 * @param front load on the front axle, kg
 * @param rear load on the rear axle, kg
 * @param total sum of the masses, kg
 */
public record LeastLoads(Figure front, Figure rear, Figure total) {

    private static final Set<Sort> CARRIED =
            EnumSet.of(Sort.FITMENT, Sort.TANK, Sort.LIQUID, Sort.OCCUPANT, Sort.CARGO, Sort.BALL);

    /**
     * That of some masses.
     *
     * @param wheelbase in m, above zero
     * @return loads that are missing where they may be less than what is known comes to
     */
    static LeastLoads of(List<PointMass> masses, Figure wheelbase) {
        List<PointMass> counted = withoutPairs(masses);
        return new LeastLoads(
                without(counted, mass -> isAhead(mass, wheelbase), wheelbase).front(),
                without(counted, mass -> isBehindFront(mass), wheelbase).rear(),
                without(counted, mass -> true, wheelbase).total());
    }

    private static AxleLoads without(List<PointMass> masses, Predicate<PointMass> adds, Figure wheelbase) {
        return AxleLoads.of(
                masses.stream()
                        .filter(mass -> mass.mass().known() || !CARRIED.contains(mass.sort()) || !adds.test(mass))
                        .toList(),
                wheelbase);
    }

    /** Not behind the rear axle, wherever in its tolerance it is. */
    private static boolean isAhead(PointMass mass, Figure wheelbase) {
        Figure x = mass.at().x();
        return x.known() && x.value() + x.tolerance() <= wheelbase.value() - wheelbase.tolerance();
    }

    private static boolean isBehindFront(PointMass mass) {
        Figure x = mass.at().x();
        return x.known() && x.value() - x.tolerance() >= 0;
    }

    /** What was weighed with the vehicle and is on it comes to nothing with what it is in the kerb mass. */
    private static List<PointMass> withoutPairs(List<PointMass> masses) {
        List<PointMass> left = new ArrayList<>(masses);
        masses.stream()
                .filter(mass -> mass.sort() == Sort.COUNTED && isOpen(mass))
                .forEach(counted -> left.stream()
                        .filter(part -> isOpen(part) && counted.name().equals(PointMass.inKerbMass(part.name())))
                        .findFirst()
                        .ifPresent(part -> {
                            left.remove(part);
                            left.remove(counted);
                        }));
        return left;
    }

    private static boolean isOpen(PointMass mass) {
        return !mass.mass().known() || !mass.at().x().known();
    }
}
