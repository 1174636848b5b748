package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;

/** Parts at the front. */
public sealed interface FrontDetails extends Details {

    /** A frontal protection bar. */
    record Bar(
            @Field(
                            value = "whether its maker states in writing that it suits this vehicle's airbags",
                            find = "the maker")
                    Choice<YesNo> airbagStatement,
            @Field(value = "whether it bears the label or mark of the standard for such bars", find = "the bar's plate")
                    Choice<YesNo> marked,
            @Field(value = "what becomes of the parking, cruise and braking sensors", find = "the fitter")
                    Choice<Sensors> sensors,
            @Field(
                            value =
                                    "whether setting camera, radar and other sensors again is in the plan and its price; asked where"
                                            + " they are moved",
                            find = "the plan")
                    Choice<YesNo> sensorsSet,
            @Field(value = "whether the number plate can be read from ahead and from the sides", find = "a look")
                    Choice<YesNo> plateVisible,
            @Field(value = "whether headlamps, position lamps and indicators stay in full view", find = "a look")
                    Choice<YesNo> lampsVisible,
            @Field(
                            value = "height of its lowest edge",
                            in = Dimension.LENGTH,
                            within = Plausible.HEIGHT,
                            find = "a tape",
                            example = "480 mm")
                    Figure lowest,
            @Field(
                            value = "from the front axle forward to that edge",
                            in = Dimension.LENGTH,
                            within = Plausible.GAP,
                            find = "a tape",
                            example = "850 mm")
                    Figure ahead,
            @Field(
                            value = "how much of the grille's open area it hides",
                            in = Dimension.SHARE,
                            within = Plausible.FULLNESS,
                            find = "a photograph from straight ahead",
                            example = "10 %")
                    Figure grilleHidden)
            implements FrontDetails {}

    /** What becomes of a sensor behind or in the bumper. */
    enum Sensors {
        NONE_FITTED,
        MOVED,
        COVERED
    }

    record Winch(
            @Field(
                            value = "what it is rated to pull with a single line on the drum's first layer",
                            in = Dimension.MASS,
                            within = Plausible.PULL,
                            find = "its plate",
                            example = "4500 kg")
                    Figure pull,
            @Field(
                            value = "breaking strength of its line",
                            in = Dimension.MASS,
                            within = Plausible.STRENGTH,
                            find = "the line's label",
                            example = "7500 kg")
                    Figure line,
            @Field(
                            value = "what it draws at the rated pull",
                            in = Dimension.CURRENT,
                            within = Plausible.CURRENT,
                            find = "its handbook",
                            example = "400 A")
                    Figure current,
            @Field(
                            value = "the most that battery, isolator and cable may give for the time of a pull",
                            in = Dimension.CURRENT,
                            within = Plausible.CURRENT,
                            find = "their makers",
                            example = "450 A")
                    Figure feed,
            @Field(
                            value =
                                    "the battery of the sheet that feeds it, whose capacity is then the one that counts",
                            find = "the plan")
                    Choice<FedBy> fedBy,
            @Field(
                            value =
                                    "capacity of the battery that feeds it; asked where fed-by does not say which it is",
                            in = Dimension.CHARGE,
                            within = Plausible.CHARGE,
                            find = "the battery's label",
                            example = "90 Ah")
                    Figure battery,
            @Field(
                            value = "how much of the grille's open area it hides",
                            in = Dimension.SHARE,
                            within = Plausible.FULLNESS,
                            find = "a photograph from straight ahead",
                            example = "5 %")
                    Figure grilleHidden)
            implements FrontDetails {

        public enum FedBy {
            STARTER,
            SECOND
        }
    }

    /** A set of lamps of one kind in one place. */
    record Lamps(
            @Field(value = "what they are for", find = "the plan") Choice<LampUse> use,
            @Field(
                            value = "how many; a light bar that lights up as a whole is one",
                            find = "the plan",
                            example = "2",
                            within = Plausible.COUNT)
                    Figure count,
            @Field(value = "where they sit", find = "the plan") Choice<LampPlace> place,
            @Field(
                            value = "whether their light reaches the driver's eye, straight or off the bonnet",
                            find = "a trial at night")
                    Choice<YesNo> dazzlesDriver,
            @Field(value = "whether they light only together with the main beam", find = "the wiring plan")
                    Choice<YesNo> withMainBeam,
            @Field(
                            value = "how much of the grille's open area they hide",
                            in = Dimension.SHARE,
                            within = Plausible.FULLNESS,
                            find = "a photograph from straight ahead",
                            example = "5 %")
                    Figure grilleHidden)
            implements FrontDetails {}

    enum LampUse {
        DRIVING,
        FOG,
        WORK
    }

    enum LampPlace {
        BEHIND_BAR,
        AHEAD_OF_BAR,
        ON_TOP_OF_BAR,
        ROOF,
        ELSEWHERE
    }
}
