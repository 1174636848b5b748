package fitworthy.shelf;

import fitworthy.source.Node;
import fitworthy.source.Place;
import java.util.ArrayList;
import java.util.List;

/**
 * Something that a sheet has taken from its shelf.
 *
 * @param name what the sheet calls it
 * @param place where it stands on the shelf
 * @param own the fields that the sheet says itself, but for the name
 */
public record Taken(Kind kind, String name, Place place, List<String> own) {

    /** Everything that the tree of a sheet has from a shelf, in the order of the kinds. */
    public static List<Taken> in(Node.Mapping sheet) {
        List<Taken> taken = new ArrayList<>();
        String file = sheet.place().file();
        for (Kind kind : Kind.values()) {
            for (Node group : Expansion.groups(sheet.get(kind.inSheet()))) {
                if (group instanceof Node.Mapping thing && !thing.place().file().equals(file)) {
                    taken.add(new Taken(kind, thing.name(), thing.place(), own(thing, file)));
                }
            }
        }
        return taken;
    }

    private static List<String> own(Node.Mapping thing, String file) {
        return thing.entries().entrySet().stream()
                .filter(field -> !field.getKey().equals("name")
                        && field.getValue().place().file().equals(file))
                .map(field -> field.getKey())
                .toList();
    }
}
