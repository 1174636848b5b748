package fitworthy.schema;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.Money;
import fitworthy.source.Words;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One field of a record.
 *
 * @param name as written in a sheet
 * @param content what kind of thing it holds
 * @param type the enum of a choice or the record of a group, else null
 * @param optional whether its absence is an empty {@link Optional}
 * @param description what its annotation says; null where it stands for the further fields of a kind
 * @param accessor reads it of a record
 */
public record FieldSchema(
        String name, Content content, Class<?> type, boolean optional, FieldDescription description, Method accessor) {

    /** How a day is written, as a regular expression. */
    public static final String DATE = "[0-9]{4}-[0-9]{2}-[0-9]{2}";
    /** How a price is written, as a regular expression. */
    public static final String MONEY = "[0-9]{1,9}(\\.[0-9]{1,2})? [A-Z]{3}";

    /** The kinds of thing that a field may hold. */
    public enum Content {
        TEXT,
        FIGURE,
        CHOICE,
        DATE,
        MONEY,
        GROUP,
        TEXTS,
        GROUPS,
        /** Names, each with a figure. */
        FIGURES,
        /** The fields that a {@link Variant} has beside the common ones, written among those. */
        FIELDS_OF_KIND;

        /** Whether it is words alone: neither a figure nor an answer, nor anything that holds one. */
        public boolean isWords() {
            return this == TEXT || this == TEXTS;
        }
    }

    static FieldSchema of(RecordComponent component) {
        Type type = component.getGenericType();
        boolean optional = component.getType() == Optional.class;
        if (optional) {
            type = argument(type);
        }
        Class<?> raw = type instanceof ParameterizedType generic ? (Class<?>) generic.getRawType() : (Class<?>) type;
        String name = Words.hyphenated(component.getName());
        Method accessor = component.getAccessor();
        accessor.setAccessible(true); // Else each reading asks anew whether it may.
        if (raw.isInterface() && Variant.Fields.class.isAssignableFrom(raw)) {
            return new FieldSchema(name, Content.FIELDS_OF_KIND, null, false, null, accessor);
        }
        Field annotation = component.getAnnotation(Field.class);
        if (annotation == null) {
            throw new IllegalStateException(component + " has no @Field");
        }
        Class<?> within = raw == List.class || raw == Choice.class ? (Class<?>) argument(type) : raw;
        Content content = content(raw, within);
        if (content == null) {
            throw new IllegalStateException(component + " is of a type that no sheet can hold");
        }
        boolean typed = content == Content.CHOICE || content == Content.GROUP || content == Content.GROUPS;
        return new FieldSchema(
                name, content, typed ? within : null, optional, FieldDescription.of(annotation), accessor);
    }

    /** @param within what a list or choice is of; else the class itself */
    private static Content content(Class<?> raw, Class<?> within) {
        if (raw == List.class) {
            return within == String.class ? Content.TEXTS : Content.GROUPS;
        }
        if (within.isEnum()) {
            return Content.CHOICE;
        }
        if (raw == Money.class) {
            return Content.MONEY;
        }
        if (raw == Figure.class) {
            return Content.FIGURE;
        }
        if (raw.isRecord()) {
            return Content.GROUP;
        }
        return raw == String.class
                ? Content.TEXT
                : raw == LocalDate.class ? Content.DATE : raw == Map.class ? Content.FIGURES : null;
    }

    private static Type argument(Type type) {
        return ((ParameterizedType) type).getActualTypeArguments()[0];
    }

    /** What a record holds of it; null where it is left out and nothing stands for it. */
    public Object in(Record record) {
        try {
            Object held = accessor.invoke(record);
            return optional ? ((Optional<?>) held).orElse(null) : held;
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot read " + accessor, e);
        }
    }

    /** Whether its answer is a kind, which decides the further fields of its record. */
    public boolean tellsKind() {
        return type != null && Variant.class.isAssignableFrom(type);
    }

    /** That a record does not give it. @param record where that stands in the sheet */
    public Missing missingIn(String record) {
        return missingAt(record + "." + name);
    }

    /** That it is not given. @param path its own place in the sheet */
    Missing missingAt(String path) {
        return new Missing(path, description.question(), description.find());
    }

    /** Whether its words are more than a name and what is printed, so that what nobody knows is left out. */
    boolean decides() {
        return !description.needed() && !description.printed();
    }

    /** A value for this field as a sheet would write it. */
    public String example() {
        if (!description.example().isEmpty()) {
            return description.example();
        }
        return switch (content) {
            case FIGURE, FIGURES -> description.in().example();
            case CHOICE -> String.join(" or ", ChoiceWords.offered(type));
            default -> "";
        };
    }
}
