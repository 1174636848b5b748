package fitworthy.schema;

import fitworthy.quantity.Figure;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;

/**
 * A figure or a day that a sheet gives and that something is decided by.
 *
 * @param path where it stands, by the names of what holds it
 * @param field its field
 * @param value a {@link Figure} or a {@link LocalDate}
 */
public record Given(String path, FieldSchema field, Object value) {

    /** What stands on the way to a figure; its words are put together only for what is given out. */
    private record Way(Way before, String step, Record group, int position) {

        static String to(Way way, String last) {
            if (way == null) {
                return last;
            }
            String step = way.group == null ? way.step : way.step + "." + name(way.group, way.position);
            return to(way.before, last.isEmpty() ? step : step + "." + last);
        }
    }

    /**
     * Of all that a record and what it holds give what is asked for, in the order of the fields.
     *
     * @param asked told the field and the value
     */
    public static List<Given> in(Record record, BiPredicate<FieldSchema, Object> asked) {
        List<Given> given = new ArrayList<>();
        collect(record, null, List.of(), asked, given);
        return given;
    }

    private static void collect(
            Record record, Way way, List<String> idle, BiPredicate<FieldSchema, Object> asked, List<Given> given) {
        for (FieldSchema field : RecordSchema.of(record.getClass()).fields()) {
            if (field.content().isWords() || field.content() == FieldSchema.Content.CHOICE) {
                continue;
            }
            Object held = idle.contains(field.name()) ? null : field.in(record);
            if (held == null || held instanceof Figure figure && !figure.known()) {
                continue;
            }
            if (held instanceof LocalDate || held instanceof Figure) {
                if (asked.test(field, held)) {
                    given.add(new Given(Way.to(way, field.name()), field, held));
                }
            } else if (held instanceof Map<?, ?> figures) {
                figures.forEach((name, figure) -> {
                    if (asked.test(field, figure)) {
                        given.add(new Given(Way.to(way, field.name() + "." + name), field, figure));
                    }
                });
            } else if (held instanceof Record group && field.content() == FieldSchema.Content.GROUP) {
                Way inner = new Way(way, field.name(), null, 0);
                collect(group, inner, field.description().idle(), asked, given);
            } else if (held instanceof Record ofKind && field.content() == FieldSchema.Content.FIELDS_OF_KIND) {
                collect(ofKind, way, List.of(), asked, given);
            } else if (held instanceof List<?> groups && field.content() == FieldSchema.Content.GROUPS) {
                for (int i = 1; i <= groups.size(); i++) {
                    Record group = (Record) groups.get(i - 1);
                    collect(group, new Way(way, field.name(), group, i), List.of(), asked, given);
                }
            }
        }
    }

    /** What an item of a list is called: its name, or where it stands. */
    static String name(Record group, int position) {
        return RecordSchema.of(group.getClass()).fields().stream()
                .filter(field -> field.name().equals("name"))
                .map(field -> (String) field.in(group))
                .filter(name -> !name.isEmpty())
                .findFirst()
                .orElse(String.valueOf(position));
    }
}
