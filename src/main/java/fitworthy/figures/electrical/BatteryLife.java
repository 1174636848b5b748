package fitworthy.figures.electrical;

import fitworthy.quantity.Figure;

/** Charge drawn from a battery and put back into it. */
public final class BatteryLife {

    private static final double HOURS_A_DAY = 24;

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
     * Share of its capacity that a battery has lost at the end of a stay; 0 where the sun keeps up.
     *
     * @param net charge drawn a day less charge put back, Ah
     * @param parked length of the stay, h
     * @param capacity Ah
     */
    public static Figure depth(Figure net, Figure parked, Figure capacity) {
        Figure drawn = net.times(parked).times(1 / HOURS_A_DAY);
        return (drawn.value() < 0 ? Figure.of(0, drawn.tolerance()) : drawn).dividedBy(capacity);
    }
}
