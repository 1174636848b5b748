package fitworthy.sheet;

import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Mark;
import fitworthy.quantity.QuantityText;
import fitworthy.source.NodePath;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * Whether the place that a shelf has measured of a part is the one that words mean: along the vehicle within the spread of
 * the words and of a tape, and so in its height, unless the shelf itself says that the part sits there, as an aerial does whose foot is
 * on the bar. To which side it is no word tells.
 */
public final class MeasuredPlace {

    private static final String AT = "at";

    private MeasuredPlace() {}

    /**
     * @param where the words
     * @param worded what stands in a field of the part where it is placed by the words; empty where nothing does
     * @param measured the same where it is placed by the shelf
     */
    public static boolean isMeant(
            String where, Function<NodePath, String> worded, Function<NodePath, String> measured) {
        return agree("x", worded, measured).filter(same -> same).isPresent()
                && (says(where, measured.apply(NodePath.of(Wanted.ROOM)))
                        || agree("z", worded, measured).orElse(true));
    }

    /** Whether an answer such as behind-bar is told by words such as "on the bar". */
    private static boolean says(String where, String answer) {
        String[] words = answer.split("-");
        return !answer.isEmpty()
                && Arrays.asList(where.toLowerCase(Locale.ROOT).split(" ")).contains(words[words.length - 1]);
    }

    /** Empty where either says nothing. */
    private static Optional<Boolean> agree(
            String axis, Function<NodePath, String> worded, Function<NodePath, String> measured) {
        Optional<Figure> guess = figure(worded.apply(NodePath.of(AT, axis)));
        Optional<Figure> tape = figure(measured.apply(NodePath.of(AT, axis)));
        return guess.flatMap(
                one -> tape.map(other -> Math.abs(one.value() - other.value()) <= tolerance(one) + tolerance(other)));
    }

    private static double tolerance(Figure figure) {
        return figure.hasTolerance() ? figure.tolerance() : Sheet.ASSUMED_PLACE;
    }

    private static Optional<Figure> figure(String text) {
        try {
            return text.isEmpty()
                    ? Optional.empty()
                    : Optional.of(QuantityText.parse(Mark.read(text).text(), Dimension.LENGTH));
        } catch (QuantityText.Unreadable e) {
            return Optional.empty();
        }
    }
}
