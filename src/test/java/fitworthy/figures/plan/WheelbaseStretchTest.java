package fitworthy.figures.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.quantity.Figure;
import fitworthy.source.FaultsException;
import org.junit.jupiter.api.Test;

/** A longer wheelbase, worked by hand on the plain wagon: 1250 and 1050 kg on axles 2850 mm apart, loaded 160 kg. */
class WheelbaseStretchTest {

    private static AxleLoads stretched(String fields) throws FaultsException {
        return stretched(fields, "");
    }

    private static AxleLoads stretched(String fields, String more) throws FaultsException {
        String yaml = "occupants: []\ncargo: []\nfitments: [{name: Stretch, kind: chassis-extension, mass: 0 kg,"
                + " wheelbase-added: 300 mm" + fields + "}]" + more;
        Plan plan = new Plan(Sheets.plainWith(yaml), Books.shipped().tables(), id -> Figure.ZERO);
        return Loading.all(plan).get(0).axles();
    }

    /** People and luggage of the plain wagon stay aboard: 240 kg m + 162 kg m over 3.15 m. */
    private static final double ABOARD = (160 * 1.5 + 60 * 2.7) / 3.15;

    /** 1050 x 2.85 + 950 x 0.3 = 3277.5 kg m over 3.15 m. The whole stays 2520 kg. */
    @Test
    void whatIsBehindTheCutMovesBackWithTheAxle() throws FaultsException {
        AxleLoads loads = stretched(", cut: 2000 mm, behind-cut: 950 kg +/- 63 kg");
        assertEquals(3277.5 / 3.15 + ABOARD, loads.rear().value(), 1e-9);
        assertEquals(2520 - 3277.5 / 3.15 - ABOARD, loads.front().value(), 1e-9);
        assertEquals(63 * 0.3 / 3.15, loads.rear().tolerance(), 1e-9);
        assertEquals(63 * 0.3 / 3.15, loads.front().tolerance(), 1e-9);
        assertEquals(0, loads.total().tolerance(), 1e-9);
    }

    /** From nothing to 1050 kg: 525 +/- 525 kg, each kilogram of which moves 0.3 / 3.15 of one to the rear. */
    @Test
    void whereItIsNotKnownItIsFromNothingToTheRearAxlesShare() throws FaultsException {
        AxleLoads loads = stretched("");
        assertEquals((1050 * 2.85 + 525 * 0.3) / 3.15 + ABOARD, loads.rear().value(), 1e-9);
        assertEquals(50, loads.rear().tolerance(), 1e-9);
    }

    /** What the rails say of either side of the cut is what is behind it: 3277.5 kg m again. */
    @Test
    void theRailsSayWhatIsBehindTheCut() throws FaultsException {
        for (int at : new int[] {2000, 2300}) {
            String rails = "\nvehicle: {rails: {at: " + at + " mm, behind: 950 kg +/- 63 kg, middle: 2700 mm}}";
            AxleLoads loads = stretched(", cut: 2000 mm", rails);
            assertEquals(3277.5 / 3.15 + ABOARD, loads.rear().value(), 1e-9);
            assertEquals(63 * 0.3 / 3.15, loads.rear().tolerance(), 1e-9);
        }
        for (int at : new int[] {1999, 2301}) {
            String rails = "\nvehicle: {rails: {at: " + at + " mm, behind: 950 kg, middle: 2700 mm}}";
            assertEquals(50, stretched(", cut: 2000 mm", rails).rear().tolerance(), 1e-9);
        }
    }

    /** All of the rear axle's share behind the cut leaves each axle its kerb mass. */
    @Test
    void theShareOfTheRearAxleBehindTheCutLeavesTheAxlesAsTheyWere() throws FaultsException {
        assertEquals(
                1050 + ABOARD,
                stretched(", behind-cut: 1050 kg +/- 0 kg").rear().value(),
                1e-9);
    }

    /** What was cut before it was weighed moves nothing: 1050 kg were read where the rear axle is now. */
    @Test
    void aStretchThatIsDoneWasWeighed() throws FaultsException {
        AxleLoads loads = stretched(", done: yes");
        assertEquals(1050 + ABOARD, loads.rear().value(), 1e-9);
        assertEquals(0, loads.rear().tolerance(), 1e-9);
    }
}
