package fitworthy.figures.plan;

import fitworthy.quantity.Derived;
import fitworthy.quantity.Figure;

/** Statics and geometry of a load box: a tray or a canopy. Lengths in m, masses in kg. */
public final class LoadBox {

    private LoadBox() {}

    /** How far the box ends behind the rear axle, {@code front + length - wheelbase}; negative ahead of it. */
    public static Figure overhang(Figure front, Figure length, Figure wheelbase) {
        return front.plus(length).minus(wheelbase);
    }

    /** The part of the box's length that lies behind the rear axle, 0 to 1. */
    public static Figure behindAxle(Figure front, Figure length, Figure wheelbase) {
        return Derived.of(v -> Math.min(1, Math.max(0, (v[0] + v[1] - v[2]) / v[1])), front, length, wheelbase);
    }

    /** The force its hold-downs take together, as a multiple of the weight they hold: {@code n limit / mass}. */
    public static Figure holdDown(Figure points, Figure limit, Figure mass) {
        return points.times(limit).dividedBy(mass);
    }

    /**
     * As many times its weight as pushes a box forward before it tips over the front edge of its base: its weight and the
     * hold-downs pull it back, {@code (behind + down lever / mass) / height}.
     *
     * @param behind how far its centre of gravity lies behind that edge
     * @param down what its hold-downs bear pulling straight down, kg
     * @param lever from that edge to them
     */
    public static Figure tipsForward(Figure behind, Figure height, Figure down, Figure lever, Figure mass) {
        return behind.plus(down.times(lever).dividedBy(mass)).dividedBy(height);
    }

    /** What its hold-downs have to bear pulling down, kg: {@link #tipsForward} the other way round, nothing where it stands by itself. */
    public static Figure downNeeded(Figure least, Figure behind, Figure height, Figure lever, Figure mass) {
        return least.times(height).minus(behind).most(Figure.ZERO).times(mass).dividedBy(lever);
    }

    /**
     * The most that one of four legs carries. A stiff box on uneven ground stands on two legs across its corners, which
     * then share its mass; the others only keep it from falling over.
     */
    public static Figure onOneLeg(Figure mass) {
        return mass.times(0.5);
    }

    /**
     * The slope in degrees on which the box on its legs tips over: where the plumb line from its centre of gravity
     * meets the line of the feet, {@code atan(spacing / 2 / height)}.
     */
    public static Figure tippingAngle(Figure spacing, Figure height) {
        return Derived.of(v -> Math.toDegrees(Math.atan2(v[0] / 2, v[1])), spacing, height);
    }

    /** The spacing of the feet that stands on a slope in degrees: {@link #tippingAngle} the other way round. */
    public static Figure feetNeeded(Figure slope, Figure height) {
        return Derived.of(v -> 2 * v[1] * Math.tan(Math.toRadians(v[0])), slope, height);
    }
}
