package fitworthy.usual;

import fitworthy.book.Book;
import fitworthy.schema.Bound;
import fitworthy.schema.KnownGroups;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SheetReader;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import java.util.ArrayList;
import java.util.List;

/** Fills in what a sheet leaves to the rule book: a tree in which every value stands as if it had been written. */
public final class Filling {

    private Filling() {}

    /**
     * The tree of a sheet with all that it leaves to the book; what cannot be filled in stays as it is.
     *
     * @param faults gets what is wrong with it
     */
    public static Node.Mapping filled(Node.Mapping tree, Book book, List<Fault> faults) {
        return PlacesInWords.filled(new UsualFilling(tree, book).tree(), book, faults);
    }

    /** Whether nothing has to be filled in, so that what is read of a tree is what stands there. */
    public static boolean isWritten(Node.Mapping tree, Book book) {
        Node.Mapping filled = filled(tree, book, new ArrayList<>());
        return filled.entries().keySet().equals(tree.entries().keySet())
                && filled.entries().keySet().stream()
                        .allMatch(name -> filled.get(name).equals(tree.get(name)));
    }

    /** A sheet with the people and the tank that it leaves to the book, their figures left out. */
    public static Node.Mapping withItems(Node.Mapping tree) {
        return UsualFilling.isLeft(tree) ? WholeItems.added(tree) : tree;
    }

    /** The usual figures of the book that stand in a sheet once it is filled in. */
    public static List<Use> uses(Node.Mapping tree, Book book) {
        return new UsualFilling(tree, book).uses();
    }

    /**
     * The sheet of a tree, with all that it leaves to the book.
     *
     * @param tree the tree, or null where reading it failed
     * @param faults what was found wrong so far; gets what is found here
     * @throws FaultsException where there is any fault
     */
    public static Sheet sheet(Node.Mapping tree, Book book, List<Fault> faults) throws FaultsException {
        return bound(tree, book, faults, KnownGroups.NONE).record();
    }

    /** The same, with what a sheet that is like it can be made of. @param before what a sheet that was like it was made of */
    public static Bound<Sheet> bound(Node.Mapping tree, Book book, List<Fault> faults, KnownGroups before)
            throws FaultsException {
        return SheetReader.bound(tree == null ? null : filled(tree, book, faults), book.regionNames(), faults, before);
    }
}
