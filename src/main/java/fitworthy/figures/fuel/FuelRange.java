package fitworthy.figures.fuel;

import fitworthy.quantity.Figure;

/** How far a vehicle gets on its fuel. */
public final class FuelRange {

    /** The distance a consumption is given for, m. */
    private static final double PER_100_KM = 100_000;

    private FuelRange() {}

    /**
     * Distance until the fuel is used up: {@code litres / consumption * 100 km}.
     *
     * @param litres usable fuel aboard, L
     * @param consumption L/100km, above zero
     * @return m; missing where either is
     */
    public static Figure metres(Figure litres, Figure consumption) {
        return litres.dividedBy(consumption).times(PER_100_KM);
    }

    /** Fuel in L for a distance in m: {@link #metres} the other way round. */
    public static Figure litres(Figure metres, Figure consumption) {
        return metres.times(consumption).times(1 / PER_100_KM);
    }
}
