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
}
