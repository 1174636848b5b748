package fitworthy.search;

import fitworthy.advice.Advice;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Key;
import fitworthy.book.Severity;
import fitworthy.engine.RuleEngine;
import fitworthy.quantity.Figure;
import fitworthy.search.Combinations.Combination;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Prices;
import fitworthy.sheet.Sheet;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Looks for the smallest changes to a plan that clear its stops. Every candidate is run through the whole book, so what
 * is offered has been checked as the plan itself was: it makes no stop of its own and leaves no check without its
 * figures that the plan had them for.
 */
public final class Mender {

    private static final int MOST_OFFERS = 3;
    private static final int MOST_CHANGES = 4;
    private static final double HOURS_A_DAY = 24;
    /** Combinations looked at together, so that every processor has some. */
    private static final int BATCH = 8;

    private static final Comparator<Offer> SMALLEST = Comparator.comparingInt(
                    (Offer offer) -> offer.changes().size())
            .thenComparingLong(offer -> Math.round(offer.kilograms()))
            .thenComparing(Offer::added)
            .thenComparingDouble(Offer::days);

    /**
     * Changes that clear every stop.
     *
     * @param changes what to do
     * @param kilograms what the customer gives up
     * @param added what is paid more; 0 where prices are in several currencies, since then no sum says which is less
     * @param days the longest lead time given of the parts still planned
     * @param advice what the book says of the changed plan
     */
    public record Offer(List<Change> changes, double kilograms, BigDecimal added, double days, Advice advice) {}

    /** The mildest setting of one lever that alone clears a finding. */
    public record Way(Finding finding, Change change) {}

    /**
     * The result of a search.
     *
     * @param offers at most three, the smallest first
     * @param ways for each stop or change that a figure decides, what would just pass
     * @param tried how many changed plans were run through the book
     * @param complete whether everything up to the size of the offers was tried
     */
    public record Mending(List<Offer> offers, List<Way> ways, int tried, boolean complete) {}

    private final Node.Mapping root;
    private final Sheet sheet;
    private final SearchLimit limit;
    private final Trials trials;

    private Mender(RuleEngine engine, Node.Mapping root, Sheet sheet, BooleanSupplier stop, IntConsumer progress) {
        this.root = root;
        this.sheet = sheet;
        this.limit = new SearchLimit(stop);
        this.trials = new Trials(engine, root, sheet, limit, progress);
    }

    /**
     * Searches for changes.
     *
     * @param root the tree of the sheet
     * @param stop asked before each run whether to give up; from several threads
     * @param progress told how many plans were tried so far; from several threads
     */
    public static Mending mend(
            RuleEngine engine, Node.Mapping root, Sheet sheet, BooleanSupplier stop, IntConsumer progress) {
        return new Mender(engine, root, sheet, stop, progress).search();
    }

    private Mending search() {
        Map<Pull, RunSummary> alone =
                alone(Lever.of(root, sheet, trials.advised().findings()).stream()
                        .map(Pull::full)
                        .toList());
        List<Way> ways = ways(alone);
        List<Offer> offers = trials.planned().stops().isEmpty() ? List.of() : offers(alone);
        return new Mending(offers, ways, trials.count(), limit.complete());
    }

    /**
     * What each lever does alone. One that goes too far, so that it makes a stop of its own, is also pulled half the
     * way and a quarter of it.
     */
    private Map<Pull, RunSummary> alone(List<Pull> full) {
        Map<Pull, RunSummary> alone = new LinkedHashMap<>();
        run(full, alone);
        List<Pull> milder = new ArrayList<>();
        alone.forEach((pull, summary) -> {
            if (!summary.stopsNothingNew(trials.planned())) {
                Stream.of(2, 4)
                        .map(part -> pull.lever().steps() / part)
                        .filter(step -> step > 0)
                        .distinct()
                        .forEach(step -> milder.add(pull.at(step)));
            }
        });
        run(milder, alone);
        return alone;
    }

    private void run(List<Pull> pulls, Map<Pull, RunSummary> alone) {
        List<Optional<RunSummary>> summaries =
                pulls.parallelStream().map(pull -> trials.run(List.of(pull))).toList();
        for (int i = 0; i < pulls.size(); i++) {
            Pull pull = pulls.get(i);
            summaries.get(i).ifPresent(summary -> alone.put(pull, summary));
        }
    }

    private List<Offer> offers(Map<Pull, RunSummary> alone) {
        Set<Key> watched = new LinkedHashSet<>(trials.planned().stops());
        helpful(alone, watched).forEach(pull -> watched.addAll(alone.get(pull).stops()));
        List<Pull> helpful = helpful(alone, watched);
        Combinations combinations = new Combinations(helpful, List.copyOf(watched), alone, trials.planned(), limit);
        List<Offer> offers = new ArrayList<>();
        List<Set<String>> enough = new ArrayList<>();
        for (int size = 1; size <= MOST_CHANGES && offers.size() < MOST_OFFERS; size++) {
            List<Combination> candidates = combinations.ofSize(size);
            candidates.removeIf(candidate -> covered(candidate.pulls(), enough));
            for (int from = 0; from < candidates.size() && !limit.reached(); from += BATCH) {
                // Sorted in between, so that a combination is left alone which cannot be among the smallest any more.
                double most = offers.size() < MOST_OFFERS
                        ? Double.POSITIVE_INFINITY
                        : offers.get(MOST_OFFERS - 1).kilograms() + 1;
                List<Combination> batch = candidates.subList(from, Math.min(from + BATCH, candidates.size()));
                List<List<Pull>> mild = batch.parallelStream()
                        .filter(candidate -> candidate.least() <= most)
                        .map(Combination::pulls)
                        .filter(pulls -> !covered(pulls, enough))
                        .filter(trials::clears)
                        .map(pulls -> weakened(pulls, combinations, trials::clears))
                        .toList();
                for (List<Pull> pulls : mild) {
                    if (!covered(pulls, enough)) {
                        offers.add(offer(pulls));
                        enough.add(Combination.things(pulls));
                    }
                }
                offers.sort(SMALLEST);
            }
        }
        return offers.size() > MOST_OFFERS ? List.copyOf(offers.subList(0, MOST_OFFERS)) : offers;
    }

    private static boolean covered(List<Pull> pulls, List<Set<String>> enough) {
        Set<String> things = Combination.things(pulls);
        return enough.stream().anyMatch(things::containsAll);
    }

    private Offer offer(List<Pull> pulls) {
        List<Change> changes = Trials.changes(pulls);
        try {
            Advice advice = trials.advise(changes);
            Collection<BigDecimal> sums = Prices.added(sheet, advice.sheet()).values();
            BigDecimal added = sums.size() == 1 ? sums.iterator().next() : BigDecimal.ZERO;
            return new Offer(
                    changes, pulls.stream().mapToDouble(Pull::kilograms).sum(), added, days(advice.sheet()), advice);
        } catch (FaultsException e) {
            throw new IllegalStateException("a change that made a sheet before makes none now", e);
        }
    }

    /** The longest lead time given of the parts that are planned. */
    public static double days(Sheet sheet) {
        return sheet.planned().fitments().stream()
                        .filter(part -> !part.isDone())
                        .map(Fitment::leadTime)
                        .filter(Figure::known)
                        .mapToDouble(Figure::value)
                        .max()
                        .orElse(0)
                / HOURS_A_DAY;
    }

    /** The levers that alone leave more of a watched limit and open no question. */
    private List<Pull> helpful(Map<Pull, RunSummary> alone, Set<Key> watched) {
        return alone.keySet().stream()
                .filter(pull -> alone.get(pull).opensNothing(trials.planned())
                        && watched.stream().anyMatch(key -> alone.get(pull).gain(trials.planned(), key) > 0))
                .toList();
    }

    /**
     * Each lever with steps set back as far as the test still passes. Sums guess where that is, which in most cases
     * spares a search; the test decides.
     */
    private List<Pull> weakened(List<Pull> pulls, Combinations combinations, Predicate<List<Pull>> passes) {
        List<Pull> mild = new ArrayList<>(pulls);
        for (int i = 0; i < mild.size(); i++) {
            int low = 0;
            int high = mild.get(i).step();
            int next = combinations.needed(pulls, mild, i);
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

    /**
     * For each stop or change that a figure decides, the mildest setting of each stepped lever that alone clears it and
     * makes no stop.
     */
    private List<Way> ways(Map<Pull, RunSummary> alone) {
        List<Way> ways = new ArrayList<>();
        for (Finding finding : trials.advised().findings()) {
            if (finding.comparison().isEmpty()
                    || finding.judged().card().severity().value().compareTo(Severity.CHANGE) > 0) {
                continue;
            }
            Key key = finding.key();
            List<Pull> enough = alone.keySet().stream()
                    .filter(pull -> !pull.isWhole()
                            && pull.step() == pull.lever().steps()
                            && trials.settles(alone.get(pull), key))
                    .toList();
            Combinations combinations = new Combinations(enough, List.of(key), alone, trials.planned(), limit);
            ways.addAll(enough.parallelStream()
                    .map(pull -> weakened(List.of(pull), combinations, pulls -> trials.settles(pulls, key)))
                    .map(pulls -> new Way(finding, pulls.get(0).change()))
                    .toList());
        }
        return ways;
    }
}
