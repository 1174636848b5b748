package fitworthy.book;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The rules of a book in two sets.
 *
 * @param kinds some kinds of measure
 * @param over the rules that look at measures of these kinds, themselves or through advice that they build on
 * @param rest the others
 */
public record RuleSplit(Set<MeasureKind> kinds, RuleSet over, RuleSet rest) {

    /**
     * Some rules.
     *
     * @param rules the rules
     * @param joining those of them that look at several measures at once
     * @param ids their ids
     * @param kinds what any of them matches
     * @param practice the practice values that any of them matches
     * @param earlier ids of the advice that any of them builds on
     */
    public record RuleSet(
            List<EffectiveRule> rules,
            List<EffectiveRule> joining,
            Set<String> ids,
            Set<MeasureKind> kinds,
            Set<Practice> practice,
            Set<String> earlier) {

        private static RuleSet of(List<EffectiveRule> rules, Map<String, MeasureKind> byName) {
            Set<String> ids = new HashSet<>();
            Set<MeasureKind> kinds = Collections.newSetFromMap(new IdentityHashMap<>());
            Set<Practice> practice = new LinkedHashSet<>();
            Set<String> earlier = new HashSet<>();
            for (EffectiveRule rule : rules) {
                ids.add(rule.id());
                rule.text().measures().forEach(name -> kinds.add(byName.get(name)));
                practice.addAll(rule.values());
                earlier.addAll(rule.text().earlier());
            }
            return new RuleSet(
                    rules,
                    rules.stream().filter(rule -> rule.joined().size() > 1).toList(),
                    ids,
                    kinds,
                    practice,
                    earlier);
        }

        /** Of some measures those that any of these rules looks at: the engine takes as long over the others. */
        public List<Measure> among(List<Measure> all) {
            List<Measure> among = new ArrayList<>();
            for (Measure each : all) {
                if (kinds.contains(each.kind())) {
                    among.add(each);
                }
            }
            return among;
        }
    }

    /** Whether all of these measures are of its kinds. */
    boolean covers(List<List<Measure>> all) {
        for (List<Measure> measures : all) {
            for (Measure each : measures) {
                if (!kinds.contains(each.kind())) {
                    return false;
                }
            }
        }
        return true;
    }

    static RuleSplit of(List<EffectiveRule> rules, Map<String, MeasureKind> byName, Set<MeasureKind> kinds) {
        Set<String> over = new HashSet<>();
        for (int before = -1; before < over.size(); ) {
            before = over.size();
            for (EffectiveRule rule : rules) {
                if (rule.text().measures().stream().anyMatch(name -> kinds.contains(byName.get(name)))
                        || rule.text().earlier().stream().anyMatch(over::contains)) {
                    over.add(rule.id());
                }
            }
        }
        return new RuleSplit(
                kinds,
                RuleSet.of(
                        rules.stream().filter(rule -> over.contains(rule.id())).toList(), byName),
                RuleSet.of(
                        rules.stream().filter(rule -> !over.contains(rule.id())).toList(), byName));
    }
}
