package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;

/** What the vehicle is pulled out by. */
public sealed interface RecoveryDetails extends Details {

    /** A point for pulling the vehicle out. */
    record RecoveryPoint(
            @Field(value = "at which end", needed = true, find = "the plan") Choice<End> end,
            @Field(
                            value = "working load limit",
                            in = Dimension.MASS,
                            find = "the stamp on it, or the maker",
                            example = "5000 kg")
                    Figure limit)
            implements RecoveryDetails {}

    /** A strap that stretches, for pulling a vehicle out with another. */
    record KineticStrap(
            @Field(
                            value = "minimum breaking strength",
                            in = Dimension.MASS,
                            find = "the label sewn to it",
                            example = "8000 kg")
                    Figure strength)
            implements RecoveryDetails {}

    record Shackles(
            @Field(
                            value = "working load limit of one",
                            in = Dimension.MASS,
                            find = "the stamp on it",
                            example = "4750 kg")
                    Figure limit)
            implements RecoveryDetails {}

    /** What is carried for winching beside the winch. */
    record RecoveryKit(
            @Field(value = "whether it has a wide strap for a tree", find = "the list of its contents")
                    Choice<YesNo> treeStrap,
            @Field(value = "whether it has a damper to lay over the line", find = "the list of its contents")
                    Choice<YesNo> lineDamper)
            implements RecoveryDetails {}
}
