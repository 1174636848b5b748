package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;

/** The two rails of the chassis where they are to be held against what bends them. */
public record Rails(
        @Field(
                        value =
                                "where they are looked at, backwards from the front axle on the vehicle as planned: behind the"
                                        + " cab, at a cut, or at the rear axle for what hangs behind it",
                        in = Dimension.LENGTH,
                        within = Plausible.FRAME_CUT,
                        needed = true,
                        find = "a tape",
                        example = "1950 mm")
                Figure at,
        @Field(
                        value =
                                "how much of the kerb mass is behind that place, axle, wheels and springs there included, before"
                                        + " anything is taken off",
                        in = Dimension.MASS,
                        within = Plausible.PART_MASS,
                        needed = true,
                        find = "the builder of the chassis, who adds up its parts",
                        example = "900 kg +/- 60 kg")
                Figure behind,
        @Field(
                        value =
                                "where the middle of that mass is, backwards from the front axle on the vehicle as planned",
                        in = Dimension.LENGTH,
                        within = Plausible.ALONG,
                        signed = true,
                        needed = true,
                        find = "the builder of the chassis, who adds up its parts",
                        example = "2700 mm +/- 100 mm")
                Figure middle,
        @Field(value = "whether a rail is open at one side there, or a closed box", find = "a look")
                Choice<Shape> shape,
        @Field(
                        value = "how deep a rail is there, from top to bottom",
                        in = Dimension.LENGTH,
                        within = Plausible.RAIL,
                        find = "a caliper",
                        example = "150 mm")
                Figure depth,
        @Field(
                        value = "how wide it is there",
                        in = Dimension.LENGTH,
                        within = Plausible.RAIL,
                        find = "a caliper",
                        example = "60 mm")
                Figure width,
        @Field(
                        value = "thickness of its steel there",
                        in = Dimension.LENGTH,
                        within = Plausible.SHAFT_WALL,
                        find = "a caliper at a hole",
                        example = "3 mm")
                Figure wall,
        @Field(
                        value = "stress at which its steel yields; beside a weld that of the welded joint",
                        in = Dimension.PRESSURE,
                        within = Plausible.YIELD,
                        find = "the maker's body-builder guide",
                        example = "350 MPa")
                Figure yield) {

    /** The section of a rail. */
    public enum Shape {
        CHANNEL,
        BOX
    }
}
