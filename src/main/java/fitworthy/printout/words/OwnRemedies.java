package fitworthy.printout.words;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.Outcome.Check;
import fitworthy.advice.Outcome.Finding;
import fitworthy.book.Buying.Settled;
import fitworthy.search.Change;
import fitworthy.search.Mender.Mending;
import fitworthy.search.Mender.Offer;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Stops that what they ask for themselves clears, such as a smaller fuse or a second chain, where no change that was tried does
 * without giving something up. Not of what is too heavy, for which what to take off is searched, nor of what is mended by an
 * answer that the search tries.
 */
public final class OwnRemedies {

    private OwnRemedies() {}

    /** Those stops, waived or not: no part has to go for them. */
    public static List<Group<Finding>> stops(Advice planned, Mending mending) {
        List<Group<Finding>> stops = StopNeeds.stops(planned);
        Set<Check> cleared = Stream.concat(
                        mending.ways().stream().map(way -> way.finding().check()),
                        Stream.concat(mending.best().stream(), mending.offers().stream())
                                .filter(OwnRemedies::keepsAll)
                                .flatMap(offer -> ClearedWords.gone(stops, offer).stream())
                                .map(group -> group.worst().check()))
                .collect(Collectors.toSet());
        return stops.stream()
                .filter(group -> group.card().settledBy() != Settled.LESS_LOAD
                        && !cleared.contains(group.worst().check())
                        && group.card().mendedBy().isEmpty())
                .toList();
    }

    /** Whether no part or cargo is given up. */
    private static boolean keepsAll(Offer offer) {
        return offer.changes().stream()
                .noneMatch(change -> change instanceof Change.Drop
                        || change instanceof Change.LeaveBehind
                        || change instanceof Change.Choose && offer.kilograms() > 0);
    }

    /** What each asks for, in a sentence; it was not worked out as a plan. */
    public static List<String> briefly(Advice planned, Mending mending) {
        return stops(planned, mending).stream()
                .map(stop -> "What the stop itself asks for clears it: " + Wording.order(stop.worst()))
                .map(told -> told.endsWith(".") ? told : told + ".")
                .distinct()
                .toList();
    }

    /** The same in full, those together that ask for the same. */
    public static List<String> inFull(Advice planned, Mending mending) {
        return StopNeeds.needs(stops(planned, mending));
    }
}
