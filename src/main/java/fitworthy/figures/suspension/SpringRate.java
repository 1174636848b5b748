package fitworthy.figures.suspension;

import fitworthy.quantity.Figure;

/** How a spring acts at the wheel. Dampers, bushes, tyres and the coupling of the two axles are left out. */
public final class SpringRate {

    /** Standard gravity, m/s2 (exact by definition). */
    private static final double GRAVITY = 9.80665;

    private SpringRate() {}

    /**
     * The rate that the wheel feels, {@code rate * ratio^2}: at a lever the force falls with the ratio and the travel
     * grows with it.
     *
     * @param rate of the spring, N/m
     * @param ratio travel of the spring over travel of the wheel
     * @return in N/m
     */
    public static Figure atWheel(Figure rate, Figure ratio) {
        double value = rate.value() * ratio.value() * ratio.value();
        double tolerance = value * Math.hypot(rate.tolerance() / rate.value(), 2 * ratio.tolerance() / ratio.value());
        return rate.missingWith(ratio, Figure.of(value, tolerance));
    }

    /**
     * Natural frequency of the sprung mass, {@code sqrt(k / m) / (2 pi)}.
     *
     * @param wheelRate rate at one wheel, N/m
     * @param sprung mass carried by one wheel's spring, kg
     * @return in Hz
     */
    public static Figure frequency(Figure wheelRate, Figure sprung) {
        Figure square = wheelRate.dividedBy(sprung);
        double value = Math.sqrt(square.value()) / (2 * Math.PI);
        return square.known() ? Figure.of(value, value * square.tolerance() / (2 * square.value())) : square;
    }

    /**
     * How far a wheel's spring gives way under more load, {@code m g / k}; for a spring that grows stiffer too much.
     *
     * @param load added to one wheel, kg
     * @param wheelRate rate at one wheel, N/m
     * @return in m
     */
    public static Figure deflection(Figure load, Figure wheelRate) {
        return load.times(GRAVITY).dividedBy(wheelRate);
    }
}
