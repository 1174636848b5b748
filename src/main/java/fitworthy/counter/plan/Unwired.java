package fitworthy.counter.plan;

import fitworthy.counter.page.FieldPath;
import fitworthy.shelf.Kind;
import fitworthy.shelf.Shelf;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A part of the plan for which the shelf keeps a circuit, and which has none.
 *
 * @param circuit that of the shelf
 * @param there the field {@code part} of the plan's own circuit of that name, which is no part's yet, see
 *     {@link FieldPath}; empty where there is none
 */
public record Unwired(String part, String circuit, String there) {

    /** All of a plan. */
    static List<Unwired> of(PlanSheet sheet) {
        Shelf shelf = sheet.shelf();
        NodePath list = NodePath.of(Kind.CIRCUITS.inSheet());
        Map<String, NodePath> circuits = new HashMap<>();
        Map<String, String> parts = new HashMap<>();
        for (int i = 1; i <= sheet.items(list).size(); i++) {
            String name = sheet.text(list.to(i).to("name")).orElse("");
            circuits.put(name, list.to(i));
            parts.put(name, sheet.text(list.to(i).to("part")).orElse(""));
        }
        List<Unwired> found = new ArrayList<>();
        for (Node part : sheet.items(NodePath.of(Kind.FITMENTS.inSheet()))) {
            if (part.name() != null && !parts.containsValue(part.name())) {
                shelf.at(Kind.FITMENTS, part.place()).stream()
                        .flatMap(kept -> shelf.feeds(kept).stream())
                        .filter(feed -> feed.board().isEmpty() || circuits.containsKey(feed.board()))
                        .map(feed -> new Unwired(
                                part.name(),
                                feed.name(),
                                parts.getOrDefault(feed.name(), "some").isEmpty()
                                        ? FieldPath.text(
                                                circuits.get(feed.name()).to("part"))
                                        : ""))
                        .forEach(found::add);
            }
        }
        return found;
    }
}
