package fitworthy.sheet;

import fitworthy.schema.Variant;

/** What the checks need to know of a kind of part; those of each topic stand in a file of its own. */
public interface Details extends Variant.Fields {

    /** A part that the checks know by its mass and place alone. */
    record Plain() implements Details {}
}
