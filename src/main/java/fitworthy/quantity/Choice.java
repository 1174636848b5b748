package fitworthy.quantity;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One of a few named answers, or what is missing to know it.
 *
 * @param value the answer, null where it was not given
 * @param missing the field that would hold it, null where it was stated; beside an answer that is a guess
 */
public record Choice<E extends Enum<E>>(E value, Missing missing) {

    public static <E extends Enum<E>> Choice<E> of(E value) {
        return new Choice<>(value, null);
    }

    /** Yes or no. */
    public static Choice<YesNo> yesNo(boolean yes) {
        return of(yes ? YesNo.YES : YesNo.NO);
    }

    /** An answer that was not given. */
    public static <E extends Enum<E>> Choice<E> missing(Missing missing) {
        return new Choice<>(null, missing);
    }

    /** This answer as what somebody guesses stands in a field. */
    public Choice<E> guessedFor(Missing field) {
        return new Choice<>(value, field);
    }

    /** The field for which it was guessed; nothing where it was stated or is not known. */
    public Optional<Missing> guess() {
        return known() ? Optional.ofNullable(missing) : Optional.empty();
    }

    /** How what stands in the field was meant. */
    public Mark mark() {
        return guess().map(Missing::mark).orElse(Mark.STATED);
    }

    /** Yes where any of them is, else the first by name that is not known, else no; nothing where there is none. */
    public static Optional<Choice<YesNo>> any(Stream<Choice<YesNo>> answers) {
        return answers.min(
                Comparator.comparing((Choice<YesNo> answer) -> answer.is(YesNo.YES) ? 0 : answer.known() ? 2 : 1)
                        .thenComparing(answer -> answer.known() ? "" : answer.missing.path()));
    }

    /** No where any of them is, else the first that is not known, else yes. */
    @SafeVarargs
    public static Choice<YesNo> every(Choice<YesNo>... answers) {
        return Stream.of(answers)
                .min(Comparator.comparing(answer -> answer.is(YesNo.NO) ? 0 : answer.known() ? 2 : 1))
                .orElseThrow();
    }

    public boolean known() {
        return value != null;
    }

    public boolean is(E other) {
        return value == other;
    }
}
