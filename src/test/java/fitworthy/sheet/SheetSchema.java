package fitworthy.sheet;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.QuantityText;
import fitworthy.quantity.UnitWords;
import fitworthy.quantity.YesNo;
import fitworthy.schema.ChoiceWords;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.Plausible;
import fitworthy.schema.RecordSchema;
import fitworthy.schema.Variant;
import fitworthy.shelf.Kind;
import fitworthy.source.Words;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The JSON Schema (draft 2020-12) of a build sheet, made of the records that the reader binds. A field left empty
 * (null) counts as left out, as it does for the reader.
 */
final class SheetSchema {

    private static final String INDEX_AND_SYMBOL =
            "^" + QuantityText.SPACE + "*" + Sidewalls.INDEX_AND_SYMBOL + QuantityText.SPACE + "*$";

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Map<String, Class<?>> records = new LinkedHashMap<>();
    private final ObjectNode definitions = NODES.objectNode();

    private SheetSchema() {}

    static ObjectNode make() {
        return new SheetSchema().root();
    }

    private ObjectNode root() {
        ObjectNode root = NODES.objectNode();
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("title", "Fitworthy build sheet");
        root.put(
                "description",
                "What a build sheet may hold, in YAML or JSON. docs/sheet.md explains it. What must hold"
                        + " between fields (names that load cases use, sums, regions) and between what a quantity or a day can"
                        + " lie is checked by the program alone.");
        record(Sheet.class, root);
        root.put("type", "object");
        root.set("$defs", definitions);
        return root;
    }

    /** The fields of a record, written into {@code into}; those of its kinds follow by {@code if} and {@code then}. */
    private void record(Class<? extends Record> type, ObjectNode into) {
        into.set("type", texts("object", "null"));
        Class<?> kinds = fields(type, into);
        if (kinds == null) {
            into.put("additionalProperties", false);
            return;
        }
        ArrayNode all = into.putArray("allOf");
        for (Object kind : kinds.getEnumConstants()) {
            Class<? extends Record> details = ((Variant) kind).details();
            if (!RecordSchema.of(details).fields().isEmpty()) {
                ObjectNode each = all.addObject();
                ObjectNode condition = each.putObject("if");
                condition.putObject("properties").putObject("kind").put("const", word(kind));
                condition.set("required", texts("kind"));
                fields(details, each.putObject("then"));
            }
        }
        into.put("unevaluatedProperties", false);
    }

    /** Writes the fields of a record; returns the enum of its kinds, or null where it has none. */
    private Class<?> fields(Class<? extends Record> type, ObjectNode into) {
        Class<?> kinds = null;
        ObjectNode properties = into.putObject("properties");
        ArrayNode required = NODES.arrayNode();
        for (FieldSchema field : RecordSchema.of(type).fields()) {
            if (field.content() == FieldSchema.Content.FIELDS_OF_KIND) {
                continue;
            }
            kinds = field.tellsKind() ? field.type() : kinds;
            ObjectNode property = properties.putObject(field.name());
            property.put("description", field.description().value() + plausible(field));
            value(field, property);
            if (type == Sheet.class) {
                ofShelf(field).ifPresent(kind -> orFromShelf(kind, field, property));
            }
            if (field.content() == FieldSchema.Content.FIGURE
                    && field.description().in() == Dimension.COUNT
                    && field.description().within().isLimited()) {
                property.put(
                        "minimum", Integer.parseInt(field.description().within().least()));
                property.put(
                        "maximum", Integer.parseInt(field.description().within().most()));
            }
            if (field.description().needed()) {
                required.add(field.name());
            }
        }
        if (!required.isEmpty()) {
            into.set("required", required);
        }
        return kinds;
    }

    /** A schema can hold numbers alone between two ends; those of quantities and days it can only tell. */
    private static String plausible(FieldSchema field) {
        Plausible kind = field.description().within();
        return kind.isLimited()
                ? "; between " + kind.limits() + (kind.hasUsual() ? ", usually " + kind.usual() : "")
                : "";
    }

    private void value(FieldSchema field, ObjectNode into) {
        boolean needed = field.description().needed();
        switch (field.content()) {
            case TEXT -> {
                into.set("type", types(needed, "string", "number", "boolean"));
                if (needed) {
                    into.put("pattern", "\\S");
                } else if (!field.description().printed()) {
                    into.putObject("not").set("enum", texts("ask", "unknown"));
                }
            }
            case FIGURE -> {
                String figure =
                        figure(field.description().in(), field.description().signed());
                if (field.name().equals("load-index")) {
                    ArrayNode either = into.putArray("anyOf");
                    either.addObject().put("$ref", figure);
                    either.addObject().put("type", "string").put("pattern", INDEX_AND_SYMBOL);
                } else {
                    into.put("$ref", figure);
                }
                if (needed) {
                    into.set(
                            "type",
                            field.description().in() == Dimension.COUNT ? texts("string", "number") : texts("string"));
                }
            }
            case CHOICE -> choice(field, into);
            case DATE -> {
                into.set("type", types(needed, "string"));
                into.put("format", "date");
                into.put("pattern", "^" + FieldSchema.DATE + "$");
            }
            case MONEY -> {
                into.set("type", types(needed, "string"));
                into.put("pattern", "^" + FieldSchema.MONEY + "$");
            }
            case GROUP -> {
                if (field.description().inWords()) {
                    place(field, into, needed);
                } else {
                    group(field, into, needed);
                }
            }
            case TEXTS -> {
                into.set("type", types(needed, "array"));
                into.putObject("items").set("type", texts("string", "number", "boolean"));
            }
            case GROUPS -> {
                into.set("type", types(needed, "array"));
                group(field, into.putObject("items"), true);
            }
            case FIGURES -> {
                into.set("type", types(needed, "object"));
                ObjectNode values = into.putObject("additionalProperties");
                values.put(
                        "$ref",
                        figure(field.description().in(), field.description().signed()));
                values.put("type", "string");
            }
            case FIELDS_OF_KIND -> throw new IllegalStateException("the fields of a kind stand beside the others");
        }
        if (!field.example().isEmpty()
                && field.content() != FieldSchema.Content.CHOICE
                && field.content() != FieldSchema.Content.FIGURES
                && field.content() != FieldSchema.Content.GROUP
                && field.content() != FieldSchema.Content.TEXTS) {
            into.putArray("examples").add(field.example());
        }
    }

    private static void choice(FieldSchema field, ObjectNode into) {
        ArrayNode answers = into.putArray("enum");
        ChoiceWords.of(field.type()).forEach(answers::add);
        if (field.type() == YesNo.class) {
            answers.add(true).add(false);
        }
        if (!field.description().needed()) {
            answers.addNull();
            if (!field.tellsKind()) {
                for (String mark : List.of("about ", "usual ")) {
                    ChoiceWords.of(field.type()).forEach(word -> answers.add(mark + word));
                }
                answers.add("ask").add("unknown").add("usual");
            }
        }
    }

    /** A place as coordinates, as words, or as words with some coordinates beside them. */
    private void place(FieldSchema field, ObjectNode into, boolean needed) {
        ArrayNode ways = into.putArray("anyOf");
        ObjectNode words = NODES.objectNode();
        words.put("type", "string");
        words.put("pattern", "\\S\\s+\\S");
        words.putArray("examples").add("in the tray").add("120 mm behind the rear axle");
        ways.add(words);
        group(field, ways.addObject(), needed);
        ways.addObject().put("$ref", "#/$defs/place-in-words");
        if (!definitions.has("place-in-words")) {
            ObjectNode place = definitions.putObject("place-in-words");
            place.put("description", "a place in words, with the coordinates that are known beside it");
            fields(field.type().asSubclass(Record.class), place);
            ((ObjectNode) place.get("properties")).set("where", words);
            place.put("type", "object");
            place.set("required", texts("where"));
            place.put("additionalProperties", false);
        }
    }

    private void group(FieldSchema field, ObjectNode into, boolean needed) {
        Class<? extends Record> type = field.type().asSubclass(Record.class);
        String name = Words.hyphenated(type.getSimpleName());
        Class<?> earlier = records.putIfAbsent(name, type);
        if (earlier == null) {
            record(type, definitions.putObject(name));
        } else if (earlier != type) {
            throw new IllegalStateException("two records are called " + name + ": " + earlier + ", " + type);
        }
        into.put("$ref", "#/$defs/" + name);
        if (needed) {
            into.put("type", "object");
        }
    }

    /** The kind of thing that a field of the sheet may take from a shelf. */
    static Optional<Kind> ofShelf(FieldSchema field) {
        return Stream.of(Kind.values())
                .filter(kind -> kind.inSheet().equals(field.name()))
                .findFirst();
    }

    /**
     * In place of a group there may be the name of a thing on the shelf, or that name under {@code from} and fields that
     * stand over those of the shelf. What is in these is checked by the program alone, once both are put together.
     */
    private void orFromShelf(Kind kind, FieldSchema field, ObjectNode property) {
        ObjectNode into = field.content() == FieldSchema.Content.GROUPS ? (ObjectNode) property.get("items") : property;
        ObjectNode whole = NODES.objectNode();
        for (String key : List.of("$ref", "type")) {
            if (into.has(key)) {
                whole.set(key, into.remove(key));
            }
        }
        into.putObject("if").put("type", "string");
        into.putObject("then").put("pattern", "\\S");
        ObjectNode group = into.putObject("else");
        ObjectNode taken = group.putObject("if");
        taken.put("type", "object");
        taken.set("required", texts("from"));
        String name = Words.hyphenated(kind.record().getSimpleName()) + "-of-shelf";
        group.putObject("then").put("$ref", "#/$defs/" + name);
        group.set("else", whole);
        ObjectNode over = definitions.putObject(name);
        over.put(
                "description",
                "one of the " + kind.onShelf() + " of the shelf; what stands beside from is so on this sheet");
        over.put("type", "object");
        ObjectNode properties = over.putObject("properties");
        properties.putObject("from").set("type", texts("string", "number"));
        names(kind.record()).forEach(properties::putObject);
        over.set("required", texts("from"));
        over.put("additionalProperties", false);
    }

    /** The fields of a record and of all its kinds. */
    private static Set<String> names(Class<? extends Record> type) {
        Set<String> names = new TreeSet<>(RecordSchema.of(type).names());
        for (FieldSchema field : RecordSchema.of(type).fields()) {
            if (field.tellsKind()) {
                for (Object kind : field.type().getEnumConstants()) {
                    names.addAll(RecordSchema.of(((Variant) kind).details()).names());
                }
            }
        }
        return names;
    }

    /** The definition of a figure of a dimension, made on first use. */
    private String figure(Dimension dimension, boolean signed) {
        String name = (signed ? "signed-" : "") + Words.hyphenated(dimension.name()) + "-figure";
        if (!definitions.has(name)) {
            ObjectNode figure = definitions.putObject(name);
            figure.set(
                    "type", dimension == Dimension.COUNT ? texts("string", "number", "null") : texts("string", "null"));
            figure.put(
                    "description",
                    dimension == Dimension.COUNT
                            ? "a plain number"
                            : "a number and its unit, with a tolerance where known, such as '" + dimension.example()
                                    + "'; a guess begins with 'about', one of the book's with 'usual'");
            figure.put("maxLength", QuantityText.LONGEST);
            figure.put("pattern", pattern(dimension, signed));
            if (dimension == Dimension.COUNT && !signed) {
                figure.put("minimum", 0);
            }
        }
        return "#/$defs/" + name;
    }

    private static String pattern(Dimension dimension, boolean signed) {
        String space = QuantityText.SPACE + "*";
        String sign = signed ? "(?:\\+|" + QuantityText.MINUS + ")?" : "\\+?";
        String number = "(?:" + QuantityText.NUMBER + "|" + QuantityText.WITH_COMMA + ")";
        return "^(?:ask|unknown|usual|(?:(?:about|usual)" + QuantityText.SPACE + "+)?" + space + sign + number + space
                + UnitWords.pattern(EnumSet.of(dimension)) + space + "(?:"
                + QuantityText.TOLERANCE.replace("\\+/-", "\\+/" + QuantityText.MINUS) + space + number + space
                + UnitWords.pattern(EnumSet.of(dimension, Dimension.SHARE)) + ")?" + space + ")$";
    }

    private static ArrayNode types(boolean needed, String... types) {
        ArrayNode all = texts(types);
        return needed ? all : all.add("null");
    }

    private static ArrayNode texts(String... texts) {
        ArrayNode all = NODES.arrayNode();
        for (String text : texts) {
            all.add(text);
        }
        return all;
    }

    private static String word(Object constant) {
        return Words.hyphenated(((Enum<?>) constant).name());
    }
}
