package fitworthy.figures.body;

import fitworthy.figures.plan.PointMass;
import fitworthy.quantity.Derived;
import fitworthy.quantity.Figure;

/**
 * What bends the two rails of a chassis at one place, as a beam on its axles. Lengths in m behind the front axle, masses in
 * kg, moments in Nm; sagging is above zero, hogging below.
 */
final class RailBending {

    private static final double GRAVITY = 9.81;

    private RailBending() {}

    /** What the rear axle does at the place by bearing one kg more, in Nm. */
    static Figure ofRear(Figure at, Figure wheelbase) {
        return Derived.of(v -> GRAVITY * lever(v[0], v[1]), at.exact(), wheelbase.exact());
    }

    /** What one mass does: what it puts on the rear axle lifts the rails behind the place, and what is there itself sinks. */
    static Figure of(PointMass mass, Figure at, Figure wheelbase) {
        return Derived.of(
                v -> GRAVITY * v[0] * (v[1] * lever(v[2], v[3]) / v[3] - Math.max(0, v[1] - v[2])),
                mass.mass(),
                mass.at().x(),
                at.exact(),
                wheelbase.exact());
    }

    /**
     * What the vehicle itself does, which is weighed at its axles and not part by part.
     *
     * @param rear its kerb mass on the rear axle
     * @param behind how much of it is behind the place, the axle included
     * @param middle where the middle of that is
     */
    static Figure own(Figure rear, Figure behind, Figure middle, Figure at, Figure wheelbase) {
        return Derived.of(
                v -> GRAVITY * (v[0] * lever(v[3], v[4]) - v[1] * (v[2] - v[3])),
                rear,
                behind,
                middle,
                at.exact(),
                wheelbase.exact());
    }

    private static double lever(double at, double wheelbase) {
        return Math.max(0, wheelbase - at);
    }

    /**
     * Section modulus of one rail in m3, {@code (b d^3 - h (d - 2 t)^3) / (6 d)}.
     *
     * @param hollow width of what is left out: less one wall for a channel, two for a box
     */
    static Figure modulus(Figure depth, Figure width, Figure hollow, Figure wall) {
        return Derived.of(
                v -> (v[1] * Math.pow(v[0], 3) - v[2] * Math.pow(v[0] - 2 * v[3], 3)) / (6 * v[0]),
                depth,
                width,
                hollow,
                wall);
    }
}
