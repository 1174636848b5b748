package fitworthy.sheet;

import fitworthy.source.Fault;
import fitworthy.source.Node;
import fitworthy.source.Place;
import fitworthy.source.Words;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Turns located nodes into records by their {@link Shape}, collecting every fault instead of stopping at the first. A
 * figure or choice that is left out becomes one that knows what is missing.
 */
public final class Binder {

    private final List<Fault> faults;

    public Binder(List<Fault> faults) {
        this.faults = faults;
    }

    /**
     * Makes a record of a mapping.
     *
     * @return the record; where faults were added its figures may be missing, and it must not be used
     */
    public <R extends Record> R bind(Class<R> type, Node.Mapping mapping) {
        return record(type, mapping, "", "", true);
    }

    private <R extends Record> R record(Class<R> type, Node node, String path, String label, boolean present) {
        Node.Mapping mapping = node instanceof Node.Mapping given ? given : new Node.Mapping(node.place(), Map.of());
        if (present && mapping != node) {
            fault(node, path, "is " + node.described() + " where a group of fields belongs",
                    "fields below it, such as '" + firstFields(type) + "'");
            present = false;
        }
        Shape shape = Shape.of(type);
        Class<? extends Record> details = details(shape, mapping);
        Set<String> names = new LinkedHashSet<>();
        shape.fields().stream().filter(part -> part.field() != null).forEach(part -> names.add(part.name()));
        if (details != null) {
            Shape.of(details).fields().forEach(part -> names.add(part.name()));
        }
        boolean unknownKind = details == null && shape.fields().stream().anyMatch(part -> part.field() == null);
        Object[] values = new Object[shape.fields().size()];
        for (int i = 0; i < values.length; i++) {
            Shape.Part part = shape.fields().get(i);
            values[i] = part.holds() == Shape.Holds.VARIANT
                    ? details == null ? new Details.Plain() : parts(details, mapping, path, label, present)
                    : field(part, mapping, path, label, present);
        }
        for (Map.Entry<String, Node.Entry> entry : mapping.entries().entrySet()) {
            if (!names.contains(entry.getKey()) && !unknownKind) {
                faults.add(new Fault(entry.getValue().place(), join(path, entry.getKey()),
                        "no field has this name" + Words.suggestion(entry.getKey(), names),
                        "one of " + String.join(", ", names)));
            }
        }
        return construct(type, values);
    }

    /** The fields of a part's kind, which stand beside the common ones. */
    private Record parts(Class<? extends Record> type, Node.Mapping mapping, String path, String label,
            boolean present) {
        Object[] values = Shape.of(type).fields().stream()
                .map(part -> field(part, mapping, path, label, present)).toArray();
        return construct(type, values);
    }

    private Class<? extends Record> details(Shape shape, Node.Mapping mapping) {
        for (Shape.Part part : shape.fields()) {
            if (part.type() != null && Variant.class.isAssignableFrom(part.type())
                    && mapping.get(part.name()) instanceof Node.Scalar scalar) {
                int index = Shape.words(part.type()).indexOf(scalar.text());
                return index < 0 ? null : ((Variant) part.type().getEnumConstants()[index]).details();
            }
        }
        return null;
    }

    private Object field(Shape.Part part, Node.Mapping parent, String parentPath, String parentLabel,
            boolean present) {
        Node node = parent.get(part.name());
        if (node instanceof Node.Scalar scalar && scalar.text().isBlank()) {
            node = null;
        }
        String path = join(parentPath, part.name());
        String label = join(parentLabel, part.name());
        if (node == null) {
            if (part.field().needed() && present) {
                faults.add(new Fault(parent.place(), path, "is missing: " + part.field().value(),
                        part.name() + ": " + (part.holds() == Shape.Holds.GROUP ? "{" + firstFields(part.type()) + "}"
                                : part.example())));
            }
            return absent(part, parent.place(), path, label);
        }
        Object value = switch (part.holds()) {
            case TEXT -> text(part, node, path);
            case FIGURE -> figure(part, node, path, label);
            case CHOICE -> choice(part, node, path, label);
            case DATE -> date(part, node, path);
            case MONEY -> money(part, node, path);
            case GROUP -> record(part.type().asSubclass(Record.class), node, path, label, true);
            case TEXTS -> texts(part, node, path);
            case GROUPS -> groups(part, node, path, label);
            case FIGURES -> figures(part, node, path, label);
            case VARIANT -> throw new IllegalStateException("a variant is bound with its record");
        };
        return part.optional() ? Optional.ofNullable(value) : value;
    }

    private Object absent(Shape.Part part, Place place, String path, String label) {
        if (part.optional()) {
            return Optional.empty();
        }
        return switch (part.holds()) {
            case TEXT -> "";
            case FIGURE -> Figure.missing(missing(part, label));
            case CHOICE -> part.type().isEnum() && Variant.class.isAssignableFrom(part.type())
                    ? null : new Choice<>(null, missing(part, label));
            case DATE, MONEY, VARIANT -> null;
            case GROUP -> record(part.type().asSubclass(Record.class), new Node.Mapping(place, Map.of()), path, label,
                    false);
            case TEXTS, GROUPS -> List.of();
            case FIGURES -> Map.of();
        };
    }

    private static Missing missing(Shape.Part part, String label) {
        return new Missing(label, part.field().value(), part.field().find());
    }

    private String text(Shape.Part part, Node node, String path) {
        if (node instanceof Node.Scalar scalar) {
            return scalar.text();
        }
        fault(node, path, "is " + node.described() + " where words belong", part.name() + ": " + part.example());
        return "";
    }

    private Figure figure(Shape.Part part, Node node, String path, String label) {
        Figure figure = null;
        try {
            if (!(node instanceof Node.Scalar scalar)) {
                throw new QuantityText.Unreadable("is " + node.described() + " where a figure belongs");
            }
            figure = QuantityText.parse(scalar.text(), part.field().in());
            if (figure.value() < 0 && !part.field().signed()) {
                throw new QuantityText.Unreadable("'" + scalar.text() + "' is negative");
            }
        } catch (QuantityText.Unreadable e) {
            fault(node, path, e.getMessage(), part.name() + ": " + part.example());
        }
        return figure == null ? Figure.missing(missing(part, label)) : figure;
    }

    private Object choice(Shape.Part part, Node node, String path, String label) {
        List<String> words = Shape.words(part.type());
        String word = node instanceof Node.Scalar scalar ? scalar.text() : "";
        if (part.type() == YesNo.class) {
            word = word.equals("true") ? "yes" : word.equals("false") ? "no" : word;
        }
        int index = words.indexOf(word);
        boolean bare = Variant.class.isAssignableFrom(part.type());
        if (index < 0) {
            fault(node, path, "is " + node.described() + Words.suggestion(word, words),
                    part.name() + ": one of " + String.join(", ", words));
            return bare ? null : new Choice<>(null, missing(part, label));
        }
        Object constant = part.type().getEnumConstants()[index];
        return bare ? constant : choiceOf(constant);
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Choice<?> choiceOf(Object constant) {
        return Choice.of((Enum) constant);
    }

    private LocalDate date(Shape.Part part, Node node, String path) {
        try {
            return LocalDate.parse(node instanceof Node.Scalar scalar ? scalar.text() : "");
        } catch (DateTimeException e) {
            fault(node, path, "is " + node.described() + ", which is not a date",
                    part.name() + ": " + part.example() + " (year-month-day)");
            return null;
        }
    }

    private Money money(Shape.Part part, Node node, String path) {
        String text = node instanceof Node.Scalar scalar ? scalar.text() : "";
        if (!text.matches("\\d{1,9}(\\.\\d{1,2})? [A-Z]{3}")) {
            fault(node, path, "is " + node.described() + ", which is not a price",
                    part.name() + ": " + part.example() + " (amount and currency code)");
            return null;
        }
        return new Money(new BigDecimal(text.substring(0, text.length() - 4)), text.substring(text.length() - 3));
    }

    private List<String> texts(Shape.Part part, Node node, String path) {
        List<String> texts = new ArrayList<>();
        for (Node item : items(part, node, path)) {
            texts.add(text(part, item, path));
        }
        return texts;
    }

    private List<Object> groups(Shape.Part part, Node node, String path, String label) {
        List<Object> groups = new ArrayList<>();
        for (Node item : items(part, node, path)) {
            String name = item instanceof Node.Mapping mapping && mapping.get("name") instanceof Node.Scalar scalar
                    ? scalar.text() : String.valueOf(groups.size() + 1);
            groups.add(record(part.type().asSubclass(Record.class), item, path + "." + (groups.size() + 1),
                    label + "." + name, true));
        }
        return groups;
    }

    private List<Node> items(Shape.Part part, Node node, String path) {
        if (node instanceof Node.Listing listing) {
            return listing.items();
        }
        fault(node, path, "is " + node.described() + " where a list belongs",
                part.name() + ": with a line '- ...' for each");
        return List.of();
    }

    private Map<String, Figure> figures(Shape.Part part, Node node, String path, String label) {
        Map<String, Figure> figures = new LinkedHashMap<>();
        if (node instanceof Node.Mapping mapping) {
            mapping.entries().forEach((key, entry) -> figures.put(key,
                    figure(part, entry.value(), join(path, key), join(label, key))));
        } else {
            fault(node, path, "is " + node.described() + " where names with figures belong",
                    part.name() + ": {Main tank: " + part.example() + "}");
        }
        return figures;
    }

    private void fault(Node node, String path, String problem, String mend) {
        faults.add(new Fault(node.place(), path, problem, mend));
    }

    private static String firstFields(Class<?> record) {
        return Shape.of(record.asSubclass(Record.class)).fields().stream().filter(part -> part.field() != null)
                .limit(2).map(part -> part.name() + ": " + part.example())
                .reduce((a, b) -> a + ", " + b).orElse("");
    }

    private static String join(String path, String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    private static <R extends Record> R construct(Class<R> type, Object[] values) {
        Class<?>[] types = Arrays.stream(type.getRecordComponents()).map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            return type.getDeclaredConstructor(types).newInstance(values);
        } catch (InvocationTargetException | InstantiationException | IllegalAccessException
                | NoSuchMethodException e) {
            throw new IllegalStateException("cannot make a " + type.getName(), e);
        }
    }
}
