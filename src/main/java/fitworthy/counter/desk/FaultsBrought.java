package fitworthy.counter.desk;

import fitworthy.source.Fault;
import fitworthy.source.NodePath;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The faults that a change brings into a text. */
final class FaultsBrought {

    private FaultsBrought() {}

    /**
     * Those that were not there before. Where the change mends something, what stood hidden behind that is not counted
     * against it, unless it stands in the same field.
     */
    static List<Fault> by(Answer before, Answer after) {
        if (after.faults().isEmpty()) {
            return List.of();
        }
        Map<String, Fault> then = named(before);
        Map<String, Fault> now = named(after);
        List<Fault> brought = now.entrySet().stream()
                .filter(fault -> !then.containsKey(fault.getKey()))
                .map(Map.Entry::getValue)
                .sorted(Fault.IN_READING_ORDER)
                .toList();
        List<Fault> mended = then.entrySet().stream()
                .filter(fault -> !now.containsKey(fault.getKey()))
                .map(Map.Entry::getValue)
                .toList();
        boolean hidden = !mended.isEmpty()
                && brought.stream().noneMatch(fault -> mended.stream()
                        .anyMatch(gone -> path(gone, before).equals(path(fault, after))));
        return hidden ? List.of() : brought;
    }

    private static Map<String, Fault> named(Answer answer) {
        Map<String, Fault> named = new HashMap<>();
        answer.faults().forEach(fault -> named.put(path(fault, answer) + "\n" + fault.problem(), fault));
        return named;
    }

    /** By the names of items, which stay where others come or go. */
    private static String path(Fault fault, Answer answer) {
        NodePath path =
                answer.tree() == null || fault.path().isEmpty() ? null : NodePath.find(fault.path(), answer.whole());
        return path == null ? fault.path() : path.byNames(answer.whole());
    }
}
