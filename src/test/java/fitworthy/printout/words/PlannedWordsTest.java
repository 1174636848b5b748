package fitworthy.printout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Sheets;
import fitworthy.source.FaultsException;
import org.junit.jupiter.api.Test;

/** What a plan was taken to be. */
class PlannedWordsTest {

    private static String of(String changes) throws FaultsException {
        return PlannedWords.of(Sheets.plainWith("assume-usual: yes\n" + changes));
    }

    @Test
    void partsHaveTheFigureThatTheyAreChosenBy() throws FaultsException {
        assertEquals(
                "Lift springs 50 mm, Body blocks about 25 mm, AT tyres 265/70R17, House battery 100 Ah, Panel 200 W,"
                        + " Long-range tank 140 L. Carried: Luggage.",
                of(
                        """
                        fitments:
                          - {name: Lift springs, kind: springs, end: front, lift: 50 mm}
                          - {name: Body blocks, kind: body-lift, lift: about 25 mm}
                          - {name: AT tyres, kind: tyres, size: 265/70R17}
                          - {name: House battery, kind: battery, capacity: 100 Ah}
                          - {name: Panel, kind: solar-panel, power: 200 W}
                        tanks: [{name: Long-range tank, liquid: diesel, capacity: 140 L, stock: no}]
                        """));
    }

    /** 78 in are 1981.2 mm, 7 US gal 26.4979 L; 9000 lb are 4082.33 kg and 10500 lb 4762.72 kg, a load never less, a plate never more. */
    @Test
    void whatIsWrittenInOtherUnitsIsRoundedAndStandsAsWrittenToo() throws FaultsException {
        assertEquals(
                "Cap 1981 mm (78 in), Can 26.5 L (7 US gal). Carried: Luggage."
                        + " Towed: Van 4083 kg (9000 lb), 4762 kg (10500 lb) on its plate.",
                of(
                        """
                        fitments: [{name: Cap, kind: canopy, length: 78 in}]
                        tanks: [{name: Can, liquid: water, capacity: 7 US gal, stock: no}]
                        trailer: {name: Van, mass: 9000 lb, rated: 10500 lb, ball: ask}
                        """));
    }

    @Test
    void aFigureThatIsNotKnownOrStandsInTheNameIsNotSaidAgain() throws FaultsException {
        assertEquals(
                "House battery, Panel 200 W. Carried: Luggage.",
                of(
                        """
                        fitments:
                          - {name: House battery, kind: battery, capacity: ask, mass: 26 kg}
                          - {name: Panel 200 W, kind: solar-panel, power: 200 W}
                        tanks: [{name: Main tank, liquid: diesel, capacity: 80 L, stock: yes}]
                        """));
    }

    @Test
    void whatIsCarriedAndTowedIsToldAfterTheParts() throws FaultsException {
        assertEquals(
                "Winch. Carried: Luggage, Dog, Swag. Towed: Camper 1400 kg, 120 kg on the ball.",
                of(
                        """
                        fitments: [{name: Winch, kind: winch}, {name: Old rack, kind: roof-rack, done: yes}]
                        cargo: [{name: Dog}, {name: Swag}]
                        trailer: {name: Camper, mass: 1400 kg, ball: 120 kg}
                        """));
        assertEquals("Carried: Luggage. Towed: Camper.", of("trailer: {name: Camper, mass: ask, ball: ask}"));
        assertEquals(
                "Carried: Luggage. Towed: Camper, 2000 kg on its plate. Wanted by 2027-05-01.",
                of("ready-by: 2027-05-01\ntrailer: {name: Camper, mass: ask, rated: 2000 kg, ball: ask}"));
    }

    @Test
    void aPlanWithoutAnythingSaysSo() throws FaultsException {
        assertEquals(
                "nothing on the sheet",
                PlannedWords.of(Sheets.read(Sheets.treeWith("title: Empty").without("cargo"))));
    }
}
