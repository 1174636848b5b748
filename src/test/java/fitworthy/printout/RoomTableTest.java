package fitworthy.printout;

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

/** The room that is left, as it is told. Sums by hand in rules/room/cases.yaml. */
public class RoomTableTest {

    private static final String VAN =
            """
            trailer: {name: Van, mass: 2000 kg +/- 0 kg, ball: 200 kg +/- 0 kg, rated: 3500 kg, gtm: 3100 kg, brakes: electric,
              lightest: 1200 kg, coupling: {trailer: 3500 kg, ball: 350 kg}}
            """;

    private static final String EVERYWHERE =
            "in the seats of Driver and Passenger, beside Luggage, at the rear end (GVM)";

    private static String printed(String changes) throws FaultsException {
        StringWriter out = new StringWriter();
        RoomTable.of(Adviser.advise(Books.engine(), Sheets.plainWith(changes))).print(new Page(new PrintWriter(out)));
        out.toString().lines().forEach(line -> assertTrue(line.length() <= Page.COLUMNS, line));
        return out.toString().replaceAll("\\s+", " ");
    }

    private static void says(String printed, String words) {
        assertTrue(printed.contains(words), () -> "'" + words + "' in " + printed);
    }

    @Test
    void tellsTheHeaviestTrailerWithTheLimitThatGoverns() throws FaultsException {
        String bar = "vehicle: {tow-bar: {plate: {trailer: 3500 kg, ball: 350 kg}}, ratings: {rear-axle: 1500 kg}}\n";
        says(printed(VAN + bar), "Heaviest trailer up to 2206 kg, limited by the rear axle");
        // The plate says less than the vehicle would bear.
        says(
                printed(VAN.replace("3500 kg, gtm: 3100 kg", "2100 kg, gtm: 1950 kg") + bar),
                "up to 2100 kg, limited by the trailer's plate; the vehicle itself could tow 2206 kg, limited by the rear axle");
        // 80 kg are left for 0.14 of each kilogram: 571 kg.
        says(
                printed(VAN + bar.replace("1500 kg", "1271.053 kg")),
                "up to 571 kg, limited by the rear axle; Van is heavier even empty: 1200 kg");
    }

    @Test
    void whatIsNotKnownIsNoLeave() throws FaultsException {
        String printed = printed(VAN + "vehicle: {ratings: {rear-axle: 1500 kg}}\n");
        says(
                printed,
                "not known, but no more than 2206 kg, limited by the rear axle; to be found out: Tow bar plate: heaviest trailer on its plate, Tow bar plate: greatest load on the ball on its plate, or by its maker");
        says(printed("vehicle: {ratings: {gvm: unknown}}"), "(front axle), missing gross vehicle mass");
    }

    /**
     * 80 kg left on the rear axle bear 80 / 1.4 = 57.1 kg on the ball, which is 57.1 x 3500 / 200 = 1000 kg of a van at its
     * plate; of a lighter one, whose ball is more of it, less.
     */
    @Test
    void ofATrailerThatNobodyHasWeighedTheBallIsTold() throws FaultsException {
        String bar =
                "vehicle: {tow-bar: {plate: {trailer: 3500 kg, ball: 350 kg}}, ratings: {rear-axle: 1271.053 kg}}\n";
        String unweighed = VAN.replace("2000 kg +/- 0 kg", "ask");
        says(
                printed(unweighed + bar),
                "not known, but no more than 1000 kg, limited by the rear axle; to be found out: Trailer: its whole mass when loaded,"
                        + " uncoupled; on the ball (200 kg planned): at most 57 kg, limited by the rear axle");
        says(
                printed(unweighed.replace("rated: 3500 kg, ", "") + bar),
                "on the ball (200 kg planned): at most 57 kg, limited by the rear axle");
        says(
                printed(unweighed + bar.replace("1271.053", "1190.053")),
                "on the ball (200 kg planned): none, the rear axle is exceeded by 1 kg without one");
        assertFalse(printed(VAN + bar).contains("on the ball"), "what it weighs is known");
    }

    @Test
    void whatIsPassedAlreadyIsSaid() throws FaultsException {
        says(printed("vehicle: {ratings: {gvm: 2450 kg}}"), "none anywhere (GVM over already)");
        says(printed("vehicle: {ratings: {gvm: 2450 kg}}"), "a limit stays exceeded even with Main tank empty");
    }

    /** Rear end 3900 mm behind the front axle: 558.947 x 2850 / 3900 = 408.5 kg on the rear axle, less than the GVM's 480. */
    @Test
    void eachPlaceIsNamedAndTheRoofIsNotOneOfThem() throws FaultsException {
        says(
                printed("title: Plain"),
                "255 kg in the seats of Driver and Passenger (front axle); 408 kg at the rear end (rear axle); 480 kg"
                        + " beside Luggage (GVM); on the roof up to 100 kg");
        String rack = printed(
                "fitments: [{name: Rack, kind: roof-rack, mass: 30 kg, roof: yes, at: {x: 1400 mm, y: 0 mm, z: 1900 mm}}]");
        says(rack, "70 kg +/- 2 kg on Rack (roof)");
        assertFalse(rack.contains("not worked out"), rack);
        String dust = "trip: {dust: some}\n";
        says(printed(dust), "on the roof not known, at most 100 kg, missing its limit off the road");
        says(printed(dust + "vehicle: {ratings: {roof-off-road: 60 kg}}"), "on the roof up to 60 kg");
    }

    /** 100 kg less the rack's 30 kg on the road; a rack for 60 kg bears 60 kg whatever the roof may carry off it. */
    @Test
    void whatIsNotKnownIsBoundByEachLimitThatIs() throws FaultsException {
        String rack =
                """
                trip: {dust: some}
                fitments: [{name: Rack, kind: roof-rack, mass: 30 kg, roof: yes, at: {x: 1400 mm, y: 0 mm, z: 1900 mm}}]
                """;
        says(printed(rack), "not known, at most 70 kg on Rack (roof), missing greatest load on the roof off the road");
        says(
                printed(rack.replace("roof: yes", "roof: yes, carries: 60 kg")),
                "not known, at most 60 kg on Rack (rack), missing greatest load on the roof off the road");
        String onCanopy =
                """
                fitments:
                  - {name: Canopy, kind: canopy, mass: 90 kg, at: {x: 2700 mm, y: 0 mm, z: 1100 mm}, front: 1900 mm, length: 1600 mm}
                  - {name: Bars, kind: roof-rack, mass: 10 kg, at: on the canopy, carries: 75 kg}
                cargo: [{name: Kayak, mass: 24 kg, at: on the canopy}]
                """;
        says(printed(onCanopy), "not known, at most 51 kg on Bars, beside Kayak (rack)");
        says(
                printed(onCanopy.replace("canopy}]", "canopy, in: Bars}]")),
                "51 kg +/- 1 kg on Bars, beside Kayak (rack)");
    }

    /** 480 kg of GVM less 470 kg leave 10 kg; where that load may be off by 40 kg, up to 50 kg. */
    @Test
    void ofLessThanItsSpreadOnlyTheMostIsTold() throws FaultsException {
        String gear = "cargo: [{name: Gear, mass: 470 kg +/- %s kg, at: {x: 1900 mm, y: 0 mm, z: 900 mm}}]\n"
                + "vehicle: {ratings: {front-axle: 1900 kg, rear-axle: 1900 kg}}\n";
        says(printed(gear.formatted("40")), "not sure, from none to 50 kg in the seats");
        says(printed(gear.formatted("5")), "10 kg +/- 5 kg in the seats");
    }

    /** The rear tyres alone would allow some thousand kilograms: no rating of the vehicle, no figure. */
    @Test
    void noFigureIsToldWithoutAnyRatingOfTheVehicle() throws FaultsException {
        String none = printed("vehicle: {ratings: {gvm: unknown, front-axle: unknown, rear-axle: unknown}}");
        says(
                none,
                "not known in the seats of Driver and Passenger, beside Luggage, at the rear end, missing gross vehicle mass, limit of the front axle and 1 more");
        assertFalse(none.contains("at most"), none);
        says(
                printed("vehicle: {ratings: {gvm: unknown, front-axle: unknown}}"),
                "at most 408 kg at the rear end (rear axle)");
    }

    @Test
    void whatRestsOnAGuessSaysAbout() throws FaultsException {
        says(printed("vehicle: {ratings: {gvm: about 2700 kg +/- 60 kg}}"), "about 180 kg +/- 60 kg " + EVERYWHERE);
        says(printed("vehicle: {ratings: {gvm: 2700 kg +/- 60 kg}}"), "cargo 180 kg +/- 60 kg " + EVERYWHERE);
    }

    /** 56 L at 12 L/100 km are 466.7 km. */
    @Test
    void aTankThatMayNotBeFullIsToldWithTheRangeThen() throws FaultsException {
        says(
                printed("vehicle: {ratings: {gvm: 2500 kg}}"),
                "Main tank 56 L (GVM), 70 % full, range then 466 km Range at L/100km 666 km");
    }
}
