package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.DoesNotApply;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.book.House;
import fitworthy.book.Practice;
import fitworthy.engine.RuleEngine;
import fitworthy.figures.measure.Measure;
import fitworthy.proof.Cases;
import fitworthy.sheet.Sheet;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Trees;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * An advice that builds on that of another sheet says just what it says by itself, however unlike the two sheets are:
 * each sheet of the book after another, and the touring sheet after edits of it. {@code mvn test
 * -Dtest=AdviceAfterAnotherTest -Dafter.pairs=20000} goes through so many sheets, and as many edits by half.
 */
class AdviceAfterAnotherTest {

    private static final int PAIRS = Integer.getInteger("after.pairs", 300);
    private static final int EDITS = PAIRS / 6;

    private final Random random = new Random(4711);

    @Test
    void eachSheetOfTheBookComesOutAfterAnotherAsByItself() throws FaultsException {
        RuleEngine engine = Books.engine();
        List<Sheet> sheets = new ArrayList<>();
        for (Cases.Case each : Books.cases()) {
            if (each.house().equals(House.NONE)) {
                sheets.add(each.sheet());
            }
        }
        assertTrue(sheets.size() > 1500, String.valueOf(sheets.size()));
        Map<List<Object>, Advice> last = new HashMap<>();
        int built = 0;
        for (int i = 0; built < PAIRS; i++) {
            if (i % sheets.size() == 0) {
                Collections.shuffle(sheets, random);
            }
            Sheet sheet = sheets.get(i % sheets.size());
            List<Object> book = List.of(sheet.region(), sheet.asOf());
            Advice before = last.get(book);
            built += before == null ? 0 : 1;
            last.put(book, before == null ? Adviser.advise(engine, sheet) : same(engine, sheet, before));
        }
    }

    @Test
    void anEditedSheetComesOutAfterTheOneBeforeAsByItself() throws FaultsException {
        RuleEngine engine = Books.engine();
        for (String name : List.of("touring", "overloaded", "weekender")) {
            Node.Mapping whole = Sheets.scenario(name);
            List<NodePath> fields = Sheets.scalars(whole, NodePath.TOP);
            Node.Mapping tree = whole;
            Advice before = Adviser.advise(engine, Sheets.read(whole));
            int kept = 0;
            for (int i = 0; i < EDITS; i++) {
                NodePath field = fields.get(random.nextInt(fields.size()));
                // Each third edit begins again from the whole sheet, so that what is asked does not grow without end.
                Node.Mapping edited = Trees.with(i % 3 == 0 ? whole : tree, field, i % 2 == 0 ? "ask" : "about 77 kg");
                try {
                    Advice after = same(engine, Sheets.read(edited), before);
                    kept += after.runs().alike().run().size()
                                    < after.runs().alike().rules().ids().size()
                            ? 1
                            : 0;
                    before = after;
                    tree = edited;
                } catch (FaultsException e) {
                    // Not every field can be asked for.
                }
            }
            // Else nothing was held against anything.
            assertTrue(kept > EDITS / 10, name + ": " + kept);
        }
    }

    @Test
    void anotherRegionOrDayStandsByItself() throws FaultsException {
        RuleEngine engine = Books.engine();
        Advice before = Adviser.advise(engine, Sheets.read(Sheets.scenario("touring")));
        for (Map.Entry<String, String> other :
                Map.of("region", "uk", "as-of", "2021-01-01").entrySet()) {
            Advice after = same(
                    engine,
                    Sheets.read(Trees.with(Sheets.scenario("touring"), NodePath.of(other.getKey()), other.getValue())),
                    before);
            assertEquals(
                    after.runs().alike().rules().ids(), after.runs().alike().run());
        }
    }

    private static Advice same(RuleEngine engine, Sheet sheet, Advice before) {
        Advice after = Adviser.advise(engine, sheet, before);
        assertEquals(told(Adviser.advise(engine, sheet)), told(after));
        return after;
    }

    /** All that an advice says, with how each figure was worked out. */
    private static String told(Advice advice) {
        List<String> lines = new ArrayList<>();
        advice.outcomes().forEach(outcome -> lines.add(told(outcome) + advice.restsOn(outcome)));
        advice.waivers().forEach(waiver -> lines.add(waiver.toString()));
        advice.facts().forEach((loading, facts) -> {
            Set<Object> once = Collections.newSetFromMap(new IdentityHashMap<>());
            once.addAll(facts);
            lines.add(loading + ": " + once.size());
            facts.forEach(fact -> lines.add(fact instanceof Measure measure ? told(measure) : fact.toString()));
        });
        advice.measures().values().forEach(measures -> measures.forEach(measure -> lines.add(told(measure))));
        return String.join("\n", lines);
    }

    private static String told(Outcome outcome) {
        String judged = outcome.getClass().getSimpleName() + " " + outcome.key() + " "
                + told(outcome.judged().measure());
        if (outcome instanceof Assessed assessed) {
            judged += assessed.evidence().stream()
                            .map(AdviceAfterAnotherTest::told)
                            .toList()
                    + ids(assessed.practice());
        }
        if (outcome instanceof Finding finding) {
            judged += finding.waiver();
        } else if (outcome instanceof NotAssessed open) {
            judged += open.missing();
        } else if (outcome instanceof DoesNotApply off) {
            judged += off.reason() + ids(off.practice());
        }
        return judged;
    }

    private static String ids(List<Practice> practice) {
        return practice.stream().map(Practice::id).toList().toString();
    }

    private static String told(Measure measure) {
        return measure + " " + measure.missing()
                + Stream.of(measure.workings())
                        .flatMap(List::stream)
                        .flatMap(working -> working.lines().stream())
                        .collect(Collectors.joining("; "));
    }
}
