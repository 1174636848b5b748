package fitworthy.counter.plan;

/** A part of the plan: fields that are always shown, one thing that opens, or a list. */
public record Section(String id, String title, Group group) {}
