package fitworthy.book;

import fitworthy.schema.Bound;
import fitworthy.source.NodePath;
import fitworthy.source.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The usual figures of a book, each after those of the same thing that it goes by. */
public final class UsualFigures {

    /** The folder of a book that holds them. */
    public static final String FOLDER = "usual";
    /** Its pages. */
    public static final List<String> PAGES =
            List.of("vehicle.yaml", "parts.yaml", "aboard.yaml", "trailer.yaml", "circuits.yaml");

    /** A book without any. */
    public static final UsualFigures NONE = new UsualFigures(Map.of());

    /** A usual figure, and what field it is of. */
    public record Entry(String id, UsualField field, UsualFigure figure) {}

    private final Map<String, Bound<UsualFigure>> figures;
    private final Map<String, Entry> ordered = new LinkedHashMap<>();

    public UsualFigures(Map<String, Bound<UsualFigure>> figures) {
        this.figures = figures;
        figures.keySet().forEach(id -> order(id, new LinkedHashSet<>()));
    }

    /** In the order in which they can be filled in. */
    public List<Entry> inOrder() {
        return List.copyOf(ordered.values());
    }

    /** A figure by its id. */
    public UsualFigure figure(String id) {
        return figures.get(id).record();
    }

    /** Where one of the values of a figure stands. @param index counted from zero */
    public Place place(String id, int index) {
        return figures.get(id).places().place(UsualFigure.path(index));
    }

    /** Where what a path leads to in a figure stands. */
    Place place(String id, NodePath path) {
        return figures.get(id).places().place(path);
    }

    /** Each value by its id, region, day and condition. */
    public Map<String, UsualFigure.Value> values() {
        Map<String, UsualFigure.Value> values = new TreeMap<>();
        figures.forEach((id, bound) -> bound.record()
                .values()
                .forEach(value -> values.put(
                        id + ", " + value.region() + " from " + value.from()
                                + (value.when().isEmpty() ? "" : ", where " + value.when()),
                        value)));
        return values;
    }

    /** The figures by id. */
    public Set<String> ids() {
        return figures.keySet();
    }

    /** The figure that goes by itself in the end, by way of these others; nothing where it does not. */
    List<String> circle(String id) {
        List<String> way = new ArrayList<>();
        return circle(id, id, way) ? way : List.of();
    }

    private boolean circle(String from, String to, List<String> way) {
        if (way.contains(from)) {
            return false;
        }
        way.add(from);
        for (String next : goesBy(from)) {
            if (next.equals(to) || circle(next, to, way)) {
                return true;
            }
        }
        return false;
    }

    private void order(String id, Set<String> above) {
        if (ordered.containsKey(id) || !above.add(id)) {
            return;
        }
        goesBy(id).forEach(other -> order(other, above));
        ordered.put(id, new Entry(id, UsualField.of(id), figures.get(id).record()));
    }

    /** The usual figures that others go by. */
    private List<String> goesBy(String id) {
        UsualField field = UsualField.of(id);
        return figures.get(id).record().values().stream()
                .flatMap(value -> UsualTerm.of(value).stream())
                .filter(term -> term.relation() != UsualTerm.Relation.MISSING)
                .map(term ->
                        UsualField.fromTop(term.path()) ? term.path().toString() : field.thing() + "." + term.path())
                .filter(figures::containsKey)
                .distinct()
                .toList();
    }
}
