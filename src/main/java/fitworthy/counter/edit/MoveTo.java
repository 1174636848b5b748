package fitworthy.counter.edit;

import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.Change;
import fitworthy.quantity.QuantityText;
import fitworthy.source.FaultsException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Moves something to another place. Words for its place stay beside the coordinates.
 *
 * @param path of the item, by the names of items in lists
 * @param metres by coordinate, {@code x}, {@code y} or {@code z}; those that are not named stay
 */
public record MoveTo(String path, Map<String, Double> metres) implements Change {

    /** Along the vehicle alone. */
    public MoveTo(String path, double x) {
        this(path, Map.of("x", x));
    }

    /** In all three. */
    public static MoveTo of(String path, double x, double y, double z) {
        Map<String, Double> metres = new LinkedHashMap<>();
        metres.put("x", x);
        metres.put("y", y);
        metres.put("z", z);
        return new MoveTo(path, metres);
    }

    @Override
    public String label() {
        return "place of " + Labels.item(path);
    }

    @Override
    public String joins() {
        return path + ".at";
    }

    @Override
    public String in(Answer now) throws FaultsException {
        List<Change> changes = new ArrayList<>();
        metres.forEach((name, value) -> changes.add(
                new SetValue(path + ".at." + name, QuantityText.shown(Math.round(value * 1000) / 1000.0, "mm"))));
        return new Several(label(), joins(), changes).in(now);
    }
}
