package fitworthy.printout;

import fitworthy.book.Severity;
import fitworthy.printout.words.SeverityWords;
import fitworthy.printout.words.TermsWords;
import fitworthy.search.Alternatives;
import fitworthy.search.Alternatives.Alternative;
import fitworthy.source.Words;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What is said of the combinations of choices. */
public final class CombinationWords {

    /** Plans that are numbered one by one; of more the number tells enough. */
    private static final int MOST_PLANS = 8;

    private CombinationWords() {}

    /** How many combinations were looked at where time ran out before all were. */
    public static Optional<String> cutShort(Alternatives<?> alternatives) {
        return alternatives.complete()
                ? Optional.empty()
                : Optional.of("Time ran out: " + alternatives.plans().size() + " of "
                        + (alternatives.all() == Long.MAX_VALUE ? "more than " : "") + alternatives.all()
                        + " combinations were looked at. What is said of the best holds among these alone.");
    }

    /** Which plans have a stop. */
    public static String plansWith(String stop, List<ComparedPlan> plans) {
        List<String> having = IntStream.range(0, plans.size())
                .filter(i -> plans.get(i).stops().containsKey(stop))
                .mapToObj(i -> String.valueOf(i + 1))
                .toList();
        return having.size() == plans.size() ? "every plan" : plans(having);
    }

    /** Plans by their numbers, as in "plans 1, 3". */
    public static String plans(List<String> numbers) {
        return (numbers.size() == 1 ? "plan " : "plans ") + Words.few(numbers, MOST_PLANS);
    }

    /** In few words, what a combination comes to. */
    public static String counts(ComparedPlan plan) {
        return counts(plan, open(plan));
    }

    /** The same without the checks that are not made. */
    static String found(ComparedPlan plan) {
        return counts(plan, "");
    }

    private static String counts(ComparedPlan plan, String open) {
        long stops = plan.found(Severity.STOP);
        long changes = plan.found(Severity.CHANGE);
        return stops + " " + SeverityWords.behind(stops, Severity.STOP) + open + ", " + changes + " "
                + SeverityWords.behind(changes, Severity.CHANGE) + leftOut(plan) + ", parts "
                + TermsWords.price(plan.terms());
    }

    /** How many checks are not made, since these may find as much as others have; empty where all are. */
    static String open(ComparedPlan plan) {
        long open = plan.counts().notAssessed();
        long stops = plan.open(Severity.STOP);
        return open == 0
                ? ""
                : " and " + open + (open == 1 ? " check" : " checks") + " not made"
                        + (stops == 0 ? "" : ", of which " + stops + " could stop it");
    }

    /** What was to stay and is left out; empty where nothing is. */
    public static String leftOut(ComparedPlan plan) {
        return plan.forgone().isEmpty() ? "" : ", leaves out '" + String.join("', '", plan.forgone()) + "'";
    }

    /** The choices of a combination. @param number from 0; the first is the plan as written */
    public static String choices(Alternative<?> alternative, int number) {
        return alternative.choices().stream()
                        .map(choice -> choice.option() + ": " + choice.choice())
                        .collect(Collectors.joining("; "))
                + (number == 0 ? " (as written)" : "");
    }
}
