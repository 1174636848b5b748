package fitworthy.figures.order;

import fitworthy.figures.plan.Places;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Standing;
import fitworthy.quantity.Figure;
import fitworthy.sheet.BodyDetails.Body;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Fitment.Kind;
import fitworthy.sheet.Point;
import fitworthy.sheet.Space;
import fitworthy.sheet.Tank;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** In or on which planned parts a part or tank stands: what its {@code in} says, else what its place tells. */
final class Carried {

    /** What is nearer to an end, in m, is looked at in all the digits that count. */
    private static final double NEAR = 0.001;

    private final Plan plan;
    private final Places places;
    private final List<Carrier> carriers;

    /** @param front of its space, in m; not a number where the sheet does not say, as for the rear */
    private record Carrier(Fitment part, double front, double rear) {

        static Carrier of(Fitment part, Optional<Space> space) {
            double one = space.map(Space::from).map(Point::x).map(Figure::value).orElse(Double.NaN);
            double other = space.map(Space::to).map(Point::x).map(Figure::value).orElse(Double.NaN);
            return new Carrier(part, Math.min(one, other), Math.max(one, other));
        }

        /** Most parts stand nowhere near each other, and there are as many pairs as the square of their number. */
        boolean isFarFrom(Point at) {
            double along = at.x().value();
            return along < front - NEAR || along > rear + NEAR;
        }
    }

    Carried(Plan plan) {
        this.plan = plan;
        this.places = plan.places();
        this.carriers = plan.sheet().fitments().stream()
                .filter(part -> !part.isDone() && Standing.carries(plan, part))
                .map(part -> Carrier.of(part, places.space(part)))
                .toList();
    }

    /** Names of what carries a part. A canopy stands on the tray, wherever their masses are. */
    Set<String> of(Fitment part) {
        if (!part.in().isEmpty()) {
            return Set.of(part.in());
        }
        if (part.details() instanceof Body) {
            return part.kind() == Kind.CANOPY ? names(carrier -> carrier.part.kind() == Kind.TRAY) : Set.of();
        }
        return places.of(part)
                .map(at -> names(carrier -> holds(carrier, at) && !isHeld(carrier.part, part)))
                .orElse(Set.of());
    }

    /** Names of what carries a tank. */
    Set<String> of(Tank tank) {
        return tank.in().isEmpty() ? names(carrier -> holds(carrier, places.of(tank))) : Set.of(tank.in());
    }

    private boolean holds(Carrier carrier, Point at) {
        return !carrier.isFarFrom(at) && Standing.holdsAsFarAsTold(plan, carrier.part, at);
    }

    /** Of two spaces round each other neither is first. */
    private boolean isHeld(Fitment carrier, Fitment part) {
        Optional<Point> at = places.of(carrier);
        return carrier.name().equals(part.name())
                || places.space(part).isPresent() && at.isPresent() && Standing.holdsAsFarAsTold(plan, part, at.get());
    }

    private Set<String> names(Predicate<Carrier> wanted) {
        return carriers.stream()
                .filter(wanted)
                .map(carrier -> carrier.part.name())
                .collect(Collectors.toSet());
    }
}
