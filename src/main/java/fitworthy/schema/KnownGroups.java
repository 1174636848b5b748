package fitworthy.schema;

import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.HashMap;
import java.util.Map;

/**
 * Records that were made of the groups of a page without a fault, so that of a page that is written a little otherwise only
 * those are made anew that are written otherwise or stand elsewhere.
 */
public final class KnownGroups {

    /** Those of no page. */
    public static final KnownGroups NONE = new KnownGroups();

    private record Known(Node node, Record record) {}

    private final Map<NodePath, Known> groups = new HashMap<>();

    KnownGroups() {}

    /** The record of a group, where this one is written the same at the same place; else null. */
    Record of(Node node, NodePath path) {
        Known known = groups.get(path);
        return known != null && known.node().equals(node) ? known.record() : null;
    }

    void put(Node node, NodePath path, Record record) {
        groups.put(path, new Known(node, record));
    }
}
