package fitworthy.printout;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Arrangement.Headings;
import fitworthy.advice.Counts;
import fitworthy.advice.Margin;
import fitworthy.advice.Outcome;
import fitworthy.advice.Outcome.Check;
import fitworthy.book.Severity;
import fitworthy.printout.words.Wording;
import fitworthy.search.Terms;
import fitworthy.sheet.Forgone;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What is shown of one combination beside the others, and all that is kept of its advice: thousands of whole ones would
 * fill the memory.
 *
 * @param open by severity, how many checks are not made that may come to one more finding of it
 * @param forgone what was to stay and is left out
 * @param faults its stops and changes that are not waived, by rule
 * @param left what is left of each limit in the loading that leaves least, as it is printed
 * @param stops by rule and subject, the words of every stop that is not waived
 * @param terms its range, water, price and lead time
 * @param asksForAction whether anything but a note was found, or a figure is missing
 */
public record ComparedPlan(
        Counts counts,
        Headings headings,
        Map<Severity, Long> open,
        List<String> forgone,
        Map<String, Severity> faults,
        Map<String, String> left,
        Map<String, String> stops,
        Terms terms,
        boolean asksForAction) {

    /**
     * What is better before what is worse: what leaves out less that was to stay, then what may come to fewer stops, then to
     * fewer changes. What nobody has answered counts as its worst, as it does for buying.
     */
    public static final Comparator<ComparedPlan> BETTER = Comparator.comparingInt(
                    (ComparedPlan plan) -> plan.forgone().size())
            .thenComparingLong(plan -> plan.atWorst(Severity.STOP))
            .thenComparingLong(plan -> plan.atWorst(Severity.CHANGE));

    /** What is kept of the advice on a combination. */
    public static ComparedPlan of(Advice advice) {
        Arrangement arrangement = Arrangement.of(advice);
        Map<String, Severity> faults = new TreeMap<>();
        arrangement.standing().stream()
                .filter(group -> group.severity().compareTo(Severity.CHANGE) <= 0)
                .forEach(group -> faults.put(group.outcomes().get(0).judged().id(), group.severity()));
        Map<String, String> stops = new TreeMap<>();
        arrangement.standing().stream()
                .filter(group -> group.severity() == Severity.STOP)
                .forEach(group -> stops.put(
                        group.id() + " [" + group.worst().judged().subject() + "]",
                        Wording.fill(group.card().title(), group.worst())));
        Map<String, String> left = new LinkedHashMap<>();
        for (Margin margin : arrangement.margins()) {
            left.put(margin.limit(), MarginTable.least(margin));
        }
        return new ComparedPlan(
                arrangement.counts(),
                arrangement.headings(),
                open(advice),
                Forgone.of(advice.sheet()),
                faults,
                left,
                stops,
                Terms.of(advice),
                advice.asksForAction());
    }

    /** What is found of the same in another loading counts there. */
    private static Map<Severity, Long> open(Advice advice) {
        Set<Check> found = advice.findings().stream().map(Outcome::check).collect(Collectors.toSet());
        Map<Check, Severity> open = new LinkedHashMap<>();
        advice.notAssessed().stream()
                .filter(outcome -> !found.contains(outcome.check()))
                .forEach(outcome -> open.put(
                        outcome.check(), outcome.judged().card().severity().value()));
        return open.values().stream().collect(Collectors.groupingBy(severity -> severity, Collectors.counting()));
    }

    /** How many of a severity there are if every check that is not made finds something. */
    long atWorst(Severity severity) {
        return found(severity) + open(severity);
    }

    /** How many checks that are not made may find something of a severity. */
    public long open(Severity severity) {
        return open.getOrDefault(severity, 0L);
    }

    /** As many as the headline of 'check' says. */
    public long found(Severity severity) {
        return headings.of(severity);
    }

    /** A dash where nothing is known of the limit. */
    public String left(String limit) {
        return left.getOrDefault(limit, "-");
    }
}
