package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;

/** Springs and spacers. */
public sealed interface SuspensionDetails extends Details {

    /** The springs of one axle. */
    record Springs(
            @Field(value = "at which end", needed = true, find = "the plan") Choice<VehicleEnd> end,
            @Field(
                            value = "by how much they raise the vehicle with the planned parts on; down is negative",
                            in = Dimension.LENGTH,
                            within = Plausible.LIFT,
                            signed = true,
                            find = "the maker",
                            example = "40 mm")
                    Figure lift,
            @Field(
                            value = "rate of one of them",
                            in = Dimension.STIFFNESS,
                            within = Plausible.STIFFNESS,
                            find = "the maker",
                            example = "85 N/mm")
                    Figure rate,
            @Field(
                            value = "travel of the spring over travel of the wheel",
                            in = Dimension.SHARE,
                            within = Plausible.MOTION_RATIO,
                            find = "the workshop manual, or a jack and a tape; 100 % for a leaf spring",
                            example = "60 %")
                    Figure motionRatio,
            @Field(
                            value = "least fixed load on the axle that they are made for",
                            in = Dimension.MASS,
                            within = Plausible.PART_MASS,
                            find = "the maker",
                            example = "50 kg")
                    Figure loadLeast,
            @Field(
                            value = "greatest fixed load on the axle that they are made for",
                            in = Dimension.MASS,
                            within = Plausible.PART_MASS,
                            find = "the maker",
                            example = "110 kg")
                    Figure loadMost,
            @Field(
                            value = "wheel travel from full droop to full bump with them",
                            in = Dimension.LENGTH,
                            within = Plausible.WHEEL_TRAVEL,
                            find = "the maker, or a jack and a tape",
                            example = "210 mm")
                    Figure travel,
            @Field(
                            value = "wheel travel left to the bump stop with the fixed parts on and nobody aboard",
                            in = Dimension.LENGTH,
                            within = Plausible.WHEEL_TRAVEL,
                            find = "a tape",
                            example = "85 mm")
                    Figure bumpTravel,
            @Field(
                            value =
                                    "the dampers beside them: of the length and the load that the springs' maker names, or left as"
                                            + " they are",
                            find = "the plan")
                    Choice<Dampers> dampers,
            @Field(value = "whether brake hoses and sensor leads reach at full droop", find = "the fitter")
                    Choice<YesNo> linesReach,
            @Field(
                            value = "largest angle of a universal joint of the propeller shafts at ride height",
                            in = Dimension.ANGLE,
                            within = Plausible.JOINT_ANGLE,
                            find = "the fitter, with a protractor",
                            example = "4 deg")
                    Figure jointAngle,
            @Field(value = "whether a wheel alignment is planned after it", find = "the plan") Choice<YesNo> alignment,
            @Field(value = "whether the headlamps will be aimed after it", find = "the plan") Choice<YesNo> lampAim)
            implements SuspensionDetails {}

    /** What becomes of the dampers where springs are changed. */
    enum Dampers {
        MATCHED,
        LEFT
    }

    /** Air springs beside the springs of the rear axle. */
    record AirSprings(
            @Field(
                            value =
                                    "whether the vehicle's maker lets them press on its rails and axle where they are planned",
                            find = "the maker's body-builder guide")
                    Choice<YesNo> allowed)
            implements SuspensionDetails {}

    /** Spacers between chassis and body. */
    record BodyLift(
            @Field(
                            value = "by how much it raises the body",
                            in = Dimension.LENGTH,
                            within = Plausible.BODY_LIFT,
                            find = "the maker",
                            example = "25 mm")
                    Figure lift,
            @Field(value = "whether the headlamps will be aimed after it", find = "the plan") Choice<YesNo> lampAim)
            implements SuspensionDetails {}
}
