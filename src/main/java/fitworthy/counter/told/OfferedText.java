package fitworthy.counter.told;

import fitworthy.counter.desk.Answer;
import fitworthy.counter.edit.SetValue;
import fitworthy.search.Change;
import fitworthy.sheet.Sheet;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Place;
import fitworthy.source.TextEdit;
import fitworthy.source.Trees;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The text of a sheet with the changes of an offer. A change is made on a tree; what differs in it from the tree before
 * is written, and what comes out has to read as the very sheet that was run through the book.
 */
final class OfferedText {

    /** The field under which a part names what it is on the shelf. */
    private static final String FROM = "from";

    private OfferedText() {}

    /** Empty where it cannot be written into the text as that is laid out. @param now a sheet without faults */
    static Optional<Answer> of(Answer now, List<Change> changes) {
        try {
            Optional<Answer> made = Optional.of(now);
            for (int i = 0; i < changes.size() && made.isPresent(); i++) {
                made = with(changes.get(i), made.get(), sheet(now, changes.subList(0, i + 1)));
            }
            return made;
        } catch (FaultsException e) {
            return Optional.empty();
        }
    }

    /** The sheet that the changes make. */
    static Sheet sheet(Answer now, List<Change> changes) throws FaultsException {
        var read = now.read().orElseThrow();
        return Change.sheet(changes, read.tree(), read.sheet(), now.view().book(), read.groups());
    }

    /** The text that a person would write first, of those that make the wanted sheet. */
    private static Optional<Answer> with(Change change, Answer now, Sheet wanted) throws FaultsException {
        Node.Mapping before = now.read().orElseThrow().tree();
        Node.Mapping after = change.applied(before, now.read().orElseThrow().sheet());
        if (change instanceof Change.Swap swap) {
            return swapped(swap, now, after).filter(made -> isOf(made, wanted)).findFirst();
        }
        Answer made = edited(now, after);
        if (made.read().isPresent() && !isOf(made, wanted)) {
            // What the shelf says of a trailer becomes a guess once the sheet says another mass; so it is written too.
            made = edited(made, after);
        }
        return Optional.of(made).filter(text -> isOf(text, wanted));
    }

    private static boolean isOf(Answer made, Sheet wanted) {
        return made.read().filter(read -> read.sheet().equals(wanted)).isPresent();
    }

    private static Answer edited(Answer now, Node.Mapping after) throws FaultsException {
        TreeDifference difference = TreeDifference.of(now.read().orElseThrow().tree(), after);
        Answer made = now;
        for (TreeDifference.Put put : difference.put()) {
            made = put.value() instanceof Node.Scalar value
                    ? new SetValue(put.path().byNames(made.whole()), value.text()).in(made)
                    : written(made, TextEdit.with(made.text(), put.path(), put.value()));
        }
        for (NodePath gone : difference.gone()) {
            made = written(made, TextEdit.without(made.text(), gone));
        }
        return made;
    }

    /** What cannot be written stays as it was; the sheet it makes is then not the wanted one. */
    private static Answer written(Answer now, Optional<String> text) {
        return text.map(now::to).orElse(now);
    }

    /** By its name on the shelf where that says all of it, else with all its fields. */
    private static Stream<Answer> swapped(Change.Swap swap, Answer now, Node.Mapping after) {
        NodePath path = NodePath.find("fitments." + swap.part(), after);
        Node.Mapping fitted = (Node.Mapping) path.in(after);
        Node.Mapping byName =
                new Node.Mapping(Place.of(""), Map.of()).with(FROM, new Node.Scalar(Place.of(""), swap.other(), false));
        for (var field : fitted.entries().entrySet()) {
            Node onShelf = swap.fields().get(field.getKey());
            if (onShelf == null || !Trees.alike(onShelf, field.getValue().value())) {
                byName = byName.with(field.getKey(), field.getValue().value());
            }
        }
        return Stream.of(byName, fitted)
                .flatMap(node -> TextEdit.exchanged(now.text(), path, node).stream())
                .map(now::to);
    }
}
