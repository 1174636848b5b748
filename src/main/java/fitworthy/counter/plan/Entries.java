package fitworthy.counter.plan;

import fitworthy.counter.page.FieldPath;
import fitworthy.counter.plan.Entry.Box;
import fitworthy.quantity.Mark;
import fitworthy.schema.ChoiceWords;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.FieldSchema.Content;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Values of a sheet in their boxes. */
final class Entries {

    private static final List<String> MARKS = List.of("stated", "about", "usual", "ask");
    /** Fields that hold the name of something, each with the list of those. */
    private static final Map<String, String> NAMED = Map.of(
            "Sheet.region", "names-regions",
            "Fitment.in", "names-parts",
            "Tank.in", "names-parts",
            "Load.in", "names-parts",
            "Circuit.part", "names-parts",
            "Waiver.in", "names-loadings");
    /** Which choice is taken of those that stand beside it. */
    private static final String TAKEN = "Option.take";

    private final PlanSheet sheet;

    Entries(PlanSheet sheet) {
        this.sheet = sheet;
    }

    /** A field that holds one value, or words in a list. */
    Entry of(FieldSchema field, NodePath path) {
        String written = written(path);
        boolean marked = field.content() == Content.FIGURE
                || field.content() == Content.FIGURES
                || field.content() == Content.CHOICE
                        && !field.tellsKind()
                        && !field.description().needed();
        Mark.Marked read = marked ? Mark.read(written) : new Mark.Marked(Mark.STATED, written);
        String unit = Unit.of(field, read.text());
        return new Entry(
                FieldPath.id(path),
                FieldPath.text(path),
                field.content() == Content.FIGURES ? path.last().toString() : Names.label(field),
                Names.help(field),
                field.tellsKind() ? Box.KIND : choices(field, path).isEmpty() ? Box.TEXT : Box.CHOICE,
                Unit.without(unit, read.text()),
                unit,
                written.isEmpty()
                        ? ""
                        : read.mark() == Mark.ASKED ? "ask" : read.mark().word(),
                marked ? MARKS : List.of(),
                choices(field, path),
                NAMED.getOrDefault(called(field), ""),
                note(field, path, read));
    }

    private static String called(FieldSchema field) {
        return field.accessor().getDeclaringClass().getSimpleName() + "." + field.name();
    }

    private List<String> choices(FieldSchema field, NodePath path) {
        if (called(field).equals(TAKEN)) {
            return sheet.items(path.above().to("choices")).stream()
                    .map(choice -> String.valueOf(choice.name()))
                    .toList();
        }
        return field.content() == Content.CHOICE ? ChoiceWords.of(field.type()) : List.of();
    }

    /** The words for a place, which stand in its stead or beside its coordinates. */
    Entry words(FieldSchema field, NodePath path) {
        String written = sheet.text(path).or(() -> sheet.text(path.to("where"))).orElse("");
        Mark.Marked read = Mark.read(written);
        return new Entry(
                FieldPath.id(path),
                FieldPath.text(path),
                Names.label(field) + ", in words",
                "Such as: in the tray, or 120 mm behind the rear axle. Coordinates that are given count before it.",
                Box.TEXT,
                read.text(),
                "",
                written.isEmpty()
                        ? ""
                        : read.mark() == Mark.ASKED ? "ask" : read.mark().word(),
                MARKS,
                List.of(),
                "names-places",
                note(field, path, read));
    }

    /** Names with a figure each: those that are given, and each tank. */
    List<Entry> figures(FieldSchema field, NodePath path) {
        Set<String> names = new LinkedHashSet<>();
        if (sheet.at(path) instanceof Node.Mapping given) {
            names.addAll(given.entries().keySet());
        }
        sheet.items(NodePath.of("tanks")).stream().map(Node::name).forEach(names::add);
        names.remove(null);
        return names.stream().map(name -> of(field, path.to(name))).toList();
    }

    /** Whether a group is not there yet, and needs more than one value to be there at all. */
    boolean isBegunWhole(FieldSchema group, NodePath path) {
        return group.content() == Content.GROUP
                && sheet.at(path) == null
                && needed(group, path).size() > 1;
    }

    /** What has to be said of a new item of a list, or of a group that is not there yet. */
    List<Entry> needed(FieldSchema list, NodePath path) {
        NodePath item = beginning(list, path);
        return sheet.fields(list.type().asSubclass(Record.class), item).stream()
                .filter(field -> field.description().needed() && field.content() != Content.GROUPS)
                .map(field -> field.content() == Content.GROUP
                        ? words(field, item.to(field.name()))
                        : of(field, item.to(field.name())))
                .toList();
    }

    /** Where a new item of a list stands, or a group itself. */
    NodePath beginning(FieldSchema list, NodePath path) {
        return list.content() == Content.GROUPS ? path.to(sheet.items(path).size() + 1) : path;
    }

    private String written(NodePath path) {
        return sheet.at(path) instanceof Node.Listing words
                ? words.items().stream()
                        .map(word -> word instanceof Node.Scalar text ? text.text() : "")
                        .collect(Collectors.joining(", "))
                : sheet.text(path).orElse("");
    }

    private String note(FieldSchema field, NodePath path, Mark.Marked read) {
        String usual = (read.isOpen() || sheet.at(path) == null ? sheet.filledText(path) : Optional.<String>empty())
                .map(Mark::read)
                .filter(filled -> !filled.isOpen())
                .map(filled -> "usual: " + Unit.rounded(filled.text()))
                .orElse("");
        return Stream.of(
                        sheet.isFromShelf(path) ? "from the shelf" : new OnShelf(sheet).of(field, path),
                        usual,
                        sheet.asked(path) > 0 ? "answer missing" : "")
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", "));
    }
}
