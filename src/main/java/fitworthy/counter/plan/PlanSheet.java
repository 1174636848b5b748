package fitworthy.counter.plan;

import fitworthy.book.Book;
import fitworthy.counter.desk.Answer;
import fitworthy.quantity.Mark;
import fitworthy.quantity.Missing;
import fitworthy.schema.ChoiceWords;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.RecordSchema;
import fitworthy.schema.Variant;
import fitworthy.sheet.Sheet;
import fitworthy.shelf.SheetWords;
import fitworthy.shelf.Shelf;
import fitworthy.source.Fault;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.usual.Filling;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A sheet as its form shows it: what it says itself, what it takes from the shelf, and what it leaves to the book. */
final class PlanSheet {

    private final Answer answer;
    private final Node.Mapping whole;
    private Node.Mapping filled;
    private Set<String> asked;

    /** @param answer of a text that is a tree */
    PlanSheet(Answer answer) {
        this.answer = answer;
        this.whole = Filling.withItems(answer.whole());
    }

    /** Where what belongs to a sheet is asked for. */
    static String address(String name) {
        return "/sheets/" + URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
    }

    private Node.Mapping filled() {
        if (filled == null) {
            filled = answer.read()
                    .map(read -> Filling.filled(whole, answer.view().book(), new ArrayList<>()))
                    .orElse(whole);
        }
        return filled;
    }

    private Set<String> asked() {
        if (asked == null) {
            asked = answer.arrangement().stream()
                    .flatMap(told -> told.figuresToBring().stream())
                    .flatMap(figure -> figure.fields().stream())
                    .map(Missing::path)
                    .collect(Collectors.toSet());
        }
        return asked;
    }

    Answer answer() {
        return answer;
    }

    /** What the sheet and its shelf say. */
    Node.Mapping whole() {
        return whole;
    }

    /** What the sheet's own file says there; null where it says nothing. */
    Node own(NodePath path) {
        return path.in(answer.tree());
    }

    /** What the sheet and its shelf say there; null where they say nothing. */
    Node at(NodePath path) {
        Node node = path.in(whole);
        return node instanceof Node.Blank ? null : node;
    }

    Optional<String> text(NodePath path) {
        return at(path) instanceof Node.Scalar word ? Optional.of(word.text()) : Optional.empty();
    }

    /** What stands there once the book has filled in what is left to it. */
    Optional<String> filledText(NodePath path) {
        return path.in(filled()) instanceof Node.Scalar word ? Optional.of(word.text()) : Optional.empty();
    }

    /** Whether anything stands there once the book has filled in what is left to it. */
    boolean isFilled(NodePath path) {
        return path.in(filled()) != null;
    }

    List<Node> items(NodePath list) {
        return at(list) instanceof Node.Listing found ? found.items() : List.of();
    }

    Shelf shelf() {
        return answer.view().shelves().of(answer.place().file());
    }

    /** What is typed, as it is understood beside the shelf and the book. @param faults gets what is wrong with it */
    SheetWords words(List<Fault> faults) {
        Book book = answer.view().book();
        return new SheetWords(
                book.tables().shopWords(), shelf(), book.regions().keySet(), book.usualPlaces(), "", faults);
    }

    /** Whether it is taken from the shelf and not said on the sheet itself. */
    boolean isFromShelf(NodePath path) {
        Node node = at(path);
        return node != null && !node.place().file().equals(answer.tree().place().file());
    }

    /** Whether a check waits for it, or for something in it. */
    boolean isAsked(NodePath path) {
        return asked(path) > 0;
    }

    /** How many figures checks wait for there or below. */
    long asked(NodePath path) {
        String named = path.byNames(whole);
        return asked().stream()
                .filter(one -> one.equals(named) || one.startsWith(named + "."))
                .count();
    }

    /** How many values there or below are guesses. */
    long guesses(NodePath path) {
        return guesses(path.in(filled()));
    }

    private static long guesses(Node node) {
        if (node instanceof Node.Scalar word) {
            return Mark.read(word.text()).mark().isGuess() ? 1 : 0;
        }
        Stream<Node> below = node instanceof Node.Mapping group
                ? group.entries().values().stream().map(Node.Entry::value)
                : node instanceof Node.Listing list ? list.items().stream() : Stream.empty();
        return below.mapToLong(PlanSheet::guesses).sum();
    }

    /** The path with the names of items, by which it is known again. */
    String key(NodePath path) {
        return path.byNames(whole);
    }

    /** The fields of what stands at a path, those of its kind among them. */
    List<FieldSchema> fields(Class<? extends Record> type, NodePath path) {
        RecordSchema schema = RecordSchema.of(type);
        return schema.fields().stream()
                .flatMap(field -> field.content() == FieldSchema.Content.FIELDS_OF_KIND
                        ? details(schema, path).stream().flatMap(kind -> RecordSchema.of(kind).fields().stream())
                        : Stream.of(field))
                .toList();
    }

    private Optional<Class<? extends Record>> details(RecordSchema schema, NodePath path) {
        return schema.fields().stream()
                .filter(FieldSchema::tellsKind)
                .findFirst()
                .flatMap(field -> text(path.to(field.name()))
                        .map(word -> ChoiceWords.of(field.type()).indexOf(word))
                        .filter(index -> index >= 0)
                        .map(index -> ((Variant) field.type().getEnumConstants()[index]).details()));
    }

    /** The field that a path leads to; of an item its list. Empty where it leads to none. */
    Optional<FieldSchema> field(NodePath path) {
        if (path.isTop()) {
            return Optional.empty();
        }
        if (path.last() instanceof NodePath.Item) {
            return field(path.above());
        }
        Class<? extends Record> type = Sheet.class;
        if (!path.above().isTop()) {
            Optional<FieldSchema> above = field(path.above());
            if (above.map(FieldSchema::content)
                    .filter(FieldSchema.Content.FIGURES::equals)
                    .isPresent()) {
                return above;
            }
            if (above.map(FieldSchema::type).filter(Class::isRecord).isEmpty()) {
                return Optional.empty();
            }
            type = above.get().type().asSubclass(Record.class);
        }
        return fields(type, path.above()).stream()
                .filter(field -> field.name().equals(path.last().toString()))
                .findFirst();
    }
}
