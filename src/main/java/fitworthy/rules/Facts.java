package fitworthy.rules;

import fitworthy.figures.measure.Measure;
import fitworthy.rules.Condition.Match;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Facts that a condition can be held against without the engine, which says what fires and not what kept a rule from
 * it. Over every case of the book a test holds the two against each other.
 */
public final class Facts {

    private final Map<Fact, Map<String, List<Object>>> byKey = new EnumMap<>(Fact.class);

    /** Stands for a practice value that is not recorded, and for advice that may yet be given. */
    private static final Object OPEN = new Object();

    /** How what is not known is taken. */
    private enum Taking {
        /** As it is: what a rule compares it asks to be known first. */
        AS_IT_IS,
        /** As whatever would make the condition hold. */
        FOR_IT,
        /** As whatever would keep it from holding. */
        AGAINST_IT;

        Taking within(Condition.None none) {
            return this == AS_IT_IS ? this : this == FOR_IT ? AGAINST_IT : FOR_IT;
        }
    }

    /** What is still to be matched. */
    private record Rest(Condition first, Rest next) {}

    public Facts(List<?> facts) {
        for (Fact fact : Fact.values()) {
            Map<String, List<Object>> ofKind = new HashMap<>();
            for (Object each : facts) {
                if (fact.isKindOf(each)) {
                    ofKind.computeIfAbsent((String) Property.key(fact).read(each), none -> new ArrayList<>(1))
                            .add(each);
                }
            }
            byKey.put(fact, ofKind);
        }
    }

    /**
     * Whether a condition holds.
     *
     * @param judged the only measure of its name that counts outside 'not' and 'exists'
     */
    public boolean meet(Condition condition, Measure judged) {
        return meet(new Rest(condition, null), judged, Map.of(), Taking.AS_IT_IS);
    }

    /** Whether a condition could hold, whatever that is which is not known; the judged one as for {@link #meet}. */
    boolean couldMeet(Condition condition, Measure judged) {
        return meet(new Rest(condition, null), judged, Map.of(), Taking.FOR_IT);
    }

    private boolean meet(Rest rest, Measure judged, Map<String, Object> bound, Taking taking) {
        if (rest == null) {
            return true;
        }
        Condition first = rest.first();
        if (first instanceof Match match) {
            return match(match, rest.next(), judged, bound, taking);
        }
        if (first instanceof Condition.Any any) {
            for (Condition part : any.parts()) {
                if (meet(new Rest(part, rest.next()), judged, bound, taking)) {
                    return true;
                }
            }
            return false;
        }
        if (first instanceof Condition.All all) {
            Rest parts = rest.next();
            for (int i = all.parts().size() - 1; i >= 0; i--) {
                parts = new Rest(all.parts().get(i), parts);
            }
            return meet(parts, judged, bound, taking);
        }
        Rest inside = new Rest(first.parts().get(0), null);
        boolean holds = first instanceof Condition.None none
                ? !meet(inside, null, bound, taking.within(none))
                : meet(inside, null, bound, taking);
        return holds && meet(rest.next(), judged, bound, taking);
    }

    private boolean match(Match match, Rest next, Measure judged, Map<String, Object> bound, Taking taking) {
        for (Object candidate : candidates(match, judged, taking)) {
            if (hold(match.comparisons(), candidate, bound, taking)) {
                Map<String, Object> more = match.binding() == null ? bound : new HashMap<>(bound);
                if (match.binding() != null) {
                    more.put(match.binding(), candidate);
                }
                if (meet(next, judged, more, taking)) {
                    return true;
                }
            }
        }
        return false;
    }

    private List<Object> candidates(Match match, Measure judged, Taking taking) {
        if (judged != null && match.means(judged)) {
            return List.of(judged);
        }
        List<Object> there = byKey.get(match.fact()).getOrDefault(match.key(), List.of());
        boolean more = taking == Taking.FOR_IT
                && (match.fact() == Fact.ADVISED || match.fact() == Fact.PRACTICE && there.isEmpty());
        return more ? Stream.concat(there.stream(), Stream.of(OPEN)).toList() : there;
    }

    private static boolean hold(List<Comparison> comparisons, Object fact, Map<String, Object> bound, Taking taking) {
        for (Comparison comparison : comparisons) {
            if (!holds(comparison, fact, bound, taking)) {
                return false;
            }
        }
        return true;
    }

    private static boolean holds(Comparison comparison, Object fact, Map<String, Object> bound, Taking taking) {
        boolean open = taking != Taking.AS_IT_IS
                && comparison
                        .named()
                        .anyMatch(named ->
                                isOpen(named.binding() == null ? fact : bound.get(named.binding()), named.property()));
        return open ? taking == Taking.FOR_IT : comparison.holds(fact, bound);
    }

    /** Of a measure that is not known, or only by the least that it can be, its name and its subject are. */
    private static boolean isOpen(Object fact, Property property) {
        return fact == OPEN
                || fact instanceof Measure measure
                        && (!measure.isKnown() || measure.isAtLeast())
                        && property != Property.NAME
                        && property != Property.SUBJECT;
    }
}
