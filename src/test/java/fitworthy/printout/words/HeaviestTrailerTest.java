package fitworthy.printout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Adviser;
import fitworthy.advice.RoomLeft;
import fitworthy.source.FaultsException;
import org.junit.jupiter.api.Test;

/** How heavy a trailer may be, in sentences. Sums by hand in rules/room/cases.yaml, and in RoomTableTest. */
class HeaviestTrailerTest {

    private static final String VAN =
            """
            trailer: {name: Van, mass: 2000 kg +/- 0 kg, ball: 200 kg +/- 0 kg, rated: 3500 kg, gtm: 3100 kg, brakes: electric,
              lightest: 1200 kg, coupling: {trailer: 3500 kg, ball: 350 kg}}
            """;
    private static final String BAR =
            "vehicle: {tow-bar: {plate: {trailer: 3500 kg, ball: 350 kg}}, ratings: {rear-axle: 1500 kg}}\n";

    private static HeaviestTrailer of(String changes) throws FaultsException {
        var advice = Adviser.advise(Books.engine(), Sheets.plainWith(changes));
        return new HeaviestTrailer(RoomLeft.of(advice), advice.sheet().trailer().orElseThrow());
    }

    @Test
    void theLimitThatDecidesIsNamed() throws FaultsException {
        assertEquals("Up to 2206 kg, limited by the rear axle.", of(VAN + BAR).sentences());
        assertFalse(of(VAN + BAR).isOverAlone());
    }

    @Test
    void whereTheTrailerItselfDecidesTheVehicleIsToldToo() throws FaultsException {
        assertEquals(
                "Up to 2100 kg, limited by the trailer's plate. The vehicle itself could tow 2206 kg, limited by the rear"
                        + " axle.",
                of(VAN.replace("3500 kg, gtm: 3100 kg", "2100 kg, gtm: 1950 kg") + BAR)
                        .sentences());
    }

    /** 80 kg are left for 0.14 of each kilogram: 571 kg; 168 kg are left for 0.14 of each: 1200 kg. */
    @Test
    void aTrailerThatIsHeavierEvenEmptyIsToldSo() throws FaultsException {
        assertEquals(
                "Up to 571 kg, limited by the rear axle. Van is heavier even empty: 1200 kg.",
                of(VAN + BAR.replace("1500 kg", "1271.053 kg")).sentences());
        assertEquals(
                "Up to 571 kg, limited by the rear axle. Van is heavier even empty: 581 kg (too close to call).",
                of(VAN.replace("lightest: 1200 kg", "lightest: 581 kg +/- 11 kg")
                                + BAR.replace("1500 kg", "1271.053 kg"))
                        .sentences());
        assertEquals(
                "Up to 571 kg, limited by the rear axle. Van is heavier even empty: 583 kg.",
                of(VAN.replace("lightest: 1200 kg", "lightest: 583 kg +/- 11 kg")
                                + BAR.replace("1500 kg", "1271.053 kg"))
                        .sentences());
        assertEquals(
                "Up to 1200 kg, limited by the rear axle.",
                of(VAN + BAR.replace("1500 kg", "1359.053 kg")).sentences());
    }

    @Test
    void whatIsNotKnownIsNoLeave() throws FaultsException {
        String unknown = of(VAN + "vehicle: {ratings: {rear-axle: 1500 kg}}\n").sentences();
        assertTrue(
                unknown.startsWith(
                        "Not known, but no more than 2206 kg, limited by the rear axle; to be found out: Tow bar plate"),
                unknown);
        assertEquals(
                "Not known, but no more than 1000 kg, limited by the rear axle; to be found out: Trailer: its whole mass when"
                        + " loaded, uncoupled. On the ball (200 kg planned): at most 57 kg, limited by the rear axle.",
                of(VAN.replace("2000 kg +/- 0 kg", "ask") + BAR.replace("1500 kg", "1271.053 kg"))
                        .sentences());
    }

    /** As made it may tow 3000 kg and 2206 kg by the rear axle; nobody says so of the chassis that is cut. */
    @Test
    void ofACutChassisNobodyTellsWhatItMayTow() throws FaultsException {
        String stretch =
                """
                fitments: [{name: Stretch, kind: chassis-extension, mass: 0 kg, wheelbase-added: 1 mm, rear-overhang: 1050 mm,
                  approved: yes, behind-cut: 900 kg +/- 0 kg, cut: 2000 mm, towing-stated: %s}]
                """;
        String unstated = of(VAN + BAR + stretch.formatted("no")).sentences();
        assertTrue(unstated.startsWith("Not known, but no more than 22"), unstated);
        assertTrue(
                unstated.endsWith(
                        "to be found out: Stretch: what it may tow and carry on the ball after the cut, stated in writing."),
                unstated);
        String stated = of(VAN + BAR + stretch.formatted("yes")).sentences();
        assertTrue(stated.startsWith("Up to 22"), stated);
    }

    @Test
    void aVehicleThatIsOverWithoutATrailerMayTowNone() throws FaultsException {
        HeaviestTrailer none = of(VAN + BAR.replace("1500 kg", "1190.053 kg"));
        assertEquals("No trailer at all: the rear axle is exceeded by 1 kg without one.", none.sentences());
        assertTrue(none.isOverAlone());
        String crate = "cargo: [{name: Crate, mass: 10 kg +/- %s kg, at: {x: 2850 mm, y: 0 mm, z: 900 mm}}]\n";
        assertEquals(
                "No trailer at all: the rear axle is exceeded by 1 kg (too close to call) without one.",
                of(VAN + BAR.replace("1500 kg", "1200.053 kg") + crate.formatted("8"))
                        .sentences());
        assertEquals(
                "No trailer at all: the rear axle is exceeded by 1 kg without one.",
                of(VAN + BAR.replace("1500 kg", "1200.053 kg") + crate.formatted("0"))
                        .sentences());
    }

    @Test
    void loadingsThatComeToTheSameStandTogether() throws FaultsException {
        String loadings =
                """
                cases: [{name: light, filled: {Main tank: 0 %}}, {name: heavy, towing: yes}, {name: short, towing: yes}]
                """;
        assertEquals(
                "Up to 2610 kg, limited by the rear axle (light); up to 2206 kg, limited by the rear axle (heavy, short).",
                of(VAN + BAR + loadings).sentences());
    }
}
