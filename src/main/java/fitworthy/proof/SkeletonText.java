package fitworthy.proof;

import fitworthy.book.Unwritten;
import fitworthy.figures.measure.MeasureKind;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The text of a new rule as its topic's files have it.
 *
 * @param id the rule's
 * @param kind the measure it judges
 * @param limit what that is held against
 * @param from the day from which it holds
 */
record SkeletonText(String id, MeasureKind kind, Limit limit, LocalDate from) {

    /** In its card, and once more in its cases, which hold it there. */
    static final String SEVERITY = "severity: note";

    /** On which side of its value a figure is in order, or that the rule asks for an answer in a word. */
    enum Limit {
        AT_MOST("-most", ", value > $own.value", "at-most"),
        AT_LEAST("-least", ", value < $own.value", "at-least"),
        ANSWER("-asked", ", word == \"%s\"", "");

        private final String ending;
        private final String comparison;
        private final String allowed;

        Limit(String ending, String comparison, String allowed) {
            this.ending = ending;
            this.comparison = comparison;
            this.allowed = allowed;
        }

        boolean isNumber() {
            return this != ANSWER;
        }

        /** By how much a figure is worse than a value; negative by how much is left. */
        double beyond(double figure, double value) {
            return this == AT_LEAST ? value - figure : figure - value;
        }
    }

    /**
     * Condition, card and practice value, by file.
     *
     * @param own the topic's folder
     * @param values what holds in each region, in its order
     * @param note what the keeper has to look at in each value
     * @param word the answer that the rule asks for; empty for a number
     */
    Map<Path, String> rule(Path own, Map<String, String> values, String note, String word) {
        Map<Path, String> added = new LinkedHashMap<>();
        added.put(own.resolve(own.getFileName() + ".drl"), condition(word));
        added.put(own.resolve("cards.yaml"), card());
        added.put(own.resolve("practice.yaml"), practice(values, note));
        return added;
    }

    private String practiceId() {
        return id + limit.ending;
    }

    private String condition(String word) {
        return """

                rule "%s"
                when
                    $own : Practice(id == "%s"%s)
                    $judged : Measure(name == "%s"%s)
                then
                    advice.give("%s", $judged, $own);
                end
                """
                .formatted(
                        id,
                        practiceId(),
                        limit.isNumber() ? "" : ", value > 0",
                        kind.name(),
                        limit.comparison.formatted(word),
                        id);
    }

    private String card() {
        String against = limit.isNumber()
                ? "against: " + practiceId() + "\n  allowed: " + limit.allowed
                : "practice: [" + practiceId() + "]";
        return """

                %s:
                  title: %s
                  %s
                  about: [%s]
                  %s
                  met: %s
                  why: To be written.
                  remedy: %s
                  ask:
                    - party: builder
                      what: To be written
                  basis: memory
                  since: %s
                """
                .formatted(
                        id,
                        unwritten(kind.meaning() + ", {subject}"),
                        SEVERITY,
                        kind.name(),
                        against,
                        unwritten(kind.meaning() + " is in order"),
                        unwritten("what to do" + (limit.isNumber() ? ", by {margin} to {limit}" : "")),
                        from);
    }

    private String practice(Map<String, String> values, String note) {
        return """

                %s:
                  unit: "%s"
                  meaning: To be written
                  values:
                    - {region: any, from: 2000-01-01, value: %s, basis: memory}
                %s"""
                .formatted(
                        practiceId(),
                        limit.isNumber() ? kind.unit() : "",
                        // Where a word is not asked for, a no says so; a limit that does not apply is none at all.
                        limit.isNumber() ? "none" : "\"0\"",
                        values.entrySet().stream()
                                .map(value -> "    - {region: " + value.getKey() + ", from: " + from + ", value: "
                                        + value.getValue() + ", basis: memory, note: " + unwritten(note) + "}\n")
                                .collect(Collectors.joining()));
    }

    private static String unwritten(String about) {
        return quoted(Unwritten.WORDS + ": " + about);
    }

    static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
