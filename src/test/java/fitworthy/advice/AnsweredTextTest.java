package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Sheet;
import fitworthy.shelf.Shelves;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.FieldAnswer;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import fitworthy.source.Trees;
import fitworthy.usual.Filling;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An answer to what a sheet takes from its shelf or leaves to the book is written in the sheet, and changes nothing else. */
class AnsweredTextTest {

    private static final String TOURING = "scenarios/touring.yaml";
    private static final String PLATE = "src/test/resources/usual/plate-wagon.yaml";

    /** The shares of the axles, which come together; and what places are measured from, which change with it. */
    private static final Set<String> TOGETHER =
            Set.of("vehicle.mass.front-axle", "vehicle.mass.rear-axle", "vehicle.size.rear-overhang");

    private final List<Fault> faults = new ArrayList<>();

    private String answered(String file, String text, String... typed) throws FaultsException {
        List<FieldAnswer> answers = Stream.of(typed)
                .map(answer -> FieldAnswer.parse(Place.of("--answer"), answer, faults))
                .toList();
        return AnsweredText.of(view(), Place.of(file), text, faults).with(answers, faults);
    }

    private static View view() throws FaultsException {
        return new View(Books.engine(), null, null, Shelves.beside());
    }

    private Node.Mapping tree(String file, String text) throws FaultsException {
        return view().shelves().expanded(NodeReader.read(Place.of(file), text, faults), faults);
    }

    /** The lines that an answer took out and put in. */
    private String changed(String file, String... typed) throws Exception {
        String before = Files.readString(Path.of(file));
        return difference(before, answered(file, before, typed));
    }

    private static String difference(String before, String after) {
        List<String> gone = new ArrayList<>(before.lines().toList());
        List<String> come = new ArrayList<>(after.lines().toList());
        while (!gone.isEmpty() && !come.isEmpty() && gone.get(0).equals(come.get(0))) {
            gone.remove(0);
            come.remove(0);
        }
        while (!gone.isEmpty() && !come.isEmpty() && gone.get(gone.size() - 1).equals(come.get(come.size() - 1))) {
            gone.remove(gone.size() - 1);
            come.remove(come.size() - 1);
        }
        return gone.stream().map(line -> "-" + line.strip() + "\n").reduce("", String::concat)
                + come.stream().map(line -> "+" + line.strip() + "\n").reduce("", String::concat);
    }

    @Test
    void whatIsTakenByNameAloneGetsItsFieldBesideTheName() throws Exception {
        assertEquals(
                "-- Front bar\n+- {from: Front bar, mass: 61 kg}\n", changed(TOURING, "fitments.Front bar.mass=61 kg"));
        assertEquals(
                "-trailer: Off-road camper\n+trailer: {from: Off-road camper, ball: 150 kg}\n",
                changed(TOURING, "trailer.ball=150 kg"));
        assertEquals(
                "-- Front bar\n+- {from: Front bar, mass: 61 kg, at: {z: 700 mm}}\n",
                changed(TOURING, "fitments.Front bar.mass=61 kg", "fitments.Front bar.at.z=700 mm"));
    }

    @Test
    void whatIsTakenWithOthersBesideItGetsOneMore() throws Exception {
        assertEquals("+ratings: {gvm: 3200 kg}\n", changed(TOURING, "vehicle.ratings.gvm=3200 kg"), "in lines");
        assertEquals(
                "-- {from: Fridge 60 L, name: Fridge}\n+- {from: Fridge 60 L, name: Fridge, mass: 31 kg}\n",
                changed(TOURING, "fitments.Fridge.mass=31 kg"),
                "within braces, by the name that it has on the sheet");
        assertEquals(
                "-- {from: Canopy, hold-down: {loaded: 440 kg}}\n+- {from: Canopy, hold-down: {loaded: 450 kg}}\n",
                changed(TOURING, "fitments.Canopy.hold-down.loaded=450 kg"));
    }

    @Test
    void coordinatesStandBesideWordsForAPlace() throws Exception {
        String sheet = Files.readString(Path.of(PLATE))
                .replace("kind: roof-rack}", "kind: roof-rack, at: on the roof} # as it was");
        assertEquals(
                "-- {name: Roof rack, kind: roof-rack, at: on the roof} # as it was\n"
                        + "+- {name: Roof rack, kind: roof-rack, at: {where: on the roof, x: 1700 mm}} # as it was\n",
                difference(sheet, answered(PLATE, sheet, "fitments.Roof rack.at.x=1700 mm")));
        assertEquals(
                "-- {name: Drawers, kind: other}\n+- {name: Drawers, kind: other, at: {x: 2700 mm}}\n",
                changed(PLATE, "fitments.Drawers.at.x=2700 mm"));
    }

    @Test
    void whoeverTheBookSeatsIsWrittenDown() throws Exception {
        assertEquals(
                "+occupants: [{name: Driver, mass: 82 kg}, {name: Front passenger}]\n",
                changed(PLATE, "occupants.Driver.mass=82 kg"));
        assertEquals(
                "+occupants: [{name: Driver, at: {x: 1400 mm}}, {name: Front passenger, mass: 60 kg}]\n"
                        + "+tanks: [{name: Main tank, liquid: diesel, stock: yes, capacity: 80 L}]\n",
                changed(
                        PLATE,
                        "occupants.Driver.at.x=1400 mm",
                        "tanks.Main tank.capacity=80 L",
                        "occupants.Front passenger.mass=60 kg"));
    }

    /** The fields that hold a single value, of what is filled in and of what is asked. */
    private Set<String> fields(Node.Mapping tree) throws FaultsException {
        Set<String> fields = new LinkedHashSet<>();
        Questions.of(Books.engine(), Adviser.advise(Books.engine(), Filling.sheet(tree, Books.shipped(), faults)))
                .questions()
                .forEach(question -> fields.addAll(question.paths()));
        leaves(Filling.filled(tree, Books.shipped(), faults), NodePath.TOP, fields);
        return fields;
    }

    private static void leaves(Node node, NodePath path, Set<String> found) {
        if (node instanceof Node.Mapping group) {
            group.entries().forEach((name, entry) -> leaves(entry.value(), path.to(name), found));
        } else if (node instanceof Node.Listing list) {
            for (int i = 1; i <= list.items().size(); i++) {
                leaves(list.items().get(i - 1), path.to(i), found);
            }
        } else {
            found.add(path.toString());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {TOURING, "scenarios/overloaded.yaml", "scenarios/weekender.yaml", PLATE})
    void everyAnswerChangesItsFieldAlone(String file) throws Exception {
        String text = Files.readString(Path.of(file));
        Node.Mapping tree = tree(file, text);
        Node.Mapping filled = Filling.filled(tree, Books.shipped(), faults);
        List<String> fields = fields(tree).stream()
                .filter(field -> !(field.matches(".*\\.(name|from)|assume-usual") || TOGETHER.contains(field)))
                .toList();
        // Questions come first; of all else every fourth.
        List<String> tried = IntStream.range(0, fields.size())
                .filter(i -> i < 60 || i % 4 == 0)
                .mapToObj(fields::get)
                // No single value belongs in a list that is asked for.
                .filter(field -> !value(filled, NodePath.find(field, filled)).isEmpty())
                .toList();
        for (String field : tried) {
            NodePath path = NodePath.find(field, filled);
            String value = value(filled, path);
            String after = answered(file, text, path.byNames(filled) + "=" + value);
            assertTrue(
                    Trees.alike(
                            Trees.making(filled, path, new Node.Scalar(Place.of(""), value, false)),
                            Filling.filled(tree(file, after), Books.shipped(), faults)),
                    () -> field + " in\n" + difference(text, after));
            assertTrue(difference(text, after).lines().count() <= 2, () -> difference(text, after));
        }
        assertTrue(tried.size() > 60, tried.size() + " in " + file);
    }

    /** What stands there, as if it were known; of what is missing the first example. */
    private static String value(Node filled, NodePath path) {
        return path.in(filled) instanceof Node.Scalar word
                ? word.text().replaceFirst("^(usual|about) ", "")
                : RecordSchema.at(Sheet.class, path).get(0).example().split(" or ")[0];
    }

    @Test
    void aSheetInJsonStaysOne() throws Exception {
        String sheet =
                "{\"fitments\": [\"Front bar\"], \"region\": \"au-sa\", \"as-of\": \"2026-11-25\", \"title\": \"Bar\","
                        + " \"vehicle\": \"Tarrenby 3.0 wagon\", \"cases\": [{\"name\": \"on\"}], \"tanks\": [\"Tarrenby tank\"]}";
        assertEquals(
                sheet.replace("[\"Front bar\"]", "[{\"from\": \"Front bar\", \"mass\": \"61 kg\"}]"),
                answered("scenarios/made.json", sheet, "fitments.Front bar.mass=61 kg"));
    }

    /** What the shelf knows of its load on the ball is a guess for another mass, and stays as it is for the same. */
    @Test
    void theMassOfATrailerFromTheShelfIsAnswered() throws Exception {
        assertEquals(
                "-trailer: Off-road camper\n+trailer: {from: Off-road camper, mass: 2500 kg}\n",
                changed(TOURING, "trailer.mass=2500 kg"));
        String text = answered(TOURING, Files.readString(Path.of(TOURING)), "trailer.mass=2500 kg");
        assertEquals("about 215 kg +/- 10 kg", ball(text));
        assertEquals("215 kg +/- 10 kg", ball(text.replace("2500 kg}", "2350 kg +/- 40 kg}")));
    }

    private String ball(String text) throws FaultsException {
        return ((Node.Scalar) NodePath.of("trailer", "ball").in(tree(TOURING, text))).text();
    }

    /** The shelf's coordinates are another plan's: they do not come back once one stands beside the sheet's own words. */
    @Test
    void aCoordinateBesideWordsLeavesTheOthersToTheWordsAndNotToTheShelf() throws Exception {
        String sheet = Files.readString(Path.of(TOURING)).replace("- Front bar", "- {from: Front bar, at: front bar}");
        String text = answered(TOURING, sheet, "fitments.Front bar.at.x=-800 mm");
        assertTrue(text.contains("at: {where: front bar, x: -800 mm}"), text);
    }
}
