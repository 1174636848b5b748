package fitworthy.handbook;

import fitworthy.figures.Measures;
import fitworthy.rules.Comparison;
import fitworthy.rules.Condition;
import java.util.List;
import java.util.stream.Collectors;

/** The condition of a rule in words. */
public final class ConditionWords {

    private ConditionWords() {}

    /** A line a pattern. */
    public static List<String> lines(Condition condition) {
        return lines(condition, "");
    }

    private static List<String> lines(Condition condition, String before) {
        if (condition instanceof Condition.All all) {
            return all.parts().stream()
                    .flatMap(part -> lines(part, before).stream())
                    .toList();
        }
        if (condition instanceof Condition.Any any) {
            return any.parts().stream()
                    .flatMap(part -> lines(part, before + "or: ").stream())
                    .toList();
        }
        if (condition instanceof Condition.None none) {
            return lines(none.part(), before + "none: ");
        }
        if (condition instanceof Condition.Some some) {
            return lines(some.part(), before + "some: ");
        }
        Condition.Match match = (Condition.Match) condition;
        String name = match.binding() == null ? "" : match.binding() + " is ";
        String what =
                switch (match.fact()) {
                    case MEASURE ->
                        match.key() + ", " + Measures.kinds().get(match.key()).meaning();
                    case PRACTICE -> "the practice value " + match.key();
                    case ADVISED -> "the advice " + match.key();
                };
        return List.of(before
                + name
                + what
                + (match.comparisons().isEmpty()
                        ? ""
                        : match.comparisons().stream()
                                .map(Comparison::toString)
                                .collect(Collectors.joining(" and ", ", with ", ""))));
    }
}
