package fitworthy.figures.mass;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.figures.plan.LoadBox;
import fitworthy.quantity.Figure;
import org.junit.jupiter.api.Test;

class StabilityTest {

    private static final Figure TRACK = Figure.of(1.6);
    private static final Figure HEIGHT = Figure.of(0.8);

    /**
     * The National Highway Traffic Safety Administration's definition, read: "one half the track width, t, divided by h, the
     * height of the center of gravity above the road".
     */
    @Test
    void factorIsHalfTheTrackOverTheHeight() {
        assertEquals(1.0, Stability.factor(TRACK, HEIGHT).value(), 1e-12);
        assertEquals(0.8, Stability.factor(TRACK, Figure.of(1)).value(), 1e-12);
    }

    /**
     * Worked examples in a public repository of trade sums (read,
     * https://github.com/clay-good/roughlogic.com/blob/main/specs/spec-v913.md, "Static Rollover Threshold"): a track of
     * 72 in over a centre of gravity of 80 in makes 0.45, 96 in over 60 in makes 0.80.
     */
    @Test
    void factorIsThatOfTheWorkedExamples() {
        assertEquals(0.45, Stability.factor(inches(72), inches(80)).value(), 0.005);
        assertEquals(0.80, Stability.factor(inches(96), inches(60)).value(), 0.005);
    }

    private static Figure inches(double inches) {
        return Figure.of(inches * 0.0254);
    }

    /** By moments about the lower wheels: on that slope the weight along it and across it hold each other. */
    @Test
    void onTheSlopeTheMomentsAboutTheLowerWheelsHoldEachOther() {
        Figure height = Figure.of(0.95);
        double slope = Math.toRadians(LoadBox.tippingAngle(TRACK, height).value());
        assertEquals(Math.sin(slope) * 0.95, Math.cos(slope) * 0.8, 1e-12);
        assertEquals(Math.tan(slope), Stability.factor(TRACK, height).value(), 1e-12);
    }

    /**
     * Off the centre line by moments about the nearer wheels, by hand: 98 mm to one side and 823 mm up on a track of
     * 1600 mm leave 702 mm, which is 0.853 of the height, and go over at 40.5 degrees.
     */
    @Test
    void aLoadToOneSideTipsItOverTheNearerWheels() {
        Figure height = Figure.of(0.8231);
        Figure between = TRACK.minus(Figure.of(2 * 0.0979));
        assertEquals(0.853, Stability.factor(between, height).value(), 0.0005);
        assertEquals(40.5, LoadBox.tippingAngle(between, height).value(), 0.05);
    }
}
