package fitworthy.rules;

import java.util.Comparator;
import java.util.List;

/** The condition of a rule as its file writes it, for explaining what held and what did not. */
public sealed interface Condition {

    /**
     * How many conditions without 'or' it comes to, which is what the engine makes of it; counted to {@code most} + 1.
     */
    default long alternatives(long most) {
        long number = this instanceof Any ? 0 : 1;
        for (Condition part : parts(this)) {
            long inner = part.alternatives(most);
            number = Math.min(most + 1, this instanceof Any ? number + inner : number * inner);
        }
        return number;
    }

    /** The patterns whose matches are multiplied: those outside 'not' and 'exists', of the longest alternative. */
    default List<Match> joined() {
        if (this instanceof Match match) {
            return List.of(match);
        }
        if (this instanceof Any any) {
            return any.parts().stream()
                    .map(Condition::joined)
                    .max(Comparator.comparingInt(List::size))
                    .orElse(List.of());
        }
        return this instanceof All all
                ? all.parts().stream().flatMap(each -> each.joined().stream()).toList()
                : List.of();
    }

    /** What it is made of; nothing for a pattern. */
    static List<Condition> parts(Condition condition) {
        return condition instanceof All all
                ? all.parts()
                : condition instanceof Any any
                        ? any.parts()
                        : condition instanceof None none
                                ? List.of(none.part())
                                : condition instanceof Some some ? List.of(some.part()) : List.of();
    }

    /** Every part holds. */
    record All(List<Condition> parts) implements Condition {}

    /** At least one part holds. */
    record Any(List<Condition> parts) implements Condition {}

    /** Nothing matches. */
    record None(Condition part) implements Condition {}

    /** Something matches. */
    record Some(Condition part) implements Condition {}

    /**
     * A fact that matches.
     *
     * @param binding the name it is given, such as {@code $load}; null where it has none
     * @param fact Measure, Practice or Advised
     * @param key which one: the measure's name, the practice value's id or the advice's id
     * @param comparisons what must hold of it, each as written
     */
    record Match(String binding, String fact, String key, List<String> comparisons) implements Condition {}
}
