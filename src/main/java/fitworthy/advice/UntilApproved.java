package fitworthy.advice;

import fitworthy.advice.Outcome.Comparison;
import fitworthy.figures.mass.LoadMeasures;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Loading;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Vehicle;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BinaryOperator;

/**
 * What holds until a planned part that raises the ratings is approved: the plan as it will be loaded, the part with it,
 * against the ratings of the vehicle's maker.
 *
 * @param part its name
 * @param left of each of these, in the loading that is worst for it, the worst first
 * @param unknown the limits of which nobody knows what the maker allows, or what is held against it
 */
public record UntilApproved(String part, List<Left> left, List<String> unknown) {

    private static final Set<MeasureKind> RAISED =
            Set.of(LoadMeasures.LOADED, LoadMeasures.AXLE, LoadMeasures.COMBINED);

    private static final Comparator<Left> WORST_FIRST =
            Comparator.comparing(Left::compared, Comparison.WORST_FIRST).thenComparing(Left::limit);

    /** What is left of a limit, kg. @param limit what it is called @param measure what is held against it @param loading in which */
    public record Left(String limit, Measure measure, Comparison compared, String loading) {}

    /** That of an advice; nothing where nothing is to raise a rating. */
    public static Optional<UntilApproved> of(Advice advice) {
        return advice.loadings()
                .get(0)
                .plan()
                .raising()
                .filter(kit -> !kit.isDone())
                .map(kit -> of(kit.name(), advice));
    }

    private static UntilApproved of(String part, Advice advice) {
        Map<String, Left> worst = new HashMap<>();
        Set<String> unknown = new TreeSet<>();
        for (Loading loading : advice.loadings()) {
            String name = loading.loadCase().name();
            Vehicle.Ratings made = loading.plan().vehicle().ratings();
            advice.facts().getOrDefault(name, List.of()).stream()
                    .filter(Measure.class::isInstance)
                    .map(Measure.class::cast)
                    .filter(measure -> RAISED.contains(measure.kind()))
                    .forEach(measure -> {
                        String limit = limit(measure);
                        Figure most = made(measure, made);
                        if (!most.known() || Double.isNaN(measure.getValue())) {
                            unknown.add(limit);
                        } else {
                            worst.merge(
                                    limit,
                                    new Left(limit, measure, compared(measure, most), name),
                                    BinaryOperator.minBy(WORST_FIRST));
                        }
                    });
        }
        return new UntilApproved(
                part, worst.values().stream().sorted(WORST_FIRST).toList(), List.copyOf(unknown));
    }

    /** What is surely passed. */
    public List<Left> over() {
        return left.stream()
                .filter(each -> each.compared().margin() < 0 && !each.compared().uncertain())
                .toList();
    }

    /** What is passed, or kept, by less than can be known. */
    public List<Left> close() {
        return left.stream().filter(each -> each.compared().uncertain()).toList();
    }

    /** The one of which least is left. */
    public Optional<Left> least() {
        return left.stream()
                .min(Comparator.comparingDouble(each -> each.compared().margin()));
    }

    private static Comparison compared(Measure measure, Figure most) {
        return new Comparison(
                measure.getValue(),
                most.value(),
                most.value() - measure.getValue(),
                measure.getValueTolerance(),
                most.tolerance(),
                Optional.empty());
    }

    /** What the maker of the vehicle allows of it; missing where that is not known. */
    private static Figure made(Measure measure, Vehicle.Ratings made) {
        if (measure.kind() == LoadMeasures.LOADED) {
            return made.gvm();
        }
        if (measure.kind() == LoadMeasures.COMBINED) {
            return made.gcm();
        }
        return measure.getSubject().startsWith("front") ? made.frontAxle() : made.rearAxle();
    }

    private static String limit(Measure measure) {
        return measure.kind() == LoadMeasures.AXLE
                ? measure.getSubject()
                : measure.kind().limitMeaning();
    }
}
