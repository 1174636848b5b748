package fitworthy.counter.plan;

import fitworthy.sheet.ShopWords;
import fitworthy.shelf.Kind;
import fitworthy.shelf.Lying;
import fitworthy.shelf.Shelf;
import fitworthy.source.Node;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What can be added: the things of the shelf, and what is said in one's own words.
 *
 * @param filter what is typed to find something
 * @param lists the things of each kind that it finds
 * @param words the trade's words
 */
public record Finder(String filter, List<Found> lists, Collection<String> words) {

    static final String KEY = "finder";

    private static final List<String> FACTS = List.of("kind", "liquid", "mass", "capacity", "current", "price");

    /** Things of one kind. */
    public record Found(String kind, String title, List<Line> things) {}

    static Finder of(PlanSheet sheet, String filter) {
        Shelf shelf = sheet.shelf();
        ShopWords words = sheet.answer().view().book().tables().shopWords();
        String looked = filter.strip().toLowerCase(Locale.ROOT);
        Set<String> alike =
                Adding.alike(sheet, filter).stream().map(Lying::name).collect(Collectors.toSet());
        Predicate<Line> found = line -> alike.contains(line.name())
                || (line.name() + " " + line.facts()).toLowerCase(Locale.ROOT).contains(looked);
        return new Finder(
                filter,
                Stream.of(Kind.values())
                        .filter(kind -> kind != Kind.VEHICLES)
                        .map(kind -> found(kind, shelf.of(kind), found))
                        .filter(list -> !list.things().isEmpty())
                        .toList(),
                words.all());
    }

    private static Found found(Kind kind, Map<String, Node.Mapping> things, Predicate<Line> wanted) {
        return new Found(
                kind.name(),
                kind == Kind.OCCUPANTS
                        ? "People"
                        : kind == Kind.FITMENTS ? "Parts" : fitworthy.source.Words.capital(kind.onShelf()),
                things.entrySet().stream()
                        .map(thing -> line(thing.getKey(), thing.getValue()))
                        .filter(wanted)
                        .toList());
    }

    private static Line line(String name, Node.Mapping thing) {
        return new Line(
                name,
                FACTS.stream()
                        .filter(field -> thing.get(field) instanceof Node.Scalar)
                        .map(field -> ((Node.Scalar) thing.get(field)).text().replaceAll("\\s*(\\+/-|±).*", ""))
                        .toList(),
                List.of());
    }
}
