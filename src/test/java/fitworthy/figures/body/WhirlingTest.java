package fitworthy.figures.body;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.quantity.Figure;
import org.junit.jupiter.api.Test;

class WhirlingTest {

    private static final double INCH = 0.0254;

    /**
     * A worked example on a page of shaft sums (https://calcady.com/trade/automotive/driveshaft-critical-speed): a steel
     * tube of 3.5 in with a wall of 0.083 in, 45 in long, whirls at 11 390 rpm; its steel has 30 million psi and 0.283
     * lb/in3. The page itself was seen, second-hand to any handbook.
     */
    @Test
    void agreesWithAPublishedExample() {
        double rpm = critical(3.5 * INCH, (3.5 - 2 * 0.083) * INCH, 45 * INCH);
        assertEquals(11_390, rpm, 11_390 * 0.003);
    }

    /** A shaft maker's formula for mm, {@code 1.21e8 sqrt(D2 + d2) / L2}; source shaft-maker-whirl of the book. */
    @Test
    void agreesWithAShaftMakersFormula() {
        double rpm = critical(0.076, 0.072, 1.5);
        assertEquals(1.21e8 * Math.sqrt(76 * 76 + 72 * 72) / (1500 * 1500), rpm, 0.5);
    }

    /** The beam held at its ends, in other words: E and I in SI, mass by length from the density. */
    @Test
    void agreesWithABeamHeldAtItsEnds() {
        double outer = 0.063;
        double inner = 0.057;
        double length = 1.2;
        double second = Math.PI / 64 * (Math.pow(outer, 4) - Math.pow(inner, 4));
        double byLength = 7850 * Math.PI / 4 * (outer * outer - inner * inner);
        double hertz = Math.PI / 2 * Math.sqrt(207e9 * second / (byLength * Math.pow(length, 4)));
        assertEquals(60 * hertz, critical(outer, inner, length), 60 * hertz * 1e-3);
    }

    /** As long as it may be for a speed, it whirls at that speed. */
    @Test
    void theLongestWhirlsAtThatSpeed() {
        double longest = Whirling.longest(Figure.of(0.076), Figure.of(0.072), Figure.of(4314))
                .value();
        assertEquals(4314, critical(0.076, 0.072, longest), 1e-6);
    }

    /**
     * By counting turns: in an hour at 110 km/h wheels that go 3.05 x 0.7763 m a turn turn 46 458 times, the shaft 3.9 times
     * as often, 181 186 times, which is 3019.8 a minute.
     */
    @Test
    void turnsAsOftenAsTheWheelsAndTheRatioSay() {
        double rpm = Whirling.speed(Figure.of(110 / 3.6), Figure.of(3.9), Figure.of(0.7763))
                .value();
        assertEquals(110_000 / (3.05 * 0.7763) * 3.9 / 60, rpm, 1e-9);
        assertEquals(3019.8, rpm, 0.1);
    }

    private static double critical(double outer, double inner, double length) {
        return Whirling.critical(Figure.of(outer), Figure.of(inner), Figure.of(length))
                .value();
    }
}
