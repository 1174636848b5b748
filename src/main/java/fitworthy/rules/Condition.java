package fitworthy.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** When a rule fires. Each prints itself as a rule file writes it. */
public sealed interface Condition {

    /** What it is made of; nothing for a pattern. */
    List<Condition> parts();

    /** Every pattern in it, in the order of writing. */
    default List<Match> patterns() {
        List<Match> patterns = new ArrayList<>();
        addTo(patterns);
        return patterns;
    }

    private void addTo(List<Match> patterns) {
        if (this instanceof Match match) {
            patterns.add(match);
        }
        for (Condition part : parts()) {
            part.addTo(patterns);
        }
    }

    /**
     * How many conditions without 'or' it comes to, which is what the engine makes of it; counted to {@code most} + 1.
     */
    default long alternatives(long most) {
        long number = this instanceof Any ? 0 : 1;
        for (Condition part : parts()) {
            long inner = part.alternatives(most);
            number = Math.min(most + 1, this instanceof Any ? number + inner : number * inner);
        }
        return number;
    }

    /**
     * The patterns whose matches are multiplied: those of the longest alternative, with those of the longest group that
     * stands in it under 'not' or 'exists'. A single pattern there ends at its first match.
     */
    default List<Match> joined() {
        if (this instanceof Match match) {
            return List.of(match);
        }
        if (this instanceof None || this instanceof Some) {
            return List.of();
        }
        if (this instanceof Any) {
            return longest(parts().stream().map(Condition::joined));
        }
        return Stream.concat(
                        parts().stream().flatMap(part -> part.joined().stream()),
                        longest(parts().stream().map(Condition::inGroup)).stream())
                .toList();
    }

    /** The patterns that are multiplied with what stands before them: a group under 'not' or 'exists', else nothing. */
    private static List<Match> inGroup(Condition part) {
        return (part instanceof None || part instanceof Some) && !(part.parts().get(0) instanceof Match)
                ? part.parts().get(0).joined()
                : List.of();
    }

    private static List<Match> longest(Stream<List<Match>> lists) {
        return lists.max(Comparator.comparingInt(List::size)).orElse(List.of());
    }

    /** Every part holds. @param parts two or more, or none where a rule asks for nothing */
    record All(List<Condition> parts) implements Condition {
        @Override
        public String toString() {
            return inside(parts, " and ");
        }
    }

    /** At least one part holds. @param parts two or more */
    record Any(List<Condition> parts) implements Condition {
        @Override
        public String toString() {
            return inside(parts, " or ");
        }
    }

    /** Nothing matches. */
    record None(Condition part) implements Condition {
        @Override
        public List<Condition> parts() {
            return List.of(part);
        }

        @Override
        public String toString() {
            return part instanceof Match ? "not " + part : "not (" + part + ")";
        }
    }

    /** Something matches. */
    record Some(Condition part) implements Condition {
        @Override
        public List<Condition> parts() {
            return List.of(part);
        }

        @Override
        public String toString() {
            return part instanceof Match ? "exists " + part : "exists (" + part + ")";
        }
    }

    /**
     * A fact that matches.
     *
     * @param binding the name it is given, such as {@code $load}; null where it has none
     * @param fact what kind of fact
     * @param key which one: the measure's name, the practice value's id or the advice's id
     * @param comparisons what else must hold of it
     */
    record Match(String binding, Fact fact, String key, List<Comparison> comparisons) implements Condition {
        @Override
        public List<Condition> parts() {
            return List.of();
        }

        /** Whether a fact is the one that it names. */
        public boolean means(Object other) {
            return fact.isKindOf(other) && key.equals(Property.key(fact).read(other));
        }

        @Override
        public String toString() {
            return (binding == null ? "" : binding + " : ")
                    + fact.word() + "(" + Property.key(fact).word() + " == \"" + key + "\""
                    + comparisons.stream().map(comparison -> ", " + comparison).collect(Collectors.joining()) + ")";
        }
    }

    private static String inside(List<Condition> parts, String joint) {
        return parts.stream()
                .map(part -> part instanceof All || part instanceof Any ? "(" + part + ")" : part.toString())
                .collect(Collectors.joining(joint));
    }
}
