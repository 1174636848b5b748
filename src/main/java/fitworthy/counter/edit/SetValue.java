package fitworthy.counter.edit;

import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.Change;
import fitworthy.source.FaultsException;
import fitworthy.source.FieldAnswer;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.TextEdit;
import java.util.Optional;

/**
 * Puts a value into a field, or takes the field out.
 *
 * @param path of the field, by the names of items in lists
 * @param value as the sheet is to have it, with its unit and mark; empty where the field is to be left out
 */
public record SetValue(String path, String value) implements Change {

    public SetValue {
        value = value.strip();
    }

    @Override
    public String label() {
        return Labels.field(path);
    }

    @Override
    public Answer in(Answer now) throws FaultsException {
        if (value.isEmpty()) {
            return without(now, Spot.of(path, now));
        }
        FieldAnswer answer = new FieldAnswer(now.place(), path, value);
        return now.answered(answer);
    }

    private Answer without(Answer now, Spot spot) throws FaultsException {
        if (spot.own() == null) {
            if (spot.whole() == null) {
                return now;
            }
            throw Spot.refused(
                    now,
                    path,
                    "comes from the shelf, so that it cannot be left out here",
                    "a value for this sheet, or ask");
        }
        NodePath gone = spot.path();
        while (isLeftEmpty(gone.above(), now.tree())) {
            gone = gone.above();
        }
        return written(TextEdit.without(now.text(), gone), now, path);
    }

    /** Whether a field's group has nothing else in it; an item of a list stays. */
    private static boolean isLeftEmpty(NodePath group, Node.Mapping tree) {
        return group.last() instanceof NodePath.Named
                && group.in(tree) instanceof Node.Mapping fields
                && fields.entries().size() == 1;
    }

    /** The sheet with another text. @throws FaultsException where that could not be written */
    static Answer written(Optional<String> text, Answer now, String path) throws FaultsException {
        return now.to(text.orElseThrow(() -> Spot.refused(
                now, path, "this cannot be written into the file as it is laid out", "change it in the file by hand")));
    }
}
