package fitworthy.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.book.Book;
import fitworthy.book.Card;
import fitworthy.book.House;
import fitworthy.book.Practice;
import fitworthy.book.RuleSplit.RuleSet;
import fitworthy.engine.RuleEngine.Fired;
import fitworthy.figures.Measures;
import fitworthy.figures.measure.Measure;
import fitworthy.quantity.Figure;
import fitworthy.rules.Advised;
import fitworthy.source.Fault;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.kie.api.runtime.KieSession;

/** What fires comes in the order of the plan, whatever order the engine takes. Every card here judges mass.loaded. */
class RuleEngineTest {

    private static final String RULES = rule(
                    "a.both",
                    "$p : Practice(id == \"mass.gvm-reserve\") $a : Measure(name == \"mass.axle\")"
                            + " $m : Measure(name == \"mass.loaded\")",
                    "$p, $m, $a")
            + rule(
                    "a.again",
                    "$m : Measure(name == \"mass.loaded\") Advised(id == \"a.both\", subject == $m.subject)",
                    "$m")
            + rule("a.wrong", "$a : Measure(name == \"mass.axle\")", "$a");

    private static final Practice RESERVE =
            new Practice("mass.gvm-reserve", 0.03, "%", "what is left free", null, Optional.empty());

    private static final List<Measure> LOADS = Stream.of("c", "a", "e", "b", "d")
            .map(subject -> measure("mass.loaded", subject))
            .toList();
    private static final List<Measure> AXLES = Stream.of("front axle", "rear axle", "tag axle")
            .map(subject -> measure("mass.axle", subject))
            .toList();

    @TempDir
    private static Path folder;

    private static RuleEngine engine;

    private static String rule(String id, String condition, String evidence) {
        return "rule \"" + id + "\" when " + condition + " then advice.give(\"" + id + "\", " + evidence + "); end\n";
    }

    private static Measure measure(String name, String subject) {
        return Measure.of(Measures.kinds().get(name), subject, Figure.of(900));
    }

    @BeforeAll
    static void compiled() throws Exception {
        Book book = BooksOfOneRule.of(folder, "$m : Measure(name == \"mass.loaded\", known)", "mass.loaded")
                .book();
        Card card = book.cards().get("mass.gvm-over");
        List<Fault> faults = new ArrayList<>();
        Map<String, byte[]> compiled = RuleCompiler.compile(Map.of("a/a.drl", RULES), faults);
        assertEquals(List.of(), faults);
        engine = new RuleEngine(
                new Book(
                        book.cover(),
                        book.hash(),
                        book.regions(),
                        Map.of("a.both", card, "a.again", card, "a.wrong", card),
                        book.rules(),
                        book.practice(),
                        book.sources(),
                        book.usual(),
                        book.places(),
                        book.tables(),
                        book.usualPlaces(),
                        House.NONE),
                RuleCompiler.load(compiled));
    }

    private static List<Fired> fire(Set<String> ids, Set<String> earlier, List<Measure> measures, Advised... before) {
        Map<String, Integer> places = new HashMap<>();
        ids.forEach(id -> places.put(id, places.size()));
        return engine.fire(
                new RuleSet(List.of(), List.of(), places, Set.of(), Set.of(RESERVE), earlier, Map.of(), Map.of()),
                measures,
                List.of(before),
                Budget.Bounds.USUAL);
    }

    private static List<Measure> reversed(List<Measure> measures) {
        List<Measure> reversed = new ArrayList<>(measures);
        Collections.reverse(reversed);
        return reversed;
    }

    private static List<String> subjects(List<Fired> fired) {
        return fired.stream().map(each -> each.judged().getSubject()).toList();
    }

    @Test
    void eachThingIsFoundOnceWithTheFirstMatchInTheOrderOfTheMeasures() {
        for (List<Measure> loads : List.of(LOADS, reversed(LOADS))) {
            for (List<Measure> axles : List.of(AXLES, reversed(AXLES))) {
                for (boolean axlesFirst : new boolean[] {true, false}) {
                    List<Measure> all = Stream.of(axlesFirst ? axles : loads, axlesFirst ? loads : axles)
                            .flatMap(List::stream)
                            .toList();
                    List<Fired> fired = fire(Set.of("a.both"), Set.of(), all);
                    assertEquals(loads.size(), fired.size());
                    for (int i = 0; i < loads.size(); i++) {
                        Fired each = fired.get(i);
                        assertSame(loads.get(i), each.judged());
                        assertEquals(List.of(loads.get(i), axles.get(0)), each.measures());
                        assertEquals(List.of(RESERVE), each.practice());
                    }
                }
            }
        }
    }

    @Test
    void aRuleThatBuildsOnAdviceFindsWhatWasGivenNowOrEarlier() {
        List<Measure> all =
                Stream.concat(LOADS.stream(), AXLES.stream().limit(1)).toList();
        Set<String> both = Set.of("a.both", "a.again");
        List<Fired> fired = fire(both, Set.of(), all);
        assertEquals(
                Stream.concat(Collections.nCopies(5, "a.again").stream(), Collections.nCopies(5, "a.both").stream())
                        .toList(),
                fired.stream().map(Fired::id).toList());
        assertEquals(subjects(fired).subList(0, 5), subjects(fired).subList(5, 10));

        Set<String> again = Set.of("a.again");
        assertEquals(List.of(), fire(again, Set.of(), all), "only the rules asked for give any");
        Advised before = new Advised("a.both", "e");
        assertEquals(List.of("e"), subjects(fire(again, Set.of("a.both"), all, before)));
        assertEquals(List.of(), fire(again, Set.of(), all, before), "what none of these builds on is passed over");
    }

    /** A session left over would stay in memory with all of its facts. */
    @Test
    void aSessionIsGivenBackWhateverBecomesOfIt() {
        KieSession first = engine.sessions().newKieSession();
        first.dispose();
        fire(Set.of("a.both"), Set.of(), LOADS);
        assertSame(first, givenBack());
        RuntimeException thrown = assertThrows(RuntimeException.class, () -> fire(Set.of("a.wrong"), Set.of(), AXLES));
        Throwable cause = thrown;
        while (!(cause instanceof IllegalStateException) && cause.getCause() != null) {
            cause = cause.getCause();
        }
        assertTrue(cause.getMessage().contains("a.wrong fired without the measure it judges"), cause::toString);
        assertSame(first, givenBack());
    }

    private static KieSession givenBack() {
        KieSession next = engine.sessions().newKieSession();
        assertEquals(0, next.getFactCount(), "emptied");
        next.dispose();
        return next;
    }
}
