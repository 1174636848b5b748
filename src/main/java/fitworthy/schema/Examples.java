package fitworthy.schema;

import fitworthy.quantity.Dimension;
import fitworthy.quantity.Mark;
import fitworthy.source.Node;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * Fields as a sheet would write them, for messages. Within a group they are those of its kind or of the place where it
 * stands, where these have some: a bar sits elsewhere than a tow bar.
 */
final class Examples {

    /** Examples by field that fit the group being read better than what its fields say of themselves. */
    private Map<String, String> fitting = Map.of();

    private final Function<Node.Mapping, Map<String, String>> ofGroup;
    /** The groups that are being read, the innermost first. */
    private final Deque<Node.Mapping> reading = new ArrayDeque<>();

    /** @param ofGroup examples by field for a group and all below it; asked only when there is something to tell */
    Examples(Function<Node.Mapping, Map<String, String>> ofGroup) {
        this.ofGroup = ofGroup;
    }

    /** What is read of a group. */
    <T> T below(Node.Mapping group, Supplier<T> read) {
        reading.push(group);
        try {
            return read.get();
        } finally {
            reading.pop();
        }
    }

    /** What is read of a group that has such examples. */
    <T> T within(Map<String, String> examples, Supplier<T> read) {
        Map<String, String> before = fitting;
        fitting = examples;
        try {
            return read.get();
        } finally {
            fitting = before;
        }
    }

    /** The examples of the fields of a group, as the example of the group has them. */
    Map<String, String> inside(FieldSchema group) {
        String example = text(group);
        return example.isEmpty()
                ? Map.of()
                : Arrays.stream(example.split(", "))
                        .map(field -> field.split(": ", 2))
                        .collect(Collectors.toMap(field -> field[0], field -> field[1]));
    }

    /** A field with its name. */
    String of(FieldSchema field) {
        return field.name() + ": "
                + switch (field.content()) {
                    case GROUP -> "{" + (text(field).isEmpty() ? beginning(field.type()) : text(field)) + "}";
                    case GROUPS -> "with a line '- {" + beginning(field.type()) + "}' for each";
                    case TEXTS -> field.example().isEmpty() ? "with a line '- name' for each" : field.example();
                    case FIGURES -> "{Main tank: " + field.example() + "}";
                    case CHOICE -> String.join(" or ", ChoiceWords.offered(field.type()));
                    default -> text(field);
                };
    }

    /** The fields that may stand below a group. */
    String below(FieldSchema group) {
        return "fields below it, such as '" + (text(group).isEmpty() ? beginning(group.type()) : text(group)) + "'";
    }

    /** The same where something else than a value of it stands; who does not know it leaves it out. */
    String of(FieldSchema field, Node written) {
        return leftOut(field, written, of(field));
    }

    /** The same in other words. */
    String leftOut(FieldSchema field, Node written, String right) {
        return written instanceof Node.Scalar word
                        && Mark.isAsked(word.text())
                        && !field.description().needed()
                ? "leave it out until it is known, then " + right
                : right;
    }

    /** The same for a figure, with the units it may be written in. */
    String withUnits(FieldSchema field) {
        Dimension dimension = field.description().in();
        List<String> units = dimension.units().keySet().stream()
                .filter(unit -> !unit.isEmpty())
                .toList();
        return of(field) + (units.size() < 2 ? "" : " (units: " + String.join(", ", units) + ")");
    }

    private String text(FieldSchema field) {
        return Optional.ofNullable(fitting.get(field.name()))
                .or(() -> reading.stream()
                        .map(group -> ofGroup.apply(group).get(field.name()))
                        .filter(Objects::nonNull)
                        .findFirst())
                .orElseGet(field::example);
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
