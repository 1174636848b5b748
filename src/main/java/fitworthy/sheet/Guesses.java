package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.Money;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.RecordSchema;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/** The figures and answers of a sheet that somebody guessed. */
public final class Guesses {

    private final Predicate<Missing> left;
    private final UnaryOperator<Object> put;
    private final List<Missing> found = new ArrayList<>();

    /** @param put what stands in place of a guess that is left */
    private Guesses(Predicate<Missing> left, UnaryOperator<Object> put) {
        this.left = left;
        this.put = put;
    }

    /** The fields that hold a guess, in the order of the sheet's fields. */
    public static List<Missing> of(Sheet sheet) {
        Guesses guesses = new Guesses(guess -> false, UnaryOperator.identity());
        guesses.value(sheet);
        return guesses.found;
    }

    /** The sheet as if the guesses that match had been left out. */
    public static Sheet leftOut(Sheet sheet, Predicate<Missing> guesses) {
        return (Sheet) new Guesses(guesses, Guesses::missing).value(sheet);
    }

    /** The sheet as if its guessed figures were known to the last digit; guessed words stay. */
    public static Sheet exact(Sheet sheet) {
        return (Sheet) new Guesses(guess -> true, guess -> guess instanceof Figure figure ? figure.exact() : guess)
                .value(sheet);
    }

    private Object value(Object value) {
        if (value instanceof Figure || value instanceof Choice<?>) {
            return guess(value)
                    .filter(this::leaves)
                    .map(guess -> put.apply(value))
                    .orElse(value);
        }
        if (value instanceof List<?> list) {
            return list.stream().map(this::value).toList();
        }
        if (value instanceof Map<?, ?> map) {
            Map<Object, Object> values = new LinkedHashMap<>();
            map.forEach((key, entry) -> values.put(key, value(entry)));
            return values;
        }
        return value instanceof Record group && !(value instanceof Money) ? group(group) : value;
    }

    private static Optional<Missing> guess(Object value) {
        return value instanceof Figure figure ? figure.guess() : ((Choice<?>) value).guess();
    }

    private static Object missing(Object guess) {
        return guess instanceof Figure figure
                ? Figure.missing(figure.guess().orElseThrow())
                : Choice.missing(guess(guess).orElseThrow());
    }

    private boolean leaves(Missing guess) {
        found.add(guess);
        return left.test(guess);
    }

    private Record group(Record group) {
        RecordSchema schema = RecordSchema.of(group.getClass());
        Object[] values = new Object[schema.fields().size()];
        boolean same = true;
        for (int i = 0; i < values.length; i++) {
            FieldSchema field = schema.fields().get(i);
            Object before = field.in(group);
            Object after = value(before);
            values[i] = field.optional() ? Optional.ofNullable(after) : after;
            same &= after == before;
        }
        return same ? group : schema.made(values);
    }
}
