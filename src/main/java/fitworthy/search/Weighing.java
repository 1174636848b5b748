package fitworthy.search;

import fitworthy.advice.Advice;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.Outcome.Key;
import fitworthy.book.Severity;
import fitworthy.figures.mass.LoadMeasures;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Sheet;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a changed plan takes off the limit that is passed furthest, added up from its masses without asking the book: which
 * change is worth a run first.
 */
final class Weighing {

    private static final Set<MeasureKind> ADDED_UP =
            Set.of(LoadMeasures.LOADED, LoadMeasures.AXLE, LoadMeasures.COMBINED);

    private static final String KILOGRAM = "kg";

    private final Plan plan;
    private final Optional<Judged> furthest;
    private final Figure before;

    /** @param advised what the book says of the plan without changes */
    Weighing(Advice advised) {
        this.plan = advised.loadings().get(0).plan();
        Set<Key> stops = stopsOfMass(advised);
        this.furthest = advised.findings().stream()
                .filter(finding -> stops.contains(finding.key())
                        && ADDED_UP.contains(finding.judged().measure().kind()))
                .min(Comparator.comparingDouble(
                        finding -> finding.comparison().orElseThrow().margin()))
                .map(Finding::judged);
        this.before = load(advised.loadings());
    }

    /** The stops that say that something weighs or carries more than it may. */
    static Set<Key> stopsOfMass(Advice advice) {
        return advice.findings().stream()
                .filter(finding -> finding.judged().card().severity().is(Severity.STOP)
                        && finding.comparison().isPresent()
                        && finding.judged().measure().kind().unit().equals(KILOGRAM))
                .map(Finding::key)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Whether there is such a limit. */
    boolean isOver() {
        return furthest.isPresent();
    }

    /** What the changed plan takes off that limit, kg; below zero where it adds to it, 0 where that is not known. */
    double takes(Sheet changed) {
        Figure less = before.minus(load(Loading.all(new Plan(changed, plan.tables(), plan::practice))));
        return less.known() ? less.value() : 0;
    }

    private Figure load(List<Loading> loadings) {
        return loadings.stream()
                .filter(loading -> furthest.filter(judged ->
                                judged.loadCase().equals(loading.loadCase().name()))
                        .isPresent())
                .map(loading -> load(loading, furthest.orElseThrow()))
                .findFirst()
                .orElse(Figure.ZERO);
    }

    private static Figure load(Loading loading, Judged judged) {
        MeasureKind kind = judged.measure().kind();
        if (kind == LoadMeasures.COMBINED) {
            return loading.combined();
        }
        if (kind == LoadMeasures.LOADED) {
            return loading.axles().total();
        }
        return judged.subject().equals("front axle")
                ? loading.axles().front()
                : loading.axles().rear();
    }
}
