package fitworthy.schema;

import fitworthy.quantity.Dimension;
import java.util.List;
import java.util.stream.Collectors;

/** Fields as a sheet would write them, for messages. */
final class Examples {

    private Examples() {}

    /** A field with its name. */
    static String of(FieldSchema field) {
        return field.name() + ": "
                + switch (field.content()) {
                    case GROUP -> "{" + beginning(field.type()) + "}";
                    case GROUPS -> "with a line '- {" + beginning(field.type()) + "}' for each";
                    case TEXTS -> field.example().isEmpty() ? "with a line '- name' for each" : field.example();
                    case FIGURES -> "{Main tank: " + field.example() + "}";
                    default -> field.example();
                };
    }

    /** The same for a figure, with the units it may be written in. */
    static String withUnits(FieldSchema field) {
        Dimension dimension = field.description().in();
        List<String> units = dimension.units().keySet().stream()
                .filter(unit -> !unit.isEmpty())
                .toList();
        return of(field) + (units.size() < 2 ? "" : " (units: " + String.join(", ", units) + ")");
    }

    /** The first two fields of a record. */
    static String beginning(Class<?> record) {
        return RecordSchema.of(record.asSubclass(Record.class)).fields().stream()
                .filter(field -> field.description() != null)
                .limit(2)
                .map(field -> field.name() + ": " + field.example())
                .collect(Collectors.joining(", "));
    }
}
