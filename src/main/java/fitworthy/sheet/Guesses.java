package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** The figures and answers of a sheet that somebody guessed. */
public final class Guesses {

    /** Looked up once: each time anew it took an eighth of the time of the advice on a warm machine. */
    private static final ClassValue<Method[]> PARTS = new ClassValue<>() {
        @Override
        protected Method[] computeValue(Class<?> record) {
            return Arrays.stream(record.getRecordComponents())
                    .map(RecordComponent::getAccessor)
                    .toArray(Method[]::new);
        }
    };

    private final Predicate<Missing> left;
    private final List<Missing> found = new ArrayList<>();

    private Guesses(Predicate<Missing> left) {
        this.left = left;
    }

    /** The fields that hold a guess, in the order of the sheet's fields. */
    public static List<Missing> of(Sheet sheet) {
        Guesses guesses = new Guesses(guess -> false);
        guesses.value(sheet);
        return guesses.found;
    }

    /** The sheet as if the guesses that match had been left out. */
    public static Sheet leftOut(Sheet sheet, Predicate<Missing> guesses) {
        return (Sheet) new Guesses(guesses).value(sheet);
    }

    private Object value(Object value) {
        if (value instanceof Figure figure) {
            return figure.guess()
                    .filter(this::leaves)
                    .<Object>map(Figure::missing)
                    .orElse(figure);
        }
        if (value instanceof Choice<?> choice) {
            return choice.guess()
                    .filter(this::leaves)
                    .<Object>map(Choice::missing)
                    .orElse(choice);
        }
        if (value instanceof List<?> list) {
            return list.stream().map(this::value).toList();
        }
        if (value instanceof Map<?, ?> map) {
            Map<Object, Object> values = new LinkedHashMap<>();
            map.forEach((key, entry) -> values.put(key, value(entry)));
            return values;
        }
        if (value instanceof Optional<?> optional) {
            return optional.map(this::value);
        }
        return value instanceof Record group ? group(group) : value;
    }

    private boolean leaves(Missing guess) {
        found.add(guess);
        return left.test(guess);
    }

    private Record group(Record group) {
        Method[] parts = PARTS.get(group.getClass());
        Object[] values = new Object[parts.length];
        boolean same = true;
        try {
            for (int i = 0; i < values.length; i++) {
                Object before = parts[i].invoke(group);
                values[i] = value(before);
                same &= values[i] == before;
            }
            return same
                    ? group
                    : group.getClass()
                            .getDeclaredConstructor(Arrays.stream(parts)
                                    .map(Method::getReturnType)
                                    .toArray(Class<?>[]::new))
                            .newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(
                    "cannot look into a " + group.getClass().getName(), e);
        }
    }
}
