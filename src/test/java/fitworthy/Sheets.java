package fitworthy;

import fitworthy.sheet.Sheet;
import fitworthy.shelf.Shelves;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.NodeReader;
import fitworthy.source.Trees;
import fitworthy.usual.Filling;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Sheets for tests: the plain one with changes written as YAML. */
public final class Sheets {

    private Sheets() {}

    public static Sheet plainWith(String changes) throws FaultsException {
        return read(treeWith(changes));
    }

    /** The tree that {@link #plainWith} reads. */
    public static Node.Mapping treeWith(String changes) {
        List<Fault> faults = new ArrayList<>();
        return Trees.merged(
                NodeReader.read(Books.RULES.resolve("plain-sheet.yaml"), faults),
                NodeReader.read("changes", changes, faults));
    }

    /** The tree of a shipped sheet, with what it takes from its shelf written out. @param name like {@code touring} */
    public static Node.Mapping scenario(String name) {
        return file("scenarios/" + name + ".yaml");
    }

    /** The same of any file. */
    public static Node.Mapping file(String file) {
        List<Fault> faults = new ArrayList<>();
        Node.Mapping tree = Shelves.beside().expanded(NodeReader.read(Path.of(file), faults), faults);
        if (!faults.isEmpty()) {
            throw new IllegalStateException(faults.toString());
        }
        return tree;
    }

    public static Sheet read(Node.Mapping tree) throws FaultsException {
        return Filling.sheet(tree, Books.shipped(), new ArrayList<>());
    }

    /** The paths of all single values of a tree. @param path that of the tree itself */
    public static List<NodePath> scalars(Node node, NodePath path) {
        List<NodePath> found = new ArrayList<>();
        if (node instanceof Node.Scalar) {
            found.add(path);
        } else if (node instanceof Node.Mapping mapping) {
            mapping.entries().forEach((name, entry) -> found.addAll(scalars(entry.value(), path.to(name))));
        } else if (node instanceof Node.Listing listing) {
            for (int i = 1; i <= listing.items().size(); i++) {
                found.addAll(scalars(listing.items().get(i - 1), path.to(i)));
            }
        }
        return found;
    }
}
