package fitworthy.usual;

/** A usual figure in use. @param index which of its values, counted from zero */
public record Use(String id, int index) {}
