package fitworthy.sheet;

import fitworthy.schema.Field;

/** The space that a part takes up: a box by two opposite corners. */
public record Space(
        @Field(value = "one corner", needed = true) Point from,
        @Field(value = "the corner opposite", needed = true) Point to) {}
