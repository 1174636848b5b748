package fitworthy.quantity;

import java.util.function.ToDoubleFunction;

/** A figure computed by a formula in which an input may stand more than once. */
public final class Derived {

    private Derived() {}

    /**
     * The formula's value at the inputs, in the order given. Its tolerance is the root of the summed squares of what
     * half the step across each input's tolerance does to it (JCGM 100:2008, 5.1.3, the numerical way; cited from
     * memory).
     *
     * @return missing what any of the inputs lacks
     */
    public static Figure of(ToDoubleFunction<double[]> formula, Figure... inputs) {
        Figure known = Figure.ZERO;
        for (Figure input : inputs) {
            known = known.missingWith(input, input);
        }
        if (!known.known()) {
            return known;
        }
        double squares = 0;
        for (int i = 0; i < inputs.length; i++) {
            if (inputs[i].tolerance() > 0) {
                double half =
                        (at(formula, inputs, i, inputs[i].tolerance()) - at(formula, inputs, i, -inputs[i].tolerance()))
                                / 2;
                squares += half * half;
            }
        }
        return Figure.of(at(formula, inputs, 0, 0), Math.sqrt(squares));
    }

    private static double at(ToDoubleFunction<double[]> formula, Figure[] inputs, int moved, double step) {
        double[] values = new double[inputs.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = inputs[i].value() + (i == moved ? step : 0);
        }
        return formula.applyAsDouble(values);
    }
}
