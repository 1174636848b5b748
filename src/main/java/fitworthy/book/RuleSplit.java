package fitworthy.book;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.MeasureKind.Scope;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The rules of a book in two sets.
 *
 * @param byPlan the rules that look at nothing that the loading changes
 * @param byLoading those that do, themselves or through advice that they build on
 */
public record RuleSplit(RuleSet byPlan, RuleSet byLoading) {

    /**
     * Some rules.
     *
     * @param rules the rules
     * @param joining those of them that look at several measures at once
     * @param building those of them that build on advice of others
     * @param places their ids, each with its place among them
     * @param kinds what any of them matches
     * @param practice the practice values that any of them matches
     * @param earlier ids of the advice that any of them builds on
     * @param byKind of each kind of measure the rules that may come out otherwise where it does; left out of those that
     *     are {@link #touched}
     */
    public record RuleSet(
            List<EffectiveRule> rules,
            List<EffectiveRule> joining,
            List<EffectiveRule> building,
            Map<String, Integer> places,
            Set<MeasureKind> kinds,
            Set<Practice> practice,
            Set<String> earlier,
            Map<MeasureKind, List<EffectiveRule>> byKind) {

        /** No rules. */
        public static final RuleSet NONE = of(List.of(), Map.of());

        private static RuleSet of(List<EffectiveRule> rules) {
            Map<MeasureKind, List<EffectiveRule>> byKind = new IdentityHashMap<>();
            rules.forEach(rule -> rule.looksAt().distinct().forEach(kind -> byKind.computeIfAbsent(
                            kind, none -> new ArrayList<>())
                    .add(rule)));
            return of(rules, byKind);
        }

        private static RuleSet of(List<EffectiveRule> rules, Map<MeasureKind, List<EffectiveRule>> byKind) {
            Map<String, Integer> places = new HashMap<>();
            Set<MeasureKind> kinds = Collections.newSetFromMap(new IdentityHashMap<>());
            Set<Practice> practice = new LinkedHashSet<>();
            Set<String> earlier = new HashSet<>();
            for (EffectiveRule rule : rules) {
                places.put(rule.id(), places.size());
                kinds.addAll(rule.matched());
                practice.addAll(rule.values());
                earlier.addAll(rule.text().earlier());
            }
            return new RuleSet(
                    rules,
                    rules.stream().filter(rule -> rule.joined().size() > 1).toList(),
                    thoseBuilding(rules),
                    places,
                    kinds,
                    practice,
                    earlier,
                    byKind);
        }

        /** Of some measures those that what becomes of any of these rules may hang on. */
        public List<Measure> lookedAt(List<Measure> all) {
            return all.stream().filter(measure -> looksAt(measure.kind())).toList();
        }

        /** Whether what becomes of any of these rules may hang on measures of a kind. */
        public boolean looksAt(MeasureKind kind) {
            return byKind.containsKey(kind);
        }

        public Set<String> ids() {
            return places.keySet();
        }

        /**
         * Those of them that may come out otherwise.
         *
         * @param changed the kinds of measure that came out otherwise
         * @param advice ids of rules before these that may have
         */
        public RuleSet touched(Set<MeasureKind> changed, Set<String> advice) {
            Set<String> touched = new HashSet<>();
            for (MeasureKind kind : changed) {
                byKind.getOrDefault(kind, List.of()).forEach(rule -> touched.add(rule.id()));
            }
            touched.addAll(advice);
            addBuilding(building, touched);
            return of(rules.stream().filter(rule -> touched.contains(rule.id())).toList(), Map.of());
        }

        /** Of some measures those that any of these rules looks at: the engine takes as long over the others. */
        public List<Measure> among(List<Measure> all) {
            List<Measure> among = new ArrayList<>();
            for (Measure measure : all) {
                if (kinds.contains(measure.kind())) {
                    among.add(measure);
                }
            }
            return among;
        }
    }

    static RuleSplit of(List<EffectiveRule> rules) {
        Set<String> byLoading = new HashSet<>();
        rules.stream()
                .filter(rule -> rule.matched().stream().anyMatch(kind -> kind.scope() == Scope.LOADING))
                .forEach(rule -> byLoading.add(rule.id()));
        addBuilding(thoseBuilding(rules), byLoading);
        Map<Boolean, List<EffectiveRule>> split =
                rules.stream().collect(Collectors.partitioningBy(rule -> byLoading.contains(rule.id())));
        return new RuleSplit(RuleSet.of(split.get(false)), RuleSet.of(split.get(true)));
    }

    private static List<EffectiveRule> thoseBuilding(List<EffectiveRule> rules) {
        return rules.stream().filter(rule -> !rule.text().earlier().isEmpty()).toList();
    }

    /** Adds to some ids those of the rules that build on their advice, and of those that build on that. */
    private static void addBuilding(List<EffectiveRule> rules, Set<String> ids) {
        for (int before = -1; before < ids.size(); ) {
            before = ids.size();
            rules.stream()
                    .filter(rule -> rule.text().earlier().stream().anyMatch(ids::contains))
                    .forEach(rule -> ids.add(rule.id()));
        }
    }
}
