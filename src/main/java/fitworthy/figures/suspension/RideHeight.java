package fitworthy.figures.suspension;

import fitworthy.quantity.Figure;

/** How much higher a vehicle stands. */
public final class RideHeight {

    private static final double PER_TENTH_OF_A_MILLIMETRE = 1e4;

    /** What a binary fraction may lack of half a tenth. */
    private static final double LAST_BITS = 1e-6;

    private RideHeight() {}

    /**
     * Springs, body spacers and larger tyres together. A tyre raises the axle by half of what its diameter grows, as
     * its middle rises by its radius. To a tenth of a millimetre, so that 50 and 25 mm make 75 mm and not a hair more.
     *
     * @param springs lift by the springs, m
     * @param body lift by body spacers, m
     * @param tyreGrowth growth of the tyres' diameter, m
     * @return in m
     */
    public static Figure lift(Figure springs, Figure body, Figure tyreGrowth) {
        Figure lift = springs.plus(body).plus(tyreGrowth.times(0.5));
        return lift.known()
                ? Figure.of(
                        Math.round(lift.value() * PER_TENTH_OF_A_MILLIMETRE + LAST_BITS) / PER_TENTH_OF_A_MILLIMETRE,
                        lift.tolerance())
                : lift;
    }
}
