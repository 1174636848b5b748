package fitworthy.sheet;

import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;

/** A place under the vehicle that may meet the ground before its wheels do, the maker's own or that of a planned part. */
public record LowPoint(
        @Field(value = "what hangs there", needed = true, example = "Tow bar") String name,
        @Field(
                        value =
                                "backwards from the front axle, as taped on the vehicle as it stands, before any longer wheelbase",
                        in = Dimension.LENGTH,
                        within = Plausible.ALONG,
                        signed = true,
                        needed = true,
                        find = "a tape from the front wheel centre",
                        example = "3900 mm")
                Figure x,
        @Field(
                        value = "up from the ground, on the vehicle as it stands, before any lift and other tyres",
                        in = Dimension.LENGTH,
                        within = Plausible.HEIGHT,
                        needed = true,
                        find = "a tape from level ground",
                        example = "430 mm")
                Figure z) {}
