package fitworthy.printout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Adviser;
import fitworthy.advice.View;
import fitworthy.document.Report.Points;
import fitworthy.schema.KnownGroups;
import fitworthy.search.SearchTime;
import fitworthy.shelf.Shelf;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The plain wagon of 2520 kg with twenty boxes of 5 kg. */
class LookedForTest {

    private static final String BOX =
            "  - {name: %s, kind: other, mass: %s kg +/- 0 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}}\n";
    private static final String HEAVY = "vehicle: {ratings: {gvm: %d kg, front-axle: 3000 kg, rear-axle: 3000 kg}}\n"
            + "fitments:\n"
            + IntStream.range(0, 20)
                    .mapToObj(i -> BOX.formatted("Light " + i, "5"))
                    .collect(Collectors.joining());

    private final AtomicInteger tried = new AtomicInteger();

    private LookedFor lookedFor(String yaml, SearchTime time) throws FaultsException {
        Node.Mapping tree = Sheets.treeWith(yaml);
        return LookedFor.of(
                Books.engine(), new View.Read(tree, Sheets.read(tree), KnownGroups.NONE), Shelf.NONE, time, tried::set);
    }

    /** The ways that are told where time is up at once. */
    private List<String> ways(String yaml) throws FaultsException {
        LookedFor found = lookedFor(yaml, new SearchTime(0));
        assertFalse(found.complete());
        return Changes.ways(Adviser.advise(Books.engine(), Sheets.plainWith(yaml)), found.mending()).stream()
                .filter(Points.class::isInstance)
                .flatMap(block -> ((Points) block).texts().stream())
                .toList();
    }

    /** However slow the machine: with a safe behind the boxes it is 200 kg over, of which that is 150. */
    @Test
    void whereTimeIsUpAtOnceWhatHelpsMostIsToldFirst() throws FaultsException {
        List<String> ways = ways(HEAVY.formatted(2570) + BOX.formatted("Safe", "150"));
        assertTrue(ways.get(0).startsWith("Do without 'Safe'"), ways.toString());
    }

    /** The luggage is 60 kg of 590, or of 610, that are over. */
    @Test
    void whatTakesOffLessThanATenthOfWhatIsOverIsNoWay() throws FaultsException {
        List<String> more = ways(HEAVY.formatted(2030));
        assertEquals(1, more.size(), more.toString());
        assertTrue(more.get(0).startsWith("Leave 'Luggage' behind"), more.toString());
        assertEquals(List.of(), ways(HEAVY.formatted(2010)));
    }

    @Test
    void whoLeavesIsNotKeptWaiting() throws FaultsException {
        String yaml = HEAVY.formatted(2570);
        assertFalse(lookedFor(yaml, new SearchTime(60).orSooner(() -> true)).complete());
        assertEquals(0, tried.get());
    }
}
