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

    /** A new exhaust, or a part of one. Its mass is what it adds where what comes off is not told. */
    record Exhaust(
            @Field(
                            value =
                                    "whether particulate filter, catalysts and exhaust gas recirculation all stay and work, or any"
                                            + " of them is out or idle",
                            find = "the maker, and the fitter")
                    Choice<EmissionParts> emissionParts,
            @Field(
                            value =
                                    "where it ends: clear of every door, window, vent and flap that opens; beside or under one; or"
                                            + " under the body",
                            find = "the fitter")
                    Choice<Outlet> outlet,
            @Field(
                            value =
                                    "whether a shield stands between its hot parts and any tank, tray, cable or floor above or beside"
                                            + " them",
                            find = "the fitter")
                    Choice<YesNo> shielded,
            @Field(
                            value =
                                    "whether it has an Executive Order number of California's Air Resources Board for this"
                                            + " vehicle, or its maker's word that it needs none; asked in California",
                            find = "its label, or its maker")
                    Choice<YesNo> executiveOrder)
            implements FuelDetails {}

    /** Other software in the engine's computer, or a box that alters what it reads. */
    record Retune(
            @Field(
                            value =
                                    "whether particulate filter, catalysts and exhaust gas recirculation all stay and work, or any"
                                            + " of them is out or idle",
                            find = "who writes it")
                    Choice<EmissionParts> emissionParts,
            @Field(
                            value =
                                    "whether who writes it states in writing that the vehicle keeps to the emission standard that it"
                                            + " was approved to",
                            find = "who writes it")
                    Choice<YesNo> shown,
            @Field(
                            value =
                                    "whether it has an Executive Order number of California's Air Resources Board for this"
                                            + " vehicle, or its maker's word that it needs none; asked in California",
                            find = "its label, or its maker")
                    Choice<YesNo> executiveOrder)
            implements FuelDetails {}

    enum EmissionParts {
        KEPT,
        OUT
    }

    /** Where an exhaust ends. */
    enum Outlet {
        CLEAR,
        AT_OPENING,
        UNDER_BODY
    }
}
