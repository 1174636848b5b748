package fitworthy.advice;

import fitworthy.figures.plan.Loading;
import fitworthy.figures.room.Most;
import fitworthy.figures.room.Room;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Trailer;
import java.util.Comparator;
import java.util.Optional;

/**
 * The trailer of a sheet beside the heaviest that may be towed in the loadings that tow it, or in all where none does.
 *
 * @param trailer the trailer
 * @param towed whether any loading tows it
 * @param heaviest in the loading that leaves least, kg, none where the vehicle alone is over; missing where it is not known
 *     in one of these loadings
 * @param governs what governs that; empty where no limit does
 */
public record TrailerRoom(Trailer trailer, boolean towed, Figure heaviest, String governs) {

    /** That of an advice; nothing where the sheet has no trailer. */
    public static Optional<TrailerRoom> of(Advice advice) {
        return advice.sheet().planned().trailer().map(trailer -> of(trailer, advice));
    }

    /** Whether a sheet has a trailer that no loading tows, so that what it does to the vehicle was not checked. */
    public static boolean isLeftUntowed(Advice advice) {
        return advice.sheet().planned().trailer().isPresent()
                && advice.loadings().stream().noneMatch(Loading::towing);
    }

    private static TrailerRoom of(Trailer trailer, Advice advice) {
        boolean towed = !isLeftUntowed(advice);
        Most least = advice.loadings().stream()
                .filter(loading -> loading.towing() || !towed)
                .flatMap(loading -> Room.of(loading).trailer().stream())
                .min(Comparator.comparingDouble(TrailerRoom::orNone))
                .orElseThrow();
        Figure heaviest = least.figure();
        return new TrailerRoom(
                trailer,
                towed,
                heaviest.known() ? Figure.of(Math.max(0, Math.floor(heaviest.value() + 1e-6))) : heaviest,
                least.governs().map(step -> step.limit().words()).orElse(""));
    }

    /** What is not known may be none. */
    private static double orNone(Most most) {
        return most.figure().known() ? most.figure().value() : Double.NEGATIVE_INFINITY;
    }

    /** Whether not even the empty trailer may be towed. */
    public boolean isTooHeavyEmpty() {
        return trailer.lightest().isAbove(heaviest);
    }

    /** By how much the trailer as planned is too heavy, kg; nothing where it is not, or that is not known. */
    public Optional<Double> tooHeavyBy() {
        return trailer.mass().isAbove(heaviest)
                ? Optional.of(Math.ceil(trailer.mass().value() - heaviest.value() - 1e-6))
                : Optional.empty();
    }
}
