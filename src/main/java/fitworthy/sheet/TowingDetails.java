package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;

/** Parts that a trailer hangs on. */
public sealed interface TowingDetails extends Details {

    /** What stands on the plate of a coupling. Plates give a trailer mass or a D value, few give both. */
    record CouplingPlate(
            @Field(
                            value = "heaviest trailer on its plate; beside a D value none on it where left out",
                            in = Dimension.MASS,
                            within = Plausible.TOW_RATING,
                            find = "its plate",
                            example = "3000 kg")
                    Figure trailer,
            @Field(
                            value = "greatest load on the ball on its plate, or by its maker",
                            in = Dimension.MASS,
                            within = Plausible.BALL_LOAD,
                            find = "S on its plate",
                            example = "300 kg")
                    Figure ball,
            @Field(
                            value =
                                    "its D value; asked where a raised GVM asks more of it than its mass stands for, or beside Dc",
                            in = Dimension.FORCE,
                            within = Plausible.COUPLING_FORCE,
                            find = "D on its plate",
                            example = "17.2 kN")
                    Figure d,
            @Field(
                            value = "its D value for centre-axle trailers; asked beside a V value",
                            in = Dimension.FORCE,
                            within = Plausible.COUPLING_FORCE,
                            find = "Dc on its plate",
                            example = "16 kN")
                    Figure dc,
            @Field(
                            value = "its V value; asked beside a Dc value",
                            in = Dimension.FORCE,
                            within = Plausible.COUPLING_FORCE,
                            find = "V on its plate",
                            example = "8 kN")
                    Figure v) {}

    record TowBar(
            @Field("what its plate allows") CouplingPlate plate,
            @Field(
                            value =
                                    "from the rear axle to the centre of its ball, or of its fifth wheel; ahead of the axle negative",
                            in = Dimension.LENGTH,
                            signed = true,
                            within = Plausible.BALL_OVERHANG,
                            find = "a tape",
                            example = "1250 mm")
                    Figure ballOverhang,
            @Field(
                            value = "height of its ball with the vehicle loaded",
                            in = Dimension.LENGTH,
                            within = Plausible.COUPLING_HEIGHT,
                            find = "a tape",
                            example = "430 mm")
                    Figure ballHeight,
            @Field(value = "what socket it has, any adapter included", find = "a look") Choice<Plug> socket,
            @Field(
                            value = "what its socket supplies",
                            in = Dimension.VOLTAGE,
                            within = Plausible.BATTERY_VOLTAGE,
                            find = "a meter",
                            example = "12 V")
                    Figure voltage,
            @Field(
                            value =
                                    "whether a load-levelling hitch is used on it; asked where the vehicle's maker rules one out",
                            find = "the plan")
                    Choice<YesNo> levelling,
            @Field(
                            value =
                                    "how much of the load that the ball lifts off the front axle its load-levelling hitch is set"
                                            + " to bring back; asked where one is used",
                            in = Dimension.SHARE,
                            within = Plausible.BROUGHT_BACK,
                            find =
                                    "the fitter, by the height of the front wheel arch: alone, coupled, and with the bars on",
                            example = "50 %")
                    Figure levellingShare,
            @Field(
                            value =
                                    "greatest load on the ball that the bars of its load-levelling hitch are made for; asked where"
                                            + " one is used",
                            in = Dimension.MASS,
                            within = Plausible.BALL_LOAD,
                            find =
                                    "the hitch's label; less the load behind the rear axle where its maker counts that with it",
                            example = "270 kg")
                    Figure barsMost,
            @Field(
                            value = "least load on the ball that those bars are made for; asked where one is used",
                            in = Dimension.MASS,
                            within = Plausible.BALL_LOAD,
                            find = "the hitch's label or its maker; 0 kg where he names none",
                            example = "135 kg")
                    Figure barsLeast)
            implements TowingDetails {}

    /** Trailer plugs and sockets by shape and pins. */
    enum Plug {
        FLAT_4,
        FLAT_7,
        ROUND_7,
        BLADE_7,
        FLAT_12,
        ROUND_13;

        /** Whether it goes into a socket; the seven flat pins fit the upper row of the twelve, common practice. */
        public boolean fits(Plug socket) {
            return this == socket || this == FLAT_7 && socket == FLAT_12;
        }
    }

    record BrakeController(
            @Field(value = "whether it is fed from the battery through a fuse of its own", find = "the fitter")
                    Choice<YesNo> feed)
            implements TowingDetails {}
}
