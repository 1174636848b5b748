package fitworthy.figures.electrical;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;

/** Copper cables at low direct voltage. */
public final class Cable {

    /**
     * Resistivity of copper at 20 degC, ohm m: conductivity 58 m/(ohm mm2), the IACS value in an engineering handbook.
     */
    private static final double RESISTIVITY = 1e-6 / 58;
    /** Temperature coefficient of copper's resistance at 20 degC, 1/K; the same handbook. */
    private static final double COEFFICIENT = 3.93e-3;
    /** Air outside and inside the engine space, degC, as the cable table has them. */
    private static final double OUTSIDE = 30;

    private static final double ENGINE_SPACE = 50;
    /** What the engine space leaves of a cable's rating where its insulation is for 105 degC; printed with the table. */
    private static final double LEFT_IN_ENGINE_SPACE = 0.85;

    private static final double BEST_INSULATION = 105;

    private Cable() {}

    /** Resistivity of copper in ohm m at a temperature in degC, linear about 20 degC. */
    public static double resistivity(double temperature) {
        return RESISTIVITY * (1 + COEFFICIENT * (temperature - 20));
    }

    /**
     * Voltage lost on the way out and back, in V: {@code 2 L I rho / A}. The return is taken as long and as thick as
     * the feed; joints, fuses and the warming of the cable by its own current are not counted.
     *
     * @param length one way, m
     * @param current A
     * @param section m2
     * @param temperature of the copper, degC
     */
    public static Figure drop(Figure length, Figure current, Figure section, Figure temperature) {
        Figure resistivity = temperature.known()
                ? Figure.of(resistivity(temperature.value()), RESISTIVITY * COEFFICIENT * temperature.tolerance())
                : temperature;
        return length.times(2).times(current).times(resistivity).dividedBy(section);
    }

    /** Temperature in degC of the air around a cable. */
    public static Figure temperature(Choice<YesNo> engineBay) {
        return byPlace(engineBay, ENGINE_SPACE, OUTSIDE);
    }

    /**
     * What the warmth of its place leaves of a cable's rating, as a share. For insulation that stands less heat than 105
     * degC it is {@code sqrt((insulation - 50) / (insulation - 30))}, as the heat of a current goes with its square and is
     * shed in proportion to what the insulation stands above the air.
     *
     * @param insulation what it is made for, degC, above the air of the engine space
     */
    public static Figure ratingLeft(Choice<YesNo> engineBay, Figure insulation) {
        double left = insulation.value() >= BEST_INSULATION
                ? LEFT_IN_ENGINE_SPACE
                : Math.sqrt((insulation.value() - ENGINE_SPACE) / (insulation.value() - OUTSIDE));
        Figure place = byPlace(engineBay, left, 1);
        return insulation.missingWith(place, place);
    }

    private static Figure byPlace(Choice<YesNo> engineBay, double inside, double outside) {
        return engineBay.known()
                ? Figure.of(engineBay.is(YesNo.YES) ? inside : outside, 0)
                : Figure.missing(engineBay.missing());
    }
}
