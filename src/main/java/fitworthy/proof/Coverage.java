package fitworthy.proof;

import fitworthy.advice.Explanation;
import fitworthy.advice.Explanation.Check;
import fitworthy.advice.Explanation.Step;
import fitworthy.advice.Outcome;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Finding;
import fitworthy.book.Book;
import fitworthy.book.Card;
import fitworthy.figures.Measures;
import fitworthy.figures.measure.MeasureKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What the cases of a book reach of one rule. */
final class Coverage {

    /** How near to a limit, as a share of it, the cases on both its sides have to come. */
    private static final double NEAR = 0.05;

    static final String NOT_FIRED = "no case fires it";
    static final String NOT_MET = "no case meets it";

    private final Card card;
    private final List<Finding> fired;
    /** What was compared where it did not fire and nothing is passed. */
    private final List<Comparison> within;

    private final Map<String, List<Boolean>> comparisons = new LinkedHashMap<>();

    /** @param trials the cases of the rule's topic */
    Coverage(Book book, String id, List<CaseResult> trials) {
        this.card = book.cards().get(id);
        this.fired = of(id, trials.stream().flatMap(trial -> trial.advice().findings().stream()));
        this.within = Stream.concat(
                        of(id, trials.stream().flatMap(trial -> trial.advice().met().stream())).stream()
                                .flatMap(met -> met.comparison().stream()),
                        // A rule that builds on another is never met, but is held in place where that one is silent.
                        of(id, trials.stream().flatMap(trial -> trial.advice().doesNotApply().stream())).stream()
                                .flatMap(off -> off.comparison().stream()))
                .filter(trial -> trial.margin() >= 0)
                .toList();
        for (CaseResult trial : trials) {
            for (Explanation each : Explanation.of(trial.advice(), id)) {
                each.looked().forEach(this::count);
            }
        }
    }

    private static <O extends Outcome> List<O> of(String id, Stream<O> outcomes) {
        return outcomes.filter(outcome -> outcome.judged().id().equals(id)).toList();
    }

    private void count(Step step) {
        for (Check check : step.checks()) {
            if (check.comparison() instanceof fitworthy.rules.Comparison.Asked) {
                continue;
            }
            List<Boolean> seen = comparisons.computeIfAbsent(
                    step.wanted().key() + " " + check.comparison(), key -> new ArrayList<>());
            if (!seen.contains(check.holds())) {
                seen.add(check.holds());
            }
        }
    }

    /** Why the cases do not hold the rule in place; empty where they do. */
    Optional<String> gap() {
        if (fired.isEmpty()) {
            return Optional.of(NOT_FIRED);
        }
        if (within.isEmpty() && !card.against().isEmpty()) {
            return Optional.of(NOT_MET);
        }
        if (!fired.stream()
                .allMatch(finding ->
                        finding.comparison().filter(got -> got.margin() < 0).isPresent())) {
            return Optional.empty();
        }
        return tooFar(fired.stream().map(finding -> finding.comparison().orElseThrow()))
                .map(gap -> "the nearest case beyond its limit is " + gap + " away")
                .or(() -> tooFar(within.stream()).map(gap -> "the nearest case within its limit is " + gap + " away"));
    }

    /**
     * The gap to the limit where it is too wide for a case at the threshold; what is counted comes no nearer than one.
     */
    private Optional<String> tooFar(Stream<Comparison> all) {
        MeasureKind kind = Measures.kinds().get(card.judges());
        boolean counted = kind.unit().isEmpty() && kind.decimals() == 0;
        double gap = all.mapToDouble(compared -> counted && Math.abs(compared.margin()) <= 1
                        ? 0
                        : Math.abs(compared.margin()) / Math.max(Math.abs(compared.limit()), 1e-9))
                .min()
                .orElse(1);
        return gap <= NEAR ? Optional.empty() : Optional.of(Math.round(gap * 100) + " %");
    }

    /** Comparisons of its condition that come out the same in every case; empty where each is turned. */
    Optional<String> oneSided() {
        List<String> sides = Stream.of(true, false)
                .flatMap(side -> {
                    List<String> never = comparisons.entrySet().stream()
                            .filter(entry -> entry.getValue().equals(List.of(!side)))
                            .map(Map.Entry::getKey)
                            .toList();
                    return never.isEmpty()
                            ? Stream.empty()
                            : Stream.of("never " + side + " in these cases: " + String.join("; ", never));
                })
                .toList();
        return sides.isEmpty() ? Optional.empty() : Optional.of(String.join(". ", sides));
    }
}
