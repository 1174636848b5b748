package fitworthy.counter.edit;

import fitworthy.counter.desk.Answer;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.List;

/**
 * Where something stands in a sheet.
 *
 * @param path by the positions of items, the same in the sheet's own text and with all that it takes from its shelf
 * @param own what the text itself has there; null where nothing
 * @param whole what stands there with all that is from the shelf; null where nothing
 */
record Spot(NodePath path, Node own, Node whole) {

    /** @throws FaultsException where a list on the way has no such item, or the text is no tree */
    static Spot of(String path, Answer now) throws FaultsException {
        FaultsException.refuse(now.tree() == null ? now.faults() : List.of());
        NodePath found = path.isEmpty() ? null : NodePath.find(path, now.whole());
        if (found == null) {
            throw refused(now, path, "is not on this sheet any more", "look at the sheet as it is now");
        }
        return new Spot(found, found.in(now.tree()), found.in(now.whole()));
    }

    static FaultsException refused(Answer now, String path, String problem, String mend) {
        return new FaultsException(List.of(new Fault(now.place(), path, problem, mend)));
    }
}
