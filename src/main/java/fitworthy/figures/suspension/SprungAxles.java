package fitworthy.figures.suspension;

import fitworthy.figures.plan.AxleLoads;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.PointMass;
import fitworthy.quantity.Figure;
import java.util.List;

/**
 * The masses of a loading as the springs carry them, and what they put on each axle.
 *
 * @param masses without wheels, tyres and half of the springs that are planned, less those they replace
 * @param wheelbase in m
 */
record SprungAxles(List<PointMass> masses, Figure wheelbase) {

    static SprungAxles of(Loading loading) {
        return new SprungAxles(
                loading.masses().stream().map(PointMass::sprung).toList(),
                loading.plan().wheelbase());
    }

    /** In kg. */
    Figure front() {
        return AxleLoads.of(masses, wheelbase).front();
    }

    /** In kg. */
    Figure rear() {
        return AxleLoads.of(masses, wheelbase).rear();
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
