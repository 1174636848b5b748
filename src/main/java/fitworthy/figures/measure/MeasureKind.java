package fitworthy.figures.measure;

import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.ChoiceWords;
import java.util.List;
import java.util.stream.Stream;

/**
 * A question that the figures answer.
 *
 * @param name {@code topic.what}, the word that rule files and cards use
 * @param unit the unit in which it is printed; empty for a question answered in words
 * @param decimals how many digits after the point are worth printing
 * @param asPlanned what it is, in words that can stand before a value, but for its state
 * @param state in which state of the loading it is asked
 * @param limitMeaning what its own limit is, empty where it has none
 * @param scope of what it is asked
 * @param answer what it may be answered by
 * @param ofTrailer whether it is a load of the trailer's own, which nothing in the vehicle changes
 */
public record MeasureKind(
        String name,
        String unit,
        int decimals,
        String asPlanned,
        State state,
        String limitMeaning,
        Scope scope,
        Answer answer,
        boolean ofTrailer) {

    /** Of what a question is asked. */
    public enum Scope {
        /** Of the plan, however it is loaded. */
        PLAN,
        /** Of each load case. */
        LOADING
    }

    /**
     * In which state of a loading a question is asked.
     *
     * @param words {@code once the tanks are used up}; empty where as planned
     * @param onTheWay whether it is as what is carried is used up
     */
    public record State(String words, boolean onTheWay) {
        private static final State AS_PLANNED = new State("", false);
    }

    /** What a question may be answered by. A rule that holds it against anything else would never fire, or always. */
    public sealed interface Answer {
        /**
         * A number.
         *
         * @param signed whether it may be below zero
         * @param bothWays whether there can be too much of it and too little, so that it is rounded to neither side
         */
        record Number(boolean signed, boolean bothWays) implements Answer {}

        /** One of these words. @param others whether it may be told in other words too, which no rule can ask for */
        record Word(List<String> words, boolean others) implements Answer {}

        /** A word that the program does not know: out of a table of the book, or made of the plan. */
        record LookedUp() implements Answer {}
    }

    /** By the name alone, which tells them apart: sets of them are asked about each check. */
    @Override
    public int hashCode() {
        return name.hashCode();
    }

    /** A question of the plan that is answered by a number, which is never below zero. */
    public static MeasureKind number(String name, String unit, int decimals, String meaning) {
        return rated(name, unit, decimals, meaning, "");
    }

    /** The same, for a number that has a limit of its own. */
    public static MeasureKind rated(String name, String unit, int decimals, String meaning, String limitMeaning) {
        return new MeasureKind(
                name,
                unit,
                decimals,
                meaning,
                State.AS_PLANNED,
                limitMeaning,
                Scope.PLAN,
                new Answer.Number(false, false),
                false);
    }

    /** A question of the plan that is answered by yes or no. */
    public static MeasureKind yesNo(String name, String meaning) {
        return word(name, meaning, YesNo.class);
    }

    /** A question of the plan that is answered by the name of a choice. */
    public static MeasureKind word(String name, String meaning, Class<? extends Enum<?>> choices) {
        return inWords(name, meaning, new Answer.Word(ChoiceWords.of(choices), false));
    }

    /** A question of the plan that is answered by a word where there is nothing to tell, else by what there is. */
    public static MeasureKind told(String name, String meaning, String nothing) {
        return inWords(name, meaning, new Answer.Word(List.of(nothing), true));
    }

    /** A question of the plan that is answered by a word out of a table of the book, or made of the plan. */
    public static MeasureKind lookedUp(String name, String meaning) {
        return inWords(name, meaning, new Answer.LookedUp());
    }

    private static MeasureKind inWords(String name, String meaning, Answer answer) {
        return new MeasureKind(name, "", 0, meaning, State.AS_PLANNED, "", Scope.PLAN, answer, false);
    }

    /** What it is, in words that can stand before a value. */
    public String meaning() {
        return state.words().isEmpty() ? asPlanned : asPlanned + " " + state.words();
    }

    /** The same question, asked as things are used up. @param when {@code once the tanks are used up} */
    public MeasureKind onTheWay(String when) {
        return in(new State(when, true));
    }

    /** The same question, asked of another state than the planned. @param when {@code once every tank is full} */
    public MeasureKind in(String when) {
        return in(new State(when, false));
    }

    private MeasureKind in(State other) {
        return new MeasureKind(name, unit, decimals, asPlanned, other, limitMeaning, scope, answer, ofTrailer);
    }

    /** The same question, to which one word more may be the answer. */
    public MeasureKind or(String word) {
        return answeredBy(
                new Answer.Word(Stream.concat(words().stream(), Stream.of(word)).toList(), false));
    }

    /** The same question, answered by a number that may be below zero. */
    public MeasureKind signed() {
        return answeredBy(new Answer.Number(true, isBothWays()));
    }

    /** The same question, answered by a number of which there can be too much and too little. */
    public MeasureKind bothWays() {
        return answeredBy(new Answer.Number(isSigned(), true));
    }

    private MeasureKind answeredBy(Answer other) {
        return new MeasureKind(name, unit, decimals, asPlanned, state, limitMeaning, scope, other, ofTrailer);
    }

    /** The same question asked of each load case, because its answer depends on the loading. */
    public MeasureKind byLoading() {
        return new MeasureKind(name, unit, decimals, asPlanned, state, limitMeaning, Scope.LOADING, answer, ofTrailer);
    }

    /** The same question, asked of a load of the trailer's own. */
    public MeasureKind onTrailer() {
        return new MeasureKind(name, unit, decimals, asPlanned, state, limitMeaning, scope, answer, true);
    }

    /** The same question with one digit more after the point. */
    public MeasureKind finer() {
        return new MeasureKind(name, unit, decimals + 1, asPlanned, state, limitMeaning, scope, answer, ofTrailer);
    }

    /** The same question, its numbers in another unit. @param other one of the same dimension */
    public MeasureKind in(String other, int digits) {
        return new MeasureKind(name, other, digits, asPlanned, state, limitMeaning, scope, answer, ofTrailer);
    }

    /** The words it may be answered by; none where it is answered by a number or a word out of a table. */
    public List<String> words() {
        return answer instanceof Answer.Word word ? word.words() : List.of();
    }

    /** Whether it says nothing but {@link #words}. */
    public boolean saysNothingElse() {
        return answer instanceof Answer.Word word && !word.others();
    }

    /** Whether it is answered by a number that may be below zero. */
    public boolean isSigned() {
        return answer instanceof Answer.Number number && number.signed();
    }

    /** Whether there can be too much of it and too little. */
    public boolean isBothWays() {
        return answer instanceof Answer.Number number && number.bothWays();
    }

    /** The nearest value that can be printed in full; of two that are as near the higher. */
    public double printed(double value) {
        double digit = digit();
        return digit * Math.floor(Figure.rounded(value / digit) + 0.5);
    }

    /**
     * The nearest value that can be printed in full and is on the safe side.
     *
     * @param way 1 for one that is not below the value, -1 for one that is not above it
     */
    public double printed(double value, int way) {
        double digits = value / digit();
        // So little is the binary fraction's, or the unit's that it is read in, not the figure's.
        return way * digit() * Math.ceil(way * digits - Math.max(1e-6, 1e-9 * Math.abs(digits)));
    }

    /** One of the last digit printed, in the unit used inside. */
    public double digit() {
        return Dimension.size(unit) * Math.pow(10, -decimals);
    }
}
