package fitworthy.rules;

import fitworthy.figures.measure.Measure;
import fitworthy.rules.Condition.Match;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Facts that a condition can be held against without the engine, which says what fires and not what kept a rule from
 * it. Over every case of the book a test holds the two against each other.
 */
public final class Facts {

    private final Map<String, List<Object>> byKey = new HashMap<>();

    /** What is still to be matched. */
    private record Rest(Condition first, Rest next) {}

    public Facts(List<?> facts) {
        for (Object each : facts) {
            for (Fact fact : Fact.values()) {
                if (fact.isKindOf(each)) {
                    byKey.computeIfAbsent(key(fact, (String) Property.key(fact).read(each)), none -> new ArrayList<>())
                            .add(each);
                }
            }
        }
    }

    private static String key(Fact fact, String key) {
        return fact.word() + " " + key;
    }

    /**
     * Whether a condition holds.
     *
     * @param judged the only measure of its name that counts outside 'not' and 'exists'
     */
    public boolean meet(Condition condition, Measure judged) {
        return meet(new Rest(condition, null), judged, new HashMap<>());
    }

    private boolean meet(Rest rest, Measure judged, Map<String, Object> bound) {
        if (rest == null) {
            return true;
        }
        Condition first = rest.first();
        if (first instanceof Match match) {
            return match(match, rest.next(), judged, bound);
        }
        if (first instanceof Condition.Any any) {
            return any.parts().stream().anyMatch(part -> meet(new Rest(part, rest.next()), judged, bound));
        }
        if (first instanceof Condition.All all) {
            Rest parts = rest.next();
            for (int i = all.parts().size() - 1; i >= 0; i--) {
                parts = new Rest(all.parts().get(i), parts);
            }
            return meet(parts, judged, bound);
        }
        boolean some = meet(new Rest(first.parts().get(0), null), null, bound);
        return some == first instanceof Condition.Some && meet(rest.next(), judged, bound);
    }

    private boolean match(Match match, Rest next, Measure judged, Map<String, Object> bound) {
        List<?> candidates = judged != null && match.means(judged)
                ? List.of(judged)
                : byKey.getOrDefault(key(match.fact(), match.key()), List.of());
        for (Object candidate : candidates) {
            if (match.comparisons().stream().allMatch(comparison -> comparison.holds(candidate, bound))) {
                Map<String, Object> more = match.binding() == null ? bound : new HashMap<>(bound);
                if (match.binding() != null) {
                    more.put(match.binding(), candidate);
                }
                if (meet(next, judged, more)) {
                    return true;
                }
            }
        }
        return false;
    }
}
