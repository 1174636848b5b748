package fitworthy.book;

import fitworthy.figures.Measures;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.QuantityText;
import fitworthy.rules.Comparison.Named;
import fitworthy.rules.Comparison.Term;
import fitworthy.rules.Condition.Match;
import fitworthy.rules.Fact;
import fitworthy.rules.Property;
import fitworthy.rules.RuleText;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Whether a text can be the number of a practice value, in the book as in what a shop sets over it. */
final class LimitText {

    private LimitText() {}

    /**
     * What is wrong with the text, in words that may follow 'the value'; empty where nothing is.
     *
     * @param id of the practice value
     * @param dimension what it has to be a quantity of
     * @param rules those that may compare with it
     */
    static Optional<String> problem(String id, String text, Dimension dimension, Collection<RuleText> rules) {
        try {
            Figure figure = QuantityText.parse(text, dimension);
            return figure.tolerance() != 0
                    ? Optional.of("'" + text + "' has a tolerance, which no limit has")
                    : figure.value() < 0 ? belowZero(id, text, rules) : Optional.empty();
        } catch (QuantityText.Unreadable e) {
            return Optional.of(e.getMessage());
        }
    }

    /** A rule that holds what is never negative against a negative number would never fire, or always. */
    private static Optional<String> belowZero(String id, String text, Collection<RuleText> rules) {
        List<Held> held = rules.stream()
                .filter(rule -> rule.practice().contains(id))
                .flatMap(rule -> held(new RuleTerms(rule), id))
                .toList();
        String never = held.stream()
                .filter(one -> !one.signed())
                .map(Held::name)
                .distinct()
                .collect(Collectors.joining(", "));
        return held.isEmpty()
                ? Optional.of("'" + text + "' is below zero, and no rule holds a figure against it that could be")
                : never.isEmpty()
                        ? Optional.empty()
                        : Optional.of("'" + text + "' is below zero, which what is held against it never is: " + never);
    }

    /** A number of a measure that a rule compares with a practice value. @param signed whether it may be below zero */
    private record Held(String name, boolean signed) {}

    private static Stream<Held> held(RuleTerms terms, String id) {
        return terms.comparisons().flatMap(asked -> Stream.of(
                        List.of(asked.comparison().left(), asked.comparison().right()),
                        List.of(asked.comparison().right(), asked.comparison().left()))
                .filter(sides -> isValue(terms, asked.of(), sides.get(0), id))
                .flatMap(sides -> held(terms, asked.of(), sides.get(1))));
    }

    private static boolean isValue(RuleTerms terms, Match in, Term term, String id) {
        return term instanceof Named named
                && named.property() == Property.PRACTICE_VALUE
                && terms.of(in, named).key().equals(id);
    }

    private static Stream<Held> held(RuleTerms terms, Match in, Term term) {
        if (!(term instanceof Named named) || named.property().fact() != Fact.MEASURE) {
            return Stream.empty();
        }
        MeasureKind kind = Measures.kinds().get(terms.of(in, named).key());
        return Stream.of(
                switch (named.property()) {
                    case HEADROOM, EXCESS, SPARE -> new Held(kind.name(), true);
                    case TOLERANCE -> new Held("the tolerance of " + kind.name(), false);
                    default -> new Held(kind.name(), kind.isSigned());
                });
    }
}
