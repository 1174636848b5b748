package fitworthy.book;

import fitworthy.figures.Measure;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * The rules of a book in two sets.
 *
 * @param names some names of measures
 * @param over the rules that look at measures of these names, themselves or through advice that they build on
 * @param rest the others
 */
public record RuleSplit(Set<String> names, RuleSet over, RuleSet rest) {

    /**
     * Some rules.
     *
     * @param rules what each of them mentions
     * @param ids their ids
     * @param measures names of the measures that any of them matches
     * @param practice ids of the practice values that any of them matches
     * @param earlier ids of the advice that any of them builds on
     */
    public record RuleSet(List<RuleText> rules, Set<String> ids, Set<String> measures, Set<String> practice,
            Set<String> earlier) {

        static RuleSet of(List<RuleText> rules) {
            return new RuleSet(rules, all(rules, rule -> Set.of(rule.id())), all(rules, RuleText::measures),
                    all(rules, RuleText::practice), all(rules, RuleText::earlier));
        }

        /** Of some measures those that any of these rules looks at: the engine takes as long over the others. */
        public List<Measure> among(List<Measure> all) {
            return all.stream().filter(each -> measures.contains(each.getName())).toList();
        }

        private static Set<String> all(List<RuleText> rules, Function<RuleText, Set<String>> words) {
            Set<String> all = new HashSet<>();
            rules.forEach(each -> all.addAll(words.apply(each)));
            return all;
        }
    }

    static RuleSplit of(Collection<RuleText> rules, Set<String> names) {
        Set<String> over = new HashSet<>();
        for (int before = -1; before < over.size();) {
            before = over.size();
            for (RuleText rule : rules) {
                if (rule.measures().stream().anyMatch(names::contains)
                        || rule.earlier().stream().anyMatch(over::contains)) {
                    over.add(rule.id());
                }
            }
        }
        return new RuleSplit(names, RuleSet.of(rules.stream().filter(rule -> over.contains(rule.id())).toList()),
                RuleSet.of(rules.stream().filter(rule -> !over.contains(rule.id())).toList()));
    }
}
