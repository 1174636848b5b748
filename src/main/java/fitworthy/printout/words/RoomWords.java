package fitworthy.printout.words;

import fitworthy.advice.RoomLeft.Answer;
import fitworthy.advice.RoomLeft.Figured;
import fitworthy.advice.RoomLeft.InLoading;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.room.Limit;
import fitworthy.printout.words.Digits.Held;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Mark;
import fitworthy.quantity.Missing;
import fitworthy.source.Words;
import java.util.List;

/** Figures of what a loading leaves, in the words that every table and sentence of it uses. */
public final class RoomWords {

    private static final String FUEL = "L/100km";
    /** How many figures are named that an answer lacks. */
    private static final int FIELDS = 2;

    private RoomWords() {}

    /** What is burnt, by which a range is worked out; a guess with how far it may be off. @param unit as it is to stand */
    public static String consumption(Figure litres, String unit) {
        String number = Digits.number(litres.value(), FUEL, 1) + unit;
        return litres.guess().isEmpty()
                ? number
                : "about " + number + " +/- " + Digits.number(litres.tolerance(), FUEL, 1)
                        + (litres.mark() == Mark.USUAL ? ", " + GuessWords.USUAL : "");
    }

    /** As far as the limits are known. */
    public static String atMost(Answer answer) {
        return Digits.quantity(
                answer.figured().measure().kind().printed(answer.most().atMost().value(), -1),
                answer.figured().measure().kind());
    }

    /** With all of the spread, as far as a tank holds it. */
    public static String greatest(Answer answer) {
        Figure most = answer.most().figure();
        double full = answer.most().steps().stream()
                .filter(step -> step.limit() == Limit.FULL)
                .mapToDouble(step -> step.left().value())
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        Measure measure = answer.figured().measure();
        return Digits.quantity(
                measure.kind().printed(Math.min(full, most.value() + most.tolerance()), -1), measure.kind());
    }

    /** What may be put aboard; where the GVM governs, as what is left of the payload is printed, which is the same figure. */
    public static String aboard(InLoading loading, Answer answer) {
        Measure payload = loading.payload().measure();
        boolean whole = answer.most()
                .governs()
                .filter(step -> step.limit() == Limit.GVM)
                .isPresent();
        return whole && payload.isKnown() ? Digits.quantity(Held.of(payload).left(), payload.kind()) : atMost(answer);
    }

    public static String fields(List<Missing> missing) {
        return Words.few(missing.stream().map(FieldWords::of).distinct().toList(), FIELDS);
    }

    public static String about(Figured figured) {
        return figured.guessed() ? "about " : "";
    }
}
