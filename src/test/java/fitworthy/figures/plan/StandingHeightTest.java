package fitworthy.figures.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.quantity.Figure;
import fitworthy.sheet.VehicleEnd;
import fitworthy.source.FaultsException;
import org.junit.jupiter.api.Test;

/** The plain wagon has its centre of gravity at 700 mm, 1250 kg on the front axle and 1050 kg on the rear. Sums by hand. */
class StandingHeightTest {

    private static final String UNSPRUNG =
            "vehicle: {suspension: {front: {unsprung: 125 kg}, rear: {unsprung: 210 kg}}}\n";

    private static Figure height(VehicleEnd end, String changes) throws FaultsException {
        Plan plan = new Plan(Sheets.plainWith(changes), Books.shipped().tables(), id -> Figure.ZERO);
        return StandingHeight.of(plan, end).height();
    }

    private static String springs(String end, String lift) {
        return "{name: Springs " + end + ", kind: springs, mass: 0 kg, end: " + end + ", lift: " + lift + "}";
    }

    /** 125 of 1250 kg is 10 % unsprung: 0.7 + 0.9 x (0.05 + 0.02) m. At the rear 20 %: 0.7 + 0.8 x 0.02 m. */
    @Test
    void springsAndBodySpacersRaiseWhatTheyCarry() throws FaultsException {
        String lifted = UNSPRUNG + "fitments: [" + springs("front", "50 mm")
                + ", {name: Spacers, kind: body-lift, mass: 0 kg, lift: 20 mm}]\n";
        assertEquals(0.763, height(VehicleEnd.FRONT, lifted).value(), 1e-9);
        assertEquals(0.716, height(VehicleEnd.REAR, lifted).value(), 1e-9);
        assertEquals(0.7, height(VehicleEnd.FRONT, UNSPRUNG).value(), 1e-9);
    }

    /** 265/65R17 is 776.3 mm, 265/70R17 is 802.8 mm: half of 26.5 mm, whatever is sprung. */
    @Test
    void largerTyresRaiseAllOfIt() throws FaultsException {
        String tyres = "fitments: [{name: Tyres, kind: tyres, mass: 0 kg, size: 265/70R17}]\n";
        assertEquals(0.71325, height(VehicleEnd.FRONT, UNSPRUNG + tyres).value(), 1e-9);
        assertEquals(0.71325, height(VehicleEnd.REAR, tyres).value(), 1e-9);
    }

    @Test
    void whatIsNotKnownIsNotLow() throws FaultsException {
        String lifted = "fitments: [" + springs("rear", "50 mm") + "]\n";
        assertEquals(
                0.75,
                height(VehicleEnd.REAR, "vehicle: {suspension: {rear: {unsprung: unknown}}}\n" + lifted)
                        .value(),
                1e-9);
        assertFalse(height(VehicleEnd.REAR, lifted.replace("50 mm", "unknown")).known());
    }

    /**
     * Halfway between axles lifted by 50 and 20 mm: 35 mm, on tyres of 26.5 mm more diameter 48.25 mm. A spring, half of
     * which is carried, 13.25 + 17.5 mm; a tyre 13.25 mm.
     */
    @Test
    void whatIsTakenOffWasRaisedWithTheRest() throws FaultsException {
        String lifted = "fitments: [" + springs("front", "50 mm") + ", " + springs("rear", "20 mm")
                + ", {name: Tyres, kind: tyres, mass: 0 kg, size: 265/70R17}]\n";
        Plan plan = new Plan(Sheets.plainWith(lifted), Books.shipped().tables(), id -> Figure.ZERO);
        Figure middle = Figure.of(1.425);
        assertEquals(0.04825, StandingHeight.raised(plan, middle, 0).value(), 1e-9);
        assertEquals(0.03075, StandingHeight.raised(plan, middle, 0.5).value(), 1e-9);
        assertEquals(0.01325, StandingHeight.raised(plan, middle, 1).value(), 1e-9);
    }
}
