package fitworthy.counter.plan;

import fitworthy.counter.page.FieldPath;
import java.util.List;
import java.util.Optional;

/**
 * Fields that belong together.
 *
 * @param legend what they are of; empty where that stands above already
 * @param entries its own fields
 * @param groups those within it
 * @param folds those that are closed at first
 * @param lists what it holds several of
 * @param more the fields that nobody has said or asks for; empty where there are none
 * @param off its path where it can be taken off as a whole; else empty
 */
public record Group(
        String legend,
        List<Entry> entries,
        List<Group> groups,
        List<Fold> folds,
        List<Items> lists,
        Optional<Fold> more,
        String off) {

    static Group ofEntries(String legend, List<Entry> entries) {
        return new Group(legend, entries, List.of(), List.of(), List.of(), Optional.empty(), "");
    }

    static Group ofFold(Fold fold) {
        return new Group("", List.of(), List.of(), List.of(fold), List.of(), Optional.empty(), "");
    }

    static Group ofItems(Items list) {
        return new Group("", List.of(), List.of(), List.of(), List.of(list), Optional.empty(), "");
    }

    /**
     * Something that opens to its fields.
     *
     * @param id of its element
     * @param key what it is known again by where items before it come or go
     * @param path what it shows, see {@link FieldPath}
     * @param more whether it shows the further fields of that alone
     * @param line what it says while it is closed
     * @param body its fields; empty where it is closed, so that they are fetched once it is opened
     */
    public record Fold(String id, String key, String path, boolean more, Line line, Optional<Group> body) {}

    /**
     * A list of things, or a group that is not there yet and is begun as a whole.
     *
     * @param title what they are
     * @param path where it stands, see {@link FieldPath}
     * @param adding what has to be said of a new one
     */
    public record Items(String id, String title, String path, List<Fold> items, List<Entry> adding) {}
}
