package fitworthy.printout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.MissingFigure;
import fitworthy.advice.Outcome.Finding;
import fitworthy.book.Ask;
import fitworthy.book.Party;
import fitworthy.book.Severity;
import fitworthy.document.HtmlLayout;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Section;
import fitworthy.document.Report.Steps;
import fitworthy.printout.Printed;
import fitworthy.printout.letter.Letters;
import fitworthy.proof.Cases;
import fitworthy.quantity.Missing;
import fitworthy.source.FaultsException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Everything that is asked is asked of whom the card names, once, and stands in its letter. */
class AskedTest {

    private static Advice advice(String changes) throws FaultsException {
        return Adviser.advise(Books.engine(), Sheets.plainWith(changes));
    }

    private static Asked to(String whom, List<Asked> asked) {
        return asked.stream()
                .filter(one -> one.whom().words().equals(whom))
                .findFirst()
                .orElseThrow(() -> new AssertionError(whom + " is not among "
                        + asked.stream().map(one -> one.whom().words()).toList()));
    }

    /** Kinds without a name of their own are all alike: one such part on the sheet is not the one that a card means. */
    @Test
    void aPartOfNoKindIsMeantByItsNameAlone() throws FaultsException {
        String hitch =
                """
                vehicle: {ratings: {levelling: yes}}
                trailer: {name: Van, mass: 2000 kg +/- 0 kg, ball: 250 kg +/- 0 kg, rated: 2500 kg, brakes: electric}
                fitments:
                  - {name: Bar, kind: tow-bar, mass: 0 kg, levelling: yes, levelling-share: 50 %, bars-most: 200 kg, bars-least: 100 kg}
                  - {name: Tool box, kind: other, mass: 20 kg, at: {x: 3000 mm, y: 0 mm, z: 900 mm}}
                """;
        List<String> whom =
                Asked.of(advice(hitch)).stream().map(one -> one.whom().words()).toList();
        assertTrue(whom.contains("the maker of the load-levelling hitch"), whom.toString());
        assertFalse(whom.contains("the maker of Tool box"), whom.toString());
        assertTrue(
                Asked.of(advice(hitch.replace("Tool box", "Load-levelling hitch"))).stream()
                        .anyMatch(one -> one.whom().of().equals("Load-levelling hitch")),
                "by its name");
    }

    /** New Zealand has no limit of lift on record, so the certifier is asked it; Queensland has one. */
    @Test
    void whatTheBookLacksIsAskedInTheLetterOfWhoKnowsIt() throws FaultsException {
        String lift =
                """
                region: %s
                fitments:
                  - {name: Tall springs, kind: springs, mass: 0 kg, end: front, lift: 75 mm}
                """;
        String certifier = letter(lift.formatted("nz"), "the low volume vehicle certifier");
        assertTrue(certifier.contains("What holds here for Tall springs: "), certifier);
        assertTrue(certifier.contains("greatest total lift that can be certified"), certifier);
        assertFalse(letter(lift.formatted("nz"), "the registering authority")
                .contains("greatest total lift that can be certified"));
        assertTrue(
                Asked.of(advice(lift.formatted("au-qld"))).stream()
                        .flatMap(one -> one.unruled().keySet().stream())
                        .noneMatch(gap -> gap.path().equals("practice value suspension.lift-certified-most")),
                "on record");
    }

    private static String letter(String changes, String whom) throws FaultsException {
        Advice advice = advice(changes);
        List<Asked> asked = Asked.of(advice);
        List<Section> letters = Letters.of(advice).report("").sections();
        return IntStream.range(0, asked.size())
                .filter(i -> asked.get(i).whom().words().equals(whom))
                .mapToObj(i -> String.join(" ", items(letters.get(i))))
                .collect(Collectors.joining());
    }

    static Stream<String> topics() throws FaultsException {
        return Books.shipped().topics().stream();
    }

    @ParameterizedTest
    @MethodSource("topics")
    void everyAskOfTheCasesStandsInItsLetter(String topic) throws FaultsException {
        for (Cases.Case one : Books.cases()) {
            if (one.topic().equals(topic)) {
                holds(Adviser.advise(Books.engine(), one.sheet()), one.toString());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"touring", "weekender", "overloaded"})
    void everyAskOfTheScenariosStandsInItsLetter(String name) throws FaultsException {
        holds(Adviser.advise(Books.engine(), Sheets.read(Sheets.scenario(name))), name);
    }

    private static void holds(Advice advice, String name) {
        List<Asked> asked = Asked.of(advice);
        assertEquals(
                asked.size(), asked.stream().map(Asked::whom).distinct().count(), () -> name + ": one letter each");
        List<Section> letters = Letters.of(advice).report("").sections();
        assertEquals(asked.size(), letters.size(), name);
        Set<List<Object>> wanted = new HashSet<>();
        for (Group<Finding> finding : Arrangement.of(advice).standing()) {
            for (Ask ask : finding.card().ask()) {
                wanted.add(List.of(
                        party(ask, finding.worst(), advice),
                        finding.id(),
                        finding.worst().judged().subject(),
                        ask));
            }
        }
        Set<List<Object>> got = new HashSet<>();
        int points = 0;
        for (int i = 0; i < asked.size(); i++) {
            Asked one = asked.get(i);
            List<String> items = items(letters.get(i));
            for (Asked.Point point : one.points()) {
                Finding worst = point.finding().worst();
                got.add(List.of(
                        one.whom().party(), point.finding().id(), worst.judged().subject(), point.ask()));
                points++;
                String title = Wording.fill(point.finding().card().title(), worst);
                String said = point.ask().what().isEmpty()
                        ? Wording.remedy(worst)
                        : Wording.fill(point.ask().what(), worst);
                assertTrue(
                        items.stream().anyMatch(item -> item.contains(title) && item.contains(said)),
                        () -> name + ", " + one.whom().words() + ": " + title + " / " + said + " in " + items);
                if (!point.ask().of().isEmpty() && one.whom().party() == Party.PART_MAKER) {
                    assertFalse(one.whom().of().isEmpty(), name);
                }
            }
            for (String thing : one.bring()) {
                assertTrue(
                        one.points().stream().anyMatch(point -> Wording.part(
                                        point.ask().bring(), point.finding().worst())
                                .contains(thing)),
                        name + ": " + thing);
            }
        }
        assertEquals(wanted, got, name);
        assertEquals(wanted.size(), points, () -> name + ": each once");
        List<Missing> missing = new ArrayList<>();
        asked.forEach(one -> one.missing().forEach(lacking -> missing.addAll(lacking.fields())));
        assertEquals(
                Arrangement.of(advice).figuresToBring().stream()
                        .map(MissingFigure::fields)
                        .mapToInt(List::size)
                        .sum(),
                missing.size(),
                name);
    }

    /** Nobody makes a circuit, and the maker of the vehicle or trailer is one party whichever way a card names him. */
    private static Party party(Ask ask, Finding finding, Advice advice) {
        String subject = finding.judged().subject();
        String of = Wording.part(ask.of(), finding);
        String thing = of.isEmpty() ? subject : of;
        // A part has a maker, whether or not a circuit that feeds it is called so too.
        boolean circuit = advice.sheet().planned().circuits().stream()
                        .anyMatch(each -> each.name().equals(thing))
                && advice.sheet().planned().fitments().stream()
                        .noneMatch(part -> part.name().equals(thing));
        if (!ask.party().is(Party.PART_MAKER)) {
            return ask.party().value();
        }
        return circuit
                ? Party.AUTO_ELECTRICIAN
                : of.equals("the vehicle")
                        ? Party.VEHICLE_MAKER
                        : of.equals("the trailer") ? Party.TRAILER_MAKER : Party.PART_MAKER;
    }

    private static List<String> items(Section letter) {
        return letter.blocks().stream()
                .filter(Steps.class::isInstance)
                .flatMap(block -> ((Steps) block).texts().stream())
                .toList();
    }

    /** Of what is too heavy the customer chooses what stays behind, though the card asks the builder; page and paper say so. */
    @Test
    void whoActsIsSaidInOneWay() throws FaultsException {
        Advice advice = Adviser.advise(Books.engine(), Sheets.read(Sheets.scenario("overloaded")));
        Arrangement arrangement = Arrangement.of(advice);
        Map<String, String> acts = FindingBrief.all(arrangement, Severity.NOTE, false).stream()
                .collect(Collectors.toMap(finding -> finding.said().id(), FindingBrief::actor));
        assertEquals("The customer chooses what stays behind", acts.get("mass.gvm-over"));
        assertEquals("The customer decides", acts.get("mass.gcm-over"));
        assertEquals("The builder does it", acts.get("mass.ball-lever"));
        assertEquals("Ask the certifying engineer", acts.get("mass.cog-high"));
        arrangement.told().forEach(told -> {
            String said = acts.get(told.head().id());
            assertEquals(
                    said.startsWith("The customer"),
                    Asked.actor(told.head()) == Party.CUSTOMER,
                    told.head().id());
            assertEquals(
                    said.startsWith("The builder"),
                    Asked.actor(told.head()) == Party.BUILDER,
                    told.head().id());
        });
        String paper = HtmlLayout.html(Printed.scenario("overloaded").report())
                .replaceAll("<[^>]*>", " ")
                .replaceAll("\\s+", " ");
        acts.entrySet().stream()
                .filter(entry -> entry.getKey().equals("mass.gvm-over"))
                .forEach(entry -> assertTrue(paper.contains(entry.getValue()), paper));
    }

    @Test
    void aMakerIsAskedOfOnePart() throws FaultsException {
        String spring = "  - {name: %s, kind: springs, mass: 0 kg, end: %s, suits: ask}\n";
        List<Asked> asked = Asked.of(advice("fitments:\n" + spring.formatted("Hard springs", "front")
                + spring.formatted("Soft springs", "rear")
                + "  - {name: Tow bar v1.2, kind: tow-bar, mass: 0 kg, suits: ask}\n"));
        for (String name : List.of("Hard springs", "Soft springs")) {
            Asked one = to("the maker of " + name, asked);
            assertEquals(
                    Set.of(name),
                    Set.copyOf(one.missing().stream().map(Asked.Lacking::of).toList()));
            assertTrue(one.missing().stream()
                    .map(Asked.Lacking::what)
                    .toList()
                    .contains(name + ": whether its maker has a statement for this vehicle"));
        }
        assertEquals(
                "Tow bar v1.2",
                to("the maker of Tow bar v1.2", asked).missing().get(0).of());
    }

    /** Not of a maker, whom a circuit does not have, and by which of its fuses. */
    @Test
    void ofACircuitTheElectricianIsAsked() throws FaultsException {
        Advice advice =
                advice("circuits: [{name: Charger feed, current: 40 A, fuse: {rating: 60 A, distance: 200 mm}}]");
        Addressees addressees =
                new Addressees(advice.sheet().planned(), advice.book().tables().shopWords());
        assertEquals("the auto electrician", addressees.maker("Charger feed").words());
        assertEquals("the maker of Charger", addressees.maker("Charger").words());
        assertEquals(
                Party.VEHICLE_MAKER.words(), addressees.maker("the vehicle").words());
        assertEquals(
                "Charger feed, far fuse: its rating",
                new Asked.Lacking(
                                "Charger feed",
                                List.of(new Missing("circuits.Charger feed.far-fuse.rating", "its rating", "a label")))
                        .what());
        assertEquals(
                "Charger feed, fuse: its rating",
                new Asked.Lacking(
                                "Charger feed",
                                List.of(new Missing("circuits.Charger feed.fuse.rating", "its rating", "a label")))
                        .what());
    }

    /** What lies in the workshop is put on a scale; of what nobody has yet the maker knows the mass. */
    @Test
    void aGuessedMassIsAskedOfWhoCanTell() throws FaultsException {
        Advice advice = advice(
                """
                fitments:
                  - {name: Canopy, kind: canopy, mass: about 150 kg, at: {x: 2950 mm, y: 0 mm, z: 1300 mm}}
                  - {name: Bar, kind: bar, mass: about 50 kg, done: yes, at: {x: -600 mm, y: 0 mm, z: 700 mm}}
                cargo: [{name: Crate, mass: about 40 kg, at: {x: 2700 mm, y: 0 mm, z: 900 mm}}]
                """);
        Addressees addressees =
                new Addressees(advice.sheet().planned(), advice.book().tables().shopWords());
        assertEquals(
                "the maker of Canopy",
                addressees.finds(guess("fitments.Canopy.mass")).words());
        assertEquals(Party.BUILDER, addressees.finds(guess("fitments.Bar.mass")).party());
        assertEquals(Party.CUSTOMER, addressees.finds(guess("cargo.Crate.mass")).party());
    }

    private static Missing guess(String path) {
        return new Missing(path, "its mass", "a scale, or the maker's data sheet");
    }

    @Test
    void whatIsAskedNamesTheThing() {
        assertEquals(
                "Driver's eye: backwards from the front axle",
                lacking("vehicle.view.eye.x", "backwards from the front axle"));
        assertEquals(
                "Left mirror: from the centre line to the outer edge of its glass",
                lacking("vehicle.view.mirrors.left.outer", "from the centre line to the outer edge of its glass"));
        assertEquals(
                "Vehicle: from the ground to the centre of a front wheel",
                lacking("vehicle.size.wheel-centre", "from the ground to the centre of a front wheel"));
        assertEquals("Airbox: its drain", lacking("vehicle.intake.airbox.drain", "its drain"));
        assertEquals(
                "Rear recovery point: what it was made for",
                lacking("vehicle.recovery.rear.made-for", "what it was made for"));
        assertEquals("Spare: its load index", lacking("vehicle.spare.load-index", "its load index"));
        assertEquals("Wheels: rim width", lacking("vehicle.wheels.width", "rim width"));
        assertEquals("Greatest width", lacking("vehicle.size.width", "greatest width"));
        assertEquals("Gross vehicle mass", lacking("vehicle.ratings.gvm", "gross vehicle mass"));
    }

    /** The lengths that are missing are one question; those of another thing are another. */
    @Test
    void whereAThingSitsIsAskedOnce() throws FaultsException {
        List<String> asked = Asked.of(
                        advice(
                                """
                        cargo:
                          - {name: Chest, mass: 40 kg, at: {x: ask, y: ask, z: ask}}
                          - {name: Crate, mass: 40 kg, at: {x: 2500 mm, y: 0 mm}}
                        """))
                .stream()
                .flatMap(one -> one.missing().stream())
                .map(Asked.Lacking::what)
                .filter(what -> what.startsWith("C"))
                .toList();
        assertEquals(
                List.of(
                        "Chest: where it sits, backwards from the front axle, to the left of the centre line, up from the ground",
                        "Crate: where it sits, up from the ground"),
                asked);
    }

    @Test
    void whatSeveralThingsLackIsAskedOnce() {
        assertEquals(
                "Each of Winch, Bar: working days it takes",
                Asked.Lacking.what(List.of("Winch", "Bar"), "working days it takes"));
        assertEquals("Winch: working days it takes", Asked.Lacking.what(List.of("Winch"), "working days it takes"));
    }

    private static String lacking(String path, String meaning) {
        return new Asked.Lacking("", List.of(new Missing(path, meaning, "a tape"))).what();
    }

    /** Not those that are on it already, or come off. */
    @Test
    void aMakerWhoMayHaveMadeSeveralIsToldWhichArePlanned() throws FaultsException {
        Advice advice = advice("fitments:\n  - {name: Soft front, kind: springs, mass: 0 kg, end: front}\n"
                + "  - {name: Soft rear, kind: springs, mass: 0 kg, end: rear}\n"
                + "  - {name: Old rear, kind: springs, mass: 0 kg, end: rear, done: yes}\n");
        Addressees addressees =
                new Addressees(advice.sheet().planned(), advice.book().tables().shopWords());
        assertEquals(List.of("Soft front", "Soft rear"), addressees.planned("the springs"));
        assertEquals(List.of(), addressees.planned("the wheels"));
        assertEquals(List.of(), addressees.planned("Soft front"));
    }

    @Test
    void whatSomebodyStandsForIsAskedNoMore() throws FaultsException {
        String heavy = "vehicle: {ratings: {gvm: 2500 kg}}\n";
        assertTrue(asks(advice(heavy), "mass.gvm-over"));
        assertFalse(asks(
                advice(heavy + "waivers: [{rule: mass.gvm-over, subject: vehicle, in: everything aboard,"
                        + " reason: for a trial, by: workshop manager, until: 2099-12-31}]\n"),
                "mass.gvm-over"));
    }

    private static boolean asks(Advice advice, String rule) {
        return Asked.of(advice).stream()
                .flatMap(one -> one.points().stream())
                .anyMatch(point -> point.finding().id().equals(rule));
    }

    @Test
    void anOpenChoiceIsAskedOfTheCustomer() throws FaultsException {
        Advice advice = advice(
                """
                fitments:
                  - {name: Steel tray, kind: other, mass: 20 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}}
                  - {name: Alloy tray, kind: other, mass: 10 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}}
                options:
                  - name: Tray
                    take: alloy
                    choices: [{name: steel, parts: [Steel tray]}, {name: alloy, parts: [Alloy tray]}]
                """);
        List<Section> letters = Letters.of(advice).report("customer").sections();
        assertEquals(1, letters.size());
        assertTrue(
                items(letters.get(0)).contains("Tray: which of these you choose: steel, alloy. The plan has alloy."));
    }

    @Test
    void aPlainSheetAsksNobody() throws FaultsException {
        assertEquals(List.of(), Asked.of(advice("title: Plain")));
    }

    /** Whose vehicle it is, what is planned and what the axles carry goes to those whom it concerns. */
    @Test
    void nobodyIsToldWhatDoesNotConcernHim() throws FaultsException {
        Advice advice = Adviser.advise(Books.engine(), Sheets.read(Sheets.scenario("touring")));
        Map<String, List<Boolean>> told = Map.of(
                "insurer", List.of(true, true, true, false),
                "engineer", List.of(true, true, true, true),
                "auto-electrician", List.of(false, false, false, false),
                "vehicle-maker", List.of(false, true, false, false),
                "customer", List.of(true, false, false, false));
        told.forEach((to, what) -> {
            String letter = text(Letters.of(advice).report(to).sections().get(0).blocks());
            assertEquals(
                    what,
                    List.of(
                            letter.contains("Varga"),
                            letter.contains("The plan: "),
                            letter.contains("wanted 3900 kg"),
                            letter.contains("wanted 1740 kg")),
                    to);
        });
    }

    /** The whole doubt about a GVM of 2530 kg, passed by 10 kg, is that of the box; the customer is asked for it, once. */
    @Test
    void whatWasPutInForTheCustomersOwnThingsIsToldAndAskedOnce() throws FaultsException {
        String box =
                "vehicle: {ratings: {gvm: 2530 kg}}\n%s: [{name: Box, %s mass: about 20 kg, at: {x: 2700 mm, y: 0 mm,"
                        + " z: 900 mm}}]\n";
        List<String> asked = items(Letters.of(advice(box.formatted("cargo", "")))
                .report("customer")
                .sections()
                .get(0));
        assertEquals(
                List.of(
                        "Box: its mass. We have put in about 20 kg; it brings most of the doubt, 100 % of that about the GVM."),
                asked.stream().filter(item -> item.startsWith("Box: ")).toList());
        Letters ofPart = Letters.of(advice(box.formatted("fitments", "kind: other,")));
        List<String> ofItsMaker = items(ofPart.report("Box").sections().get(0));
        assertTrue(
                ofItsMaker.contains(
                        "Box: its mass. We have put in about 20 kg; it brings most of the doubt, 100 % of that about the GVM."),
                ofItsMaker.toString());
        for (String other : List.of("builder", "customer")) {
            assertFalse(ofPart.report(other).sections().stream()
                    .flatMap(letter -> items(letter).stream())
                    .anyMatch(item -> item.startsWith("Box: its mass")));
        }
    }

    @Test
    void aGuessIsCalledOne() throws FaultsException {
        String over =
                "vehicle: {ratings: {gvm: 2500 kg}}\ncargo: [{name: Box, mass: %s 20 kg, at: {x: 2700 mm, y: 0 mm,"
                        + " z: 900 mm}}]\n";
        String guessed = text(Letters.of(advice(over.formatted("about")))
                .report("engineer")
                .sections()
                .get(0)
                .blocks());
        assertTrue(guessed.contains(", and in part from guesses."), guessed);
        assertTrue(guessed.contains("Where it is registered, or will be: Australia."), guessed);
        assertFalse(text(Letters.of(advice(over.formatted("")))
                        .report("engineer")
                        .sections()
                        .get(0)
                        .blocks())
                .contains("guesses"));
    }

    private static String text(List<Block> blocks) {
        StringBuilder text = new StringBuilder();
        blocks.forEach(block -> text.append(block instanceof Paragraph paragraph ? paragraph.text() : block.toString())
                .append('\n'));
        return text.toString();
    }
}
