package fitworthy.search;

import fitworthy.advice.Advice;
import fitworthy.advice.Outcome;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.DoesNotApply;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.Outcome.Met;
import fitworthy.advice.Outcome.Reason;
import fitworthy.book.Severity;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a search has to know of a plan that was run through the book. Outcomes go by rule, subject and load case.
 *
 * @param margins what is left of each limit, also where another part of the rule is not fulfilled; -1 and 0 where
 *     a word decides
 * @param open by rule and load case, on how many subjects it lacks a figure: a part taken in place of another that lacks
 *     the same figure hides nothing
 */
record RunSummary(
        Map<String, Double> margins,
        Set<String> findings,
        Set<String> stops,
        Set<String> changes,
        Map<String, Long> open) {

    static RunSummary of(Advice advice) {
        Map<String, Double> margins = new HashMap<>();
        Set<String> findings = new HashSet<>();
        Set<String> stops = new LinkedHashSet<>();
        Set<String> changes = new HashSet<>();
        for (Met met : advice.met()) {
            margins.put(key(met), met.comparison().map(Comparison::margin).orElse(0.0));
        }
        for (DoesNotApply off : advice.doesNotApply()) {
            if (off.reason() == Reason.GUARD) {
                margins.put(key(off), off.comparison().map(Comparison::margin).orElse(0.0));
            }
        }
        for (Finding finding : advice.findings()) {
            margins.put(
                    key(finding), finding.comparison().map(Comparison::margin).orElse(-1.0));
            findings.add(key(finding));
            if (finding.judged().card().severity().is(Severity.STOP)) {
                stops.add(key(finding));
            } else if (finding.judged().card().severity().is(Severity.CHANGE)) {
                changes.add(key(finding));
            }
        }
        return new RunSummary(
                margins,
                findings,
                stops,
                changes,
                advice.notAssessed().stream()
                        .map(Outcome::judged)
                        .collect(Collectors.groupingBy(
                                judged -> judged.id() + "|" + judged.loadCase(), Collectors.counting())));
    }

    /** What an outcome goes by. */
    static String key(Outcome outcome) {
        Judged judged = outcome.judged();
        return judged.id() + "|" + judged.subject() + "|" + judged.loadCase();
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

    /** What is left of a limit; without end where the question no longer arises. */
    double margin(String key) {
        return margins.getOrDefault(key, Double.POSITIVE_INFINITY);
    }

    /** How much more is left of a limit than before. */
    double gain(RunSummary before, String key) {
        double was = before.margin(key);
        double is = margin(key);
        return was == is ? 0 : is - was;
    }
}
