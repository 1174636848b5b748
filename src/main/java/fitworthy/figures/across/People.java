package fitworthy.figures.across;

import static fitworthy.figures.measure.MeasureKind.rated;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Figure;
import fitworthy.sheet.BodyDetails.SeatChange;
import fitworthy.sheet.Fitment;
import java.util.List;
import java.util.Optional;

/** Whether there is a seat for everybody, and whether the sheet speaks of the same people throughout. */
final class People {

    private static final MeasureKind SEATS =
            rated("across.seats", "", 0, "people aboard", "seats").byLoading();
    private static final MeasureKind TRIP_SEATS = rated("across.trip-seats", "", 0, "people who travel", "seats");
    private static final MeasureKind PEOPLE =
            rated("across.people", "", 0, "people aboard", "people who travel").byLoading();

    static final List<MeasureKind> KINDS = List.of(SEATS, TRIP_SEATS, PEOPLE);

    private static final String SUBJECT = "people";

    private People() {}

    static void plan(Plan plan, List<Measure> measures) {
        Figure travel = plan.sheet().trip().people();
        if (asked(plan)) {
            measures.add(Measure.of(TRIP_SEATS, SUBJECT, travel, seats(plan, plan.fitments(Fitment.Kind.SEAT_CHANGE))));
        }
    }

    static void loading(Loading loading, List<Measure> measures) {
        Plan plan = loading.plan();
        int aboard = loading.aboard();
        Figure people = Figure.of(aboard, 0);
        if (aboard > 0) {
            List<Fitment> changes = plan.fitments(Fitment.Kind.SEAT_CHANGE).stream()
                    .filter(loading::carries)
                    .toList();
            measures.add(Measure.of(SEATS, SUBJECT, people, seats(plan, changes)));
        }
        Figure travel = plan.sheet().trip().people();
        if (loading.setsOut() && asked(plan)) {
            measures.add(Measure.of(PEOPLE, SUBJECT, people, travel));
        }
    }

    /** How many travel is asked where water is counted for them; elsewhere those aboard are all there are. */
    private static boolean asked(Plan plan) {
        return plan.sheet().trip().people().known()
                || plan.sheet().trip().days().known();
    }

    /** Seats with these changes made; of several the one that leaves the fewest, and the vehicle's own without any. */
    private static Figure seats(Plan plan, List<Fitment> changes) {
        Optional<Figure> left = changes.stream()
                .map(change -> ((SeatChange) change.details()).seats())
                .reduce(Figure::least);
        return left.orElse(plan.vehicle().seats());
    }
}
