package fitworthy.figures.measure;

import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;

/**
 * A question that the figures answer.
 *
 * @param name {@code topic.what}, the word that rule files and cards use
 * @param unit the unit in which it is printed; empty for a question answered in words
 * @param decimals how many digits after the point are worth printing
 * @param meaning what it is, in words that can stand before a value
 * @param limitMeaning what its own limit is, empty where it has none
 * @param scope of what it is asked
 */
public record MeasureKind(String name, String unit, int decimals, String meaning, String limitMeaning, Scope scope) {

    /** Of what a question is asked. */
    public enum Scope {
        /** Of the plan, however it is loaded. */
        PLAN,
        /** Of each load case. */
        LOADING
    }

    /** A question of the plan that is answered by a number. */
    public static MeasureKind number(String name, String unit, int decimals, String meaning) {
        return rated(name, unit, decimals, meaning, "");
    }

    /** The same, for a number that has a limit of its own. */
    public static MeasureKind rated(String name, String unit, int decimals, String meaning, String limitMeaning) {
        return new MeasureKind(name, unit, decimals, meaning, limitMeaning, Scope.PLAN);
    }

    /** A question of the plan that is answered by a word: yes, no, or the name of a choice. */
    public static MeasureKind word(String name, String meaning) {
        return rated(name, "", 0, meaning, "");
    }

    /** The same question asked of each load case, because its answer depends on the loading. */
    public MeasureKind byLoading() {
        return new MeasureKind(name, unit, decimals, meaning, limitMeaning, Scope.LOADING);
    }

    /** The same question with one digit more after the point. */
    public MeasureKind finer() {
        return new MeasureKind(name, unit, decimals + 1, meaning, limitMeaning, scope);
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
        double digit = digit();
        // A millionth of a digit is the binary fraction's, not the figure's.
        return way * digit * Math.ceil(way * value / digit - 1e-6);
    }

    /** One of the last digit printed, in the unit used inside. */
    private double digit() {
        return Dimension.size(unit) * Math.pow(10, -decimals);
    }
}
