package fitworthy.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Sheets;
import fitworthy.advice.Adviser;
import fitworthy.sheet.Sheet;
import fitworthy.source.Fault;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A rule that would run away is stopped and named. The parser passes none that loops, so the looping one here was
 * compiled without it.
 */
class BudgetTest {

    private static final long FOREVER = Long.MAX_VALUE;

    @TempDir
    private Path folder;

    private static Sheet plain() throws Exception {
        return Sheets.plainWith("title: plain");
    }

    private String stopped(RuleEngine engine, Budget.Bounds bounds) throws Exception {
        Sheet sheet = plain();
        Fault fault = assertThrows(BudgetExceeded.class, () -> Adviser.advise(engine, sheet, Set.of(), bounds))
                .fault();
        assertEquals(folder.resolve("rules/mass/mass.drl") + ":1", fault.place().toString());
        assertTrue(fault.problem().startsWith("the rule 'mass.gvm-over' "), fault::toString);
        return fault.problem().substring("the rule 'mass.gvm-over' ".length());
    }

    @Test
    void aRuleThatFeedsOnItselfIsStoppedByFiringsOrByTime() throws Exception {
        RuleEngine engine = BooksOfOneRule.unparsed(folder, "update($m);");
        assertEquals(
                "does not come to rest: with it the rules fired more than 1000 times",
                stopped(engine, new Budget.Bounds(1000, FOREVER, FOREVER)));
        assertEquals(
                "does not come to rest: with it the rules took more than 0.0 s",
                stopped(engine, new Budget.Bounds(Integer.MAX_VALUE, 0, FOREVER)));
        assertEquals(
                "does not come to rest: with it the rules took more than 0.1 s",
                stopped(engine, new Budget.Bounds(Integer.MAX_VALUE, 100_000_000, FOREVER)));
        assertTrue(stopped(engine, Budget.Bounds.USUAL).startsWith("does not come to rest"));
    }

    /** One loaded mass and two axles seven times over: 128 combinations. */
    @Test
    void aRuleThatMultipliesItsMeasuresIsStoppedBeforeItBegins() throws Exception {
        RuleEngine engine = BooksOfOneRule.of(
                folder,
                "    $m : Measure(name == \"mass.loaded\", known)\n"
                        + "    Measure(name == \"mass.axle\", known)\n".repeat(7),
                "mass.loaded, mass.axle");
        assertEquals(
                "would look at more than 127 combinations of measures",
                stopped(engine, new Budget.Bounds(Integer.MAX_VALUE, FOREVER, 127)));
        assertEquals(
                1,
                Adviser.advise(engine, plain(), Set.of(), new Budget.Bounds(Integer.MAX_VALUE, FOREVER, 128))
                        .findings()
                        .size());
    }

    @Test
    void theFiringsAllowedMayAllBeUsed() throws Exception {
        RuleEngine engine =
                BooksOfOneRule.of(folder, "    $m : Measure(name == \"mass.loaded\", known)", "mass.loaded");
        assertEquals(
                1,
                Adviser.advise(engine, plain(), Set.of(), new Budget.Bounds(1, FOREVER, 1))
                        .findings()
                        .size());
        assertTrue(stopped(engine, new Budget.Bounds(0, FOREVER, 1)).contains("fired more than 0 times"));
    }
}
