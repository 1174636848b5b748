package fitworthy.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Adviser;
import fitworthy.advice.Outcome.Finding;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Sheet;
import fitworthy.shelf.Shelf;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a sheet leaves open, and how far. */
class LeverTest {

    private static final String CRATE =
            "fitments: [{name: Crate, kind: other, mass: 40 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}%s}]";

    private static List<Lever> levers(String changes) throws FaultsException {
        Node.Mapping tree = Sheets.treeWith(changes);
        return Levers.of(tree, Sheets.read(tree), List.of(), Shelf.NONE, 0);
    }

    private static List<Lever> on(String thing, String changes) throws FaultsException {
        return levers(changes).stream()
                .filter(lever -> lever.thing().equals(thing))
                .toList();
    }

    private static Lever only(String thing, String changes) throws FaultsException {
        List<Lever> levers = on(thing, changes);
        assertEquals(1, levers.size(), () -> levers.toString());
        return levers.get(0);
    }

    /** Nobody has said how light a trailer of 2000 kg can be: half of it has to stay, 100 steps of 10 kg. */
    @Test
    void aTrailerIsLightenedToHalfItsMassWhereItsLeastIsNotKnown() throws FaultsException {
        Lever trailer = only("trailer", "trailer: {name: Van, mass: 2000 kg}");
        assertEquals(new Change.LightenTrailer(1000, false), trailer.at().apply(1));
        assertEquals(new Change.LightenTrailer(1990, false), trailer.at().apply(0.01));
        assertEquals(100, trailer.steps());
        assertEquals(1000, trailer.kilograms(), 1e-9);
    }

    /** 280 km at 12 L/100km take 33.6 L of the 80 L: 42 %, and nothing less is offered. */
    @Test
    void aTankKeepsWhatTheLongestLegTakes() throws FaultsException {
        Lever tank = only("Main tank", "trip: {longest-leg: 280 km}");
        assertEquals("fill 'Main tank' to 42 %, 46 L less", tank.at().apply(1).words());
        assertEquals(List.of(), on("Main tank", "trip: {longest-leg: 700 km}"));
    }

    /** The only rack carries what is on the roof, unless something there says that it stands on it; what is fitted stood there before. */
    @Test
    void whatStandsOnARackGoesWithIt() throws FaultsException {
        String roof =
                """
                fitments:
                  - {name: Rack, kind: roof-rack, mass: 35 kg, at: {x: 1900 mm, y: 0 mm, z: 1900 mm}, roof: yes}
                  - {name: Tent, kind: other, mass: 50 kg, at: {x: 1900 mm, y: 0 mm, z: 2000 mm}, roof: yes}
                  - {name: Light, kind: other, mass: 2 kg, at: {x: 1900 mm, y: 0 mm, z: 1900 mm}, roof: yes, done: yes}
                cargo:
                  - {name: Boat, mass: 75 kg, at: {x: 1900 mm, y: 0 mm, z: 2000 mm}, roof: yes}
                  - {name: Bag, mass: 5 kg, at: {x: 1900 mm, y: 0 mm, z: 2000 mm}, roof: yes%s}
                """;
        Lever all = drop(roof.formatted(""));
        assertEquals(
                "do without 'Rack' and what goes with it: 'Tent', 'Boat', 'Bag'",
                all.at().apply(1).words());
        assertEquals(35 + 50 + 75 + 5, all.kilograms(), 1e-9);
        Lever said = drop(roof.formatted(", in: Rack"));
        assertEquals(
                "do without 'Rack' and what goes with it: 'Boat', 'Bag'",
                said.at().apply(1).words(),
                "cargo is fixed to no roof");
        assertEquals(35 + 75 + 5, said.kilograms(), 1e-9);
    }

    private static Lever drop(String changes) throws FaultsException {
        return on("Rack", changes).stream()
                .filter(lever -> lever.at().apply(1) instanceof Change.Drop)
                .findFirst()
                .orElseThrow();
    }

    /** It is paid for and weighed; to move or take it off is a job of its own. */
    @Test
    void whatIsDoneIsNotOffered() throws FaultsException {
        assertEquals(3, on("Crate", CRATE.formatted(", may-move: 100 mm")).size());
        assertEquals(List.of(), on("Crate", CRATE.formatted(", may-move: 100 mm, done: yes")));
    }

    @Test
    void whatIsLeftOutNamesWhatItCarries() throws FaultsException {
        Lever crate = only(
                "Crate",
                CRATE.formatted("")
                        + "\ncargo: [{name: Stove, in: Crate, mass: 5 kg, at: {x: 0 mm, y: 0 mm, z: 0 mm}}]");
        assertEquals(
                "do without 'Crate' and what goes with it: 'Stove'",
                crate.at().apply(1).words());
        assertEquals(45, crate.kilograms(), 1e-9);
    }

    private static final String LIFT =
            """
            fitments:
              - {name: Front springs, kind: springs, end: front, lift: 75 mm, mass: 10 kg, at: {x: 0 mm, y: 0 mm, z: 500 mm}}
              - {name: Rear springs, kind: springs, end: rear, lift: %s, mass: 10 kg, at: {x: 2850 mm, y: 0 mm, z: 500 mm}}
            """;

    /** One end alone would stand 75 mm higher; rear springs that do not raise it may go by themselves. */
    @Test
    void springsThatRaiseBothEndsAreLeftOutTogether() throws FaultsException {
        assertEquals(
                "keep the springs it has, and do without 'Front springs' and what goes with it: 'Rear springs'",
                only("Front springs", LIFT.formatted("75 mm")).at().apply(1).words());
        assertEquals(List.of(), on("Rear springs", LIFT.formatted("75 mm")));
        assertEquals(
                "keep the springs it has, and do without 'Rear springs'",
                only("Rear springs", LIFT.formatted("0 mm")).at().apply(1).words());
    }

    @Test
    void aRatingKitGoesWithTheSpringsThatItStandsOn() throws FaultsException {
        String kit = LIFT.formatted("0 mm")
                + "  - {name: Kit, kind: rating-upgrade, mass: 0 kg, at: {x: 0 mm, y: 0 mm, z: 500 mm}, gvm: 3200 kg}\n";
        assertEquals(
                "keep the springs it has, and do without 'Rear springs' and what goes with it: 'Kit'",
                only("Rear springs", kit).at().apply(1).words());
        assertEquals("do without 'Kit'", only("Kit", kit).at().apply(1).words());
    }

    @Test
    void aTrailerIsLightenedToItsLeast() throws FaultsException {
        Lever trailer = only("trailer", "trailer: {name: Van, mass: 2000 kg, lightest: 1895 kg}");
        assertEquals(new Change.LightenTrailer(1895, true), trailer.at().apply(1));
        assertEquals(11, trailer.steps(), "the last step may be shorter");
        assertEquals(105, trailer.kilograms(), 1e-9);
    }

    @Test
    void aTrailerAsLightAsItCanBeIsLeftAlone() throws FaultsException {
        assertEquals(List.of(), on("trailer", "trailer: {name: Van, mass: 2000 kg, lightest: 2000 kg}"));
    }

    /** Half of 15 kg is not one step, but still a step. */
    @Test
    void thereIsAlwaysAStep() throws FaultsException {
        assertEquals(1, only("trailer", "trailer: {name: Van, mass: 15 kg}").steps());
    }

    @Test
    void aPartIsLeftOutUnlessTheCustomerKeepsItOrItIsOneOfAChoice() throws FaultsException {
        Lever crate = only("Crate", String.format(CRATE, ""));
        assertEquals(new Change.Drop("Crate", List.of()), crate.at().apply(1));
        assertEquals(1, crate.steps());
        assertEquals(40, crate.kilograms(), 1e-9);
        assertEquals(1, on("Crate", String.format(CRATE, ", keep: no")).size());
        assertEquals(List.of(), on("Crate", String.format(CRATE, ", keep: yes")));
        String option = "\noptions: [{name: Box, choices: [{name: crate, parts: [Crate]}, {name: none}]}]";
        assertEquals(List.of(), on("Crate", String.format(CRATE, "") + option));
    }

    /** A centimetre a step, forward and back; nothing is given up. */
    @Test
    void aPartIsMovedBothWays() throws FaultsException {
        List<Lever> crate = on("Crate", String.format(CRATE, ", keep: yes, may-move: 250 mm"));
        assertEquals(
                List.of(
                        new Change.Move("fitments", "Crate", Figure.of(2), -0.25),
                        new Change.Move("fitments", "Crate", Figure.of(2), 0.25)),
                crate.stream().map(lever -> lever.at().apply(1)).toList());
        assertEquals(List.of(25, 25), crate.stream().map(Lever::steps).toList());
        assertEquals(List.of(0.0, 0.0), crate.stream().map(Lever::kilograms).toList());
        assertEquals(List.of(), on("Crate", String.format(CRATE, ", keep: yes, may-move: 0 mm")));
    }

    @Test
    void cargoIsLeftBehindOrMoved() throws FaultsException {
        List<Lever> luggage = on("Luggage", "cargo: [{name: Luggage, may-move: 100 mm}]");
        assertEquals(
                List.of(
                        new Change.LeaveBehind("Luggage"),
                        new Change.Move("cargo", "Luggage", Figure.of(2.7), -0.1),
                        new Change.Move("cargo", "Luggage", Figure.of(2.7), 0.1)),
                luggage.stream().map(lever -> lever.at().apply(1)).toList());
        assertEquals(60, luggage.get(0).kilograms(), 1e-9);
        assertEquals(1, luggage.get(0).steps());
    }

    /** 80 L of diesel at 0.84 weigh 67.2 kg; a step is one per cent of the tank. */
    @Test
    void aTankIsEmptiedByTheHundredth() throws FaultsException {
        Lever tank = only("Main tank", "trip: {longest-leg: 0 km}");
        assertEquals(new Change.FillTo("Main tank", 0, 80), tank.at().apply(1));
        assertEquals(new Change.FillTo("Main tank", 0.75, 20), tank.at().apply(0.25));
        assertEquals(100, tank.steps());
        assertEquals(67.2, tank.kilograms(), 1e-9);
    }

    /** It is never fuller than 60 %, so that is where it begins: 48 L. */
    @Test
    void aTankIsEmptiedFromTheFullestLoadCase() throws FaultsException {
        Lever tank = only(
                "Main tank",
                """
                trip: {longest-leg: 0 km}
                cases:
                  - {name: half, filled: {Main tank: 50 %}}
                  - {name: more, filled: {Main tank: 60 %}}
                """);
        assertEquals(60, tank.steps());
        assertEquals(48, ((Change.FillTo) tank.at().apply(1)).litres(), 1e-9);
        assertEquals(48 * 0.84, tank.kilograms(), 1e-9);
    }

    @Test
    void theOtherChoicesOfAnOptionAreOffered() throws FaultsException {
        List<Lever> box = on(
                "Box",
                """
                fitments:
                  - {name: Steel, kind: other, mass: 120 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}}
                  - {name: Alloy, kind: other, mass: 70 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}}
                options:
                  - name: Box
                    take: alloy
                    choices: [{name: steel, parts: [Steel]}, {name: alloy, parts: [Alloy]}, {name: none}]
                """);
        assertEquals(
                List.of(new Change.Choose("Box", "steel"), new Change.Choose("Box", "none")),
                box.stream().map(lever -> lever.at().apply(1)).toList());
        assertTrue(box.stream().allMatch(lever -> lever.steps() == 1));
        // The steel one is a box as well.
        assertEquals(List.of(0.0, 70.0), box.stream().map(Lever::kilograms).toList());
    }

    /** What finding after finding asks for stands first and once, where the sheet has the field. */
    @Test
    void whatTheCardsAskForComesFirst() throws FaultsException {
        Node.Mapping tree = Sheets.treeWith(
                """
                fitments:
                  - {name: Bar, kind: bar, mass: 50 kg, at: {x: -800 mm, y: 0 mm, z: 700 mm}, airbag-statement: no,
                     lamps-visible: yes}
                """);
        Sheet sheet = Sheets.read(tree);
        List<Finding> findings = Adviser.advise(Books.engine(), sheet).findings();
        List<Lever> once = Levers.of(tree, sheet, findings, Shelf.NONE, 0);
        assertEquals("fitments.Bar.airbag-statement", once.get(0).thing());
        assertEquals("Bar", once.get(1).thing());
        assertEquals(1, once.get(0).steps());
        assertEquals(0, once.get(0).kilograms());
        List<Lever> twice = Levers.of(
                tree, sheet, Stream.concat(findings.stream(), findings.stream()).toList(), Shelf.NONE, 0);
        assertEquals(once.size(), twice.size());
    }

    private static final String TOWING =
            """
            cargo: [{name: Old dog, mass: 20 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}}]
            trailer: {name: Van, mass: %s, ball: 200 kg, rated: 3000 kg}
            tanks: [{name: Water, liquid: water, capacity: 60 L, fill: 100 %%, stock: no, mass: 5 kg, at: {x: 2000 mm, y: 0 mm, z: 600 mm}}]
            cases: [{name: alone}, {name: towed, towing: yes}]
            trip: {people: 2, longest-leg: 700 km%s}
            """;

    @Test
    void whatIsAliveComesAlongInTheVehicle() throws FaultsException {
        String towing = TOWING.formatted("2500 kg", "");
        assertEquals(List.of(), on("Old dog", towing));
        assertEquals(
                List.of(new Change.LeaveBehind("Luggage"), new Change.IntoTrailer("Luggage", 60, true)),
                on("Luggage", towing).stream().map(lever -> lever.at().apply(1)).toList());
        // With the trailer on in every loading nothing is left to say of another.
        assertEquals(
                new Change.IntoTrailer("Luggage", 60, false),
                on("Luggage", towing.replace("{name: alone}, ", "")).get(1).at().apply(1));
        // Nobody has weighed it: it may be at its plate, or the train at its GCM, already.
        assertEquals(1, on("Luggage", TOWING.formatted("ask", "")).size());
    }

    /** Whoever knows that the water has to last for days is not told to set out without. */
    @Test
    void waterIsLeftOutWhereNobodySaysHowFarItIsToTheNext() throws FaultsException {
        assertEquals(
                List.of(new Change.TowEmpty("Water")),
                on("Water", TOWING.formatted("ask", "")).stream()
                        .map(lever -> lever.at().apply(1))
                        .toList());
        assertEquals(
                List.of(),
                on("Water", TOWING.formatted("ask", ", days: 3 days, water-use: 10 L")).stream()
                        .filter(lever -> lever.at().apply(1) instanceof Change.TowEmpty)
                        .toList());
    }
}
