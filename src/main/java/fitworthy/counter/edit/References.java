package fitworthy.counter.edit;

import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Where a sheet names its parts, people, loads and loadings. */
final class References {

    private static final String ANY = "*";

    /** What names an item of a list, by that list. A name after {@code =} is a field that is called so. */
    private static final Map<String, List<String>> FIELDS = Map.of(
            "fitments",
            List.of(
                    "cases.*.off.*",
                    "options.*.choices.*.parts.*",
                    "fitments.*.in",
                    "tanks.*.in",
                    "cargo.*.in",
                    "circuits.*.part",
                    "fitments.*.work.after.*",
                    "tanks.*.work.after.*",
                    "jobs.*.work.after.*",
                    "waivers.*.subject",
                    "trip.roof-tent"),
            "tanks",
            List.of(
                    "cases.*.off.*",
                    "cases.*.filled.=",
                    "options.*.choices.*.parts.*",
                    "fitments.*.work.after.*",
                    "tanks.*.work.after.*",
                    "jobs.*.work.after.*",
                    "waivers.*.subject"),
            "jobs",
            List.of("fitments.*.work.after.*", "tanks.*.work.after.*", "jobs.*.work.after.*"),
            "occupants",
            List.of("cases.*.aboard.*"),
            "circuits",
            List.of("circuits.*.board"),
            "cargo",
            List.of("cases.*.carrying.*", "trip.roof-tent"),
            "cases",
            List.of("waivers.*.in"));

    private References() {}

    /** The paths of all values that name an item, and of the fields called so. @param tree with what is from the shelf */
    static List<NodePath> to(NodePath item, Node.Mapping tree) {
        List<NodePath.Step> steps = item.steps();
        String name = item.in(tree) == null ? null : item.in(tree).name();
        List<NodePath> found = new ArrayList<>();
        if (steps.size() == 2 && name != null) {
            for (String field : FIELDS.getOrDefault(steps.get(0).toString(), List.of())) {
                collect(List.of(field.split("\\.")), name, NodePath.TOP, tree, found);
            }
        }
        return found;
    }

    private static void collect(List<String> steps, String name, NodePath path, Node node, List<NodePath> found) {
        if (steps.isEmpty()) {
            if (node instanceof Node.Scalar word && word.text().equals(name)) {
                found.add(path);
            }
            return;
        }
        List<String> rest = steps.subList(1, steps.size());
        if (node instanceof Node.Listing list && steps.get(0).equals(ANY)) {
            for (int i = 1; i <= list.items().size(); i++) {
                collect(rest, name, path.to(i), list.items().get(i - 1), found);
            }
        } else if (node instanceof Node.Mapping group && steps.get(0).equals("=")) {
            if (group.get(name) != null) {
                found.add(path.to(name));
            }
        } else if (node instanceof Node.Mapping group) {
            collect(rest, name, path.to(steps.get(0)), group.get(steps.get(0)), found);
        }
    }
}
