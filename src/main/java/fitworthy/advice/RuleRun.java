package fitworthy.advice;

import fitworthy.advice.Outcome.Finding;
import fitworthy.book.RuleSplit.RuleSet;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.rules.Advised;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What came of some rules, and of what.
 *
 * @param rules the rules
 * @param measures the measures that what became of them may hang on
 * @param run ids of those that were run for it; the others came out as for a sheet before
 * @param findings of those that fired
 * @param quiet of those that did not; a card called met here is so as far as its own rule goes
 */
record RuleRun(
        RuleSet rules,
        Map<MeasureKind, List<Measure>> measures,
        Set<String> run,
        List<Finding> findings,
        List<Outcome> quiet) {

    /** Nothing, where no rule ran. */
    static final RuleRun NOTHING = new RuleRun(RuleSet.NONE, Map.of(), Set.of(), List.of(), List.of());

    /** What rules that run later may build on. */
    List<Advised> advised() {
        return advised(findings);
    }

    static List<Advised> advised(List<Finding> findings) {
        return findings.stream()
                .map(finding ->
                        new Advised(finding.judged().id(), finding.judged().subject()))
                .toList();
    }
}
