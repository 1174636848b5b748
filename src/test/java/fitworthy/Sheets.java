package fitworthy;

import fitworthy.sheet.Sheet;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import fitworthy.source.Trees;
import fitworthy.usual.Filling;
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

    public static Sheet read(Node.Mapping tree) throws FaultsException {
        return Filling.sheet(tree, Books.shipped(), new ArrayList<>());
    }
}
