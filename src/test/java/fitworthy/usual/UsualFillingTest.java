package fitworthy.usual;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.advice.Advice;
import fitworthy.advice.View;
import fitworthy.book.Book;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a sheet leaves to the book, and what the book makes of it. */
class UsualFillingTest {

    private static final Path PLATES = Path.of("src/test/resources/usual/plate-wagon.yaml");
    private static final String HEAD = "title: Wagon\nregion: au\nas-of: 2026-11-25\n";

    private static Node.Mapping read(String text) {
        List<Fault> faults = new ArrayList<>();
        Node.Mapping tree = NodeReader.read("sheet.yaml", text, faults);
        assertEquals(List.of(), faults);
        return tree;
    }

    private static Node.Mapping filled(Node.Mapping tree) throws FaultsException {
        return new UsualFilling(tree, Books.shipped()).tree();
    }

    private static String at(Node.Mapping tree, String path) {
        return NodePath.parse(path).in(tree) instanceof Node.Scalar scalar ? scalar.text() : "nothing";
    }

    @Test
    void aSheetThatLeavesNothingToTheBookIsLetBe() throws FaultsException {
        for (String scenario : List.of("touring", "overloaded", "weekender")) {
            Node.Mapping tree = NodeReader.read(Path.of("scenarios", scenario + ".yaml"), new ArrayList<>());
            assertSame(tree, filled(tree));
        }
    }

    @Test
    void aFieldIsFilledWithTheValueOfItsKindAndToldWhereThatStands() throws FaultsException {
        Node.Mapping tree = filled(read(HEAD + "fitments:\n  - {name: Bar, kind: bar, mass: usual}\n"));
        Node mass = NodePath.parse("fitments.1.mass").in(tree);
        assertEquals("usual 48 kg +/- 24 kg", at(tree, "fitments.1.mass"));
        assertTrue(
                mass.place().file().endsWith("parts.yaml") && mass.place().line() > 1,
                mass.place().toString());
        assertEquals("nothing", at(tree, "fitments.1.grille-hidden"), "not asked for");
    }

    /** 12 kg +/- 3 kg for 100 Ah: for 120 Ah 14.4 kg +/- 3.6 kg. Lead weighs 30 kg +/- 5 kg for as much. */
    @Test
    void aFigureMayGoByAnotherAndByAWord() throws FaultsException {
        Node.Mapping tree = filled(read(HEAD
                + "fitments:\n"
                + "  - {name: One, kind: battery, chemistry: lithium, capacity: 120 Ah, mass: usual}\n"
                + "  - {name: Other, kind: battery, chemistry: agm, capacity: about 100 Ah +/- 10 Ah, mass: usual}\n"
                + "  - {name: Third, kind: battery, chemistry: agm, mass: usual}\n"));
        assertEquals("usual 14.4 kg +/- 3.6 kg", at(tree, "fitments.1.mass"));
        // 30 kg, off by the root of 5 kg and of a tenth of 30 kg squared: 5.83095 kg.
        assertEquals("usual 30 kg +/- 5.83095 kg", at(tree, "fitments.2.mass"));
        assertEquals("usual", at(tree, "fitments.3.mass"), "a capacity that nobody gave gives no mass");
    }

    @Test
    void whatSomebodyIsAskedForIsNotFilledIn() throws FaultsException {
        Node.Mapping tree = filled(read(HEAD
                + "assume-usual: yes\nfitments:\n"
                + "  - {name: Bar, kind: bar, mass: ask, lowest: unknown, ahead: about 800 mm}\n"));
        assertEquals("ask", at(tree, "fitments.1.mass"));
        assertEquals("unknown", at(tree, "fitments.1.lowest"));
        assertEquals("about 800 mm", at(tree, "fitments.1.ahead"));
        assertEquals("usual 18 % +/- 12 %", at(tree, "fitments.1.grille-hidden"));
    }

    /** 78 kg +/- 38 kg for each metre: for 2 m 156 kg +/- 76 kg. Without a length, whatever a tray may weigh. */
    @Test
    void aTrayGoesByItsLengthWhereItHasOneAndTakesOffTheTub() throws FaultsException {
        Node.Mapping tree = filled(read(HEAD
                + "assume-usual: yes\nfitments:\n"
                + "  - {name: One, kind: tray, length: 2000 mm +/- 0 mm, removes: {name: steel tub}}\n"
                + "  - {name: Other, kind: tray}\n"
                + "  - {name: Bar, kind: bar, removes: {name: the bumper}}\n"
                + "  - {name: Third, kind: tray, removes: {name: something else}}\n"));
        assertEquals("usual 156 kg +/- 76 kg", at(tree, "fitments.1.mass"));
        assertEquals("usual 135 kg +/- 40 kg", at(tree, "fitments.1.removes.mass"));
        assertEquals("over the rear axle", at(tree, "fitments.1.removes.at"));
        assertEquals("usual 140 kg +/- 70 kg", at(tree, "fitments.2.mass"));
        assertEquals("nothing", at(tree, "fitments.2.removes.mass"), "a utility that comes without a tub");
        assertEquals("usual 62 kg +/- 25 kg", at(tree, "fitments.3.mass"), "the whole bar, its bumper taken off");
        assertEquals("usual 14 kg +/- 8 kg", at(tree, "fitments.3.removes.mass"));
        assertEquals("nothing", at(tree, "fitments.4.removes.mass"), "what nobody knows");
    }

    @Test
    void whoTravelsAndTheMakersTankComeWithTheVehicle() throws FaultsException {
        Node.Mapping tree = filled(read(HEAD
                + "assume-usual: yes\nvehicle: {engine: {fuel: diesel}, mass: {kerb: 2000 kg +/- 0 kg}}\n"
                + "trip: {people: 3}\n"));
        assertEquals("Driver", at(tree, "occupants.1.name"));
        assertEquals("front seats", at(tree, "occupants.2.at"));
        assertEquals("rear seats", at(tree, "occupants.3.at"));
        assertEquals("usual 80 kg +/- 20 kg", at(tree, "occupants.3.mass"));
        assertEquals("nothing", at(tree, "occupants.4.name"));
        // 33 L +/- 8 L for each 1000 kg.
        assertEquals("usual 66 L +/- 16 L", at(tree, "tanks.1.capacity"));
        assertEquals("usual 1100 kg +/- 90 kg", at(tree, "vehicle.mass.front-axle"));
        assertEquals("usual 900 kg +/- 90 kg", at(tree, "vehicle.mass.rear-axle"));
    }

    @Test
    void whatIsCarriedSitsWhereItIsSaidToBeCarried() throws FaultsException {
        Node.Mapping tree = filled(
                read(
                        "as-of: 2026-11-29\nassume-usual: yes\n"
                                + "fitments: [{name: Flat roof rack, kind: roof-rack}]\n"
                                + "cargo:\n  - {name: Two swags, in: Flat roof rack}\n  - {name: A swag, roof: yes}\n  - {name: Swags}\n"
                                + "tanks:\n  - {name: Water tank, liquid: water}\n  - {name: Long-range tank, liquid: diesel, stock: no}\n"
                                + "  - {name: Main tank, liquid: diesel, stock: yes}\n  - {name: Can, liquid: diesel, portable: yes}\n"));
        assertEquals("on the roof", at(tree, "cargo.1.at"));
        assertEquals("on the roof", at(tree, "cargo.2.at"));
        assertEquals("in the load area", at(tree, "cargo.3.at"));
        assertEquals("under the tray", at(tree, "tanks.1.at"));
        assertEquals("behind the rear axle", at(tree, "tanks.2.at"));
        assertEquals("ahead of the rear axle", at(tree, "tanks.3.at"));
        assertEquals("in the load area", at(tree, "tanks.4.at"));
    }

    @Test
    void oneAxleThatWasWeighedLeavesTheOtherToBeGiven() throws FaultsException {
        Node.Mapping tree =
                filled(read(HEAD + "assume-usual: yes\nvehicle: {mass: {kerb: 2000 kg, rear-axle: 1000 kg}}\n"));
        assertEquals("nothing", at(tree, "vehicle.mass.front-axle"));
    }

    @Test
    void whatIsFilledInIsNotFilledInTwice() throws FaultsException {
        Node.Mapping once = filled(NodeReader.read(PLATES, new ArrayList<>()));
        assertEquals(once, filled(once));
    }

    @Test
    void aCaseStandsOnEachUsualFigure() throws FaultsException {
        Book book = Books.shipped();
        Set<Use> used = new HashSet<>();
        Books.cases().forEach(text -> used.addAll(Filling.uses(text.tree(), book)));
        Set<String> unused = new TreeSet<>();
        book.usual().inOrder().forEach(entry -> {
            for (int i = 0; i < entry.figure().values().size(); i++) {
                if (!used.contains(new Use(entry.id(), i))) {
                    unused.add(entry.id() + " " + entry.figure().values().get(i).value());
                }
            }
        });
        assertEquals(Set.of(), unused);
    }

    /** What is not looked at stays open, at most so much; every topic that the plates tell of is answered. */
    @ParameterizedTest
    @CsvSource({"plate-wagon, 31", "plate-utility, 33", "plate-britain, 22"})
    void platesAndAListOfKindsAreEnoughForMostChecks(String plates, int percent) throws FaultsException {
        Advice advice = new View(Books.engine(), null, null)
                .advise(NodeReader.read(PLATES.resolveSibling(plates + ".yaml"), new ArrayList<>()), new ArrayList<>());
        int open = advice.notAssessed().size();
        int all = open
                + advice.met().size()
                + advice.held().size()
                + advice.findings().size();
        assertTrue(open * 100 <= all * percent, open + " of " + all);
        Set<String> answered = Stream.concat(
                        advice.held().stream().map(held -> held.judged().id()),
                        Stream.concat(
                                advice.met().stream().map(met -> met.judged().id()),
                                advice.findings().stream()
                                        .map(finding -> finding.judged().id())))
                .collect(Collectors.toSet());
        assertEquals(
                Set.of(),
                Stream.of(
                                "mass.gvm-over",
                                "mass.axle-over",
                                "towing.trailer-over",
                                "mass.gcm-over",
                                "tyres.load-over",
                                "fuel.range-short",
                                "electrical.charge-short")
                        .filter(id -> !answered.contains(id))
                        .collect(Collectors.toCollection(TreeSet::new)));
    }

    /** Its group is not written and comes with what the book fills into it; what is missing is missing from the sheet. */
    @Test
    void whatIsMissingIsMissingWhereItsGroupBelongs() {
        List<Fault> faults = assertThrows(
                        FaultsException.class,
                        () -> Filling.sheet(
                                read(HEAD + "assume-usual: yes\nvehicle:\n  name: Wagon\n"),
                                Books.shipped(),
                                new ArrayList<>()))
                .faults();
        Place missing = faults.stream()
                .filter(fault -> fault.path().equals("vehicle.size.wheelbase"))
                .findFirst()
                .orElseThrow()
                .place();
        assertEquals("sheet.yaml", missing.file());
        assertEquals(6, missing.line());
    }
}
