package fitworthy.book;

import fitworthy.schema.Field;

/** A region. Its id is the key it stands under. */
public record Region(
        @Field(value = "its name", needed = true, example = "New South Wales") String name,
        @Field(value = "the region whose values hold where this one records none", example = "au") String parent) {}
