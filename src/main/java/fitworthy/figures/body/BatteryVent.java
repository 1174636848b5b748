package fitworthy.figures.body;

import fitworthy.quantity.Figure;

/**
 * Openings that keep the hydrogen of a charging lead-acid battery below its lower explosive limit, by EN 50272-3 as a
 * battery maker's page quotes it (second-hand). For a charger that holds its voltage at 2.4 V a cell or less.
 */
public final class BatteryVent {

    /** Air in m3/h for each cell and ampere: dilution 24, hydrogen 0.42 L/(A h), safety factor 5, rounded there. */
    private static final double AIR = 0.05;
    /** Gassing current in A for each ampere-hour, of a battery with free acid and of one with valves. */
    private static final double FREE_ACID = 2 / 100.0;

    private static final double VALVES = 1 / 100.0;
    /** Area in m2 of each of two openings for each m3/h of air that passes them by itself. */
    private static final double OPENING = 28e-4;
    /** Nominal voltage of a lead-acid cell. */
    private static final double CELL = 2;

    private BatteryVent() {}

    /**
     * Free area in m2 of the opening below and of that above, {@code 28 cm2 x 0.05 n I C}.
     *
     * @param voltage nominal, V
     * @param capacity C, Ah
     * @param freeAcid whether it is a flooded battery
     */
    static Figure area(Figure voltage, Figure capacity, boolean freeAcid) {
        return air(voltage, capacity, freeAcid).times(OPENING);
    }

    /** The air in m3/h, {@code Q = 0.05 n I C}. */
    static Figure air(Figure voltage, Figure capacity, boolean freeAcid) {
        return voltage.times(1 / CELL).times(capacity).times(AIR * (freeAcid ? FREE_ACID : VALVES));
    }
}
