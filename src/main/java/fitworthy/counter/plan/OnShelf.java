package fitworthy.counter.plan;

import fitworthy.schema.FieldSchema;
import fitworthy.schema.FieldSchema.Content;
import fitworthy.shelf.Kind;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What the shelf says otherwise than the sheet, however that was said there. */
record OnShelf(PlanSheet sheet) {

    private static final String LIFT = "lift";
    private static final Set<Content> TOLD = Set.of(Content.FIGURE, Content.CHOICE);

    /** In words, of a field that the sheet says itself; empty where the shelf says the same or nothing. */
    String of(FieldSchema field, NodePath path) {
        boolean own = sheet.own(path) instanceof Node.Scalar;
        return TOLD.contains(field.content()) && own
                ? Stream.of(Kind.values())
                        .filter(kind ->
                                kind.inSheet().equals(path.steps().get(0).toString()))
                        .map(kind -> otherwise(kind, path))
                        .findFirst()
                        .orElse("")
                : "";
    }

    private String otherwise(Kind kind, NodePath path) {
        List<NodePath.Step> steps = path.steps();
        boolean listed = steps.size() > 1 && steps.get(1) instanceof NodePath.Item;
        NodePath thing = NodePath.of(kind.inSheet());
        NodePath item = listed ? thing.to(((NodePath.Item) steps.get(1)).position()) : thing;
        String[] field =
                steps.stream().skip(listed ? 2 : 1).map(NodePath.Step::toString).toArray(String[]::new);
        return field.length == 0
                ? ""
                : name(kind, item)
                        .map(name -> sheet.words(new ArrayList<>())
                                .otherwiseOnShelf(
                                        kind,
                                        name,
                                        NodePath.of(field),
                                        sheet.text(path).orElse("")))
                        .orElse("");
    }

    /** What a thing of the sheet is called on the shelf, where it is taken from there or called so. */
    private Optional<String> name(Kind kind, NodePath item) {
        return Optional.ofNullable(sheet.at(item))
                .flatMap(thing -> sheet.shelf().at(kind, thing.place()).or(() -> Optional.ofNullable(thing.name())
                        .filter(sheet.shelf().of(kind)::containsKey)));
    }

    /** Springs of the shelf that lift otherwise than the sheet says of those at the other end. */
    List<String> lifts() {
        NodePath parts = NodePath.of(Kind.FITMENTS.inSheet());
        List<NodePath> springs = IntStream.rangeClosed(1, sheet.items(parts).size())
                .mapToObj(parts::to)
                .filter(part ->
                        sheet.text(part.to("kind")).filter("springs"::equals).isPresent())
                .toList();
        List<String> told = new ArrayList<>();
        for (NodePath own : springs) {
            for (NodePath other : springs) {
                boolean said = sheet.own(other.to(LIFT)) instanceof Node.Scalar;
                name(Kind.FITMENTS, own)
                        .filter(name -> said && sheet.isFromShelf(own.to(LIFT)))
                        .map(name -> sheet.words(new ArrayList<>())
                                .otherLiftOnShelf(
                                        name,
                                        sheet.text(other.to(LIFT)).orElse(""),
                                        sheet.text(other.to("name")).orElse("")))
                        .filter(words -> !words.isEmpty())
                        .ifPresent(words -> told.add(words + "."));
            }
        }
        return told;
    }
}
