package fitworthy.schema;

import fitworthy.source.Located;
import java.util.Set;

/**
 * A record that was made of a text, and where its values stand there.
 *
 * @param doubtful paths of the fields that may stand there under a wrong name, and of the groups that hold a name with
 *     which nobody can tell what was meant
 * @param groups the groups it was made of
 */
public record Bound<R extends Record>(R record, Located places, Set<String> doubtful, KnownGroups groups) {}
