package fitworthy.schema;

import fitworthy.quantity.Missing;
import fitworthy.source.Fault;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Place;
import java.util.List;

/**
 * The tree that is being bound, and what is wrong with it. Its paths are told in words when somebody asks, since most
 * lead neither to a fault nor to a missing figure.
 *
 * @param entry under which name of its page it stands; empty where it is the whole page
 */
record BoundTree(Node root, String entry, List<Fault> faults) {

    /** Adds a fault with a value, unless enough was said of it when it was read. */
    void tell(Node node, NodePath path, String problem, String mend) {
        if (!alreadyTold(node)) {
            tell(node.place(), path, problem, mend);
        }
    }

    void tell(Place place, NodePath path, String problem, String mend) {
        faults.add(new Fault(place, inPage(path), problem, mend));
    }

    /** The path from the top of the page. */
    String inPage(NodePath path) {
        return entry.isEmpty() || path.isTop() ? entry + path : entry + "." + path;
    }

    /** That a field is not given. */
    Missing missing(FieldSchema field, NodePath path) {
        return field.missingAt(path.byNames(root));
    }

    static boolean alreadyTold(Node node) {
        return node instanceof Node.Blank blank && blank.settled();
    }
}
