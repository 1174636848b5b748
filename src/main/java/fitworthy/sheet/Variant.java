package fitworthy.sheet;

/** A kind whose name decides which further fields a record has. */
public interface Variant {
    /** The record that holds the further fields. */
    Class<? extends Record> details();
}
