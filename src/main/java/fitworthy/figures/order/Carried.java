package fitworthy.figures.order;

import fitworthy.figures.plan.Places;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Standing;
import fitworthy.sheet.BodyDetails.Body;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Fitment.Kind;
import fitworthy.sheet.Point;
import fitworthy.sheet.Tank;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** In or on which planned parts a part or tank stands: what its {@code in} says, else what its place tells. */
final class Carried {

    private final Plan plan;
    private final Places places;
    private final List<Fitment> carriers;

    Carried(Plan plan) {
        this.plan = plan;
        this.places = plan.places();
        this.carriers = plan.sheet().fitments().stream()
                .filter(part -> !part.isDone() && Standing.carries(plan, part))
                .toList();
    }

    /** Names of what carries a part. A canopy stands on the tray, wherever their masses are. */
    Set<String> of(Fitment part) {
        if (!part.in().isEmpty()) {
            return Set.of(part.in());
        }
        if (part.details() instanceof Body) {
            return part.kind() == Kind.CANOPY ? names(carrier -> carrier.kind() == Kind.TRAY) : Set.of();
        }
        return places.of(part)
                .map(at -> names(carrier -> holds(carrier, at) && !isHeld(carrier, part)))
                .orElse(Set.of());
    }

    /** Names of what carries a tank. */
    Set<String> of(Tank tank) {
        return tank.in().isEmpty() ? names(carrier -> holds(carrier, places.of(tank))) : Set.of(tank.in());
    }

    private boolean holds(Fitment carrier, Point at) {
        return Standing.holdsAsFarAsTold(plan, carrier, at);
    }

    /** Of two spaces round each other neither is first. */
    private boolean isHeld(Fitment carrier, Fitment part) {
        Optional<Point> at = places.of(carrier);
        return carrier.name().equals(part.name())
                || places.space(part).isPresent() && at.isPresent() && holds(part, at.get());
    }

    private Set<String> names(Predicate<Fitment> wanted) {
        return carriers.stream().filter(wanted).map(Fitment::name).collect(Collectors.toSet());
    }
}
