package fitworthy.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.figures.Measures;
import fitworthy.figures.measure.Measure;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.rules.Comparison.Asked;
import fitworthy.rules.Comparison.Both;
import fitworthy.rules.Comparison.Compared;
import fitworthy.rules.Comparison.Either;
import fitworthy.rules.Comparison.Holds;
import fitworthy.rules.Comparison.Named;
import fitworthy.rules.Comparison.Not;
import fitworthy.rules.Comparison.Operator;
import fitworthy.rules.Comparison.Text;
import fitworthy.rules.Comparison.Truth;
import fitworthy.rules.Comparison.Zero;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A load of 900 kg, one of 1000 kg at its limit, and one that is not known. */
class ComparisonTest {

    private static final Measure LESS = loaded(Figure.of(900, 0));
    private static final Measure MORE = loaded(Figure.of(1000, 0));
    private static final Measure UNKNOWN = loaded(Figure.missing(new Missing("a", "b", "c")));

    private static final Named KNOWN = new Named(null, Property.KNOWN);
    private static final Named OTHERS = new Named("$a", Property.KNOWN);
    private static final Comparison YES = new Compared(new Truth(true), Operator.EQUAL, new Truth(true));
    private static final Comparison NO = new Compared(new Truth(true), Operator.EQUAL, new Truth(false));

    private static Measure loaded(Figure figure) {
        return Measure.of(Measures.kinds().get("mass.loaded"), "vehicle", figure, Figure.of(1000, 0));
    }

    private static boolean holds(Comparison comparison) {
        return comparison.holds(LESS, Map.of());
    }

    @Test
    void bothNeedsEachPartAndEitherOne() {
        assertEquals(true, holds(new Both(List.of(YES, YES))));
        assertEquals(false, holds(new Both(List.of(YES, NO))));
        assertEquals(false, holds(new Both(List.of(NO, YES))));
        assertEquals(true, holds(new Either(List.of(YES, NO))));
        assertEquals(true, holds(new Either(List.of(NO, YES))));
        assertEquals(false, holds(new Either(List.of(NO, NO))));
        assertEquals(false, holds(new Not(YES)));
        assertEquals(true, holds(new Not(NO)));
    }

    @Test
    void anAnswerIsThatOfTheFactOrOfOneBoundBefore() {
        for (Comparison own : List.of(new Holds(KNOWN), new Asked(KNOWN))) {
            assertEquals(true, own.holds(LESS, Map.of("$a", UNKNOWN)));
            assertEquals(false, own.holds(UNKNOWN, Map.of("$a", LESS)));
        }
        for (Comparison others : List.of(new Holds(OTHERS), new Asked(OTHERS))) {
            assertEquals(true, others.holds(UNKNOWN, Map.of("$a", LESS)));
            assertEquals(false, others.holds(LESS, Map.of("$a", UNKNOWN)));
        }
    }

    @Test
    void anAnswerIsComparedWithTrueAndFalse() {
        for (boolean is : List.of(true, false)) {
            assertEquals(is, new Truth(is).value(LESS, Map.of()));
            assertEquals(is, holds(new Compared(KNOWN, Operator.EQUAL, new Truth(is))));
            assertEquals(!is, holds(new Compared(KNOWN, Operator.UNEQUAL, new Truth(is))));
        }
    }

    /** By each operator: 900 with 1000, 1000 with 1000 and 1000 with 900. */
    @Test
    void numbersAreComparedOnBothSidesOfTheBoundaryAndOnIt() {
        Map<Operator, List<Boolean>> wanted = Map.of(
                Operator.EQUAL, List.of(false, true, false),
                Operator.UNEQUAL, List.of(true, false, true),
                Operator.BELOW, List.of(true, false, false),
                Operator.AT_MOST, List.of(true, true, false),
                Operator.ABOVE, List.of(false, false, true),
                Operator.AT_LEAST, List.of(false, true, true));
        Named own = new Named(null, Property.VALUE);
        Named others = new Named("$a", Property.VALUE);
        wanted.forEach((operator, holds) -> {
            Comparison comparison = new Compared(own, operator, others);
            assertEquals(
                    holds,
                    List.of(
                            comparison.holds(LESS, Map.of("$a", MORE)),
                            comparison.holds(MORE, Map.of("$a", MORE)),
                            comparison.holds(MORE, Map.of("$a", LESS))),
                    comparison::toString);
        });
        Named left = new Named(null, Property.HEADROOM);
        assertEquals(true, new Compared(left, Operator.AT_MOST, new Zero()).holds(MORE, Map.of()), "nothing is left");
        assertEquals(false, new Compared(left, Operator.AT_MOST, new Zero()).holds(LESS, Map.of()));
    }

    @Test
    void textsAreComparedAsTheyAreWritten() {
        Named subject = new Named(null, Property.SUBJECT);
        for (boolean same : List.of(true, false)) {
            Text text = new Text(same ? "vehicle" : "trailer");
            assertEquals(same, holds(new Compared(subject, Operator.EQUAL, text)));
            assertEquals(!same, holds(new Compared(text, Operator.UNEQUAL, subject)));
        }
    }

    @Test
    void eachNamesTheProperties() {
        Named value = new Named(null, Property.VALUE);
        Comparison compared = new Compared(value, Operator.BELOW, OTHERS);
        assertEquals(List.of(value, OTHERS), named(compared));
        assertEquals(List.of(value), named(new Compared(new Zero(), Operator.BELOW, value)));
        assertEquals(List.of(KNOWN), named(new Holds(KNOWN)));
        assertEquals(List.of(OTHERS), named(new Asked(OTHERS)));
        assertEquals(List.of(value, OTHERS), named(new Not(compared)));
        assertEquals(List.of(value, OTHERS, KNOWN), named(new Both(List.of(compared, new Holds(KNOWN)))));
        assertEquals(List.of(KNOWN, value, OTHERS), named(new Either(List.of(new Holds(KNOWN), compared))));
    }

    private static List<Named> named(Comparison comparison) {
        return comparison.named().toList();
    }

    /** Whoever adds another has to look at what takes every yes or no of a rule for this one, as Guards does. */
    @Test
    void theOnlyYesOrNoIsWhetherAMeasureIsKnown() {
        assertEquals(
                List.of(Property.KNOWN),
                Arrays.stream(Property.values())
                        .filter(property -> property.kind() == Property.Kind.TRUTH)
                        .toList());
    }
}
