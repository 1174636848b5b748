package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;

/** Parts between the tanks and the engine. */
public sealed interface FuelDetails extends Details {

    record FuelSeparator(
            @Field(value = "where it sits in the fuel line", find = "the fitter") Choice<FuelPlace> place,
            @Field(
                            value = "whether its maker states how well it separates fine droplets, as behind a pump",
                            find = "the maker's test report")
                    Choice<YesNo> fineDroplets,
            @Field(
                            value = "rating of its element",
                            in = Dimension.LENGTH,
                            within = Plausible.FILTER,
                            find = "the maker",
                            example = "30 um")
                    Figure rating,
            @Field(
                            value = "its place among the planned elements, 1 nearest the tank",
                            find = "the plan",
                            example = "1",
                            within = Plausible.POSITION)
                    Figure order,
            @Field(
                            value = "flow it is rated for",
                            in = Dimension.FLOW,
                            within = Plausible.FUEL_FLOW,
                            find = "the maker",
                            example = "200 L/h")
                    Figure ratedFlow,
            @Field(value = "whether it has a sensor that warns of water", find = "the maker") Choice<YesNo> alarm,
            @Field(value = "whether a lamp in the driver's view shows the alarm", find = "the plan") Choice<YesNo> lamp,
            @Field(value = "whether a buzzer in the cab sounds the alarm", find = "the plan") Choice<YesNo> buzzer,
            @Field(value = "whether its drain can be reached by hand at the roadside", find = "the fitter")
                    Choice<YesNo> drainReachable,
            @Field(
                            value = "least gap to the exhaust",
                            in = Dimension.LENGTH,
                            within = Plausible.GAP,
                            find = "a tape",
                            example = "200 mm")
                    Figure exhaustGap,
            @Field(value = "whether frame or body shields it from the ground and in a crash", find = "the fitter")
                    Choice<YesNo> shielded)
            implements FuelDetails {}

    enum FuelPlace {
        BEFORE_PUMP,
        AFTER_PUMP
    }

    record FuelFilter(
            @Field(
                            value = "rating of its element",
                            in = Dimension.LENGTH,
                            within = Plausible.FILTER,
                            find = "the maker",
                            example = "10 um")
                    Figure rating,
            @Field(
                            value = "its place among the planned elements, 1 nearest the tank",
                            find = "the plan",
                            example = "2",
                            within = Plausible.POSITION)
                    Figure order,
            @Field(
                            value = "flow it is rated for",
                            in = Dimension.FLOW,
                            within = Plausible.FUEL_FLOW,
                            find = "the maker",
                            example = "200 L/h")
                    Figure ratedFlow)
            implements FuelDetails {}
}
