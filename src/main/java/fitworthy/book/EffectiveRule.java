package fitworthy.book;

import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.MeasureKind.Scope;
import fitworthy.rules.Guards;
import fitworthy.rules.RuleText;
import java.util.List;
import java.util.stream.Stream;

/**
 * A rule with what it looks at and compares with in one region from one day of change to the next.
 *
 * @param text what its condition mentions
 * @param card its card
 * @param judged the measure it judges
 * @param others the further measures that its card is about
 * @param matched the measures that its condition matches
 * @param joined the measures whose number is multiplied in its matches
 * @param guards what of its condition only says whether its question arises
 * @param applies whether all its practice values apply there; a rule has nothing to say where one does not
 * @param values the practice values that are recorded
 * @param unrecorded ids of those that are not
 */
public record EffectiveRule(
        RuleText text,
        Card card,
        MeasureKind judged,
        List<MeasureKind> others,
        List<MeasureKind> matched,
        List<MeasureKind> joined,
        Guards guards,
        boolean applies,
        List<Practice> values,
        List<String> unrecorded) {

    public String id() {
        return text.id();
    }

    /** Every measure that what becomes of it may hang on. */
    Stream<MeasureKind> looksAt() {
        return Stream.of(List.of(judged), others, matched).flatMap(List::stream);
    }

    /** Whether the loading changes any measure that its card is about. */
    public boolean byLoading() {
        boolean changed = judged.scope() == Scope.LOADING;
        for (MeasureKind kind : others) {
            changed |= kind.scope() == Scope.LOADING;
        }
        return changed;
    }
}
