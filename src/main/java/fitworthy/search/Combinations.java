package fitworthy.search;

import fitworthy.advice.Outcome.Key;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * What levers do to the watched limits together, added up as if none knew of the others. Masses and moments nearly add
 * so, which tells the combinations that are worth a run.
 */
final class Combinations {

    /** Combinations kept of one size, those that give up least. */
    private static final int MOST = 2000;
    /**
     * Gains of levers pulled alone need not add up exactly; a combination may fall short by this share of what they
     * move.
     */
    private static final double SLACK = 0.05;

    /** Pulls that may clear everything watched together. @param number in the order in which they were put together */
    record Combination(List<Pull> pulls, double kilograms, long number) {

        /** What is changed and how, but not how far. */
        static Set<String> things(List<Pull> pulls) {
            Set<String> things = new HashSet<>();
            pulls.forEach(pull -> things.add(pull.lever().thing()
                    + pull.change().getClass().getSimpleName()
                    + (pull.isWhole() ? pull.change().words() : "")));
            return things;
        }

        /** What is given up however far its levers are set back. */
        double least() {
            return pulls.stream()
                    .filter(Pull::isWhole)
                    .mapToDouble(Pull::kilograms)
                    .sum();
        }
    }

    private final SearchLimit limit;
    private final List<Pull> pulls;
    private final double[] before;
    private final Map<Pull, double[]> gains = new HashMap<>();
    private final double[] most;

    /**
     * @param watched the limits
     * @param alone what each of the pulls does alone, and perhaps others
     * @param planned the plan without changes
     * @param left what is left of a limit there, all of it or what is sure
     */
    Combinations(
            List<Pull> pulls,
            List<Key> watched,
            Map<Pull, RunSummary> alone,
            RunSummary planned,
            ToDoubleFunction<Key> left,
            SearchLimit limit) {
        this.limit = limit;
        this.pulls = pulls;
        this.before = watched.stream().mapToDouble(left).toArray();
        this.most = new double[before.length];
        for (Pull pull : pulls) {
            double[] gain = watched.stream()
                    .mapToDouble(key -> alone.get(pull).gain(planned, key))
                    .toArray();
            gains.put(pull, gain);
            for (int i = 0; i < gain.length; i++) {
                most[i] = Math.max(most[i], gain[i]);
            }
        }
    }

    /** Combinations of a size that may clear everything watched, what gives up least first. */
    List<Combination> ofSize(int size) {
        Comparator<Combination> least =
                Comparator.comparingDouble(Combination::kilograms).thenComparingLong(Combination::number);
        PriorityQueue<Combination> kept = new PriorityQueue<>(least.reversed());
        add(size, 0, new ArrayList<>(), before.clone(), new double[before.length], kept, new long[1]);
        return kept.stream().sorted(least).collect(Collectors.toCollection(ArrayList::new));
    }

    /**
     * The step at which the sums let a lever just be enough.
     *
     * @param full the pulls whose gains were taken
     * @param mild how far they are pulled now
     * @param lever which of them is to be set back
     */
    int needed(List<Pull> full, List<Pull> mild, int lever) {
        double share = 0;
        double[] gain = gains.get(full.get(lever));
        for (int k = 0; k < before.length; k++) {
            double rest = before[k];
            for (int j = 0; j < full.size(); j++) {
                rest += j == lever
                        ? 0
                        : gains.get(full.get(j))[k]
                                * mild.get(j).step()
                                / full.get(j).step();
            }
            if (gain[k] > 0 && -rest / gain[k] > share) {
                share = -rest / gain[k];
            }
        }
        return (int) Math.ceil(Math.min(share, 1) * full.get(lever).step());
    }

    /**
     * Each lever with steps set back as far as the test still passes. Sums guess where that is, which in most cases
     * spares a search; the test decides.
     */
    List<Pull> weakened(List<Pull> pulls, Predicate<List<Pull>> passes) {
        List<Pull> mild = new ArrayList<>(pulls);
        for (int i = 0; i < mild.size(); i++) {
            int low = 0;
            int high = mild.get(i).step();
            int next = needed(pulls, mild, i);
            for (boolean first = true; high - low > 1; first = false) {
                int step = Math.min(Math.max(next, low + 1), high - 1);
                List<Pull> trial = new ArrayList<>(mild);
                trial.set(i, mild.get(i).at(step));
                boolean enough = passes.test(trial);
                if (enough) {
                    high = step;
                } else {
                    low = step;
                }
                next = !first ? (low + high) / 2 : enough ? step - 1 : step + 1;
            }
            mild.set(i, mild.get(i).at(high));
        }
        return mild;
    }

    private void add(
            int size,
            int from,
            List<Pull> taken,
            double[] left,
            double[] moved,
            PriorityQueue<Combination> kept,
            long[] number) {
        int more = size - taken.size();
        for (int i = 0; i < left.length; i++) {
            double reach = more == 0 ? 0 : more * most[i];
            if (left[i] + reach < -SLACK * (moved[i] + reach)) {
                return;
            }
        }
        if (more == 0) {
            kept.add(new Combination(
                    List.copyOf(taken),
                    taken.stream().mapToDouble(Pull::kilograms).sum(),
                    number[0]++));
            if (kept.size() > MOST) {
                kept.poll();
                limit.leaveOut();
            }
            return;
        }
        for (int i = from; i < pulls.size() && !(more > 1 && limit.reached()); i++) {
            Pull next = pulls.get(i);
            if (taken.stream()
                    .noneMatch(
                            other -> other.lever().thing().equals(next.lever().thing()))) {
                double[] gain = gains.get(next);
                double[] then = left.clone();
                double[] far = moved.clone();
                for (int k = 0; k < then.length; k++) {
                    then[k] += gain[k];
                    far[k] += Math.abs(gain[k]);
                }
                taken.add(next);
                add(size, i + 1, taken, then, far, kept, number);
                taken.remove(taken.size() - 1);
            }
        }
    }
}
