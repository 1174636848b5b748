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

    private final Predicate<Missing> meant;
    private final UnaryOperator<Figure> figures;
    private final UnaryOperator<Choice<?>> choices;

    private Guesses(Predicate<Missing> meant, UnaryOperator<Figure> figures, UnaryOperator<Choice<?>> choices) {
        this.meant = meant;
        this.figures = figures;
        this.choices = choices;
    }

    /** The fields that hold a guess, in the order of the sheet's fields. */
    public static List<Missing> of(Sheet sheet) {
        List<Missing> found = new ArrayList<>();
        new Guesses(
                        guess -> {
                            found.add(guess);
                            return false;
                        },
                        UnaryOperator.identity(),
                        UnaryOperator.identity())
                .value(sheet);
        return found;
    }

    /** Those of them that are figures, which alone have a tolerance. */
    public static List<Missing> figures(Sheet sheet) {
        List<Missing> found = new ArrayList<>();
        new Guesses(
                        guess -> true,
                        figure -> {
                            found.add(figure.guess().orElseThrow());
                            return figure;
                        },
                        UnaryOperator.identity())
                .value(sheet);
        return found;
    }

    /** The sheet as if the guesses that match had been left out. */
    public static Sheet leftOut(Sheet sheet, Predicate<Missing> guesses) {
        return (Sheet) new Guesses(
                        guesses,
                        figure -> Figure.missing(figure.guess().orElseThrow()),
                        choice -> Choice.missing(choice.missing()))
                .value(sheet);
    }

    /** The sheet as if the figures that match were known to the last digit. */
    public static Sheet settled(Sheet sheet, Predicate<Missing> guesses) {
        return (Sheet) new Guesses(guesses, Figure::exact, UnaryOperator.identity()).value(sheet);
    }

    private Object value(Object value) {
        if (value instanceof Figure figure) {
            return figure.guess().filter(meant).isPresent() ? figures.apply(figure) : figure;
        }
        if (value instanceof Choice<?> choice) {
            return choice.guess().filter(meant).isPresent() ? choices.apply(choice) : choice;
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
