package fitworthy.figures.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fitworthy.Sheets;
import fitworthy.sheet.Trailer;
import fitworthy.source.FaultsException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The load on the ball by what stands in the trailer. */
class BallLoadTest {

    private static BallLoad load(String trailer) throws FaultsException {
        return BallLoad.of(Sheets.plainWith("trailer: {name: Van, " + trailer + "}"))
                .orElseThrow();
    }

    /**
     * A worked example of an engineer's talk to trailer makers (read,
     * http://trailer-bodybuilders.com/trailers/importance-tongue-weight-calculator): ball to suspension 100 in, to the
     * centre of the load 88 in, empty 800 lb with 80 lb on the ball, 2500 lb in all: "the tongue weight is 284 pounds".
     * The share printed beside it, 11.86 %, is not 284 / 2500, which is 11.36 %.
     */
    @Test
    void comesToWhatAWorkedExampleHas() throws FaultsException {
        BallLoad load = load("mass: 2500 lb, axle: 100 in, bare: {mass: 800 lb, ball: 80 lb},"
                + " stowed: [{name: Load, mass: 1700 lb, behind: 88 in}]");
        assertEquals(284, load.listed().value() / 0.45359237, 1e-9);
        assertEquals(2500, load.listedMass().value() / 0.45359237, 1e-9);
        assertEquals(load.listed(), load.filledIn().ball());
    }

    /** In other words than the formula: ball and axles hold the whole up, and its moment about the coupling. */
    @Test
    void ballAndAxlesHoldTheTrailerInBalance() throws FaultsException {
        double axle = 3.3;
        double bareCentre = axle * (1 - 130.0 / 1500);
        double moment = 1500 * bareCentre + 95 * 2.1 + 60 * 4.9 + 40 * 6.2;
        double mass = 1500 + 95 + 60 + 40;
        BallLoad load = load(
                "mass: 1695 kg, axle: 3300 mm, bare: {mass: 1500 kg, ball: 130 kg},"
                        + " stowed: [{name: Kitchen, mass: 60 kg, behind: 4900 mm}],"
                        + " supplies: [{name: Water, mass: 95 kg, behind: 2100 mm}, {name: Bicycles, mass: 40 kg, behind: 6200 mm}]");
        double onAxles = mass - load.listed().value();
        assertEquals(moment, onAxles * axle, 1e-9);
    }

    /**
     * The tolerance of the place of the axles enters with every mass, and so with their sum: 100 kg at half the way are off
     * by 100 x 1.65 / 3.3^2 for each metre, and two of them by twice that.
     */
    @Test
    void thePlaceOfTheAxlesIsOneDoubtForAll() throws FaultsException {
        String two =
                "{name: A, mass: 100 kg +/- 0 kg, behind: 1650 mm}, {name: B, mass: 100 kg +/- 0 kg, behind: 1650 mm}";
        BallLoad load =
                load("mass: 1700 kg, axle: 3300 mm +/- 33 mm, bare: {mass: 1500 kg, ball: 130 kg +/- 0 kg}, stowed: ["
                        + two + "]");
        assertEquals(230, load.listed().value(), 1e-9);
        assertEquals(2 * 100 * 1.65 / (3.3 * 3.3) * 0.033, load.listed().tolerance(), 1e-3);
    }

    /** Of two tanks alike only as many are gone as are said to be, given load or worked out. */
    @Test
    void tanksThatAreAlikeCountEachByItself() throws FaultsException {
        String tank = "{name: Tank, mass: 75 kg +/- 0 kg, behind: 2200 mm}";
        String trailer = "mass: 1800 kg +/- 0 kg, axle: 3300 mm, bare: {mass: 1650 kg +/- 0 kg, ball: 130 kg +/- 0 kg},"
                + " supplies: [" + tank + ", " + tank + "]";
        for (String ball : List.of("", ", ball: 180 kg +/- 0 kg")) {
            BallLoad.Left left = load(trailer + ball).lightest();
            assertEquals(2, left.gone().size());
            assertEquals(130, left.ball().value(), 1e-9);
            assertEquals(1650, left.mass().value(), 1e-9);
        }
    }

    /**
     * Of all eight ways to be without some of three supplies the least share and the greatest load are found, tried one by
     * one.
     */
    @Test
    void theWorstOfAllOrdersIsFound() throws FaultsException {
        double[] masses = {95, 30, 60};
        double[] places = {1.2, 3.0, 5.4};
        double axle = 3.3;
        double ball = 185;
        double mass = 1800;
        BallLoad load = load("mass: 1800 kg +/- 0 kg, ball: 185 kg +/- 0 kg, axle: 3300 mm, supplies: ["
                + "{name: C, mass: 60 kg, behind: 5400 mm}, {name: B, mass: 30 kg, behind: 3000 mm},"
                + " {name: A, mass: 95 kg, behind: 1200 mm}]");
        double leastShare = ball / mass;
        double most = ball;
        for (int way = 1; way < 8; way++) {
            double left = ball;
            double of = mass;
            for (int i = 0; i < 3; i++) {
                if ((way >> i & 1) == 1) {
                    left -= masses[i] * (1 - places[i] / axle);
                    of -= masses[i];
                }
            }
            leastShare = Math.min(leastShare, left / of);
            most = Math.max(most, left);
        }
        assertEquals(leastShare, BallLoad.share(load.lightest()).value(), 1e-12);
        assertEquals(most, load.heaviest().ball().value(), 1e-9);
    }

    @Test
    void whatIsNotKnownIsNotTakenForNothing() throws FaultsException {
        BallLoad load = load("mass: 1800 kg, ball: 185 kg, supplies: [{name: A, mass: 95 kg, behind: 1200 mm}]");
        assertFalse(load.lightest().ball().known());
        assertFalse(load.heaviest().ball().known());
        assertFalse(load.listed().known());
        Trailer trailer = load.filledIn();
        assertEquals(185, trailer.ball().value());
    }
}
