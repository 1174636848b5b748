package fitworthy.book;

import fitworthy.schema.Field;

/** A region. Its id is the key it stands under. */
public record Region(
        @Field(value = "its name", needed = true, example = "New South Wales") String name,
        @Field(value = "the region whose values hold where this one records none", example = "au") String parent,
        @Field(
                        value =
                                "what those who measure otherwise there need to convert what is printed; the parent's where"
                                        + " left out",
                        example = "1 mile is 1.61 km.")
                String units,
        @Field(
                        value = "what plates there call the ratings that are printed; the parent's where left out",
                        example = "The GVM is the GVWR on the plate.")
                String terms) {}
