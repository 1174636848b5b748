package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Mark;
import fitworthy.quantity.Missing;
import fitworthy.quantity.Money;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.RecordSchema;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Predicate;

/** The figures and answers of a sheet that somebody guessed. */
public final class Guesses {

    /** What stands in the place of a guess. */
    @FunctionalInterface
    private interface Put {

        /** @param value a {@link Figure} or a {@link Choice} @param at its field */
        Object inPlaceOf(Object value, Missing at, FieldSchema field);
    }

    private final Put put;
    /** What stands in the place of a stated figure; null where that stays. */
    private final Figure stated;

    private Guesses(Put put, Figure stated) {
        this.put = put;
        this.stated = stated;
    }

    /** The fields that hold a guess, in the order of the sheet's fields. */
    public static List<Missing> of(Sheet sheet) {
        return of(sheet, Set.of());
    }

    /**
     * The same of a sheet that is like another in which nobody guessed: a group that it has of that is not looked through
     * again.
     */
    public static List<Missing> after(Sheet unguessed, Sheet sheet) {
        Set<Object> known = Collections.newSetFromMap(new IdentityHashMap<>());
        for (FieldSchema field : RecordSchema.of(Sheet.class).fields()) {
            if (field.in(unguessed) instanceof List<?> groups) {
                known.addAll(groups);
            } else if (field.in(unguessed) instanceof Record group) {
                known.add(group);
            }
        }
        return of(sheet, known);
    }

    private static List<Missing> of(Sheet sheet, Set<Object> unguessed) {
        List<Missing> found = new ArrayList<>();
        look(sheet, unguessed, (value, at) -> found.add(at));
        return found;
    }

    /** Those of them that are figures, which alone have a tolerance. */
    public static List<Missing> figures(Sheet sheet) {
        return List.copyOf(values(sheet).keySet());
    }

    /** The same with the figure that was put in. */
    public static Map<Missing, Figure> values(Sheet sheet) {
        Map<Missing, Figure> found = new LinkedHashMap<>();
        look(sheet, Set.of(), (value, at) -> {
            if (value instanceof Figure figure) {
                found.put(at, figure);
            }
        });
        return found;
    }

    /** The sheet as if the guesses that match had been left out. */
    public static Sheet leftOut(Sheet sheet, Predicate<Missing> guesses) {
        return changed(
                sheet,
                (value, at, field) ->
                        !guesses.test(at) ? value : value instanceof Figure ? Figure.missing(at) : Choice.missing(at));
    }

    /** The sheet with no figure in it but what the book filled in, and without the answers that somebody guessed. */
    public static Sheet usualAlone(Sheet sheet) {
        return (Sheet) new Guesses(
                        (value, at, field) -> at.mark() == Mark.USUAL
                                ? value
                                : value instanceof Figure ? Figure.missing(at) : Choice.missing(at),
                        Figure.missing(new Missing("", "what the sheet states", "")))
                .value(sheet, null);
    }

    /** The sheet as if the figures that match were known to the last digit. */
    public static Sheet settled(Sheet sheet, Predicate<Missing> guesses) {
        return changed(
                sheet,
                (value, at, field) -> value instanceof Figure figure && guesses.test(at) ? figure.exact() : value);
    }

    /**
     * The sheet as it may be instead of a guess: stated as the least and as the most that a figure may be, or as each of
     * the other answers.
     */
    public static List<Sheet> otherwise(Sheet sheet, Missing guess) {
        List<Object> others = new ArrayList<>();
        changed(sheet, (value, at, field) -> {
            if (at.equals(guess)) {
                others.addAll(value instanceof Figure figure ? ends(figure, field) : otherAnswers((Choice<?>) value));
            }
            return value;
        });
        return others.stream()
                .map(other -> changed(sheet, (value, at, field) -> at.equals(guess) ? other : value))
                .toList();
    }

    private static List<Figure> ends(Figure guess, FieldSchema field) {
        double least = guess.value() - guess.tolerance();
        return List.of(
                Figure.of(field.description().signed() ? least : Math.max(0, least), 0),
                Figure.of(guess.value() + guess.tolerance(), 0));
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static List<Object> otherAnswers(Choice<?> guess) {
        return Arrays.stream(guess.value().getDeclaringClass().getEnumConstants())
                .filter(answer -> answer != guess.value())
                .<Object>map(answer -> Choice.of((Enum) answer))
                .toList();
    }

    /**
     * Nothing is made anew where nothing is to be changed: that is asked at each edit.
     *
     * @param unguessed groups that are known to hold no guess, by their identity
     */
    private static void look(Object value, Set<Object> unguessed, BiConsumer<Object, Missing> found) {
        if (value instanceof Figure figure) {
            figure.guess().ifPresent(at -> found.accept(figure, at));
        } else if (value instanceof Choice<?> choice) {
            choice.guess().ifPresent(at -> found.accept(choice, at));
        } else if (value instanceof List<?> list) {
            list.forEach(item -> look(item, unguessed, found));
        } else if (value instanceof Map<?, ?> map) {
            map.values().forEach(item -> look(item, unguessed, found));
        } else if (value instanceof Record group && !(value instanceof Money) && !unguessed.contains(group)) {
            for (FieldSchema field : RecordSchema.of(group.getClass()).fields()) {
                if (!field.content().isWords()) {
                    look(field.in(group), unguessed, found);
                }
            }
        }
    }

    private static Sheet changed(Sheet sheet, Put put) {
        return (Sheet) new Guesses(put, null).value(sheet, null);
    }

    /** @param field in which the value stands; null for the whole sheet */
    private Object value(Object value, FieldSchema field) {
        if (value instanceof Figure figure) {
            return figure.guess()
                    .map(at -> put.inPlaceOf(figure, at, field))
                    .orElse(stated == null || !figure.known() ? figure : stated);
        }
        if (value instanceof Choice<?> choice) {
            return choice.guess().map(at -> put.inPlaceOf(choice, at, field)).orElse(choice);
        }
        if (value instanceof List<?> list) {
            List<Object> values =
                    list.stream().<Object>map(item -> value(item, field)).toList();
            return isSame(list, values) ? list : values;
        }
        if (value instanceof Map<?, ?> map) {
            Map<Object, Object> values = new LinkedHashMap<>();
            map.forEach((key, entry) -> values.put(key, value(entry, field)));
            return isSame(map.values(), values.values()) ? map : values;
        }
        return value instanceof Record group && !(value instanceof Money) ? group(group) : value;
    }

    /** Whether nothing was put in the place of anything: what is not guessed is to stay the very thing it was. */
    private static boolean isSame(Collection<?> some, Collection<?> others) {
        Iterator<?> other = others.iterator();
        return some.stream().allMatch(each -> each == other.next());
    }

    private Record group(Record group) {
        RecordSchema schema = RecordSchema.of(group.getClass());
        Object[] values = new Object[schema.fields().size()];
        boolean same = true;
        for (int i = 0; i < values.length; i++) {
            FieldSchema field = schema.fields().get(i);
            if (!field.content().isWords()) {
                Object before = field.in(group);
                values[i] = value(before, field);
                same &= values[i] == before;
            }
        }
        if (same && !(stated != null && schema.fields().stream().anyMatch(Guesses::isSize))) {
            return group;
        }
        for (int i = 0; i < values.length; i++) {
            FieldSchema field = schema.fields().get(i);
            Object held = field.content().isWords() ? words(field, group) : values[i];
            values[i] = field.optional() ? Optional.ofNullable(held) : held;
        }
        return schema.made(values);
    }

    /** The size on a sidewall is words that figures are read from. */
    private Object words(FieldSchema field, Record group) {
        return stated != null && isSize(field) ? "" : field.in(group);
    }

    private static boolean isSize(FieldSchema field) {
        return field.name().equals("size") && field.content() == FieldSchema.Content.TEXT;
    }
}
