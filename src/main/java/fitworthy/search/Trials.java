package fitworthy.search;

import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Outcome.Key;
import fitworthy.book.Practice;
import fitworthy.engine.RuleEngine;
import fitworthy.schema.KnownGroups;
import fitworthy.sheet.Forgone;
import fitworthy.sheet.Sheet;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.IntConsumer;
import java.util.function.Predicate;

/** Runs a plan with changes through the book, every set of changes once. By any thread. */
final class Trials {

    private static final String FUEL_RESERVE = "fuel.range-reserve-least";

    /** Each is read as a sheet of its own, which takes as long as the sheet is. */
    private static final int MOST_WEIGHED = 100;

    private final RuleEngine engine;
    private final Node.Mapping root;
    private final Sheet sheet;
    private final KnownGroups groups;
    private final SearchLimit limit;
    private final IntConsumer progress;
    private final Map<List<Change>, Optional<RunSummary>> runs = new ConcurrentHashMap<>();
    private final Resting resting;
    private final List<String> kept;
    private final Advice advised;
    private final RunSummary planned;
    private final Set<Key> inOrder = new HashSet<>();

    /**
     * Runs the plan without changes.
     *
     * @param limit looked at before each further run
     * @param progress told how many changed plans were run so far
     */
    Trials(RuleEngine engine, Node.Mapping root, Sheet sheet, SearchLimit limit, IntConsumer progress) {
        this.engine = engine;
        this.root = root;
        this.sheet = sheet;
        this.groups = Change.groups(root, engine.book());
        this.limit = limit;
        this.progress = progress;
        this.resting = new Resting(sheet.planned());
        this.kept = Forgone.kept(sheet);
        this.advised = Adviser.counted(engine, sheet);
        this.planned = RunSummary.of(advised);
        advised.met().forEach(met -> inOrder.add(met.key()));
        advised.held().forEach(held -> inOrder.add(held.key()));
    }

    /** The plan without changes. */
    RunSummary planned() {
        return planned;
    }

    /** What the book says of the plan without changes. */
    Advice advised() {
        return advised;
    }

    /** The part of the fuel that the book wants left at the end of the longest leg, 0 to 1; none where it says none. */
    double fuelReserve() {
        return engine.book().lookup(FUEL_RESERVE, sheet) instanceof Practice.Lookup.Found found
                ? found.practice().value()
                : 0;
    }

    /** How many changed plans were run. */
    int count() {
        return runs.size();
    }

    /**
     * The plan so changed; nothing where that makes no sheet, leaves a part hanging in the air, leaves out what is to be
     * kept, or time is up.
     */
    Optional<RunSummary> run(List<Pull> pulls) {
        List<Change> changes = changes(pulls);
        Optional<RunSummary> known = runs.get(changes);
        if (known != null) {
            return known;
        }
        if (limit.reached()) {
            return Optional.empty();
        }
        Optional<RunSummary> summary = Optional.empty();
        try {
            Sheet changed = sheet(changes);
            if (!resting.leavesHanging(changed.planned()) && kept.containsAll(Forgone.kept(changed))) {
                summary = Optional.of(RunSummary.of(Adviser.counted(engine, changed, advised)));
            }
        } catch (FaultsException e) {
            // The change leaves something that needs the part; it is no change to offer.
        }
        runs.put(changes, summary);
        progress.accept(runs.size());
        return summary;
    }

    /** Whether the pulls leave none of these stops, spoil nothing that was in order, and open no question. */
    boolean clears(List<Pull> pulls, Set<Key> stops) {
        return clears(pulls, stops, this::harmless);
    }

    /** The same where something may have to be changed that did not arise before. */
    boolean clearsWithMoreToDo(List<Pull> pulls, Set<Key> stops) {
        return clears(pulls, stops, this::breaksNothing);
    }

    private boolean clears(List<Pull> pulls, Set<Key> stops, Predicate<RunSummary> allowed) {
        return run(pulls)
                .filter(summary -> Collections.disjoint(summary.stops(), stops) && allowed.test(summary))
                .isPresent();
    }

    /** The same, and each of them by the tolerance or more: an offer leaves nothing too close to call. */
    boolean clearsSurely(List<Pull> pulls, Set<Key> stops) {
        return clears(pulls, stops)
                && run(pulls)
                        .filter(summary -> stops.stream().allMatch(summary::isSure))
                        .isPresent();
    }

    /** Whether nothing that was in order has to be changed now, and no more figures are missing. */
    boolean harmless(RunSummary summary) {
        return summary.opensNothing(planned) && summary.spoilsNothing(planned);
    }

    /** Whether the pulls settle one finding, spoil nothing that was in order, and open no question. */
    boolean settles(List<Pull> pulls, Key finding) {
        return run(pulls).filter(summary -> settles(summary, finding)).isPresent();
    }

    boolean settles(RunSummary summary, Key finding) {
        return !summary.findings().contains(finding) && harmless(summary);
    }

    /**
     * Whether nothing that was met has to be changed now, no stop is new, and no more figures are missing. A change may
     * come up that did not arise before, such as what a stop says already.
     */
    boolean breaksNothing(RunSummary summary) {
        return summary.opensNothing(planned)
                && summary.stopsNothingNew(planned)
                && Collections.disjoint(summary.changes(), inOrder);
    }

    /** What the book says of the plan so changed. @throws FaultsException where that makes no sheet */
    Advice advise(List<Change> changes) throws FaultsException {
        return Adviser.counted(engine, sheet(changes), advised);
    }

    private Sheet sheet(List<Change> changes) throws FaultsException {
        return Change.sheet(changes, root, sheet, engine.book(), groups);
    }

    /**
     * The same pulls, those first that take most off the limit that is passed furthest, as their masses add up: where time
     * runs out, what helps most was tried. Of very many those that give up most are weighed. As they are where no such limit is
     * passed, or none can be tried.
     */
    List<Pull> heaviestFirst(List<Pull> pulls) {
        Weighing weighing = new Weighing(advised);
        if (!weighing.isOver() || limit.reached()) {
            return pulls;
        }
        Map<Pull, Double> taken = new HashMap<>();
        pulls.stream()
                .sorted(Comparator.comparingDouble(pull -> -pull.kilograms()))
                .limit(MOST_WEIGHED)
                .forEach(pull -> taken.put(pull, takes(weighing, pull)));
        return pulls.stream()
                .sorted(Comparator.comparingDouble(pull -> -taken.getOrDefault(pull, 0.0)))
                .toList();
    }

    private double takes(Weighing weighing, Pull pull) {
        try {
            return weighing.takes(sheet(changes(List.of(pull))));
        } catch (FaultsException e) {
            // It makes no sheet, which its run finds too.
            return 0;
        }
    }

    /**
     * What the pulls change together. A trailer that takes something up is lightened by as much as it would be without, so
     * that nothing is taken out that is not in it; to whole kilograms, as it is written.
     */
    static List<Change> changes(List<Pull> pulls) {
        double taken = pulls.stream()
                .map(Pull::change)
                .filter(Change.IntoTrailer.class::isInstance)
                .mapToDouble(change -> ((Change.IntoTrailer) change).kilograms())
                .sum();
        return pulls.stream()
                .map(Pull::change)
                .map(change -> change instanceof Change.LightenTrailer lighten
                        ? new Change.LightenTrailer(Math.floor(lighten.kilograms() + taken + 1e-6), lighten.can())
                        : change)
                // It says what the trailer weighs in the end.
                .sorted(Comparator.comparing(Change.LightenTrailer.class::isInstance))
                .toList();
    }
}
