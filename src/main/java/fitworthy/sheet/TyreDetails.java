package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;

/** Tyres and wheels, planned or the vehicle's own. */
public sealed interface TyreDetails extends Details {

    /** A set of tyres. */
    record Tyres(
            @Field(value = "the size on the sidewall", find = "the sidewall", example = "265/65R17") String size,
            @Field(
                            value = "overall diameter; the one that the size gives where left out",
                            in = Dimension.LENGTH,
                            within = Plausible.TYRE_DIAMETER,
                            find = "the tyre maker's data",
                            example = "802 mm")
                    Figure diameter,
            @Field(
                            value = "load index for single fitting",
                            find = "the sidewall",
                            example = "112",
                            within = Plausible.LOAD_INDEX)
                    Figure loadIndex,
            @Field(
                            value = "load index for dual fitting",
                            find = "the sidewall",
                            example = "109",
                            within = Plausible.LOAD_INDEX)
                    Figure dualLoadIndex,
            @Field(value = "speed symbol", find = "the sidewall", example = "S") String speedSymbol,
            @Field(
                            value = "pressure at which the load index holds",
                            in = Dimension.PRESSURE,
                            within = Plausible.TYRE_PRESSURE,
                            find = "the tyre maker's load table",
                            example = "250 kPa")
                    Figure referencePressure,
            @Field(
                            value = "pressure planned for the front",
                            in = Dimension.PRESSURE,
                            within = Plausible.TYRE_PRESSURE,
                            find = "the plan",
                            example = "36 psi")
                    Figure frontPressure,
            @Field(
                            value = "pressure planned for the rear",
                            in = Dimension.PRESSURE,
                            within = Plausible.TYRE_PRESSURE,
                            find = "the plan",
                            example = "42 psi")
                    Figure rearPressure,
            @Field(
                            value =
                                    "greatest cold pressure that the sidewall allows; asked for pressures above reference-pressure",
                            in = Dimension.PRESSURE,
                            within = Plausible.TYRE_PRESSURE,
                            find = "the sidewall",
                            example = "51 psi")
                    Figure mostPressure,
            @Field(
                            value =
                                    "whether it is a passenger tyre; by the size where that has P, LT or C, asked in the United"
                                            + " States on a truck",
                            find = "the sidewall")
                    Choice<YesNo> passenger,
            @Field(
                            value =
                                    "least gap to body, suspension and brake at full lock and full bump, with lift and spacers on",
                            in = Dimension.LENGTH,
                            within = Plausible.TYRE_GAP,
                            find = "a trial fit",
                            example = "20 mm")
                    Figure clearance,
            @Field(
                            value = "narrowest rim that its maker allows",
                            in = Dimension.LENGTH,
                            within = Plausible.RIM_WIDTH,
                            find = "the tyre maker's data",
                            example = "7.5 in")
                    Figure rimLeast,
            @Field(
                            value = "widest rim that its maker allows",
                            in = Dimension.LENGTH,
                            within = Plausible.RIM_WIDTH,
                            find = "the tyre maker's data",
                            example = "9.5 in")
                    Figure rimMost,
            @Field(value = "whether the speedometer will be set to them; no where left out", find = "the plan")
                    Choice<YesNo> speedometerSet)
            implements TyreDetails {}

    /** A set of wheels. */
    record Wheels(
            @Field(
                            value = "load rating of one wheel",
                            in = Dimension.MASS,
                            within = Plausible.WHEEL_RATING,
                            find = "the stamp behind the spokes",
                            example = "1250 kg")
                    Figure rating,
            @Field(
                            value = "rim diameter",
                            in = Dimension.LENGTH,
                            within = Plausible.RIM_DIAMETER,
                            find = "the stamp behind the spokes",
                            example = "17 in")
                    Figure diameter,
            @Field(
                            value = "rim width",
                            in = Dimension.LENGTH,
                            within = Plausible.RIM_WIDTH,
                            find = "the stamp behind the spokes",
                            example = "7.5 in")
                    Figure width,
            @Field(
                            value = "offset; positive moves the wheel inwards",
                            in = Dimension.LENGTH,
                            within = Plausible.RIM_OFFSET,
                            signed = true,
                            find = "the stamp behind the spokes",
                            example = "30 mm")
                    Figure offset,
            @Field(
                            value = "whether two wheels stand on each side of the rear axle; no where left out",
                            find = "the vehicle")
                    Choice<YesNo> dualRear)
            implements TyreDetails {}

    /** Rings between the hubs and the wheels of an axle, or of both where they are as thick. */
    record Spacers(
            @Field(
                            value = "how thick one is",
                            in = Dimension.LENGTH,
                            within = Plausible.SPACER,
                            find = "a caliper",
                            example = "25 mm")
                    Figure thickness,
            @Field(value = "whether the vehicle's maker fits or lists them for this vehicle", find = "the maker")
                    Choice<YesNo> byMaker,
            @Field(
                            value =
                                    "whether they sit without play on the collar of the hub and have such a collar for the wheel",
                            find = "the maker of the spacers")
                    Choice<YesNo> hubCentric,
            @Field(
                            value =
                                    "how much of its thread a wheel nut holds with them on; the least of all rows of nuts, where"
                                            + " they are bolted on themselves",
                            in = Dimension.LENGTH,
                            within = Plausible.THREAD,
                            find = "the turns of a nut times the pitch of its thread",
                            example = "15 mm")
                    Figure engaged,
            @Field(
                            value = "diameter of the wheel studs' thread",
                            in = Dimension.LENGTH,
                            within = Plausible.STUD,
                            find = "a caliper: 12 mm of M12x1.5",
                            example = "12 mm")
                    Figure stud)
            implements TyreDetails {}
}
