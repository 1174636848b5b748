package fitworthy.schema;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.Money;
import fitworthy.quantity.QuantityText;
import fitworthy.quantity.YesNo;
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
 * Turns located nodes into records by their {@link RecordSchema}, collecting every fault instead of stopping at the first. A
 * figure or choice that is left out becomes one that knows what is missing.
 */
public final class Binder {

    public static final String DATE = "[0-9]{4}-[0-9]{2}-[0-9]{2}";
    public static final String MONEY = "[0-9]{1,9}(\\.[0-9]{1,2})? [A-Z]{3}";

    private static final Pattern NEGATIVE = Pattern.compile(QuantityText.SPACE + "*" + QuantityText.MINUS);
    private static final Pattern DAY = Pattern.compile(DATE);
    private static final Pattern PRICE = Pattern.compile(MONEY);
    private static final Map<Class<?>, Constructor<?>> CONSTRUCTORS = new ConcurrentHashMap<>();

    /** Where a value stands; told in words when asked, since most have neither a fault nor a missing figure. */
    private static final class At {
        private final At above;
        private final String step;
        private final String name;
        private String label;

        /** @param step its field's name, or its place in a list @param name the same, but in a list its own name */
        At(At above, String step, String name) {
            this.above = above;
            this.step = step;
            this.name = name;
        }

        At to(String field) {
            return new At(this, field, field);
        }

        /** By the positions of lists. */
        String path() {
            return above == null ? step : join(above.path(), step);
        }

        /** By the names in lists. */
        String label() {
            if (label == null) {
                label = above == null ? name : join(above.label(), name);
            }
            return label;
        }

        private static String join(String path, String name) {
            return path.isEmpty() ? name : path + "." + name;
        }
    }

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
        return record(type, mapping, new At(null, path, ""), true);
    }

    /** Paths of the groups that hold a field of no known name: what they seem to lack may stand there misspelt. */
    public Set<String> strays() {
        return strays;
    }

    private <R extends Record> R record(Class<R> type, Node node, At at, boolean present) {
        Node.Mapping mapping = node instanceof Node.Mapping given ? given : new Node.Mapping(node.place(), Map.of());
        if (present && mapping != node) {
            if (!silent(node)) {
                fault(
                        node,
                        at,
                        "is " + node.described() + " where a group of fields belongs",
                        "fields below it, such as '" + firstFields(type) + "'");
            }
            present = false;
        }
        RecordSchema shape = RecordSchema.of(type);
        Class<? extends Record> details = details(shape, mapping);
        boolean unknownKind =
                details == null && shape.names().size() < shape.fields().size();
        Set<String> ofKind =
                details == null ? Set.of() : RecordSchema.of(details).names();
        Object[] values = new Object[shape.fields().size()];
        for (int i = 0; i < values.length; i++) {
            RecordSchema.Part part = shape.fields().get(i);
            values[i] = part.holds() == RecordSchema.Holds.VARIANT
                    ? details == null ? null : parts(details, mapping, at, present)
                    : field(part, mapping, at, present);
        }
        for (Map.Entry<String, Node.Entry> entry : mapping.entries().entrySet()) {
            String name = entry.getKey();
            if (!shape.names().contains(name) && !ofKind.contains(name) && !unknownKind) {
                Set<String> names = new LinkedHashSet<>(shape.names());
                names.addAll(ofKind);
                strays.add(at.path());
                faults.add(new Fault(
                        entry.getValue().place(),
                        at.to(name).path(),
                        "no field has this name" + Words.suggestion(name, names) + kindsWith(shape, name),
                        "one of " + String.join(", ", names)));
            }
        }
        return construct(type, values);
    }

    /** The fields of a part's kind, which stand beside the common ones. */
    private Record parts(Class<? extends Record> type, Node.Mapping mapping, At at, boolean present) {
        List<RecordSchema.Part> fields = RecordSchema.of(type).fields();
        Object[] values = new Object[fields.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = field(fields.get(i), mapping, at, present);
        }
        return construct(type, values);
    }

    /** The kinds of part that do have a field, where this kind does not. */
    private static String kindsWith(RecordSchema shape, String name) {
        List<String> kinds = new ArrayList<>();
        for (RecordSchema.Part part : shape.fields()) {
            if (part.type() != null && Variant.class.isAssignableFrom(part.type())) {
                for (Object kind : part.type().getEnumConstants()) {
                    if (RecordSchema.of(((Variant) kind).details()).fields().stream()
                            .anyMatch(each -> each.name().equals(name))) {
                        kinds.add(Words.hyphenated(((Enum<?>) kind).name()));
                    }
                }
            }
        }
        return kinds.isEmpty() ? "" : "; one of kind " + String.join(" or ", kinds) + " has it";
    }

    private Class<? extends Record> details(RecordSchema shape, Node.Mapping mapping) {
        for (RecordSchema.Part part : shape.fields()) {
            if (part.type() != null
                    && Variant.class.isAssignableFrom(part.type())
                    && mapping.get(part.name()) instanceof Node.Scalar scalar) {
                int index = RecordSchema.words(part.type()).indexOf(scalar.text());
                return index < 0 ? null : ((Variant) part.type().getEnumConstants()[index]).details();
            }
        }
        return null;
    }

    private Object field(RecordSchema.Part part, Node.Mapping parent, At group, boolean present) {
        Node.Entry entry = parent.entries().get(part.name());
        At at = group.to(part.name());
        if (entry == null || entry.value() instanceof Node.Blank) {
            if (part.field().needed() && present && !(entry != null && silent(entry.value()))) {
                faults.add(new Fault(
                        entry == null ? parent.place() : entry.place(),
                        at.path(),
                        (entry == null ? "is missing: " : "is left empty: ")
                                + part.field().value(),
                        example(part)));
            }
            return absent(part, parent.place(), at);
        }
        Node node = entry.value();
        Object value =
                switch (part.holds()) {
                    case TEXT -> text(part, node, at);
                    case FIGURE -> figure(part, node, at);
                    case CHOICE -> choice(part, node, at);
                    case DATE -> date(part, node, at);
                    case MONEY -> money(part, node, at);
                    case GROUP -> record(part.type().asSubclass(Record.class), node, at, true);
                    case TEXTS -> texts(part, node, at);
                    case GROUPS -> groups(part, node, at);
                    case FIGURES -> figures(part, node, at);
                    case VARIANT -> throw new IllegalStateException("a variant is bound with its record");
                };
        return part.optional() ? Optional.ofNullable(value) : value;
    }

    private Object absent(RecordSchema.Part part, Place place, At at) {
        if (part.optional()) {
            return Optional.empty();
        }
        return switch (part.holds()) {
            case TEXT -> "";
            case FIGURE -> Figure.missing(missing(part, at));
            case CHOICE ->
                part.type().isEnum() && Variant.class.isAssignableFrom(part.type())
                        ? null
                        : new Choice<>(null, missing(part, at));
            case DATE, MONEY, VARIANT -> null;
            case GROUP -> record(part.type().asSubclass(Record.class), new Node.Mapping(place, Map.of()), at, false);
            case TEXTS, GROUPS -> List.of();
            case FIGURES -> Map.of();
        };
    }

    private static Missing missing(RecordSchema.Part part, At at) {
        return new Missing(at.label(), part.field().value(), part.field().find());
    }

    private String text(RecordSchema.Part part, Node node, At at) {
        if (node instanceof Node.Scalar scalar
                && !(part.field().needed() && scalar.text().isBlank())) {
            return scalar.text();
        }
        fault(
                node,
                at,
                node instanceof Node.Scalar
                        ? "is blank: " + part.field().value()
                        : "is " + node.described() + " where words belong",
                example(part));
        return "";
    }

    private Figure figure(RecordSchema.Part part, Node node, At at) {
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
            fault(node, at, e.getMessage(), example(part) + units(part.field().in()));
        }
        return figure == null ? Figure.missing(missing(part, at)) : figure;
    }

    private Object choice(RecordSchema.Part part, Node node, At at) {
        List<String> words = RecordSchema.words(part.type());
        String word = node instanceof Node.Scalar scalar ? scalar.text() : "";
        if (part.type() == YesNo.class) {
            word = word.equals("true") ? "yes" : word.equals("false") ? "no" : word;
        }
        int index = words.indexOf(word);
        boolean bare = Variant.class.isAssignableFrom(part.type());
        if (index < 0) {
            fault(
                    node,
                    at,
                    "is " + node.described() + ", which is not one of the answers" + Words.suggestion(word, words),
                    part.name() + ": one of " + String.join(", ", words));
            return bare ? null : new Choice<>(null, missing(part, at));
        }
        Object constant = part.type().getEnumConstants()[index];
        return bare ? constant : choiceOf(constant);
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Choice<?> choiceOf(Object constant) {
        return Choice.of((Enum) constant);
    }

    private LocalDate date(RecordSchema.Part part, Node node, At at) {
        try {
            String text = node instanceof Node.Scalar scalar ? scalar.text() : "";
            if (!DAY.matcher(text).matches()) {
                throw new DateTimeException("a year has four digits here");
            }
            return LocalDate.of(
                    Integer.parseInt(text, 0, 4, 10),
                    Integer.parseInt(text, 5, 7, 10),
                    Integer.parseInt(text, 8, 10, 10));
        } catch (DateTimeException e) {
            fault(node, at, "is " + node.described() + ", which is not a date", example(part) + " (year-month-day)");
            return null;
        }
    }

    private Money money(RecordSchema.Part part, Node node, At at) {
        String text = node instanceof Node.Scalar scalar ? scalar.text() : "";
        if (!PRICE.matcher(text).matches()) {
            fault(
                    node,
                    at,
                    "is " + node.described() + ", which is not a price",
                    example(part) + " (amount and currency code)");
            return null;
        }
        return new Money(new BigDecimal(text.substring(0, text.length() - 4)), text.substring(text.length() - 3));
    }

    private List<String> texts(RecordSchema.Part part, Node node, At at) {
        List<String> texts = new ArrayList<>();
        for (Node item : items(part, node, at)) {
            texts.add(item instanceof Node.Scalar scalar ? scalar.text() : "");
            if (!(item instanceof Node.Scalar)) {
                fault(
                        item,
                        at.to(String.valueOf(texts.size())),
                        "is " + item.described() + " where words belong",
                        example(part));
            }
        }
        return texts;
    }

    private List<Object> groups(RecordSchema.Part part, Node node, At at) {
        List<Object> groups = new ArrayList<>();
        for (Node item : items(part, node, at)) {
            String name = item instanceof Node.Mapping mapping && mapping.get("name") instanceof Node.Scalar scalar
                    ? scalar.text()
                    : String.valueOf(groups.size() + 1);
            groups.add(record(
                    part.type().asSubclass(Record.class),
                    item,
                    new At(at, String.valueOf(groups.size() + 1), name),
                    true));
        }
        return groups;
    }

    private List<Node> items(RecordSchema.Part part, Node node, At at) {
        if (node instanceof Node.Listing listing) {
            return listing.items();
        }
        fault(
                node,
                at,
                "is " + node.described() + " where a list belongs",
                node instanceof Node.Scalar scalar && part.holds() == RecordSchema.Holds.TEXTS
                        ? part.name() + ": [" + Words.shortened(scalar.text(), 60) + "]"
                        : example(part));
        return List.of();
    }

    private Map<String, Figure> figures(RecordSchema.Part part, Node node, At at) {
        Map<String, Figure> figures = new LinkedHashMap<>();
        if (node instanceof Node.Mapping mapping) {
            mapping.entries().forEach((key, entry) -> figures.put(key, figure(part, entry.value(), at.to(key))));
        } else {
            fault(node, at, "is " + node.described() + " where names with figures belong", example(part));
        }
        return figures;
    }

    private void fault(Node node, At at, String problem, String mend) {
        if (!silent(node)) {
            faults.add(new Fault(node.place(), at.path(), problem, mend));
        }
    }

    /** Whether enough was said of it when it was read. */
    private static boolean silent(Node node) {
        return node instanceof Node.Blank blank && blank.faulted();
    }

    /** The field as a sheet would write it. */
    private static String example(RecordSchema.Part part) {
        return part.name() + ": "
                + switch (part.holds()) {
                    case GROUP -> "{" + firstFields(part.type()) + "}";
                    case GROUPS -> "with a line '- {" + firstFields(part.type()) + "}' for each";
                    case TEXTS -> part.example().isEmpty() ? "with a line '- name' for each" : part.example();
                    case FIGURES -> "{Main tank: " + part.example() + "}";
                    default -> part.example();
                };
    }

    /** The other units of a dimension, for a message. */
    private static String units(Dimension dimension) {
        List<String> units = dimension.units().keySet().stream()
                .filter(each -> !each.isEmpty())
                .toList();
        return units.size() < 2 ? "" : " (units: " + String.join(", ", units) + ")";
    }

    private static String firstFields(Class<?> record) {
        return RecordSchema.of(record.asSubclass(Record.class)).fields().stream()
                .filter(part -> part.field() != null)
                .limit(2)
                .map(part -> part.name() + ": " + part.example())
                .reduce((a, b) -> a + ", " + b)
                .orElse("");
    }

    private static <R extends Record> R construct(Class<R> type, Object[] values) {
        try {
            return type.cast(
                    CONSTRUCTORS.computeIfAbsent(type, Binder::constructor).newInstance(values));
        } catch (InvocationTargetException | InstantiationException | IllegalAccessException e) {
            throw new IllegalStateException("cannot make a " + type.getName(), e);
        }
    }

    private static Constructor<?> constructor(Class<?> type) {
        try {
            return type.getDeclaredConstructor(Arrays.stream(type.getRecordComponents())
                    .map(RecordComponent::getType)
                    .toArray(Class<?>[]::new));
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("cannot make a " + type.getName(), e);
        }
    }
}
