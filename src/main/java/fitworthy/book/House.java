package fitworthy.book;

import fitworthy.quantity.Choice;
import fitworthy.rules.Stricter;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a house sets for itself over a rule book. The book's own values and severities stay as they are; each use of one
 * of the house's carries what it stands in place of.
 *
 * @param page what the file says
 * @param file its name
 * @param content a digest of its text
 * @param stricter by practice value, which way is stricter
 * @param severities by rule, the severities that differ from the book's
 * @param renamed former ids that the file names, each with the present one, which stands in the page
 */
public record House(
        Page page,
        String file,
        String content,
        Map<String, Stricter> stricter,
        Map<String, SetSeverity> severities,
        Map<String, String> renamed) {

    /** A book as it stands. */
    public static final House NONE =
            new House(new Page("", List.of(), List.of()), "", "", Map.of(), Map.of(), Map.of());

    /** What the file says. */
    public record Page(
            @Field(value = "the shop that sets it", needed = true, example = "Saltbush Fit-out") String shop,
            @Field("practice values in place of the book's") List<Value> values,
            @Field("severities in place of the book's") List<Rating> severities) {}

    /** One value. It holds in its region and those below it, from its first day until the house's next one there. */
    public record Value(
            @Field(value = "the id of the practice value", needed = true, example = "mass.side-most") String practice,
            @Field(value = "a region of the rule book", needed = true, example = "au") String region,
            @Field(
                            value = "the first day on which it holds",
                            within = Plausible.DAY,
                            needed = true,
                            example = "2026-07-01")
                    LocalDate from,
            @Field(value = "the value with its unit", needed = true, example = "5 %") String value,
            @Field(value = "why the shop may be looser than the book", example = "Our weighbridge reads each wheel.")
                    String reason,
            @Field(value = "who stands for a looser value", example = "Workshop manager") String name) {}

    /** The severity of one rule. */
    public record Rating(
            @Field(value = "the id of the rule", needed = true, example = "mass.gvm-tight") String rule,
            @Field(value = "how much its finding asks for", needed = true) Choice<Severity> severity,
            @Field(value = "why the shop may be milder than the book", example = "Every vehicle of ours is weighed.")
                    String reason,
            @Field(value = "who stands for a milder severity", example = "Workshop manager") String name) {}

    /** A severity of the house's. */
    public record SetSeverity(Rating set, Severity recorded) {

        public boolean milder() {
            return set.severity().value().compareTo(recorded) > 0;
        }
    }

    public boolean isNone() {
        return this == NONE;
    }

    /** What a looser value or milder severity rests on, in a sentence. */
    public static String onWhoseWord(String reason, String name) {
        String ended = reason.strip();
        return ended + (ended.matches(".*[.!?]") ? "" : ".") + " (" + name.strip() + ")";
    }

    /** The value the house sets, nearest region first; nothing where it sets none there or it has not begun. */
    Optional<Value> value(String id, List<String> lineage, LocalDate day) {
        for (String region : lineage) {
            Optional<Value> value = page.values().stream()
                    .filter(set -> set.practice().equals(id)
                            && set.region().equals(region)
                            && !set.from().isAfter(day))
                    .max(Comparator.comparing(Value::from));
            if (value.isPresent()) {
                return value;
            }
        }
        return Optional.empty();
    }
}
