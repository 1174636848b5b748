package fitworthy.sheet;

import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;

/** Bolts or brackets of drawers, a fridge slide, a shelf, a box or a tray. What holds a canopy down is told with the canopy. */
public record Fixing(
        @Field(
                        value = "how many bolts or brackets",
                        needed = true,
                        find = "the plan",
                        example = "4",
                        within = Plausible.COUNT)
                Figure points,
        @Field(
                        value = "what one of them bears in its weakest direction, with what it is bolted to",
                        in = Dimension.MASS,
                        within = Plausible.WORKING_LIMIT,
                        needed = true,
                        find = "the maker of the part",
                        example = "150 kg")
                Figure limit,
        @Field(
                        value =
                                "the most they hold: the part with all that travels in or on it; what the sheet puts in it counts where that is more",
                        in = Dimension.MASS,
                        within = Plausible.PART_MASS,
                        needed = true,
                        find = "the load list",
                        example = "140 kg")
                Figure loaded) {}
