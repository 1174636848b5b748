package fitworthy.schema;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.Money;
import fitworthy.source.Words;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/**
 * The fields of a record, read off its components and their {@link Field} annotations. The reader, the JSON Schema and
 * the handbook page of the sheet all follow this one description.
 *
 * @param record the record described
 * @param fields its fields in order
 * @param names their names, without those that depend on the kind
 */
public record RecordSchema(Class<? extends Record> record, List<Part> fields, Set<String> names) {

    /** What a field holds. */
    public enum Holds {
        TEXT,
        FIGURE,
        CHOICE,
        DATE,
        MONEY,
        GROUP,
        TEXTS,
        GROUPS,
        FIGURES,
        VARIANT
    }

    /**
     * One field.
     *
     * @param name as written in a sheet
     * @param holds what it holds
     * @param type the enum of a choice or the record of a group, else null
     * @param optional whether its absence is an empty {@link Optional}
     * @param field what its annotation says; null for the variant, whose fields are those of the kind
     */
    public record Part(String name, Holds holds, Class<?> type, boolean optional, Said field) {

        /** A value for this field as a sheet would write it. */
        public String example() {
            if (!field.example().isEmpty()) {
                return field.example();
            }
            return switch (holds) {
                case FIGURE, FIGURES -> field.in().example();
                case CHOICE -> String.join(" or ", words(type));
                default -> "";
            };
        }
    }

    /** What a {@link Field} says, read once: an annotation is slow to ask, and a sheet asks hundreds of times. */
    public record Said(String value, Dimension in, boolean needed, boolean signed, String find, String example) {
        private static Said of(Field field) {
            return new Said(field.value(), field.in(), field.needed(), field.signed(), field.find(), field.example());
        }
    }

    private static final Map<Class<?>, RecordSchema> SHAPES = new ConcurrentHashMap<>();
    private static final Map<Class<?>, List<String>> WORDS = new ConcurrentHashMap<>();

    public static RecordSchema of(Class<? extends Record> record) {
        RecordSchema known = SHAPES.get(record);
        if (known == null) {
            List<Part> fields = Arrays.stream(record.getRecordComponents())
                    .map(RecordSchema::part)
                    .toList();
            known = new RecordSchema(
                    record,
                    fields,
                    fields.stream()
                            .filter(part -> part.field() != null)
                            .map(Part::name)
                            .collect(Collectors.toCollection(LinkedHashSet::new)));
            SHAPES.put(record, known);
        }
        return known;
    }

    /**
     * The fields that a path may lead to, none where it leads to none; several where kinds of part have a field of one
     * name.
     *
     * @param path names of fields, and after a list the name of one of its items
     */
    public static List<Part> at(Class<? extends Record> record, List<String> path) {
        List<Part> found = named(record, path.get(0));
        if (path.size() == 1) {
            return found;
        }
        return found.stream()
                .filter(part -> part.holds() == Holds.GROUP || part.holds() == Holds.GROUPS && path.size() > 2)
                .flatMap(part -> at(
                        part.type().asSubclass(Record.class),
                        path.subList(part.holds() == Holds.GROUPS ? 2 : 1, path.size()))
                        .stream())
                .toList();
    }

    private static List<Part> named(Class<? extends Record> record, String name) {
        Set<Class<? extends Record>> all = new LinkedHashSet<>(Set.of(record));
        for (Part part : of(record).fields()) {
            if (part.type() != null && Variant.class.isAssignableFrom(part.type())) {
                Arrays.stream(part.type().getEnumConstants()).forEach(kind -> all.add(((Variant) kind).details()));
            }
        }
        return all.stream()
                .flatMap(each -> of(each).fields().stream())
                .filter(part -> part.name().equals(name))
                .toList();
    }

    /** The words by which a sheet writes the constants of an enum. */
    public static List<String> words(Class<?> enumType) {
        List<String> known = WORDS.get(enumType);
        if (known == null) {
            known = Arrays.stream(enumType.getEnumConstants())
                    .map(constant -> Words.hyphenated(((Enum<?>) constant).name()))
                    .toList();
            WORDS.put(enumType, known);
        }
        return known;
    }

    /** That one of its fields is not given by the record at a path of the sheet. */
    public Missing missing(String path, String field) {
        Said said = fields.stream()
                .filter(part -> part.name().equals(field))
                .findFirst()
                .orElseThrow()
                .field();
        return new Missing(path + "." + field, said.value(), said.find());
    }

    private static Part part(RecordComponent component) {
        Type type = component.getGenericType();
        boolean optional = component.getType() == Optional.class;
        if (optional) {
            type = argument(type, 0);
        }
        Class<?> raw = type instanceof ParameterizedType generic ? (Class<?>) generic.getRawType() : (Class<?>) type;
        Field annotation = component.getAnnotation(Field.class);
        // The one text that the parser of a sheet gives such a name, so that it is found without a look at its letters.
        String name = Words.hyphenated(component.getName()).intern();
        if (raw.isInterface() && Variant.Fields.class.isAssignableFrom(raw)) {
            return new Part(name, Holds.VARIANT, null, false, null);
        }
        if (annotation == null) {
            throw new IllegalStateException(component + " has no @Field");
        }
        Said field = Said.of(annotation);
        if (raw == List.class) {
            Class<?> item = (Class<?>) argument(type, 0);
            return item == String.class
                    ? new Part(name, Holds.TEXTS, null, optional, field)
                    : new Part(name, Holds.GROUPS, item, optional, field);
        }
        if (raw == Choice.class) {
            return new Part(name, Holds.CHOICE, (Class<?>) argument(type, 0), optional, field);
        }
        if (raw.isEnum()) {
            return new Part(name, Holds.CHOICE, raw, optional, field);
        }
        if (raw.isRecord() && raw != Money.class) {
            return new Part(name, Holds.GROUP, raw, optional, field);
        }
        Holds holds = raw == String.class
                ? Holds.TEXT
                : raw == Figure.class
                        ? Holds.FIGURE
                        : raw == LocalDate.class
                                ? Holds.DATE
                                : raw == Money.class ? Holds.MONEY : raw == Map.class ? Holds.FIGURES : null;
        if (holds == null) {
            throw new IllegalStateException(component + " is of a type that no sheet can hold");
        }
        return new Part(name, holds, null, optional, field);
    }

    private static Type argument(Type type, int index) {
        return ((ParameterizedType) type).getActualTypeArguments()[index];
    }
}
