package fitworthy.figures.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import org.junit.jupiter.api.Test;

/** Checked against the geometry of triangles whose angles are known. */
class GroundAngleTest {

    private static double angle(double height, double ahead, double radius) {
        return GroundAngle.at(Figure.of(height, 0), Figure.of(ahead, 0), Figure.of(radius, 0))
                .value();
    }

    /** With the point as high as the wheel's centre the tangent is the side of a right triangle: sin 30 deg = 1/2. */
    @Test
    void aPointAtTheHeightOfTheWheelCentreTwoRadiiAheadGivesThirtyDegrees() {
        assertEquals(30, angle(0.4, 0.8, 0.4), 1e-9);
    }

    /** A wheel without size: tan 45 deg = 1, and tan 26.565 deg = 1/2. */
    @Test
    void withoutATyreItIsTheSlopeFromTheAxleToThePoint() {
        assertEquals(45, angle(0.5, 0.5, 1e-12), 1e-6);
        assertEquals(26.565, angle(0.4, 0.8, 1e-12), 1e-3);
    }

    /**
     * A ramp of 28 degrees drawn by hand: it touches the tyre at the angle of the ramp, so a point 0.5 m up the ramp
     * from the touching point has to give the ramp's own angle back.
     */
    @Test
    void aPointOnARampThatTouchesTheTyreGivesTheRampsAngle() {
        double ramp = Math.toRadians(28);
        double radius = 0.38;
        double touchAhead = radius * Math.sin(ramp);
        double touchHeight = radius * (1 - Math.cos(ramp));
        assertEquals(28, angle(touchHeight + 0.5 * Math.sin(ramp), touchAhead + 0.5 * Math.cos(ramp), radius), 1e-9);
    }

    @Test
    void aPointWithinTheTyresCircleLimitsNothing() {
        assertEquals(90, angle(0.4, 0.3, 0.4), 0);
    }

    /** One degree is 0.01745 rad: 10 mm more height half a metre ahead of a point-like wheel on level slope. */
    @Test
    void theToleranceOfAHeightTiltsTheLine() {
        Figure angle = GroundAngle.at(Figure.of(0, 0.01), Figure.of(0.573, 0), Figure.of(1e-9, 0));
        assertEquals(1.0, angle.tolerance(), 0.001);
    }

    /**
     * A crest drawn by hand: both its slopes touch a tyre, the front one at 12 degrees and the rear one at 8, so the point
     * that rests on both has to give 20 back.
     */
    @Test
    void aPointOnACrestGivesTheAnglesOfBothSlopesTogether() {
        double radius = 0.4;
        double front = Math.toRadians(12);
        double rear = Math.toRadians(8);
        double height = 0.25;
        assertEquals(
                20,
                GroundAngle.over(
                                Figure.of(height, 0),
                                Figure.of(alongTo(height, front, radius), 0),
                                Figure.of(alongTo(height, rear, radius), 0),
                                Figure.of(radius, 0))
                        .value(),
                1e-9);
    }

    /** How far from the axle a slope that touches the tyre is as high as that. */
    private static double alongTo(double height, double slope, double radius) {
        double touchHeight = radius * (1 - Math.cos(slope));
        return radius * Math.sin(slope) + (height - touchHeight) / Math.tan(slope);
    }

    /** Lower, further from the axles, or a smaller wheel: each makes the crest flatter that it clears. */
    @Test
    void aCrestIsLostByALowerPointALongerWheelbaseAndASmallerWheel() {
        double made = over(0.25, 1.4, 1.4, 0.38);
        assertTrue(over(0.24, 1.4, 1.4, 0.38) < made);
        assertTrue(over(0.25, 1.4, 1.7, 0.38) < made);
        assertTrue(over(0.25, 1.4, 1.4, 0.37) < made);
    }

    private static double over(double height, double front, double rear, double radius) {
        return GroundAngle.over(Figure.of(height), Figure.of(front), Figure.of(rear), Figure.of(radius))
                .value();
    }

    @Test
    void whatIsMissingIsNamed() {
        Figure angle = GroundAngle.at(Figure.of(0.4), Figure.missing(new Missing("ahead", "", "")), Figure.of(0.4));
        assertEquals("ahead", angle.missing().get(0).path());
    }
}
