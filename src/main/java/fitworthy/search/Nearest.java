package fitworthy.search;

import fitworthy.advice.Outcome.Key;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The plan that comes nearest to its limits where none comes within them, of those tried: the best change, and to it one
 * after the other that which comes nearest with those before.
 */
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
        List<Pull> strongest = strongest(alone);
        List<Pull> taken = List.of();
        double over = over(trials.planned());
        while (taken.size() < MOST_CHANGES) {
            Map<List<Pull>, Double> nearer = nearer(taken, strongest);
            Optional<List<Pull>> nearest = nearer.keySet().stream().min(Comparator.comparingDouble(nearer::get));
            if (nearest.isEmpty() || nearer.get(nearest.get()) >= over) {
                break;
            }
            taken = nearest.get();
            over = nearer.get(taken);
        }
        return taken.isEmpty() ? Optional.empty() : Optional.of(taken);
    }

    /** How far the limits are passed with each further change that together with those before it breaks nothing. */
    private Map<List<Pull>, Double> nearer(List<Pull> taken, List<Pull> further) {
        List<List<Pull>> joined = further.stream()
                .filter(next -> isOther(next, taken))
                .map(next -> Stream.concat(taken.stream(), Stream.of(next)).toList())
                .toList();
        joined.parallelStream().forEach(trials::run);
        Map<List<Pull>, Double> nearer = new LinkedHashMap<>();
        joined.forEach(pulls ->
                trials.run(pulls).filter(trials::breaksNothing).ifPresent(then -> nearer.put(pulls, over(then))));
        return nearer;
    }

    /** What alone comes nearest, one of a thing; what passes another limit by it may not do so beside others. */
    private List<Pull> strongest(Map<Pull, RunSummary> alone) {
        Set<String> things = new HashSet<>();
        return alone.entrySet().stream()
                .filter(entry -> entry.getValue().opensNothing(trials.planned()))
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
