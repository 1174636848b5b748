package fitworthy.book;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.MeasureKind.Scope;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
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

    private static final BitSet NO_RULE = new BitSet();

    /**
     * Some rules.
     *
     * @param rules the rules
     * @param joining those of them that look at several measures at once
     * @param places their ids, each with its place among them
     * @param kinds what any of them matches
     * @param practice the practice values that any of them matches
     * @param earlier ids of the advice that any of them builds on
     * @param byKind of each kind of measure the places of the rules that may come out otherwise where it does; left out of
     *     those that are {@link #touched}, like the next
     * @param byAdvice the same of each advice that any of them builds on
     */
    public record RuleSet(
            List<EffectiveRule> rules,
            List<EffectiveRule> joining,
            Map<String, Integer> places,
            Set<MeasureKind> kinds,
            Collection<Practice> practice,
            Set<String> earlier,
            Map<MeasureKind, BitSet> byKind,
            Map<String, BitSet> byAdvice) {

        /** No rules. */
        public static final RuleSet NONE = of(List.of(), Map.of(), Map.of());

        private static RuleSet of(List<EffectiveRule> rules) {
            Map<String, BitSet> byAdvice = byAdvice(rules);
            Map<MeasureKind, BitSet> byKind = new IdentityHashMap<>();
            for (int i = 0; i < rules.size(); i++) {
                BitSet with = new BitSet();
                with.set(i);
                with.or(byAdvice.getOrDefault(rules.get(i).id(), NO_RULE));
                rules.get(i).looksAt().forEach(kind -> byKind.computeIfAbsent(kind, none -> new BitSet())
                        .or(with));
            }
            return of(rules, byKind, byAdvice);
        }

        /** Of each advice that some rules build on their places, and those of the rules that build on these. */
        private static Map<String, BitSet> byAdvice(List<EffectiveRule> rules) {
            List<EffectiveRule> builders = thoseBuilding(rules);
            Map<String, BitSet> byAdvice = new HashMap<>();
            builders.stream()
                    .flatMap(rule -> rule.text().earlier().stream())
                    .distinct()
                    .forEach(id -> {
                        Set<String> ids = new HashSet<>(Set.of(id));
                        addBuilding(builders, ids);
                        BitSet building = new BitSet();
                        for (int i = 0; i < rules.size(); i++) {
                            building.set(
                                    i,
                                    ids.contains(rules.get(i).id())
                                            && !rules.get(i).id().equals(id));
                        }
                        byAdvice.put(id, building);
                    });
            return byAdvice;
        }

        private static RuleSet of(
                List<EffectiveRule> rules, Map<MeasureKind, BitSet> byKind, Map<String, BitSet> byAdvice) {
            Map<String, Integer> places = new HashMap<>();
            Set<MeasureKind> kinds = Collections.newSetFromMap(new IdentityHashMap<>());
            Map<String, Practice> practice = new LinkedHashMap<>();
            Set<String> earlier = new HashSet<>();
            for (EffectiveRule rule : rules) {
                places.put(rule.id(), places.size());
                kinds.addAll(rule.matched());
                rule.values().forEach(value -> practice.put(value.id(), value));
                earlier.addAll(rule.text().earlier());
            }
            return new RuleSet(
                    rules,
                    rules.stream().filter(rule -> rule.joined().size() > 1).toList(),
                    places,
                    kinds,
                    practice.values(),
                    earlier,
                    byKind,
                    byAdvice);
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
            BitSet touched = new BitSet();
            changed.forEach(kind -> touched.or(byKind.getOrDefault(kind, NO_RULE)));
            byAdvice.forEach((id, building) -> {
                if (advice.contains(id)) {
                    touched.or(building);
                }
            });
            return of(touched.stream().mapToObj(rules::get).toList(), Map.of(), Map.of());
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
