package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;

/** What the driver sees behind by. */
public sealed interface MirrorDetails extends Details {

    /** The outside mirrors, and what is built into them. */
    record Mirrors(
            @Field("the left one, as it stands when towing") Mirror left,
            @Field("the right one, as it stands when towing") Mirror right,
            @Field(
                            value =
                                    "what becomes of the mirrors without the trailer; planned ones come in where left out, others where they have an edge when retracted",
                            find = "the maker")
                    Choice<Stow> stow,
            @Field(value = "whether the mirrors hold direction indicators", find = "a look") Choice<YesNo> indicators,
            @Field(value = "whether there are cameras in the mirrors", find = "a look") Choice<YesNo> cameras,
            @Field(value = "whether the lamps of a blind-spot warning are in the mirrors", find = "a look")
                    Choice<YesNo> blindSpotLamps)
            implements MirrorDetails {}

    enum Stow {
        FIXED,
        RETRACTS,
        COMES_OFF
    }

    /** One outside mirror. */
    record Mirror(
            @Field(
                            value = "from the front axle backwards to its glass",
                            in = Dimension.LENGTH,
                            within = Plausible.ALONG,
                            signed = true,
                            find = "a tape",
                            example = "800 mm")
                    Figure x,
            @Field(
                            value = "from the centre line to the outer edge of its glass",
                            in = Dimension.LENGTH,
                            within = Plausible.FROM_CENTRE,
                            find = "a tape",
                            example = "1250 mm")
                    Figure reach,
            @Field(
                            value = "width of its glass",
                            in = Dimension.LENGTH,
                            within = Plausible.MIRROR_GLASS,
                            find = "a tape",
                            example = "180 mm")
                    Figure glass,
            @Field(value = "whether its glass is flat or convex", find = "a straight edge, or the maker")
                    Choice<Curve> curve,
            @Field(
                            value = "radius of a convex glass",
                            in = Dimension.LENGTH,
                            within = Plausible.MIRROR_RADIUS,
                            find = "the mark on the glass, or the maker",
                            example = "1400 mm")
                    Figure radius,
            @Field(
                            value = "from the centre line to the outermost point of its housing",
                            in = Dimension.LENGTH,
                            within = Plausible.FROM_CENTRE,
                            find = "a tape",
                            example = "1280 mm")
                    Figure edge,
            @Field(
                            value = "the same when it is retracted, or as it stays where it is fixed",
                            in = Dimension.LENGTH,
                            within = Plausible.FROM_CENTRE,
                            find = "a tape",
                            example = "1090 mm")
                    Figure edgeStowed) {}

    enum Curve {
        FLAT,
        CONVEX
    }

    record RearCamera(
            @Field(value = "whether it is meant to take the place of a mirror", find = "the plan")
                    Choice<YesNo> insteadOfMirror,
            @Field(
                            value = "whether it is approved to take the place of a mirror, monitor included",
                            find = "the approval mark, or the maker")
                    Choice<YesNo> approvedAsMirror)
            implements MirrorDetails {}
}
