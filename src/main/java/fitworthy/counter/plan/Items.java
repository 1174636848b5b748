package fitworthy.counter.plan;

import java.util.List;

/**
 * A list of things, or a group that is not there yet and is begun as a whole.
 *
 * @param title what they are
 * @param path where it stands, see {@link FieldPath}
 * @param adding what has to be said of a new one
 */
public record Items(String id, String title, String path, List<Fold> items, List<Entry> adding) {}
