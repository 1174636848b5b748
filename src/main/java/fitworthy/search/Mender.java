package fitworthy.search;

import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Outcome;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.Outcome.Met;
import fitworthy.book.Severity;
import fitworthy.engine.RuleEngine;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Prices;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SheetReader;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;
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
    /** Combinations kept of one size, those that give up least. */
    private static final int MOST_CANDIDATES = 2000;
    /** Combinations looked at together, so that every processor has some. */
    private static final int BATCH = 8;
    /**
     * Gains of levers pulled alone need not add up exactly; a combination may fall short by this share of what they
     * move.
     */
    private static final double SLACK = 0.05;

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

    /** A lever pulled some of its steps. */
    private record Pull(Lever lever, int step) {
        Change change() {
            return lever.at().apply(strength());
        }

        double strength() {
            return (double) step / lever.steps();
        }

        double kilograms() {
            return lever.kilograms() * strength();
        }

        Pull at(int other) {
            return new Pull(lever, other);
        }
    }

    /** Pulls that may clear every stop together. */
    private record Candidate(List<Pull> pulls, double kilograms, long number) {

        /** What is changed and how, but not how far. */
        Set<String> things() {
            Set<String> things = new HashSet<>();
            pulls.forEach(pull -> things.add(pull.lever().thing()
                    + pull.change().getClass().getSimpleName()
                    + (pull.lever().steps() == 1 ? pull.change().words() : "")));
            return things;
        }

        /** What is given up however far its levers are set back. */
        double least() {
            return pulls.stream()
                    .filter(pull -> pull.lever().steps() == 1)
                    .mapToDouble(Pull::kilograms)
                    .sum();
        }
    }

    /**
     * What a search has to know of a run.
     *
     * @param margins what is left of each limit, by rule, subject and load case; -1 and 0 where a word decides
     * @param open by rule and load case, on how many subjects it lacks a figure: a part taken in place of another that
     *     lacks the same figure hides nothing
     */
    private record Seen(Map<String, Double> margins, Set<String> findings, Set<String> stops, Map<String, Long> open) {

        static Seen of(Advice advice) {
            Map<String, Double> margins = new HashMap<>();
            Set<String> findings = new HashSet<>();
            Set<String> stops = new LinkedHashSet<>();
            for (Met met : advice.met()) {
                margins.put(key(met), met.comparison().map(Comparison::margin).orElse(0.0));
            }
            for (Finding finding : advice.findings()) {
                margins.put(
                        key(finding),
                        finding.comparison().map(Comparison::margin).orElse(-1.0));
                findings.add(key(finding));
                if (finding.judged().card().severity().is(Severity.STOP)) {
                    stops.add(key(finding));
                }
            }
            return new Seen(
                    margins,
                    findings,
                    stops,
                    advice.notAssessed().stream()
                            .map(Outcome::judged)
                            .collect(Collectors.groupingBy(
                                    each -> each.id() + "|" + each.loadCase(), Collectors.counting())));
        }

        /** Whether no rule lacks a figure on more subjects than before. */
        boolean opensNothing(Seen before) {
            return open.entrySet().stream()
                    .allMatch(each -> each.getValue() <= before.open().getOrDefault(each.getKey(), 0L));
        }

        /** What is left of a limit; without end where the question no longer arises. */
        double margin(String key) {
            return margins.getOrDefault(key, Double.POSITIVE_INFINITY);
        }
    }

    private final RuleEngine engine;
    private final Node.Mapping root;
    private final Sheet sheet;
    private final BooleanSupplier stop;
    private final IntConsumer progress;
    private final Map<List<Change>, Optional<Seen>> runs = new ConcurrentHashMap<>();
    private final Advice advised;
    private final Seen planned;
    private volatile boolean cut;

    private Mender(RuleEngine engine, Node.Mapping root, Sheet sheet, BooleanSupplier stop, IntConsumer progress) {
        this.engine = engine;
        this.root = root;
        this.sheet = sheet;
        this.stop = stop;
        this.progress = progress;
        this.advised = Adviser.advise(engine, sheet);
        this.planned = Seen.of(advised);
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
        Map<Pull, Seen> alone = alone(Lever.of(root, sheet, advised.findings()).stream()
                .map(lever -> new Pull(lever, lever.steps()))
                .toList());
        List<Way> ways = ways(alone);
        List<Offer> offers = planned.stops().isEmpty() ? List.of() : offers(alone);
        return new Mending(offers, ways, runs.size(), !cut);
    }

    /**
     * What each lever does alone. One that goes too far, so that it makes a stop of its own, is also pulled half the
     * way and a quarter of it.
     */
    private Map<Pull, Seen> alone(List<Pull> full) {
        Map<Pull, Seen> alone = new LinkedHashMap<>();
        seen(full, alone);
        List<Pull> milder = new ArrayList<>();
        alone.forEach((pull, seen) -> {
            if (!planned.stops().containsAll(seen.stops())) {
                Stream.of(2, 4)
                        .map(part -> pull.lever().steps() / part)
                        .filter(step -> step > 0)
                        .distinct()
                        .forEach(step -> milder.add(pull.at(step)));
            }
        });
        seen(milder, alone);
        return alone;
    }

    private void seen(List<Pull> pulls, Map<Pull, Seen> alone) {
        List<Optional<Seen>> seen =
                pulls.parallelStream().map(pull -> run(List.of(pull))).toList();
        for (int i = 0; i < pulls.size(); i++) {
            Pull pull = pulls.get(i);
            seen.get(i).ifPresent(each -> alone.put(pull, each));
        }
    }

    private List<Offer> offers(Map<Pull, Seen> alone) {
        Set<String> watched = new LinkedHashSet<>(planned.stops());
        helpful(alone, watched).forEach(pull -> watched.addAll(alone.get(pull).stops()));
        List<Pull> helpful = helpful(alone, watched);
        Sums sums = new Sums(helpful, List.copyOf(watched), alone);
        List<Offer> offers = new ArrayList<>();
        List<Set<String>> enough = new ArrayList<>();
        for (int size = 1; size <= MOST_CHANGES && offers.size() < MOST_OFFERS; size++) {
            List<Candidate> candidates = sums.candidates(size);
            candidates.removeIf(each -> covered(each, enough));
            for (int from = 0; from < candidates.size() && !late(); from += BATCH) {
                // Sorted in between, so that a combination is left alone which cannot be among the smallest any more.
                double most = offers.size() < MOST_OFFERS
                        ? Double.POSITIVE_INFINITY
                        : offers.get(MOST_OFFERS - 1).kilograms() + 1;
                List<Candidate> batch = candidates.subList(from, Math.min(from + BATCH, candidates.size()));
                List<List<Pull>> mild = batch.parallelStream()
                        .filter(each -> each.least() <= most)
                        .filter(each -> !covered(each, enough))
                        .filter(each -> clears(each.pulls()))
                        .map(each -> weakened(each.pulls(), sums, this::clears))
                        .toList();
                for (List<Pull> each : mild) {
                    Candidate done = new Candidate(each, 0, 0);
                    if (!covered(done, enough)) {
                        offers.add(offer(each));
                        enough.add(done.things());
                    }
                }
                offers.sort(SMALLEST);
            }
        }
        return offers.size() > MOST_OFFERS ? List.copyOf(offers.subList(0, MOST_OFFERS)) : offers;
    }

    private static boolean covered(Candidate candidate, List<Set<String>> enough) {
        Set<String> things = candidate.things();
        return enough.stream().anyMatch(things::containsAll);
    }

    private Offer offer(List<Pull> pulls) {
        List<Change> changes = pulls.stream().map(Pull::change).toList();
        try {
            Sheet changed = changed(changes);
            Collection<BigDecimal> sums = Prices.added(sheet, changed).values();
            BigDecimal added = sums.size() == 1 ? sums.iterator().next() : BigDecimal.ZERO;
            return new Offer(
                    changes,
                    pulls.stream().mapToDouble(Pull::kilograms).sum(),
                    added,
                    days(changed),
                    Adviser.advise(engine, changed));
        } catch (FaultsException e) {
            throw new IllegalStateException("a change that made a sheet before makes none now", e);
        }
    }

    /** The longest lead time given of the parts that are planned. */
    public static double days(Sheet sheet) {
        return sheet.planned().fitments().stream()
                        .map(Fitment::leadTime)
                        .filter(Figure::known)
                        .mapToDouble(Figure::value)
                        .max()
                        .orElse(0)
                / HOURS_A_DAY;
    }

    /** The levers that alone leave more of a watched limit and open no question. */
    private List<Pull> helpful(Map<Pull, Seen> alone, Set<String> watched) {
        return alone.keySet().stream()
                .filter(pull -> alone.get(pull).opensNothing(planned)
                        && watched.stream().anyMatch(key -> gain(alone.get(pull), key) > 0))
                .toList();
    }

    private double gain(Seen seen, String key) {
        double before = planned.margin(key);
        double after = seen.margin(key);
        return before == after ? 0 : after - before;
    }

    /**
     * What levers do to the watched limits, added up as if none knew of the others. Masses and moments nearly add so.
     */
    private final class Sums {

        private final List<Pull> pulls;
        private final double[] before;
        private final Map<Pull, double[]> gains = new HashMap<>();
        private final double[] most;

        Sums(List<Pull> pulls, List<String> watched, Map<Pull, Seen> alone) {
            this.pulls = pulls;
            this.before = watched.stream().mapToDouble(planned::margin).toArray();
            this.most = new double[before.length];
            for (Pull pull : pulls) {
                double[] gain = watched.stream()
                        .mapToDouble(key -> gain(alone.get(pull), key))
                        .toArray();
                gains.put(pull, gain);
                for (int i = 0; i < gain.length; i++) {
                    most[i] = Math.max(most[i], gain[i]);
                }
            }
        }

        /** Combinations of a size that may clear everything watched, what gives up least first. */
        List<Candidate> candidates(int size) {
            Comparator<Candidate> least =
                    Comparator.comparingDouble(Candidate::kilograms).thenComparingLong(Candidate::number);
            PriorityQueue<Candidate> kept = new PriorityQueue<>(least.reversed());
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

        private void add(
                int size,
                int from,
                List<Pull> taken,
                double[] left,
                double[] moved,
                PriorityQueue<Candidate> kept,
                long[] number) {
            int more = size - taken.size();
            for (int i = 0; i < left.length; i++) {
                double reach = more == 0 ? 0 : more * most[i];
                if (left[i] + reach < -SLACK * (moved[i] + reach)) {
                    return;
                }
            }
            if (more == 0) {
                kept.add(new Candidate(
                        List.copyOf(taken),
                        taken.stream().mapToDouble(Pull::kilograms).sum(),
                        number[0]++));
                if (kept.size() > MOST_CANDIDATES) {
                    kept.poll();
                    cut = true;
                }
                return;
            }
            for (int i = from; i < pulls.size() && !(more > 1 && late()); i++) {
                Pull next = pulls.get(i);
                if (taken.stream()
                        .noneMatch(
                                each -> each.lever().thing().equals(next.lever().thing()))) {
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

    /** Whether the pulls leave no stop at all, neither the plan's own nor a new one, and open no question. */
    private boolean clears(List<Pull> pulls) {
        return run(pulls)
                .filter(seen -> seen.stops().isEmpty() && seen.opensNothing(planned))
                .isPresent();
    }

    /**
     * Each lever with steps set back as far as the test still passes. Sums guess where that is, which in most cases
     * spares a search; the test decides.
     */
    private List<Pull> weakened(List<Pull> pulls, Sums sums, Predicate<List<Pull>> passes) {
        List<Pull> mild = new ArrayList<>(pulls);
        for (int i = 0; i < mild.size(); i++) {
            int low = 0;
            int high = mild.get(i).step();
            int next = sums.needed(pulls, mild, i);
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
    private List<Way> ways(Map<Pull, Seen> alone) {
        List<Way> ways = new ArrayList<>();
        for (Finding finding : advised.findings()) {
            if (finding.comparison().isEmpty()
                    || finding.judged().card().severity().value().compareTo(Severity.CHANGE) > 0) {
                continue;
            }
            String key = key(finding);
            List<Pull> enough = alone.keySet().stream()
                    .filter(pull -> pull.lever().steps() > 1
                            && pull.step() == pull.lever().steps()
                            && settles(alone.get(pull), key))
                    .toList();
            Sums sums = new Sums(enough, List.of(key), alone);
            ways.addAll(enough.parallelStream()
                    .map(pull -> weakened(List.of(pull), sums, pulls -> run(pulls)
                            .filter(seen -> settles(seen, key))
                            .isPresent()))
                    .map(pulls -> new Way(finding, pulls.get(0).change()))
                    .toList());
        }
        return ways;
    }

    private boolean settles(Seen seen, String key) {
        return !seen.findings().contains(key)
                && seen.opensNothing(planned)
                && planned.stops().containsAll(seen.stops());
    }

    private static String key(Outcome outcome) {
        Judged judged = outcome.judged();
        return judged.id() + "|" + judged.subject() + "|" + judged.loadCase();
    }

    /** What the book says of the plan so changed; nothing where the change makes no sheet, or time is up. */
    private Optional<Seen> run(List<Pull> pulls) {
        List<Change> changes = pulls.stream().map(Pull::change).toList();
        Optional<Seen> known = runs.get(changes);
        if (known != null) {
            return known;
        }
        if (late()) {
            return Optional.empty();
        }
        Optional<Seen> seen = Optional.empty();
        try {
            seen = Optional.of(Seen.of(Adviser.advise(engine, changed(changes))));
        } catch (FaultsException e) {
            // The change leaves something that needs the part; it is no change to offer.
        }
        runs.put(changes, seen);
        progress.accept(runs.size());
        return seen;
    }

    /** Whether to give up; the search is then not complete. */
    private boolean late() {
        boolean late = stop.getAsBoolean();
        cut |= late;
        return late;
    }

    private Sheet changed(List<Change> changes) throws FaultsException {
        Node.Mapping changed = root;
        for (Change change : changes) {
            changed = change.applied(changed, sheet);
        }
        return SheetReader.sheet(changed, engine.book().regions().keySet(), new ArrayList<>());
    }
}
