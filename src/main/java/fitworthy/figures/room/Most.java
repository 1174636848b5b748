package fitworthy.figures.room;

import fitworthy.quantity.Figure;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The most of something before a limit is passed.
 *
 * @param steps the limits that bound it, in the order in which they are met
 * @param over those that are passed even so, the worst first: with none taken, or with what the others allow
 * @param unknown those that cannot be told for want of a figure; the answer is then at most what the others allow
 */
public record Most(List<Step> steps, List<Step> over, List<Step> unknown) {

    /** Of all limits that more of it may meet. */
    static Most of(List<Step> limits) {
        List<Step> steps = limits.stream()
                .filter(limit -> limit.known() && limit.bounds())
                .sorted(Comparator.comparingDouble(limit -> limit.left().value()
                        / limit.takes().value()))
                .toList();
        double units = units(steps);
        return new Most(
                steps,
                limits.stream()
                        .filter(limit -> limit.known() && limit.isPassedAt(units))
                        .sorted(Comparator.comparingDouble(
                                limit -> limit.left().value() - limit.takes().value() * units))
                        .toList(),
                limits.stream().filter(limit -> !limit.known()).toList());
    }

    /** What the known limits allow, not below none. */
    private static double units(List<Step> steps) {
        return steps.isEmpty()
                ? 0
                : Math.max(
                        0,
                        steps.get(0).left().value() / steps.get(0).takes().value());
    }

    /** The limit that governs; none where none bounds it. */
    public Optional<Step> governs() {
        return over.isEmpty() ? steps.stream().findFirst() : Optional.of(over.get(0));
    }

    /** Whether a limit is passed already, so that nothing may be taken. */
    public boolean isOver() {
        return !over.isEmpty();
    }

    /**
     * How many units may be taken; where a limit is passed already, negative by how many kg it is. Missing where any limit
     * is: what is not known is no leave.
     */
    public Figure figure() {
        return unknown.isEmpty()
                ? atMost()
                : Figure.missing(unknown.stream()
                        .flatMap(limit -> limit.missing().stream())
                        .distinct()
                        .toList());
    }

    /** By how many kg a limit of {@link #over} is passed, as a whole number that takes it off. */
    public double passed(Step step) {
        return Math.ceil(-step.leftAt(units(steps)).value() - 1e-6);
    }

    /** The same as far as the limits are known; missing where none is. */
    public Figure atMost() {
        return isOver()
                ? over.get(0).leftAt(units(steps))
                : steps.isEmpty()
                        ? Figure.missing(unknown.stream()
                                .flatMap(limit -> limit.missing().stream())
                                .distinct()
                                .toList())
                        : steps.get(0).most();
    }
}
