package fitworthy.figures.across;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.sheet.Point;
import fitworthy.sheet.Space;
import org.junit.jupiter.api.Test;

/** Plain geometry, worked by hand in metres. */
class BoxesTest {

    private static Point at(double x, double y, double z) {
        return new Point(Figure.of(x, 0), Figure.of(y, 0), Figure.of(z, 0));
    }

    private static final Space UNIT = new Space(at(0, 0, 0), at(1, 1, 1));

    private static double overlap(Space other) {
        assertEquals(
                Boxes.overlap(UNIT, other).value(), Boxes.overlap(other, UNIT).value(), 1e-12);
        return Boxes.overlap(UNIT, other).value();
    }

    @Test
    void theLeastWayOutIsTheDepth() {
        assertEquals(0.1, overlap(new Space(at(0.9, 0.5, 0.7), at(2, 2, 2))), 1e-12);
    }

    @Test
    void cornersMayBeGivenInEitherOrder() {
        assertEquals(0.1, overlap(new Space(at(2, 2, 2), at(0.9, 0.5, 0.7))), 1e-12);
    }

    @Test
    void aBeamThroughABoxIsAsDeepAsItsNearerSide() {
        assertEquals(0.6, overlap(new Space(at(-1, 0.4, 0.4), at(2, 0.6, 0.6))), 1e-12);
    }

    @Test
    void boxesThatTouchOrStandApartDoNotOverlap() {
        assertEquals(0, overlap(new Space(at(1, 0, 0), at(2, 1, 1))));
        assertEquals(0, overlap(new Space(at(0.5, 3, 0.5), at(2, 4, 2))));
    }

    /**
     * By hand: two corners within 50 mm each are 70.7 mm from each other either way. What is 40 mm apart may reach 30.7 mm
     * into each other, what is 80 mm apart, or farther along another axis, does not.
     */
    @Test
    void boxesThatStandApartMayMeetWithinTheTolerance() {
        Space unit = guessed(UNIT);
        assertEquals(
                0.0307,
                Boxes.overlap(unit, guessed(new Space(at(1.04, 0, 0), at(2, 1, 1))))
                        .tolerance(),
                5e-5);
        assertEquals(
                0,
                Boxes.overlap(unit, guessed(new Space(at(1.08, 0, 0), at(2, 1, 1))))
                        .tolerance());
        assertEquals(
                0,
                Boxes.overlap(unit, guessed(new Space(at(1.04, 3, 0), at(2, 4, 1))))
                        .tolerance());
        assertEquals(
                0.0707,
                Boxes.overlap(unit, guessed(new Space(at(0.9, 0, 0), at(2, 1, 1))))
                        .tolerance(),
                5e-5);
    }

    private static Space guessed(Space space) {
        return new Space(guessed(space.from()), guessed(space.to()));
    }

    private static Point guessed(Point at) {
        return new Point(
                        Figure.of(at.x().value()),
                        Figure.of(at.y().value()),
                        Figure.of(at.z().value()))
                .orTolerance(0.05);
    }

    @Test
    void whatABoxHoldsWholeIsNoClash() {
        assertEquals(0, overlap(new Space(at(0.2, 0.2, 0), at(0.8, 0.8, 0.5))));
    }

    @Test
    void aCornerNotKnownLeavesItOpen() {
        Figure missing = Figure.missing(new Missing("fitments.A.space.to.z", "height", "a tape"));
        assertFalse(Boxes.overlap(UNIT, new Space(at(0, 0, 0), new Point(Figure.of(1, 0), Figure.of(1, 0), missing)))
                .known());
    }

    /** Apart along the vehicle, whatever their heights are. */
    @Test
    void whatStandsClearAlongOneAxisNeedsNoOther() {
        Figure missing = Figure.missing(new Missing("fitments.A.space.to.z", "height", "a tape"));
        Point open = new Point(Figure.of(3, 0), Figure.of(1, 0), missing);
        assertEquals(0, overlap(new Space(at(1.001, 0, 0), open)));
        assertFalse(Boxes.overlap(UNIT, new Space(at(0.999, 0, 0), open)).known());
    }

    /** 3 in are 76.2 mm, but not to the last bit of a binary fraction. */
    @Test
    void flushIsFlushInInchesToo() {
        double inches = 3 * 0.0254;
        double millimetres = 76.2 * 0.001;
        for (double[] pair : new double[][] {{inches, millimetres}, {millimetres, inches}}) {
            Space box = new Space(at(0, 0, 0), at(pair[0], 1, 1));
            assertEquals(
                    0,
                    Boxes.overlap(box, new Space(at(0.01, 0.2, 0), at(pair[1], 0.8, 0.5)))
                            .value());
            assertEquals(
                    0,
                    Boxes.overlap(box, new Space(at(pair[1], 0, 0), at(3, 1, 1)))
                            .value());
        }
    }
}
