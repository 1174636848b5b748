package fitworthy.rules;

import fitworthy.rules.Comparison.Compared;
import fitworthy.rules.Comparison.Named;
import fitworthy.rules.Condition.Match;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Set;

/** Which way a practice value has to move for its rules to fire sooner, read off their comparisons. */
public enum Stricter {
    HIGHER,
    LOWER,
    /** No rule compares it, or two rules pull in different ways. */
    UNTOLD;

    /** Which way is stricter for a practice value that these rules may compare with. */
    public static Stricter of(Collection<RuleText> rules, String practice) {
        Set<Stricter> found = EnumSet.noneOf(Stricter.class);
        for (RuleText rule : rules) {
            if (rule.practice().contains(practice)) {
                Set<String> names = new HashSet<>();
                for (Match pattern : rule.condition().patterns()) {
                    if (means(pattern, practice)) {
                        names.add(pattern.binding());
                    }
                }
                names.remove(null);
                condition(rule.condition(), practice, names, true, found);
            }
        }
        return found.size() == 1 ? found.iterator().next() : UNTOLD;
    }

    private static boolean means(Match pattern, String practice) {
        return pattern.fact() == Fact.PRACTICE && pattern.key().equals(practice);
    }

    /** @param fires whether the rule fires where this condition holds, or where it does not */
    private static void condition(
            Condition condition, String practice, Set<String> names, boolean fires, Set<Stricter> found) {
        if (condition instanceof Match pattern) {
            // Inside its own pattern the value goes without a name.
            Set<String> here = new HashSet<>(names);
            if (means(pattern, practice)) {
                here.add(null);
            }
            pattern.comparisons().forEach(comparison -> comparison(comparison, here, fires, found));
        }
        boolean inside = fires ^ condition instanceof Condition.None;
        condition.parts().forEach(part -> condition(part, practice, names, inside, found));
    }

    private static void comparison(Comparison comparison, Set<String> names, boolean fires, Set<Stricter> found) {
        if (comparison instanceof Comparison.Both both) {
            both.parts().forEach(part -> comparison(part, names, fires, found));
        } else if (comparison instanceof Comparison.Either either) {
            either.parts().forEach(part -> comparison(part, names, fires, found));
        } else if (comparison instanceof Comparison.Not not) {
            comparison(not.part(), names, !fires, found);
        } else if (comparison instanceof Compared compared) {
            boolean left = isValue(compared.left(), names);
            boolean right = isValue(compared.right(), names);
            if (left || right) {
                // Raising the larger side of a comparison makes it come true.
                boolean raised = left
                        == (compared.operator() == Comparison.Operator.ABOVE
                                || compared.operator() == Comparison.Operator.AT_LEAST);
                boolean told = compared.operator().orders() && left != right;
                found.add(!told ? UNTOLD : raised == fires ? HIGHER : LOWER);
            }
        }
    }

    private static boolean isValue(Comparison.Term term, Set<String> names) {
        return term instanceof Named named
                && named.property() == Property.PRACTICE_VALUE
                && names.contains(named.binding());
    }
}
