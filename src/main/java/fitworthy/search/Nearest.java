package fitworthy.search;

import fitworthy.advice.Outcome.Key;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The plan that comes nearest to its limits where none comes within them: the best changes, joined one after the other. */
final class Nearest {

    private static final int MOST_CHANGES = 4;
    private static final int MOST_TRIED = 12;

    private final Trials trials;
    private final Set<Key> stops;

    private Nearest(Trials trials, Set<Key> stops) {
        this.trials = trials;
        this.stops = stops;
    }

    /**
     * The changes to that plan; none where no change wins anything of these stops.
     *
     * @param alone what each pull does alone
     */
    static Optional<List<Pull>> of(Trials trials, Map<Pull, RunSummary> alone, Set<Key> stops) {
        return new Nearest(trials, stops).joined(alone);
    }

    private Optional<List<Pull>> joined(Map<Pull, RunSummary> alone) {
        List<Pull> taken = List.of();
        double over = over(trials.planned());
        for (Pull next : strongest(alone)) {
            if (taken.size() < MOST_CHANGES && isOther(next, taken)) {
                List<Pull> more = new ArrayList<>(taken);
                more.add(next);
                double then = trials.run(more)
                        .filter(trials::breaksNothing)
                        .map(this::over)
                        .orElse(over);
                if (then < over) {
                    taken = more;
                    over = then;
                }
            }
        }
        return taken.isEmpty() ? Optional.empty() : Optional.of(taken);
    }

    /** What alone comes nearest, one of a thing. */
    private List<Pull> strongest(Map<Pull, RunSummary> alone) {
        Set<String> things = new HashSet<>();
        return alone.entrySet().stream()
                .filter(entry -> trials.breaksNothing(entry.getValue()))
                .sorted(Comparator.comparingDouble(entry -> over(entry.getValue())))
                .map(Map.Entry::getKey)
                .filter(pull -> things.add(pull.lever().thing()))
                .limit(MOST_TRIED)
                .toList();
    }

    private static boolean isOther(Pull next, List<Pull> taken) {
        return taken.stream()
                .noneMatch(pull -> pull.lever().thing().equals(next.lever().thing()));
    }

    /** How far the limits are passed, each as a share of how far the plan passes it. */
    private double over(RunSummary summary) {
        return stops.stream()
                .filter(summary.findings()::contains)
                .mapToDouble(key -> summary.margin(key) / trials.planned().margin(key))
                .sum();
    }
}
