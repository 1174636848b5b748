package fitworthy.figures.room;

import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The most of something before a limit is passed.
 *
 * @param steps the limits that bound it, in the order in which they are met
 * @param over those that are passed all the same, the worst first
 * @param taken with how many units taken they are
 * @param unknown those that cannot be told for want of a figure; the answer is then at most what the others allow, or what
 *     these are known to allow at the most
 */
public record Most(List<Step> steps, List<Step> over, double taken, List<Step> unknown) {

    /** The most altogether: what is passed with less, and no more with that, does not count. */
    static Most of(List<Step> limits) {
        List<Step> steps = inOrder(limits);
        return of(limits, steps, steps.isEmpty() ? 0 : Math.max(0, units(steps.get(0))));
    }

    /**
     * The most altogether where some limits cannot be told but are known to allow no more than so much.
     *
     * @param bounds what such limits allow at the most; the answer stays not known
     */
    static Most of(List<Step> limits, List<Step> bounds) {
        return of(counted(limits, bounds)).with(unknown(limits));
    }

    /** The most that is added to what is there: where a limit is passed already, nothing is. @param bounds as above */
    static Most added(List<Step> limits, List<Step> bounds) {
        List<Step> counted = counted(limits, bounds);
        return of(counted, inOrder(counted), 0).with(unknown(limits));
    }

    private static List<Step> counted(List<Step> limits, List<Step> bounds) {
        return Stream.concat(limits.stream().filter(Step::known), bounds.stream())
                .toList();
    }

    private static List<Step> unknown(List<Step> limits) {
        return limits.stream().filter(limit -> !limit.known()).toList();
    }

    private Most with(List<Step> open) {
        return new Most(steps, over, taken, open);
    }

    private static Most of(List<Step> limits, List<Step> steps, double taken) {
        List<Step> passed = limits.stream()
                .filter(limit -> limit.known() && limit.isPassedAt(taken))
                .toList();
        Set<Limit> asPlanned = passed.stream().map(Step::limit).collect(Collectors.toSet());
        return new Most(
                steps,
                passed.stream()
                        // What is passed as planned is told of that, and not once more of later.
                        .filter(limit -> limit.limit()
                                .planned()
                                .filter(asPlanned::contains)
                                .isEmpty())
                        .sorted(Comparator.comparingDouble(
                                limit -> Figure.rounded(limit.leftAt(taken).value())))
                        .toList(),
                taken,
                unknown(limits));
    }

    private static List<Step> inOrder(List<Step> limits) {
        return limits.stream()
                .filter(limit -> limit.known()
                        && limit.bounds()
                        && Double.isFinite(limit.left().value()))
                // In ten digits, as figures are compared: of two alike the order must not hang on units.
                .sorted(Comparator.comparingDouble(limit -> Figure.rounded(units(limit))))
                .toList();
    }

    private static double units(Step step) {
        return step.left().value() / step.takes().value();
    }

    /** The limit that governs; none where none bounds it. */
    public Optional<Step> governs() {
        return over.isEmpty() ? steps.stream().findFirst() : Optional.of(over.get(0));
    }

    /** Whether a limit is passed all the same, so that nothing may be taken. */
    public boolean isOver() {
        return !over.isEmpty();
    }

    /**
     * How many units may be taken; where a limit is passed all the same, negative by how many kg it is. Missing where any
     * limit is: what is not known is no leave.
     */
    public Figure figure() {
        return unknown.isEmpty() ? atMost() : Figure.missing(missing());
    }

    /** The same as far as the limits are known; missing where no rating of the vehicle is, since the rest tells nothing. */
    public Figure atMost() {
        return isOver() ? over.get(0).leftAt(taken) : isBounded() ? steps.get(0).most() : Figure.missing(missing());
    }

    private boolean isBounded() {
        return unknown.isEmpty()
                ? !steps.isEmpty()
                : steps.stream().anyMatch(step -> step.limit().isRating());
    }

    /** What has to be known before all limits are, what most of them wait for first. */
    public List<Missing> missing() {
        Map<Missing, Long> waiting = unknown.stream()
                .flatMap(limit -> limit.missing().stream().distinct())
                .collect(Collectors.groupingBy(missing -> missing, LinkedHashMap::new, Collectors.counting()));
        return waiting.entrySet().stream()
                .sorted(Map.Entry.<Missing, Long>comparingByValue().reversed())
                .map(Map.Entry::getKey)
                .toList();
    }

    /** What is left of a limit, kg; below zero of one of {@link #over}. */
    public Figure left(Step step) {
        return step.leftAt(taken);
    }

    /** By how many kg a limit of {@link #over} is passed, as a whole number that takes it off. */
    public double passed(Step step) {
        return Math.ceil(-left(step).value() - 1e-6);
    }

    /** Whether all that is passed is so by less than can be known. */
    public boolean isTooClose() {
        return isOver() && over.stream().allMatch(this::isTooClose);
    }

    /** Whether a limit of {@link #over} is passed by less than can be known. */
    public boolean isTooClose(Step step) {
        return -left(step).value() < left(step).tolerance();
    }
}
