package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;

/** Lashings between a load and the vehicle, each of which pulls against the way in which the load would slide. */
public record Tied(
        @Field(
                        value = "what one of them bears in a straight pull; 10 daN are about 10 kg",
                        in = Dimension.MASS,
                        within = Plausible.WORKING_LIMIT,
                        needed = true,
                        find = "LC on its label, or the limit of its anchor where that is less",
                        example = "1000 kg")
                Figure limit,
        @Field(
                        value = "whether it stands against a wall that keeps it from sliding forward",
                        needed = true,
                        find = "the plan")
                Choice<YesNo> stopped,
        @Field(
                        value = "how many pull it back when it would slide forward; not used where a wall does",
                        needed = true,
                        find = "the plan",
                        example = "2",
                        within = Plausible.COUNT)
                Figure forward,
        @Field(
                        value = "how many pull it forward when it would slide back",
                        needed = true,
                        find = "the plan",
                        example = "2",
                        within = Plausible.COUNT)
                Figure back,
        @Field(
                        value =
                                "how much of their pull acts along the vehicle: how far apart their ends are along it, over their"
                                        + " length",
                        in = Dimension.SHARE,
                        within = Plausible.FULLNESS,
                        needed = true,
                        find = "a tape",
                        example = "80 %")
                Figure along,
        @Field(
                        value = "how many pull it back from one side; the fewer of both sides",
                        needed = true,
                        find = "the plan",
                        example = "2",
                        within = Plausible.COUNT)
                Figure aside,
        @Field(
                        value =
                                "how much of their pull acts across the vehicle: how far apart their ends are across it, over"
                                        + " their length",
                        in = Dimension.SHARE,
                        within = Plausible.FULLNESS,
                        needed = true,
                        find = "a tape",
                        example = "40 %")
                Figure across) {}
