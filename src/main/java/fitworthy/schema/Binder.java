package fitworthy.schema;

import fitworthy.quantity.Figure;
import fitworthy.quantity.Mark;
import fitworthy.quantity.Missing;
import fitworthy.source.Fault;
import fitworthy.source.Located;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Place;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Turns located nodes into records by their {@link RecordSchema}, collecting every fault instead of stopping at the first. A
 * figure or choice that is left out becomes one that knows what is missing.
 */
public final class Binder {

    /** Where what the fields say of themselves will do. */
    private static final Function<Node.Mapping, Map<String, String>> GENERAL = group -> Map.of();

    private final BoundTree tree;
    private final Examples examples;
    private final ValueBinder values;
    private final boolean whole;
    private final UnknownNames unknown;
    private final KnownGroups before;
    private final KnownGroups groups = new KnownGroups();

    private Binder(
            Class<? extends Record> page,
            BoundTree tree,
            boolean whole,
            Function<Node.Mapping, Map<String, String>> fitting,
            KnownGroups before) {
        this.examples = new Examples(fitting);
        this.before = before;
        this.tree = tree;
        this.whole = whole;
        this.unknown = new UnknownNames(page, tree);
        this.values = new ValueBinder(tree, examples);
    }

    /**
     * Makes a record of a mapping.
     *
     * @return the record; where faults were added its figures may be missing, and it must not be used
     */
    public static <R extends Record> Bound<R> bind(Class<R> type, Node.Mapping mapping, List<Fault> faults) {
        return bind(type, mapping, faults, KnownGroups.NONE);
    }

    /** The same for a page that is like another. @param before the groups of that */
    public static <R extends Record> Bound<R> bind(
            Class<R> type, Node.Mapping mapping, List<Fault> faults, KnownGroups before) {
        return bind(type, Located.of(mapping), "", true, GENERAL, faults, before);
    }

    /**
     * The same for a page whose messages have examples of its own.
     *
     * @param fitting examples by field for a group and all below it; none where what its fields say of themselves will do
     */
    public static <R extends Record> Bound<R> bind(
            Class<R> type,
            Node.Mapping mapping,
            Function<Node.Mapping, Map<String, String>> fitting,
            List<Fault> faults) {
        return bind(type, Located.of(mapping), "", true, fitting, faults, KnownGroups.NONE);
    }

    /** The same for what stands under a name of its page. */
    public static <R extends Record> Bound<R> bind(
            Class<R> type,
            String name,
            Node.Entry entry,
            Function<Node.Mapping, Map<String, String>> fitting,
            List<Fault> faults) {
        return bind(type, new Located(entry.place(), entry.value()), name, true, fitting, faults, KnownGroups.NONE);
    }

    /** The same where what is needed may stand elsewhere, all but the kind by which the other fields are known. */
    public static <R extends Record> Bound<R> bindPartly(
            Class<R> type, String name, Node.Entry entry, List<Fault> faults) {
        return bind(type, new Located(entry.place(), entry.value()), name, false, GENERAL, faults, KnownGroups.NONE);
    }

    /** @param whole whether a field that is needed has to be there */
    private static <R extends Record> Bound<R> bind(
            Class<R> type,
            Located places,
            String name,
            boolean whole,
            Function<Node.Mapping, Map<String, String>> fitting,
            List<Fault> faults,
            KnownGroups before) {
        List<Fault> found = new ArrayList<>();
        Binder binder = new Binder(type, new BoundTree(places.node(), name, found), whole, fitting, before);
        R record = binder.record(type, places.node(), NodePath.TOP, true);
        found.stream().filter(fault -> !faults.contains(fault)).forEach(faults::add);
        return binder.unknown.misspelt().isEmpty()
                ? new Bound<>(record, places, binder.unknown.doubtful(), binder.groups)
                : bind(
                        type,
                        new Located(places.beginning(), binder.unknown.asMeant(places.node())),
                        name,
                        whole,
                        fitting,
                        faults,
                        before);
    }

    /** @param asked whether a field that is needed and left out is a fault */
    private <R extends Record> R record(Class<R> type, Node node, NodePath path, boolean asked) {
        boolean group = node instanceof Node.Mapping;
        if (asked && !group) {
            tree.tell(
                    node,
                    path,
                    "is " + node.described() + " where a group of fields belongs",
                    "fields below it, such as '" + Examples.beginning(type) + "'");
        }
        Node.Mapping mapping = group ? (Node.Mapping) node : new Node.Mapping(node.place(), Map.of());
        RecordSchema schema = RecordSchema.of(type);
        Variant kind = kind(schema, mapping);
        Object[] fields = examples.below(
                mapping,
                () -> kind == null
                        ? fields(schema, null, mapping, path, asked && group)
                        : examples.within(
                                kind.examples(),
                                () -> fields(schema, RecordSchema.of(kind.details()), mapping, path, asked && group)));
        return type.cast(schema.made(fields));
    }

    /** @param ofKind the fields that it has by its kind; null where it tells none */
    private Object[] fields(
            RecordSchema schema, RecordSchema ofKind, Node.Mapping mapping, NodePath path, boolean asked) {
        Object[] fields = new Object[schema.fields().size()];
        for (int i = 0; i < fields.length; i++) {
            FieldSchema field = schema.fields().get(i);
            if (field.content() != FieldSchema.Content.FIELDS_OF_KIND) {
                fields[i] = field(field, mapping, path, asked);
            } else if (ofKind != null) {
                fields[i] = fieldsOfKind(ofKind, mapping, path, asked);
            }
        }
        boolean kindUnknown = ofKind == null && schema.names().size() < fields.length;
        if (!kindUnknown) {
            unknown.tell(schema, ofKind, mapping, path);
        }
        return fields;
    }

    /** The fields of a part's kind, which stand beside the common ones. */
    private Record fieldsOfKind(RecordSchema schema, Node.Mapping mapping, NodePath path, boolean asked) {
        return schema.made(schema.fields().stream()
                .map(field -> field(field, mapping, path, asked))
                .toArray());
    }

    /** The kind of a group; null where it tells none. */
    private static Variant kind(RecordSchema schema, Node.Mapping mapping) {
        for (FieldSchema field : schema.fields()) {
            if (field.tellsKind() && mapping.get(field.name()) instanceof Node.Scalar word) {
                int index = ChoiceWords.of(field.type()).indexOf(word.text());
                return index < 0 ? null : (Variant) field.type().getEnumConstants()[index];
            }
        }
        return null;
    }

    private Object field(FieldSchema field, Node.Mapping group, NodePath above, boolean asked) {
        Node.Entry entry = group.entries().get(field.name());
        NodePath path = above.to(field.name());
        if (entry == null || entry.value() instanceof Node.Blank) {
            boolean needed = field.description().needed() && (whole || field.tellsKind());
            if (needed && asked && !(entry != null && BoundTree.alreadyTold(entry.value()))) {
                tree.tell(
                        entry == null ? group.place() : entry.place(),
                        path,
                        (entry == null ? "is missing: " : "is left empty: ")
                                + field.description().value(),
                        examples.of(field) + (entry == null ? "" : "; what stands behind a # is not read"));
            }
            return entry != null
                            && entry.value() instanceof Node.Blank blank
                            && !blank.needs().isEmpty()
                            && field.content() == FieldSchema.Content.FIGURE
                    ? waiting(blank)
                    : absent(field, group.place(), path);
        }
        Object value = value(field, entry.value(), path);
        return field.optional() ? Optional.ofNullable(value) : value;
    }

    /** A figure that would be worked out of what is not given. */
    private static Figure waiting(Node.Blank blank) {
        return Figure.missing(blank.needs().stream()
                .map(needed -> new Missing(needed.path(), needed.meaning(), needed.find()))
                .toList());
    }

    private Object value(FieldSchema field, Node node, NodePath path) {
        return switch (field.content()) {
            case TEXT -> values.text(field, node, path);
            case FIGURE -> values.figure(field, node, path);
            case CHOICE -> values.choice(field, node, path);
            case DATE -> values.date(field, node, path);
            case MONEY -> values.money(field, node, path);
            case GROUP -> group(field, node, path);
            case TEXTS -> texts(field, node, path);
            case GROUPS -> groups(field, node, path);
            case FIGURES -> figures(field, node, path);
            case FIELDS_OF_KIND -> throw new IllegalStateException("they are bound with the fields beside them");
        };
    }

    private Record group(FieldSchema field, Node node, NodePath path) {
        if (!(node instanceof Node.Mapping)) {
            tree.tell(
                    node,
                    path,
                    "is " + node.described() + " where a group of fields belongs",
                    examples.leftOut(field, node, examples.below(field)));
        }
        return examples.within(
                examples.inside(field),
                () -> known(field.type().asSubclass(Record.class), node, path, node instanceof Node.Mapping));
    }

    /** The record of a group, which is not made again where it was made of the same before. */
    private <R extends Record> R known(Class<R> type, Node node, NodePath path, boolean asked) {
        Record made = isWhole(path) ? before.of(node, path) : null;
        int faults = tree.faults().size();
        R record = made == null ? record(type, node, path, asked) : type.cast(made);
        if (tree.faults().size() == faults && isWhole(path)) {
            groups.put(node, path, record);
        }
        return record;
    }

    /** Whether it is a group at the top or an item of a list there: smaller ones are not worth the looking up. */
    private static boolean isWhole(NodePath path) {
        return path.above().isTop() || path.above().above().isTop() && path.last() instanceof NodePath.Item;
    }

    private Object absent(FieldSchema field, Place place, NodePath path) {
        if (field.optional()) {
            return Optional.empty();
        }
        return switch (field.content()) {
            case TEXT -> "";
            case FIGURE -> Figure.missing(tree.missing(field, path));
            case CHOICE -> values.noChoice(field, path);
            case DATE, MONEY, FIELDS_OF_KIND -> null;
            case GROUP -> known(field.type().asSubclass(Record.class), new Node.Blank(place, false), path, false);
            case TEXTS, GROUPS -> List.of();
            case FIGURES -> Map.of();
        };
    }

    private List<String> texts(FieldSchema field, Node node, NodePath path) {
        List<String> texts = new ArrayList<>();
        for (Node item : items(field, node, path)) {
            texts.add(item instanceof Node.Scalar scalar ? scalar.text() : "");
            if (!(item instanceof Node.Scalar)) {
                tree.tell(
                        item,
                        path.to(texts.size()),
                        "is " + item.described() + " where words belong",
                        examples.of(field));
            }
        }
        return texts;
    }

    private List<Object> groups(FieldSchema field, Node node, NodePath path) {
        List<Object> groups = new ArrayList<>();
        List<Node> items = items(field, node, path);
        if (whole) {
            torn(RecordSchema.of(field.type().asSubclass(Record.class)), items, path);
        }
        for (Node item : items) {
            NodePath itemPath = path.to(groups.size() + 1);
            groups.add(examples.within(
                    Map.of(), () -> known(field.type().asSubclass(Record.class), item, itemPath, true)));
        }
        return groups;
    }

    /** Tells where two items lack just what the other has, since a dash stands before a field that goes on with an item. */
    private void torn(RecordSchema schema, List<Node> items, NodePath path) {
        Set<String> otherLacks = Set.of();
        for (int i = 0; i < items.size(); i++) {
            Set<String> oneLacks = otherLacks;
            otherLacks = items.get(i) instanceof Node.Mapping group ? lacking(schema, group) : Set.of();
            if (i > 0 && items.get(i - 1) instanceof Node.Mapping one && items.get(i) instanceof Node.Mapping other) {
                if (!oneLacks.isEmpty()
                        && !otherLacks.isEmpty()
                        && other.entries().keySet().containsAll(oneLacks)
                        && one.entries().keySet().containsAll(otherLacks)) {
                    tree.tell(
                            other,
                            path.to(i + 1),
                            "a dash stands before this, which begins another entry of the list",
                            "no dash, where it goes on with the entry above");
                }
            }
        }
    }

    private static Set<String> lacking(RecordSchema schema, Node.Mapping group) {
        Set<String> lacking = Set.of();
        for (FieldSchema field : schema.fields()) {
            if (field.description() != null && field.description().needed() && group.get(field.name()) == null) {
                lacking = lacking.isEmpty() ? new HashSet<>() : lacking;
                lacking.add(field.name());
            }
        }
        return lacking;
    }

    private List<Node> items(FieldSchema field, Node node, NodePath path) {
        if (node instanceof Node.Listing listing) {
            return listing.items();
        }
        tree.tell(
                node,
                path,
                "is " + node.described() + " where a list belongs",
                node instanceof Node.Scalar scalar
                                && field.content() == FieldSchema.Content.TEXTS
                                && !Mark.isAsked(scalar.text())
                        ? field.name() + ": [" + Words.shortened(scalar.text().replaceAll("^\\[|\\]$", ""), 60) + "]"
                        : examples.of(field, node));
        return List.of();
    }

    private Map<String, Figure> figures(FieldSchema field, Node node, NodePath path) {
        Map<String, Figure> figures = new LinkedHashMap<>();
        if (node instanceof Node.Mapping mapping) {
            mapping.entries()
                    .forEach((name, entry) -> figures.put(name, values.figure(field, entry.value(), path.to(name))));
        } else {
            tree.tell(
                    node,
                    path,
                    "is " + node.described() + " where names with figures belong",
                    examples.of(field, node));
        }
        return figures;
    }
}
