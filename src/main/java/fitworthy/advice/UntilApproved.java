package fitworthy.advice;

import fitworthy.figures.mass.LoadMeasures;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Loading;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Vehicle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What holds until a planned part that raises the ratings is approved: the plan as it will be loaded, the part with it,
 * against the ratings of the vehicle's maker.
 *
 * @param part its name
 * @param over what is passed of these, in the loading that passes it furthest, the furthest first
 */
public record UntilApproved(String part, List<Over> over) {

    private static final Set<MeasureKind> RAISED =
            Set.of(LoadMeasures.LOADED, LoadMeasures.AXLE, LoadMeasures.COMBINED);

    /** A limit that is passed. @param limit what it is called @param by kg @param loading in which */
    public record Over(String limit, double by, String loading) {}

    /** That of an advice; nothing where nothing is to raise a rating. */
    public static Optional<UntilApproved> of(Advice advice) {
        return advice.sheet().planned().fitments().stream()
                .filter(part -> part.kind() == Fitment.Kind.RATING_UPGRADE && !part.isDone())
                .findFirst()
                .map(kit -> new UntilApproved(kit.name(), over(advice)));
    }

    private static List<Over> over(Advice advice) {
        Map<String, Over> over = new HashMap<>();
        for (Loading loading : advice.loadings()) {
            String name = loading.loadCase().name();
            advice.facts().getOrDefault(name, List.of()).stream()
                    .filter(Measure.class::isInstance)
                    .map(Measure.class::cast)
                    .filter(measure -> RAISED.contains(measure.kind()))
                    .filter(measure ->
                            made(measure, loading.plan().vehicle().ratings()).isBelow(value(measure)))
                    .forEach(measure -> over.merge(
                            limit(measure),
                            new Over(
                                    limit(measure),
                                    measure.getValue()
                                            - made(
                                                            measure,
                                                            loading.plan()
                                                                    .vehicle()
                                                                    .ratings())
                                                    .value(),
                                    name),
                            (one, other) -> other.by() > one.by() ? other : one));
        }
        List<Over> furthestFirst = new ArrayList<>(over.values());
        furthestFirst.sort(Comparator.comparingDouble(Over::by).reversed().thenComparing(Over::limit));
        return furthestFirst;
    }

    private static Figure value(Measure measure) {
        return Figure.of(measure.getValue());
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
