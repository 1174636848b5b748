package fitworthy.search;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Sheets;
import fitworthy.sheet.Sheet;
import fitworthy.source.FaultsException;
import org.junit.jupiter.api.Test;

/** The plain wagon has one tank of 80 L and takes 12 L for a hundred kilometres, 16 L towing. */
class LeastTankFillTest {

    private static final String SECOND =
            "  - {name: Second tank, liquid: %s, capacity: 50 L, fill: 100 %%, stock: yes, density: 0.84 kg/L,"
                    + " at: {x: 2400 mm, y: 0 mm, z: 600 mm}%s}\n";
    private static final String WATER =
            "  - {name: %s, liquid: water, capacity: 50 L, fill: %s, stock: yes, at: {x: 2400 mm, y: 0 mm, z: 600 mm}}\n";

    private static double least(String tank, String changes) throws FaultsException {
        return least(tank, changes, 0);
    }

    private static double least(String tank, String changes, double reserve) throws FaultsException {
        Sheet sheet = Sheets.plainWith(changes);
        return new LeastTankFill(sheet, reserve)
                .of(sheet.tanks().stream()
                        .filter(one -> one.name().equals(tank))
                        .findFirst()
                        .orElseThrow());
    }

    private static double main(String changes) throws FaultsException {
        return least("Main tank", changes);
    }

    /** 500 km take 60 L, 700 km 84 L. */
    @Test
    void theTankHoldsWhatTheLongestLegTakes() throws FaultsException {
        assertEquals(60 / 80.0, main("trip: {longest-leg: 500 km}"), 1e-9);
        assertEquals(0, main("trip: {longest-leg: 0 km}"), 1e-9);
        assertEquals(1, main("trip: {longest-leg: 700 km}"), 1e-9);
    }

    /** 48 L for 400 km are four fifths of 60 L. */
    @Test
    void whatTheBookWantsLeftIsLeft() throws FaultsException {
        assertEquals(60 / 80.0, least("Main tank", "trip: {longest-leg: 400 km}", 0.2), 1e-9);
    }

    /** 400 km take 64 L towing and 48 L without; without load cases the trailer is on. */
    @Test
    void aTrailerTakesMore() throws FaultsException {
        String trip = "trip: {longest-leg: 400 km}\n";
        String van = trip + "trailer: {name: Van, mass: 1000 kg}\n";
        assertEquals(48 / 80.0, main(trip), 1e-9);
        assertEquals(64 / 80.0, main(van), 1e-9);
        assertEquals(48 / 80.0, main(van + "cases: [{name: solo}]"), 1e-9);
        assertEquals(48 / 80.0, main(van + "cases: [{name: solo, towing: no}]"), 1e-9);
        assertEquals(64 / 80.0, main(van + "cases: [{name: both, towing: yes}]"), 1e-9);
        assertEquals(64 / 80.0, main(van + "cases: [{name: both, towing: yes}, {name: solo}]"), 1e-9);
        assertEquals(
                48 / 80.0,
                main(van + "vehicle: {engine: {consumption-towing: }}"),
                1e-9,
                "what it takes without is the least that it takes");
    }

    /** A load case that no trip is set out on in, or that was weighed, asks for no fuel. */
    @Test
    void onlyLoadingsOfATripCount() throws FaultsException {
        String trip = "trip: {longest-leg: 400 km}\n";
        assertEquals(48 / 80.0, main(trip + "cases: [{name: out, trip: yes}]"), 1e-9);
        assertEquals(0, main(trip + "cases: [{name: wash, trip: no}]"), 1e-9);
        assertEquals(
                0, main(trip + "cases: [{name: scale, weighed: {front-axle: 1300 kg, rear-axle: 1200 kg}}]"), 1e-9);
        assertEquals(48 / 80.0, main(trip + "cases: [{name: wash, trip: no}, {name: out}]"), 1e-9);
    }

    /** 500 km take 60 L, of which a second tank holds 50 L full, 20 L in one loading; 400 km less than both. */
    @Test
    void whatOtherTanksHoldNeedNotBeInThisOne() throws FaultsException {
        String trip = "trip: {longest-leg: 500 km}\ntanks:\n";
        assertEquals(10 / 80.0, main(trip + SECOND.formatted("diesel", "")), 1e-9);
        assertEquals(
                40 / 80.0,
                main(trip + SECOND.formatted("diesel", "")
                        + "cases: [{name: full}, {name: less, filled: {Second tank: 40 %}}]"),
                1e-9);
        assertEquals(60 / 80.0, main(trip + SECOND.formatted("diesel", ", built-in: {feeds-engine: no}")), 1e-9);
        assertEquals(60 / 80.0, main(trip + SECOND.formatted("petrol", "")), 1e-9);
        assertEquals(
                0, main("trip: {longest-leg: 400 km}\ntanks:\n" + SECOND.formatted("diesel", "")), 1e-9, "48 of 50 L");
    }

    @Test
    void whatTheEngineDoesNotBurnMayBeLeftOut() throws FaultsException {
        String trip = "trip: {longest-leg: 1000 km}\ntanks:\n";
        assertEquals(0, least("Second tank", trip + SECOND.formatted("petrol", "")), 1e-9);
        assertEquals(
                0, least("Second tank", trip + SECOND.formatted("diesel", ", built-in: {feeds-engine: no}")), 1e-9);
        assertEquals(40 / 50.0, least("Second tank", trip + SECOND.formatted("diesel", "")), 1e-9);
    }

    /** Two people, five days, 4 L a day make 40 L, of which another tank holds 10 L or 15 L. */
    @Test
    void waterLastsForTheDaysBetweenSupplies() throws FaultsException {
        String trip = "trip: {people: 2, days: 5 days, water-use: 4 L}\ntanks:\n" + WATER.formatted("Water", "100 %");
        assertEquals(40 / 50.0, least("Water", trip), 1e-9);
        assertEquals(30 / 50.0, least("Water", trip + WATER.formatted("Can", "20 %")), 1e-9);
        assertEquals(
                25 / 50.0,
                least("Water", trip + WATER.formatted("Can", "20 %") + "cases: [{name: out, filled: {Can: 30 %}}]"),
                1e-9);
        assertEquals(
                1, least("Water", "trip: {people: 2, days: }\ntanks:\n" + WATER.formatted("Water", "100 %")), 1e-9);
    }
}
