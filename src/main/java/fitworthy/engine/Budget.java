package fitworthy.engine;

import fitworthy.book.Book;
import fitworthy.book.EffectiveRule;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.kie.api.runtime.rule.AgendaFilter;
import org.kie.api.runtime.rule.Match;

/**
 * Keeps the rules of one load case within bounds. What {@code RuleParser} passes comes to rest and is quick; this is
 * for what nobody has thought of. Once a bound is reached nothing fires any more, and {@link #check} says which rule it
 * was.
 */
public final class Budget implements AgendaFilter {

    /**
     * Bounds far above what any sheet needs.
     *
     * @param firings of all rules together
     * @param nanos time of all rules together
     * @param combinations of measures that one rule may look at
     */
    public record Bounds(int firings, long nanos, long combinations) {
        public static final Bounds USUAL = new Bounds(100_000, 30_000_000_000L, 1_000_000);
    }

    private final Bounds bounds;
    private final Map<String, Integer> firings = new HashMap<>();
    private final long start = System.nanoTime();
    private int all;
    private String reached = "";

    public Budget(Bounds bounds) {
        this.bounds = bounds;
    }

    /** Stops before the session does anything, where a rule would multiply too many measures with each other. */
    public void combinations(List<EffectiveRule> rules, List<Measure> measures) {
        Map<MeasureKind, Integer> counts = new IdentityHashMap<>();
        measures.forEach(measure -> counts.merge(measure.kind(), 1, Integer::sum));
        for (EffectiveRule rule : rules) {
            double combinations = 1;
            for (MeasureKind kind : rule.joined()) {
                combinations *= counts.getOrDefault(kind, 0);
            }
            if (combinations > bounds.combinations()) {
                throw new BudgetExceeded(
                        rule.text(), "would look at more than " + bounds.combinations() + " combinations of measures");
            }
        }
    }

    @Override
    public boolean accept(Match match) {
        firings.merge(match.getRule().getName(), 1, Integer::sum);
        all++;
        if (reached.isEmpty() && all > bounds.firings()) {
            reached = "does not come to rest: with it the rules fired more than " + bounds.firings() + " times";
        } else if (reached.isEmpty() && System.nanoTime() - start > bounds.nanos()) {
            reached = String.format(
                    Locale.ROOT,
                    "does not come to rest: with it the rules took more than %.1f s",
                    bounds.nanos() / 1e9);
        }
        return reached.isEmpty();
    }

    /** @throws BudgetExceeded with the rule that fired most, where a bound was reached */
    public void check(Book book) {
        if (!reached.isEmpty()) {
            String most = firings.entrySet().stream()
                    .max(Map.Entry.comparingByValue())
                    .orElseThrow()
                    .getKey();
            throw new BudgetExceeded(book.rules().get(most), reached);
        }
    }
}
