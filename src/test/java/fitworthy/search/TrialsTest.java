package fitworthy.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Outcome.Key;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The plain wagon is 20 kg over its GVM; its luggage weighs 60 kg. */
class TrialsTest {

    private static final Pull LEAVE = of(new Change.LeaveBehind("Luggage"));
    /** No occupant or cargo of this name is there, so nothing changes. */
    private static final Pull NOTHING = of(new Change.LeaveBehind("Nobody's"));
    /** A fill of no number makes no sheet. */
    private static final Pull NO_SHEET =
            of(new Change.PutRight("Main tank", NodePath.of("tanks", "Main tank", "fill"), "?", "-"));

    private final List<Integer> told = new ArrayList<>();
    private boolean over;
    private final SearchLimit limit = new SearchLimit(() -> over);

    private static Pull of(Change change) {
        return Pull.full(new Lever("thing", 1, strength -> change, 0));
    }

    private Trials trials() throws FaultsException {
        Node.Mapping tree = Sheets.treeWith("vehicle: {ratings: {gvm: 2500 kg}}");
        return new Trials(Books.engine(), tree, Sheets.read(tree), limit, told::add);
    }

    @Test
    void aStopIsClearedOrNot() throws FaultsException {
        Trials trials = trials();
        Key gvm = trials.planned().stops().iterator().next();
        assertTrue(trials.clears(List.of(LEAVE), trials.planned().stops()));
        assertTrue(trials.settles(List.of(LEAVE), gvm));
        assertFalse(trials.clears(List.of(NOTHING), trials.planned().stops()));
        assertFalse(trials.settles(List.of(NOTHING), gvm));
    }

    /** Whichever is pulled first: what the trailer weighs in the end is said last, to whole kilograms downwards. */
    @Test
    void aTrailerIsLightenedByAsMuchAsWithoutWhatItTakesUp() {
        Change.IntoTrailer into = new Change.IntoTrailer("Luggage", 60.5, false);
        Change.LightenTrailer lighten = new Change.LightenTrailer(900, true);
        assertEquals(List.of(lighten), Trials.changes(List.of(of(lighten))));
        List<Change> both = List.of(into, new Change.LightenTrailer(960, true));
        assertEquals(both, Trials.changes(List.of(of(into), of(lighten))));
        assertEquals(both, Trials.changes(List.of(of(lighten), of(into))));
    }

    @Test
    void theSameChangesAreRunOnce() throws FaultsException {
        Trials trials = trials();
        trials.run(List.of(LEAVE));
        trials.run(List.of(LEAVE));
        trials.run(List.of(NOTHING));
        assertEquals(2, trials.count());
        assertEquals(List.of(1, 2), told);
    }

    @Test
    void whatMakesNoSheetIsNoWayOut() throws FaultsException {
        Trials trials = trials();
        assertEquals(Optional.empty(), trials.run(List.of(NO_SHEET)));
        assertFalse(trials.clears(List.of(NO_SHEET), trials.planned().stops()));
        assertEquals(1, trials.count());
        assertTrue(limit.complete());
    }

    /** What was run before is still known. */
    @Test
    void nothingIsRunOnceTimeIsUp() throws FaultsException {
        Trials trials = trials();
        trials.run(List.of(LEAVE));
        over = true;
        assertEquals(Optional.empty(), trials.run(List.of(NOTHING)));
        assertTrue(trials.clears(List.of(LEAVE), trials.planned().stops()));
        assertEquals(1, trials.count());
        assertFalse(limit.complete());
    }
}
