package fitworthy.sheet;

/**
 * One of a few named answers, or what is missing to know it.
 *
 * @param value the answer, null where it was not given
 * @param missing the field that would hold it, null where it was given
 */
public record Choice<E extends Enum<E>>(E value, Missing missing) {

    public static <E extends Enum<E>> Choice<E> of(E value) {
        return new Choice<>(value, null);
    }

    public boolean known() {
        return value != null;
    }

    public boolean is(E other) {
        return value == other;
    }
}
