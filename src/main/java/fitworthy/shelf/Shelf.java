package fitworthy.shelf;

import fitworthy.sheet.Wanted.Feed;
import fitworthy.source.Fault;
import fitworthy.source.Node;
import fitworthy.source.Place;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a shop has written down once for all its sheets.
 *
 * @param folder where it lies
 * @param files the files that were read, by name
 * @param things what lies there, by kind and by name
 * @param content digest of the files; empty where there is no shelf
 * @param faults what is wrong with the files, so that nothing may be taken
 */
public record Shelf(
        Path folder,
        List<Path> files,
        Map<Kind, Map<String, Node.Mapping>> things,
        String content,
        List<Fault> faults) {

    /** The folder beside a sheet's file that is its shelf where no other is named. */
    public static final String FOLDER = "shelf";

    /** The field of a circuit that names the part which it belongs to. */
    static final String PART = "part";

    /** That there is none. */
    public static final Shelf NONE = new Shelf(null, List.of(), Map.of(), "", List.of());

    public boolean isNone() {
        return folder == null;
    }

    /** What lies there of a kind, by name. */
    public Map<String, Node.Mapping> of(Kind kind) {
        return things.getOrDefault(kind, Map.of());
    }

    /** The name of the thing that begins at a place; empty where none does. */
    public Optional<String> at(Kind kind, Place place) {
        return of(kind).entrySet().stream()
                .filter(thing -> thing.getValue().place().equals(place))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** The circuits that belong to a part of it, in the order of the files. */
    public List<Feed> feeds(String part) {
        return of(Kind.CIRCUITS).values().stream()
                .filter(circuit -> word(circuit, PART).equals(part))
                .map(circuit -> new Feed(circuit.name(), word(circuit, "board")))
                .toList();
    }

    private static String word(Node.Mapping thing, String field) {
        return thing.get(field) instanceof Node.Scalar word ? word.text() : "";
    }

    /** The name under which it lies there, whether it was typed in large or small letters. */
    Optional<String> named(Kind kind, String typed) {
        String name = typed.strip();
        Set<String> names = of(kind).keySet();
        return names.contains(name)
                ? Optional.of(name)
                : names.stream().filter(name::equalsIgnoreCase).findFirst();
    }
}
