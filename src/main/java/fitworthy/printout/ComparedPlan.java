package fitworthy.printout;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Arrangement.Headings;
import fitworthy.advice.Counts;
import fitworthy.advice.Margin;
import fitworthy.book.Severity;
import fitworthy.printout.words.Wording;
import fitworthy.search.Terms;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;

/**
 * What is shown of one combination beside the others, and all that is kept of its advice: thousands of whole ones would
 * fill the memory.
 *
 * @param faults its stops and changes that are not waived, by rule
 * @param left what is left of each limit in the loading that leaves least, as it is printed
 * @param stops by rule and subject, the words of every stop that is not waived
 * @param terms its range, water, price and lead time
 * @param asksForAction whether anything but a note was found, or a figure is missing
 */
public record ComparedPlan(
        Counts counts,
        Headings headings,
        Map<String, Severity> faults,
        Map<String, String> left,
        Map<String, String> stops,
        Terms terms,
        boolean asksForAction) {

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
                faults,
                left,
                stops,
                Terms.of(advice),
                advice.asksForAction());
    }

    /** As many as the headline of 'check' says. */
    long found(Severity severity) {
        return headings.of(severity);
    }

    /** A dash where nothing is known of the limit. */
    String left(String limit) {
        return left.getOrDefault(limit, "-");
    }
}
