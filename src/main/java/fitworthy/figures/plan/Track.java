package fitworthy.figures.plan;

import fitworthy.quantity.Figure;
import fitworthy.sheet.TyreDetails.Spacers;

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

    /**
     * The track on the wheels as planned, in m; missing where they are planned and an offset is not known. Without spacers,
     * which may stand at one axle alone.
     */
    public static Figure of(Plan plan) {
        Figure made = plan.vehicle().size().track();
        return hasOtherWheels(plan) ? made.plus(addedByWheels(plan)) : made;
    }

    /** The track of the axle where it is widest as planned, spacers and all, in m. */
    public static Figure widest(Plan plan) {
        return of(plan).plus(spacer(plan).times(2));
    }

    /** How thick the thickest spacer is, in m; nothing where there is none. */
    public static Figure spacer(Plan plan) {
        return plan.details(Spacers.class).stream().map(Spacers::thickness).reduce(Figure.of(0, 0), Figure::most);
    }

    /** By how much other wheels widen the track, m. */
    public static Figure addedByWheels(Plan plan) {
        return added(plan.vehicle().wheels().offset(), plan.wheels().offset());
    }

    /** Whether the wheels as planned are not the vehicle's own. */
    private static boolean hasOtherWheels(Plan plan) {
        return !plan.wheels().equals(plan.vehicle().wheels());
    }
}
