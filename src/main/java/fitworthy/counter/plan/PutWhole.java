package fitworthy.counter.plan;

import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.Change;
import fitworthy.counter.edit.SetValue;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.TextEdit;
import java.util.List;

/**
 * Puts a list or a group in place of whatever stands in a field, beside what is taken from the shelf.
 *
 * @param key the path of the field by the names of items
 */
record PutWhole(String label, String key, Node value) implements Change {

    @Override
    public Answer in(Answer now) throws FaultsException {
        // A single value makes the room, and is exchanged for the whole.
        NodePath path = NodePath.find(key, now.whole());
        Answer room = path == null || path.in(now.tree()) == null ? new SetValue(key, "ask").in(now) : now;
        return room.to(TextEdit.exchanged(room.text(), path, value)
                .orElseThrow(() -> new FaultsException(List.of(new Fault(
                        now.place(),
                        key,
                        "this cannot be written as the file is laid out",
                        "write it there by hand")))));
    }
}
