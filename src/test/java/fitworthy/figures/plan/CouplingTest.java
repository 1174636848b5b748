package fitworthy.figures.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import org.junit.jupiter.api.Test;

class CouplingTest {

    private static Figure exact(double value) {
        return Figure.of(value, 0);
    }

    /**
     * An engineers' handbook site (read,
     * https://www.engineersedge.com/calculators/trailer_hitch_ball_coupler_size_14733.htm): 18 t and 22 t, g = 9.81, "D =
     * 97 kN".
     */
    @Test
    void dAgreesWithThePublishedExample() {
        assertEquals(97, Coupling.d(exact(18_000), exact(22_000)).value() / 1000, 0.5);
    }

    /**
     * A coupling maker's page (read, https://www.sawiko.com/de/know-how-und-kaufberatung): 3.5 t and 2 t, "12,50 kN";
     * exactly 12.49.
     */
    @Test
    void dOfALightVehicleAgreesWithACouplingMakersExample() {
        assertEquals(12.50, Coupling.d(exact(3_500), exact(2_000)).value() / 1000, 0.02);
    }

    /**
     * Data of a vehicle maker's glossary (read, its page
     * https://www.mantruckandbus.com/en/company/glossar/d-value-articulated-truck-towed-trailer-coupling.html), which
     * prints no answer; 77.25 kN is our arithmetic by its formula.
     */
    @Test
    void dOfEighteenAndFourteenTonnes() {
        assertEquals(77.25, Coupling.d(exact(18_000), exact(14_000)).value() / 1000, 0.01);
    }

    /** The glossary's second example, without an answer; 62.78 kN is our arithmetic by an encyclopedia's formula. */
    @Test
    void fifthWheelOfSixteenAndSixteenTonnesWithEightOnIt() {
        assertEquals(
                62.78,
                Coupling.fifthWheel(exact(16_000), exact(16_000), exact(8_000)).value() / 1000,
                0.01);
    }

    /**
     * A king-pin maker's worked examples (read, source king-pin-example of the book): 20 t, 31 t and 12 t on it, "= 93.6kN";
     * 22 t, 37 t and 14 t, "= 106.5kN" in a copy of its leaflet.
     */
    @Test
    void fifthWheelAgreesWithAKingPinMakersExamples() {
        assertEquals(
                93.6,
                Coupling.fifthWheel(exact(20_000), exact(31_000), exact(12_000)).value() / 1000,
                0.05);
        assertEquals(
                106.5,
                Coupling.fifthWheel(exact(22_000), exact(37_000), exact(14_000)).value() / 1000,
                0.05);
    }

    /** By the formulas a part without U between equal masses needs 0.6 of D: a relation, no published figure. */
    @Test
    void fifthWheelWithoutLoadIsSixTenthsOfD() {
        assertEquals(
                0.6,
                Coupling.fifthWheel(exact(3_000), exact(3_000), exact(0)).value()
                        / Coupling.d(exact(3_000), exact(3_000)).value(),
                1e-12);
    }

    /**
     * Our arithmetic: C = 3.15 t with the ratio at its floor of 1 gives 2.4 x 3.15 = 7.56 kN, on air springs 5.67 kN.
     */
    @Test
    void vOfABodyShorterThanItsDrawbarTakesTheFloor() {
        assertEquals(7.56, Coupling.v(exact(3_150), exact(4), exact(5), false).value() / 1000, 1e-9);
        assertEquals(5.67, Coupling.v(exact(3_150), exact(4), exact(5), true).value() / 1000, 1e-9);
    }

    /** Our arithmetic: C = 3 t, X = 6 m, l = 5 m gives 2.4 x 3 x 1.44 = 10.37 kN. */
    @Test
    void vGrowsWithTheSquareOfBodyOverDrawbar() {
        assertEquals(10.368, Coupling.v(exact(3_000), exact(6), exact(5), false).value() / 1000, 1e-9);
    }

    /** Each tolerance against the change that a small step in that mass alone makes. */
    @Test
    void tolerancesFollowTheSlopes() {
        double step = 0.01;
        Figure t = Figure.of(3_000, step);
        Figure r = Figure.of(2_000, step);
        Figure u = Figure.of(400, step);
        assertEquals(
                Coupling.d(exact(3_000 + step), exact(2_000)).value()
                        - Coupling.d(exact(3_000), exact(2_000)).value(),
                Coupling.d(t, exact(2_000)).tolerance(),
                1e-6);
        assertEquals(
                Coupling.d(exact(3_000), exact(2_000 + step)).value()
                        - Coupling.d(exact(3_000), exact(2_000)).value(),
                Coupling.d(exact(3_000), r).tolerance(),
                1e-6);
        double force =
                Coupling.fifthWheel(exact(3_000), exact(2_000), exact(400)).value();
        assertEquals(
                Coupling.fifthWheel(exact(3_000 + step), exact(2_000), exact(400))
                                .value()
                        - force,
                Coupling.fifthWheel(t, exact(2_000), exact(400)).tolerance(),
                1e-6);
        assertEquals(
                Coupling.fifthWheel(exact(3_000), exact(2_000 + step), exact(400))
                                .value()
                        - force,
                Coupling.fifthWheel(exact(3_000), r, exact(400)).tolerance(),
                1e-6);
        assertEquals(
                Coupling.fifthWheel(exact(3_000), exact(2_000), exact(400 + step))
                                .value()
                        - force,
                Coupling.fifthWheel(exact(3_000), exact(2_000), u).tolerance(),
                1e-6);
        double vertical = Coupling.v(exact(2_000), exact(6), exact(5), false).value();
        assertEquals(
                Coupling.v(exact(2_000), exact(6 + 1e-5), exact(5), false).value() - vertical,
                Coupling.v(exact(2_000), Figure.of(6, 1e-5), exact(5), false).tolerance(),
                1e-6);
    }

    @Test
    void aMissingMassLeavesTheForceMissing() {
        Figure unknown = Figure.missing(new Missing("trailer.rated", "greatest mass", "its plate"));
        assertFalse(Coupling.d(exact(3_000), unknown).known());
        assertFalse(Coupling.fifthWheel(exact(3_000), unknown, exact(0)).known());
        assertEquals(
                "trailer.rated",
                Coupling.v(unknown, exact(4), exact(5), false).missing().get(0).path());
        assertEquals(
                "trailer.rated",
                Coupling.v(exact(3_000), unknown, exact(5), false)
                        .missing()
                        .get(0)
                        .path());
    }

    /** The handbook site's 97 kN behind 18 t, the other way round: its 22 t, as far as 97 kN is rounded. */
    @Test
    void theHeaviestTrailerForAForceIsThatWhichGivesIt() {
        assertEquals(22_000, Coupling.heaviest(exact(18_000), exact(97_000)).value(), 250);
        assertEquals(
                22_000,
                Coupling.heaviest(exact(18_000), Coupling.d(exact(18_000), exact(22_000)))
                        .value(),
                1e-6);
        assertEquals(
                16_000,
                Coupling.heaviestOnFifthWheel(
                                exact(16_000),
                                exact(0.5),
                                Coupling.fifthWheel(exact(16_000), exact(16_000), exact(8_000)))
                        .value(),
                1e-6);
        assertEquals(
                3_000,
                Coupling.heaviestOnAxles(Coupling.v(exact(3_000), exact(6), exact(5), false), exact(6), exact(5), false)
                        .value(),
                1e-6);
    }

    /** Behind 3 t no trailer puts 3 x 9.81 kN on the coupling, however heavy. */
    @Test
    void aForceThatNoTrailerReachesBoundsNone() {
        assertEquals(
                Double.POSITIVE_INFINITY,
                Coupling.heaviest(exact(3_000), exact(29_430)).value());
    }
}
