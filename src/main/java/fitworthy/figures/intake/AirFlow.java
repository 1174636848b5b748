package fitworthy.figures.intake;

import fitworthy.quantity.Derived;
import fitworthy.quantity.Figure;

/** Air that a four-stroke engine draws, and how fast it runs in a duct. */
public final class AirFlow {

    /**
     * Air outside, Pa: the standard atmosphere at sea level (ISO 2533). Higher up the same boost asks for more volume.
     */
    static final double OUTSIDE_PA = 101_325;
    /** Air outside, degC: an assumption, see docs/method.md. */
    static final double OUTSIDE_DEGC = 25;

    private static final double ZERO_CELSIUS_K = 273.15;

    private AirFlow() {}

    /**
     * Volume of outside air that a four-stroke engine draws:
     * {@code displacement * speed / 2 * efficiency * density ratio}. The identity is the trade's
     * {@code CFM = rpm * cubic inches / 3456} for an efficiency and ratio of 1.
     *
     * @param displacement swept volume, L
     * @param speed of the crankshaft, rpm
     * @param efficiency volumetric efficiency as a share, referred to the air in the manifold
     * @param densityRatio density in the manifold over density outside
     * @return L/s of air as it is outside; missing where any of them is
     */
    public static Figure drawn(Figure displacement, Figure speed, Figure efficiency, Figure densityRatio) {
        return displacement.times(speed).times(1 / 120.0).times(efficiency).times(densityRatio);
    }

    /**
     * Density in the manifold over density outside, {@code (p2 / p1) * (T1 / T2)} in absolute pressure and temperature
     * (ideal gas).
     *
     * @param boost gauge pressure in the manifold, Pa
     * @param manifold temperature in the manifold, degC, above absolute zero
     */
    public static Figure densityRatio(Figure boost, Figure manifold) {
        Figure pressures = boost.plus(Figure.of(OUTSIDE_PA, 0)).times(1 / OUTSIDE_PA);
        return pressures.dividedBy(manifold.plus(Figure.of(ZERO_CELSIUS_K, 0))).times(OUTSIDE_DEGC + ZERO_CELSIUS_K);
    }

    /**
     * Mean velocity in a round duct.
     *
     * @param flow L/s
     * @param bore inner diameter, m, above zero
     * @return m/s
     */
    public static Figure velocity(Figure flow, Figure bore) {
        // The bore enters squared: its share of the tolerance counts twice.
        Figure area = bore.known()
                ? Figure.of(Math.PI / 4 * bore.value() * bore.value(), Math.PI / 2 * bore.value() * bore.tolerance())
                : bore;
        return flow.times(0.001).dividedBy(area);
    }

    /**
     * The bore in m of a round duct in which a flow in L/s has a velocity in m/s: {@link #velocity} the other way
     * round.
     */
    public static Figure boreNeeded(Figure flow, Figure velocity) {
        return Derived.of(v -> Math.sqrt(v[0] * 0.001 / v[1] * 4 / Math.PI), flow, velocity);
    }
}
