package fitworthy.figures.plan;

import fitworthy.quantity.Figure;
import fitworthy.sheet.Tank;

/** Masses of what tanks hold. */
public final class Liquids {

    private Liquids() {}

    /**
     * Usual density in kg/L, with half the width of its range: diesel 0.820 to 0.845 at 15 degC (EN 590, second-hand),
     * petrol 0.720 to 0.775 (EN 228, second-hand), fresh water 0.998 at 20 degC (from memory), urea solution 1.087 to
     * 1.093 at 20 degC (ISO 22241-1, from memory).
     */
    public static Figure density(Tank.Liquid liquid) {
        return switch (liquid) {
            case DIESEL -> Figure.of(0.8325, 0.0125);
            case PETROL -> Figure.of(0.7475, 0.0275);
            case WATER -> Figure.of(0.998, 0.003);
            case UREA_SOLUTION -> Figure.of(1.090, 0.003);
        };
    }

    /** Mass in kg of a tank's liquid at a fill from 0 to 1. */
    public static Figure mass(Tank tank, Figure fill) {
        return litres(tank, fill).times(densityOf(tank));
    }

    /** Density in kg/L of what a tank holds: as the sheet gives it, else the usual one. */
    public static Figure densityOf(Tank tank) {
        return tank.density().or(density(tank.liquid().value()));
    }

    /** What a tank's liquid is called among the masses. */
    public static String name(Tank tank) {
        return tank.name() + ", filled";
    }

    /** Volume in L of a tank's liquid at a fill from 0 to 1. */
    public static Figure litres(Tank tank, Figure fill) {
        return tank.capacity().times(fill);
    }
}
