package fitworthy.printout.letter;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Adviser;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Points;
import fitworthy.document.Report.Steps;
import fitworthy.source.FaultsException;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What stands in a letter on a small plan: the plain wagon of 2520 kg with such changes. */
class LettersOfPlansTest {

    /** Two findings want the axles weighed one by one: that is asked once, for both reasons. */
    @Test
    void whatTwoFindingsAskAlikeIsAskedOnce() throws FaultsException {
        String letter = letter(
                "weighbridge",
                """
                vehicle: {mass: {kerb: 2300 kg +/- 30 kg, front-axle: 1250 kg +/- 30 kg, rear-axle: 1050 kg +/- 30 kg},
                          ratings: {gvm: 2530 kg, front-axle: 1340 kg}}
                """);
        assertTrue(
                letter.contains("[What each axle weighs, one axle at a time. Why we ask: The front axle is too close"
                        + " to its limit to be sure; The loaded mass is too close to the GVM to be sure.]"),
                letter);
    }

    /** 132 kg in place of 150 kg take nothing off, what is done is not given up, and nobody leaves the dog. */
    @Test
    void theCustomerGetsTheHeaviestThingsToChooseFrom() throws FaultsException {
        String letter = letter(
                "customer",
                """
                vehicle: {ratings: {gvm: 2500 kg}}
                fitments:
                  - {name: Box, kind: other, mass: 70 kg +/- 0 kg, at: {x: 2850 mm, y: 0 mm, z: 900 mm}}
                  - {name: Rack, kind: other, mass: 30 kg +/- 0 kg, at: {x: 2850 mm, y: 0 mm, z: 900 mm}, done: yes}
                  - {name: Tray, kind: other, mass: 132 kg +/- 0 kg, at: {x: 2850 mm, y: 0 mm, z: 900 mm},
                     removes: {name: tub, mass: 150 kg +/- 0 kg, at: {x: 2850 mm, y: 0 mm, z: 900 mm}}}
                cargo:
                  - {name: Luggage, mass: 60 kg +/- 0 kg, at: {x: 2700 mm, y: 0 mm, z: 900 mm}}
                  - {name: The dog, mass: 25 kg +/- 0 kg, at: {x: 2700 mm, y: 0 mm, z: 900 mm}}
                """);
        assertTrue(letter.contains("[Box: 70 kg, Luggage: 60 kg]"), letter);
    }

    /** 30 kg of springs under the kit are nobody's to leave at home; without a kit they are a part like others. */
    @Test
    void theSpringsUnderARatingKitAreNotToChooseFrom() throws FaultsException {
        String springs =
                """
                vehicle: {ratings: {gvm: 2500 kg}}
                fitments:
                  - {name: Box, kind: other, mass: 70 kg +/- 0 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}}
                  - {name: Springs, kind: springs, end: rear, mass: 30 kg +/- 0 kg, at: {x: 2850 mm, y: 0 mm, z: 500 mm}}
                """;
        String kit = "  - {name: Kit, kind: rating-upgrade, mass: 0 kg, gvm: 2510 kg}\n";
        assertTrue(letter("customer", springs).contains("Springs: 30 kg"));
        assertFalse(letter("customer", springs + kit).contains("Springs: 30 kg"));
    }

    /** 250 kg on a ball for 200 kg: what lies in the vehicle takes nothing off it. */
    @Test
    void nothingInTheVehicleIsSaidToTakeLoadOffTheBall() throws FaultsException {
        String letter = letter("customer", TOWING.formatted("ball: 200 kg", ""));
        assertFalse(letter.contains("Luggage: "), letter);
        assertFalse(letter.contains("Box: "), letter);
    }

    /** The ball is passed by most, the GVM by less: of that the vehicle's things do take their mass. */
    @Test
    void whereTheTrailerIsOverTheVehiclesThingsAreHeldAgainstItsOwnRating() throws FaultsException {
        String letter = letter("customer", TOWING.formatted("ball: 200 kg, gvm: 2750 kg", ""));
        assertTrue(letter.contains("[Box: 70 kg, Luggage: 60 kg]"), letter);
    }

    /** By moments about axles 4000 mm behind the ball: 100 kg at 1000 mm put 75 on it, at 5000 mm they take 25 off. */
    @Test
    void whatIsInTheTrailerTakesItsShareOffTheBall() throws FaultsException {
        String letter = letter(
                "customer",
                TOWING.formatted(
                        "ball: 200 kg",
                        """
                        axle: 4000 mm, bare: {mass: 1800 kg, ball: 200 kg}, stowed: [
                          {name: Nose box, mass: 100 kg +/- 0 kg, behind: 1000 mm},
                          {name: Rear box, mass: 100 kg +/- 0 kg, behind: 5000 mm}]
                        """));
        assertTrue(letter.contains("[Nose box: 75 kg]"), letter);
    }

    /** The same things off the axles, which carry 1750 of 1700 kg: 25 and 125 kg. */
    @Test
    void whatIsInTheTrailerTakesTheRestOffItsAxles() throws FaultsException {
        String letter = letter(
                "customer",
                TOWING.formatted(
                        "ball: 300 kg",
                        """
                        axle: 4000 mm, gtm: 1700 kg, bare: {mass: 1800 kg, ball: 200 kg}, stowed: [
                          {name: Nose box, mass: 100 kg +/- 0 kg, behind: 1000 mm},
                          {name: Rear box, mass: 100 kg +/- 0 kg, behind: 5000 mm}]
                        """));
        assertTrue(letter.contains("[Rear box: 125 kg, Nose box: 25 kg]"), letter);
    }

    /** Vehicle 2510 kg and trailer 2000 kg: what is in either counts whole against the GCM, and so does the rest of the trailer. */
    @Test
    void againstTheGcmTheTrailerCountsToo() throws FaultsException {
        String sheet = TOWING.formatted(
                "gcm: 4400 kg",
                "lightest: 1700 kg, stowed: [{name: Nose box, mass: 100 kg +/- 0 kg, behind: 1000 mm}]");
        String letter = letter("customer", sheet);
        assertTrue(letter.contains("[Nose box: 100 kg, Box: 70 kg, Luggage: 60 kg]"), letter);
        assertTrue(
                letter.contains("What is left out of Caravan takes its whole mass off the GCM, 300 kg at most."),
                letter);
        String unknown = letter("customer", sheet.replace("lightest: 1700 kg, ", ""));
        assertTrue(unknown.contains("What is left out of Caravan takes its whole mass off the GCM."), unknown);
    }

    /** Who is to say which cable or fuse suits is told load, run, copper and fuse; of what nobody knows, so. */
    @Test
    void theElectricianIsToldWhatTheCircuitIs() throws FaultsException {
        String letter = letter(
                "auto-electrician",
                CIRCUIT.formatted("section: 4 mm2, length: 6.5 m", "rating: 60 A, distance: 1500 mm"));
        assertTrue(
                letter.contains(
                        "Heater: 12 V, 42.5 A; cable: copper 4 mm2, length one way 6.5 m, insulation for 90 degC;"
                                + " fuse 60 A, 1500 mm along the cable from the battery or board."),
                letter);
        assertFalse(letter.contains("Lamp: "), letter);
        String unknown = letter("auto-electrician", CIRCUIT.formatted("length: ask", "rating: 0 A"));
        assertTrue(
                unknown.contains("copper not known, length one way not known, insulation for 90 degC; no fuse."),
                unknown);
    }

    /** Who is to name a tyre is told size and load index of those planned, and of those that the vehicle came with. */
    @Test
    void theTyreFitterIsToldTheTyres() throws FaultsException {
        String planned =
                """
                fitments: [{name: New tyres, kind: tyres, mass: 0 kg, size: 265/65R17, load-index: 90, speed-symbol: S,
                            at: {x: 1400 mm, y: 0 mm, z: 400 mm}}]
                """;
        String letter = letter("tyre-fitter", planned);
        assertTrue(letter.contains("Planned: size 265/65R17, load index 90, speed symbol S."), letter);
        assertTrue(letter.contains("On it as it came: size "), letter);
        String own = letter("tyre-fitter", "vehicle: {tyres: {size: 265/70R16, load-index: 90}}\n");
        assertFalse(own.contains("Planned: "), own);
        assertTrue(own.contains("On it as it came: size 265/70R16, load index 90, speed symbol "), own);
    }

    private static final String CIRCUIT =
            """
            circuits:
              - {name: Heater, voltage: 12 V, current: 42.5 A, battery: starter, driving: no, hours: 1 h, need: other, earth: yes,
                 cable: {engine-bay: no, insulation: 90 degC, %s}, fuse: {%s}}
              - {name: Lamp, voltage: 12 V, current: 1 A, battery: starter, driving: no, hours: 1 h, need: other, earth: yes,
                 cable: {engine-bay: no, section: 2.5 mm2, length: 1 m, insulation: 90 degC},
                 fuse: {rating: 5 A, distance: 100 mm}}
            """;

    /** A box and luggage in the wagon, and a trailer of 2000 kg with 250 kg on the ball. */
    private static final String TOWING =
            """
            vehicle: {ratings: {%s}}
            fitments:
              - {name: Box, kind: other, mass: 70 kg +/- 0 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}}
            cargo:
              - {name: Luggage, mass: 60 kg +/- 0 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}}
            trailer: {name: Caravan, mass: 2000 kg +/- 0 kg, rated: 2500 kg, ball: 250 kg +/- 0 kg, brakes: electric, %s}
            cases: [{name: towing, towing: yes}]
            """;

    /** The lists and sentences of one letter. */
    private static String letter(String party, String changes) throws FaultsException {
        return Letters.of(Adviser.advise(Books.engine(), Sheets.plainWith(changes))).report(party).sections().stream()
                .flatMap(section -> section.blocks().stream())
                .map(block -> block instanceof Points points
                        ? points.texts().toString()
                        : block instanceof Steps steps
                                ? steps.texts().toString()
                                : block instanceof Paragraph paragraph ? paragraph.text() : "")
                .collect(Collectors.joining());
    }
}
