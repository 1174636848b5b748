package fitworthy.sheet;

import fitworthy.source.Fault;
import fitworthy.source.Node;
import fitworthy.source.Place;
import fitworthy.source.Words;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/**
 * Turns located nodes into records by their {@link Shape}, collecting every fault instead of stopping at the first. A
 * figure or choice that is left out becomes one that knows what is missing.
 */
public final class Binder {

    static final String DATE = "[0-9]{4}-[0-9]{2}-[0-9]{2}";
    static final String MONEY = "[0-9]{1,9}(\\.[0-9]{1,2})? [A-Z]{3}";

    private static final Pattern NEGATIVE = Pattern.compile(QuantityText.SPACE + "*" + QuantityText.MINUS);
    private static final Pattern PRICE = Pattern.compile(MONEY);
    private static final Map<Class<?>, Constructor<?>> CONSTRUCTORS = new ConcurrentHashMap<>();

    private final List<Fault> faults;
    private final Set<String> strays = new HashSet<>();

    public Binder(List<Fault> faults) {
        this.faults = faults;
    }

    /**
     * Makes a record of a mapping.
     *
     * @return the record; where faults were added its figures may be missing, and it must not be used
     */
    public <R extends Record> R bind(Class<R> type, Node.Mapping mapping) {
        return bind(type, mapping, "");
    }

    /** The same for a mapping that stands at a path of its file. */
    public <R extends Record> R bind(Class<R> type, Node.Mapping mapping, String path) {
        return record(type, mapping, path, "", true);
    }

    /** Paths of the groups that hold a field of no known name: what they seem to lack may stand there misspelt. */
    Set<String> strays() {
        return strays;
    }

    private <R extends Record> R record(Class<R> type, Node node, String path, String label, boolean present) {
        Node.Mapping mapping = node instanceof Node.Mapping given ? given : new Node.Mapping(node.place(), Map.of());
        if (present && mapping != node) {
            if (!silent(node)) {
                fault(node, path, "is " + node.described() + " where a group of fields belongs",
                        "fields below it, such as '" + firstFields(type) + "'");
            }
            present = false;
        }
        Shape shape = Shape.of(type);
        Class<? extends Record> details = details(shape, mapping);
        boolean unknownKind = details == null && shape.names().size() < shape.fields().size();
        Set<String> ofKind = details == null ? Set.of() : Shape.of(details).names();
        Object[] values = new Object[shape.fields().size()];
        for (int i = 0; i < values.length; i++) {
            Shape.Part part = shape.fields().get(i);
            values[i] = part.holds() == Shape.Holds.VARIANT
                    ? details == null ? new Details.Plain() : parts(details, mapping, path, label, present)
                    : field(part, mapping, path, label, present);
        }
        for (Map.Entry<String, Node.Entry> entry : mapping.entries().entrySet()) {
            String name = entry.getKey();
            if (!shape.names().contains(name) && !ofKind.contains(name) && !unknownKind) {
                Set<String> names = new LinkedHashSet<>(shape.names());
                names.addAll(ofKind);
                strays.add(path);
                faults.add(new Fault(entry.getValue().place(), join(path, name), "no field has this name"
                        + Words.suggestion(name, names) + kindsWith(shape, name),
                        "one of " + String.join(", ", names)));
            }
        }
        return construct(type, values);
    }

    /** The fields of a part's kind, which stand beside the common ones. */
    private Record parts(Class<? extends Record> type, Node.Mapping mapping, String path, String label,
            boolean present) {
        List<Shape.Part> fields = Shape.of(type).fields();
        Object[] values = new Object[fields.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = field(fields.get(i), mapping, path, label, present);
        }
        return construct(type, values);
    }

    /** The kinds of part that do have a field, where this kind does not. */
    private static String kindsWith(Shape shape, String name) {
        List<String> kinds = new ArrayList<>();
        for (Shape.Part part : shape.fields()) {
            if (part.type() != null && Variant.class.isAssignableFrom(part.type())) {
                for (Object kind : part.type().getEnumConstants()) {
                    if (Shape.of(((Variant) kind).details()).fields().stream()
                            .anyMatch(each -> each.name().equals(name))) {
                        kinds.add(Words.hyphenated(((Enum<?>) kind).name()));
                    }
                }
            }
        }
        return kinds.isEmpty() ? "" : "; one of kind " + String.join(" or ", kinds) + " has it";
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
        Node.Entry entry = parent.entries().get(part.name());
        String path = join(parentPath, part.name());
        String label = join(parentLabel, part.name());
        if (entry == null || entry.value() instanceof Node.Blank) {
            if (part.field().needed() && present && !(entry != null && silent(entry.value()))) {
                faults.add(new Fault(entry == null ? parent.place() : entry.place(), path,
                        (entry == null ? "is missing: " : "is left empty: ") + part.field().value(), example(part)));
            }
            return absent(part, parent.place(), path, label);
        }
        Node node = entry.value();
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
        if (node instanceof Node.Scalar scalar && !(part.field().needed() && scalar.text().isBlank())) {
            return scalar.text();
        }
        fault(node, path, node instanceof Node.Scalar ? "is blank: " + part.field().value()
                : "is " + node.described() + " where words belong", example(part));
        return "";
    }

    private Figure figure(Shape.Part part, Node node, String path, String label) {
        Figure figure = null;
        try {
            if (!(node instanceof Node.Scalar scalar)) {
                throw new QuantityText.Unreadable("is " + node.described() + " where a figure belongs");
            }
            figure = QuantityText.parse(scalar.text(), part.field().in());
            if (!part.field().signed() && NEGATIVE.matcher(scalar.text()).lookingAt()) {
                figure = null;
                throw new QuantityText.Unreadable(scalar.described() + " is negative");
            }
        } catch (QuantityText.Unreadable e) {
            fault(node, path, e.getMessage(), example(part) + units(part.field().in()));
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
            fault(node, path, "is " + node.described() + ", which is not one of the answers"
                    + Words.suggestion(word, words), part.name() + ": one of " + String.join(", ", words));
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
            String text = node instanceof Node.Scalar scalar ? scalar.text() : "";
            if (!text.matches(DATE)) {
                throw new DateTimeException("a year has four digits here");
            }
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            fault(node, path, "is " + node.described() + ", which is not a date",
                    example(part) + " (year-month-day)");
            return null;
        }
    }

    private Money money(Shape.Part part, Node node, String path) {
        String text = node instanceof Node.Scalar scalar ? scalar.text() : "";
        if (!PRICE.matcher(text).matches()) {
            fault(node, path, "is " + node.described() + ", which is not a price",
                    example(part) + " (amount and currency code)");
            return null;
        }
        return new Money(new BigDecimal(text.substring(0, text.length() - 4)), text.substring(text.length() - 3));
    }

    private List<String> texts(Shape.Part part, Node node, String path) {
        List<String> texts = new ArrayList<>();
        for (Node item : items(part, node, path)) {
            texts.add(item instanceof Node.Scalar scalar ? scalar.text() : "");
            if (!(item instanceof Node.Scalar)) {
                fault(item, path + "." + texts.size(), "is " + item.described() + " where words belong", example(part));
            }
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
                node instanceof Node.Scalar scalar && part.holds() == Shape.Holds.TEXTS
                        ? part.name() + ": [" + Words.shortened(scalar.text(), 60) + "]" : example(part));
        return List.of();
    }

    private Map<String, Figure> figures(Shape.Part part, Node node, String path, String label) {
        Map<String, Figure> figures = new LinkedHashMap<>();
        if (node instanceof Node.Mapping mapping) {
            mapping.entries().forEach((key, entry) -> figures.put(key,
                    figure(part, entry.value(), join(path, key), join(label, key))));
        } else {
            fault(node, path, "is " + node.described() + " where names with figures belong", example(part));
        }
        return figures;
    }

    private void fault(Node node, String path, String problem, String mend) {
        if (!silent(node)) {
            faults.add(new Fault(node.place(), path, problem, mend));
        }
    }

    /** Whether enough was said of it when it was read. */
    private static boolean silent(Node node) {
        return node instanceof Node.Blank blank && blank.faulted();
    }

    /** The field as a sheet would write it. */
    private static String example(Shape.Part part) {
        return part.name() + ": " + switch (part.holds()) {
            case GROUP -> "{" + firstFields(part.type()) + "}";
            case GROUPS -> "with a line '- {" + firstFields(part.type()) + "}' for each";
            case TEXTS -> part.example().isEmpty() ? "with a line '- name' for each" : part.example();
            case FIGURES -> "{Main tank: " + part.example() + "}";
            default -> part.example();
        };
    }

    /** The other units of a dimension, for a message. */
    private static String units(Dimension dimension) {
        List<String> units = dimension.units().keySet().stream().filter(each -> !each.isEmpty()).toList();
        return units.size() < 2 ? "" : " (units: " + String.join(", ", units) + ")";
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
        try {
            return type.cast(CONSTRUCTORS.computeIfAbsent(type, Binder::constructor).newInstance(values));
        } catch (InvocationTargetException | InstantiationException | IllegalAccessException e) {
            throw new IllegalStateException("cannot make a " + type.getName(), e);
        }
    }

    private static Constructor<?> constructor(Class<?> type) {
        try {
            return type.getDeclaredConstructor(Arrays.stream(type.getRecordComponents()).map(RecordComponent::getType)
                    .toArray(Class<?>[]::new));
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("cannot make a " + type.getName(), e);
        }
    }
}
