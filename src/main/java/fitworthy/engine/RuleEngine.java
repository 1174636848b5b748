package fitworthy.engine;

import fitworthy.book.Book;
import fitworthy.book.House;
import fitworthy.book.Practice;
import fitworthy.book.RuleSplit.RuleSet;
import fitworthy.figures.measure.Measure;
import fitworthy.rules.Advised;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BinaryOperator;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.KieSessionsPool;

/**
 * A rule book with its rules ready to run.
 *
 * @param book the book
 * @param sessions sessions over its compiled rules
 */
public record RuleEngine(Book book, KieSessionsPool sessions) {

    /**
     * A rule that fired.
     *
     * @param id the rule
     * @param judged the measure that its card judges
     * @param measures the measures of its evidence, in the order in which the rule gives them
     * @param practice the practice values of its evidence
     */
    public record Fired(String id, Measure judged, List<Measure> measures, List<Practice> practice) {

        /** What one firing is known by: the same rule on the same thing in the same loading says the same again. */
        public record Key(String rule, String subject, String loadCase) {

            public static Key of(String rule, Measure judged) {
                return new Key(rule, judged.getSubject(), judged.getLoadCase());
            }
        }
    }

    /** The same rules over the book with what a house sets over it. */
    public RuleEngine with(House house) {
        return new RuleEngine(book.with(house), sessions);
    }

    /** The same book without some of its rules. */
    public RuleEngine without(Set<String> ids) {
        return ids.isEmpty() ? this : new RuleEngine(book.without(ids), sessions);
    }

    /**
     * Runs some rules over some facts until none has anything more to say.
     *
     * @param measures every measure that these rules look at
     * @param earlier advice that other rules gave before; what none of these builds on is passed over
     * @return each rule and what it judges once, by rule and then by the order of the measures that it rests on; of
     *     several matches for one thing the first in that order
     * @throws BudgetExceeded where a rule does not come to rest within the bounds
     */
    public List<Fired> fire(RuleSet rules, List<Measure> measures, List<Advised> earlier, Budget.Bounds bounds) {
        if (rules.ids().isEmpty()) {
            return List.of();
        }
        Budget budget = new Budget(bounds);
        budget.combinations(rules.joining(), measures);
        Map<Measure, Integer> positions = new IdentityHashMap<>(measures.size());
        measures.forEach(measure -> positions.put(measure, positions.size()));
        Map<Fired.Key, Placed> fired = new HashMap<>();
        KieSession session = sessions.newKieSession();
        try {
            session.setGlobal("advice", (RuleAction) (id, evidence) -> {
                Fired given = fired(id, evidence);
                Fired.Key key = Fired.Key.of(id, given.judged());
                if (!fired.containsKey(key)) {
                    session.insert(new Advised(id, given.judged().getSubject()));
                }
                fired.merge(key, Placed.of(given, positions), BinaryOperator.minBy(Placed.IN_PLAN_ORDER));
            });
            rules.practice().forEach(session::insert);
            measures.forEach(session::insert);
            earlier.stream()
                    .filter(advised -> rules.earlier().contains(advised.id()))
                    .forEach(session::insert);
            session.fireAllRules(match -> rules.ids().contains(match.getRule().getName()) && budget.accept(match));
        } finally {
            session.dispose();
        }
        budget.check(book);
        return fired.values().stream()
                .sorted(Placed.IN_PLAN_ORDER)
                .map(Placed::fired)
                .toList();
    }

    /** What fired, with the places of its measures: the engine's own order hangs on how it has laid out its network. */
    private record Placed(Fired fired, int[] places) {

        static final Comparator<Placed> IN_PLAN_ORDER = Comparator.comparing((Placed placed) -> placed.fired.id())
                .thenComparing(Placed::places, Arrays::compare);

        static Placed of(Fired fired, Map<Measure, Integer> positions) {
            int[] places = new int[fired.measures().size()];
            for (int i = 0; i < places.length; i++) {
                places[i] = positions.get(fired.measures().get(i));
            }
            return new Placed(fired, places);
        }
    }

    private Fired fired(String id, Object[] evidence) {
        List<Measure> measures = new ArrayList<>();
        List<Practice> practice = new ArrayList<>();
        for (Object fact : evidence) {
            if (fact instanceof Measure measure) {
                measures.add(measure);
            } else if (fact instanceof Practice value) {
                practice.add(value);
            }
        }
        String judges = book.cards().get(id).judges();
        Measure judged = measures.stream()
                .filter(measure -> measure.getName().equals(judges))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(id + " fired without the measure it judges"));
        return new Fired(id, judged, measures, practice);
    }
}
