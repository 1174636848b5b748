package fitworthy.usual;

import fitworthy.book.Book;
import fitworthy.quantity.Mark;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where a tank, a battery or a load is: so heavy a thing decides the load of an axle, so that its place is no small
 * matter.
 *
 * @param path of the thing, by its position
 * @param words the place, as the rule book calls it
 * @param taken whether that is what is usual, since nobody has said it
 */
public record TakenPlace(NodePath path, String name, String words, boolean taken) {

    private static final String TANKS = "tanks";
    /** The lists that hold them, with the kind that it has to be there. */
    private static final Map<String, String> HEAVY = Map.of(TANKS, "", "fitments", "battery", "cargo", "");

    /** Of all that sit in a place in words. @param tree a sheet with what it takes from its shelf */
    public static List<TakenPlace> of(Node.Mapping tree, Book book) {
        Node.Mapping filled = new UsualFilling(tree, book).tree();
        List<TakenPlace> places = new ArrayList<>();
        HEAVY.forEach((list, kind) -> {
            int items = filled.get(list) instanceof Node.Listing listing
                    ? listing.items().size()
                    : 0;
            for (int i = 1; i <= items; i++) {
                NodePath path = NodePath.of(list).to(i);
                if (kind.isEmpty() || kind.equals(text(path.to("kind"), filled))) {
                    at(path, tree, filled, book).ifPresent(places::add);
                }
            }
        });
        return places;
    }

    private static Optional<TakenPlace> at(NodePath path, Node.Mapping tree, Node.Mapping filled, Book book) {
        String said = text(path.to("at"), filled);
        return book.usualPlaces().known(Mark.read(said).text()).map(words -> {
            Node own = path.to("at").in(tree);
            boolean taken = own == null || Mark.read(text(path.to("at"), tree)).mark() == Mark.USUAL;
            return new TakenPlace(path, text(path.to("name"), filled), words, taken);
        });
    }

    /** Tanks that are in one place by these words, at least one of them only because nobody has said where it sits. */
    public static List<List<TakenPlace>> shared(List<TakenPlace> places) {
        Map<String, List<TakenPlace>> shared = new LinkedHashMap<>();
        places.stream()
                .filter(place -> place.path().steps().get(0).toString().equals(TANKS))
                .forEach(place -> shared.computeIfAbsent(place.words(), none -> new ArrayList<>())
                        .add(place));
        return shared.values().stream()
                .filter(same -> same.size() > 1 && same.stream().anyMatch(TakenPlace::taken))
                .toList();
    }

    /** What is to be said of some that are in one place. */
    public static String told(List<TakenPlace> same) {
        List<String> names = same.stream().map(TakenPlace::name).toList();
        return String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.get(names.size() - 1)
                + " are taken to be in one place, " + same.get(0).words()
                + ", since nobody has said where. Say where each is.";
    }

    private static String text(NodePath path, Node.Mapping tree) {
        return path.in(tree) instanceof Node.Scalar word ? word.text() : "";
    }
}
