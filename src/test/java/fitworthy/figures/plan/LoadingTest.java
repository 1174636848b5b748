package fitworthy.figures.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.figures.Measures;
import fitworthy.figures.measure.Measure;
import fitworthy.quantity.Figure;
import fitworthy.source.FaultsException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Tolerances of whole loadings, worked by hand: what is known apart adds as the root of the sum of squares. */
class LoadingTest {

    /** The plain wagon, whose figures are exact, with cargo that is not, over the front and over the rear axle. */
    private static final String CARGO =
            """
            cargo:
              - {name: Winch, mass: 100 kg +/- 6 kg, at: {x: 0 mm, y: 0 mm, z: 700 mm}}
              - {name: Drawers, mass: 100 kg +/- 12 kg, at: {x: 2850 mm, y: 0 mm, z: 700 mm}}
            """;

    private static List<Loading> loadings(String yaml) throws FaultsException {
        return Loading.all(new Plan(Sheets.plainWith(yaml), Books.shipped().tables(), id -> Figure.ZERO));
    }

    /**
     * By moments about the road, by hand: 2520 kg at 700 mm less fuel, as the plain wagon's parts sum up alone, and what 300 kg
     * on a ball 450 mm up or on a pin 1300 mm up make of it.
     */
    @Test
    void theCentreOfGravityCountsCoupledOrUncoupledWhicheverIsHigher() throws FaultsException {
        for (int up : List.of(450, 1300)) {
            Loading towing = loadings("vehicle: {tow-bar: {ball-height: " + up + " mm}, size: {ball-height: " + up
                            + " mm}}\ntrailer: {name: Camper, mass: 3000 kg, ball: 300 kg +/- 0 kg}\n"
                            + "cases: [{name: towing, towing: yes}]")
                    .get(0);
            double mass = 0;
            double moment = 0;
            for (PointMass each : towing.masses()) {
                if (each.sort() != PointMass.Sort.BALL) {
                    mass += each.mass().value();
                    moment += each.mass().value() * each.height().value();
                }
            }
            double alone = moment / mass;
            double coupled = (moment + 300 * up / 1000.0) / (mass + 300);
            assertEquals(up < 700, alone > coupled);
            assertEquals(
                    Math.max(alone, coupled), Centre.of(towing.highest()).z().value(), 1e-9);
            assertEquals(
                    up < 700 ? mass : mass + 300,
                    AxleLoads.of(towing.highest(), towing.plan().wheelbase())
                            .total()
                            .value(),
                    1e-6);
        }
    }

    /** Nothing that does not bend the rails there may widen what is said of it: 9.81 x 0.85 m of each kg on the rear axle alone. */
    @Test
    void ofTheVehicleItselfTheRearAxleAloneBendsTheRails() throws FaultsException {
        for (double[] each : new double[][] {{10, 0, 0}, {0, 10, 10 * 9.81 * 0.85}, {10, 10, 10 * 9.81 * 0.85}}) {
            Loading loading = loadings("vehicle: {mass: {front-axle: 1250 kg +/- " + each[0]
                            + " kg, rear-axle: 1050 kg +/- " + each[1]
                            + " kg}, rails: {at: 2000 mm, behind: 900 kg +/- 0 kg, middle: 2700 mm +/- 0 mm}}")
                    .get(0);
            assertEquals(each[2], of("body.rail-moment", loading).getTolerance(), 0.5);
        }
    }

    /** Where what bends one way and the other is nearly alike, it is as unsure as elsewhere. */
    @Test
    void aMomentNearNothingIsNoSurer() throws FaultsException {
        // 1050 kg x 0.85 m and 78 kg m of people and luggage against 900 kg x 1.078 m.
        Measure near = bends(3078);
        Measure far = bends(2200);
        assertEquals(0, near.getValue(), 20);
        assertEquals(98.1 * 0.85, near.getTolerance(), 0.5);
        assertEquals(98.1 * 0.85, far.getTolerance(), 0.5);
    }

    private static Measure bends(double middle) throws FaultsException {
        Loading loading = loadings(
                        "vehicle: {mass: {rear-axle: 1050 kg +/- 10 kg}, rails: {at: 2000 mm, behind: 900 kg +/- 0 kg,"
                                + " middle: " + middle + " mm +/- 0 mm}}")
                .get(0);
        return of("body.rail-moment", loading);
    }

    private static Measure of(String name, Loading loading) {
        return Measures.of(loading).stream()
                .filter(measure -> measure.getName().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /**
     * Readings of 8 kg and 5 kg either way against parts of 6 kg and 12 kg: sqrt(8^2 + 6^2) = 10 and sqrt(5^2 + 12^2) =
     * 13. The sums would be 14 and 17.
     */
    @Test
    void readingAndPartsDifferByTheRootOfTheirSquares() throws FaultsException {
        Loading weighed = loadings(
                        CARGO
                                + "cases: [{name: weighed, weighed: {front-axle: 1500 kg +/- 8 kg, rear-axle: 1300 kg +/- 5 kg}}]")
                .get(0);
        Loading.Residual residual = weighed.residual().orElseThrow();
        assertEquals(10, residual.front().tolerance(), 1e-9);
        assertEquals(13, residual.rear().tolerance(), 1e-9);
        assertEquals(
                List.of(10.0, 13.0),
                Measures.of(weighed).stream()
                        .filter(measure -> measure.getName().equals("mass.residual"))
                        .map(Measure::getLimit)
                        .toList());
    }

    /**
     * Weighed with winch and drawers aboard, then driven without them. The weighbridge is right to 8 kg and 5 kg, and
     * what came off is known to 6 kg and 12 kg: 10 kg and 13 kg again, and sqrt(10^2 + 13^2) = 16.4012 kg for the
     * whole. In the weighed case itself the readings' own 8 kg and 5 kg are left.
     */
    @Test
    void weighingLeavesItsOwnToleranceAndThatOfWhatDiffers() throws FaultsException {
        List<Loading> loadings = loadings(
                CARGO
                        + """
                cases:
                  - {name: weighed, weighed: {front-axle: 1500 kg +/- 8 kg, rear-axle: 1300 kg +/- 5 kg}}
                  - {name: without, carrying: [Luggage]}
                """);
        AxleLoads weighed = loadings.get(0).axles();
        assertEquals(8, weighed.front().tolerance(), 1e-9);
        assertEquals(5, weighed.rear().tolerance(), 1e-9);
        AxleLoads without = loadings.get(1).axles();
        assertEquals(10, without.front().tolerance(), 1e-9);
        assertEquals(13, without.rear().tolerance(), 1e-9);
        assertEquals(Math.sqrt(269), without.total().tolerance(), 1e-9);
        assertEquals(1400, without.front().value(), 1e-9);
        assertEquals(1200, without.rear().value(), 1e-9);
    }

    /**
     * A kerb mass of 20 kg either way over axle masses without a tolerance: 20 / sqrt(2) = 14.1421 kg on each axle, so
     * that the two together are 20 kg either way again, not 28.3 kg.
     */
    @Test
    void toleranceOfTheKerbMassIsSharedByTheAxles() throws FaultsException {
        AxleLoads axles = loadings(
                        """
                vehicle:
                  mass: {kerb: 2300 kg +/- 20 kg, front-axle: 1250 kg, rear-axle: 1050 kg}
                """)
                .get(0)
                .axles();
        assertEquals(Math.sqrt(200), axles.front().tolerance(), 1e-9);
        assertEquals(Math.sqrt(200), axles.rear().tolerance(), 1e-9);
        assertEquals(20, axles.total().tolerance(), 1e-9);
    }

    /** An exact kerb mass with bare axles: 1 % of the lighter one, 10.5 kg, goes from one to the other and not into the sum. */
    @Test
    void ofAnExactKerbMassOneAxleHasMoreAndTheOtherLess() throws FaultsException {
        AxleLoads bare = loadings(
                        """
                vehicle:
                  mass: {kerb: 2300 kg +/- 0 kg, front-axle: 1250 kg, rear-axle: 1050 kg}
                """)
                .get(0)
                .axles();
        assertEquals(10.5, bare.front().tolerance(), 1e-9);
        assertEquals(10.5, bare.rear().tolerance(), 1e-9);
        assertEquals(0, bare.total().tolerance(), 1e-9);
        AxleLoads oneWeighed = loadings(
                        """
                vehicle:
                  mass: {kerb: 2300 kg +/- 0 kg, front-axle: 1250 kg, rear-axle: 1050 kg +/- 0 kg}
                """)
                .get(0)
                .axles();
        assertEquals(12.5, oneWeighed.total().tolerance(), 1e-9);
    }

    /** Weighed with bar and bumper as they are: nothing to add, and no error but that of the kerb mass, which has none. */
    @Test
    void whatIsDoneAddsNothing() throws FaultsException {
        AxleLoads axles = loadings(
                        """
                fitments:
                  - {name: Bar, kind: bar, done: yes, mass: 60 kg +/- 3 kg, at: {x: -600 mm, y: 0 mm, z: 700 mm},
                     removes: {name: bumper, mass: 20 kg +/- 1 kg, at: {x: -700 mm, y: 0 mm, z: 600 mm}}}
                """)
                .get(0)
                .axles();
        AxleLoads plain = loadings("title: Plain").get(0).axles();
        assertEquals(plain.front().value(), axles.front().value(), 1e-9);
        assertEquals(plain.rear().value(), axles.rear().value(), 1e-9);
        assertEquals(0, axles.front().tolerance(), 1e-9);
        assertEquals(0, axles.total().tolerance(), 1e-9);
    }

    /** Off, it takes its 100 +/- 7 kg with it: 2520 - 100 kg. At 150 kg m over 2.85 m 52.6 kg of them were on the rear. */
    @Test
    void whatIsDoneAndComesOffTakesItsMassAlong() throws FaultsException {
        List<Loading> loadings = loadings(
                """
                fitments:
                  - {name: Rack, kind: roof-rack, done: yes, removable: yes, roof: yes, mass: 100 kg +/- 7 kg,
                     at: {x: 1500 mm, y: 0 mm, z: 1900 mm}}
                cases: [{name: on}, {name: bare, off: [Rack]}]
                """);
        assertEquals(2520, loadings.get(0).axles().total().value(), 1e-9);
        AxleLoads bare = loadings.get(1).axles();
        assertEquals(2420, bare.total().value(), 1e-9);
        assertEquals(7, bare.total().tolerance(), 1e-9);
        assertEquals(
                loadings.get(0).axles().rear().value() - 150 / 2.85, bare.rear().value(), 1e-9);
    }

    /**
     * A bar of 60 kg at 0.6 m behind the rear axle took 60 x 0.6 / 2.85 = 12.632 kg off the front, which its springs were
     * made for. Made with 1250 + 12.632 kg, the front has lost these.
     */
    @Test
    void lossIsHeldAgainstTheVehicleAsMade() throws FaultsException {
        Loading loading = loadings(
                        """
                occupants: []
                cargo: []
                cases: [{name: empty, aboard: [], carrying: []}]
                fitments:
                  - {name: Rear carrier, kind: other, done: yes, mass: 60 kg, at: {x: 3450 mm, y: 0 mm, z: 700 mm}}
                """)
                .get(0);
        Measure lost = Measures.of(loading).stream()
                .filter(measure -> measure.getName().equals("mass.front-lift"))
                .findFirst()
                .orElseThrow();
        double lifted = 60 * 0.6 / 2.85;
        assertEquals(lifted / (1250 + lifted), lost.getValue(), 1e-9);
        assertEquals(-lifted, Masses.onSprings(loading.plan()).front().value(), 1e-9);
    }

    /** 140 L at 0.84 kg/L were in it when it was weighed, half of them are now: 2520 + 67.2 - 67.2 - 58.8 kg. */
    @Test
    void fuelInTheKerbMassIsInTheTankDoneInPlaceOfTheMakers() throws FaultsException {
        AxleLoads axles = loadings(
                        """
                tanks:
                  - {name: Long-range tank, liquid: diesel, capacity: 140 L, fill: 50 %, stock: no, done: yes, density: 0.84 kg/L,
                     mass: 30 kg, at: {x: 2400 mm, y: 0 mm, z: 600 mm},
                     removes: {name: Main tank, mass: 15 kg, at: {x: 2400 mm, y: 0 mm, z: 600 mm}}}
                """)
                .get(0)
                .axles();
        assertEquals(2520 - 58.8, axles.total().value(), 1e-9);
    }

    /** The maker's tank goes with its fuel, 67.2 kg of it, from where both are once the body is 50 mm higher. */
    @Test
    void kerbFuelLeavesAtTheHeightOfTheTankThatGoes() throws FaultsException {
        List<PointMass> masses = loadings(
                        """
                fitments: [{name: Spacers, kind: body-lift, mass: 0 kg, lift: 50 mm, at: {x: 1400 mm, y: 0 mm, z: 600 mm}}]
                tanks:
                  - {name: Long-range tank, liquid: diesel, capacity: 140 L, fill: 50 %, stock: no, density: 0.84 kg/L,
                     mass: 30 kg, at: {x: 2400 mm, y: 0 mm, z: 600 mm},
                     removes: {name: Main tank, mass: 15 kg, at: {x: 2400 mm, y: 0 mm, z: 600 mm}}}
                """)
                .get(0)
                .masses();
        for (String gone : List.of("Main tank, taken off", "Main tank, fuel in the kerb mass")) {
            assertEquals(
                    0.65,
                    masses.stream()
                            .filter(mass -> mass.name().equals(gone))
                            .findFirst()
                            .orElseThrow()
                            .height()
                            .value(),
                    1e-9,
                    gone);
        }
    }

    private static final String BARS =
            """
            fitments:
              - {name: Bar, kind: bar, mass: 60 kg, at: {x: -600 mm, y: 0 mm, z: 700 mm},
                 removes: {name: bumper, mass: 20 kg, at: {x: -700 mm, y: 0 mm, z: 600 mm}}}
              - {name: Winch, kind: winch, in: Bar, mass: 30 kg, at: {x: -600 mm, y: 0 mm, z: 700 mm}}
            tanks:
              - {name: Washer, liquid: water, capacity: 5 L, fill: 0 %, stock: no, in: Bar, mass: 1 kg, at: {x: -500 mm, y: 0 mm, z: 700 mm}}
            cargo:
              - {name: Rope, in: Winch, mass: 8 kg, at: {x: -500 mm, y: 0 mm, z: 700 mm}}
            options: [{name: Front, take: TAKEN, choices: [{name: bar, parts: [Bar]}, {name: as it is, parts: []}]}]
            """;

    /** 60 - 20 + 30 + 1 + 8 kg; without the bar the bumper is there and nothing hangs in the air. */
    @Test
    void whatABarReplacesComesBackAndWhatItCarriesGoesWithIt() throws FaultsException {
        assertEquals(
                2599,
                loadings(BARS.replace("TAKEN", "bar")).get(0).axles().total().value(),
                1e-9);
        Loading without = loadings(BARS.replace("TAKEN", "as it is")).get(0);
        assertEquals(2520, without.axles().total().value(), 1e-9);
        assertEquals(List.of("Rope", "Washer", "Winch"), without.plan().leftNowhere());
    }

    /** Luggage in a canopy that is off is off with it: 2520 - 60 kg, the canopy weighing nothing here. */
    @Test
    void cargoIsLeftWithThePartItStandsIn() throws FaultsException {
        List<Loading> loadings = loadings(
                """
                fitments: [{name: Canopy, kind: canopy, removable: yes, mass: 0 kg}]
                cargo: [{name: Luggage, in: Canopy}]
                cases: [{name: on}, {name: bare, off: [Canopy]}]
                """);
        assertEquals(2520, loadings.get(0).axles().total().value(), 1e-9);
        assertEquals(2460, loadings.get(1).axles().total().value(), 1e-9);
    }
}
