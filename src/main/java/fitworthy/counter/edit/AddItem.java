package fitworthy.counter.edit;

import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.Change;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.Place;
import fitworthy.source.TextEdit;

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

    private static Node scalar(String text) {
        return new Node.Scalar(NOWHERE, text, false);
    }

    @Override
    public String label() {
        String name = item instanceof Node.Scalar word ? word.text() : item.name();
        return (name == null ? "one more" : name) + " added to " + Labels.list(list);
    }

    @Override
    public Answer in(Answer now) throws FaultsException {
        return SetValue.written(TextEdit.appended(now.text(), Spot.of(list, now).path(), item), now, list);
    }
}
