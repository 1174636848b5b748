package fitworthy.book;

import java.util.List;

/** The condition of a rule as its file writes it, for explaining what held and what did not. */
public sealed interface Condition {

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
