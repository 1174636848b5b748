package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.advice.Mender.Mending;
import fitworthy.book.Severity;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The plain wagon weighs 2520 kg with everything aboard: two people of 80 kg, 60 kg of luggage, 80 L of diesel at 0.84. */
class MenderTest {

    private static Mending mend(String changes) throws FaultsException {
        Node.Mapping tree = Sheets.treeWith(changes);
        return Mender.mend(Books.shipped(), tree, Sheets.read(tree), () -> false, tried -> { });
    }

    private static List<String> words(Mending mending) {
        return mending.offers().stream().map(offer -> String.join(" and ",
                offer.changes().stream().map(Change::words).toList())).toList();
    }

    @Test
    void aPlanWithoutStopsIsOfferedNothing() throws FaultsException {
        assertEquals(List.of(), mend("title: fine").offers());
    }

    /** 20 kg over the GVM: 24 L of diesel weigh 20.16 kg, 23 L would leave 0.68 kg too much. */
    @Test
    void theFewestLitresThatClearAStopAreLeftOut() throws FaultsException {
        Mending mending = mend("vehicle: {ratings: {gvm: 2500 kg}}");
        assertEquals(List.of("fill 'Main tank' to 70 %, 24 L less", "leave 'Luggage' behind"), words(mending));
        assertEquals(24 * 0.84, mending.offers().get(0).kilograms(), 1e-6);
        assertTrue(mending.complete());
    }

    /** 100 kg over: neither 67.2 kg of fuel nor 60 kg of luggage is enough, both together leave 27.2 kg more than needed. */
    @Test
    void changesAreJoinedWhereOneIsNotEnough() throws FaultsException {
        Mending mending = mend("vehicle: {ratings: {gvm: 2420 kg}}");
        assertEquals(List.of("leave 'Luggage' behind and fill 'Main tank' to 40 %, 48 L less"), words(mending));
    }

    /** The combination is 20 kg over a GCM of 6000 kg: the ball is counted once, so the trailer gives up the 20 kg. */
    @Test
    void theHeaviestTrailerThatPassesIsNamed() throws FaultsException {
        Mending mending = mend("trailer: {name: Van, mass: 3500 kg, ball: 0 kg, lightest: 3000 kg}");
        assertTrue(words(mending).contains("load the trailer to 3480 kg at most, its ball in proportion"),
                () -> words(mending).toString());
        assertTrue(mending.ways().stream().anyMatch(way -> way.finding().judged().id().equals("mass.gcm-over")
                && way.change().words().startsWith("load the trailer to 3480 kg")));
    }

    /** The rear axle is 10 kg over; a box of 100 kg moved forward by a tenth of the wheelbase, 290 mm in steps of 10, clears it. */
    @Test
    void aPartIsMovedNoFurtherThanNeeded() throws FaultsException {
        Mending mending = mend("""
                vehicle: {ratings: {rear-axle: 1281 kg}}
                cargo:
                  - {name: Box, mass: 100 kg +/- 0 kg, at: {x: 2850 mm, y: 0 mm, z: 900 mm}, may-move: 600 mm}
                """);
        assertTrue(words(mending).contains("move 'Box' 290 mm forward"), () -> words(mending).toString());
    }

    @Test
    void whatTheCustomerKeepsIsNotDropped() throws FaultsException {
        String bar = "{name: Bar, kind: other, mass: 60 kg +/- 0 kg, at: {x: 1000 mm, y: 0 mm, z: 700 mm}%s}";
        String changes = "vehicle: {ratings: {gvm: 2560 kg}}\nfitments: [" + bar + "]";
        assertTrue(words(mend(String.format(changes, ""))).contains("do without 'Bar'"));
        assertFalse(words(mend(String.format(changes, ", keep: yes"))).contains("do without 'Bar'"));
    }

    @Test
    void anotherChoiceIsOffered() throws FaultsException {
        Mending mending = mend("""
                vehicle: {ratings: {gvm: 2620 kg}}
                fitments:
                  - {name: Steel box, kind: other, mass: 120 kg +/- 0 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}}
                  - {name: Alloy box, kind: other, mass: 70 kg +/- 0 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}}
                options:
                  - name: Box
                    choices: [{name: steel, parts: [Steel box]}, {name: alloy, parts: [Alloy box]}]
                """);
        assertEquals("take 'alloy' for 'Box'", words(mending).get(0));
        assertEquals(0, mending.offers().get(0).kilograms(), 1e-9);
    }

    /** A part that is left out takes its circuit with it; the circuit would otherwise feed nothing. */
    @Test
    void aPartIsLeftOutTogetherWithItsCircuit() throws FaultsException {
        Mending mending = mend("""
                fitments: [{name: Fridge box, kind: other, mass: 30 kg, at: {x: 2900 mm, y: 0 mm, z: 1000 mm}}]
                circuits: [{name: Fridge, part: Fridge box, fuse: {rating: 0 A}}]
                """);
        assertEquals(List.of("do without 'Fridge box'"), words(mending));
    }

    @Test
    void theCircuitOfAPartNotChosenIsNotJudged() throws FaultsException {
        Mending mending = mend("""
                fitments:
                  - {name: Fridge box, kind: other, mass: 30 kg, at: {x: 2900 mm, y: 0 mm, z: 1000 mm}}
                  - {name: Ice box, kind: other, mass: 20 kg, at: {x: 2900 mm, y: 0 mm, z: 1000 mm}}
                circuits: [{name: Fridge, part: Fridge box, fuse: {rating: 0 A}}]
                options: [{name: Cold, choices: [{name: ice, parts: [Ice box]}, {name: fridge, parts: [Fridge box]}]}]
                """);
        assertEquals(List.of(), mending.offers());
    }

    @Test
    void noOfferLeavesAStop() throws FaultsException {
        Mending mending = mend("""
                vehicle: {ratings: {gvm: 2500 kg, front-axle: 1325 kg}}
                trailer: {name: Van, mass: 3600 kg, ball: 10 kg +/- 0 kg}
                """);
        assertFalse(mending.offers().isEmpty());
        mending.offers().forEach(offer -> assertFalse(offer.advice().worst().filter(Severity.STOP::equals).isPresent()));
    }

    /** Told to give up at once it says that it did not try everything. */
    @Test
    void aSearchThatWasCutSaysSo() throws FaultsException {
        Node.Mapping tree = Sheets.treeWith("vehicle: {ratings: {gvm: 2500 kg}}");
        assertFalse(Mender.mend(Books.shipped(), tree, Sheets.read(tree), () -> true, tried -> { }).complete());
    }
}
