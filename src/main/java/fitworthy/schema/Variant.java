package fitworthy.schema;

import java.util.Map;

/** A kind whose name decides which further fields a record has. */
public interface Variant {

    /** The record that holds the further fields. */
    Class<? extends Record> details();

    /** Examples of common fields that fit the kind, by the name of the field; a group's fields one after the other. */
    default Map<String, String> examples() {
        return Map.of();
    }

    /** Further fields, as the component of a record that stands for those of any kind. */
    interface Fields {}
}
