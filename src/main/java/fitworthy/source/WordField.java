package fitworthy.source;

import java.util.Optional;

/** Where a word may stand for a group of fields, and under which of them it is kept once others stand beside it. */
@FunctionalInterface
public interface WordField {

    /** No word stands for a group. */
    WordField NONE = path -> Optional.empty();

    /** The field for the word at a path; nothing where no word stands for a group. */
    Optional<String> at(NodePath path);

    /** The same, and where this knows none what another does. */
    default WordField or(WordField other) {
        return path -> at(path).or(() -> other.at(path));
    }
}
