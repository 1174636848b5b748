package fitworthy.counter.plan;

import java.util.Optional;

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
