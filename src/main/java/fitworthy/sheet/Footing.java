package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;

/** What a tall load stands on, where it is to be seen whether it tips over. Its weight acts over the middle of it. */
public record Footing(
        @Field(
                        value = "how long its base is, along the vehicle",
                        in = Dimension.LENGTH,
                        within = Plausible.FOOTING,
                        needed = true,
                        find = "a tape",
                        example = "600 mm")
                Figure length,
        @Field(
                        value = "how wide its base is, across the vehicle",
                        in = Dimension.LENGTH,
                        within = Plausible.FOOTING,
                        needed = true,
                        find = "a tape",
                        example = "500 mm")
                Figure width,
        @Field(
                        value =
                                "how high its centre of gravity is above its base; half its height where it is as heavy all over",
                        in = Dimension.LENGTH,
                        within = Plausible.ABOVE_FOOTING,
                        needed = true,
                        find = "its maker, or half of what a tape says",
                        example = "700 mm")
                Figure cogHeight,
        @Field(
                        value =
                                "whether straps or walls hold it at that height or above it, to the front and to both sides, so that"
                                        + " it cannot tip over",
                        needed = true,
                        find = "the plan")
                Choice<YesNo> heldAbove) {}
