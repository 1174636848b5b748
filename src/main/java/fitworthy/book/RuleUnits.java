package fitworthy.book;

import fitworthy.figures.measure.MeasureKind;
import fitworthy.quantity.Dimension;
import fitworthy.rules.Comparison;
import fitworthy.rules.Comparison.Compared;
import fitworthy.rules.Comparison.Named;
import fitworthy.rules.Condition.Match;
import fitworthy.rules.Fact;
import fitworthy.rules.Property;
import fitworthy.rules.RuleText;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Whether a rule compares like with like: kilograms with kilograms, shares with shares. */
final class RuleUnits {

    private final Map<String, MeasureKind> kinds;
    private final Map<String, DatedLimit> practice;
    /** What a rule gives a name, by that name. */
    private final Map<String, Match> bound = new HashMap<>();

    private RuleUnits(RuleText rule, Map<String, MeasureKind> kinds, Map<String, DatedLimit> practice) {
        this.kinds = kinds;
        this.practice = practice;
        rule.condition().patterns().forEach(match -> bound.put(match.binding(), match));
    }

    /** What the first comparison of unlike quantities holds against what, in words; empty where there is none. */
    static Optional<String> unlike(RuleText rule, Map<String, MeasureKind> kinds, Map<String, DatedLimit> practice) {
        RuleUnits units = new RuleUnits(rule, kinds, practice);
        return rule.condition().patterns().stream()
                .flatMap(match -> match.comparisons().stream()
                        .flatMap(RuleUnits::compared)
                        .map(comparison -> units.problem(match, comparison)))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Stream<Compared> compared(Comparison comparison) {
        if (comparison instanceof Compared compared) {
            return Stream.of(compared);
        }
        return comparison instanceof Comparison.Both both
                ? both.parts().stream().flatMap(RuleUnits::compared)
                : comparison instanceof Comparison.Either either
                        ? either.parts().stream().flatMap(RuleUnits::compared)
                        : comparison instanceof Comparison.Not not ? compared(not.part()) : Stream.empty();
    }

    private Optional<String> problem(Match match, Compared compared) {
        Dimension left = dimension(match, compared.left());
        Dimension right = dimension(match, compared.right());
        return left == null || right == null || left == right
                ? Optional.empty()
                : Optional.of(described(left) + " with " + described(right) + " in '" + compared + "'");
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
        Match of = named.binding() == null ? match : bound.get(named.binding());
        if (of == null || named.property() == Property.SPARE) {
            return of == null ? null : Dimension.SHARE;
        }
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
