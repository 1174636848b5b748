package fitworthy.sheet;

import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;

/** A place on the vehicle, or on the trailer where a trailer's field says so. */
public record Point(
        @Field(
                        value = "backwards from the front axle",
                        in = Dimension.LENGTH,
                        within = Plausible.ALONG,
                        signed = true,
                        needed = true,
                        find = "a tape from the front wheel centre",
                        example = "2950 mm")
                Figure x,
        @Field(
                        value = "to the left of the centre line; the right is negative",
                        in = Dimension.LENGTH,
                        within = Plausible.ASIDE,
                        signed = true,
                        find = "a tape from the centre line",
                        example = "-350 mm")
                Figure y,
        @Field(
                        value = "up from the ground",
                        in = Dimension.LENGTH,
                        within = Plausible.UP,
                        find = "a tape from level ground",
                        example = "900 mm")
                Figure z) {

    /** This place, with a tolerance in m along each axis where the sheet gives none. */
    public Point orTolerance(double metres) {
        boolean given = x.hasTolerance() && y.hasTolerance() && z.hasTolerance();
        return given ? this : new Point(x.orWithin(metres), y.orWithin(metres), z.orWithin(metres));
    }
}
