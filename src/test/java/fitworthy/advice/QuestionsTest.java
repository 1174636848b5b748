package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Question.State;
import fitworthy.book.Party;
import fitworthy.book.Severity;
import fitworthy.printout.QuestionWords;
import fitworthy.quantity.Missing;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Trees;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is asked first is what can turn most. */
class QuestionsTest {

    /** The plain wagon weighs 2520 kg as it is driven; with the box 2620 kg, of which 15 kg are in doubt. */
    private static final String BOX =
            """
            vehicle: {ratings: {gvm: %s}}
            cargo: [{name: Box, secured: yes, mass: about 100 kg, at: {x: 1425 mm, y: 0 mm, z: 900 mm}}]
            """;

    private static Questions of(Node.Mapping tree) throws FaultsException {
        return Questions.of(Books.engine(), Adviser.advise(Books.engine(), Sheets.read(tree)));
    }

    private static Questions of(String changes) throws FaultsException {
        return of(Sheets.treeWith(changes));
    }

    private static List<String> fields(Questions questions) {
        return questions.questions().stream()
                .map(question -> question.figure().field())
                .toList();
    }

    private static Question only(Questions questions) {
        assertEquals(1, questions.questions().size(), () -> fields(questions).toString());
        return questions.questions().get(0);
    }

    @Test
    void aPlainSheetAsksNothing() throws FaultsException {
        assertEquals(List.of(), of("title: Plain").questions());
    }

    @Test
    void aGuessTurnsWhatItsSpreadReaches() throws FaultsException {
        Question reaches = only(of(BOX.formatted("2634 kg")));
        assertEquals("cargo.Box.mass", reaches.figure().field());
        assertEquals(State.GUESSED, reaches.state());
        assertTrue(reaches.turns().rules().contains("mass.gvm-over"), "2620 kg + 15 kg are above 2634 kg");
        assertEquals(1, reaches.turns().count(Severity.STOP));
        assertEquals("mass.gvm-over", reaches.turns().worst().orElseThrow().id());
        assertEquals(Party.CUSTOMER, reaches.ask(), "who has his own things at home weighs them");
    }

    @Test
    void aGuessDoesNotTurnWhatIsBeyondItsSpread() throws FaultsException {
        Question kept = only(of(BOX.formatted("2636 kg")));
        assertFalse(kept.turns().rules().contains("mass.gvm-over"), "2620 kg + 15 kg are below 2636 kg");
        assertTrue(kept.figure().rules().contains("mass.gvm-over"), "it rests on it all the same");
        assertTrue(only(of(BOX.formatted("2900 kg"))).turns().isNothing());
    }

    @Test
    void theSpreadThatIsGivenCounts() throws FaultsException {
        String sure = BOX.replace("about 100 kg", "about 100 kg +/- 4 kg");
        assertTrue(only(of(sure.formatted("2623 kg"))).turns().rules().contains("mass.gvm-over"));
        assertFalse(only(of(sure.formatted("2625 kg"))).turns().rules().contains("mass.gvm-over"));
        assertTrue(only(of(sure.formatted("2617 kg"))).turns().rules().contains("mass.gvm-over"), "3 kg too much");
    }

    @Test
    void aGuessedAnswerTurnsWhatAnotherOneDoes() throws FaultsException {
        Node.Mapping weekender = Sheets.scenario("weekender");
        NodePath earth = NodePath.find("circuits.Fridge.earth", weekender);
        Question question =
                only(of(Trees.with(weekender, earth, "about " + ((Node.Scalar) earth.in(weekender)).text())));
        assertEquals(List.of("circuits.Fridge.earth"), question.paths());
        assertEquals(Set.of("electrical.earth-poor"), question.turns().rules());
    }

    @Test
    void aGuessedAnswerTurnsNothingWhereTheOtherOneIsInOrderToo() throws FaultsException {
        Question question = only(of("vehicle: {engine: {water-separator: about yes}}"));
        assertEquals(Set.of("fuel.separator-missing"), question.figure().rules());
        assertTrue(question.turns().isNothing(), "300 km between two stops are within the 400 km that need none");
    }

    @Test
    void aStopComesBeforeAChangeAndWhatTurnsNothingLast() throws FaultsException {
        Node.Mapping tree = Sheets.treeWith(BOX.formatted("2900 kg"));
        tree = Trees.without(tree, NodePath.parse("vehicle.ratings.rear-axle"));
        tree = Trees.with(tree, NodePath.parse("vehicle.engine.water-separator"), "ask");
        Questions questions = of(tree);
        assertEquals(
                List.of("vehicle.ratings.rear-axle", "vehicle.engine.water-separator", "cargo.Box.mass"),
                fields(questions));
        assertEquals(
                List.of(State.MISSING, State.ASKED, State.GUESSED),
                questions.questions().stream().map(Question::state).toList());
        assertTrue(questions.questions().get(0).turns().count(Severity.STOP) > 0);
        assertEquals(0, questions.questions().get(1).turns().count(Severity.STOP));
    }

    /** It is no load of a battery, so that nobody has to know how long it runs and what it draws standing. */
    @Test
    void ofWhatHangsOnShoreNobodyIsAskedForBatteryInverterOrHours() throws FaultsException {
        String heater =
                "circuits: [{name: Heater, voltage: 240 V, current: 15 A, need: other, mains-work: plugged-in%s}]";
        assertEquals(List.of(), fields(of(heater.formatted(", battery: shore"))));
        assertEquals(List.of(), fields(of(heater.formatted(", battery: generator"))));
        assertTrue(fields(of(heater.formatted(""))).contains("circuits.Heater.battery"), "nobody says what feeds it");
    }

    @Test
    void whatTheBookLacksIsAskedOfNobody() throws FaultsException {
        Node.Mapping touring = Sheets.scenario("touring");
        Questions questions = of(Trees.with(touring, NodePath.of("region"), "uk"));
        assertFalse(questions.gaps().isEmpty());
        assertFalse(questions.questions().isEmpty());
        questions.gaps().forEach(gap -> assertTrue(gap.missing().isInBook(), gap.field()));
        questions
                .questions()
                .forEach(question -> assertFalse(
                        question.figure().missing().isInBook(),
                        question.figure().field()));
    }

    /** Each place where one looks, with whoever is nearest to it. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "vehicle.ratings.gvm | the handbook | CUSTOMER",
                "trip.days | the route | CUSTOMER",
                "trip.people | whoever carries them | CUSTOMER",
                "vehicle.registered | the registration papers | CUSTOMER",
                "fitments.Winch.pull | the maker's data sheet | PART_MAKER",
                "vehicle.ratings.tows | the maker | VEHICLE_MAKER",
                "trailer.levelling | the maker, or a look | TRAILER_MAKER",
                "vehicle.tyres.most | the tyre maker's load table | TYRE_FITTER",
                "fitments.Kit.approval | the kit's approval papers | PART_MAKER",
                "papers.delivery | the dealer | DEALER",
                "papers.certificates.Paper.covers | whoever issues it | ENGINEER",
                "vehicle.wheelbase | a tape | BUILDER",
                "cargo.Box.mass | a scale | CUSTOMER",
                "cargo.Box.at | a tape | BUILDER",
                "fitments.Winch.mass | a scale, or the maker's data sheet | BUILDER",
                "vehicle.ratings.gvm | the maker's plate, or the handbook | BUILDER"
            })
    void whoIsAskedIsWhoKnows(String path, String find, Party party) {
        assertEquals(party, Finder.of(new Missing(path, "", find)));
    }

    @Test
    void ofAsMuchTheOrderOfTheSheetDecides() throws FaultsException {
        Node.Mapping tree = Sheets.treeWith("title: Plain");
        for (String path : List.of("vehicle.ratings.front-axle", "vehicle.ratings.rear-axle")) {
            tree = Trees.without(tree, NodePath.parse(path));
        }
        assertEquals(List.of("vehicle.ratings.front-axle", "vehicle.ratings.rear-axle"), fields(of(tree)));
    }

    @Test
    void anAnswerSettlesWhatWaitedForIt() throws FaultsException {
        Node.Mapping tree = Sheets.treeWith(BOX.formatted("2634 kg"));
        NodePath mass = NodePath.find("cargo.Box.mass", tree);
        Settled inOrder = settled(tree, mass, "100 kg +/- 1 kg");
        assertTrue(inOrder.inOrder().rules().contains("mass.gvm-over"));
        assertFalse(inOrder.found().rules().contains("mass.gvm-over"));
        assertTrue(inOrder.raised().isNothing());
        Settled over = settled(tree, mass, "120 kg +/- 1 kg");
        assertTrue(over.found().rules().contains("mass.gvm-over"));
        assertFalse(over.inOrder().rules().contains("mass.gvm-over"));
        assertEquals(Stakes.NONE, settled(tree, mass, "about 100 kg").found());
        assertTrue(settled(Trees.with(tree, mass, "120 kg"), mass, "100 kg")
                .cleared()
                .rules()
                .contains("mass.gvm-over"));
        NodePath rating = NodePath.parse("vehicle.ratings.rear-axle");
        assertTrue(settled(Trees.with(tree, mass, "100 kg"), rating, "ask")
                .raised()
                .rules()
                .contains("mass.axle-over"));
    }

    @Test
    void whatChangesWithAnAnswerIsSaidThoughNothingIsSettled() throws FaultsException {
        Node.Mapping tree = Sheets.treeWith(BOX.formatted("2634 kg"));
        NodePath mass = NodePath.find("cargo.Box.mass", tree);
        Settled made = settled(Trees.with(tree, mass, "ask"), mass, "about 100 kg +/- 40 kg");
        assertTrue(made.made().rules().contains("mass.gvm-over"));
        assertFalse(made.inOrder().rules().contains("mass.gvm-over"));
        assertTrue(QuestionWords.settled(made).contains("waited for information"), QuestionWords.settled(made));
        Settled found = settled(Trees.with(tree, mass, "about 10 kg"), mass, "about 900 kg");
        assertTrue(found.foundOnGuess().rules().contains("mass.gvm-over"));
        assertFalse(found.made().rules().contains("mass.gvm-over"));
        assertFalse(QuestionWords.settled(found).contains("settles no check"), QuestionWords.settled(found));
        assertTrue(
                QuestionWords.lines(found).stream()
                        .anyMatch(line -> line.startsWith("Stop, on a guess: ") && line.endsWith("(mass.gvm-over)")),
                QuestionWords.lines(found).toString());
        Settled cleared = settled(Trees.with(tree, mass, "900 kg"), mass, "10 kg");
        assertEquals(0, cleared.count());
        assertTrue(cleared.cleared().rules().contains("mass.gvm-over"));
        assertTrue(QuestionWords.settled(cleared).startsWith("It changes what "), QuestionWords.settled(cleared));
        assertEquals("It settles no check by itself.", QuestionWords.settled(settled(tree, mass, "about 100 kg")));
    }

    @Test
    void ofTwoAnswersThatACheckLacksTheFirstIsToldToBeOneFewer() throws FaultsException {
        Node.Mapping tree = Sheets.treeWith(BOX.formatted("2634 kg"));
        NodePath mass = NodePath.find("cargo.Box.mass", tree);
        NodePath gvm = NodePath.parse("vehicle.ratings.gvm");
        Node.Mapping both = Trees.with(Trees.with(tree, mass, "ask"), gvm, "ask");
        Settled one = settled(both, gvm, "2634 kg");
        assertEquals(1, one.fewerMissing());
        assertEquals(-1, settled(Trees.with(both, gvm, "2634 kg"), gvm, "ask").fewerMissing());
    }

    private static Settled settled(Node.Mapping tree, NodePath path, String answer) throws FaultsException {
        return Settled.of(
                Adviser.advise(Books.engine(), Sheets.read(tree)),
                Adviser.advise(Books.engine(), Sheets.read(Trees.with(tree, path, answer))));
    }

    /** Of more guesses than are tried, all that rests on one counts: never less than it can turn. */
    @Test
    void ofAHundredGuessesNoneTurnsMoreThanItsShareOfTheSpread() throws FaultsException {
        List<String> boxes = new ArrayList<>();
        for (int i = 1; i <= 100; i++) {
            boxes.add("{name: Box %d, mass: about 2 kg, at: {x: 1425 mm, y: 0 mm, z: 900 mm}}".formatted(i));
        }
        Questions questions = of("cargo: " + boxes);
        assertEquals(100, questions.questions().size());
        // Of those that are no longer tried their share of the spread tells, that they turn less too.
        questions
                .questions()
                .forEach(question ->
                        assertFalse(question.turns().rules().contains("mass.gvm-over"), () -> question.figure()
                                .field()));
        assertTrue(questions.questions().stream()
                .allMatch(question -> question.turns().checks().size()
                        < question.figure().stakes().checks().size()));
    }
}
