package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.MadeSheet;
import fitworthy.Sheets;
import fitworthy.advice.Outcome.DoesNotApply;
import fitworthy.advice.Outcome.Met;
import fitworthy.advice.Outcome.Reason;
import fitworthy.figures.measure.Measure;
import fitworthy.proof.Cases;
import fitworthy.rules.Facts;
import fitworthy.sheet.Guesses;
import fitworthy.source.FaultsException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** Each rule comes to one end on each thing that it judges, and what is passed is never called in order. */
class OutcomesTest {

    @Provide
    Arbitrary<MadeSheet> sheets() {
        return MadeSheet.any();
    }

    @Test
    void eachCaseComesToOneEnd() throws FaultsException {
        int met = 0;
        for (Cases.Case each : Books.cases()) {
            Advice advice = Adviser.advise(Books.engine().with(each.house()), each.sheet());
            holds(advice, each.toString());
            factsAgreeWithTheEngine(advice, each.toString());
            met += advice.met().size();
        }
        assertTrue(met > 10_000, "met " + met);
    }

    @Property(seed = "4711", tries = 300)
    void eachMadeSheetComesToOneEnd(@ForAll("sheets") MadeSheet sheet) throws FaultsException {
        holds(sheet.advice(), sheet.toString());
    }

    private static void holds(Advice advice, String sheet) {
        for (Met met : advice.met()) {
            assertTrue(
                    met.comparison().filter(got -> got.margin() < 0).isEmpty(),
                    () -> sheet + ": " + met.key() + " is met");
        }
        Map<Outcome.Key, Integer> ends = new HashMap<>();
        Map<String, Set<Outcome.Key>> byRule = new HashMap<>();
        advice.outcomes().forEach(outcome -> {
            ends.merge(outcome.key(), 1, Integer::sum);
            byRule.computeIfAbsent(outcome.judged().id(), none -> new HashSet<>())
                    .add(outcome.key());
        });
        ends.forEach((key, number) -> assertEquals(1, number, () -> sheet + ": " + key));
        advice.facts().forEach((loadCase, facts) -> {
            Map<String, List<Measure>> measures = measures(facts);
            advice.book().cards().forEach((id, card) -> measures.getOrDefault(card.judges(), List.of())
                    .forEach(measure -> {
                        Set<Outcome.Key> keys = byRule.getOrDefault(id, Set.of());
                        long told = Set.of("", loadCase).stream()
                                .filter(in -> keys.contains(new Outcome.Key(id, measure.getSubject(), in)))
                                .count();
                        assertEquals(1, told, () -> sheet + ": " + id + " on " + measure + " in " + loadCase);
                    }));
        });
    }

    /** What tells a guard that is off has to agree with the engine on what fires. */
    private static void factsAgreeWithTheEngine(Advice advice, String sheet) {
        Set<Outcome.Check> held = new HashSet<>();
        for (List<Object> all : advice.facts().values()) {
            Facts facts = new Facts(all);
            Map<String, List<Measure>> measures = measures(all);
            advice.book().cards().forEach((id, card) -> measures.getOrDefault(card.judges(), List.of()).stream()
                    .filter(measure -> facts.meet(advice.book().condition(id), measure))
                    .forEach(measure -> held.add(new Outcome.Check(id, measure.getSubject()))));
        }
        Set<Outcome.Check> found =
                advice.findings().stream().map(Outcome::check).collect(Collectors.toSet());
        // What the book filled in is a question, though the rule fires on it.
        advice.notAssessed().stream()
                .filter(open -> Guesses.of(advice.sheet()).containsAll(open.missing()))
                .map(Outcome::check)
                .filter(held::contains)
                .forEach(found::add);
        assertEquals(found, held, sheet);
    }

    private static Map<String, List<Measure>> measures(List<Object> facts) {
        return facts.stream()
                .filter(Measure.class::isInstance)
                .map(Measure.class::cast)
                .collect(Collectors.groupingBy(Measure::getName));
    }

    private static List<Reason> reasons(Advice advice, String rule) {
        return advice.doesNotApply().stream()
                .filter(each -> each.judged().id().equals(rule))
                .map(DoesNotApply::reason)
                .toList();
    }

    /** The wagon weighs 2520 kg: past a GVM of 2500 kg a reserve below it is no question, the stop says all. */
    @Test
    void whatIsBeyondALimitLeavesMilderRulesAside() throws FaultsException {
        Advice over = Adviser.advise(Books.engine(), Sheets.plainWith("vehicle: {ratings: {gvm: 2500 kg}}"));
        Advice within = Adviser.advise(Books.engine(), Sheets.plainWith("vehicle: {ratings: {gvm: 3000 kg}}"));
        assertEquals(List.of(Reason.SAID_ALREADY), reasons(over, "mass.gvm-tight"));
        assertEquals(List.of(), reasons(within, "mass.gvm-tight"));
    }

    /** The book says of Australia that it sets no least load on the ball in kilograms. */
    @Test
    void aRegionWithoutALimitLeavesItsRuleAside() throws FaultsException {
        Advice touring = Adviser.advise(Books.engine(), Sheets.read(Sheets.scenario("touring")));
        assertEquals(List.of(Reason.NO_SUCH_LIMIT), reasons(touring, "towing.ball-slight"));
    }
}
