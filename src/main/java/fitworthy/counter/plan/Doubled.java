package fitworthy.counter.plan;

import fitworthy.counter.page.FieldPath;
import fitworthy.schema.ChoiceWords;
import fitworthy.sheet.Fitment;
import fitworthy.source.NodePath;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Parts of a kind of which a vehicle has one, that are planned more than once.
 *
 * @param what the kind, and the end where it has one
 */
public record Doubled(String what, List<Part> parts) {

    /** One of them. @param path see {@link FieldPath} */
    public record Part(String name, String path) {}

    /** All of a plan; not those that its choices leave out. */
    static List<Doubled> of(PlanSheet sheet) {
        Set<String> leftOut =
                sheet.answer().read().map(read -> read.sheet().leftOut()).orElse(Set.of());
        NodePath list = NodePath.of("fitments");
        Map<String, List<Part>> found = new LinkedHashMap<>();
        for (int i = 1; i <= sheet.items(list).size(); i++) {
            NodePath path = list.to(i);
            String kind = sheet.text(path.to("kind")).orElse("");
            String name = sheet.text(path.to("name")).orElse("");
            int known = ChoiceWords.of(Fitment.Kind.class).indexOf(kind);
            if (known >= 0 && Fitment.Kind.values()[known].isSingle() && !leftOut.contains(name)) {
                String what = kind.replace('-', ' ')
                        + sheet.text(path.to("end"))
                                .map(end -> " at the " + end)
                                .orElse("");
                found.computeIfAbsent(what, none -> new ArrayList<>()).add(new Part(name, FieldPath.text(path)));
            }
        }
        return found.entrySet().stream()
                .filter(one -> one.getValue().size() > 1)
                .map(one -> new Doubled(one.getKey(), one.getValue()))
                .toList();
    }
}
