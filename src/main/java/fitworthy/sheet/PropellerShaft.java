package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;

/** The propeller shaft to the rear axle after the chassis is cut; of several pieces the longest. */
public record PropellerShaft(
        @Field(
                        value =
                                "its longest piece, from the middle of one joint to that of the next, or to a centre bearing",
                        in = Dimension.LENGTH,
                        within = Plausible.SHAFT_SPAN,
                        find = "the drawing of whoever makes the shaft",
                        example = "1350 mm")
                Figure span,
        @Field(
                        value = "outside diameter of its tube, of steel or aluminium",
                        in = Dimension.LENGTH,
                        within = Plausible.SHAFT_TUBE,
                        find = "a caliper, or whoever makes the shaft",
                        example = "76 mm")
                Figure diameter,
        @Field(
                        value = "thickness of its tube's wall",
                        in = Dimension.LENGTH,
                        within = Plausible.SHAFT_WALL,
                        find = "whoever makes the shaft",
                        example = "2 mm")
                Figure wall,
        @Field(
                        value =
                                "its centre bearing: one-piece where the shaft has none, drawn where bracket and crossmember are on"
                                        + " the drawing, else open",
                        find = "the drawing of the cut")
                Choice<CentreBearing> centreBearing,
        @Field(
                        value = "largest angle of one of its joints, loaded and at ride height",
                        in = Dimension.ANGLE,
                        within = Plausible.JOINT_ANGLE,
                        find = "the drawing of the cut, or a protractor",
                        example = "3 deg")
                Figure jointAngle) {

    /** What is known of the centre bearing of a shaft in pieces. */
    public enum CentreBearing {
        ONE_PIECE,
        DRAWN,
        OPEN
    }
}
