package fitworthy.counter.plan;

import java.util.Optional;

/** A part of the plan: fields that are always shown, one thing that opens, or a list. */
public record Section(String id, String title, Optional<Group> group, Optional<Fold> fold, Optional<Items> items) {}
