package fitworthy.figures.body;

import fitworthy.quantity.Derived;
import fitworthy.quantity.Figure;

/** The speed at which a propeller shaft whirls. Lengths in m, speeds of rotation in rpm. */
final class Whirling {

    /**
     * In m rpm, of a steel tube: {@code n = 60 (pi / 2) sqrt(E I / (m L^4))} of a tube held at its ends with {@code I / A =
     * (D^2 + d^2) / 16} is {@code 60 (pi / 8) sqrt(E / rho) sqrt(D^2 + d^2) / L^2}; with 207 GPa and 7850 kg/m3 that is
     * 120 990, which a shaft maker's page prints as 1.21e8 for mm. Aluminium differs by a fiftieth.
     */
    private static final double STEEL = 121_000;

    /** How far a radial tyre rolls over its nominal diameter; {@code pi} less what it gives under load. From memory. */
    private static final double ROLLS = 3.05;

    private Whirling() {}

    /** The lowest speed at which a tube whirls between two joints: {@code 121000 sqrt(D^2 + d^2) / L^2}. */
    static Figure critical(Figure outside, Figure inside, Figure span) {
        return Derived.of(v -> STEEL * Math.hypot(v[0], v[1]) / (v[2] * v[2]), outside, inside, span);
    }

    /** The longest span of such a tube that whirls no sooner than at this speed. */
    static Figure longest(Figure outside, Figure inside, Figure critical) {
        return Derived.of(v -> Math.sqrt(STEEL * Math.hypot(v[0], v[1]) / v[2]), outside, inside, critical);
    }

    /** How fast the shaft turns at a road speed in m/s, on tyres of this diameter: {@code 60 v ratio / (3.05 D)}. */
    static Figure speed(Figure road, Figure ratio, Figure tyre) {
        return Derived.of(v -> 60 * v[0] * v[1] / (ROLLS * v[2]), road, ratio, tyre);
    }
}
