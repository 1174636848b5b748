package fitworthy.counter.plan;

import fitworthy.counter.page.FieldPath;
import fitworthy.schema.ChoiceWords;
import fitworthy.sheet.Fitment;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Things of a kind of which a vehicle has one, that are planned more than once.
 *
 * @param list of the sheet, that they are in
 * @param what the kind, and the end where it has one
 */
public record Doubled(String list, String what, List<Part> parts) {

    private static final String PARTS = "fitments";
    private static final String TANKS = "tanks";

    /** One of them. @param path see {@link FieldPath} */
    public record Part(String name, String path) {}

    /** All of a plan; not those that its choices leave out. */
    static List<Doubled> of(PlanSheet sheet) {
        Set<String> leftOut =
                sheet.answer().read().map(read -> read.sheet().leftOut()).orElse(Set.of());
        Map<String, Doubled> found = new LinkedHashMap<>();
        for (String list : List.of(PARTS, TANKS)) {
            NodePath items = NodePath.of(list);
            for (int i = 1; i <= sheet.items(items).size(); i++) {
                NodePath path = items.to(i);
                String name = sheet.text(path.to("name")).orElse("");
                Optional<String> what = list.equals(TANKS) ? ownTank(sheet, path) : single(sheet, path);
                if (!leftOut.contains(name)) {
                    what.ifPresent(one -> found.computeIfAbsent(one, none -> new Doubled(list, one, new ArrayList<>()))
                            .parts()
                            .add(new Part(name, FieldPath.text(path))));
                }
            }
        }
        return found.values().stream().filter(one -> one.parts().size() > 1).toList();
    }

    private static Optional<String> single(PlanSheet sheet, NodePath path) {
        String kind = sheet.text(path.to("kind")).orElse("");
        int known = ChoiceWords.of(Fitment.Kind.class).indexOf(kind);
        boolean single = known >= 0
                && (Fitment.Kind.values()[known].isSingle()
                        || Fitment.Kind.values()[known] == Fitment.Kind.AERIAL && isBareAerialThere(sheet));
        return single
                ? Optional.of(kind.replace('-', ' ')
                        + sheet.text(path.to("end"))
                                .map(end -> " at the " + end)
                                .orElse(""))
                : Optional.empty();
    }

    /** Whether there is an aerial that only came with its radio: several that somebody has described may be meant. */
    private static boolean isBareAerialThere(PlanSheet sheet) {
        return sheet.items(NodePath.of(PARTS)).stream()
                .anyMatch(item -> item instanceof Node.Mapping part
                        && part.entries().size() == 2
                        && part.get("kind") instanceof Node.Scalar kind
                        && kind.text().equals("aerial"));
    }

    private static Optional<String> ownTank(PlanSheet sheet, NodePath path) {
        return sheet.text(path.to("stock")).filter("yes"::equals).map(own -> "the vehicle's own tank");
    }
}
