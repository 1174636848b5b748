package fitworthy.rules;

import fitworthy.rules.Comparison.Asked;
import fitworthy.rules.Comparison.Compared;
import fitworthy.rules.Comparison.Holds;
import fitworthy.rules.Comparison.Named;
import fitworthy.rules.Comparison.Operator;
import fitworthy.rules.Condition.Match;
import fitworthy.rules.Property.Kind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Lets no rule fire on what is not known. To the engine a number that is none is no less than any other, and a word that
 * is not known differs from every word; so a pattern that compares one asks first whether its measure is known, whether
 * the rule file says so or not.
 */
final class Known {

    private Known() {}

    /** The condition with what it has to ask first. */
    static Condition asked(Condition condition) {
        return asked(condition, new HashMap<>());
    }

    /** Whether it compares what may not be known. */
    static boolean compares(Match match) {
        return match.comparisons().stream()
                .anyMatch(comparison -> !needing(comparison).isEmpty());
    }

    /** @param known the names given so far, with whether what they mean is sure to be known; gets those given here */
    private static Condition asked(Condition condition, Map<String, Boolean> known) {
        if (condition instanceof Match match) {
            return asked(match, known);
        }
        if (condition instanceof Condition.All all) {
            return new Condition.All(
                    all.parts().stream().map(part -> asked(part, known)).toList());
        }
        if (condition instanceof Condition.Any any) {
            Map<String, Boolean> after = new HashMap<>(known);
            List<Condition> parts = new ArrayList<>();
            for (Condition part : any.parts()) {
                Map<String, Boolean> here = new HashMap<>(known);
                parts.add(asked(part, here));
                here.forEach((name, is) -> after.merge(name, is, Boolean::logicalAnd));
            }
            known.putAll(after);
            return new Condition.Any(List.copyOf(parts));
        }
        Condition part = asked(condition.parts().get(0), new HashMap<>(known));
        return condition instanceof Condition.None ? new Condition.None(part) : new Condition.Some(part);
    }

    private static Match asked(Match match, Map<String, Boolean> known) {
        List<Comparison> comparisons = new ArrayList<>();
        Set<Named> asks = new LinkedHashSet<>();
        match.comparisons().forEach(comparison -> asks.addAll(needing(comparison)));
        for (Named ask : asks) {
            boolean sure = ask.binding() != null && known.getOrDefault(ask.binding(), false);
            if (!sure && !match.comparisons().contains(new Holds(ask))) {
                comparisons.add(new Asked(ask));
            }
        }
        comparisons.addAll(match.comparisons());
        if (match.binding() != null) {
            Named own = new Named(null, Property.KNOWN);
            known.put(match.binding(), comparisons.contains(new Holds(own)) || comparisons.contains(new Asked(own)));
        }
        return new Match(match.binding(), match.fact(), match.key(), List.copyOf(comparisons));
    }

    /** What has to be known before a comparison says anything. */
    private static Set<Named> needing(Comparison comparison) {
        boolean equal = comparison instanceof Compared compared && compared.operator() == Operator.EQUAL;
        Set<Named> needing = new LinkedHashSet<>();
        if (comparison instanceof Comparison.Both both) {
            both.parts().forEach(part -> needing.addAll(needing(part)));
        } else if (comparison instanceof Comparison.Either either) {
            either.parts().forEach(part -> needing.addAll(needing(part)));
        } else {
            comparison
                    .named()
                    .filter(property -> property.property().fact() == Fact.MEASURE)
                    .filter(property ->
                            property.kind() == Kind.NUMBER || property.property() == Property.WORD && !equal)
                    .forEach(property -> needing.add(new Named(property.binding(), Property.KNOWN)));
        }
        return needing;
    }
}
