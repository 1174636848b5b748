package fitworthy.quantity;

import java.util.stream.Stream;

/** A sum of many figures, as {@link Figure#plus} adds them up one by one, without a figure for each step. */
public final class Total {

    private double value;
    private double tolerance;
    private Lack lack = Lack.NOTHING;

    /** Some figures added up; 0 where there are none. */
    public static Figure of(Stream<Figure> figures) {
        Total total = new Total();
        figures.forEach(total::add);
        return total.figure();
    }

    /** Adds a figure. */
    public void add(Figure figure) {
        value = Figure.sum(value, figure.value());
        tolerance = Figure.root(tolerance, figure.tolerance());
        lack(figure);
    }

    /**
     * Adds a number, whose tolerance is left to {@link #within}.
     *
     * @param of what it was worked out of; where that is missing, so is the sum
     */
    public void add(double number, Figure... of) {
        value = Figure.sum(value, number);
        for (Figure each : of) {
            lack(each);
        }
    }

    private void lack(Figure of) {
        if (!of.known()) {
            lack = lack.with(of.lack());
        }
    }

    public Figure figure() {
        return within(tolerance);
    }

    /** The sum with a tolerance of its own. */
    public Figure within(double width) {
        return Figure.of(value, width, lack);
    }
}
