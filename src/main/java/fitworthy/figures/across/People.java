package fitworthy.figures.across;

import static fitworthy.figures.measure.MeasureKind.lookedUp;
import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PointMass;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.figures.plan.PracticeId;
import fitworthy.quantity.Derived;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Mark;
import fitworthy.sheet.BodyDetails.SeatChange;
import fitworthy.sheet.Fitment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Whether there is a seat for everybody, and whether the sheet speaks of the same people throughout. */
final class People {

    private static final MeasureKind SEATS =
            rated("across.seats", "", 0, "people aboard", "seats").byLoading();
    private static final MeasureKind TRIP_SEATS = rated("across.trip-seats", "", 0, "people who travel", "seats");
    private static final MeasureKind PEOPLE =
            rated("across.people", "", 0, "people aboard", "people who travel").byLoading();

    private static final MeasureKind APART = number("across.people-apart", "mm", 0, "how far apart two people sit")
            .byLoading();

    private static final MeasureKind NEAREST = lookedUp(
                    "across.people-nearest", "the two who sit nearest to each other")
            .byLoading();

    static final List<MeasureKind> KINDS = List.of(SEATS, TRIP_SEATS, PEOPLE, APART, NEAREST);

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
        apart(loading, measures);
        Figure travel = plan.sheet().trip().people();
        if (loading.setsOut() && asked(plan)) {
            measures.add(Measure.of(PEOPLE, SUBJECT, people, travel));
        }
    }

    /**
     * Of the two who sit nearest to each other, of those of whom the sheet tells more than their row in words. Open where a place is not known, unless two sit in one seat already.
     */
    private static void apart(Loading loading, List<Measure> measures) {
        List<PointMass> people = loading.masses().stream()
                .filter(mass -> mass.sort() == Sort.OCCUPANT && !isInWords(mass))
                .toList();
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < people.size(); i++) {
            for (PointMass other : people.subList(i + 1, people.size())) {
                pairs.add(Pair.of(people.get(i), other));
            }
        }
        Figure least = loading.plan().practice(PracticeId.ACROSS_PEOPLE_APART_LEAST);
        Comparator<Pair> nearest = Comparator.comparing(pair -> pair.apart().value());
        pairs.stream()
                .filter(pair -> pair.apart().isBelow(least))
                .min(nearest)
                .or(() -> pairs.stream().filter(pair -> !pair.apart().known()).findFirst())
                .or(() -> pairs.stream().min(nearest))
                .ifPresent(pair -> {
                    measures.add(Measure.of(APART, SUBJECT, pair.apart())
                            .worked(
                                    "apart = sqrt(along^2 + aside^2)",
                                    in("along", pair.along(), "mm"),
                                    in("aside", pair.aside(), "mm")));
                    measures.add(Measure.of(NEAREST, SUBJECT, pair.names(), List.of()));
                });
    }

    /** Whether the book's words for its row say where it sits across the vehicle, whether or not they count here. */
    private static boolean isInWords(PointMass person) {
        Figure aside = person.at().y();
        return aside.mark() == Mark.USUAL || aside.missing().stream().anyMatch(missing -> missing.mark() == Mark.USUAL);
    }

    private record Pair(String names, Figure along, Figure aside, Figure apart) {
        static Pair of(PointMass one, PointMass other) {
            Figure along = one.at().x().minus(other.at().x());
            Figure aside = one.at().y().minus(other.at().y());
            return new Pair(
                    one.name() + " and " + other.name(),
                    along,
                    aside,
                    Derived.of(v -> Math.hypot(v[0], v[1]), along, aside));
        }
    }

    /** How many travel is asked where water is counted for them; elsewhere, without a day away, those aboard are all there are. */
    private static boolean asked(Plan plan) {
        return plan.sheet().trip().people().known()
                || plan.sheet().trip().days().value() > 0;
    }

    /** Seats with these changes made; of several the one that leaves the fewest, and the vehicle's own without any. */
    private static Figure seats(Plan plan, List<Fitment> changes) {
        Optional<Figure> left = changes.stream()
                .map(change -> ((SeatChange) change.details()).seats())
                .reduce(Figure::least);
        return left.orElse(plan.vehicle().seats());
    }
}
