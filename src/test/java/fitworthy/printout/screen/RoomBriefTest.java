package fitworthy.printout.screen;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Adviser;
import fitworthy.document.Page;
import fitworthy.source.FaultsException;
import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

/** The room that is left, a loading a line. Sums by hand in rules/room/cases.yaml: 255 kg in the seats, 408 at the rear end. */
class RoomBriefTest {

    private static String printed(String changes) throws FaultsException {
        StringWriter out = new StringWriter();
        RoomBrief.print(new Page(new PrintWriter(out)), Adviser.advise(Books.engine(), Sheets.plainWith(changes)));
        return out.toString().replaceAll("\\s+", " ");
    }

    /** 7100 lb are 3220.51 kg. */
    @Test
    void aTrailerGivenInPoundsIsToldInWholeKilograms() throws FaultsException {
        says(
                "trailer: {name: Van, mass: 7100 lb, lightest: 5600 lb}",
                "Van as planned: 3221 kg; at its lightest 2540 kg");
    }

    private static void says(String changes, String words) throws FaultsException {
        String printed = printed(changes);
        assertTrue(printed.contains(words), () -> "'" + words + "' in " + printed);
    }

    /** With a front axle that bears much the rear end bears least. */
    @Test
    void peopleAndCargoAreWhatTheWorstPlaceBears() throws FaultsException {
        says("title: Plain", "everything aboard - 255 kg (front axle)");
        says("vehicle: {ratings: {front-axle: 1600 kg}}", "everything aboard - 408 kg (rear axle)");
    }

    @Test
    void aBoundIsToldWhereALimitIsNotKnown() throws FaultsException {
        says("vehicle: {ratings: {gvm: unknown}}", "everything aboard - at most 255 kg (front axle)");
        says(
                "vehicle: {ratings: {gvm: unknown, front-axle: unknown, rear-axle: unknown}}",
                "everything aboard - not known");
    }

    /** 48 L of 80 L are 26.9 kg too much where the GVM is 2500 kg; without a GVM nobody knows. */
    @Test
    void aTankIsToStayBelowFullOnlyWhereThatIsKnown() throws FaultsException {
        says(
                "vehicle: {ratings: {gvm: 2500 kg}}",
                "Not to be filled to the top: Main tank, at most 56 L (everything aboard).");
        says(
                "vehicle: {ratings: {gvm: unknown}}",
                "Not known whether to be filled to the top: Main tank (everything aboard).");
        assertFalse(printed("title: Plain").contains("filled to the top"), "a tank that may be full is not named");
    }

    /**
     * 40 L of water are 39.92 kg, so that 2560 kg are aboard. 30 kg too much are 35.6 L of diesel or 29.98 L of water;
     * 70 kg are more than the 67.2 kg of the one and the 39.92 kg of the other.
     */
    @Test
    void whatOneTankAloneWouldDoIsSaidAndThatNoneWould() throws FaultsException {
        String water = "tanks: [{name: Water, liquid: water, capacity: 40 L, fill: 100 %, stock: no, mass: 0 kg,"
                + " at: {x: 1500 mm, y: 0 mm, z: 700 mm}}]\n";
        says(
                water + "vehicle: {ratings: {gvm: 2530 kg}}",
                "Not to be filled to the top: Main tank, at most 44 L, or Water, at most 10 L (everything aboard).");
        String over = printed(water + "vehicle: {ratings: {gvm: 2490 kg}}");
        assertTrue(
                over.contains("A limit stays exceeded even with Main tank empty or Water empty (everything aboard)."),
                over);
        assertFalse(over.contains("filled to the top"), over);
    }

    /** 2580 kg of 2510 kg: 70 kg over, 2.8 kg with the 67.2 kg of the tank out. */
    @Test
    void whatIsOverByLessThanCanBeKnownIsSaidToBeTooClose() throws FaultsException {
        String sheet = "vehicle: {ratings: {gvm: 2510 kg}, tow-bar: {plate: {trailer: 3500 kg, ball: 350 kg}}}\n"
                + "cargo: [{name: Luggage, mass: 120 kg +/- %s kg, at: {x: 2400 mm, y: 0 mm, z: 900 mm}}]\n";
        String tank = "imit stays exceeded even with Main tank empty (everything aboard).";
        says(sheet.formatted("2"), "A l" + tank);
        says(sheet.formatted("3"), "Too close to call whether a l" + tank);
        String alone = "ehicle alone is over, without a trailer (everything aboard).";
        String towing = sheet + "cases: [{name: everything aboard, towing: yes}]\n"
                + "trailer: {name: Van, mass: 1000 kg +/- 0 kg, ball: 100 kg +/- 0 kg, rated: 2000 kg, gtm: 2000 kg,\n"
                + "  brakes: electric, coupling: {trailer: 3500 kg, ball: 350 kg}}\n";
        says(towing.formatted("69"), "The v" + alone);
        says(towing.formatted("71"), "Too close to call whether the v" + alone);
    }

    /** GVM over by 20 kg everywhere, the roof by 50 kg where a rack stands: the GVM bars people and cargo. */
    @Test
    void whatBarsPeopleIsNotTheRoof() throws FaultsException {
        String rack =
                "fitments: [{name: Rack, kind: roof-rack, mass: 30 kg, roof: yes, at: {x: 1400 mm, y: 0 mm, z: 1900 mm}}]\n";
        says(rack + "vehicle: {ratings: {gvm: 2530 kg, roof: 10 kg}}", "everything aboard - none (GVM)");
        says(rack + "vehicle: {ratings: {roof: 10 kg}}", "No more load on Rack.");
    }

    /** A tow rating of 3000 kg and a GCM that leaves more. */
    @Test
    void aTrailerThatIsTooHeavyEmptyIsSaidToBe() throws FaultsException {
        String van = "vehicle: {tow-bar: {plate: {trailer: 3500 kg, ball: 350 kg}}}\n"
                + "trailer: {name: Van, mass: 3400 kg +/- 0 kg, ball: 200 kg +/- 0 kg, rated: 3500 kg, gtm: 3300 kg,\n"
                + "  brakes: electric, lightest: %s, coupling: {trailer: 3500 kg, ball: 350 kg}}\n";
        String words = "at its lightest %s: this build cannot tow it even empty.";
        says(van.formatted("3001 kg"), "Van as planned: 3400 kg; " + words.formatted("3001 kg"));
        says(van.formatted("3000 kg"), "Van as planned: 3400 kg; at its lightest 3000 kg.");
        says(
                van.formatted("3010 kg +/- 11 kg"),
                "at its lightest 3010 kg: too close to call whether this build can tow it even empty.");
        says(van.formatted("3012 kg +/- 11 kg"), words.formatted("3012 kg"));
        says(
                van.formatted("about 3001 kg"),
                "at its lightest about 3001 kg: too close to call whether this build can tow it even empty.");
        says(van.formatted("about 3100 kg +/- 50 kg"), words.formatted("about 3100 kg"));
        assertFalse(
                printed(van.formatted("3001 kg").replace("{tow-bar", "{ratings: {gvm: unknown}, tow-bar"))
                        .contains("even empty"),
                "without a GVM nobody knows how heavy a trailer may be");
    }

    /** 170 kg of GVM left for the ball of 200 / 3400, or 230 kg without the luggage: 2890 kg, and the tow rating of 3000 kg. */
    @Test
    void aTrailerThatIsTooHeavyInOneLoadingIsSaidToBeSoThere() throws FaultsException {
        String van = "vehicle: {ratings: {gvm: 2690 kg}, tow-bar: {plate: {trailer: 3500 kg, ball: 350 kg}}}\n"
                + "cases: [{name: light, carrying: []}, {name: on tour, towing: yes}]\n"
                + "trailer: {name: Van, mass: 3400 kg +/- 0 kg, ball: 200 kg +/- 0 kg, rated: 3500 kg, gtm: 3300 kg,\n"
                + "  brakes: electric, lightest: %s, coupling: {trailer: 3500 kg, ball: 350 kg}}\n";
        says(
                van.formatted("2891 kg"),
                "at its lightest 2891 kg: too heavy even empty for the vehicle as it is loaded then (on tour).");
        says(van.formatted("2890 kg"), "at its lightest 2890 kg.");
        says(van.formatted("3001 kg"), "at its lightest 3001 kg: this build cannot tow it even empty.");
    }
}
