package fitworthy.figures.plan;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Point;

/**
 * A mass at a place.
 *
 * @param name what it is
 * @param sort what sort of thing it is
 * @param mass in kg; negative for a part taken off
 * @param at where its centre is, in m
 * @param roof whether it is carried on the roof; not known where it may be
 * @param unsprung the share of it that the springs do not carry, 0 to 1
 * @param raised by how much it is higher than that by the lift of the vehicle, in m
 */
public record PointMass(
        String name, Sort sort, Figure mass, Point at, Choice<YesNo> roof, double unsprung, Figure raised) {

    /** By the name alone, which tells nearly all apart: sets of them are made for many sums. */
    @Override
    public int hashCode() {
        return name.hashCode();
    }

    /** A mass where it is. */
    public PointMass(String name, Sort sort, Figure mass, Point at, Choice<YesNo> roof, double unsprung) {
        this(name, sort, mass, at, roof, unsprung, Figure.ZERO);
    }

    /** A mass that the springs carry whole. */
    public PointMass(String name, Sort sort, Figure mass, Point at, boolean roof) {
        this(name, sort, mass, at, Choice.yesNo(roof), 0);
    }

    /** Where a mass comes from. */
    public enum Sort {
        VEHICLE,
        /** What is done, taken out of the kerb mass that was weighed with it. */
        COUNTED,
        REMOVED,
        FITMENT,
        TANK,
        LIQUID,
        OCCUPANT,
        CARGO,
        BALL,
        RESIDUAL;

        /** Whether more and less of it is in one and the same place: what is in a tank, or on a seat. */
        boolean isInItsPlace() {
            return this == VEHICLE || this == LIQUID || this == OCCUPANT;
        }
    }

    /** The part of this mass that the front axle carries, in kg: {@code m (1 - x / wheelbase)}. */
    public Figure onFront(Figure wheelbase) {
        return mass.times(Figure.of(1, 0).minus(at.x().dividedBy(wheelbase)));
    }

    /** The part of this mass that the rear axle carries, in kg: {@code m x / wheelbase}. */
    public Figure onRear(Figure wheelbase) {
        return mass.times(at.x().dividedBy(wheelbase));
    }

    /** How high its centre is as the vehicle stands, in m. */
    public Figure height() {
        return raised.isZero() ? at.z() : at.z().plus(raised);
    }

    /** What a part is called that is taken out of the kerb mass. */
    static String inKerbMass(String part) {
        return part + ", in the kerb mass";
    }

    /** What is called so that comes off for a planned part. */
    public static String takenOff(String part) {
        return part + ", taken off";
    }

    /** What the springs carry of it. */
    public PointMass sprung() {
        return unsprung == 0 ? this : new PointMass(name, sort, mass.times(1 - unsprung), at, roof, 0, raised);
    }

    /** The same taken away, as what is taken off. */
    PointMass takenOff() {
        return new PointMass(name, Sort.REMOVED, mass.times(-1), at, roof, unsprung, raised);
    }

    /** The same taken away. */
    PointMass less() {
        return new PointMass(name, sort, mass.times(-1), at, roof, unsprung, raised);
    }

    /** The same place with another mass there. @param other in kg */
    public PointMass of(Figure other) {
        return new PointMass(name, sort, other, at, roof, unsprung, raised);
    }

    /** The same elsewhere along the vehicle. @param x behind the front axle, m */
    PointMass at(Figure x) {
        return new PointMass(name, sort, mass, new Point(x, at.y(), at.z()), roof, unsprung, raised);
    }

    /** The same, its mass and its place along the vehicle known by a weighing. */
    PointMass exact() {
        return new PointMass(
                name, sort, mass.exact(), new Point(at.x().exact(), at.y(), at.z()), roof, unsprung, raised);
    }
}
