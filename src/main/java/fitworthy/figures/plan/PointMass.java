package fitworthy.figures.plan;

import fitworthy.quantity.Figure;
import fitworthy.sheet.Point;

/**
 * A mass at a place.
 *
 * @param name what it is
 * @param sort what sort of thing it is
 * @param mass in kg; negative for a part taken off
 * @param at where its centre is, in m
 * @param roof whether it is carried on the roof
 */
public record PointMass(String name, Sort sort, Figure mass, Point at, boolean roof) {

    /** Where a mass comes from. */
    public enum Sort {
        VEHICLE,
        REMOVED,
        FITMENT,
        TANK,
        LIQUID,
        OCCUPANT,
        CARGO,
        BALL,
        RESIDUAL
    }

    /** The part of this mass that the front axle carries, in kg: {@code m (1 - x / wheelbase)}. */
    public Figure onFront(Figure wheelbase) {
        return mass.times(Figure.of(1, 0).minus(at.x().dividedBy(wheelbase)));
    }
}
