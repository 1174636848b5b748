package fitworthy.book;

import fitworthy.figures.measure.MeasureKind;
import fitworthy.quantity.Dimension;
import fitworthy.rules.Comparison;
import fitworthy.rules.Comparison.Named;
import fitworthy.rules.Condition.Match;
import fitworthy.rules.Fact;
import fitworthy.rules.Property;
import fitworthy.rules.RuleText;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Whether a rule compares like with like: kilograms with kilograms, shares with shares. */
final class RuleUnits {

    private final RuleTerms terms;
    private final Map<String, MeasureKind> kinds;
    private final Map<String, DatedLimit> practice;

    private RuleUnits(RuleTerms terms, Map<String, MeasureKind> kinds, Map<String, DatedLimit> practice) {
        this.terms = terms;
        this.kinds = kinds;
        this.practice = practice;
    }

    /** What the first comparison of unlike quantities holds against what, in words; empty where there is none. */
    static Optional<String> unlike(RuleText rule, Map<String, MeasureKind> kinds, Map<String, DatedLimit> practice) {
        RuleUnits units = new RuleUnits(new RuleTerms(rule), kinds, practice);
        return units.terms.comparisons().flatMap(units::problem).findFirst();
    }

    private Stream<String> problem(RuleTerms.Asked asked) {
        Dimension left = dimension(asked.of(), asked.comparison().left());
        Dimension right = dimension(asked.of(), asked.comparison().right());
        return left == null || right == null || left == right
                ? Stream.empty()
                : Stream.of(described(left) + " with " + described(right) + " in '" + asked.comparison() + "'");
    }

    private static String described(Dimension dimension) {
        return dimension == Dimension.COUNT
                ? "a plain number"
                : "a quantity in " + dimension.units().keySet().iterator().next();
    }

    /** What kind of quantity stands on one side; null where it is none, the zero, or of a fact that is not in the book. */
    private Dimension dimension(Match match, Comparison.Term term) {
        if (!(term instanceof Named named) || named.kind() != Property.Kind.NUMBER) {
            return null;
        }
        if (named.property() == Property.SPARE) {
            return Dimension.SHARE;
        }
        Match of = terms.of(match, named);
        String unit = of.fact() == Fact.PRACTICE
                ? Optional.ofNullable(practice.get(of.key()))
                        .map(DatedLimit::unit)
                        .orElse(null)
                : Optional.ofNullable(kinds.get(of.key()))
                        .map(MeasureKind::unit)
                        .orElse(null);
        return Optional.ofNullable(unit).map(Dimension::ofUnit).orElse(null);
    }
}
