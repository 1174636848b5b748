package fitworthy.figures.plan;

import fitworthy.quantity.Derived;
import fitworthy.quantity.Figure;
import fitworthy.sheet.TowingDetails;
import fitworthy.sheet.Trailer;

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
     * The same for a fifth wheel, {@code D = 0.6 g T R / (T + R - U)}, in N. Seen in an encyclopedia and, with
     * worked examples, in a king-pin maker's page.
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

    /**
     * The greatest mass of a trailer for a D value, {@link #d} the other way round: {@code R = D T / (g T - D)}, in kg;
     * without bound where no trailer is heavy enough for that force. For Dc the load on the trailer's axles.
     *
     * @param force D or Dc, N
     */
    public static Figure heaviest(Figure vehicle, Figure force) {
        return Derived.of(v -> unlessNone(v[1] * v[0], GRAVITY * v[0] - v[1]), vehicle, force);
    }

    /**
     * The same for a fifth wheel: {@code R = D T / (0.6 g T - D (1 - share))}.
     *
     * @param share load on the fifth wheel as a share of the trailer's mass
     */
    public static Figure heaviestOnFifthWheel(Figure vehicle, Figure share, Figure force) {
        return Derived.of(
                v -> unlessNone(v[2] * v[0], FIFTH_WHEEL * GRAVITY * v[0] - v[2] * (1 - v[1])), vehicle, share, force);
    }

    private static double unlessNone(double numerator, double denominator) {
        return denominator > 0 ? numerator / denominator : Double.POSITIVE_INFINITY;
    }

    /** Greatest load on the trailer's axles for a V value, {@link #v} the other way round, in kg. */
    public static Figure heaviestOnAxles(Figure force, Figure body, Figure drawbar, boolean airSprings) {
        return force.dividedBy(v(Figure.of(1, 0), body, drawbar, airSprings));
    }

    /** Whether a plate states a mass, or is asked for one: it states that or a D value. */
    public static boolean asksMass(TowingDetails.CouplingPlate plate) {
        return plate.trailer().known() || !plate.d().known();
    }

    /**
     * Whether its D value is asked for. A plate that states a mass stands for the force of that mass behind the vehicle
     * as it was made: its D value is asked where a raised GVM puts more on it, and beside the other values of such a
     * plate.
     */
    public static boolean asksD(TowingDetails.CouplingPlate plate, Plan plan, Trailer trailer) {
        Figure made = plan.vehicle().ratings().gvm();
        Figure force = d(plan.ratings().gvm(), trailer.rated());
        boolean raised = plan.ratings().gvm().known() && !plan.ratings().gvm().isAtMost(made);
        return plate.d().known() || forCentreAxles(plate) || raised && !force.isAtMost(d(made, plate.trailer()));
    }

    /** Whether the plate has one of the two values for centre-axle trailers, so that it has both. */
    public static boolean forCentreAxles(TowingDetails.CouplingPlate plate) {
        return plate.dc().known() || plate.v().known();
    }
}
