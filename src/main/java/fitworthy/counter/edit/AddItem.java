package fitworthy.counter.edit;

import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.Change;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.Place;
import fitworthy.source.TextEdit;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Puts one more item at the end of a list, which is begun where it is not there.
 *
 * @param list its path, by the names of items in lists
 * @param item a word, or a group of fields
 */
public record AddItem(String list, Node item) implements Change {

    private static final Place NOWHERE = Place.of("");

    /** A word, such as the name of something on the shelf. */
    public static AddItem word(String list, String word) {
        return new AddItem(list, scalar(word));
    }

    /** A group of fields with their values, in order; those without a value are left out. */
    public static AddItem group(String list, Map<String, String> fields) {
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        fields.forEach((name, value) -> {
            if (!value.isBlank()) {
                entries.put(name, new Node.Entry(NOWHERE, scalar(value.strip())));
            }
        });
        return new AddItem(list, new Node.Mapping(NOWHERE, entries));
    }

    private static Node scalar(String text) {
        return new Node.Scalar(NOWHERE, text, false);
    }

    @Override
    public String label() {
        String name = item instanceof Node.Scalar word ? word.text() : item.name();
        return (name == null ? "one more" : name) + " added to " + list;
    }

    @Override
    public String in(Answer now) throws FaultsException {
        return SetValue.written(TextEdit.appended(now.text(), Spot.of(list, now).path(), item), now, list);
    }
}
