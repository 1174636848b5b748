package fitworthy.shelf;

import fitworthy.quantity.Mark;
import fitworthy.source.Fault;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import fitworthy.source.Trees;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Puts what a sheet takes from a shelf in its place. Where a vehicle, part or the like belongs the sheet has its name
 * alone, or a group with that name under {@code from}, whose other fields stand over those of the shelf. A thing that
 * was taken begins where it stands on the shelf, so that its values keep their place; its name stands where the sheet
 * has it.
 */
final class Expansion {

    static final String FROM = "from";

    private static final String AT = "at";
    private static final String WORDS = "where";

    private static final List<String> BY_MASS = List.of("ball", "lightest");

    private static final Node.Mapping NOTHING_OVER = new Node.Mapping(Place.of(""), Map.of());

    private final Shelf shelf;
    private final List<Fault> faults;
    private int values;

    /** @param faults gets a fault for each thing that cannot be taken */
    Expansion(Shelf shelf, List<Fault> faults) {
        this.shelf = shelf;
        this.faults = faults;
    }

    /** Whether a sheet takes anything from a shelf. */
    static boolean isAsked(Node.Mapping sheet) {
        return Stream.of(Kind.values())
                .flatMap(kind -> groups(sheet.get(kind.inSheet())).stream())
                .anyMatch(group -> isName(group) || group instanceof Node.Mapping fields && fields.get(FROM) != null);
    }

    /** What stands where a thing of the shelf may. */
    static Collection<Node> groups(Node field) {
        return field == null ? List.of() : field instanceof Node.Listing listing ? listing.items() : List.of(field);
    }

    private static boolean isName(Node node) {
        return node instanceof Node.Scalar word && !word.number();
    }

    /** The sheet with what it takes written out. */
    Node.Mapping of(Node.Mapping sheet) {
        Map<String, Node.Entry> entries = new LinkedHashMap<>(sheet.entries());
        for (Kind kind : Kind.values()) {
            entries.computeIfPresent(
                    kind.inSheet(),
                    (field, entry) -> new Node.Entry(entry.place(), field(kind, entry.value(), NodePath.of(field))));
        }
        return new Node.Mapping(sheet.place(), entries);
    }

    private Node field(Kind kind, Node value, NodePath path) {
        if (!(value instanceof Node.Listing listing)) {
            return group(kind, value, path);
        }
        List<Node> items = new ArrayList<>();
        for (Node item : listing.items()) {
            items.add(group(kind, item, path.to(items.size() + 1)));
        }
        return new Node.Listing(listing.place(), items);
    }

    private Node group(Kind kind, Node node, NodePath path) {
        if (isName(node)) {
            return taken(kind, (Node.Scalar) node, NOTHING_OVER, path);
        }
        if (!(node instanceof Node.Mapping over) || over.get(FROM) == null) {
            return node;
        }
        if (over.get(FROM) instanceof Node.Scalar name) {
            return taken(kind, name, over.without(FROM), path);
        }
        return refused(
                over.entries().get(FROM).place(),
                path,
                "from is " + over.get(FROM).described() + " where the name of something on the shelf belongs",
                "from: Front bar");
    }

    private Node taken(Kind kind, Node.Scalar name, Node.Mapping over, NodePath path) {
        Node.Mapping thing = shelf.of(kind).get(name.text());
        if (thing == null) {
            return shelf.isNone() ? noShelf(name, path) : notThere(kind, name, path);
        }
        values += size(thing);
        if (values > NodeReader.MOST_VALUES) {
            return refused(
                    name.place(),
                    path,
                    "takes more than " + NodeReader.MOST_VALUES + " values from the shelf",
                    "one sheet a vehicle");
        }
        return Trees.merged(placed(known(kind, thing, over), over).with("name", name), over);
    }

    /** Words for a place on the sheet go before the coordinates of the shelf, which are another vehicle's. */
    private static Node.Mapping placed(Node.Mapping thing, Node.Mapping over) {
        return over.get(AT) instanceof Node.Mapping place && place.get(WORDS) != null ? thing.without(AT) : thing;
    }

    /** What hangs on how a trailer is loaded and built is no more than a guess for one of another mass. */
    private static Node.Mapping known(Kind kind, Node.Mapping thing, Node.Mapping over) {
        Node mass = over.get("mass");
        boolean same = mass instanceof Node.Scalar own
                && thing.get("mass") instanceof Node.Scalar kept
                && own.text().equals(kept.text());
        if (kind != Kind.TRAILERS || mass == null || same) {
            return thing;
        }
        Node.Mapping known = thing;
        for (String field : BY_MASS) {
            if (over.get(field) == null
                    && thing.get(field) instanceof Node.Scalar value
                    && Mark.read(value.text()).mark() == Mark.STATED) {
                String guess = Mark.ABOUT.before(value.text());
                known = known.with(field, new Node.Scalar(value.place(), guess, false));
            }
        }
        return known;
    }

    private Node noShelf(Node.Scalar name, NodePath path) {
        return refused(
                name.place(),
                path,
                "there is no shelf to take '" + Words.shortened(name.text(), 60) + "' from",
                "a folder '" + Shelf.FOLDER + "' beside the sheet's file, or --shelf FOLDER; or its own fields here");
    }

    private Node notThere(Kind kind, Node.Scalar name, NodePath path) {
        Collection<String> names = shelf.of(kind).keySet();
        String elsewhere = Stream.of(Kind.values())
                .filter(other -> shelf.of(other).containsKey(name.text()))
                .map(other -> "; it is among the " + other.onShelf())
                .findFirst()
                .orElse("");
        return refused(
                name.place(),
                path,
                "'" + Words.shortened(name.text(), 60) + "' is not among the " + kind.onShelf() + " of the shelf"
                        + (elsewhere.isEmpty() ? Words.suggestion(name.text(), names) : elsewhere),
                names.isEmpty()
                        ? "a list " + kind.onShelf() + ": in a file of " + shelf.folder()
                        : "a name that 'fitworthy shelf " + shelf.folder() + "' lists");
    }

    private Node refused(Place place, NodePath path, String problem, String mend) {
        faults.add(new Fault(place, path.toString(), problem, mend));
        return new Node.Blank(place, true);
    }

    private static int size(Node node) {
        int size = 1;
        if (node instanceof Node.Mapping group) {
            for (Node.Entry entry : group.entries().values()) {
                size += size(entry.value());
            }
        } else if (node instanceof Node.Listing list) {
            for (Node item : list.items()) {
                size += size(item);
            }
        }
        return size;
    }
}
