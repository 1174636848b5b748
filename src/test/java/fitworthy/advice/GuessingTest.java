package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Outcome.Held;
import fitworthy.book.Severity;
import fitworthy.quantity.Missing;
import fitworthy.sheet.Guesses;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Trees;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A guess is no fact: what passes on one is told apart from what is in order, and what is found on one says so. */
class GuessingTest {

    private static final String WEEKENDER = "scenarios/weekender.yaml";

    private static Node.Mapping tree(String file) throws FaultsException {
        return Sheets.file(file);
    }

    private static Advice advise(Node.Mapping tree) throws FaultsException {
        return Adviser.advise(Books.engine(), Sheets.read(tree));
    }

    private static Node.Mapping guessed(Node.Mapping tree, String... fields) {
        for (String field : fields) {
            NodePath path = NodePath.parse(field);
            Node.Scalar value = (Node.Scalar) path.in(tree);
            tree = Trees.with(tree, path, "about " + value.text());
        }
        return tree;
    }

    private static List<String> paths(List<Missing> guesses) {
        return guesses.stream().map(Missing::path).toList();
    }

    private static Held held(Advice advice, String rule) {
        return advice.held().stream()
                .filter(held -> held.judged().id().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatIsStatedRestsOnNoGuess() throws FaultsException {
        Advice advice = advise(tree(WEEKENDER));
        assertEquals(List.of(), advice.held());
        assertEquals(Map.of(), advice.guesses());
    }

    @Test
    void aMassThatIsGuessedLeavesTheAxlesInOrderOnlyIfItHolds() throws FaultsException {
        Advice stated = advise(tree(WEEKENDER));
        Advice advice = advise(guessed(tree(WEEKENDER), "cargo.2.mass"));
        assertTrue(stated.met().stream().anyMatch(met -> met.judged().id().equals("mass.axle-over")));
        assertFalse(advice.met().stream().anyMatch(met -> met.judged().id().equals("mass.axle-over")));
        assertEquals(
                List.of("cargo.Water can.mass"),
                paths(held(advice, "mass.axle-over").guesses()));
        assertTrue(
                advice.met().stream().anyMatch(met -> met.judged().id().equals("electrical.earth-poor")),
                "what has nothing to do with the mass stays in order");
        // Whether the can is heavy enough to be asked how it is held hangs on the guess too.
        assertEquals(
                stated.met().size(),
                advice.met().size()
                        + advice.held().stream().filter(Held::arises).count());
    }

    @Test
    void anAnswerThatIsGuessedIsOneToo() throws FaultsException {
        Advice advice = advise(guessed(tree(WEEKENDER), "circuits.1.earth"));
        Held earth = held(advice, "electrical.earth-poor");
        assertEquals(List.of("circuits.Fridge.earth"), paths(earth.guesses()));
        assertTrue(earth.arises());
        assertEquals(1, advice.held().size());
    }

    /** 1050 mm of mirror beside half of 2150 mm of trailer are both the book's own; only a stated one makes a fault. */
    @Test
    void theBookAsksWhatItFilledInItselfAndFindsNoFaultWithIt() throws FaultsException {
        String towed = "trailer: {name: Van, mass: 1200 kg%s}\ncases: [{name: towing, towing: yes}]\n";
        Advice asked = advise(usual(towed.formatted("")));
        assertTrue(asked.findings().stream()
                .noneMatch(finding -> finding.judged().id().equals("mirrors.trailer-hides")));
        assertEquals(
                Set.of("trailer.width", "vehicle.view.mirrors.left.reach", "vehicle.view.mirrors.right.reach"),
                asked.notAssessed().stream()
                        .filter(open -> open.judged().id().equals("mirrors.trailer-hides"))
                        .flatMap(open -> open.missing().stream())
                        .map(Missing::path)
                        .collect(Collectors.toSet()));
        assertEquals(
                Severity.STOP,
                advise(usual(towed.formatted(", width: 2500 mm"))).worst().orElseThrow());
    }

    /** The usual rim is 17 in. */
    @Test
    void tyresFitTheWheelsThatTheBookGuesses() throws FaultsException {
        Node.Mapping other = usual("fitments: [{name: Tyres, kind: tyres, mass: 0 kg, size: 265/75R16}]\n");
        Node.Mapping alone = Trees.without(other, NodePath.parse("vehicle.tyres"));
        assertEquals(
                List.of("vehicle.wheels.diameter"),
                paths(held(advise(alone), "tyres.rim-differs").guesses()));
        assertEquals(Severity.STOP, advise(other).worst().orElseThrow(), "on wheels that had tyres of 17 in");
    }

    private static Node.Mapping usual(String more) {
        return Sheets.treeWith("assume-usual: yes\n" + more);
    }

    @Test
    void aFindingOnAGuessNamesIt() throws FaultsException {
        Node.Mapping overloaded = tree("scenarios/overloaded.yaml");
        Advice stated = advise(overloaded);
        Advice advice = advise(guessed(overloaded, "vehicle.ratings.rear-axle"));
        assertEquals(stated.findings().size(), advice.findings().size());
        assertEquals(stated.worst(), advice.worst());
        Outcome.Key key = advice.findings().stream()
                .filter(finding -> finding.judged().id().equals("mass.axle-over"))
                .findFirst()
                .orElseThrow()
                .key();
        assertEquals(
                List.of("vehicle.ratings.rear-axle"), paths(advice.guesses().get(key)));
    }

    @Test
    void whatAFindingSaysAlreadyDoesNotHangOnTheGuess() throws FaultsException {
        Advice advice = advise(
                guessed(tree("scenarios/overloaded.yaml"), "vehicle.ratings.rear-axle", "vehicle.mass.rear-axle"));
        List<Held> axles = advice.held().stream()
                .filter(held -> held.judged().id().equals("mass.axle-unsure"))
                .toList();
        assertTrue(axles.stream().allMatch(Held::arises), axles::toString);
        assertFalse(Arrangement.of(advice).margins().isEmpty());
    }

    @Test
    void aQuestionThatAGuessPutsAwayIsNoPass() throws FaultsException {
        Advice advice = advise(
                Trees.with(tree("scenarios/touring.yaml"), NodePath.parse("vehicle.stability-control"), "about no"));
        Held off = held(advice, "suspension.stability-control");
        assertFalse(off.arises());
        assertEquals(List.of("vehicle.stability-control"), paths(off.guesses()));
    }

    @ParameterizedTest
    @CsvSource({"ask", "unknown"})
    void whatWasAskedIsMissingAndSaysSo(String word) throws FaultsException {
        Advice advice = advise(Trees.with(tree(WEEKENDER), NodePath.parse("circuits.1.earth"), word));
        Missing earth = advice.notAssessed().stream()
                .flatMap(open -> open.missing().stream())
                .filter(missing -> missing.path().equals("circuits.Fridge.earth"))
                .findFirst()
                .orElseThrow();
        assertTrue(earth.asked());
        Advice leftOut = advise(Trees.without(tree(WEEKENDER), NodePath.parse("circuits.1.earth")));
        assertEquals(leftOut.notAssessed().size(), advice.notAssessed().size());
        assertEquals(leftOut.met().size(), advice.met().size());
    }

    /** Each figure and answer in turn: nothing that a guess decides is called in order. */
    @ParameterizedTest
    @CsvSource({"scenarios/weekender.yaml", "scenarios/overloaded.yaml"})
    void whateverIsGuessed(String file) throws FaultsException {
        Node.Mapping whole = tree(file);
        Advice stated = advise(whole);
        int tried = 0;
        for (NodePath field : scalars(whole, NodePath.TOP)) {
            Advice advice;
            try {
                advice = advise(guessed(whole, field.toString()));
            } catch (FaultsException words) {
                continue; // A text or a day is no figure.
            }
            if (Guesses.of(advice.sheet()).isEmpty()) {
                continue;
            }
            tried++;
            Advice without = Adviser.advise(Books.engine(), Guesses.leftOut(advice.sheet(), guess -> true));
            Set<Outcome.Key> sure = without.met().stream().map(Outcome::key).collect(Collectors.toSet());
            advice.met().forEach(met -> assertTrue(sure.contains(met.key()), () -> field + " decides " + met.key()));
            String text = ((Node.Scalar) field.in(whole)).text();
            if (text.contains("+/-") || !text.matches("[-0-9].*")) {
                assertEquals(keys(stated.findings()), keys(advice.findings()), field::toString);
            }
        }
        assertTrue(tried > 60, "tried " + tried);
    }

    private static List<NodePath> scalars(Node node, NodePath path) {
        if (node instanceof Node.Mapping mapping) {
            return mapping.entries().entrySet().stream()
                    .flatMap(entry -> scalars(entry.getValue().value(), path.to(entry.getKey())).stream())
                    .toList();
        }
        if (node instanceof Node.Listing listing) {
            return IntStream.range(0, listing.items().size())
                    .boxed()
                    .flatMap(i -> scalars(listing.items().get(i), path.to(i + 1)).stream())
                    .toList();
        }
        return node instanceof Node.Scalar ? List.of(path) : List.of();
    }

    private static List<String> keys(List<? extends Outcome> outcomes) {
        return outcomes.stream()
                .map(outcome -> outcome.key().toString())
                .sorted()
                .toList();
    }
}
