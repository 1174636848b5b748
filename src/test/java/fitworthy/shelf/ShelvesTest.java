package fitworthy.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Sheets;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.SheetReader;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import fitworthy.source.Trees;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a sheet takes from its shelf, what stands over that, and what is wrong with either. */
class ShelvesTest {

    private static final String PARTS =
            """
            vehicles:
              - {name: Wagon, seats: 5, mass: {kerb: 2300 kg, front-axle: 1250 kg}}
            fitments:
              - name: Front bar
                kind: bar
                mass: 58 kg
                at: {x: -830 mm, y: 0 mm, z: 720 mm}
                price: 2650.00 AUD
              - name: Snorkel
                kind: snorkel
                mass: 6 kg
                joints:
                  - {name: head, sealed: yes}
                  - {name: guard, sealed: no}
            occupants:
              - {name: Driver, at: {x: 1480 mm, y: -380 mm, z: 920 mm}}
            """;

    @TempDir
    private Path folder;

    private final List<Fault> faults = new ArrayList<>();

    private Path shelf(String... filesAndTexts) throws IOException {
        Path shelf = Files.createDirectories(folder.resolve("shelf"));
        for (int i = 0; i < filesAndTexts.length; i += 2) {
            Files.writeString(shelf.resolve(filesAndTexts[i]), filesAndTexts[i + 1]);
        }
        return shelf;
    }

    private Node.Mapping expanded(String sheet) {
        String file = folder.resolve("sheet.yaml").toString();
        return Shelves.beside().expanded(NodeReader.read(file, sheet, faults), faults);
    }

    /** What a path leads to, as {@code file:line text}. */
    private static String at(Node.Mapping tree, String path) {
        Node.Scalar found = (Node.Scalar) NodePath.parse(path).in(tree);
        return Path.of(found.place().file()).getFileName() + ":" + found.place().line() + " " + found.text();
    }

    private List<String> told() {
        return faults.stream()
                .map(fault -> Path.of(fault.place().file()).getFileName() + ":"
                        + fault.place().line() + " " + fault.path() + ": "
                        + fault.problem().replace(folder.toString() + "/", ""))
                .toList();
    }

    private List<String> wrong(Path shelf) {
        faults.addAll(ShelfReader.readAndChecked(shelf).faults());
        return told();
    }

    @Test
    void aNameAloneTakesAThingAndItsValuesKeepTheirPlace() throws IOException {
        shelf("parts.yaml", PARTS);
        Node.Mapping tree = expanded("vehicle: Wagon\nfitments: [Front bar]\n");
        assertEquals(List.of(), told());
        assertEquals("parts.yaml:2 1250 kg", at(tree, "vehicle.mass.front-axle"));
        assertEquals("parts.yaml:6 58 kg", at(tree, "fitments.1.mass"));
        assertEquals("sheet.yaml:2 Front bar", at(tree, "fitments.1.name"));
    }

    @Test
    void whatStandsBesideFromStandsOverTheShelf() throws IOException {
        shelf("parts.yaml", PARTS);
        Node.Mapping tree = expanded(
                """
                fitments:
                  - from: Front bar
                    name: Bar
                    at: {x: -800 mm}
                    price:
                  - {from: Snorkel, joints: [{name: guard, sealed: yes}, {name: lid, sealed: no}]}
                """);
        assertEquals(List.of(), told());
        assertEquals("sheet.yaml:3 Bar", at(tree, "fitments.1.name"));
        assertEquals("sheet.yaml:4 -800 mm", at(tree, "fitments.1.at.x"));
        assertEquals("parts.yaml:7 720 mm", at(tree, "fitments.1.at.z"));
        assertTrue(NodePath.parse("fitments.1.price").in(tree) instanceof Node.Blank);
        assertNull(NodePath.parse("fitments.1.from").in(tree));
        assertEquals("parts.yaml:13 yes", at(tree, "fitments.2.joints.head.sealed"));
        assertEquals("sheet.yaml:6 yes", at(tree, "fitments.2.joints.guard.sealed"));
        assertEquals("sheet.yaml:6 no", at(tree, "fitments.2.joints.lid.sealed"));
    }

    /** Coordinates of the shelf are those of another plan. */
    @Test
    void wordsForAPlaceStandOverTheCoordinatesOfTheShelf() throws IOException {
        shelf("parts.yaml", PARTS);
        Node.Mapping tree = expanded(
                """
                fitments:
                  - {from: Front bar, at: under the tray}
                  - {from: Front bar, name: Other bar, at: {where: under the tray, y: 200 mm}}
                """);
        assertEquals("sheet.yaml:2 under the tray", at(tree, "fitments.1.at"));
        assertEquals("sheet.yaml:3 under the tray", at(tree, "fitments.2.at.where"));
        assertEquals("sheet.yaml:3 200 mm", at(tree, "fitments.2.at.y"));
        assertNull(NodePath.parse("fitments.2.at.x").in(tree));
    }

    private static final String TRAILERS =
            "trailers: [{name: Van, mass: 3350 kg, rated: 3500 kg, ball: 335 kg +/- 8 kg,\n"
                    + "  lightest: about 2450 kg, gtm: 3200 kg}]\n";

    /** The load on the ball and the empty mass hang on how a trailer is loaded and built. */
    @Test
    void ofATrailerOfAnotherMassTheShelfKnowsTheLoadOnTheBallAsAGuess() throws IOException {
        shelf("trailers.yaml", TRAILERS);
        assertEquals("trailers.yaml:1 335 kg +/- 8 kg", at(expanded("trailer: Van\n"), "trailer.ball"));
        assertEquals(
                "trailers.yaml:1 335 kg +/- 8 kg", at(expanded("trailer: {from: Van, width: 2 m}\n"), "trailer.ball"));
        Node.Mapping other = expanded("trailer: {from: Van, mass: 2850 kg}\n");
        assertEquals("trailers.yaml:1 about 335 kg +/- 8 kg", at(other, "trailer.ball"));
        assertEquals("trailers.yaml:2 about 2450 kg", at(other, "trailer.lightest"));
        assertEquals("trailers.yaml:1 3500 kg", at(other, "trailer.rated"));
        assertEquals(
                "sheet.yaml:1 270 kg",
                at(expanded("trailer: {from: Van, mass: 2850 kg, ball: 270 kg}\n"), "trailer.ball"));
    }

    /** Whose figure is whose, and the sheet's own line, which its writer can put right. */
    @Test
    void aTrailerThatContradictsItsShelfIsToldOnTheSheet() throws IOException {
        Path shelf = shelf("trailers.yaml", TRAILERS);
        assertEquals(
                List.of(sheet() + " trailer.mass: is below 2450 kg, which the shelf gives as trailer.lightest ("
                        + shelf.resolve("trailers.yaml") + ":2)"),
                refusedFor("trailer: {from: Van, mass: 2449 kg, ball: 200 kg}"));
        assertEquals(List.of(), refusedFor("trailer: {from: Van, mass: 2450 kg, ball: 200 kg}"));
        assertEquals(
                List.of(sheet() + " trailer.gtm: is above the most it may weigh, which the shelf gives as 3500 kg ("
                        + shelf.resolve("trailers.yaml") + ":1)"),
                refusedFor("trailer: {from: Van, gtm: 3501 kg}"));
    }

    private String sheet() {
        return folder.resolve("sheet.yaml") + "";
    }

    private List<String> refusedFor(String trailer) {
        try {
            SheetReader.sheet(expanded(trailer), Set.of("au"), new ArrayList<>());
            return List.of();
        } catch (FaultsException refused) {
            return refused.faults().stream()
                    .filter(fault -> fault.path().startsWith("trailer"))
                    .map(fault -> fault.place().file() + " " + fault.path() + ": " + fault.problem())
                    .toList();
        }
    }

    @Test
    void whatWasTakenIsToldWithWhatTheSheetSays() throws IOException {
        shelf("parts.yaml", PARTS);
        List<Taken> taken = Taken.in(
                expanded(
                        """
                fitments:
                  - {name: Own part, kind: other, mass: 5 kg}
                  - {from: Front bar, name: Bar, at: {x: -800 mm}}
                occupants: [{from: Driver, mass: 80 kg}]
                """));
        assertEquals(
                List.of("FITMENTS Bar 4 [at]", "OCCUPANTS Driver 16 [mass]"),
                taken.stream()
                        .map(thing -> thing.kind() + " " + thing.name() + " "
                                + thing.place().line() + " " + thing.own())
                        .toList());
    }

    @Test
    void aSheetThatTakesNothingNeverLooks() throws IOException {
        shelf("broken.yaml", "fitments: [");
        Node.Mapping sheet =
                NodeReader.read(folder.resolve("sheet.yaml").toString(), "fitments: [{name: Bar, kind: bar}]", faults);
        assertSame(sheet, Shelves.beside().expanded(sheet, faults));
        assertEquals(List.of(), told());
    }

    @Test
    void aFaultyShelfIsToldAndNothingIsTaken() throws IOException {
        shelf("broken.yaml", "fitments: [", "parts.yaml", PARTS);
        assertNull(expanded("fitments: [Front bar, No such bar]"));
        assertEquals(1, faults.size());
        assertTrue(told().get(0).startsWith("broken.yaml:1"), told().get(0));
    }

    @Test
    void namesThatAreNotThereAreTold() throws IOException {
        shelf("parts.yaml", PARTS);
        expanded(
                """
                vehicle: Front bar
                fitments: [Fron bar, {from: [Front bar]}, {from: }, ../parts.yaml]
                tanks: [Main tank]
                """);
        assertEquals(
                List.of(
                        "sheet.yaml:1 vehicle: 'Front bar' is not among the vehicles of the shelf; it is among the fitments",
                        "sheet.yaml:2 fitments.1: 'Fron bar' is not among the fitments of the shelf (did you mean 'Front bar'?)",
                        "sheet.yaml:2 fitments.2: from is a list where the name of something on the shelf belongs",
                        "sheet.yaml:2 fitments.3: from is left empty where the name of something on the shelf belongs",
                        "sheet.yaml:2 fitments.4: '../parts.yaml' is not among the fitments of the shelf",
                        "sheet.yaml:3 tanks.1: 'Main tank' is not among the tanks of the shelf"),
                told());
    }

    /** What follows from a name that is not there is not told beside it. */
    @Test
    void nothingIsSaidOfWhatCouldNotBeTaken() throws IOException {
        shelf("parts.yaml", PARTS);
        Path sheet = folder.resolve("sheet.yaml");
        Files.writeString(
                sheet,
                Files.readString(Path.of("rules/plain-sheet.yaml"))
                        + "fitments: [Front ba]\ncircuits: [{name: Lamps, part: Front bar, voltage: 12 V, current: 5 A}]\n");
        Node.Mapping tree = Shelves.beside().expanded(NodeReader.read(sheet, faults), faults);
        try {
            SheetReader.sheet(tree, Set.of("au"), faults);
        } catch (FaultsException e) {
            assertEquals(1, e.faults().size(), e.getMessage());
        }
        assertEquals(1, faults.size(), told().toString());
    }

    @Test
    void withoutAShelfThatIsSaid() {
        expanded("trailer: Camper");
        assertEquals(List.of("sheet.yaml:1 trailer: there is no shelf to take 'Camper' from"), told());
    }

    @Test
    void sheetsOfTheStandardInputHaveNoShelfOfTheirOwn() {
        assertTrue(Shelves.beside().of("-").isNone());
        assertTrue(Shelves.NONE.of("scenarios/touring.yaml").isNone());
        assertEquals(
                Path.of("scenarios/shelf"),
                Shelves.beside().of("scenarios/touring.yaml").folder());
        assertEquals(folder, Shelves.in(folder).of("scenarios/touring.yaml").folder());
    }

    @Test
    void oneSheetTakesNoMoreThanOneThatIsWrittenOut() throws IOException {
        shelf("parts.yaml", "cargo:\n  - {name: Box, mass: 5 kg, at: {x: 1 m, y: 0 m, z: 1 m}}\n");
        // Seven values each: group, name, mass, place and its three.
        int most = NodeReader.MOST_VALUES / 7;
        expanded("cargo: [" + IntStream.range(0, most).mapToObj(i -> "Box").collect(Collectors.joining(", ")) + "]");
        assertEquals(List.of(), told());
        expanded(
                "cargo: [" + IntStream.range(0, most + 1).mapToObj(i -> "Box").collect(Collectors.joining(", ")) + "]");
        assertEquals(
                List.of("sheet.yaml:1 cargo." + (most + 1) + ": takes more than 50000 values from the shelf"), told());
    }

    @Test
    void theFilesOfAShelfAreChecked() throws IOException {
        Path shelf = shelf(
                "a.yaml",
                """
                vehicle: {name: Wagon}
                fitments:
                  - {name: Bar, kind: bar, mass: 58}
                  - {name: Winch, mass: 39 kg}
                  - Lamps
                  - {kind: bar, mass: 2 kg}
                  - {name: Bar two, from: Bar}
                tanks: Main tank
                cargo:
                """,
                "b.json",
                "{\"fitments\": [{\"name\": \"Bar\", \"kind\": \"bar\", \"colour\": \"red\"}]}",
                "notes.txt",
                "fitments: [",
                ".c.yaml",
                "fitments: [");
        assertEquals(
                List.of(
                        "a.yaml:1 vehicle: a shelf has no list of this name (did you mean 'vehicles'?)",
                        "a.yaml:5 fitments.3: is 'Lamps' where a group of fields belongs",
                        "a.yaml:6 fitments.4.name: has no name, by which a sheet takes it",
                        "a.yaml:7 fitments.5.from: a thing on the shelf is written out and taken from no other",
                        "a.yaml:8 tanks: is 'Main tank' where a list belongs",
                        "b.json:1 fitments.1.name: another of the fitments is called 'Bar', at shelf/a.yaml:3:5",
                        "a.yaml:3 fitments.Bar.mass: '58' has no unit",
                        "a.yaml:4 fitments.Winch.kind: is missing: what kind of part it is",
                        "a.yaml:7 fitments.Bar two.kind: is missing: what kind of part it is"),
                wrong(shelf));
    }

    @Test
    void aShelfIsNoLargerThanItMayBe() throws IOException {
        assertEquals(List.of("none:0 : there is no such folder"), wrong(folder.resolve("none")));
        faults.clear();
        Path shelf = shelf();
        assertEquals(List.of("shelf:0 : there is nothing on this shelf"), wrong(shelf));
        faults.clear();
        String comment = "#" + "x".repeat(ShelfReader.LARGEST / 5) + "\ncargo: []\n";
        for (int i = 0; i < 5; i++) {
            shelf(i + ".yaml", comment);
        }
        assertEquals(List.of("shelf:0 : the files of this shelf are larger than 4 MiB together"), wrong(shelf));
        faults.clear();
        for (int i = 0; i <= ShelfReader.MOST_FILES; i++) {
            shelf(i + ".yaml", "cargo: []\n");
        }
        assertEquals(List.of("shelf:0 : there are more than 100 files on this shelf"), wrong(shelf));
    }

    @Test
    void aLinkOutOfAShelfIsNotFollowed() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.yaml"), "fitments: [secret]\n");
        Files.createSymbolicLink(shelf("parts.yaml", PARTS).resolve("secret.yaml"), secret);
        assertNull(expanded("fitments: [Front bar]"));
        assertEquals(List.of("secret.yaml:0 : a link leads from here out of its folder"), told());
    }

    @Test
    void whatLiesOnTheShelfIsKnownAgain() throws IOException {
        String before = ShelfReader.read(shelf("parts.yaml", PARTS)).content();
        assertEquals(before, ShelfReader.read(shelf("notes.txt", "")).content());
        assertTrue(!before.equals(ShelfReader.read(shelf("parts.yaml", PARTS.replace("58 kg", "61 kg")))
                .content()));
    }

    /** Everything on it is usable as it lies there, but for people, who sit where the shelf says. */
    @Test
    void theShippedShelfIsInOrder() throws FaultsException {
        Shelf shelf = ShelfReader.readAndChecked(Path.of("scenarios/shelf"));
        assertEquals(List.of(), shelf.faults());
        assertTrue(
                shelf.of(Kind.VEHICLES).size() >= 3 && shelf.of(Kind.TRAILERS).size() >= 3);
        assertTrue(shelf.of(Kind.FITMENTS).size() >= 40);
        for (Kind kind : List.of(Kind.TRAILERS, Kind.FITMENTS, Kind.TANKS, Kind.CARGO)) {
            for (Node.Mapping thing : shelf.of(kind).values()) {
                Node taken = kind == Kind.TRAILERS ? thing : new Node.Listing(Place.of("sheet"), List.of(thing));
                Node.Mapping changes = new Node.Mapping(Place.of("sheet"), Map.of()).with(kind.inSheet(), taken);
                Sheets.read(Trees.merged(Sheets.treeWith("title: plain"), changes));
            }
        }
    }

    /** A charger had such a field once, and was then looked for on the shelf. */
    @Test
    void nothingThatMayLieThereHasAFieldOfTheNameThatTakesIt() {
        for (Kind kind : Kind.values()) {
            assertEquals(List.of(), RecordSchema.at(kind.record(), NodePath.of("from")), kind.name());
        }
    }
}
