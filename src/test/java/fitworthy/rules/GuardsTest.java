package fitworthy.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.figures.Measures;
import fitworthy.figures.measure.Measure;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.rules.Guards.Worse;
import fitworthy.source.Fault;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A load of 900 kg +/- 5 kg on an axle that may carry 1000 kg, and words on others. */
class GuardsTest {

    private static final Measure LOAD =
            Measure.of(Measures.kinds().get("mass.axle"), "rear axle", Figure.of(900, 5), Figure.of(1000, 0));
    private static final Measure DUST = Measure.of(Measures.kinds().get("intake.dust"), "trip", "heavy", List.of());
    private static final Measure BALL = Measure.of(Measures.kinds().get("mass.ball"), "trailer", Figure.of(80));

    private static boolean hold(String condition, Worse worse, Object... more) {
        return guards(condition, worse).hold(new Facts(facts(more)), LOAD);
    }

    private static List<Object> facts(Object... more) {
        List<Object> facts = new ArrayList<>(List.of(LOAD, DUST, BALL));
        facts.addAll(List.of(more));
        return facts;
    }

    private static Guards guards(String condition, Worse worse) {
        List<Fault> faults = new ArrayList<>();
        RuleText rule = RuleParser.parse(
                        "mass/mass.drl",
                        "rule \"mass.a\" when " + condition + " then advice.give(\"mass.a\", $m); end",
                        Measures.kinds().keySet(),
                        faults)
                .get(0);
        assertEquals(List.of(), faults);
        return Guards.of(rule.asRun().condition(), "mass.axle", worse);
    }

    private static String load(String comparisons) {
        return "$m : Measure(name == \"mass.axle\", known, " + comparisons + ")";
    }

    /** What is left gets less as the load grows: a rule that fires below a headroom judges, one above it is guarded. */
    @Test
    void aComparisonThatComesTrueAsTheFigureGetsBetterIsAGuard() {
        assertEquals(true, hold(load("headroom < 0"), Worse.HIGHER));
        assertEquals(true, hold(load("headroom >= 0, headroom < tolerance"), Worse.HIGHER));
        assertEquals(
                false, hold(load("headroom > 0, value > limit"), Worse.LOWER), "less than the least: more is better");
        assertEquals(false, hold(load("excess >= 0, spare > 0"), Worse.LOWER));
        assertEquals(false, hold(load("excess > 0 && excess >= tolerance"), Worse.LOWER), "each part by itself");
        assertEquals(true, hold(load("headroom < 0"), Worse.LOWER) || hold(load("value < 0"), Worse.LOWER));
        assertEquals(false, hold(load("!(headroom >= 0)"), Worse.LOWER), "turned round by not");
        assertEquals(false, hold(load("value <= 0"), Worse.HIGHER));
        assertEquals(true, hold(load("value <= 0"), Worse.UNTOLD), "held against nothing: all of it judges");
    }

    @Test
    void whatIsAskedOfOtherFactsIsAGuard() {
        String judged = load("headroom < 0");
        assertEquals(true, hold(judged + " Measure(name == \"intake.dust\", word == \"heavy\")", Worse.HIGHER));
        assertEquals(false, hold(judged + " Measure(name == \"intake.dust\", word == \"some\")", Worse.HIGHER));
        assertEquals(false, hold(judged + " not Measure(name == \"intake.dust\", word == \"heavy\")", Worse.HIGHER));
        assertEquals(true, hold(judged + " exists Measure(name == \"mass.axle\", headroom > 0)", Worse.HIGHER));
        assertEquals(false, hold(judged + " exists Measure(name == \"mass.axle\", headroom < 0)", Worse.HIGHER));
        assertEquals(false, hold(judged + " Measure(name == \"mass.ball\", value > $m.value)", Worse.HIGHER));
        assertEquals(true, hold(judged + " Measure(name == \"mass.ball\", value < $m.value)", Worse.HIGHER));
    }

    /** The facts are all known, so that asking this of them says nothing, and asking the contrary everything. */
    @Test
    void whetherAFactIsKnownIsAGuard() {
        String judged = load("headroom < 0");
        String ball = "$b : Measure(name == \"mass.ball\", %s) ";
        assertEquals(true, hold(ball.formatted("known") + judged, Worse.HIGHER));
        assertEquals(false, hold(ball.formatted("!known") + judged, Worse.HIGHER));
        assertEquals(false, hold(ball.formatted("known, value < 0") + judged, Worse.HIGHER));
        assertEquals(true, hold(ball.formatted("known, value > 0") + judged, Worse.HIGHER));
        assertEquals(true, hold(ball.formatted("known") + load("$b.known, headroom < 0"), Worse.HIGHER));
        assertEquals(false, hold(ball.formatted("known") + load("!$b.known, headroom < 0"), Worse.HIGHER));
        String bare = "$m : Measure(name == \"mass.axle\", headroom < 0) ";
        assertEquals(true, hold(bare + "Measure(name == \"mass.ball\", value > 0)", Worse.HIGHER));
        assertEquals(false, hold(bare + "Measure(name == \"mass.ball\", value < 0)", Worse.HIGHER));
        assertEquals(false, hold(bare + "Measure(name == \"mass.ball\", !known)", Worse.HIGHER));
        assertEquals(false, hold(judged + " not Measure(name == \"mass.ball\")", Worse.HIGHER));
        assertEquals(
                false,
                hold(
                        "(" + judged + " and " + ball.formatted("!known") + ") or (" + load("value < 0") + " and "
                                + ball.formatted("!known") + ")",
                        Worse.HIGHER));
    }

    /** Such a rule adds to advice that stands by itself: where it does not fire it calls nothing in order. */
    @Test
    void aRuleThatAddsToAdviceIsNeverMet() {
        Advised given = new Advised("mass.gvm-over", "vehicle");
        String judged = load("headroom < 0");
        assertEquals(false, hold(judged + " Advised(id == \"mass.gvm-over\")", Worse.HIGHER, given));
        assertEquals(
                false,
                hold(
                        judged + " exists (Advised(id == \"mass.gvm-over\") or Advised(id == \"mass.gcm-over\"))",
                        Worse.HIGHER,
                        given));
    }

    @Test
    void whatIsJoinedByOrWithTheJudgedMeasureIsJudgedWithIt() {
        String either = "(Advised(id == \"mass.gvm-over\") and " + load("headroom < 0") + ") or (Advised(id =="
                + " \"mass.gcm-over\") and " + load("subject == \"front axle\", headroom < 0") + ")";
        assertEquals(true, hold(either, Worse.HIGHER, new Advised("mass.gvm-over", "vehicle")));
        assertEquals(false, hold(either, Worse.HIGHER), "no advice that either hangs on");
        assertEquals(false, hold(either, Worse.HIGHER, new Advised("mass.gcm-over", "vehicle")), "on another axle");
        assertEquals(
                true,
                hold(
                        "$b : Measure(name == \"mass.ball\", known) "
                                + load("headroom < 0 || (value > 0 && $b.value > limit)"),
                        Worse.HIGHER));
    }

    /** Of the trailer's mass nothing is known, and no value is recorded of the practice. */
    @Test
    void whatIsNotKnownMayHoldAndWhatIsKnownToBeOffMayNot() {
        String judged = load("headroom < 0");
        String practice = " $most : Practice(id == \"mass.rear-share-most\")";
        String trailer = "Measure(name == \"mass.combined\", known, headroom < 0)";
        String ball = "Measure(name == \"mass.ball\", known, value %s)";
        String dust = "Measure(name == \"intake.dust\", word == \"some\")";
        String advised = "Advised(id == \"mass.gvm-over\")";
        assertEquals(true, mayHold(judged + " " + trailer));
        assertEquals(true, mayHold(judged + " " + trailer + " not " + dust));
        assertEquals(true, mayHold(judged + practice + ball.formatted("> $most.value")));
        assertEquals(false, mayHold(judged + " " + trailer + " " + dust));
        assertEquals(false, mayHold(judged + practice + ball.formatted("< 0")));
        assertEquals(false, mayHold(judged + " " + trailer + " not " + dust.replace("some", "heavy")));
        assertEquals(true, mayHold("(" + judged + " and " + trailer + ") or (" + judged + " and " + dust + ")"));
        assertEquals(true, mayHold(load("headroom > 0") + " " + trailer + " " + advised), "which may yet be given");
        assertEquals(false, mayHold(judged + " " + trailer + " " + advised), "it adds to advice and cannot fire");
    }

    private static boolean mayHold(String condition) {
        Measure open = Measure.of(
                Measures.kinds().get("mass.combined"),
                "combination",
                Figure.missing(new Missing("trailer.mass", "what the trailer weighs", "a scale")),
                Figure.of(6000, 0));
        return guards(condition, Worse.HIGHER).mayHold(new Facts(facts(open)), LOAD);
    }
}
