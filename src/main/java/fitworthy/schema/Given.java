package fitworthy.schema;

import fitworthy.quantity.Figure;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A figure or a day that a sheet gives and that something is decided by.
 *
 * @param path where it stands, by the names of what holds it
 * @param field its field
 * @param value a {@link Figure} or a {@link LocalDate}
 */
public record Given(String path, FieldSchema field, Object value) {

    /** All that a record and what it holds give, in the order of the fields. */
    public static List<Given> in(Record record) {
        List<Given> given = new ArrayList<>();
        collect(record, "", Set.of(), given);
        return given;
    }

    private static void collect(Record record, String path, Set<String> idle, List<Given> given) {
        for (FieldSchema field : RecordSchema.of(record.getClass()).fields()) {
            if (field.content().isWords() || field.content() == FieldSchema.Content.CHOICE) {
                continue;
            }
            Object held = idle.contains(field.name()) ? null : field.in(record);
            if (held == null || held instanceof Figure figure && !figure.known()) {
                continue;
            }
            String inner = path.isEmpty() ? field.name() : path + "." + field.name();
            if (held instanceof LocalDate || held instanceof Figure) {
                given.add(new Given(inner, field, held));
            } else if (held instanceof Map<?, ?> figures) {
                figures.forEach((name, figure) -> given.add(new Given(inner + "." + name, field, figure)));
            } else if (held instanceof Record group && field.content() == FieldSchema.Content.GROUP) {
                collect(group, inner, Set.of(field.description().idle()), given);
            } else if (held instanceof Record ofKind && field.content() == FieldSchema.Content.FIELDS_OF_KIND) {
                collect(ofKind, path, Set.of(), given);
            } else if (held instanceof List<?> groups && field.content() == FieldSchema.Content.GROUPS) {
                for (int i = 1; i <= groups.size(); i++) {
                    Record group = (Record) groups.get(i - 1);
                    collect(group, inner + "." + name(group, i), Set.of(), given);
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
