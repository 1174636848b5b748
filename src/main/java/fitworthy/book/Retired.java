package fitworthy.book;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * That a rule is checked no more from a day on: it has ended itself, or a practice value that it compares with has.
 *
 * @param what the id of what has ended
 * @param day the first day on which the check is not made
 */
public record Retired(String what, LocalDate day) {

    /** What ends first of a rule and its practice values; nothing where none of them ends. */
    static Optional<Retired> of(String rule, Card card, Map<String, DatedLimit> practice) {
        return Stream.concat(
                        Stream.ofNullable(card.ends()).map(day -> new Retired(rule, day)),
                        card.values().stream()
                                .filter(practice::containsKey)
                                .flatMap(value -> of(value, practice.get(value)).stream()))
                .min(Comparator.comparing(Retired::day));
    }

    /** The end of a practice value, where it has one. */
    static Optional<Retired> of(String id, DatedLimit value) {
        return Optional.ofNullable(value.ends()).map(day -> new Retired(id, day));
    }

    /** Whether that is so on a day. */
    public boolean on(LocalDate other) {
        return !day.isAfter(other);
    }

    /** It as it is said of a rule from that day on. */
    public String words(String rule) {
        return "the rule " + rule + " was retired on " + day
                + (what.equals(rule) ? "" : " with the practice value " + what);
    }
}
