package fitworthy.figures.order;

import fitworthy.quantity.Figure;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jgrapht.Graph;
import org.jgrapht.Graphs;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.traverse.TopologicalOrderIterator;

/**
 * The critical path method (from memory: Kelley and Walker 1959): the earliest times of jobs by a pass forward through
 * their network, the latest that do not delay the end by a pass back. Any number of jobs may go on at once.
 */
public final class CriticalPath {

    /** A float below this counts as none; what is left of sums of fractions. */
    private static final double NOTHING = 1e-6;

    private CriticalPath() {}

    /**
     * When a job can and must be done, in the unit of the durations.
     *
     * @param start earliest start
     * @param end earliest finish
     * @param latestStart latest start that does not delay the whole
     * @param latestEnd latest finish likewise
     */
    public record Times(Figure start, Figure end, Figure latestStart, Figure latestEnd) {

        /** Total float: by how much it may slip without delaying the whole. */
        public Figure slack() {
            return latestStart.minus(start);
        }

        public boolean critical() {
            return slack().value() < NOTHING;
        }
    }

    /**
     * Times of every job.
     *
     * @param network the jobs; an edge leads from a job to one that must wait for it
     * @param release the time before which a job cannot start; 0 where absent
     * @param duration how long each takes
     * @return in an order of work; times are missing where what they rest on is
     * @throws IllegalArgumentException for a network with a loop
     */
    public static <J> Map<J, Times> of(Graph<J, DefaultEdge> network, Map<J, Figure> release, Map<J, Figure> duration) {
        List<J> order = new ArrayList<>();
        new TopologicalOrderIterator<>(network).forEachRemaining(order::add);
        Map<J, Figure> start = new HashMap<>();
        Map<J, Figure> end = new HashMap<>();
        for (J job : order) {
            start.put(
                    job,
                    Graphs.predecessorListOf(network, job).stream()
                            .map(end::get)
                            .reduce(release.getOrDefault(job, Figure.of(0, 0)), Figure::most));
            end.put(job, start.get(job).plus(duration.get(job)));
        }
        Figure whole = end.values().stream().reduce(Figure.of(0, 0), Figure::most);
        Map<J, Times> times = new HashMap<>();
        Collections.reverse(order);
        for (J job : order) {
            Figure latestEnd = Graphs.successorListOf(network, job).stream()
                    .map(next -> times.get(next).latestStart())
                    .reduce(whole, Figure::least);
            times.put(job, new Times(start.get(job), end.get(job), latestEnd.minus(duration.get(job)), latestEnd));
        }
        Collections.reverse(order);
        Map<J, Times> inOrder = new LinkedHashMap<>();
        order.forEach(job -> inOrder.put(job, times.get(job)));
        return inOrder;
    }
}
