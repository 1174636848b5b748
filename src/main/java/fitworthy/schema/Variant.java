package fitworthy.schema;

/** A kind whose name decides which further fields a record has. */
public interface Variant {

    /** The record that holds the further fields. */
    Class<? extends Record> details();

    /** Further fields, as the component of a record that stands for those of any kind. */
    interface Fields {}
}
