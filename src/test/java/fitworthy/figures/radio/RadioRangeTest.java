package fitworthy.figures.radio;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.sheet.Point;
import org.junit.jupiter.api.Test;

class RadioRangeTest {

    private static final double NAUTICAL_MILE = 1852;
    private static final double FOOT = 0.3048;

    private static Figure exact(double value) {
        return Figure.of(value, 0);
    }

    private static Point point(double x, double y, double z) {
        return new Point(exact(x), exact(y), exact(z));
    }

    private static Point guessed(double x, double y, double z) {
        return new Point(Figure.of(x), Figure.of(y), Figure.of(z)).orTolerance(0.05);
    }

    /** ITU-R P.525 (second-hand): 32.4 + 20 log f + 20 log d, by hand 105.97 dB for 477 MHz and 10 km. */
    @Test
    void tenKilometresCostWhatTheRecommendationSays() {
        assertEquals(105.97, RadioRange.freeSpaceLoss(477e6, 10e3), 0.005);
    }

    /** From the wave itself, 20 log(4 pi d f / c), to the tenth of a decibel to which the recommendation rounds. */
    @Test
    void theLossAgreesWithTheSpreadingOfAWave() {
        double spreading = 20 * Math.log10(4 * Math.PI * 10e3 * 477e6 / 299_792_458.0);
        assertEquals(spreading, RadioRange.freeSpaceLoss(477e6, 10e3), 0.1);
    }

    /**
     * By hand: 5 W are 36.99 dBm, 0.25 uV at 50 ohm -119.03 dBm; 156.02 dB of loss are left between aerials of 0 dBi.
     */
    @Test
    void theReachInFreeSpaceSpendsTheWholeBudget() {
        double metres = RadioRange.freeSpace(exact(5), exact(0), exact(0.25e-6), exact(477e6))
                .value();
        assertEquals(156.02, RadioRange.freeSpaceLoss(477e6, metres), 0.005);
    }

    /** Each aerial's gain counts once at either end: 3 dB at both ends make the reach about twice as long. */
    @Test
    void gainCountsAtBothEnds() {
        double plain = RadioRange.freeSpace(exact(5), exact(0), exact(0.25e-6), exact(477e6))
                .value();
        double gained = RadioRange.freeSpace(exact(5), exact(3), exact(0.25e-6), exact(477e6))
                .value();
        assertEquals(Math.pow(10, 0.3), gained / plain, 1e-9);
    }

    /**
     * US Federal Standard 1037C (seen): 2.23 nautical miles for the square root of each height in m, 1.23 for each in
     * ft. Its rounded constants differ from each other and from the geometry by 0.2 %.
     */
    @Test
    void theHorizonAgreesWithTheFederalStandard() {
        double metric = 2.23 * 2 * Math.sqrt(2) * NAUTICAL_MILE;
        assertEquals(1, RadioRange.horizon(exact(2), exact(2)).value() / metric, 0.003);
        double mixed = 2.23 * (Math.sqrt(2) + Math.sqrt(30)) * NAUTICAL_MILE;
        assertEquals(1, RadioRange.horizon(exact(2), exact(30)).value() / mixed, 0.003);
        double imperial = 1.23 * 2 * Math.sqrt(10) * NAUTICAL_MILE;
        assertEquals(1, RadioRange.horizon(exact(10 * FOOT), exact(10 * FOOT)).value() / imperial, 0.003);
    }

    /** By hand: a quarter of a wavelength at 477 MHz is 299.79 / 477 / 4 = 157.1 mm. */
    @Test
    void aQuarterWaveAtTheCitizenBandIsAHandsBreadthAndAHalf() {
        assertEquals(
                0.25,
                RadioRange.wavelengths(point(0, 0, 1), point(0, 0.1571, 1), exact(477e6))
                        .value(),
                1e-4);
    }

    /** By hand: as far aside as ahead is 45 degrees, on either side. */
    @Test
    void theSightAngleIsMeasuredFromStraightAhead() {
        Point eye = point(1.5, -0.4, 1.5);
        assertEquals(45, RadioRange.sightAngle(eye, point(-0.5, 1.6, 1)).value(), 1e-9);
        assertEquals(45, RadioRange.sightAngle(eye, point(-0.5, -2.4, 1)).value(), 1e-9);
        assertEquals(0, RadioRange.sightAngle(eye, point(-0.5, -0.4, 1)).value(), 1e-9);
    }

    /**
     * By hand: eye and aerial within 50 mm each are 70.71 mm from each other either way. Straight ahead at 2300 mm that
     * is 70.71 / 2300, 1.76 degrees; 1000 mm aside of it, sqrt((2300 x 70.71)^2 + (1000 x 70.71)^2) / (2300^2 + 1000^2)
     * or 70.71 / 2508, 1.62 degrees.
     */
    @Test
    void placesThatWereGuessedLeaveTheAngleUnsureStraightAheadToo() {
        Point eye = guessed(1.45, -0.38, 1.42);
        assertEquals(
                1.76, RadioRange.sightAngle(eye, guessed(-0.85, -0.38, 1.2)).tolerance(), 0.005);
        assertEquals(1.62, RadioRange.sightAngle(eye, guessed(-0.85, 0.62, 1.2)).tolerance(), 0.005);
    }

    /** By hand: two feet within 50 mm each are 70.71 mm nearer or farther, which is 0.1125 of 628.5 mm, however near. */
    @Test
    void feetNearerThanTheirPlacesAreKnownAreAsUnsureAsOthers() {
        for (double apart : new double[] {0.01, 1}) {
            Figure waves = RadioRange.wavelengths(guessed(0, 0, 1), guessed(0, apart, 1), exact(477e6));
            assertEquals(0.1125, waves.tolerance(), 5e-5);
        }
    }

    /** By hand: 45 degrees are as far aside as ahead. Where it is seen at an angle is where that angle puts it. */
    @Test
    void howFarAsideIsTheSightAngleTheOtherWayRound() {
        Point eye = point(1.5, -0.4, 1.5);
        assertEquals(2, RadioRange.aside(eye, point(-0.5, -0.4, 1), exact(45)).value(), 1e-9);
        for (double planned : new double[] {-0.3, -0.6}) {
            double aside =
                    RadioRange.aside(eye, point(-0.5, planned, 1), exact(10)).value();
            Point moved = point(-0.5, planned + aside, 1);
            assertEquals(10, RadioRange.sightAngle(eye, moved).value(), 1e-9);
            assertEquals(0, RadioRange.aside(eye, moved, exact(10)).value(), 1e-9);
        }
    }

    /** The driver sits on the left, so that the passenger's side is the right, where places are below zero. */
    @Test
    void thePassengerSitsOnTheOtherSideOfTheDriver() {
        Point eye = point(1.5, 0.4, 1.5);
        assertEquals(2.1, RadioRange.aside(eye, point(-0.5, 0.5, 1), exact(45)).value(), 1e-9);
    }

    @Test
    void anUnknownHeightLeavesTheHorizonUnknown() {
        Figure height = Figure.missing(new Missing("tip", "height", "a tape"));
        assertFalse(RadioRange.horizon(exact(2), height).known());
    }
}
