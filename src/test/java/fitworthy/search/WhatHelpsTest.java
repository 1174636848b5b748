package fitworthy.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Outcome;
import fitworthy.advice.Outcome.Check;
import fitworthy.book.Severity;
import fitworthy.figures.measure.Measure;
import fitworthy.schema.KnownGroups;
import fitworthy.search.Mender.Mending;
import fitworthy.search.Mender.Offer;
import fitworthy.sheet.Sheet;
import fitworthy.shelf.Shelf;
import fitworthy.shelf.ShelfReader;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The single changes that help most, and the lightest plan where nothing clears every stop. */
class WhatHelpsTest {

    private static final Shelf SHELF = ShelfReader.read(Path.of("scenarios/shelf"));

    private static final String TRAY =
            "  - {name: Tray, kind: tray, mass: 90 kg +/- 0 kg, at: {x: 2900 mm, y: 0 mm, z: 900 mm}}\n";
    private static final String CANOPY =
            "  - {name: Canopy, kind: canopy, mass: 120 kg +/- 0 kg, at: {x: 2900 mm, y: 0 mm, z: 1300 mm}}\n";

    private static Mending mend(Node.Mapping tree, Shelf shelf) throws FaultsException {
        return Mender.mend(Books.engine(), tree, Sheets.read(tree), shelf, () -> false, tried -> {});
    }

    private static Mending mend(String changes) throws FaultsException {
        return mend(Sheets.treeWith(changes), Shelf.NONE);
    }

    private static List<String> words(List<Offer> offers) {
        return offers.stream()
                .map(offer -> offer.changes().stream().map(Change::words).collect(Collectors.joining(" and ")))
                .toList();
    }

    private static Set<Check> found(Advice advice, Severity worse) {
        return advice.findings().stream()
                .filter(finding -> finding.judged().card().severity().value().compareTo(worse) <= 0)
                .map(Outcome::check)
                .collect(Collectors.toSet());
    }

    /** Each put into the sheet anew: what is told of its range is the measure, and no check that was met has to change. */
    @ParameterizedTest
    @ValueSource(strings = {"touring", "overloaded"})
    void whatIsOfferedBreaksNothingAndTellsTheMeasuresOfTheChangedPlan(String scenario) throws FaultsException {
        Node.Mapping tree = Sheets.scenario(scenario);
        Sheet sheet = Sheets.read(tree);
        Advice planned = Adviser.advise(Books.engine(), sheet);
        Set<Check> met = planned.met().stream().map(Outcome::check).collect(Collectors.toCollection(HashSet::new));
        met.removeAll(planned.findings().stream().map(Outcome::check).toList());
        Mending mending = mend(tree, SHELF);
        assertTrue(
                mending.best().size() > 4 && mending.best().size() <= 8,
                "best " + mending.best().size());
        for (Offer offer : mending.best()) {
            String what = words(List.of(offer)).toString();
            Advice again = Adviser.advise(
                    Books.engine(), Change.sheet(offer.changes(), tree, sheet, Books.shipped(), KnownGroups.NONE));
            Set<Check> broken = found(again, Severity.CHANGE);
            broken.retainAll(met);
            assertEquals(Set.of(), broken, what);
            assertTrue(found(planned, Severity.STOP).containsAll(found(again, Severity.STOP)), what);
            assertTrue(again.notAssessed().size() <= planned.notAssessed().size(), what);
            assertEquals(ranges(again), offer.terms().range(), what);
            assertEquals(Terms.of(again), offer.terms(), what);
        }
    }

    private static Map<String, Double> ranges(Advice advice) {
        return advice.facts().entrySet().stream()
                .flatMap(loading -> loading.getValue().stream()
                        .filter(fact -> fact instanceof Measure measure
                                && measure.getName().equals("fuel.leg"))
                        .map(fact -> Map.entry(loading.getKey(), ((Measure) fact).getLimit())))
                .collect(Collectors.toMap(Map.Entry::getKey, range -> advice.loadings().stream()
                        .filter(loading -> loading.loadCase().name().equals(range.getKey()))
                        .map(loading ->
                                fitworthy.figures.plan.FuelRange.of(loading).value())
                        .peek(metres -> assertEquals(range.getValue(), metres, 1e-3))
                        .findFirst()
                        .orElseThrow()));
    }

    /** 20 kg over: leaving 60 kg of luggage clears as much as 24 L of diesel, but gives something up. */
    @Test
    void ofTwoThatClearAsMuchWhatGivesNothingUpComesFirst() throws FaultsException {
        Mending mending = mend("vehicle: {ratings: {gvm: 2500 kg}}");
        assertEquals(List.of("fill 'Main tank' to 70 %, 24 L less", "leave 'Luggage' behind"), words(mending.best()));
    }

    /** The stop of the fuse cannot be cleared, 20 kg over the GVM can: 24 L of diesel are 20.16 kg. */
    @Test
    void stopsOfMassAreTreatedAlone() throws FaultsException {
        String fridge =
                """
                vehicle: {ratings: {gvm: %d kg}}
                fitments: [{name: Fridge box, kind: other, keep: yes, mass: 30 kg +/- 0 kg, at: {x: 2900 mm, y: 0 mm, z: 1000 mm}}]
                circuits: [{name: Fridge, part: Fridge box, fuse: {rating: 0 A}}]
                """;
        Mending mending = mend(fridge.formatted(2530));
        assertEquals(List.of(), mending.offers());
        assertEquals(
                List.of("fill 'Main tank' to 70 %, 24 L less", "leave 'Luggage' behind"), words(mending.lighter()));
        assertEquals(
                Set.of("Fridge"),
                found(mending.lighter().get(0).advice(), Severity.STOP).stream()
                        .map(Check::subject)
                        .collect(Collectors.toSet()));
        // 150 kg over: 60 kg of luggage, and of 80 L of diesel what 300 km with a fifth in reserve do not take: 36 L /
        // 0.8
        // are 45 L, in whole percents 57, so that 34.4 L or 28.9 kg go; in all 88.9 kg
        Mending nearest = mend(fridge.formatted(2400));
        assertEquals(
                List.of("leave 'Luggage' behind and fill 'Main tank' to 57 %, 34 L less"), words(nearest.lighter()));
    }

    /**
     * 380 kg over. Without the box behind the rear axle, which lifts 60 kg, the front axle carries 1388.9 of 1340 kg, and
     * without the plates too 1328.9 kg.
     */
    @Test
    void whatPassesAnotherLimitAloneCountsBesideWhatKeepsIt() throws FaultsException {
        Mending mending = mend(
                """
                vehicle: {ratings: {gvm: 2300 kg, front-axle: 1340 kg}}
                fitments:
                  - {name: Aft box, kind: other, mass: 100 kg +/- 0 kg, at: {x: 4560 mm, y: 0 mm, z: 900 mm}}
                  - {name: Plates, kind: other, mass: 60 kg +/- 0 kg, at: {x: 0 mm, y: 0 mm, z: 500 mm}}
                """);
        assertEquals(List.of(), mending.offers());
        assertEquals(
                List.of("do without 'Plates' and do without 'Aft box' and leave 'Luggage' behind and"
                        + " fill 'Main tank' to 57 %, 34 L less"),
                words(mending.lighter()));
    }

    /** A canopy stands on a tray, and neither is left out where the other hangs on it. */
    @Test
    void noPartIsLeftHangingInTheAir() throws FaultsException {
        List<String> words = words(mend("vehicle: {ratings: {gvm: 2700 kg}}\nfitments:\n" + TRAY + CANOPY)
                .best());
        assertTrue(words.contains("do without 'Canopy'"), words.toString());
        assertFalse(words.stream().anyMatch(change -> change.contains("'Tray'")), words.toString());
        String option =
                """
                options: [{name: Tray, choices: [{name: tray, parts: [Tray]}, {name: none}]}]
                """;
        List<String> open = words(mend("vehicle: {ratings: {gvm: 2700 kg}}\nfitments:\n" + TRAY + CANOPY + option)
                .best());
        assertFalse(open.contains("take 'none' for 'Tray'"), open.toString());
        List<String> alone = words(mend("vehicle: {ratings: {gvm: 2580 kg}}\nfitments:\n" + TRAY + option)
                .best());
        assertTrue(alone.contains("take 'none' for 'Tray'"), alone.toString());
    }

    @Test
    void whatIsOffWithTheCanopyGoesWithIt() throws FaultsException {
        Sheet sheet = Sheets.read(Sheets.scenario("touring"));
        Set<String> gone = new Resting(sheet.planned()).with(List.of("Canopy"));
        assertTrue(gone.containsAll(Set.of("Canopy", "Fridge", "Second battery", "Rear camera")), gone.toString());
        assertFalse(gone.contains("Alloy tray"), gone.toString());
        assertEquals(
                Set.of("Front bar", "Winch", "Driving lamps"), new Resting(sheet.planned()).with(List.of("Front bar")));
    }

    /**
     * Index 80 carries 450 kg, so that two carry 900 kg of an axle's load of more than 1200 kg, and of its limit of 1750 kg:
     * 875 kg a tyre, which is index 103.
     */
    @Test
    void tyresAndWheelsOfTheRatingThatIsNamedAreOffered() throws FaultsException {
        Mending tyres = mend("vehicle: {tyres: {load-index: 80}}");
        assertEquals(
                "choose tyres of load index 103 or higher", words(tyres.best()).get(0));
        assertEquals(Set.of(), found(tyres.best().get(0).advice(), Severity.STOP));
        Mending wheels = mend("vehicle: {wheels: {rating: 500 kg}}");
        assertEquals(
                "choose wheels rated for 875 kg or more each",
                words(wheels.best()).get(0));
    }

    /** The shelf has a flat rack of 34 kg for one of 96 kg with a tent; it is fitted where that was, and as long. */
    @Test
    void aLighterPartOfTheShelfIsOffered() throws FaultsException {
        Node.Mapping tree = Sheets.scenario("overloaded");
        Mending mending = mend(tree, SHELF);
        String flat = "fit 'Flat roof rack' from the shelf in place of 'Roof rack with tent', if its maker says that it"
                + " fits";
        assertTrue(words(mending.best()).contains(flat), words(mending.best()).toString());
        Offer offer = mending.best().stream()
                .filter(one -> words(List.of(one)).contains(flat))
                .findFirst()
                .orElseThrow();
        assertEquals(-2150, offer.added().doubleValue(), 1e-9);
        assertEquals(
                Sheets.read(tree).fitments().get(3).at(),
                offer.advice().sheet().fitments().get(3).at());
        assertFalse(
                words(mend(tree, Shelf.NONE).best()).contains(flat), "nothing is taken from a shelf that is not there");
    }

    /** A bar is made for one vehicle: what the shelf says of its statement is not known of another. */
    @Test
    void whatIsMadeForOneVehicleIsNotTakenForAnother() throws FaultsException {
        Node.Mapping tree = Sheets.scenario("touring");
        Map<String, List<String>> openable = Alternatives.openable(tree, Sheets.read(tree), SHELF);
        assertEquals(List.of("Fridge 40 L"), openable.get("Fridge"));
        assertFalse(openable.containsKey("Front bar"), openable.toString());
    }

    /** Nobody knows the longest way: then no tank is offered less than full. */
    @Test
    void noHalfTankIsOfferedOnAWayThatNobodyKnows() throws FaultsException {
        Mending mending = mend("vehicle: {ratings: {gvm: 2500 kg}}\ntrip: {longest-leg: }");
        assertEquals(List.of("leave 'Luggage' behind"), words(mending.best()));
    }
}
