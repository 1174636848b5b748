package fitworthy.figures.electrical;

import fitworthy.quantity.Derived;
import fitworthy.quantity.Figure;

/** Charge drawn from a battery and put back into it. */
public final class BatteryLife {

    private static final double HOURS_A_DAY = 24;
    /** Hours of a day in which panels give what they give. */
    private static final double LIGHT = 8;

    private BatteryLife() {}

    /**
     * Charge that solar panels give on a day, in Ah: power times hours over voltage.
     *
     * @param power rated, W
     * @param sun hours a day for which they would give that power, losses counted
     * @param voltage of the battery, nominal, V
     */
    public static Figure solar(Figure power, Figure sun, Figure voltage) {
        return power.times(sun).dividedBy(voltage);
    }

    /**
     * Share of its capacity that a battery has lost at the worst of a stay that begins full at dusk: what the sun falls
     * short of day by day, and what a night takes before the sun puts it back. Common practice: panels give what they
     * give within {@link #LIGHT} around noon.
     *
     * @param drawn charge a day, Ah
     * @param sun charge put back a day, Ah
     * @param parked length of the stay, h
     * @param capacity Ah
     */
    public static Figure depth(Figure drawn, Figure sun, Figure parked, Figure capacity) {
        return Derived.of(
                v -> {
                    double days = v[2] / HOURS_A_DAY;
                    double over = Math.max(0, v[0] - v[1]) * days + night(v[0], v[1]);
                    return Math.min(v[0] * days, over) / v[3];
                },
                drawn,
                sun,
                parked,
                capacity);
    }

    /** What the sun falls short of a day, Ah. */
    static Figure shortfall(Figure drawn, Figure sun) {
        return drawn.minus(sun).most(Figure.ZERO);
    }

    /** What is drawn in the dark and put back by the sun of the next day, Ah. */
    static Figure night(Figure drawn, Figure sun) {
        return Derived.of(v -> night(v[0], v[1]), drawn, sun);
    }

    private static double night(double drawn, double sun) {
        double spare = Math.max(0, sun - drawn * LIGHT / HOURS_A_DAY);
        return Math.min(drawn * (HOURS_A_DAY - LIGHT) / HOURS_A_DAY, spare);
    }
}
