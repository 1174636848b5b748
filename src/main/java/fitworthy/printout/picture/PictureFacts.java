package fitworthy.printout.picture;

import fitworthy.advice.Advice;
import fitworthy.book.Practice;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.PracticeId;
import java.util.List;
import java.util.Optional;

/** What the rules saw in one load case. */
record PictureFacts(Loading loading, List<Measure> measures, List<Practice> practice) {

    /** The facts of each load case, in the sheet's order. */
    static List<PictureFacts> of(Advice advice) {
        return advice.loadings().stream()
                .map(loading -> {
                    List<Object> facts = advice.facts().get(loading.loadCase().name());
                    return new PictureFacts(loading, only(Measure.class, facts), only(Practice.class, facts));
                })
                .toList();
    }

    private static <T> List<T> only(Class<T> type, List<Object> facts) {
        return facts.stream().filter(type::isInstance).map(type::cast).toList();
    }

    String loadCase() {
        return loading.loadCase().name();
    }

    /** Every measure of a kind, in the order in which the figures gave them. */
    List<Measure> all(MeasureKind kind) {
        return measures.stream().filter(measure -> measure.kind() == kind).toList();
    }

    Optional<Measure> one(MeasureKind kind, String subject) {
        return all(kind).stream()
                .filter(measure -> measure.getSubject().equals(subject))
                .findFirst();
    }

    Optional<Practice> practice(PracticeId asked) {
        return practice.stream().filter(value -> value.id().equals(asked.id())).findFirst();
    }

    /** How much of its limit a measure uses, 1 for all of it; nothing where either is not known. */
    static Optional<Double> used(Measure measure) {
        return measure.isKnown() && measure.hasLimit()
                ? Optional.of(measure.getValue() / measure.getLimit())
                : Optional.empty();
    }
}
