package fitworthy.figures.plan;

import fitworthy.quantity.Figure;

/** Between the centres of the wheels of one axle. */
public final class Track {

    private Track() {}

    /**
     * By how much the track widens, m: each of the two wheels moves out by as much as its offset falls.
     *
     * @param before offset before, m, positive inwards
     * @param after offset after, m
     */
    public static Figure added(Figure before, Figure after) {
        return before.minus(after).times(2);
    }

    /** The track on the wheels as planned, in m; missing where they are planned and an offset is not known. */
    public static Figure of(Plan plan) {
        Figure made = plan.vehicle().size().track();
        Figure before = plan.vehicle().wheels().offset();
        return plan.wheels().equals(plan.vehicle().wheels())
                ? made
                : made.plus(added(before, plan.wheels().offset()));
    }
}
