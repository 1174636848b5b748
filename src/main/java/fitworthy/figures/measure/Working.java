package fitworthy.figures.measure;

import fitworthy.quantity.Figure;
import fitworthy.quantity.QuantityText;
import fitworthy.quantity.Total;
import fitworthy.source.Words;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How a figure was worked out. No text is made before it is asked for, since most measures are never explained. */
@FunctionalInterface
public interface Working {

    /** Columns of the name of a row. */
    int NAME = 30;

    /** What a person needs to do the sum again. */
    List<String> lines();

    /** Whether the lines list the masses of a loading one by one, which a mass sheet shows better. */
    default boolean listsMasses() {
        return false;
    }

    /**
     * A formula and what is put into it. It holds for the numbers as printed, in the units printed with them and in the
     * one its result is printed in, so that nobody has to convert; {@code %} stands for a hundredth, angles are in
     * degrees.
     *
     * @param text the formula, {@code result = ...}, in the names of the inputs
     */
    record Formula(String text, List<Input> inputs) implements Working {
        @Override
        public List<String> lines() {
            return List.of(inputs.stream()
                    .map(input -> ", " + input.name() + " = " + input.shown())
                    .collect(Collectors.joining("", text, "")));
        }
    }

    /** A figure added up from named parts. */
    record Sum(String result, List<Input> parts) implements Working {
        @Override
        public List<String> lines() {
            return parts.isEmpty()
                    ? List.of()
                    : List.of(parts.stream()
                            .map(part -> part.shown() + " (" + part.name() + ")")
                            .collect(Collectors.joining(" + ", result + " = ", "")));
        }
    }

    /** A figure put into a formula. @param figure in the unit used inside @param unit the one it is printed in */
    record Input(String name, Figure figure, String unit) {
        public String shown() {
            return !figure.known()
                    ? "not known"
                    : Double.isFinite(figure.value())
                            ? figure.mark().before(QuantityText.shown(figure.value(), unit))
                            : "without bound";
        }
    }

    /** The parts added up; nothing where there are none. */
    static Figure total(List<Input> parts) {
        return Total.of(parts.stream().map(Input::figure));
    }

    /** A line of a table: a name in 30 columns and what is told of it in 8 each, shortened and set to the right. */
    static String row(String name, String... columns) {
        StringBuilder row = new StringBuilder(Words.shortened(name, NAME));
        row.append(" ".repeat(NAME - row.length()));
        for (String column : columns) {
            row.append(" ".repeat(Math.max(1, 8 - column.length()))).append(column);
        }
        return row.toString();
    }

    /** What a row of a table is called, with what of its figures is a guess: 'Canopy (about)', 'Canopy (at usual)'. */
    static String marked(String name, Input... figures) {
        String marks = Stream.of(figures)
                .filter(input -> input.figure().mark().isGuess())
                .map(input -> (input.name() + " " + input.figure().mark().word()).strip())
                .collect(Collectors.joining(", "));
        return marks.isEmpty() ? name : Words.shortened(name, NAME - marks.length() - 3) + " (" + marks + ")";
    }

    /** A figure put into a formula. */
    static Input in(String name, Figure figure, String unit) {
        return new Input(name, figure, unit);
    }
}
