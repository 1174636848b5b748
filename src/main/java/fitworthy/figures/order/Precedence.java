package fitworthy.figures.order;

import fitworthy.figures.plan.Tables;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.KosarajuStrongConnectivityInspector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleDirectedGraph;

/**
 * What of the work comes before what: by the sheet's own {@code after} lists, by what stands in what and by the book's table
 * of the usual order.
 */
final class Precedence {

    private final Graph<Task, DefaultEdge> network = new SimpleDirectedGraph<>(DefaultEdge.class);
    private final List<String> reversed = new ArrayList<>();
    private final List<List<String>> loops;

    /**
     * @param usual by the word of a task, the words of what usually comes before it
     * @param tasks everything that is still to be done
     */
    Precedence(Map<String, Set<String>> usual, List<Task> tasks) {
        tasks.forEach(network::addVertex);
        connect(usual, tasks);
        loops = new KosarajuStrongConnectivityInspector<>(network)
                .stronglyConnectedSets().stream()
                        .filter(set -> set.size() > 1)
                        .map(set -> tasks.stream()
                                .filter(set::contains)
                                .map(Task::name)
                                .sorted()
                                .toList())
                        .toList();
    }

    /** The tasks; an edge leads from one to another that has to wait for it. */
    Graph<Task, DefaultEdge> network() {
        return network;
    }

    /** What has to be done directly before it. */
    Stream<Task> directlyBefore(Task task) {
        return network.incomingEdgesOf(task).stream().map(network::getEdgeSource);
    }

    /** Names of parts and jobs that wait for each other, a list a loop, in alphabetical order. */
    List<List<String>> loops() {
        return loops;
    }

    /** What the sheet puts against the usual order, such as {@code Springs before Tray}. */
    List<String> reversed() {
        return reversed;
    }

    /**
     * Draws what comes before what, looking only at the pairs that some line of sheet or table may speak of. What the
     * sheet says outright is stronger than the usual order.
     */
    private void connect(Map<String, Set<String>> usual, List<Task> tasks) {
        Map<String, List<Task>> byWord = new HashMap<>();
        tasks.forEach(task -> task.words().forEach(word -> byWord.computeIfAbsent(word, none -> new ArrayList<>())
                .add(task)));
        Map<String, List<Task>> byName = tasks.stream().collect(Collectors.groupingBy(Task::name));
        List<Task> parts = tasks.stream().filter(Task::part).toList();
        Map<Task, Integer> places = new HashMap<>();
        Map<Task, List<Task>> carriers = new HashMap<>();
        tasks.forEach(task -> {
            places.put(task, places.size());
            carriers.put(task, carriers(task, byName));
        });
        for (Task task : tasks) {
            // In the order of the sheet, so that one sheet always has one order of work.
            Set<Task> others = new TreeSet<>(Comparator.comparing(places::get));
            task.words().stream()
                    .flatMap(word -> usual.getOrDefault(word, Set.of()).stream())
                    .forEach(kind ->
                            others.addAll(kind.equals(Tables.ANY_PART) ? parts : byWord.getOrDefault(kind, List.of())));
            others.removeIf(other -> standsIn(other, task, carriers));
            others.addAll(carriers.get(task));
            others.remove(task);
            for (Task other : others) {
                if (other.work().after().contains(task.name())) {
                    reversed.add(task.name() + " before " + other.name());
                } else {
                    network.addEdge(other, task);
                }
            }
            task.work().after().forEach(name -> byName.getOrDefault(name, List.of())
                    .forEach(other -> network.addEdge(other, task)));
        }
    }

    /** Whether one stands in or on the other, or in what does: what carries comes first, whatever is usual. */
    private static boolean standsIn(Task task, Task carrier, Map<Task, List<Task>> carriers) {
        for (Task on : carriers.get(task)) {
            if (on.equals(carrier) || standsIn(on, carrier, carriers)) {
                return true;
            }
        }
        return false;
    }

    private static List<Task> carriers(Task task, Map<String, List<Task>> byName) {
        return task.in().stream()
                .flatMap(name -> byName.getOrDefault(name, List.of()).stream())
                .toList();
    }
}
