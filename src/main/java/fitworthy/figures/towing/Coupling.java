package fitworthy.figures.towing;

import fitworthy.quantity.Figure;

/**
 * The forces by which UN R55 judges a coupling. The regulation itself was not read: each formula says where it was
 * seen. Masses are the greatest permitted ones, not those of the day.
 */
public final class Coupling {

    /** Standard fall in m/s2, as the coupling makers' formulas write it. */
    private static final double GRAVITY = 9.81;
    /** Share taken for a fifth wheel. */
    private static final double FIFTH_WHEEL = 0.6;
    /** Equivalent acceleration at the coupling in m/s2, by the springs of the towing vehicle's rear axle. */
    private static final double ON_AIR_SPRINGS = 1.8;

    private static final double ON_OTHER_SPRINGS = 2.4;

    private Coupling() {}

    /**
     * Horizontal force between two masses, {@code D = g T R / (T + R)}, in N. Seen in coupling makers' pages and in a
     * worked example of an engineers' handbook site. Of a centre-axle trailer the load on its axles taken for R gives
     * Dc.
     *
     * @param vehicle T, greatest mass of the towing vehicle with the load on the ball, kg, above zero
     * @param trailer R, greatest mass of the trailer, kg, above zero
     */
    public static Figure d(Figure vehicle, Figure trailer) {
        double t = vehicle.value();
        double r = trailer.value();
        double square = (t + r) * (t + r);
        return vehicle.missingWith(
                trailer,
                Figure.of(
                        GRAVITY * t * r / (t + r),
                        GRAVITY
                                * Math.hypot(
                                        r * r / square * vehicle.tolerance(), t * t / square * trailer.tolerance())));
    }

    /**
     * The same for a fifth wheel, {@code D = 0.6 g T R / (T + R - U)}, in N. Seen in an encyclopedia.
     *
     * @param load U, load on the fifth wheel, kg, below T + R
     */
    public static Figure fifthWheel(Figure vehicle, Figure trailer, Figure load) {
        double t = vehicle.value();
        double r = trailer.value();
        double u = load.value();
        double sum = t + r - u;
        double slope = FIFTH_WHEEL * GRAVITY / (sum * sum);
        Figure force = Figure.of(
                FIFTH_WHEEL * GRAVITY * t * r / sum,
                slope
                        * Math.hypot(
                                t * r * load.tolerance(),
                                Math.hypot(r * (r - u) * vehicle.tolerance(), t * (t - u) * trailer.tolerance())));
        return load.missingWith(vehicle.missingWith(trailer, force), force);
    }

    /**
     * Vertical force of a centre-axle trailer, {@code V = a C X^2 / l^2}, in N, with the ratio of squares at least 1.
     * The accelerations were seen in a coupling maker's page, the formula only in a page that sums it up.
     *
     * @param axles C, greatest load on the trailer's axles, kg
     * @param body X, length of the body, m
     * @param drawbar l, from the coupling to the centre of the axles, m, above zero
     * @param airSprings whether the towing vehicle's rear axle rides on air
     */
    public static Figure v(Figure axles, Figure body, Figure drawbar, boolean airSprings) {
        Figure ratio = body.dividedBy(drawbar);
        // The ratio enters squared: its tolerance counts twice, and not at all where the floor of 1 holds.
        Figure squared = ratio.value() < 1
                ? Figure.of(1, 0)
                : Figure.of(ratio.value() * ratio.value(), 2 * ratio.value() * ratio.tolerance());
        return axles.times(ratio.missingWith(axles, squared)).times(airSprings ? ON_AIR_SPRINGS : ON_OTHER_SPRINGS);
    }
}
