package fitworthy.search;

import fitworthy.advice.Advice;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Check;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.DoesNotApply;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Held;
import fitworthy.advice.Outcome.Key;
import fitworthy.advice.Outcome.Met;
import fitworthy.advice.Outcome.Reason;
import fitworthy.book.Severity;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a search has to know of a plan that was run through the book. Outcomes go by rule, subject and load case.
 *
 * @param margins what is left of each limit, also where another part of the rule is not fulfilled; -1 and 0 where
 *     a word decides
 * @param open by rule and load case, on how many subjects it lacks a figure: a part taken in place of another that lacks
 *     the same figure hides nothing
 * @param tolerances of what is left of each limit, as far as it has one
 * @param terms what the plan comes to besides
 */
record RunSummary(
        Map<Key, Double> margins,
        Set<Key> findings,
        Set<Key> stops,
        Set<Key> changes,
        Map<Gap, Long> open,
        Map<Key, Double> tolerances,
        Terms terms) {

    /** A rule that lacks figures in a load case. */
    record Gap(String rule, String loadCase) {}

    static RunSummary of(Advice advice) {
        Map<Key, Double> margins = new HashMap<>();
        Map<Key, Double> tolerances = new HashMap<>();
        Stream.<List<? extends Assessed>>of(advice.met(), advice.held(), advice.findings())
                .flatMap(List::stream)
                .forEach(outcome -> outcome.comparison()
                        .ifPresent(comparison -> tolerances.put(outcome.key(), comparison.tolerance())));
        Set<Key> findings = new HashSet<>();
        Set<Key> stops = new LinkedHashSet<>();
        Set<Key> changes = new HashSet<>();
        for (Met met : advice.met()) {
            margins.put(met.key(), met.comparison().map(Comparison::margin).orElse(0.0));
        }
        for (DoesNotApply off : advice.doesNotApply()) {
            if (off.reason() == Reason.GUARD) {
                margins.put(off.key(), off.comparison().map(Comparison::margin).orElse(0.0));
            }
        }
        for (Held held : advice.held()) {
            margins.put(held.key(), held.comparison().map(Comparison::margin).orElse(0.0));
        }
        for (Finding finding : advice.findings()) {
            margins.put(
                    finding.key(), finding.comparison().map(Comparison::margin).orElse(-1.0));
            findings.add(finding.key());
            if (finding.judged().card().severity().is(Severity.STOP)) {
                stops.add(finding.key());
            } else if (finding.judged().card().severity().is(Severity.CHANGE)) {
                changes.add(finding.key());
            }
        }
        return new RunSummary(
                margins,
                findings,
                stops,
                changes,
                advice.notAssessed().stream()
                        .map(open -> new Gap(open.key().rule(), open.key().loadCase()))
                        .collect(Collectors.groupingBy(gap -> gap, Collectors.counting())),
                tolerances,
                Terms.of(advice));
    }

    /** Whether no rule lacks a figure on more subjects than before. */
    boolean opensNothing(RunSummary before) {
        return open.entrySet().stream()
                .allMatch(entry -> entry.getValue() <= before.open.getOrDefault(entry.getKey(), 0L));
    }

    /** Whether there is no stop that was not there before. */
    boolean stopsNothingNew(RunSummary before) {
        return before.stops.containsAll(stops);
    }

    /** Whether nothing has to be changed that was in order before. */
    boolean spoilsNothing(RunSummary before) {
        return stopsNothingNew(before) && before.changes.containsAll(changes);
    }

    /** Which of some findings are no more, in any loading. */
    Set<Check> cleared(Set<Key> before) {
        Set<Check> cleared = checks(before);
        cleared.removeAll(checks(findings));
        return cleared;
    }

    static Set<Check> checks(Set<Key> keys) {
        return keys.stream()
                .map(key -> new Check(key.rule(), key.subject()))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** What is left of a limit; without end where the question no longer arises. */
    double margin(Key key) {
        return margins.getOrDefault(key, Double.POSITIVE_INFINITY);
    }

    /** What is left of a limit even if all is off by its tolerance to the worse. */
    double surely(Key key) {
        return margin(key) - tolerances.getOrDefault(key, 0.0);
    }

    /** Whether a limit is kept by its tolerance or more, so that it is not too close to call. */
    boolean isSure(Key key) {
        return !findings.contains(key) && surely(key) >= 0;
    }

    /** How much more is left of a limit than before. */
    double gain(RunSummary before, Key key) {
        double was = before.margin(key);
        double is = margin(key);
        return was == is ? 0 : is - was;
    }
}
