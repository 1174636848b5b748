package fitworthy.advice;

import fitworthy.book.Book;
import fitworthy.engine.RuleEngine;
import fitworthy.schema.Bound;
import fitworthy.schema.KnownGroups;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SheetDraft;
import fitworthy.shelf.Shelves;
import fitworthy.source.Digests;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import fitworthy.usual.Filling;
import java.util.List;

/**
 * How sheets are looked at: by which book, and in which region and on which day where not in their own.
 *
 * @param engine the book with its rules, and with what a house sets over it
 * @param region null for the sheet's own
 * @param asOf null for the sheet's own
 * @param shelves what sheets may take from
 */
public record View(RuleEngine engine, String region, String asOf, Shelves shelves) {

    /** A view of sheets that take nothing from a shelf. */
    public View(RuleEngine engine, String region, String asOf) {
        this(engine, region, asOf, Shelves.NONE);
    }

    /** The book, with what a house sets over it. */
    public Book book() {
        return engine.book();
    }

    /**
     * A sheet that has been read.
     *
     * @param tree what it was read from, with what it takes from its shelf written out
     * @param groups what a sheet that is like it can be made of
     */
    public record Read(Node.Mapping tree, Sheet sheet, KnownGroups groups) {}

    /**
     * Reads the tree of a sheet.
     *
     * @param root the tree, or null where reading it failed
     * @param faults what was found wrong so far; gets what is found here
     * @throws FaultsException with everything that is wrong with it
     */
    public Read read(Node.Mapping root, List<Fault> faults) throws FaultsException {
        return read(root, faults, KnownGroups.NONE);
    }

    /** The same for a sheet that is like another. @param before what that was made of */
    public Read read(Node.Mapping root, List<Fault> faults, KnownGroups before) throws FaultsException {
        Node.Mapping tree = shelves.expanded(root, faults);
        if (tree != null && region != null) {
            tree = tree.with("region", new Node.Scalar(Place.of("--region"), region, false));
        }
        if (tree != null && asOf != null) {
            tree = tree.with("as-of", new Node.Scalar(Place.of("--as-of"), asOf, false));
        }
        if (tree != null) {
            Waiving.check(tree, book(), faults);
            tree = book().tables().shopWords().told(tree, faults);
        }
        Bound<Sheet> bound = Filling.bound(tree, book(), faults, before);
        return new Read(tree, bound.record(), bound.groups());
    }

    /**
     * The text of a new sheet.
     *
     * @param place where it will stand, beside its shelf
     */
    public String draft(SheetDraft.Whole whole, Place place, List<Fault> faults) {
        return SheetDraft.text(
                whole,
                text -> Filling.filled(shelves.expanded(NodeReader.read(place, text, faults), faults), book(), faults));
    }

    /** What it is known again by: any other book, overlay, region or day has another key. The shelf goes with a sheet. */
    public String key() {
        return Digests.of(book().hash(), book().house().content(), String.valueOf(region), String.valueOf(asOf));
    }

    /** What the book has to say of the sheet of a tree, one of many. */
    public Advice advise(Node.Mapping root, List<Fault> faults) throws FaultsException {
        return Adviser.counted(engine, read(root, faults).sheet());
    }
}
