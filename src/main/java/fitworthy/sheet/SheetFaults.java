package fitworthy.sheet;

import fitworthy.quantity.Mark;
import fitworthy.schema.Bound;
import fitworthy.source.Fault;
import fitworthy.source.Located;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Words;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The faults of a sheet: where they stand, and what those found by reading it leave in doubt. A check whose own fields
 * are among these is left out, since what it would say follows from them. A single value that cannot be read (a unit, a
 * choice, a date) never comes here: {@link fitworthy.schema.Binder} tells it while it reads.
 */
final class SheetFaults {

    private final Located places;
    private final Set<String> doubtful;
    private final List<Fault> faults;
    private final Set<String> pathsWhenRead = new HashSet<>();

    /** @param faults what was found wrong so far; gets what is found here */
    SheetFaults(Bound<Sheet> read, List<Fault> faults) {
        this.places = read.places();
        this.doubtful = read.doubtful();
        this.faults = faults;
        faults.forEach(fault -> pathsWhenRead.add(fault.path()));
    }

    void tell(String problem, String mend, NodePath path) {
        faults.add(new Fault(places.place(path), path.toString(), problem, mend));
    }

    /** Whether two values stand in the same file. */
    boolean areOfOneFile(NodePath one, NodePath other) {
        return places.place(one).file().equals(places.place(other).file());
    }

    /** Whether a value stands in the sheet's own file, and not in one that it takes from. */
    boolean isInSheet(NodePath path) {
        return places.place(path).file().equals(places.beginning().file());
    }

    /** A value as it is written, without its mark. */
    String written(NodePath path) {
        return path.in(places.node()) instanceof Node.Scalar value
                ? Mark.read(value.text()).text()
                : "";
    }

    /** Where a value stands, as file and line. */
    String place(NodePath path) {
        return places.place(path).file() + ":" + places.place(path).line();
    }

    /** Whether reading found a fault with the value of a path. */
    boolean foundWhenReading(NodePath path) {
        return !pathsWhenRead.isEmpty() && pathsWhenRead.contains(path.toString());
    }

    /** Whether it found one with this value or with what it holds. */
    boolean foundWithin(NodePath path) {
        return pathsWhenRead.stream().anyMatch(found -> found.startsWith(path.toString()));
    }

    /** Whether nothing found so far puts in doubt which entries a list has. */
    boolean settled(String list) {
        NodePath path = NodePath.of(list);
        if (!complete(list, NodePath.TOP)) {
            return false;
        }
        int size = pathsWhenRead.isEmpty() ? 0 : size(path);
        for (int i = 1; i <= size; i++) {
            if (foundWhenReading(path.to(i))) {
                return false;
            }
        }
        return true;
    }

    /** The same, and what this field of each of them is. */
    boolean settled(String list, String field) {
        NodePath path = NodePath.of(list);
        for (int i = 1; i <= size(path); i++) {
            if (!complete(field, path.to(i))) {
                return false;
            }
        }
        return settled(list);
    }

    private int size(NodePath list) {
        return list.in(places.node()) instanceof Node.Listing listing
                ? listing.items().size()
                : 0;
    }

    /**
     * Whether a group says of a field what its author meant to say: not with a fault, nor perhaps under a wrong name.
     */
    boolean complete(String field, NodePath group) {
        boolean given = group.to(field).in(places.node()) != null;
        return !foundWhenReading(group.to(field)) && (given || !isDoubtful(field, group));
    }

    private boolean isDoubtful(String field, NodePath group) {
        return !doubtful.isEmpty()
                && (doubtful.contains(group.to(field).toString()) || doubtful.contains(group.toString()));
    }

    /** A fault where a name is not among those that the entries of a list have, as far as these are settled. */
    void name(String name, String list, Collection<String> known, NodePath path) {
        if (!known.contains(name) && settled(list, "name")) {
            listed(name, list, known, path);
        }
    }

    /** A fault where a name is not among those known. */
    void listed(String name, String where, Collection<String> known, NodePath path) {
        if (!known.contains(name) && !foundWhenReading(path)) {
            tell(
                    "'" + Words.shortened(name, 60) + "' is not among the " + where + Words.suggestion(name, known),
                    known.isEmpty() ? "leave it out, or add it there" : "one of " + String.join(", ", known),
                    path);
        }
    }

    void uniqueNames(String list, List<String> names) {
        Set<String> seen = new HashSet<>();
        for (int i = 1; i <= names.size(); i++) {
            uniqueName(names.get(i - 1), seen, NodePath.of(list).to(i));
        }
    }

    void uniqueName(String name, Set<String> seen, NodePath group) {
        if (!name.isEmpty() && !seen.add(name)) {
            tell(
                    "two of them are called '" + Words.shortened(name, 60) + "'",
                    "a name of its own for each",
                    group.to("name"));
        }
    }

    /** A fault where a list that names others names one again. */
    void namedOnce(List<String> names, NodePath list) {
        Set<String> seen = new HashSet<>();
        for (int i = 1; i <= names.size(); i++) {
            if (!names.get(i - 1).isEmpty() && !seen.add(names.get(i - 1))) {
                tell(
                        "'" + Words.shortened(names.get(i - 1), 60) + "' is named here already",
                        "each name once",
                        list.to(i));
            }
        }
    }
}
