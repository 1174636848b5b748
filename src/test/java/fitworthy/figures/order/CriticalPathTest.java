package fitworthy.figures.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.figures.order.CriticalPath.Times;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import java.util.HashMap;
import java.util.Map;
import org.jgrapht.Graph;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleDirectedGraph;
import org.junit.jupiter.api.Test;

class CriticalPathTest {

    private final Graph<String, DefaultEdge> network = new SimpleDirectedGraph<>(DefaultEdge.class);
    private final Map<String, Figure> duration = new HashMap<>();
    private final Map<String, Figure> release = new HashMap<>();

    private void job(String name, double takes, String... after) {
        network.addVertex(name);
        duration.put(name, Figure.of(takes, 0));
        for (String earlier : after) {
            network.addEdge(earlier, name);
        }
    }

    private Map<String, Times> times() {
        return CriticalPath.of(network, release, duration);
    }

    private static void assertTimes(Times got, double start, double end, double latestStart, double latestEnd) {
        assertEquals(start, got.start().value(), 1e-9);
        assertEquals(end, got.end().value(), 1e-9);
        assertEquals(latestStart, got.latestStart().value(), 1e-9);
        assertEquals(latestEnd, got.latestEnd().value(), 1e-9);
    }

    /**
     * A course handout with its table of earliest and latest times, in hours (seen):
     * https://studylib.net/doc/8378728/example-1--draw-the-network-for-the-events-in-table-1
     */
    @Test
    void aCourseHandoutsSevenJobs() {
        job("A", 6);
        job("B", 2, "A");
        job("C", 2, "A");
        job("D", 3, "B");
        job("F", 2, "C");
        job("E", 4, "D", "F");
        job("G", 1, "E");
        Map<String, Times> times = times();
        assertTimes(times.get("A"), 0, 6, 0, 6);
        assertTimes(times.get("B"), 6, 8, 6, 8);
        assertTimes(times.get("D"), 8, 11, 8, 11);
        assertTimes(times.get("E"), 11, 15, 11, 15);
        assertTimes(times.get("G"), 15, 16, 15, 16);
        assertTimes(times.get("C"), 6, 8, 7, 9);
        assertTimes(times.get("F"), 8, 10, 9, 11);
        assertTrue(times.get("D").critical());
        assertEquals(1, times.get("C").slack().value(), 1e-9);
        assertFalse(times.get("C").critical());
    }

    /**
     * A worked problem in which two ways are equally long, in days (seen): https://www.scribd.com/document/783336345
     */
    @Test
    void twoCriticalPathsOfNineteenDays() {
        job("A", 4);
        job("B", 3, "A");
        job("C", 5, "A");
        job("D", 2, "B");
        job("E", 6, "C", "D");
        job("F", 4, "E");
        Map<String, Times> times = times();
        assertTimes(times.get("B"), 4, 7, 4, 7);
        assertTimes(times.get("C"), 4, 9, 4, 9);
        assertTimes(times.get("F"), 15, 19, 15, 19);
        assertTrue(times.values().stream().allMatch(Times::critical));
    }

    /** Worked by hand: B waits for its part until 10, so A, which ends at 6, may slip by 4; C ends on the way, at 7. */
    @Test
    void aPartThatComesLateGivesTheJobBeforeItTime() {
        job("A", 6);
        job("B", 2, "A");
        job("C", 1, "A");
        release.put("B", Figure.of(10, 0));
        Map<String, Times> times = times();
        assertTimes(times.get("A"), 0, 6, 4, 10);
        assertTimes(times.get("B"), 10, 12, 10, 12);
        assertTimes(times.get("C"), 6, 7, 11, 12);
    }

    @Test
    void aDurationNotKnownLeavesOnlyWhatRestsOnItOpen() {
        job("A", 6);
        job("B", 2);
        job("C", 1, "A", "B");
        Missing days = new Missing("jobs.B.work.days", "days", "the workshop");
        duration.put("B", Figure.missing(days));
        Map<String, Times> times = times();
        assertEquals(6, times.get("A").end().value(), 1e-9);
        assertEquals(days, times.get("C").start().missing().get(0));
        assertEquals(days, times.get("A").latestEnd().missing().get(0));
    }

    @Test
    void aLoopIsRefused() {
        job("A", 1);
        job("B", 1, "A");
        network.addEdge("B", "A");
        assertThrows(IllegalArgumentException.class, this::times);
    }
}
