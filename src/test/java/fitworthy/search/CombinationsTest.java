package fitworthy.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.advice.Outcome.Key;
import fitworthy.quantity.Figure;
import fitworthy.search.Combinations.Combination;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Levers made up with what each of them alone leaves of the limits; the plan is 100 over the first, 0 over the second. */
class CombinationsTest {

    private static final Key FIRST = new Key("mass.gvm-over", "car", "");
    private static final Key SECOND = new Key("mass.rear-over", "car", "");
    private static final Terms NOTHING = new Terms(Map.of(), Optional.empty(), Map.of(), Map.of(), Map.of(), 0, 0);
    private static final RunSummary PLANNED = summary(-100, 0);

    private final Map<Pull, RunSummary> alone = new HashMap<>();
    private final SearchLimit limit = new SearchLimit(() -> false);

    private static RunSummary summary(double first, double second) {
        return new RunSummary(
                Map.of(FIRST, first, SECOND, second), Set.of(), Set.of(), Set.of(), Map.of(), Map.of(), NOTHING);
    }

    private Pull pull(String thing, int steps, double kilograms, double first, double second) {
        Pull pull = Pull.full(new Lever(thing, steps, strength -> new Change.Drop(thing, List.of()), kilograms));
        alone.put(pull, summary(-100 + first, second));
        return pull;
    }

    private Combinations of(SearchLimit within, Pull... pulls) {
        return new Combinations(List.of(pulls), List.of(FIRST, SECOND), alone, PLANNED, PLANNED::margin, within);
    }

    private List<String> names(int size, Pull... pulls) {
        return of(limit, pulls).ofSize(size).stream()
                .map(CombinationsTest::name)
                .toList();
    }

    private static String name(Combination combination) {
        return String.join(
                "+",
                combination.pulls().stream().map(pull -> pull.lever().thing()).toList());
    }

    /** 60 and 36 are 4 short of 100; a twentieth of what they move, 4.8, may be lacking. 59 and 36 are 5 short. */
    @Test
    void aCombinationMayFallShortByATwentiethOfWhatItMoves() {
        Pull most = pull("most", 1, 1, 60, 0);
        Pull less = pull("less", 1, 1, 59, 0);
        Pull rest = pull("rest", 1, 1, 36, 0);
        assertEquals(List.of("most+less", "most+rest"), names(2, most, less, rest));
    }

    /** What one takes away counts as moved too: 105 - 11 is 6 short, but 116 were moved. */
    @Test
    void whatIsTakenAwayIsMovedToo() {
        assertEquals(List.of("up+down"), names(2, pull("up", 1, 1, 105, 0), pull("down", 1, 1, -10.5, 1)));
        assertEquals(List.of(), names(2, pull("up", 1, 1, 105, 0), pull("down", 1, 1, -12, 1)));
    }

    @Test
    void everyWatchedLimitHasToBeKept() {
        Pull worse = pull("worse", 1, 1, 100, -40);
        Pull help = pull("help", 1, 1, 0, 40);
        assertEquals(List.of(), names(1, worse, help));
        assertEquals(List.of("worse+help"), names(2, worse, help));
    }

    @Test
    void whatGivesUpLeastComesFirstAndTheEarlierOfTwo() {
        assertEquals(
                List.of("light", "first", "second", "heavy"),
                names(
                        1,
                        pull("heavy", 1, 30, 100, 0),
                        pull("first", 1, 20, 100, 0),
                        pull("second", 1, 20, 100, 0),
                        pull("light", 1, 10, 100, 0)));
    }

    @Test
    void oneThingIsChangedOnce() {
        Pull move = pull("box", 10, 0, 60, 0);
        Pull drop = pull("box", 1, 20, 60, 1);
        Pull tank = pull("tank", 10, 20, 60, 0);
        assertEquals(List.of("box+tank", "box+tank"), names(2, move, drop, tank));
    }

    /** 64 levers make 2016 pairs, of which the 2000 that give up least are kept; 63 make 1953. */
    @Test
    void twoThousandAreKept() {
        Pull[] pulls = IntStream.range(0, 64)
                .mapToObj(i -> pull("box " + i, 1, i, 100, 0))
                .toArray(Pull[]::new);
        List<Combination> kept = of(limit, pulls).ofSize(2);
        assertEquals(2000, kept.size());
        assertEquals(1, kept.get(0).kilograms());
        assertTrue(kept.get(1999).kilograms() < 63 + 62);
        assertFalse(limit.complete());

        SearchLimit fewer = new SearchLimit(() -> false);
        assertEquals(
                1953,
                of(fewer, IntStream.range(0, 63).mapToObj(i -> pulls[i]).toArray(Pull[]::new))
                        .ofSize(2)
                        .size());
        assertTrue(fewer.complete());
    }

    @Test
    void nothingIsPutTogetherOnceTimeIsUp() {
        SearchLimit over = new SearchLimit(() -> true);
        assertEquals(
                List.of(),
                of(over, pull("one", 1, 1, 60, 0), pull("two", 1, 1, 60, 0)).ofSize(2));
        assertFalse(over.complete());
    }

    /** Of two that bring 80 each in ten steps, the first then has to bring 20, in three steps rather than two and a half. */
    @Test
    void aLeverIsSetBackToTheStepThatIsJustEnough() {
        Pull first = pull("first", 10, 1, 80, 0);
        Pull second = pull("second", 10, 1, 80, 0);
        Combinations sums = of(limit, first, second);
        List<Pull> full = List.of(first, second);
        assertEquals(3, sums.needed(full, full, 0));
        assertEquals(9, sums.needed(full, List.of(first.at(4), second), 1), "68 of its 80 where the other brings 32");
        assertEquals(10, sums.needed(full, List.of(first.at(1), second), 1), "no further than it goes");
    }

    /** The second limit is 40 over, at which the first lever moves nothing: it is not pulled further for that. */
    @Test
    void aLeverIsNotSetByALimitThatItDoesNotMove() {
        Pull first = pull("first", 10, 1, 80, 0);
        Pull worse = pull("worse", 10, 1, 80, -40);
        List<Pull> full = List.of(first, worse);
        assertEquals(3, of(limit, first, worse).needed(full, full, 0));
    }

    @Test
    void aLeverThatIsNotNeededIsNotPulled() {
        Pull enough = pull("enough", 10, 1, 200, 0);
        Pull spare = pull("spare", 10, 1, 50, 0);
        List<Pull> full = List.of(enough, spare);
        assertEquals(0, of(limit, enough, spare).needed(full, full, 1));
    }

    /** How far something is moved or filled makes no other combination, what is chosen does. */
    @Test
    void thingsAreWhatIsChangedAndHow() {
        Lever move = new Lever("Box", 10, strength -> new Change.Move("cargo", "Box", Figure.of(2), strength), 0);
        Lever drop = new Lever("Box", 1, strength -> new Change.LeaveBehind("Box"), 20);
        Lever alloy = new Lever("Tray", 1, strength -> new Change.Choose("Tray", "alloy"), 0);
        Lever steel = new Lever("Tray", 1, strength -> new Change.Choose("Tray", "steel"), 0);
        assertEquals(Combination.things(List.of(new Pull(move, 2))), Combination.things(List.of(new Pull(move, 10))));
        assertEquals(
                4,
                Combination.things(Set.of(Pull.full(move), Pull.full(drop), Pull.full(alloy), Pull.full(steel)).stream()
                                .toList())
                        .size());
    }

    @Test
    void whatIsGivenUpAtLeastIsWhatHasNoSteps() {
        Pull whole = pull("whole", 1, 25, 60, 0);
        Pull stepped = pull("stepped", 2, 40, 60, 0);
        Combination both = new Combination(List.of(whole, stepped), 65, 0);
        assertEquals(25, both.least());
        assertEquals(20, stepped.at(1).kilograms());
    }
}
