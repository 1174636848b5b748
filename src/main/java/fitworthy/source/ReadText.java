package fitworthy.source;

/** A text and what it says. */
public record ReadText(String text, Node.Mapping tree) {}
