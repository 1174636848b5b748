package fitworthy.printout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Adviser;
import fitworthy.advice.Outcome.Finding;
import fitworthy.book.HouseReader;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.printout.Printed;
import fitworthy.source.FaultsException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a remedy says is rounded so that doing it is enough; the line with what was compared is rounded as usual. */
class WordingTest {

    private static Finding finding(String id, String changes) throws FaultsException {
        return Adviser.advise(Books.engine(), Sheets.plainWith(changes)).findings().stream()
                .filter(each -> each.judged().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static void remedyHolds(String words, String id, String changes) throws FaultsException {
        String remedy = Wording.remedy(finding(id, changes));
        assertTrue(remedy.contains(words), remedy);
    }

    /** The plain wagon weighs 2520 kg loaded. */
    @Test
    void whatHasToComeOffIsEnough() throws FaultsException {
        remedyHolds("at least 143.2 kg out", "mass.gvm-over", "vehicle: {ratings: {gvm: 2376.8 kg}}");
        remedyHolds("at least 143 kg out", "mass.gvm-over", "vehicle: {ratings: {gvm: 2377 kg}}");
        remedyHolds("at least 0.1 kg out", "mass.gvm-over", "vehicle: {ratings: {gvm: 2519.9 kg}}");
    }

    /** 2520 kg against 2519.9 kg, 2519.94 kg, 2519.96 kg and 2519.6 kg; a kilogram more of it needs no further digit. */
    @Test
    void aLimitPassedByLittlePrintsAsPassed() throws FaultsException {
        compared("loaded mass 2520.0 kg, GVM 2519.9 kg: 0.1 kg over", "2519.9 kg");
        compared("loaded mass 2520.0 kg, GVM 2519.9 kg: 0.1 kg over", "2519.94 kg");
        compared("loaded mass 2520.00 kg, GVM 2519.96 kg: 0.04 kg over", "2519.96 kg");
        compared("loaded mass 2520.0 kg, GVM 2519.6 kg: 0.4 kg over", "2519.6 kg");
        compared("loaded mass 2520 kg, GVM 2519 kg: 1 kg over", "2519 kg");
    }

    /** 3000 lb are 1360.78 kg and 2999 lb 1360.32 kg (1 lb is 0.45359237 kg); 102 in are 2590.8 mm. */
    @Test
    void aLimitOfTheLawStandsInItsOwnUnitsToo() throws FaultsException {
        String trailer =
                "region: us-ca\nvehicle: {ratings: {towing-unbraked: 2000 kg}}\ntrailer: {name: Box, mass: 1300 kg, "
                        + "rated: 3000 lb, gtm: 1240 kg, ball: 150 kg, brakes: none, width: %s, lived-in: no}";
        reads(
                "greatest mass of a trailer without brakes 1360.8 kg (3000 lb), at most 1360.3 kg (2999 lb): "
                        + "0.5 kg (1 lb) over",
                "towing.unbraked-by-mass",
                String.format(trailer, "2 m"));
        reads(
                "width of the trailer 2600.0 mm (102.4 in), at most 2590.8 mm (102.0 in): 9.2 mm (0.4 in) over",
                "towing.trailer-wide",
                String.format(trailer, "2600 mm"));
    }

    /** 18 psi are 124.1 kPa, and 133 kPa 19.3 psi; 5001 lb are 2268.415 kg, no whole number of which has ten digits. */
    @Test
    void whatTheSheetHasInPoundsOrPsiIsComparedInThemToo() throws FaultsException {
        reads(
                "planned pressure 124 kPa (18 psi), pressure for the load 133 kPa (20 psi) +/- 2 kPa: 9 kPa (2 psi) short",
                "tyres.pressure-low",
                "vehicle: {mass: {rear-axle: 1050 kg +/- 20 kg}, tyres: {rear-pressure: 18 psi}}");
        reads(
                "loaded mass 2520 kg (5556 lb), GVM 2268 kg (5001 lb): 252 kg (555 lb) over",
                "mass.gvm-over",
                "vehicle: {ratings: {gvm: 5001 lb}}");
    }

    /** The pressure that is planned has no tolerance; the one for the load has it, and the verdict that of both. */
    @Test
    void aToleranceStandsBesideTheFigureThatHasIt() throws FaultsException {
        reads(
                "planned pressure 119 kPa, pressure for the load 133 kPa +/- 2 kPa: 14 kPa short",
                "tyres.pressure-low",
                "vehicle: {mass: {rear-axle: 1050 kg +/- 20 kg}, tyres: {rear-pressure: 119 kPa}}");
    }

    /** 60 A on a cable that carries less: the number alone says of nothing what it is a share. */
    @Test
    void aShareIsToldWithWhatItIsOf() throws FaultsException {
        Finding share = finding(
                "electrical.fuse-above-cable",
                """
                fitments: [{name: Radio, kind: other, mass: 1 kg, at: {x: 1000 mm, y: 0 mm, z: 900 mm}}]
                circuits:
                  - {name: Feed, part: Radio, current: 10 A, driving: no, cable: {section: 2 mm2, length: 1 m, engine-bay: no},
                     fuse: {rating: 60 A, distance: 100 mm}}
                """);
        String told = Wording.brief(share.judged(), share.comparison().orElseThrow());
        assertTrue(told.matches("[0-9]+ %, at most [0-9]+ %"), told);
        Finding mass = finding("mass.gvm-over", "vehicle: {ratings: {gvm: 2500 kg}}");
        assertEquals(
                "2520 kg, 20 kg over",
                Wording.brief(mass.judged(), mass.comparison().orElseThrow()),
                "what has a unit of its own is told by the margin");
    }

    @Test
    void aLimitOfNothingIsToldInWords(@TempDir Path folder) throws Exception {
        Path house = folder.resolve("house.yaml");
        Files.writeString(
                house,
                "shop: Saltbush Fit-out\nvalues:\n  - {practice: water.surge-most, region: any, from: 2026-01-01, value: 0 L}\n");
        Finding finding = Adviser.advise(
                        Books.engine().with(HouseReader.read(house, Books.shipped())),
                        Sheets.plainWith(
                                "tanks: [{name: Water, liquid: water, capacity: 60 L, fill: 100 %, stock: no, mass: 2 kg,"
                                        + " at: {x: 2000 mm, y: 0 mm, z: 700 mm}, water: {baffled: no}}]"))
                .findings()
                .stream()
                .filter(each -> each.judged().id().equals("water.surges"))
                .findFirst()
                .orElseThrow();
        assertEquals(
                "none allowed (house value)",
                Wording.limit(finding.judged(), finding.comparison().orElseThrow()));
    }

    private static void compared(String words, String gvm) throws FaultsException {
        reads(words, "mass.gvm-over", "vehicle: {ratings: {gvm: " + gvm + "}}");
    }

    private static void reads(String words, String id, String changes) throws FaultsException {
        Finding finding = finding(id, changes);
        assertEquals(
                words, Wording.comparison(finding.judged(), finding.comparison().orElseThrow()));
    }

    /** What is left of a limit, as beside the headline: less than a digit that is passed is no nought. */
    @Test
    void aMarginOfALimitPassedIsNoNought() {
        MeasureKind mass = MeasureKind.number("mass.some", "kg", 0, "some mass");
        assertEquals("-0.4 kg", Wording.margin(-0.4, mass));
        assertEquals("-2 kg", Wording.margin(-1.2, mass));
        assertEquals("0 kg", Wording.margin(0, mass));
        assertEquals("95 kg", Wording.margin(95.6, mass)); // what may still be added is never rounded up
        assertEquals("95 kg", Wording.margin(95.5, mass));
        assertEquals("95 kg", Wording.margin(95.4, mass));
    }

    /** As the remedy says it, so that one quantity has one form in a finding. */
    @Test
    void theComparisonIsRoundedAsTheRemedyIs() throws FaultsException {
        compared("loaded mass 2520.0 kg, GVM 2376.8 kg: 143.2 kg over", "2376.8 kg");
    }

    @Test
    void aDepthToStayBelowIsRoundedDown() throws FaultsException {
        String depth = "trip: {water-depth: 700 mm}\nvehicle: {intake: {height: 900 mm, electrics: %s}}";
        remedyHolds("deeper than 600.9 mm", "intake.too-deep", depth.formatted("600.96 mm"));
        remedyHolds("deeper than 600 mm", "intake.too-deep", depth.formatted("600 mm"));
    }

    /** By hand: 250 kPa carry 2240 kg on two tyres of index 112, so 1329 kg need 148.3 kPa. */
    @Test
    void aPressureToHaveAtLeastIsRoundedUp() throws FaultsException {
        remedyHolds("plan 149 kPa or more", "tyres.pressure-low", "vehicle: {tyres: {front-pressure: 140 kPa}}");
    }

    /** What a remedy says of the plan is the figure that stands above it; what it asks for is enough. */
    @Test
    void whatIsPlannedIsSaidAsItStandsAbove() throws Exception {
        Finding alternator = Printed.scenario("touring").advice().findings().stream()
                .filter(each -> each.judged().id().equals("electrical.alternator-over"))
                .findFirst()
                .orElseThrow();
        String value =
                Wording.value(alternator.judged(), alternator.comparison().orElseThrow());
        assertTrue(Wording.remedy(alternator).contains(value + " of the rating"), Wording.remedy(alternator));
    }

    /** A difference of binary fractions is not taken for a digit more than it is. */
    @Test
    void aWholeDigitStaysAWholeDigit() {
        MeasureKind mass = MeasureKind.number("mass.some", "kg", 1, "some mass");
        assertEquals(0.3, mass.printed(300.3 - 300, 1), 1e-9);
        assertEquals(0.3, mass.printed(0.1 + 0.2, 1), 1e-9);
        assertEquals(0.4, mass.printed(0.31, 1), 1e-9);
        assertEquals(0.3, mass.printed(0.39, -1), 1e-9);
        assertEquals(-14.4, mass.printed(-14.32, -1), 1e-9);
        MeasureKind length = MeasureKind.number("some.length", "mm", 0, "some length");
        assertEquals(0.143, length.printed(0.143, 1), 1e-12);
        assertEquals(0.144, length.printed(0.1432, 1), 1e-12);
        assertEquals(0.143, length.printed(0.1432, -1), 1e-12);
    }
}
