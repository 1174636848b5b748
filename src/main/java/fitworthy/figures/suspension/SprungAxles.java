package fitworthy.figures.suspension;

import fitworthy.figures.plan.AxleLoads;
import fitworthy.figures.plan.Levelling;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.PointMass;
import fitworthy.quantity.Figure;
import java.util.List;

/**
 * The masses of a loading as the springs carry them, and what they put on each axle.
 *
 * @param masses without wheels, tyres and half of the springs that are planned, less those they replace
 * @param loads of these
 * @param wheelbase in m
 */
record SprungAxles(List<PointMass> masses, AxleLoads loads, Figure wheelbase) {

    static SprungAxles of(Loading loading) {
        Figure wheelbase = loading.plan().wheelbase();
        List<PointMass> masses =
                loading.masses().stream().map(PointMass::sprung).toList();
        return new SprungAxles(masses, AxleLoads.of(masses, wheelbase), wheelbase);
    }

    /** What the front springs carry with the bars of a load-levelling hitch on, which is more, in kg. */
    Figure frontLevelled(Loading loading) {
        return Levelling.front(loading.plan(), masses);
    }

    /**
     * Natural frequency of the rear over that of the front. A mass whose error lies in both axle loads counts once: the
     * relative tolerance is half of that of {@code rear / sprung rear - front / sprung front} together with those of
     * the rates and unsprung masses.
     */
    Figure rearToFront(Oscillation front, Oscillation rear) {
        Figure ratio = rear.frequency().dividedBy(front.frequency());
        if (!ratio.known()) {
            return ratio;
        }
        double loads = AxleLoads.tolerance(
                masses,
                wheelbase,
                -1 / front.sprung().value(),
                1 / rear.sprung().value());
        double relative = Math.hypot(loads, Math.hypot(others(front), others(rear)));
        return Figure.of(ratio.value(), ratio.value() * relative / 2);
    }

    private static double others(Oscillation axle) {
        return Math.hypot(
                axle.rate().tolerance() / axle.rate().value(),
                axle.made().unsprung().tolerance() / axle.sprung().value());
    }
}
