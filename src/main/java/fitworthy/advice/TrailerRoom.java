package fitworthy.advice;

import fitworthy.figures.plan.Loading;
import fitworthy.figures.room.Limit;
import fitworthy.figures.room.Most;
import fitworthy.figures.room.Room;
import fitworthy.figures.room.Step;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Trailer;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The trailer of a sheet beside the heaviest that may be towed in the loadings that tow it, or in all where none does.
 *
 * @param trailer the trailer
 * @param towed whether any loading tows it
 * @param heaviest in the loading that leaves least, kg, none where the vehicle alone is over; missing where it is not known
 *     in one of these loadings
 * @param limit what governs that; nothing where no limit does
 * @param loading that loading
 * @param most the heaviest in whichever loading leaves most, kg; missing where it is not known in one of them
 */
public record TrailerRoom(
        Trailer trailer, boolean towed, Figure heaviest, Optional<Limit> limit, String loading, Figure most) {

    /** That of an advice; nothing where the sheet has no trailer. */
    public static Optional<TrailerRoom> of(Advice advice) {
        return advice.sheet().planned().trailer().map(trailer -> of(trailer, advice));
    }

    /** Whether a sheet has a trailer that no loading tows, so that what it does to the vehicle was not checked. */
    public static boolean isLeftUntowed(Advice advice) {
        return advice.sheet().planned().trailer().isPresent()
                && advice.loadings().stream().noneMatch(Loading::towing);
    }

    /**
     * What a trailer that nobody knows the mass of would pass at its plate, which is the most it may weigh.
     *
     * @param trailer the trailer
     * @param loading where it passes it by most
     * @param limit which limit, in words
     * @param by kg
     */
    public record AtPlate(Trailer trailer, String loading, String limit, double by) {}

    /** The limits of the trailer's mass that it passes at its plate; none where its mass is known or its plate is not. */
    public static List<AtPlate> atPlate(Advice advice) {
        Map<String, AtPlate> worst = new LinkedHashMap<>();
        advice.sheet()
                .planned()
                .trailer()
                .filter(trailer -> !trailer.mass().known() && trailer.rated().known())
                .ifPresent(trailer -> advice.loadings().stream()
                        .filter(Loading::towing)
                        .forEach(loading -> Room.of(loading).trailer().orElseThrow().steps().stream()
                                .filter(Step::isOfMassAlone)
                                .map(step -> new AtPlate(
                                        trailer,
                                        loading.loadCase().name(),
                                        step.limit().words(),
                                        Math.ceil(-step.leftAt(trailer.rated().value())
                                                        .value()
                                                - 1e-6)))
                                .filter(passed -> passed.by() > 0)
                                .forEach(passed -> worst.merge(
                                        passed.limit(),
                                        passed,
                                        (one, other) -> one.by() >= other.by() ? one : other))));
        return List.copyOf(worst.values());
    }

    private static TrailerRoom of(Trailer trailer, Advice advice) {
        boolean towed = !isLeftUntowed(advice);
        List<InLoading> rooms = advice.loadings().stream()
                .flatMap(loading -> Room.of(loading).trailer().map(most -> new InLoading(loading, most)).stream())
                .toList();
        InLoading least = rooms.stream()
                .filter(room -> room.loading.towing() || !towed)
                .min(Comparator.comparingDouble(room -> orNone(room.most)))
                .orElseThrow();
        return new TrailerRoom(
                trailer,
                towed,
                whole(least.most),
                least.most.governs().map(Step::limit),
                least.loading.loadCase().name(),
                rooms.stream()
                        .map(room -> whole(room.most))
                        .reduce(Figure::most)
                        .orElseThrow());
    }

    /** The heaviest trailer in one loading. */
    private record InLoading(Loading loading, Most most) {}

    private static Figure whole(Most most) {
        Figure heaviest = most.figure();
        return heaviest.known()
                ? Figure.of(Math.max(0, Math.floor(heaviest.value() + 1e-6)), heaviest.tolerance())
                : heaviest;
    }

    /** What is not known may be none. */
    private static double orNone(Most most) {
        return most.figure().known() ? most.figure().value() : Double.NEGATIVE_INFINITY;
    }

    /** Whether not even the empty trailer may be towed, as the vehicle is loaded when it leaves least. */
    public boolean isTooHeavyEmpty() {
        return trailer.lightest().isAbove(heaviest);
    }

    /** Whether that is by less than can be known. */
    public boolean isTooCloseEmpty() {
        return isTooHeavyEmpty() && isTooClose(trailer.lightest(), heaviest);
    }

    /** Whether it may not in any loading, as surely as in the one that leaves least. */
    public boolean isTooHeavyEmptyAlways() {
        return trailer.lightest().isAbove(most) && isTooClose(trailer.lightest(), most) == isTooCloseEmpty();
    }

    /** Whether a trailer is heavier than may be towed by less than can be known of the two. */
    public static boolean isTooClose(Figure lightest, Figure most) {
        Figure over = lightest.minus(most);
        return over.value() < over.tolerance();
    }

    /** What governs it, in words; empty where no limit does. */
    public String governs() {
        return limit.map(Limit::words).orElse("");
    }

    /** Whether tyres govern it, so that others may do. */
    public boolean isByTyres() {
        return limit.filter(Limit::isOfTyres).isPresent();
    }

    /** By how much the trailer as planned is too heavy, kg; nothing where it is not, or that is not known. */
    public Optional<Double> tooHeavyBy() {
        return trailer.mass().isAbove(heaviest)
                ? Optional.of(Math.ceil(trailer.mass().value() - heaviest.value() - 1e-6))
                : Optional.empty();
    }
}
