package fitworthy.book;

import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.MeasureKind.Answer;
import fitworthy.rules.Comparison.Named;
import fitworthy.rules.Comparison.Term;
import fitworthy.rules.Comparison.Text;
import fitworthy.rules.Fact;
import fitworthy.rules.Property;
import fitworthy.rules.RuleText;
import fitworthy.source.Fault;
import fitworthy.source.Words;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Whether a rule holds its measures against what they may be answered by. A word that a measure never says would keep
 * its rule from ever firing, or under {@code !=} let it fire always.
 */
final class RuleAnswers {

    private static final Set<Property> OF_ITS_LIMIT =
            EnumSet.of(Property.LIMIT, Property.HEADROOM, Property.EXCESS, Property.SPARE);

    private final RuleText rule;
    private final RuleTerms terms;
    private final Map<String, MeasureKind> kinds;

    private RuleAnswers(RuleText rule, Map<String, MeasureKind> kinds) {
        this.rule = rule;
        this.terms = new RuleTerms(rule);
        this.kinds = kinds;
    }

    /** What the rule asks that its measures cannot answer. */
    static List<Fault> faults(RuleText rule, Map<String, MeasureKind> kinds) {
        RuleAnswers answers = new RuleAnswers(rule, kinds);
        return answers.terms.comparisons().flatMap(answers::problems).distinct().toList();
    }

    private Stream<Fault> problems(RuleTerms.Asked asked) {
        Term left = asked.comparison().left();
        Term right = asked.comparison().right();
        List<Fault> unanswered =
                Stream.of(left, right).flatMap(term -> unanswered(asked, term)).toList();
        return !unanswered.isEmpty()
                ? unanswered.stream()
                : Stream.of(unsaid(asked, left, right), unsaid(asked, right, left), apart(asked))
                        .flatMap(found -> found);
    }

    /** A number asked of what is answered by a word, a word of a number, or a limit where there is none. */
    private Stream<Fault> unanswered(RuleTerms.Asked asked, Term term) {
        MeasureKind kind = kind(asked, term);
        if (kind == null) {
            return Stream.empty();
        }
        Property property = ((Named) term).property();
        boolean number = kind.answer() instanceof Answer.Number;
        if (property == Property.WORD && number) {
            return fault(
                    "asks in '" + asked.comparison() + "' for the word of " + kind.name() + ", which is a number",
                    "value, or a measure that is answered by a word");
        }
        if (property.kind() == Property.Kind.NUMBER && !number) {
            return fault(
                    "asks in '" + asked.comparison() + "' for a number of " + kind.name()
                            + ", which is answered by a word",
                    "word, or a measure that is a number");
        }
        return OF_ITS_LIMIT.contains(property) && kind.limitMeaning().isEmpty()
                ? fault(
                        "asks in '" + asked.comparison() + "' for the limit of " + kind.name()
                                + ", which has none of its own",
                        "value, held against a practice value")
                : Stream.empty();
    }

    /** A word held against one that its measure never says. */
    private Stream<Fault> unsaid(RuleTerms.Asked asked, Term word, Term against) {
        MeasureKind kind = kind(asked, word);
        if (kind == null || ((Named) word).property() != Property.WORD) {
            return Stream.empty();
        }
        if (against instanceof Text text && kind.answer() instanceof Answer.LookedUp) {
            return fault(
                    "holds " + kind.name() + ", which is a word out of a table, against '" + text.text() + "'",
                    "a measure that says what is asked of the table");
        }
        if (against instanceof Text text && !kind.words().contains(text.text())) {
            return fault(
                    "asks whether " + kind.name() + " says '" + text.text() + "', which it never does"
                            + Words.suggestion(text.text(), kind.words()),
                    "one of " + String.join(", ", kind.words()));
        }
        return Stream.empty();
    }

    /** Two words held against each other that have nothing in common. */
    private Stream<Fault> apart(RuleTerms.Asked asked) {
        MeasureKind one = kind(asked, asked.comparison().left());
        MeasureKind other = kind(asked, asked.comparison().right());
        return one == null
                        || other == null
                        || !one.saysNothingElse()
                        || !other.saysNothingElse()
                        || !Collections.disjoint(one.words(), other.words())
                ? Stream.empty()
                : fault(
                        "holds " + one.name() + " against " + other.name() + " in '" + asked.comparison()
                                + "', though they never say the same word",
                        "two measures that may be answered by the same word");
    }

    /** The kind of the measure that a term is a property of; null where it is none, or there is no such measure. */
    private MeasureKind kind(RuleTerms.Asked asked, Term term) {
        return term instanceof Named named && named.property().fact() == Fact.MEASURE
                ? kinds.get(terms.of(asked.of(), named).key())
                : null;
    }

    private Stream<Fault> fault(String problem, String mend) {
        return Stream.of(new Fault(rule.place(), rule.id(), problem, mend));
    }
}
