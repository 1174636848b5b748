package fitworthy.advice;

import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Finding;
import fitworthy.book.Book;
import fitworthy.book.Severity;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SheetReader;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import java.util.function.Predicate;

/**
 * Looks for the smallest changes to a plan that clear its stops. Every candidate is run through the whole book, so what is
 * offered has been checked as the plan itself was, and makes no stop of its own.
 */
public final class Mender {

    private static final int MOST_OFFERS = 3;
    private static final int MOST_CHANGES = 4;

    /**
     * Changes that clear every stop.
     *
     * @param changes what to do
     * @param kilograms what the customer gives up
     * @param advice what the book says of the changed plan
     */
    public record Offer(List<Change> changes, double kilograms, Advice advice) {}

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

    /** A lever pulled to a strength. */
    private record Pull(Lever lever, double strength) {
        Change change() {
            return lever.at().apply(strength);
        }

        double kilograms() {
            return lever.kilograms() * strength;
        }
    }

    private final Book book;
    private final Node.Mapping root;
    private final Sheet sheet;
    private final BooleanSupplier stop;
    private final IntConsumer progress;
    private final Map<List<Change>, Optional<Advice>> runs = new HashMap<>();

    private Mender(Book book, Node.Mapping root, Sheet sheet, BooleanSupplier stop, IntConsumer progress) {
        this.book = book;
        this.root = root;
        this.sheet = sheet;
        this.stop = stop;
        this.progress = progress;
    }

    /**
     * Searches for changes.
     *
     * @param root the tree of the sheet
     * @param stop asked before each run whether to give up
     * @param progress told how many plans were tried so far
     */
    public static Mending mend(Book book, Node.Mapping root, Sheet sheet, BooleanSupplier stop, IntConsumer progress) {
        return new Mender(book, root, sheet, stop, progress).search();
    }

    private Mending search() {
        Advice planned = Adviser.advise(book, sheet);
        Map<String, Finding> stops = stops(planned);
        List<Pull> pulls = Lever.of(sheet).stream().map(lever -> new Pull(lever, 1)).toList();
        Map<Pull, Advice> alone = new LinkedHashMap<>();
        pulls.forEach(pull -> run(List.of(pull)).ifPresent(advice -> alone.put(pull, advice)));
        List<Way> ways = ways(planned, alone);
        List<Offer> offers = stops.isEmpty() ? List.of() : offers(stops, alone);
        return new Mending(offers, ways, runs.size(), !stop.getAsBoolean());
    }

    private List<Offer> offers(Map<String, Finding> stops, Map<Pull, Advice> alone) {
        List<Pull> helpful = alone.keySet().stream().filter(pull -> helps(stops, alone.get(pull))).toList();
        List<Offer> offers = new ArrayList<>();
        List<Set<String>> enough = new ArrayList<>();
        for (int size = 1; size <= MOST_CHANGES && offers.size() < MOST_OFFERS; size++) {
            List<List<Pull>> candidates = new ArrayList<>();
            combinations(helpful, size, 0, List.of(), candidates);
            candidates.removeIf(each -> !promising(stops, alone, each)
                    || enough.stream().anyMatch(done -> things(each).containsAll(done)));
            candidates.sort(Comparator.comparingDouble(Mender::kilograms));
            for (List<Pull> candidate : candidates) {
                if (enough.stream().noneMatch(done -> things(candidate).containsAll(done)) && clears(stops, candidate)) {
                    List<Pull> mild = weakened(candidate, pulls -> clears(stops, pulls));
                    offers.add(new Offer(mild.stream().map(Pull::change).toList(), kilograms(mild),
                            run(mild).orElseThrow()));
                    enough.add(things(candidate));
                }
            }
            offers.sort(Comparator.comparingInt((Offer offer) -> offer.changes().size())
                    .thenComparingDouble(Offer::kilograms));
        }
        return offers.size() > MOST_OFFERS ? List.copyOf(offers.subList(0, MOST_OFFERS)) : offers;
    }

    private static Set<String> things(List<Pull> pulls) {
        Set<String> things = new HashSet<>();
        pulls.forEach(pull -> things.add(pull.lever().thing() + pull.change().getClass().getSimpleName()
                + (pull.lever().steps() == 1 ? pull.change().words() : "")));
        return things;
    }

    private static double kilograms(List<Pull> pulls) {
        return pulls.stream().mapToDouble(Pull::kilograms).sum();
    }

    private static void combinations(List<Pull> all, int size, int from, List<Pull> taken, List<List<Pull>> found) {
        if (taken.size() == size) {
            found.add(taken);
            return;
        }
        for (int i = from; i < all.size(); i++) {
            Pull next = all.get(i);
            if (taken.stream().noneMatch(each -> each.lever().thing().equals(next.lever().thing()))) {
                List<Pull> more = new ArrayList<>(taken);
                more.add(next);
                combinations(all, size, i + 1, more, found);
            }
        }
    }

    /** Whether a lever alone clears a stop or leaves more of the limit it passes. */
    private boolean helps(Map<String, Finding> stops, Advice advice) {
        Map<String, Finding> left = stops(advice);
        return stops.entrySet().stream().anyMatch(each -> gain(each.getValue(), left.get(each.getKey())) > 0);
    }

    /** How much of the limit is won, in the measure's unit; without end where the stop is gone. */
    private static double gain(Finding before, Finding after) {
        if (after == null) {
            return Double.POSITIVE_INFINITY;
        }
        return after.comparison().map(Comparison::margin).orElse(0.0) - before.comparison().map(Comparison::margin).orElse(0.0);
    }

    /** Whether the levers' gains, each taken alone, add up to enough for every stop. Masses add, so this seldom errs. */
    private boolean promising(Map<String, Finding> stops, Map<Pull, Advice> alone, List<Pull> pulls) {
        return stops.entrySet().stream().allMatch(each -> {
            double needed = each.getValue().comparison().map(got -> -got.margin()).orElse(Double.MIN_VALUE);
            double won = pulls.stream().mapToDouble(pull -> gain(each.getValue(), stops(alone.get(pull)).get(each.getKey())))
                    .filter(gain -> gain > 0).sum();
            return won >= needed;
        });
    }

    /** Whether the pulls leave no stop at all: the plan's own are gone and none is new. */
    private boolean clears(Map<String, Finding> stops, List<Pull> pulls) {
        return run(pulls).filter(advice -> stops(advice).isEmpty()).isPresent();
    }

    /** Each lever with steps set back as far as the test still passes. */
    private List<Pull> weakened(List<Pull> pulls, Predicate<List<Pull>> passes) {
        List<Pull> mild = new ArrayList<>(pulls);
        for (int i = 0; i < mild.size(); i++) {
            int low = 0;
            int high = mild.get(i).lever().steps();
            while (high - low > 1) {
                int middle = (low + high) / 2;
                List<Pull> trial = new ArrayList<>(mild);
                trial.set(i, at(mild.get(i).lever(), middle));
                if (passes.test(trial)) {
                    high = middle;
                } else {
                    low = middle;
                }
            }
            mild.set(i, at(mild.get(i).lever(), high));
        }
        return mild;
    }

    private static Pull at(Lever lever, int step) {
        return new Pull(lever, (double) step / lever.steps());
    }

    /** For each stop or change that a figure decides, the mildest setting of each stepped lever that alone clears it. */
    private List<Way> ways(Advice planned, Map<Pull, Advice> alone) {
        List<Way> ways = new ArrayList<>();
        for (Finding finding : planned.findings()) {
            if (finding.comparison().isEmpty() || finding.judged().card().severity().value().compareTo(Severity.CHANGE) > 0) {
                continue;
            }
            alone.forEach((pull, advice) -> {
                if (pull.lever().steps() > 1 && !has(advice, finding)) {
                    List<Pull> mild = weakened(List.of(pull), pulls ->
                            run(pulls).filter(each -> !has(each, finding)).isPresent());
                    ways.add(new Way(finding, mild.get(0).change()));
                }
            });
        }
        return ways;
    }

    private static boolean has(Advice advice, Finding finding) {
        return advice.findings().stream().anyMatch(each -> key(each).equals(key(finding)));
    }

    private static Map<String, Finding> stops(Advice advice) {
        Map<String, Finding> stops = new LinkedHashMap<>();
        advice.findings().stream().filter(each -> each.judged().card().severity().is(Severity.STOP))
                .forEach(each -> stops.put(key(each), each));
        return stops;
    }

    private static String key(Finding finding) {
        return finding.judged().id() + "|" + finding.judged().subject() + "|" + finding.judged().loadCase();
    }

    /** What the book says of the plan so changed; nothing where the change makes no sheet, or time is up. */
    private Optional<Advice> run(List<Pull> pulls) {
        List<Change> changes = pulls.stream().map(Pull::change).toList();
        Optional<Advice> known = runs.get(changes);
        if (known != null) {
            return known;
        }
        if (stop.getAsBoolean()) {
            return Optional.empty();
        }
        Optional<Advice> advice = Optional.empty();
        try {
            Node.Mapping changed = root;
            for (Change change : changes) {
                changed = change.applied(changed, sheet);
            }
            advice = Optional.of(Adviser.advise(book, SheetReader.sheet(changed, book.regions().keySet(), new ArrayList<>())));
        } catch (FaultsException e) {
            // The change leaves something that needs the part; it is no change to offer.
        }
        runs.put(changes, advice);
        progress.accept(runs.size());
        return advice;
    }
}
