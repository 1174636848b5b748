package fitworthy.figures.tyres;

import fitworthy.quantity.Figure;

/** What follows from tyres and wheels by arithmetic. */
public final class TyreFigures {

    private TyreFigures() {}

    /**
     * Pressure that a tyre needs for a load, taken in proportion to the load: {@code reference * load / rated}.
     * Published relations have the load grow with a power of the pressure from 0.5 to 1 and disagree on which; below
     * the rated load the power 1 asks for the most pressure, so it errs to the safe side. Not to be used above the
     * rated load.
     *
     * @param reference pressure at which the rated load holds, Pa
     * @param load on one tyre, kg
     * @param rated load of one tyre at that pressure, kg
     * @return Pa
     */
    public static Figure pressureNeeded(Figure reference, Figure load, Figure rated) {
        return reference.times(load.dividedBy(rated));
    }

    /**
     * Speed shown as a share of the true speed after a change of tyres: {@code (1 + over) * before / after}. The wheel
     * turns more slowly with a larger tyre, and the speedometer counts turns.
     *
     * @param over how far it read above the true speed before, as a share
     * @param before overall diameter before, m
     * @param after overall diameter after, m
     */
    public static Figure speedShown(Figure over, Figure before, Figure after) {
        return Figure.of(1, 0).plus(over).times(before.dividedBy(after));
    }

    /**
     * Deceleration that the same pressure in the brake lines gives, as a share of what it gave: the torque of the brakes
     * stays, the force at the ground falls with the radius, and there is more mass to stop. Slip of tyres and heat in the
     * brakes are left out.
     *
     * @param onTyres overall diameter before over that after, as a share
     * @param onMass mass before over that after, as a share
     */
    public static Figure brakeShare(Figure onTyres, Figure onMass) {
        return onTyres.times(onMass);
    }

    /** Growth of a diameter as a share of what it was. */
    public static Figure growth(Figure before, Figure after) {
        return after.dividedBy(before).minus(Figure.of(1, 0));
    }
}
