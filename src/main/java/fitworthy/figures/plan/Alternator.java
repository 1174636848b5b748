package fitworthy.figures.plan;

import fitworthy.quantity.Figure;

/** What can be counted on of the alternator. */
public final class Alternator {

    private Alternator() {}

    /** What it gives hot, in A. */
    public static Figure hot(Plan plan) {
        return plan.practice(PracticeId.ELECTRICAL_ALTERNATOR_MOST)
                .times(plan.vehicle().engine().alternator());
    }

    /** What of that the vehicle itself leaves over, in A; below 0 where it needs more. */
    public static Figure leftByVehicle(Plan plan) {
        return hot(plan).minus(plan.vehicle().engine().ownLoad());
    }
}
