package fitworthy.printout.letter;

import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Adviser;
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

    /** The lists of one letter. */
    private static String letter(String party, String changes) throws FaultsException {
        return Letters.of(Adviser.advise(Books.engine(), Sheets.plainWith(changes))).report(party).sections().stream()
                .flatMap(section -> section.blocks().stream())
                .filter(block -> block instanceof Points || block instanceof Steps)
                .map(block -> block instanceof Points points ? points.texts() : ((Steps) block).texts())
                .map(Object::toString)
                .collect(Collectors.joining());
    }
}
