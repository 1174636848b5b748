package fitworthy.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.quantity.Figure;
import fitworthy.schema.KnownGroups;
import fitworthy.sheet.Sheet;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Changes made on the tree of a sheet, and their words. */
class ChangeTest {

    private static final String TWO_BOXES =
            """
            fitments:
              - {name: Crate, kind: other, mass: 40 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}, removable: yes}
              - {name: Fridge, kind: other, mass: 30 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}, removable: yes}
            circuits:
              - {name: Lamp, part: Crate, current: 2 A}
              - {name: Cold, part: Fridge, current: 5 A}
            cases:
              - {name: bare, off: [Crate, Fridge]}
              - {name: some, off: [Fridge]}
            """;

    private static Node.Mapping applied(Change change, String changes) throws FaultsException {
        Node.Mapping tree = Sheets.treeWith(changes);
        return change.applied(tree, Sheets.read(tree));
    }

    private static String text(Node.Mapping tree, String... path) {
        return ((Node.Scalar) NodePath.of(path).in(tree)).text();
    }

    @Test
    void aPartGoesWithItsCircuitsAndOutOfTheLoadCases() throws FaultsException {
        Node.Mapping changed = applied(new Change.Drop("Crate", List.of()), TWO_BOXES);
        assertNull(NodePath.of("fitments", "Crate").in(changed));
        assertNull(NodePath.of("circuits", "Lamp").in(changed));
        assertEquals("Fridge", text(changed, "circuits", "Cold", "part"));
        assertEquals(1, Sheets.read(changed).fitments().size());
        assertEquals(
                List.of(1, 1),
                Sheets.read(changed).cases().stream()
                        .map(loading -> loading.off().size())
                        .toList());
        assertEquals("do without 'Crate'", new Change.Drop("Crate", List.of()).words());
    }

    /** What hangs in the air is no saving: with a box go the fridge in it, the can in the fridge and its water. */
    @Test
    void whatStandsInAPartGoesWithIt() throws FaultsException {
        Node.Mapping changed = applied(
                new Change.Drop("Crate", List.of()),
                """
                fitments:
                  - {name: Crate, kind: other, mass: 40 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}}
                  - {name: Fridge, kind: other, in: Crate, mass: 30 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}}
                  - {name: Bar, kind: other, mass: 30 kg, at: {x: 0 mm, y: 0 mm, z: 900 mm}}
                tanks:
                  - {name: Can, liquid: water, capacity: 20 L, fill: 100 %, stock: no, in: Fridge, mass: 1 kg,
                     at: {x: 2000 mm, y: 0 mm, z: 900 mm}}
                circuits: [{name: Cold, part: Fridge, current: 5 A}]
                cases: [{name: some, filled: {Can: 50 %}, off: [Fridge]}]
                """);
        assertEquals(1, Sheets.read(changed).fitments().size());
        assertEquals(1, Sheets.read(changed).tanks().size());
        assertEquals(0, Sheets.read(changed).circuits().size());
        assertEquals(0, Sheets.read(changed).cases().get(0).filled().size());
        assertEquals(0, Sheets.read(changed).cases().get(0).off().size());
    }

    @Test
    void cargoGoesOutOfTheLoadCasesToo() throws FaultsException {
        Change change = new Change.LeaveBehind("Luggage");
        Node.Mapping changed = applied(change, "cases: [{name: out, carrying: [Luggage]}]");
        assertNull(NodePath.of("cargo", "Luggage").in(changed));
        assertEquals(0, Sheets.read(changed).cargo().size());
        assertEquals("leave 'Luggage' behind", change.words());
    }

    @Test
    void aMoveIsWrittenInMillimetresFromTheFrontAxle() throws FaultsException {
        Change back = new Change.Move("cargo", "Luggage", Figure.of(2.7), 0.1304);
        assertEquals("2830 mm", text(applied(back, "title: moved"), "cargo", "Luggage", "at", "x"));
        assertEquals("move 'Luggage' 130 mm back", back.words());
        Change forward = new Change.Move("cargo", "Luggage", Figure.of(2.7), -0.1306);
        assertEquals("2569 mm", text(applied(forward, "title: moved"), "cargo", "Luggage", "at", "x"));
        assertEquals("move 'Luggage' 131 mm forward", forward.words());
    }

    /** A load case in which the tank is emptier already stays as it is. */
    @Test
    void aTankIsFilledNoFurtherInAnyLoadCase() throws FaultsException {
        Change change = new Change.FillTo("Main tank", 0.704, 23.7);
        Node.Mapping changed = applied(
                change,
                """
                cases:
                  - {name: full, filled: {Main tank: 90 %}}
                  - {name: low, filled: {Main tank: 20 %}}
                  - {name: plain}
                """);
        assertEquals("70 %", text(changed, "tanks", "Main tank", "fill"));
        assertEquals("70 %", text(changed, "cases", "full", "filled", "Main tank"));
        assertEquals("20 %", text(changed, "cases", "low", "filled", "Main tank"));
        assertNull(NodePath.of("cases", "plain", "filled").in(changed));
        assertEquals("fill 'Main tank' to 70 %, 24 L less", change.words());
    }

    /** One that is filled just so keeps what was written. */
    @Test
    void aLoadCaseFilledJustSoFarStaysAsWritten() throws FaultsException {
        Node.Mapping changed =
                applied(new Change.FillTo("Main tank", 0.5, 40), "cases: [{name: half, filled: {Main tank: 50.0 %}}]");
        assertEquals("50.0 %", text(changed, "cases", "half", "filled", "Main tank"));
        assertEquals("50 %", text(changed, "tanks", "Main tank", "fill"));
    }

    /** Three quarters of the trailer rest with three quarters of the ball; both stay as exact as they were. */
    @Test
    void theBallFallsWithTheTrailer() throws FaultsException {
        Change change = new Change.LightenTrailer(1500, true);
        Node.Mapping changed = applied(change, "trailer: {name: Van, mass: 2000 kg +/- 40 kg, ball: 200 kg +/- 10 kg}");
        assertEquals("1500.000 kg +/- 40.000 kg", text(changed, "trailer", "mass"));
        assertEquals("150.000 kg +/- 10.000 kg", text(changed, "trailer", "ball"));
        assertEquals("load the trailer to 1500 kg at most, its ball in proportion", change.words());
        assertEquals(
                "load the trailer to 1500 kg at most, its ball in proportion (if it weighs less empty: nobody has said)",
                new Change.LightenTrailer(1500, false).words());
        assertNull(NodePath.of("trailer", "ball").in(applied(change, "trailer: {name: Van, mass: 2000 kg +/- 40 kg}")));
    }

    /** 200 kg as far behind the axles as these are behind the ball lift as much: without them 2000 - 200 and 200 + 200 kg. */
    @Test
    void suppliesAreUsedUpFromALighterTrailerToo() throws FaultsException {
        Node.Mapping changed = applied(
                new Change.LightenTrailer(1500, true),
                """
                trailer:
                  name: Van
                  mass: 2000 kg +/- 0 kg
                  ball: 200 kg +/- 0 kg
                  axle: 3000 mm
                  bare: {mass: 1700 kg +/- 0 kg, ball: 390 kg +/- 0 kg}
                  stowed: [{name: Box, mass: 100 kg +/- 0 kg, behind: 2700 mm +/- 0 mm}]
                  supplies: [{name: Tank, mass: 200 kg +/- 0 kg, behind: 6000 mm +/- 0 mm}]
                """);
        assertEquals("150.000 kg +/- 0.000 kg", text(changed, "trailer", "ball"));
        assertEquals("200 kg +/- 0 kg", text(changed, "trailer", "supplies", "Tank", "mass"));
        assertNull(NodePath.of("trailer", "stowed").in(changed));
        assertEquals("1300.000 kg +/- 0.000 kg", text(changed, "trailer", "bare", "mass"));
        assertEquals("350.000 kg +/- 0.000 kg", text(changed, "trailer", "bare", "ball"));
    }

    @Test
    void anAnswerIsPutInPlaceOfAnother() throws FaultsException {
        Change change =
                new Change.PutRight("Crate", NodePath.of("fitments", "Crate", "removable"), "no", "bolt it down");
        assertEquals("no", text(applied(change, TWO_BOXES), "fitments", "Crate", "removable"));
        assertEquals("bolt it down (Crate)", change.words());
    }

    @Test
    void anotherChoiceIsTaken() throws FaultsException {
        Change change = new Change.Choose("Box", "none");
        Node.Mapping changed = applied(
                change,
                TWO_BOXES + "options: [{name: Box, take: one, choices: [{name: one, parts: [Fridge]}, {name: none}]}]");
        assertEquals("none", text(changed, "options", "Box", "take"));
        assertEquals("take 'none' for 'Box'", change.words());
    }

    @Test
    void changesAreMadeOneAfterTheOther() throws FaultsException {
        Node.Mapping tree = Sheets.treeWith("title: several");
        Sheet sheet = Sheets.read(tree);
        Sheet changed = Change.sheet(
                List.of(new Change.LeaveBehind("Luggage"), new Change.FillTo("Main tank", 0.5, 40)),
                tree,
                sheet,
                Books.shipped(),
                KnownGroups.NONE);
        assertEquals(0, changed.cargo().size());
        assertEquals(0.5, changed.tanks().get(0).fill().value(), 1e-9);
        assertEquals(1, sheet.cargo().size(), "the sheet itself stays as it was");
    }

    private static final String TOWING =
            """
            cargo: [{name: Tent, mass: 20 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}}]
            trailer: {name: Van, mass: %s, ball: about 200 kg +/- 10 kg, rated: 3000 kg}
            tanks: [{name: Water, liquid: water, capacity: 60 L, fill: 100 %%, stock: no, mass: 5 kg, at: {x: 2000 mm, y: 0 mm, z: 600 mm}}]
            cases: [{name: alone}, {name: towed, towing: yes, filled: {Main tank: 50 %%}}]
            """;

    /** 60 kg of 2000 kg are 3 %, and so is what they put on the ball: 6 of 200 kg. A guess stays one. */
    @Test
    void whatRidesInTheTrailerWeighsThereAndOnItsBall() throws FaultsException {
        Change change = new Change.IntoTrailer("Luggage", 60, true);
        Sheet changed = Sheets.read(applied(change, TOWING.formatted("2000 kg")));
        assertEquals(2060, changed.trailer().orElseThrow().mass().value(), 1e-9);
        assertEquals(206, changed.trailer().orElseThrow().ball().value(), 1e-9);
        assertEquals(10, changed.trailer().orElseThrow().ball().tolerance(), 1e-9);
        assertTrue(changed.trailer().orElseThrow().ball().guess().isPresent());
        assertTrue(changed.cases().get(0).carries("Luggage"));
        assertFalse(changed.cases().get(1).carries("Luggage"));
        assertTrue(changed.cases().get(1).carries("Tent"));
        assertEquals("carry 'Luggage' in the trailer when towing, otherwise as planned", change.words());
        assertEquals("carry 'Luggage' in the trailer", new Change.IntoTrailer("Luggage", 60, false).words());
    }

    @Test
    void aTankIsEmptyWhereTheTrailerIsOnAlone() throws FaultsException {
        Sheet changed = Sheets.read(applied(new Change.TowEmpty("Water"), TOWING.formatted("2000 kg")));
        assertEquals(Map.of(), changed.cases().get(0).filled());
        assertEquals(0, changed.cases().get(1).filled().get("Water").value());
        assertEquals(0.5, changed.cases().get(1).filled().get("Main tank").value(), 1e-9);
    }

    @Test
    void whatStaysInAPartThatGoesIsSaid() {
        assertEquals(
                "do without 'Top' ('Fridge', 'Drawers' stay aboard)",
                new Change.Drop("Top", List.of(), "", List.of("Fridge", "Drawers")).words());
        assertEquals(
                "do without 'Top' ('Fridge' stays aboard)",
                new Change.Drop("Top", List.of(), "", List.of("Fridge")).words());
        assertEquals(
                "do without 'Top' (the 3 things in it stay aboard)",
                new Change.Drop("Top", List.of(), "", List.of("a", "b", "c")).briefly(2));
    }

    @Test
    void noVehicleIsToldToGoWithoutTyres() {
        assertEquals(
                "keep the tyres it has, and do without 'Big'",
                new Change.Drop("Big", List.of(), "tyres", List.of()).words());
    }
}
