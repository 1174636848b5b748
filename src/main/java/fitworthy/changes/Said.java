package fitworthy.changes;

import fitworthy.changes.BookChange.Field;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.QuantityText;
import fitworthy.schema.RecordSchema;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What a record of the book says, field by field, as two of them are compared. How it is laid out in its file makes no
 * difference: blanks and the ends of lines count once, and lists of names stand in the order of the alphabet.
 */
final class Said {

    /** The one list of names whose first is another thing than those after it. */
    private static final String ORDERED = "about";

    /** What tells one group of a list from another where there is such a field; else its number does. */
    private static final String REGION = "region";

    /** Durations are told in days. */
    private static final String DAYS = "days";

    private Said() {}

    /** Every field that says something, those of groups by their names one after the other. */
    static Map<String, String> by(Record record) {
        Map<String, String> said = new TreeMap<>();
        add(said, "", record);
        return said;
    }

    private static void add(Map<String, String> said, String before, Record record) {
        RecordSchema.of(record.getClass())
                .fields()
                .forEach(field -> add(said, before + field.name(), field.in(record)));
    }

    private static void add(Map<String, String> said, String name, Object value) {
        if (value instanceof Choice<?> choice) {
            add(said, name, choice.known() ? Words.hyphenated(choice.value().name()) : "");
        } else if (value instanceof Figure figure) {
            add(said, name, figure.known() ? QuantityText.shown(figure.value(), DAYS) : "");
        } else if (value instanceof Record group) {
            add(said, name + " ", group);
        } else if (value instanceof List<?> list && list.stream().allMatch(Record.class::isInstance)) {
            for (int i = 0; i < list.size(); i++) {
                Record group = (Record) list.get(i);
                add(said, name + " " + by(group).getOrDefault(REGION, Integer.toString(i + 1)) + " ", group);
            }
        } else if (value instanceof List<?> list) {
            add(said, name, names(list, name.equals(ORDERED)));
        } else if (value != null) {
            String text = value.toString().strip().replaceAll("\\s+", " ");
            if (!text.isEmpty()) {
                said.put(name, text);
            }
        }
    }

    private static String names(List<?> list, boolean ordered) {
        List<String> names = new ArrayList<>(list.stream().map(Object::toString).toList());
        if (!ordered) {
            names.sort(null);
        }
        return String.join(", ", names);
    }

    /** What is otherwise, by name. */
    static List<Field> differing(Map<String, String> before, Map<String, String> after) {
        Set<String> names = new LinkedHashSet<>(after.keySet());
        names.addAll(before.keySet());
        return names.stream()
                .filter(name -> !Objects.equals(before.get(name), after.get(name)))
                .map(name -> new Field(name, before.get(name), after.get(name)))
                .collect(Collectors.toList());
    }
}
