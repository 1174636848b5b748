package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;
import java.util.List;

/** Parts on the way of the air into the engine, and of what leaves its crankcase. */
public sealed interface IntakeDetails extends Details {

    record Snorkel(
            @Field(
                            value = "height of the opening of its head",
                            in = Dimension.LENGTH,
                            within = Plausible.HEIGHT,
                            find = "a tape",
                            example = "1950 mm")
                    Figure headHeight,
            @Field(
                            value = "inner diameter of its narrowest part",
                            in = Dimension.LENGTH,
                            within = Plausible.BORE,
                            find = "the maker",
                            example = "90 mm")
                    Figure bore,
            @Field(
                            value =
                                    "whether its head is a pre-cleaner, which spins the coarse dust out before the filter",
                            find = "the maker")
                    Choice<YesNo> preCleaner,
            @Field("its joints from the head to the airbox") List<Joint> joints,
            @Field(
                            value =
                                    "whether it has an Executive Order number of California's Air Resources Board for this"
                                            + " vehicle, or its maker's word that it needs none; asked in California",
                            find = "its label, or its maker")
                    Choice<YesNo> executiveOrder)
            implements IntakeDetails {}

    /** A joint of the air path. */
    record Joint(
            @Field(value = "which joint", needed = true, example = "pillar to guard") String name,
            @Field(value = "whether it is clamped and sealed", find = "the fitter") Choice<YesNo> sealed) {}

    record Airbox(
            @Field(
                            value = "inner diameter of its inlet",
                            in = Dimension.LENGTH,
                            within = Plausible.BORE,
                            find = "a calliper",
                            example = "85 mm")
                    Figure inletBore,
            @Field(value = "whether its lid seals all round", find = "the fitter, with a smoke or light test")
                    Choice<YesNo> lidSealed,
            @Field(value = "whether this type is known to let dust past its seal", find = "the workshop")
                    Choice<YesNo> knownDustLeak,
            @Field(value = "what kind of drain it has", find = "the fitter") Choice<Drain> drain,
            @Field(
                            value = "height of the drain",
                            in = Dimension.LENGTH,
                            within = Plausible.HEIGHT,
                            find = "a tape",
                            example = "780 mm")
                    Figure drainHeight,
            @Field(
                            value = "distance after which the maker of the filter wants it serviced in dust",
                            in = Dimension.LENGTH,
                            within = Plausible.DISTANCE,
                            find = "the workshop's service data",
                            example = "5000 km")
                    Figure serviceDistance)
            implements IntakeDetails {}

    enum Drain {
        NONE,
        OPEN,
        ONE_WAY
    }

    record BreatherKit(
            @Field(
                            value = "height of the ends of the raised breathers",
                            in = Dimension.LENGTH,
                            within = Plausible.HEIGHT,
                            find = "a tape",
                            example = "1200 mm")
                    Figure height)
            implements IntakeDetails {}

    record CrankcaseSeparator(
            @Field(value = "whether it has a relief valve for a blocked element", find = "the maker")
                    Choice<YesNo> relief,
            @Field(
                            value =
                                    "where the oil goes that it catches; sump-closed is through a check valve or below the oil"
                                            + " level",
                            find = "the plan")
                    Choice<OilOutlet> oil,
            @Field(value = "where the gas goes that it lets through", find = "the plan") Choice<GasOutlet> gas,
            @Field(
                            value = "gas flow it is rated for",
                            in = Dimension.FLOW,
                            within = Plausible.BLOW_BY,
                            find = "the maker",
                            example = "100 L/min")
                    Figure ratedFlow)
            implements IntakeDetails {}

    enum OilOutlet {
        SUMP_CLOSED,
        SUMP_OPEN,
        CAN,
        NOWHERE
    }

    enum GasOutlet {
        INTAKE,
        OPEN_AIR
    }
}
