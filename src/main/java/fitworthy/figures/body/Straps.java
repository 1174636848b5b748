package fitworthy.figures.body;

import fitworthy.quantity.Derived;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Lashing;

/**
 * A load held on its floor by grip and by straps over it. What they press it down with, its grip turns into a hold along
 * the floor. A strap with a ratchet at one side presses with 1.5 times what the ratchet pulls and not twice, since the
 * rest is lost at the edges (VDI 2700 sheet 2, as the German insurers' transport information service tells it).
 */
final class Straps {

    private static final double BOTH_LEGS = 1.5;

    private Straps() {}

    /**
     * What holds the load, as a share of its weight: {@code grip (1 + 1.5 n T sin angle / m)}. Nothing where no strap presses
     * it down: its weight alone is no restraint, since it leaves the floor on a rough road (the heavy vehicle regulator's
     * answers, Australia).
     *
     * @param load its mass m, kg
     */
    static Figure held(Lashing lashing, Figure load) {
        return Derived.of(
                in -> {
                    double pressed = in[1] * pressed(in[2], in[3]);
                    return pressed > 0 ? in[0] * (1 + pressed / in[4]) : 0;
                },
                lashing.grip(),
                lashing.straps(),
                lashing.tension(),
                lashing.angle(),
                load);
    }

    /**
     * How many such straps hold a share of its weight: {@code (share / grip - 1) m / (1.5 T sin angle)}.
     *
     * @return not below one and not rounded; infinite where no number of them does
     */
    static Figure needed(Lashing lashing, Figure load, Figure share) {
        return Derived.of(
                in -> in[1] > 0 && pressed(in[2], in[3]) > 0
                        ? Math.max(1, (in[0] / in[1] - 1) * in[4] / pressed(in[2], in[3]))
                        : Double.POSITIVE_INFINITY,
                share,
                lashing.grip(),
                lashing.tension(),
                lashing.angle(),
                load);
    }

    /** What one strap presses the load down with, in kg. @param tension kg @param angle above the floor, deg */
    private static double pressed(double tension, double angle) {
        return BOTH_LEGS * tension * Math.sin(Math.toRadians(angle));
    }
}
