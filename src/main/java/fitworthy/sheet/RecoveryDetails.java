package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;

/** What the vehicle is pulled out by. */
public sealed interface RecoveryDetails extends Details {

    /** A point for pulling the vehicle out. */
    record RecoveryPoint(
            @Field(value = "at which end", needed = true, find = "the plan") Choice<VehicleEnd> end,
            @Field(
                            value = "working load limit",
                            in = Dimension.MASS,
                            within = Plausible.WORKING_LIMIT,
                            find = "the stamp on it, or the maker",
                            example = "5000 kg")
                    Figure limit)
            implements RecoveryDetails {}

    /** A strap that stretches, for pulling a vehicle out with another. */
    record KineticStrap(
            @Field(
                            value = "minimum breaking strength",
                            in = Dimension.MASS,
                            within = Plausible.STRENGTH,
                            find = "the label sewn to it",
                            example = "8000 kg")
                    Figure strength)
            implements RecoveryDetails {}

    record Shackles(
            @Field(
                            value = "working load limit of one",
                            in = Dimension.MASS,
                            within = Plausible.WORKING_LIMIT,
                            find = "the stamp on it",
                            example = "4750 kg")
                    Figure limit,
            @Field(
                            value =
                                    "what they hold where a pulley block is planned: the block, where left out, or the line's end",
                            find = "the plan")
                    Choice<Held> holds)
            implements RecoveryDetails {}

    /** The block and what it hangs on bear the line twice, its end bears it once. */
    enum Held {
        BLOCK,
        LINE_END
    }

    /** A pulley block that doubles a winch's line. */
    record PulleyBlock(
            @Field(
                            value = "working load limit of the block, not of the line through it",
                            in = Dimension.MASS,
                            within = Plausible.WORKING_LIMIT,
                            find = "the stamp on it",
                            example = "9000 kg")
                    Figure limit)
            implements RecoveryDetails {}

    /** What is carried for winching beside the winch. */
    record RecoveryKit(
            @Field(value = "whether it has a wide strap for a tree", find = "the list of its contents")
                    Choice<YesNo> treeStrap,
            @Field(
                            value = "working load limit of the strap for a tree, laid round it as it will be used",
                            in = Dimension.MASS,
                            within = Plausible.WORKING_LIMIT,
                            find = "the label sewn to it",
                            example = "9000 kg")
                    Figure treeStrapLimit,
            @Field(value = "whether it has a damper to lay over the line", find = "the list of its contents")
                    Choice<YesNo> lineDamper)
            implements RecoveryDetails {}
}
