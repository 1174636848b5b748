package fitworthy.schema;

import fitworthy.source.Located;
import java.util.Set;

/**
 * A record that was made of a text, and where its values stand there.
 *
 * @param groupsWithUnknownFields paths of the groups that hold a field of no known name: what they seem to lack may
 *     stand there misspelt
 */
public record Bound<R extends Record>(R record, Located places, Set<String> groupsWithUnknownFields) {}
