package fitworthy.schema;

import fitworthy.source.NodePath;
import java.lang.reflect.Constructor;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The fields of a record, read off its components and their {@link Field} annotations. The reader, the JSON Schema and
 * the handbook page of the sheet all follow this one description.
 *
 * @param record the record described
 * @param fields its fields in order
 * @param names their names, without those that depend on the kind
 * @param maker makes one
 */
public record RecordSchema(
        Class<? extends Record> record,
        List<FieldSchema> fields,
        Set<String> names,
        Constructor<? extends Record> maker) {

    private static final ClassValue<RecordSchema> KNOWN = new ClassValue<>() {
        @Override
        protected RecordSchema computeValue(Class<?> record) {
            return read(record.asSubclass(Record.class));
        }
    };

    public static RecordSchema of(Class<? extends Record> record) {
        return KNOWN.get(record);
    }

    private static RecordSchema read(Class<? extends Record> record) {
        List<FieldSchema> fields =
                Arrays.stream(record.getRecordComponents()).map(FieldSchema::of).toList();
        return new RecordSchema(
                record,
                fields,
                fields.stream()
                        .filter(field -> field.description() != null)
                        .map(FieldSchema::name)
                        .collect(Collectors.toCollection(LinkedHashSet::new)),
                maker(record, fields));
    }

    private static Constructor<? extends Record> maker(Class<? extends Record> record, List<FieldSchema> fields) {
        try {
            Constructor<? extends Record> maker = record.getDeclaredConstructor(fields.stream()
                    .map(field -> field.accessor().getReturnType())
                    .toArray(Class<?>[]::new));
            maker.setAccessible(true);
            return maker;
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("every record can be made of its fields: " + record.getName(), e);
        }
    }

    /**
     * The fields that a path may lead to, none where it leads to none; several where kinds of part have a field of one
     * name.
     */
    public static List<FieldSchema> at(Class<? extends Record> record, NodePath path) {
        return at(record, path.steps());
    }

    private static List<FieldSchema> at(Class<? extends Record> record, List<NodePath.Step> steps) {
        List<FieldSchema> found = withKinds(record)
                .filter(field -> new NodePath.Named(field.name()).equals(steps.get(0)))
                .toList();
        if (steps.size() == 1) {
            return found;
        }
        return found.stream()
                .flatMap(field -> below(field, steps.subList(1, steps.size())))
                .toList();
    }

    private static Stream<FieldSchema> below(FieldSchema field, List<NodePath.Step> steps) {
        int skipped = field.content() == FieldSchema.Content.GROUPS ? 1 : 0;
        boolean groups = field.content() == FieldSchema.Content.GROUP || skipped == 1;
        return groups && steps.size() > skipped
                ? at(field.type().asSubclass(Record.class), steps.subList(skipped, steps.size())).stream()
                : Stream.empty();
    }

    /** Its own fields, then those of each kind. */
    private static Stream<FieldSchema> withKinds(Class<? extends Record> record) {
        RecordSchema own = of(record);
        return Stream.concat(
                        Stream.of(own),
                        own.kinds().map(Variant::details).distinct().map(RecordSchema::of))
                .flatMap(schema -> schema.fields().stream());
    }

    /** The same record with another value in one of its fields. */
    @SuppressWarnings("unchecked")
    public static <R extends Record> R with(R record, String name, Object value) {
        RecordSchema schema = of(record.getClass());
        FieldSchema changed = schema.field(name);
        return (R) schema.made(schema.fields().stream()
                .map(field -> {
                    Object held = field.equals(changed) ? value : field.in(record);
                    return field.optional() ? Optional.ofNullable(held) : held;
                })
                .toArray());
    }

    /** A record of these values, one for each of its fields in order. */
    public Record made(Object[] values) {
        try {
            return maker.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot make a " + record.getName(), e);
        }
    }

    /** The kinds that decide its further fields; none where it has no such fields. */
    Stream<Variant> kinds() {
        return fields.stream()
                .filter(FieldSchema::tellsKind)
                .flatMap(field -> Arrays.stream(field.type().getEnumConstants()))
                .map(Variant.class::cast);
    }

    /** One of its fields by name, for a constant, so that a name that is not there fails where its class is loaded. */
    public FieldSchema field(String name) {
        return fields.stream()
                .filter(field -> field.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no field '" + name + "' among " + names()));
    }
}
