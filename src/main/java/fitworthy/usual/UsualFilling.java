package fitworthy.usual;

import fitworthy.book.Book;
import fitworthy.book.UsualField;
import fitworthy.book.UsualFigure;
import fitworthy.book.UsualFigures;
import fitworthy.book.UsualTerm;
import fitworthy.quantity.Figure;
import fitworthy.quantity.GuessSpread;
import fitworthy.quantity.Mark;
import fitworthy.quantity.QuantityText;
import fitworthy.schema.FieldSchema;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Place;
import fitworthy.source.Trees;
import fitworthy.source.Words;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Fills the usual figures of a book in where a sheet asks for them: field by field, or wherever it leaves one out. */
final class UsualFilling {

    private static final String USUAL = "usual";
    private static final String ALL = "assume-usual";
    private static final Set<String> YES = Set.of("yes", "true");
    private static final List<String> COORDINATES = List.of("x", "y", "z");

    private final Node.Mapping written;
    private final Book book;
    private final boolean all;
    private final List<Use> uses = new ArrayList<>();
    private Node.Mapping tree;
    private List<String> lineage;
    private LocalDate day;

    /** @param written the sheet as its writer left it */
    UsualFilling(Node.Mapping written, Book book) {
        this.written = written;
        this.book = book;
        this.all = isLeft(written);
        this.tree = written;
        fill();
    }

    /** Whether a sheet leaves to the book whatever it does not say. */
    static boolean isLeft(Node.Mapping sheet) {
        return YES.contains(text(sheet.get(ALL)));
    }

    /** The sheet with the usual figures in it. */
    Node.Mapping tree() {
        return tree;
    }

    /** The values of the book that stand in it. */
    List<Use> uses() {
        return uses;
    }

    private void fill() {
        if (!(all || holdsUsual(written))) {
            return;
        }
        lineage = book.lineageWritten(text(written.get("region")));
        try {
            day = LocalDate.parse(text(written.get("as-of")));
        } catch (DateTimeException e) {
            return;
        }
        if (all) {
            tree = WholeItems.added(tree);
        }
        book.usual().inOrder().forEach(this::entry);
    }

    private static boolean holdsUsual(Node node) {
        if (node instanceof Node.Mapping mapping) {
            for (Node.Entry entry : mapping.entries().values()) {
                if (holdsUsual(entry.value())) {
                    return true;
                }
            }
            return false;
        }
        if (node instanceof Node.Listing listing) {
            for (Node item : listing.items()) {
                if (holdsUsual(item)) {
                    return true;
                }
            }
            return false;
        }
        return isUsual(node);
    }

    private static boolean isUsual(Node node) {
        return text(node).equals(USUAL);
    }

    private void entry(UsualFigures.Entry entry) {
        NodePath holder = NodePath.of(entry.field().holder());
        Node node = holder.in(tree);
        if (!entry.field().listed()) {
            if (node instanceof Node.Mapping
                    || all && node == null && !entry.field().thing().equals("trailer")) {
                thing(entry, holder);
            }
        } else if (node instanceof Node.Listing listing) {
            String kind = entry.field()
                    .kind()
                    .map(part -> Words.hyphenated(part.name()))
                    .orElse("");
            IntStream.rangeClosed(1, listing.items().size())
                    .filter(i -> listing.items().get(i - 1) instanceof Node.Mapping item
                            && (kind.isEmpty() || text(item.get("kind")).equals(kind)))
                    .forEach(i -> thing(entry, holder.to(i)));
        }
    }

    private void thing(UsualFigures.Entry entry, NodePath thing) {
        NodePath path = place(entry, thing.to(entry.field().path()));
        if (isUsual(path.in(tree)) || all && canBeMade(path)) {
            entry.figure()
                    .inForce(lineage, day, when -> UsualTerm.when(when).orElseThrow().stream()
                            .allMatch(term -> holds(term, entry, thing)))
                    .flatMap(value -> value(entry, value, thing))
                    .ifPresent(value -> tree = Trees.making(tree, path, value));
        }
    }

    /** Where words for a place go: beside coordinates that leave one out, under their own name. */
    private NodePath place(UsualFigures.Entry entry, NodePath path) {
        return isGroup(entry)
                        && path.in(tree) instanceof Node.Mapping group
                        && COORDINATES.stream().anyMatch(name -> isAbsent(group.get(name)))
                ? path.to(PlacesInWords.WHERE)
                : path;
    }

    private static boolean isGroup(UsualFigures.Entry entry) {
        return entry.field().schema().orElseThrow().content() == FieldSchema.Content.GROUP;
    }

    /** Whether nothing stands there, and nothing stands in the way of the groups that lead to it. */
    private boolean canBeMade(NodePath path) {
        Node node = path.in(tree);
        return isAbsent(node)
                && (path.above().in(tree) instanceof Node.Mapping
                        || path.above().isTop()
                        || canBeMade(path.above()));
    }

    private static boolean isAbsent(Node node) {
        return node == null || node instanceof Node.Blank blank && !blank.faulted();
    }

    private boolean holds(UsualTerm term, UsualFigures.Entry entry, NodePath thing) {
        NodePath path = UsualField.fromTop(term.path()) ? term.path() : thing.to(term.path());
        if (term.relation() == UsualTerm.Relation.MISSING) {
            Node node = path.in(written);
            return isAbsent(node) || isUsual(node);
        }
        String held = Mark.read(text(path.in(tree))).text();
        return switch (term.relation()) {
            case IS -> held.equals(term.word());
            case HAS -> (" " + held.toLowerCase(Locale.ROOT)).contains(" " + term.word());
            default ->
                figure(held, entry, term)
                        .filter(figure -> figure.isBelow(amount(entry, term)))
                        .isPresent();
        };
    }

    private static Figure amount(UsualFigures.Entry entry, UsualTerm term) {
        return figure(term.word(), entry, term).orElseThrow();
    }

    /** What a text says of the field of a term; nothing where it is no such figure. */
    private static Optional<Figure> figure(String text, UsualFigures.Entry entry, UsualTerm term) {
        FieldSchema field = entry.field().to(term.path()).orElseThrow();
        try {
            return Optional.of(QuantityText.parse(text, field.description().in()));
        } catch (QuantityText.Unreadable e) {
            return Optional.empty();
        }
    }

    private Optional<Node> value(UsualFigures.Entry entry, UsualFigure.Value value, NodePath thing) {
        int index = entry.figure().values().indexOf(value);
        Place place = book.usual().place(entry.id(), index);
        FieldSchema field = entry.field().schema().orElseThrow();
        Optional<String> text = isGroup(entry)
                ? Optional.of(value.value())
                : UsualTerm.per(value.per())
                        .map(per -> scaled(entry, field, value, per, thing))
                        .orElse(Optional.of(value.value()))
                        .map(usual -> USUAL + " " + usual);
        text.ifPresent(filled -> uses.add(new Use(entry.id(), index)));
        return text.map(filled -> new Node.Scalar(place, filled, false));
    }

    /** So much for each of another figure, as much as that is off added to its own tolerance; nothing where that is not known. */
    private Optional<String> scaled(
            UsualFigures.Entry entry, FieldSchema field, UsualFigure.Value value, UsualTerm per, NodePath thing) {
        NodePath path = UsualField.fromTop(per.path()) ? per.path() : thing.to(per.path());
        Mark.Marked held = Mark.read(text(path.in(tree)));
        return figure(held.text(), entry, per)
                .map(amount -> held.mark().isGuess()
                        ? GuessSpread.of(
                                amount,
                                entry.field()
                                        .to(per.path())
                                        .orElseThrow()
                                        .description()
                                        .in(),
                                false)
                        : amount)
                .map(amount -> amount.dividedBy(amount(entry, per)).times(read(field, value.value())))
                .filter(figure -> field.description().within().canBe(figure.value()))
                .map(figure -> QuantityText.shown(figure.value(), unit(value.value())) + " +/- "
                        + QuantityText.shown(figure.tolerance(), unit(value.value())));
    }

    private static Figure read(FieldSchema field, String value) {
        try {
            return QuantityText.parse(value, field.description().in());
        } catch (QuantityText.Unreadable e) {
            throw new IllegalStateException("a usual figure was checked but is unreadable", e);
        }
    }

    /** The unit that a quantity is written in. */
    private static String unit(String quantity) {
        return quantity.replaceFirst("^[-+]?[0-9.]+\\s*", "").replaceFirst("\\s*(\\+/-|\u00B1).*", "");
    }

    private static String text(Node node) {
        return node instanceof Node.Scalar scalar ? scalar.text() : "";
    }
}
