package fitworthy.search;

import fitworthy.advice.Advice;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Key;
import fitworthy.book.Severity;
import fitworthy.engine.RuleEngine;
import fitworthy.search.Combinations.Combination;
import fitworthy.sheet.Sheet;
import fitworthy.shelf.Shelf;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import java.math.BigDecimal;
import java.util.ArrayList;
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
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * Looks for the smallest changes to a plan that clear its stops. Every candidate is run through the whole book, so what
 * is offered has been checked as the plan itself was: it makes no stop of its own and leaves no check without its
 * figures that the plan had them for.
 */
public final class Mender {

    private static final int MOST_OFFERS = 3;
    private static final int MOST_BEST = 8;
    private static final int MOST_CHANGES = 4;
    /** Of the changes that win most, so many are joined before the search goes through all. */
    private static final int MOST_HEAVIEST = 3;

    private static final double HOURS_A_DAY = 24;
    /** Combinations looked at together, so that every processor has some. */
    private static final int BATCH = 8;

    private static final Comparator<Offer> SMALLEST = Comparator.comparingInt(
                    (Offer offer) -> offer.changes().size())
            .thenComparingLong(offer -> Math.round(offer.kilograms()))
            .thenComparing(Offer::added)
            .thenComparingDouble(Offer::days);

    /**
     * Changes, and the plan that they make.
     *
     * @param changes what to do
     * @param kilograms what the customer gives up, by which offers are sorted; never printed, since a can of water is no
     *     part of a trailer's load
     * @param added what is paid more; 0 where prices are in several currencies, since then no sum says which is less
     * @param days the longest lead time given of what is still planned
     * @param terms what the changed plan comes to
     * @param advice what the book says of it
     */
    public record Offer(
            List<Change> changes, double kilograms, BigDecimal added, double days, Terms terms, Advice advice) {}

    /** The mildest setting of one lever that alone clears a finding. */
    public record Way(Finding finding, Change change) {}

    /**
     * The result of a search.
     *
     * @param best the single changes that help most, at most eight, the best first
     * @param offers at most three that clear every stop, the smallest first; where none leaves all else in order, those after
     *     which something else has to be changed
     * @param lighter where there are none, at most three that clear the stops of mass, or the one that comes nearest
     * @param ways for each stop or change that a figure decides, what would just pass
     * @param tried how many changed plans were run through the book
     * @param complete whether everything up to the size of the offers was tried
     */
    public record Mending(
            List<Offer> best, List<Offer> offers, List<Offer> lighter, List<Way> ways, int tried, boolean complete) {

        /** A search for what clears every stop alone. */
        public Mending(List<Offer> offers, List<Way> ways, int tried, boolean complete) {
            this(List.of(), offers, List.of(), ways, tried, complete);
        }
    }

    private final Node.Mapping root;
    private final Sheet sheet;
    private final Shelf shelf;
    private final SearchLimit limit;
    private final Trials trials;

    private Mender(
            RuleEngine engine,
            Node.Mapping root,
            Sheet sheet,
            Shelf shelf,
            BooleanSupplier stop,
            IntConsumer progress) {
        this.root = root;
        this.sheet = sheet;
        this.shelf = shelf;
        this.limit = new SearchLimit(stop);
        this.trials = new Trials(engine, root, sheet, limit, progress);
    }

    /** Searches for changes where there is no shelf. */
    public static Mending mend(
            RuleEngine engine, Node.Mapping root, Sheet sheet, BooleanSupplier stop, IntConsumer progress) {
        return mend(engine, root, sheet, Shelf.NONE, stop, progress);
    }

    /**
     * Searches for changes.
     *
     * @param root the tree of the sheet
     * @param shelf what may be fitted in place of a part
     * @param stop asked before each run whether to give up; from several threads
     * @param progress told how many plans were tried so far; from several threads
     */
    public static Mending mend(
            RuleEngine engine,
            Node.Mapping root,
            Sheet sheet,
            Shelf shelf,
            BooleanSupplier stop,
            IntConsumer progress) {
        return new Mender(engine, root, sheet, shelf, stop, progress).search();
    }

    private Mending search() {
        Map<Pull, RunSummary> alone = alone(Stream.concat(
                        PointLevers.of(trials.advised()).stream(),
                        Levers.of(root, sheet, trials.advised().findings(), shelf, trials.fuelReserve()).stream())
                .map(Pull::full)
                .toList());
        Set<Key> stops = trials.planned().stops();
        // Before what takes long, so that the plainest way out is not missed for want of time.
        List<List<Pull>> heaviest = heaviest(alone, stops);
        Optional<List<Pull>> nearest = heaviest.isEmpty()
                ? Nearest.of(trials, alone, Weighing.stopsOfMass(trials.advised()))
                : Optional.empty();
        List<Offer> best = best(alone);
        List<Way> ways = ways(alone);
        List<Offer> offers = stops.isEmpty() ? List.of() : offers(alone, stops);
        if (offers.isEmpty()) {
            offers = heaviest.stream().map(this::offer).toList();
        }
        List<Offer> lighter = stops.isEmpty() || !offers.isEmpty() ? List.of() : lighter(alone, nearest);
        return new Mending(best, offers, lighter, ways, trials.count(), limit.complete());
    }

    /** The single changes that help most, each no further than it takes to clear what it clears. */
    private List<Offer> best(Map<Pull, RunSummary> alone) {
        Ranking ranking = new Ranking(trials);
        return ranking.best(alone, MOST_BEST).parallelStream()
                .map(pull -> milder(pull, ranking, alone))
                .map(this::offer)
                .toList();
    }

    private List<Pull> milder(Pull pull, Ranking ranking, Map<Pull, RunSummary> alone) {
        RunSummary full = alone.get(pull);
        Set<Key> cleared = ranking.cleared(full);
        return pull.isWhole() || cleared.isEmpty()
                ? List.of(pull)
                : combinations(List.of(pull), cleared, alone).weakened(List.of(pull), pulls -> trials.run(pulls)
                        .filter(mild -> trials.breaksNothing(mild)
                                && ranking.cleared(mild).containsAll(cleared)
                                && cleared.stream().allMatch(key -> mild.isSure(key) || !full.isSure(key)))
                        .isPresent());
    }

    /**
     * The fewest of the changes that win most of these stops, joined so that they clear them, also where something else has
     * then to be changed; what leaves all else in order first, then the least given up.
     */
    private List<List<Pull>> heaviest(Map<Pull, RunSummary> alone, Set<Key> stops) {
        if (stops.isEmpty()) {
            return List.of();
        }
        List<Pull> strong = alone.keySet().stream()
                .filter(pull -> trials.breaksNothing(alone.get(pull)))
                .filter(pull -> won(alone.get(pull), stops) > 0)
                .sorted(Comparator.comparingDouble(pull -> -won(alone.get(pull), stops)))
                .limit(MOST_BEST)
                .toList();
        Combinations combinations = combinations(strong, stops, alone);
        List<List<Pull>> clearing = new ArrayList<>();
        List<Set<String>> enough = new ArrayList<>();
        for (int size = 1; size <= MOST_HEAVIEST && clearing.size() < MOST_OFFERS; size++) {
            for (Combination candidate : combinations.ofSize(size)) {
                List<Pull> pulls = candidate.pulls();
                if (clearing.size() < MOST_OFFERS
                        && !covered(pulls, enough)
                        && trials.clearsWithMoreToDo(pulls, stops)) {
                    clearing.add(combinations.weakened(pulls, mild -> trials.clearsWithMoreToDo(mild, stops)));
                    enough.add(Combination.things(pulls));
                }
            }
        }
        clearing.sort(Comparator.comparing(pulls -> !trials.clears(pulls, stops)));
        return clearing;
    }

    /** The share that is won of what is over, of all stops that a figure decides together. */
    private double won(RunSummary summary, Set<Key> stops) {
        return stops.stream()
                .mapToDouble(key -> Math.min(
                        1,
                        summary.gain(trials.planned(), key) / -trials.planned().margin(key)))
                .sum();
    }

    /** What clears the stops of mass where nothing clears all stops; else the one plan that comes nearest. */
    private List<Offer> lighter(Map<Pull, RunSummary> alone, Optional<List<Pull>> nearest) {
        Set<Key> ofMass = Weighing.stopsOfMass(trials.advised());
        if (ofMass.isEmpty()) {
            return List.of();
        }
        List<Offer> clearing = ofMass.equals(trials.planned().stops()) ? List.<Offer>of() : offers(alone, ofMass);
        return clearing.isEmpty() ? nearest.map(this::offer).stream().toList() : clearing;
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
        List<Pull> first = trials.heaviestFirst(pulls);
        for (int from = 0; from < first.size(); from += BATCH) {
            first.subList(from, Math.min(from + BATCH, first.size())).parallelStream()
                    .forEach(pull -> trials.run(List.of(pull)));
        }
        // In the order of the levers, whichever were run first.
        pulls.forEach(pull -> trials.run(List.of(pull)).ifPresent(summary -> alone.put(pull, summary)));
    }

    /** What clears some stops, and makes none: by the tolerance where anything does, else as far as it goes. */
    private List<Offer> offers(Map<Pull, RunSummary> alone, Set<Key> stops) {
        List<Offer> sure = offers(alone, stops, pulls -> trials.clearsSurely(pulls, stops), trials.planned()::surely);
        return sure.isEmpty()
                ? offers(alone, stops, pulls -> trials.clears(pulls, stops), trials.planned()::margin)
                : sure;
    }

    private List<Offer> offers(
            Map<Pull, RunSummary> alone, Set<Key> stops, Predicate<List<Pull>> clears, ToDoubleFunction<Key> left) {
        Set<Key> watched = new LinkedHashSet<>(stops);
        helpful(alone, watched).forEach(pull -> alone.get(pull).stops().stream()
                .filter(stop -> !trials.planned().stops().contains(stop))
                .forEach(watched::add));
        List<Pull> helpful = helpful(alone, watched);
        Combinations combinations = combinations(helpful, watched, alone, left);
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
                        .filter(clears)
                        .map(pulls -> combinations.weakened(pulls, clears))
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

    private Combinations combinations(List<Pull> pulls, Set<Key> watched, Map<Pull, RunSummary> alone) {
        return combinations(pulls, watched, alone, trials.planned()::margin);
    }

    private Combinations combinations(
            List<Pull> pulls, Set<Key> watched, Map<Pull, RunSummary> alone, ToDoubleFunction<Key> left) {
        return new Combinations(pulls, List.copyOf(watched), alone, trials.planned(), left, limit);
    }

    private static boolean covered(List<Pull> pulls, List<Set<String>> enough) {
        Set<String> things = Combination.things(pulls);
        return enough.stream().anyMatch(things::containsAll);
    }

    private Offer offer(List<Pull> pulls) {
        List<Change> changes = Trials.changes(pulls);
        try {
            Advice advice = trials.advise(changes);
            Terms terms = Terms.of(advice);
            return new Offer(
                    changes,
                    pulls.stream().mapToDouble(Pull::kilograms).sum(),
                    terms.added(trials.planned().terms()),
                    terms.leadTime() / HOURS_A_DAY,
                    terms,
                    advice);
        } catch (FaultsException e) {
            throw new IllegalStateException("a change that made a sheet before makes none now", e);
        }
    }

    /** The levers that alone leave more of a watched limit and open no question. */
    private List<Pull> helpful(Map<Pull, RunSummary> alone, Set<Key> watched) {
        return alone.keySet().stream()
                .filter(pull -> alone.get(pull).opensNothing(trials.planned())
                        && watched.stream().anyMatch(key -> alone.get(pull).gain(trials.planned(), key) > 0))
                .toList();
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
            Combinations combinations = combinations(enough, Set.of(key), alone);
            ways.addAll(enough.parallelStream()
                    .map(pull -> combinations.weakened(List.of(pull), pulls -> trials.settles(pulls, key)))
                    .map(pulls -> new Way(finding, pulls.get(0).change()))
                    .toList());
        }
        return ways;
    }
}
