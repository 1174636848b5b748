package fitworthy.counter.plan;

import fitworthy.counter.page.FieldPath;
import fitworthy.counter.plan.Group.Fold;
import fitworthy.counter.plan.Group.Items;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.FieldSchema.Content;
import fitworthy.sheet.Point;
import fitworthy.sheet.Sheet;
import fitworthy.source.NodePath;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The fields of a sheet as its schema has them: what is said first, then what checks ask for, then all else. */
final class Form {

    /** So few further fields are shown at once. */
    private static final int FEW = 2;

    /** What a customer's letter commonly says of the trip. */
    private static final Set<String> OF_LETTERS = Set.of(
            "trip.longest-leg",
            "trip.days",
            "trip.parked",
            "trip.terrain",
            "trip.dust",
            "trip.top-speed",
            "trip.people");
    /** The part that another thing sits in, which its place goes by. */
    private static final String CARRIER = "in";

    /** What comes off for a tray or canopy. */
    private static final String REPLACED = "removes";

    private static final Set<String> BODIES = Set.of("tray", "canopy");

    /** Which fields of a group are shown. */
    private enum Part {
        SAID,
        REST,
        ALL
    }

    private final PlanSheet sheet;
    private final Entries entries;
    private final Lines lines;
    private final Set<String> opened;

    /** @param opened keys of what is open on the page */
    Form(PlanSheet sheet, Set<String> opened) {
        this.sheet = sheet;
        this.entries = new Entries(sheet);
        this.lines = new Lines(sheet);
        this.opened = opened;
    }

    /** The keys of what is open, as a page sends them. */
    static Set<String> opened(String keys) {
        return Arrays.stream(keys.split("\\R")).filter(key -> !key.isEmpty()).collect(Collectors.toSet());
    }

    /** The fields of the whole sheet that hold one value each. */
    Group job() {
        return shown("", topFields(), NodePath.TOP);
    }

    /** What opens at a path, without the fields that nobody said or asks for; of an item or a group. */
    Group body(NodePath path) {
        Optional<FieldSchema> begun = sheet.field(path).filter(field -> entries.isBegunWhole(field, path));
        return begun.map(field -> Group.ofItems(items(field, path))).orElseGet(() -> shown("", fields(path), path));
    }

    /** The other fields of what stands at a path. */
    Group rest(NodePath path) {
        return group("", path.isTop() ? topFields() : fields(path), path, Part.REST);
    }

    /** The one entry of a field, for a page that has it already. */
    Entry entry(FieldSchema field, NodePath path) {
        return isGroup(field) ? entries.words(field, path) : entries.of(field, path);
    }

    Fold fold(NodePath path) {
        String key = sheet.key(path);
        return new Fold(
                FieldPath.id(path) + "-fold",
                key,
                FieldPath.text(path),
                false,
                lines.of(path),
                opened.contains(key) ? Optional.of(body(path)) : Optional.empty());
    }

    /** Whether a group is not there yet and is begun as a whole. */
    boolean isBegunWhole(FieldSchema group, NodePath path) {
        return entries.isBegunWhole(group, path);
    }

    Items items(FieldSchema list, NodePath path) {
        List<Fold> folds = IntStream.rangeClosed(1, sheet.items(path).size())
                .mapToObj(position -> fold(path.to(position)))
                .toList();
        return new Items(
                FieldPath.id(path), Names.title(list), FieldPath.text(path), folds, entries.needed(list, path));
    }

    /** The closed line of the thing that a field is of: an item of a list of the sheet, or one of its groups. */
    Optional<Fold> thing(NodePath path) {
        List<NodePath.Step> steps = path.steps();
        if (steps.size() < 2) {
            return Optional.empty();
        }
        NodePath thing = NodePath.of(steps.get(0).toString());
        return Optional.of(fold(steps.get(1) instanceof NodePath.Item item ? thing.to(item.position()) : thing));
    }

    private List<FieldSchema> topFields() {
        return sheet.fields(Sheet.class, NodePath.TOP).stream()
                .filter(field -> !isGroup(field) && field.content() != Content.GROUPS)
                .toList();
    }

    private List<FieldSchema> fields(NodePath path) {
        return sheet.field(path)
                .map(field -> sheet.fields(field.type().asSubclass(Record.class), path))
                .orElse(List.of());
    }

    private Group shown(String legend, List<FieldSchema> fields, NodePath path) {
        long hidden = fields.stream().filter(field -> !isShown(field, path)).count();
        return group(legend, fields, path, hidden <= FEW ? Part.ALL : Part.SAID);
    }

    private Group group(String legend, List<FieldSchema> fields, NodePath path, Part part) {
        List<Entry> own = new ArrayList<>();
        List<Group> groups = new ArrayList<>();
        List<Fold> folds = new ArrayList<>();
        List<Items> lists = new ArrayList<>();
        if (part != Part.REST) {
            fields.stream()
                    .filter(field -> isSaid(field, path))
                    .forEach(field -> add(field, path, own, groups, folds, lists));
            fields.stream()
                    .filter(field -> !isSaid(field, path) && isShown(field, path))
                    .forEach(field -> add(field, path, own, groups, folds, lists));
        }
        if (part != Part.SAID) {
            fields.stream()
                    .filter(field -> !isShown(field, path))
                    .forEach(field -> add(field, path, own, groups, folds, lists));
        }
        return new Group(
                legend,
                own,
                groups,
                folds,
                lists,
                part == Part.SAID ? Optional.of(more(fields, path)) : Optional.empty(),
                off(path));
    }

    /** Where a group can be taken off as a whole. */
    private String off(NodePath path) {
        return !path.isTop()
                        && sheet.own(path) != null
                        && sheet.field(path)
                                .filter(FieldSchema::optional)
                                .filter(Form::isGroup)
                                .isPresent()
                ? FieldPath.text(path)
                : "";
    }

    private Fold more(List<FieldSchema> fields, NodePath path) {
        String key = sheet.key(path) + " more";
        return new Fold(
                FieldPath.id(path) + "-more",
                key,
                FieldPath.text(path),
                true,
                new Line("More fields", List.of(), List.of()),
                opened.contains(key) ? Optional.of(group("", fields, path, Part.REST)) : Optional.empty());
    }

    private void add(
            FieldSchema field,
            NodePath above,
            List<Entry> own,
            List<Group> groups,
            List<Fold> folds,
            List<Items> lists) {
        NodePath path = above.to(field.name());
        switch (field.content()) {
            case GROUP -> {
                if (entries.isBegunWhole(field, path)) {
                    lists.add(items(field, path));
                } else if (above.steps().size() == 1 && !isPlace(field)) {
                    folds.add(fold(path));
                } else {
                    groups.add(isPlace(field) ? place(field, path) : shown(Names.title(field), fields(path), path));
                }
            }
            case GROUPS -> lists.add(items(field, path));
            case FIGURES -> groups.add(Group.ofEntries(Names.title(field), entries.figures(field, path)));
            default -> own.add(entries.of(field, path));
        }
    }

    /** A place has words beside its coordinates where its field takes them. */
    private Group place(FieldSchema field, NodePath path) {
        Stream<Entry> words = field.description().inWords() ? Stream.of(entries.words(field, path)) : Stream.empty();
        return Group.ofEntries(
                Names.title(field),
                Stream.concat(words, fields(path).stream().map(axis -> entries.of(axis, path.to(axis.name()))))
                        .toList());
    }

    private static boolean isPlace(FieldSchema field) {
        return field.type() == Point.class;
    }

    static boolean isGroup(FieldSchema field) {
        return field.content() == Content.GROUP;
    }

    private boolean isSaid(FieldSchema field, NodePath above) {
        return sheet.at(above.to(field.name())) != null;
    }

    /** A kind, a place, what is needed and what customers say is shown whether anybody has said it here or not. */
    private boolean isShown(FieldSchema field, NodePath above) {
        return isSaid(field, above)
                || field.description().needed()
                || isPlace(field)
                || field.name().equals(CARRIER)
                || field.name().equals(REPLACED)
                        && BODIES.contains(sheet.text(above.to("kind")).orElse(""))
                || OF_LETTERS.contains(above.to(field.name()).toString())
                || sheet.isAsked(above.to(field.name()));
    }
}
