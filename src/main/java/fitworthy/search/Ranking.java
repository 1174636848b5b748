package fitworthy.search;

import fitworthy.advice.Outcome.Check;
import fitworthy.advice.Outcome.Key;
import fitworthy.book.Book;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which single changes help most: first by the stops of mass that they clear, then by stops, by changes, by what they win
 * of the limits that stay passed, by whether a part or cargo is given up, by what is lost of range and water, and by money.
 * What takes other parts along comes after what does not and clears as many stops.
 */
final class Ranking {

    /** What is too little to be called a help: this share of what is over. */
    private static final double LEAST = 0.05;

    private static final String SUSPENSION = "suspension";

    private final Trials trials;
    private final RunSummary planned;
    private final Set<Key> ofMass;

    /**
     * How much a pull helps.
     *
     * @param ofMass stops of mass that it clears
     * @param stops all stops that it clears
     * @param changes changes that it clears
     * @param share the mean share that it wins of what is over limits that stay passed
     */
    private record Help(Pull pull, RunSummary summary, int ofMass, int stops, int changes, double share) {

        boolean clears() {
            return stops + changes > 0;
        }
    }

    Ranking(Trials trials) {
        this.trials = trials;
        this.planned = trials.planned();
        this.ofMass = Weighing.stopsOfMass(trials.advised());
    }

    /** The best pulls, one of a lever. @param alone what each pull does alone */
    List<Pull> best(Map<Pull, RunSummary> alone, int most) {
        Comparator<Help> best = Comparator.comparingInt((Help help) -> -help.ofMass)
                .thenComparingInt(help -> -help.stops)
                .thenComparing(help -> takesOthersAlong(help.pull))
                .thenComparingInt(help -> -help.changes)
                .thenComparingLong(help -> -Math.round(help.share * 100))
                .thenComparing(help -> givesUp(help.pull))
                .thenComparingLong(help -> Math.round(help.summary.terms().lost(planned.terms()) * 100))
                .thenComparing(help -> help.summary.terms().added(planned.terms()))
                .thenComparingDouble(help -> help.pull.kilograms());
        Set<Lever> taken = new LinkedHashSet<>();
        return alone.entrySet().stream()
                .filter(entry -> trials.breaksNothing(entry.getValue()))
                .map(entry -> help(entry.getKey(), entry.getValue()))
                .filter(help -> help.clears() || help.share >= LEAST)
                .sorted(best)
                .filter(help -> taken.add(help.pull.lever()))
                .limit(most)
                .map(Help::pull)
                .toList();
    }

    /** The stops and changes that a plan clears, each in every loading. */
    Set<Key> cleared(RunSummary summary) {
        Set<Check> gone = summary.cleared(planned.stops());
        gone.addAll(summary.cleared(planned.changes()));
        return Stream.concat(planned.stops().stream(), planned.changes().stream())
                .filter(key -> gone.contains(new Check(key.rule(), key.subject())))
                .collect(Collectors.toSet());
    }

    private static boolean takesOthersAlong(Pull pull) {
        return pull.change() instanceof Change.Drop drop && !drop.contents().isEmpty();
    }

    private static boolean givesUp(Pull pull) {
        return pull.change() instanceof Change.Drop
                || pull.change() instanceof Change.LeaveBehind
                || pull.change() instanceof Change.Choose && pull.kilograms() > 0;
    }

    /**
     * What was found of a part that is left out is not mended: of these the stops count alone. Nor is what springs are too weak
     * for by fitting none.
     */
    private int changes(Pull pull, RunSummary summary) {
        Set<Check> cleared = summary.cleared(planned.changes());
        if (pull.change() instanceof Change.Drop drop) {
            cleared.removeIf(check -> check.subject().equals(drop.fitment())
                    || drop.contents().contains(check.subject())
                    || !drop.kept().isEmpty() && Book.topic(check.rule()).equals(SUSPENSION));
        }
        return cleared.size();
    }

    private Help help(Pull pull, RunSummary summary) {
        return new Help(
                pull,
                summary,
                summary.cleared(ofMass).size(),
                summary.cleared(planned.stops()).size(),
                changes(pull, summary),
                ofMass.stream()
                        .filter(summary.findings()::contains)
                        .mapToDouble(key -> Math.min(1, summary.gain(planned, key) / -planned.margin(key)))
                        .average()
                        .orElse(0));
    }
}
