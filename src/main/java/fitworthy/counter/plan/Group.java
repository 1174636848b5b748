package fitworthy.counter.plan;

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
        String off) {}
