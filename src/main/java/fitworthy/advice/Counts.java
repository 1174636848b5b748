package fitworthy.advice;

import fitworthy.book.Severity;
import fitworthy.quantity.Missing;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How many checks ended in which way, and how many figures are missing; there is no other count. A check is a rule on
 * a subject, however many loadings it was looked at in; one that ended in several ways in different loadings counts
 * for each.
 *
 * @param found by severity, those with a finding that is not waived
 * @param waived those with a finding that is
 * @param notAssessed those that lack a figure
 * @param figuresMissing fields of the sheet, of each part by itself, and practice values that these lack
 * @param inBook how many of these the rule book lacks, so that nobody can bring them
 * @param met those that are in order
 * @param held those that are if guesses of the sheet hold, which are not among these
 * @param doesNotApply those whose question does not arise
 */
public record Counts(
        Map<Severity, Long> found,
        long waived,
        long notAssessed,
        long figuresMissing,
        long inBook,
        long met,
        long held,
        long doesNotApply) {

    /** How many have a finding of a severity that is not waived. */
    public long found(Severity severity) {
        return found.getOrDefault(severity, 0L);
    }

    /** Whether more lack a figure than could be assessed, so that little of the plan is known. */
    public boolean isMostlyOpen() {
        return notAssessed
                > met
                        + held
                        + waived
                        + found.values().stream().mapToLong(count -> count).sum();
    }

    /** Those of some of an advice's outcomes. */
    static Counts of(Advice advice, Predicate<Outcome> wanted) {
        return new Counts(
                advice.findings().stream()
                        .filter(wanted)
                        .filter(finding -> finding.waiver().isEmpty())
                        .collect(Collectors.toMap(Outcome::check, Counts::severity, (one, other) -> one))
                        .values()
                        .stream()
                        .collect(Collectors.groupingBy(
                                severity -> severity, () -> new EnumMap<>(Severity.class), Collectors.counting())),
                checks(
                        advice.findings().stream()
                                .filter(finding -> finding.waiver().isPresent()),
                        wanted),
                checks(advice.notAssessed().stream(), wanted),
                lacking(advice, wanted, any -> true),
                lacking(advice, wanted, Missing::isInBook),
                checks(advice.met().stream(), wanted),
                checks(advice.held().stream(), wanted),
                checks(advice.doesNotApply().stream(), wanted));
    }

    private static long lacking(Advice advice, Predicate<Outcome> wanted, Predicate<Missing> which) {
        return advice.notAssessed().stream()
                .filter(wanted)
                .flatMap(outcome -> outcome.waitsFor().stream())
                .filter(which)
                .map(Missing::path)
                .distinct()
                .count();
    }

    private static Severity severity(Outcome outcome) {
        return outcome.judged().card().severity().value();
    }

    private static long checks(Stream<? extends Outcome> outcomes, Predicate<Outcome> wanted) {
        return outcomes.filter(wanted).map(Outcome::check).distinct().count();
    }
}
