package fitworthy.usual;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Mark;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.schema.KnownGroups;
import fitworthy.search.Change;
import fitworthy.sheet.Guesses;
import fitworthy.sheet.Point;
import fitworthy.sheet.Sheet;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Trees;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked by hand for the plain sheet: wheelbase 2850 mm, rear overhang 1050 mm, ball 1140 mm behind the axle. */
class PlacesInWordsTest {

    private static final String TRAY =
            "fitments: [{name: Tray, kind: tray, mass: 120 kg, at: {x: 3000 mm}, front: 2100 mm, length: 1800 mm,"
                    + " floor: 1000 mm}]\n";
    /** Cut 2290 mm behind the front axle, all behind it 300 mm further back. */
    private static final String STRETCH =
            "fitments: [{name: Stretch, kind: chassis-extension, mass: 0 kg, wheelbase-added: 300 mm,"
                    + " rear-overhang: 1250 mm, cut: 2290 mm, behind-cut: 800 kg}]\n";

    private static final String TWO_SEATS = "vehicle: {seats: 2}\n";

    private static String box(String at) {
        return "cargo: [{name: Box, mass: 100 kg, at: " + at + "}]\n";
    }

    private static Point placed(String changes) throws FaultsException {
        return Sheets.plainWith(changes).cargo().get(1).at();
    }

    private static void is(double value, double spread, Figure figure) {
        assertEquals(value, figure.value(), 1e-6);
        assertEquals(spread, figure.tolerance(), 1e-6);
    }

    /** In mm; along on the plain sheet, on one with a tray 2100 to 3900 mm, and on the stretched one. */
    @ParameterizedTest
    @CsvSource({
        "front bar, -750, 150, -750, 150, -750",
        "at the front bar, -750, 150, -750, 150, -750",
        "under the bonnet, 0, 350, 0, 350, 0",
        "in the cab, 1767, 570, 1530, 570, 1767",
        "front seats, 1482, 171, 1300.5, 249.365695, 1482",
        "rear seats, 2337, 199.5, 1900.5, 199.5, 2637",
        "between the axles, 1425, 570, 1425, 570, 1575",
        "over the rear axle, 2850, 150, 2850, 150, 3150",
        "ahead of the rear axle, 2350, 300, 2350, 300, 2650",
        "behind the rear axle, 3350, 300, 3350, 300, 3650",
        "on the roof, 1852.5, 427.5, 1672.5, 427.5, 1852.5",
        "in the tray, 2992.5, 427.5, 3000, 450, 3292.5",
        "under the tray, 2992.5, 570, 3000, 630, 3292.5",
        "in the canopy, 2992.5, 427.5, 2992.5, 427.5, 3292.5",
        "on the canopy roof, 2992.5, 427.5, 2992.5, 427.5, 3292.5",
        "in the load area, 2992.5, 342, 3000, 450, 3292.5",
        "rear bar, 3800, 150, 3800, 150, 4300",
        "On  the Tow Bar, 3990, 250, 3990, 250, 4290",
    })
    void eachWordIsWorkedOutFromTheVehicle(
            String words, double plain, double spread, double onTray, double spreadOnTray, double stretched)
            throws FaultsException {
        is(plain / 1000, spread / 1000, placed(box(words)).x());
        is(onTray / 1000, spreadOnTray / 1000, placed(TRAY + box(words)).x());
        is(stretched / 1000, spread / 1000, placed(STRETCH + box(words)).x());
    }

    @Test
    void itsHeightGoesByTheFloorWhereTheSheetGivesOne() throws FaultsException {
        is(1.3, 0.2, placed(TRAY + box("in the tray")).z());
        is(0.7, 0.15, placed(TRAY + box("under the tray")).z());
        is(1.2, 0.2, placed(box("in the tray")).z());
        is(
                1.2,
                0.2,
                placed(TRAY.replace(", floor: 1000 mm", "") + box("in the tray"))
                        .z());
        is(0, 0.4, placed(box("in the tray")).y());
    }

    @Test
    void ofSeveralBodiesItIsTheOneThatTheThingIsIn() throws FaultsException {
        String two = TRAY.replace(
                "}]",
                "}, {name: Box body, kind: canopy, mass: 90 kg, at: in the load area, front: 2200 mm, length: 1000 mm}]");
        is(3, 0.45, placed(two + box("in the load area")).x());
        is(2.7, 0.25, placed(two + box("in the load area, in: Box body")).x());
        is(2.7, 0.25, placed(two + box("in the canopy")).x());
        // A canopy without a floor of its own stands on the tray's.
        is(1.35, 0.25, placed(two + box("in the canopy")).z());
    }

    /** Taped on the vehicle as it will be; what is taken off on the vehicle as it stands. */
    @ParameterizedTest
    @CsvSource({
        "120 mm behind the rear axle, 2970, 3270",
        "40 mm ahead of the rear axle, 2810, 3110",
        "40 mm in front of rear axle, 2810, 3110",
        "300 mm ahead of the front axle, -300, -300",
        "1200 mm behind the front axle, 1200, 1200",
        "500 mm behind the tow ball, 4490, 4790",
        "5 cm ahead of the rear end, 3850, 4350",
    })
    void aMeasuredPlaceIsAsSureAsATape(String words, double plain, double stretched) throws FaultsException {
        Point at = placed(box(words));
        assertEquals(plain / 1000, at.x().value(), 1e-9);
        assertFalse(at.x().hasTolerance(), "left to assumed-place");
        assertTrue(at.x().guess().isEmpty());
        assertFalse(at.y().known() || at.z().known());
        assertEquals(stretched / 1000, placed(STRETCH + box(words)).x().value(), 1e-9);
    }

    @Test
    void aMeasureMayHaveItsToleranceOrBeAGuess() throws FaultsException {
        is(2.97, 0.01, placed(box("120 mm +/- 10 mm behind the rear axle")).x());
        Figure guess = placed(box("about 120 mm behind the rear axle")).x();
        is(2.97, 0.1, guess);
        assertEquals(Mark.ABOUT, guess.guess().orElseThrow().mark());
        Figure onGuess = placed("vehicle: {size: {ball-overhang: about 1140 mm}}\n" + box("0 mm behind the tow ball"))
                .x();
        is(3.99, 0.114, onGuess);
        assertTrue(onGuess.guess().isPresent());
    }

    @Test
    void whatIsTakenOffSatOnTheVehicleAsItStands() throws FaultsException {
        String tub = STRETCH.replace(
                "}]",
                "}, {name: Crate, kind: other, mass: 0 kg, removes: {name: Tub, mass: 90 kg, at: over the rear axle}}]");
        is(
                2.85,
                0.15,
                Sheets.plainWith(tub)
                        .fitments()
                        .get(1)
                        .removes()
                        .orElseThrow()
                        .at()
                        .x());
    }

    /** 82 % of 2850 mm are 2337 mm, 199.5 mm to and fro: 2536.5 mm at the farthest. */
    @Test
    void nobodySitsInATray() throws FaultsException {
        String seat = box("rear seats");
        is(
                2.337,
                0.1995,
                placed(TRAY.replace("front: 2100 mm", "front: 2536.5 mm") + seat)
                        .x());
        is(
                2.3365,
                0.1995,
                placed(TRAY.replace("front: 2100 mm", "front: 2536 mm") + seat).x());
        is(
                2.337,
                0.1995,
                placed(TRAY.replace("front: 2100 mm", "front: ask") + seat).x());
    }

    /** Tray from 2100 mm: rear seats at 2100 - 199.5, the roof at 2100 - 427.5, the roof's rear end by the nose at 1700. */
    @Test
    void aCanopyThatReachesOverTheCabTakesOfItsRoofAlone() throws FaultsException {
        String nose = TRAY.replace(
                "}]",
                "}, {name: Pod, kind: canopy, in: Tray, mass: 90 kg, at: in the canopy, front: 1700 mm, length: 2200 mm}]");
        is(1.9005, 0.1995, placed(nose + box("rear seats")).x());
        is(1.53, 0.57, placed(nose + box("in the cab")).x());
        is(1.2725, 0.4275, placed(nose + box("on the roof")).x());
        is(
                1.6725,
                0.4275,
                placed(nose.replace("front: 1700", "front: 2150") + box("on the roof"))
                        .x());
        // Where the tray begins is asked; the canopy does not say where the cab ends.
        is(
                2.337,
                0.1995,
                placed(nose.replace("front: 2100 mm", "front: ask") + box("rear seats"))
                        .x());
    }

    /**
     * The front row is at 1482 mm +/- 171 mm, and 600 mm or more ahead of the rear row: with a tray from 2281.5 mm the rear row
     * is at 2082 mm. What moves the front row forward is added to its spread as a root of squares.
     */
    @Test
    void rowsOfSeatsKeepTheirDistance() throws FaultsException {
        String two = box("front seats") + "occupants: [{name: Child, mass: 30 kg, at: rear seats}]\n";
        is(
                1.482,
                0.171,
                placed(TRAY.replace("front: 2100 mm", "front: 2281.5 mm") + two).x());
        is(
                1.4815,
                Math.hypot(0.171, 0.0005),
                placed(TRAY.replace("front: 2100 mm", "front: 2281 mm") + two).x());
        is(1.3005, Math.hypot(0.171, 0.1815), placed(TRAY + two).x());
        // Whatever else the sheet puts there.
        is(1.3005, Math.hypot(0.171, 0.1815), placed(TRAY + box("front seats")).x());
        // A cab of one row, by its tray or by its seats: the tray alone moves it.
        String single = TRAY.replace("front: 2100 mm", "front: 1650 mm");
        is(1.479, 0.171, placed(single + box("front seats")).x());
        is(1.482, 0.171, placed(TWO_SEATS + TRAY + box("front seats")).x());
        // What lies on rear seats that are not there lies in the one row, and moves nobody.
        is(1.479, 0.171, placed(TWO_SEATS + single + box("rear seats")).x());
    }

    /** Front row at 1482 mm, small seats 600 mm behind it, and a full rear row at 2337 mm. */
    @Test
    void theRearSeatsOfALongerCabAreSmall() throws FaultsException {
        String tub = "vehicle: {seats: %d, tub: yes}\n";
        is(2.082, 0.1995, placed(tub.formatted(4) + box("rear seats")).x());
        is(2.337, 0.1995, placed(tub.formatted(5) + box("rear seats")).x());
        is(1.482, 0.171, placed(tub.formatted(4) + box("front seats")).x());
        is(
                2.337,
                0.1995,
                placed("vehicle: {seats: 4, tub: no}\n" + box("rear seats")).x());
    }

    @Test
    void nobodySitsInARowThatIsNotThere() throws FaultsException {
        String mate = "occupants: [{name: Mate, mass: 70 kg, at: rear seats}]\n";
        String out = "fitments: [{name: Out, kind: seat-change, mass: 0 kg, seats: 2}]\n";
        for (String sheet : List.of(TWO_SEATS + mate, out + mate)) {
            FaultsException refused = assertThrows(FaultsException.class, () -> Sheets.plainWith(sheet));
            assertTrue(refused.getMessage().contains("second row of seats"), refused::getMessage);
        }
        // Three may be a bench or a seat behind; with a loading of its own the seats may be in.
        Sheets.plainWith("vehicle: {seats: 3}\n" + mate);
        Sheets.plainWith(out + mate + "cases: [{name: all}]\n");
        Sheets.plainWith(mate);
    }

    /** The rack's own height and as much as the words may be off above it, in place of 1950 mm. */
    @Test
    void whatIsOnTheRoofLiesOnTheRackWhoseHeightIsTaped() throws FaultsException {
        String rack = "fitments: [{name: Rack, kind: roof-rack, mass: 45 kg, at: {x: 2300 mm, y: 0 mm, z: 2550 mm}}]\n";
        String in = box("on the roof, in: Rack");
        is(2.7, 0.15, placed(rack + in).z());
        is(2.7, 0.15, placed(rack + box("on the roof")).z());
        is(1.95, 0.15, placed(rack.replace("z: 2550 mm", "z: ask") + in).z());
        is(1.95, 0.15, placed(box("on the roof")).z());
        is(0.9, 0.25, placed(rack + box("in the cab")).z());
    }

    /** A row is at 1311 mm at its foremost, and two end at 1911 mm: what begins further ahead reaches over the cab. */
    @Test
    void aCanopyOnTheChassisIsTheCabsRearWallWhereItLeavesTheRowsRoom() throws FaultsException {
        String alone =
                "fitments: [{name: Pod, kind: canopy, mass: 90 kg, at: in the canopy, front: 1911 mm, length: 1900 mm}]\n";
        String rear = box("rear seats") + "occupants: [{name: Child, mass: 30 kg, at: front seats}]\n";
        is(1.7115, 0.1995, placed(alone + rear).x());
        is(2.337, 0.1995, placed(alone.replace("1911", "1910") + rear).x());
        String one = TWO_SEATS + alone + box("front seats");
        is(1.14, 0.171, placed(one.replace("1911", "1311")).x());
        is(1.482, 0.171, placed(one.replace("1911", "1310")).x());
    }

    @Test
    void whereATrayBeginsThatIsGuessedMakesTheSeatsLessSure() throws FaultsException {
        Figure seat = placed(TRAY.replace("front: 2100 mm", "front: about 2100 mm +/- 150 mm") + box("rear seats"))
                .x();
        is(1.9005, Math.hypot(0.1995, 0.15), seat);
    }

    @Test
    void everyPlaceOfASheetMayBeToldSo() throws FaultsException {
        Sheet sheet = Sheets.plainWith(
                """
                fitments: [{name: Crate, kind: other, mass: 40 kg, at: on the roof}]
                tanks: [{name: Can, liquid: water, capacity: 20 L, fill: 0 %, stock: no, mass: 1 kg, at: on the tow bar,
                  removes: {name: Old can, mass: 1 kg, at: rear bar}}]
                occupants: [{name: Child, mass: 30 kg, at: rear seats}]
                """);
        assertEquals(1.8525, sheet.fitments().get(0).at().orElseThrow().x().value(), 1e-9);
        assertTrue(sheet.fitments().get(0).roof().is(YesNo.YES), "on the roof is on the roof");
        assertEquals(3.99, sheet.tanks().get(1).at().x().value(), 1e-9);
        assertEquals(3.8, sheet.tanks().get(1).removes().orElseThrow().at().x().value(), 1e-9);
        assertEquals(2.337, sheet.occupants().get(2).at().x().value(), 1e-9);
    }

    /** Usual of a panel is the roof, where its limit counts; of one on the canopy that is not so, and the canopy moves it. */
    @Test
    void aPanelOnTheCanopyIsNotOnTheRoofAndFollowsTheCanopy() throws FaultsException {
        String panel = "assume-usual: yes\nfitments: [{name: Box body, kind: canopy, mass: 90 kg, at: in the canopy,"
                + " front: 2200 mm, length: 1000 mm, floor: 1000 mm},"
                + " {name: Panel, kind: solar-panel, mass: 12 kg, at: WORDS}]\n";
        Sheet sheet = Sheets.plainWith(panel.replace("WORDS", "on the canopy roof"));
        Point at = sheet.fitments().get(1).at().orElseThrow();
        is(2.7, 0.25, at.x());
        is(1.95, 0.25, at.z());
        assertTrue(sheet.fitments().get(1).roof().is(YesNo.NO));
        assertTrue(at.x().guess().isPresent());
        Sheet above = Sheets.plainWith(panel.replace("WORDS", "on the roof"));
        assertTrue(above.fitments().get(1).roof().is(YesNo.YES));
        Sheet said = Sheets.plainWith(panel.replace("WORDS", "on top of the canopy, roof: yes"));
        assertTrue(said.fitments().get(1).roof().is(YesNo.YES), "what the sheet says itself stands");
    }

    /** Nothing else asks whether it is on the roof, which its height leaves open. */
    @Test
    void whatIsInWordsElsewhereIsNotOnTheRoof() throws FaultsException {
        for (String words : List.of("on the canopy", "in the cab", "in the tray")) {
            assertTrue(Sheets.plainWith(box(words)).cargo().get(1).roof().is(YesNo.NO), words);
        }
        assertTrue(Sheets.plainWith(box("on the canopy, roof: yes"))
                .cargo()
                .get(1)
                .roof()
                .is(YesNo.YES));
        assertFalse(Sheets.plainWith(box("on the canopy, roof: ask"))
                .cargo()
                .get(1)
                .roof()
                .known());
        assertFalse(Sheets.plainWith(box("rear bar")).cargo().get(1).roof().known());
    }

    @Test
    void coordinatesBesideTheWordsWin() throws FaultsException {
        Point at = placed(box("{where: on the roof, y: 300 mm}"));
        is(1.8525, 0.4275, at.x());
        assertEquals(0.3, at.y().value(), 1e-9);
        assertTrue(at.y().guess().isEmpty());
        assertEquals(Mark.USUAL, at.z().guess().orElseThrow().mark());
        assertEquals("cargo.Box.at.z", at.z().guess().orElseThrow().path());
    }

    @Test
    void withoutWhatItIsWorkedOutOfItIsMissing() throws FaultsException {
        Node.Mapping tree = Sheets.treeWith(box("on the tow bar"));
        NodePath ball = NodePath.of("vehicle", "size", "ball-overhang");
        Point at = Sheets.read(Trees.without(tree, ball)).cargo().get(1).at();
        assertEquals(
                List.of("vehicle.size.ball-overhang"),
                at.x().missing().stream().map(Missing::path).toList());
        assertTrue(at.y().known());
    }

    @Test
    void aSheetWithoutAWheelbaseIsRefusedForThatAlone() {
        Node.Mapping tree =
                Trees.without(Sheets.treeWith(box("over the rear axle")), NodePath.of("vehicle", "size", "wheelbase"));
        List<Fault> faults =
                assertThrows(FaultsException.class, () -> Sheets.read(tree)).faults();
        assertEquals(
                List.of("vehicle.size.wheelbase"),
                faults.stream().map(Fault::path).toList());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "on the rof | 'on the rof' is no place in words (did you mean 'on the roof'?)",
                "120 behind the rear axle | '120' has no unit",
                "-120 mm behind the rear axle | '-120 mm' is negative",
                "somewhere behind the door | 'door' is nothing to measure a place from",
                "{where: on the moon, y: 0 mm} | 'on the moon' is no place in words",
            })
    void whatIsNoPlaceIsAFaultOnce(String at, String problem) {
        List<Fault> faults =
                assertThrows(FaultsException.class, () -> placed(box(at))).faults();
        assertEquals(1, faults.size(), () -> faults.toString());
        assertEquals("cargo.2.at", faults.get(0).path());
        assertTrue(faults.get(0).problem().startsWith(problem), faults.get(0).problem());
        assertTrue(faults.get(0).place().column() > 0);
    }

    @Test
    void aPlaceMayBeAskedForLikeAnyFigure() throws FaultsException {
        Point asked = placed(box("ask"));
        assertEquals(
                List.of("cargo.Box.at.x"),
                asked.x().missing().stream().map(Missing::path).toList());
        assertEquals(placed(box("{x: ask}")), asked);
    }

    /** 1191.05 kg stand on the rear axle, the box adds 100 kg, and 150 mm are 5.26 kg of it. */
    @Test
    void whatRestsOnAWordIsOnGuessesAndOnAMeasureIsNot() throws FaultsException {
        String limit = "vehicle: {ratings: {rear-axle: 1290 kg}}\n";
        String exact = "cargo: [{name: Box, mass: 100 kg +/- 0 kg, at: ";
        Advice word = advice(limit + exact + "over the rear axle}]");
        Advice taped = advice(limit + exact + "0 mm behind the rear axle}]");
        for (Advice each : List.of(word, taped)) {
            assertTrue(each.findings().stream()
                    .anyMatch(finding -> finding.judged().id().equals("mass.axle-over")));
        }
        assertTrue(word.findings().stream()
                .filter(finding -> finding.judged().id().equals("mass.axle-over"))
                .allMatch(finding -> word.guesses().containsKey(finding.key())));
        assertTrue(
                taped.findings().stream().noneMatch(finding -> taped.guesses().containsKey(finding.key())));
        assertEquals(List.of(), Guesses.of(Sheets.plainWith(exact + "0 mm behind the rear axle}]")));
    }

    private static Advice advice(String changes) throws FaultsException {
        return Adviser.advise(Books.engine(), Sheets.plainWith(changes));
    }

    @Test
    void aPartThatMovesStaysAGuessAndKeepsItsWords() throws FaultsException {
        Node.Mapping tree = Sheets.treeWith(box("over the rear axle"));
        Sheet sheet = Sheets.read(tree);
        Change move = new Change.Move("cargo", "Box", sheet.cargo().get(1).at().x(), -0.4);
        assertEquals("move 'Box' 400 mm forward", move.words());
        Point at = Change.sheet(List.of(move), tree, sheet, Books.shipped(), KnownGroups.NONE)
                .cargo()
                .get(1)
                .at();
        is(2.45, 0.15, at.x());
        assertTrue(at.x().guess().isPresent());
        is(0.9, 0.25, at.z());
    }

    @Test
    void anotherChoiceMovesWhatStandsInWords() throws FaultsException {
        String two = TRAY.replace(
                        "}]",
                        "}, {name: Long tray, kind: tray, mass: 120 kg, at: {x: 3000 mm}, front: 2100 mm, length: 2000 mm}]")
                + "options: [{name: Tray, take: short, choices: [{name: short, parts: [Tray]}, {name: long, parts: [Long tray]}]}]\n"
                + box("in the tray");
        Node.Mapping tree = Sheets.treeWith(two);
        Sheet sheet = Sheets.read(tree);
        is(3, 0.45, sheet.cargo().get(1).at().x());
        Sheet other = Change.sheet(
                List.of(new Change.Choose("Tray", "long")), tree, sheet, Books.shipped(), KnownGroups.NONE);
        is(3.1, 0.5, other.cargo().get(1).at().x());
    }
}
