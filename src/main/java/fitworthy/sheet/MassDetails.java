package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;
import java.util.stream.Stream;

/** What changes the ratings or the frame. */
public sealed interface MassDetails extends Details {

    /** A rack on the roof. */
    record RoofRack(
            @Field(
                            value =
                                    "what it may carry on the road, without itself; asked of one with a load on a much loaded roof",
                            in = Dimension.MASS,
                            within = Plausible.ROOF_LIMIT,
                            find = "its label or its maker",
                            example = "120 kg")
                    Figure carries,
            @Field(
                            value = "what it may carry off the road, without itself, where its maker names that",
                            in = Dimension.MASS,
                            within = Plausible.ROOF_LIMIT,
                            find = "its label or its maker",
                            example = "80 kg")
                    Figure carriesOffRoad)
            implements MassDetails {}

    record ChassisExtension(
            @Field(
                            value = "by how much the wheelbase grows",
                            in = Dimension.LENGTH,
                            within = Plausible.ADDED_WHEELBASE,
                            needed = true,
                            find = "the plan",
                            example = "300 mm")
                    Figure wheelbaseAdded,
            @Field(
                            value = "from the rear axle to the rearmost point after it, without tray and tow bar",
                            in = Dimension.LENGTH,
                            within = Plausible.OVERHANG,
                            find = "the plan",
                            example = "1050 mm")
                    Figure rearOverhang,
            @Field(
                            value =
                                    "where the frame is cut, backwards from the front axle; anywhere between the axles where left out",
                            in = Dimension.LENGTH,
                            within = Plausible.FRAME_CUT,
                            find = "the plan",
                            example = "2290 mm")
                    Figure cut,
            @Field(
                            value =
                                    "how much of the kerb mass is behind the cut and moves back: the rear axle with its wheels"
                                            + " and springs, frame, body and a tank there with its fuel, before anything is"
                                            + " taken off; as much as it can be, and as little, where left out",
                            in = Dimension.MASS,
                            within = Plausible.AXLE_MASS,
                            find = "the builder of the chassis, who weighs both halves or adds up their parts",
                            example = "980 kg +/- 60 kg")
                    Figure behindCut,
            @Field(value = "whether an engineer or the authority has agreed to it in writing", find = "the plan")
                    Choice<YesNo> approved,
            @Field("the propeller shaft after it") PropellerShaft shaft,
            @Field(
                            value = "whether brake and fuel lines of the new length are in the plan",
                            find = "the builder of the chassis")
                    Choice<YesNo> lines,
            @Field(
                            value = "whether a park-brake cable and a wiring loom of the new length are in the plan",
                            find = "the builder of the chassis")
                    Choice<YesNo> cables,
            @Field(
                            value =
                                    "whether it is on paper how the rails are joined: steel, place of the cut, weld, plates and who"
                                            + " welds",
                            find = "the builder of the chassis")
                    Choice<YesNo> weldProcedure,
            @Field(
                            value =
                                    "whether an engineer's sum, or the vehicle's maker, states in writing that its rails bear what"
                                            + " bends them after it; asked where nothing is said of the rails themselves",
                            find = "the engineer's report")
                    Choice<YesNo> railsStated,
            @Field(
                            value =
                                    "whether the engineer or the vehicle's maker states in writing what it may tow and carry on the"
                                            + " ball after it; asked where it tows or has a tow bar",
                            find = "the engineer's report")
                    Choice<YesNo> towingStated)
            implements MassDetails {}

    /** Ratings raised by a certified kit. What is left out stays as the maker set it. */
    record RatingUpgrade(
            @Field(
                            value = "gross vehicle mass after; the maker's where left out",
                            in = Dimension.MASS,
                            within = Plausible.GVM,
                            find = "the kit's approval papers",
                            example = "3500 kg")
                    Figure gvm,
            @Field(
                            value = "gross combination mass after; the maker's where left out",
                            in = Dimension.MASS,
                            within = Plausible.GCM,
                            find = "the kit's approval papers",
                            example = "6300 kg")
                    Figure gcm,
            @Field(
                            value = "limit of the front axle after; the maker's where left out",
                            in = Dimension.MASS,
                            within = Plausible.AXLE_LIMIT,
                            find = "the kit's approval papers",
                            example = "1650 kg")
                    Figure frontAxle,
            @Field(
                            value = "limit of the rear axle after; the maker's where left out",
                            in = Dimension.MASS,
                            within = Plausible.AXLE_LIMIT,
                            find = "the kit's approval papers",
                            example = "2050 kg")
                    Figure rearAxle,
            @Field(
                            value = "heaviest braked trailer after; the maker's where left out",
                            in = Dimension.MASS,
                            within = Plausible.TOW_RATING,
                            find = "the kit's approval papers",
                            example = "3500 kg")
                    Figure towing,
            @Field(
                            value =
                                    "its approval: as second stage of manufacture for a new vehicle, or for one in service; with none its ratings count for nothing",
                            find = "the kit's approval papers")
                    Choice<RatingApproval> approval,
            @Field(
                            value = "whether its papers cover the brakes on tyres of the planned size",
                            find = "the kit's approval papers, or its maker")
                    Choice<YesNo> brakes)
            implements MassDetails {

        /** Whether it names any rating. */
        public boolean states() {
            return Stream.of(gvm, gcm, frontAxle, rearAxle, towing).anyMatch(Figure::known);
        }
    }

    enum RatingApproval {
        SECOND_STAGE,
        IN_SERVICE,
        NONE
    }
}
