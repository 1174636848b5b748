package fitworthy.figures.plan;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.quantity.Figure;
import java.util.List;
import java.util.stream.Stream;

/**
 * What the front axle loses against the bare vehicle, from which what was fitted before it was weighed is taken out. The
 * bars of a load-levelling hitch are not counted on.
 *
 * @param load on the front axle, kg
 * @param bare what it carries of the bare vehicle, kg
 * @param lost as a share of that; no less than none
 */
public record FrontLift(Figure load, Figure bare, Figure lost) {

    /** That of a loading with these masses, as planned or later on the way. */
    public static FrontLift of(Loading loading, List<PointMass> masses) {
        Plan plan = loading.plan();
        Figure wheelbase = plan.wheelbase();
        Figure bare = bare(loading);
        // The axle's own mass is in the load as well, so its error is not counted twice.
        List<PointMass> known = Stream.concat(Masses.axles(plan).stream().limit(1), counted(loading))
                .toList();
        Figure gained = AxleLoads.front(AxleLoads.difference(masses, known), wheelbase);
        return new FrontLift(
                AxleLoads.front(masses, wheelbase),
                bare,
                notBelowNone(gained.times(-1).dividedBy(bare)));
    }

    /** What the front axle carries of the bare vehicle, in kg. */
    private static Figure bare(Loading loading) {
        Plan plan = loading.plan();
        return plan.vehicle()
                .mass()
                .frontAxle()
                .plus(AxleLoads.front(counted(loading).toList(), plan.wheelbase()));
    }

    private static Stream<PointMass> counted(Loading loading) {
        return loading.masses().stream().filter(mass -> mass.sort() == Sort.COUNTED);
    }

    /** What it has to keep in a loading, in kg. @param most share of the bare load that may go */
    public static Figure least(Loading loading, Figure most) {
        return least(bare(loading), most);
    }

    private static Figure least(Figure bare, Figure most) {
        return Figure.of(1, 0).minus(most).times(bare);
    }

    public Working working() {
        return new Working.Formula(
                "lost = max(0, 1 - load / bare)", List.of(in("load", load, "kg"), in("bare", bare, "kg")));
    }

    /** What it has to keep, in kg. @param most share of the bare load that may go */
    public Figure least(Figure most) {
        return least(bare, most);
    }

    /** With its tolerance, which an axle that gains a little may still turn. */
    private static Figure notBelowNone(Figure figure) {
        return figure.known() ? Figure.of(Math.max(0, figure.value()), figure.tolerance()) : figure;
    }
}
