package fitworthy.advice;

import fitworthy.advice.Outcome.Judged;
import fitworthy.book.Severity;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What hangs on an answer: checks, each once over the loadings.
 *
 * @param checks the worst first, those of one severity by rule and subject, so that the order of the sheet does not matter
 */
public record Stakes(List<Judged> checks) {

    /** Nothing. */
    public static final Stakes NONE = new Stakes(List.of());

    /** The more stops the sooner; of as many the more changes, and so on down to the notes. */
    public static final Comparator<Stakes> MOST_FIRST = Arrays.stream(Severity.values())
            .map(severity -> Comparator.comparingLong((Stakes stakes) -> -stakes.count(severity)))
            .reduce(Comparator::thenComparing)
            .orElseThrow();

    static Stakes of(Stream<? extends Outcome> outcomes) {
        Map<Outcome.Check, Judged> checks = new LinkedHashMap<>();
        outcomes.forEach(outcome -> checks.putIfAbsent(outcome.check(), outcome.judged()));
        return new Stakes(checks.values().stream()
                .sorted(Comparator.comparing(Stakes::severity)
                        .thenComparing(Judged::id)
                        .thenComparing(Judged::subject))
                .toList());
    }

    private static Severity severity(Judged judged) {
        return judged.card().severity().value();
    }

    public boolean isNothing() {
        return checks.isEmpty();
    }

    /** How many checks of a severity. */
    public long count(Severity severity) {
        return counts().getOrDefault(severity, 0L);
    }

    private Map<Severity, Long> counts() {
        return checks.stream().collect(Collectors.groupingBy(Stakes::severity, Collectors.counting()));
    }

    /** The first of the worst severity; nothing where there is none. */
    public Optional<Judged> worst() {
        return checks.stream().findFirst();
    }

    /** Ids of the rules. */
    public Set<String> rules() {
        return checks.stream().map(Judged::id).collect(Collectors.toCollection(TreeSet::new));
    }
}
