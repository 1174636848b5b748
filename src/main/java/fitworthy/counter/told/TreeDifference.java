package fitworthy.counter.told;

import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Trees;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * What makes one tree another.
 *
 * @param put values that stand there now, or others than before, in order
 * @param gone paths to what is no more, by positions in the tree before, the last first, so that each still leads there
 *     when those behind it have been taken out
 */
record TreeDifference(List<Put> put, List<NodePath> gone) {

    /** A value, or a list that was not there, at a path of the tree before. */
    record Put(NodePath path, Node value) {}

    static TreeDifference of(Node.Mapping before, Node.Mapping after) {
        List<Put> put = new ArrayList<>();
        List<NodePath> gone = new ArrayList<>();
        compare(before, after, NodePath.TOP, put, gone);
        Collections.reverse(gone);
        return new TreeDifference(put, gone);
    }

    private static void compare(Node before, Node after, NodePath path, List<Put> put, List<NodePath> gone) {
        if (after == null) {
            gone.add(path);
        } else if (before instanceof Node.Listing list && after instanceof Node.Listing other) {
            items(list, other, path, put, gone);
        } else if (after instanceof Node.Mapping group) {
            fields(before, group, path, put, gone);
        } else if (before == null || after instanceof Node.Scalar && !Trees.alike(before, after)) {
            put.add(new Put(path, after));
        }
    }

    private static void fields(Node before, Node.Mapping after, NodePath path, List<Put> put, List<NodePath> gone) {
        if (before instanceof Node.Mapping group) {
            group.entries().forEach((name, entry) -> compare(entry.value(), after.get(name), path.to(name), put, gone));
        }
        // A word that now stands beside others is moved there by whoever writes these.
        after.entries().forEach((name, entry) -> {
            boolean was = before instanceof Node.Mapping group && group.get(name) != null
                    || before instanceof Node.Scalar && Trees.alike(before, entry.value());
            if (!was) {
                compare(null, entry.value(), path.to(name), put, gone);
            }
        });
    }

    private static void items(
            Node.Listing before, Node.Listing after, NodePath path, List<Put> put, List<NodePath> gone) {
        int next = 0;
        for (int i = 0; i < before.items().size(); i++) {
            Node item = before.items().get(i);
            Node other = next < after.items().size() ? after.items().get(next) : null;
            boolean stays = other != null && same(item, other);
            compare(item, stays ? other : null, path.to(i + 1), put, gone);
            next += stays ? 1 : 0;
        }
    }

    private static boolean same(Node item, Node other) {
        return item.name() == null ? Trees.alike(item, other) : item.name().equals(other.name());
    }
}
