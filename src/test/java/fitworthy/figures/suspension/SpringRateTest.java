package fitworthy.figures.suspension;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import org.junit.jupiter.api.Test;

class SpringRateTest {

    private static Figure exact(double value) {
        return Figure.of(value, 0);
    }

    /**
     * A technical magazine's example (read, http://www.autospeed.com/cms/A_112279/printArticle.html): 250 kg on a wheel
     * with 1 kgf/mm press its spring 250 mm together.
     */
    @Test
    void aQuarterTonneOnOneKilogramForcePerMillimetreGivesWay250Millimetres() {
        assertEquals(0.250, SpringRate.deflection(exact(250), exact(9806.65)).value(), 1e-12);
    }

    /**
     * The same corner: {@code f = sqrt(g / d) / (2 pi)} with d = 250 mm is 0.997 Hz. The formula with 0.159 for 1 / (2
     * pi) was read in a chassis newsletter of January 2002; the figure is worked by hand.
     */
    @Test
    void theFrequencyFollowsFromTheStaticDeflection() {
        double frequency = SpringRate.frequency(exact(9806.65), exact(250)).value();
        assertEquals(0.997, frequency, 0.0005);
        assertEquals(0.159 * Math.sqrt(9806.65 / 250), frequency, 0.002);
    }

    /**
     * A mount maker's handbook, page T1-35 (read, https://www.vibrationmounts.com/V100/HTML/VM10035_1.html): about 5 over the
     * root of the static deflection in centimetres. At 25 cm that is 1 Hz, at 6.25 cm 2 Hz.
     */
    @Test
    void theFrequencyIsThatOfAMountMakersHandbook() {
        assertEquals(
                5 / Math.sqrt(25),
                SpringRate.frequency(exact(9806.65), exact(250)).value(),
                0.005);
        assertEquals(
                5 / Math.sqrt(6.25),
                SpringRate.frequency(exact(4 * 9806.65), exact(250)).value(),
                0.01);
    }

    /**
     * The data of a textbook problem (seen, without answers): 1600 kg, centre of gravity 1.6 m ahead of the rear axle
     * of a 2.9 m wheelbase, springs of 19 and 17 kN/m. Each axle alone, by hand: 441.4 and 358.6 kg a wheel, 1.044 and
     * 1.096 Hz.
     */
    @Test
    void agreesWithTheTextbookCarWorkedByHand() {
        assertEquals(
                1.044,
                SpringRate.frequency(exact(19000), exact(1600 * 1.6 / 2.9 / 2)).value(),
                0.0005);
        assertEquals(
                1.096,
                SpringRate.frequency(exact(17000), exact(1600 * 1.3 / 2.9 / 2)).value(),
                0.0005);
    }

    /**
     * By virtual work: half the travel at the spring is half the force over twice the travel, a quarter of the rate.
     */
    @Test
    void aSpringHalfWayAlongItsArmHasAQuarterOfItsRateAtTheWheel() {
        assertEquals(25, SpringRate.atWheel(exact(100), exact(0.5)).value(), 1e-12);
    }

    /**
     * The rate goes with the square of the ratio, so 1 % of the ratio is 2 % of the rate; 2 % of mass is 1 % of
     * frequency.
     */
    @Test
    void tolerancesFollowThePowersInTheFormulas() {
        assertEquals(0.5, SpringRate.atWheel(exact(100), Figure.of(0.5, 0.005)).tolerance(), 1e-12);
        Figure frequency = SpringRate.frequency(exact(9806.65), Figure.of(250, 5));
        assertEquals(0.01, frequency.tolerance() / frequency.value(), 1e-9);
    }

    @Test
    void anUnknownRateLeavesTheFrequencyUnknown() {
        Figure unknown = Figure.missing(new Missing("rate", "", ""));
        assertFalse(SpringRate.frequency(SpringRate.atWheel(unknown, exact(1)), exact(250))
                .known());
    }
}
