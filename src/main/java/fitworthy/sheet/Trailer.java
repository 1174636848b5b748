package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;
import java.util.List;
import java.util.Optional;

/** The trailer as it will be towed. */
public record Trailer(
        @Field(value = "what to call it", needed = true, printed = true, example = "Off-road camper") String name,
        @Field(
                        value = "its whole mass when loaded, uncoupled",
                        in = Dimension.MASS,
                        within = Plausible.TRAILER_MASS,
                        needed = true,
                        find = "a weighbridge, or its plate for the most it may be",
                        example = "2200 kg")
                Figure mass,
        @Field(
                        value =
                                "the most it may weigh, uncoupled; aggregate trailer mass (ATM), or what its plate calls MTPLM, MAM or GVWR",
                        in = Dimension.MASS,
                        within = Plausible.TRAILER_MASS,
                        find = "its plate",
                        example = "2400 kg")
                Figure rated,
        @Field(
                        value = "the most its axles may carry when coupled; gross trailer mass (GTM)",
                        in = Dimension.MASS,
                        within = Plausible.TRAILER_MASS,
                        find = "its plate, where the axles' masses may have to be added up, or its maker",
                        example = "2180 kg")
                Figure gtm,
        @Field(
                        value = "the least it can be loaded to",
                        in = Dimension.MASS,
                        within = Plausible.TRAILER_MASS,
                        find = "its empty mass and what must be in it",
                        example = "1650 kg")
                Figure lightest,
        @Field(
                        value =
                                "load it puts on the ball; its nose or tongue weight, or of a fifth wheel its pin weight",
                        in = Dimension.MASS,
                        within = Plausible.BALL_LOAD,
                        find = "a ball scale",
                        example = "210 kg")
                Figure ball,
        @Field("with nothing aboard of what is listed; asked where something is") Bare bare,
        @Field("what stays in it all the way, where the load on the ball is to be worked out") List<Stowed> stowed,
        @Field("what is used up or left behind on the way, as water, gas and bicycles are; likewise")
                List<Stowed> supplies,
        @Field(value = "how it is coupled; to a ball or the like where left out", find = "a look") Choice<Hitch> hitch,
        @Field(
                        value = "whether it is one to live or sleep in, as a caravan or camper is; asked in California",
                        find = "a look")
                Choice<YesNo> livedIn,
        @Field("the tyres on its axles") Optional<AxleTyres> tyres,
        @Field("what the plate of its coupling allows") TowingDetails.CouplingPlate coupling,
        @Field(
                        value = "height of its coupling when it is loaded and stands level",
                        in = Dimension.LENGTH,
                        within = Plausible.COUPLING_HEIGHT,
                        find = "a tape",
                        example = "460 mm")
                Figure couplingHeight,
        @Field(value = "what brakes it has", find = "its plate, or a look") Choice<Brakes> brakes,
        @Field(value = "whether every wheel is braked", find = "a look") Choice<YesNo> everyWheelBraked,
        @Field(value = "whether it brakes by itself when it breaks away", find = "its maker") Choice<YesNo> breakaway,
        @Field(
                        value = "how long its brakes hold after it broke away",
                        in = Dimension.TIME,
                        within = Plausible.BRAKE_HOLD,
                        find = "a trial with the plug and the breakaway pin pulled",
                        example = "20 min")
                Figure breakawayHold,
        @Field(value = "how many safety chains it has", find = "a look", example = "2", within = Plausible.COUNT)
                Figure chains,
        @Field(value = "its plug", find = "a look") Choice<TowingDetails.Plug> plug,
        @Field(
                        value = "what its lamps run on",
                        in = Dimension.VOLTAGE,
                        within = Plausible.BATTERY_VOLTAGE,
                        find = "its maker",
                        example = "12 V")
                Figure voltage,
        @Field(
                        value =
                                "how the vehicle charges a battery in it: not at all, by a cable with a fuse at both batteries, or"
                                        + " by one without; asked where its brakes are electric",
                        find = "a look at both ends of the cable")
                Choice<BatteryFeed> batteryFeed,
        @Field(
                        value = "greatest width",
                        in = Dimension.LENGTH,
                        within = Plausible.BODY_WIDTH,
                        find = "a tape",
                        example = "2100 mm")
                Figure width,
        @Field(
                        value = "from the coupling to the rearmost point",
                        in = Dimension.LENGTH,
                        within = Plausible.TRAILER_LENGTH,
                        find = "a tape",
                        example = "5600 mm")
                Figure length,
        @Field(
                        value = "from the coupling to the front of the body",
                        in = Dimension.LENGTH,
                        within = Plausible.ALONG_TRAILER,
                        find = "a tape",
                        example = "1500 mm")
                Figure drawbar,
        @Field(
                        value = "from the coupling to the centre of its axles",
                        in = Dimension.LENGTH,
                        within = Plausible.TRAILER_AXLE,
                        find = "a tape",
                        example = "3600 mm")
                Figure axle,
        @Field(value = "whether its body hides the view through the rear window", find = "a look")
                Choice<YesNo> hidesRearWindow,
        @Field(
                        value = "whether it and its load stay so low that the mirrors show the road over it",
                        find = "a look from the driver's seat")
                Choice<YesNo> seenOver) {

    /**
     * This trailer, its masses and the load on the ball with a tolerance of {@code share} of each where none is given,
     * and places in it within {@code place}, in m.
     */
    public Trailer orTolerance(double share, double place) {
        return with(
                mass.orTolerance(share),
                ball.orTolerance(share),
                new Bare(bare.mass().orTolerance(share), bare.ball().orTolerance(share)),
                Stowed.orTolerance(stowed, share, place),
                Stowed.orTolerance(supplies, share, place));
    }

    /** This trailer with another load on the ball. */
    public Trailer withBall(Figure other) {
        return with(mass, other, bare, stowed, supplies);
    }

    private Trailer with(Figure mass, Figure ball, Bare bare, List<Stowed> stowed, List<Stowed> supplies) {
        return new Trailer(
                name,
                mass,
                rated,
                gtm,
                lightest,
                ball,
                bare,
                stowed,
                supplies,
                hitch,
                livedIn,
                tyres,
                coupling,
                couplingHeight,
                brakes,
                everyWheelBraked,
                breakaway,
                breakawayHold,
                chains,
                plug,
                voltage,
                batteryFeed,
                width,
                length,
                drawbar,
                axle,
                hidesRearWindow,
                seenOver);
    }

    /** Whether it is coupled to a fifth wheel. */
    public boolean onFifthWheel() {
        return hitch.is(Hitch.FIFTH_WHEEL);
    }

    /** The trailer without what is listed. */
    public record Bare(
            @Field(
                            value = "its whole mass then, uncoupled",
                            in = Dimension.MASS,
                            within = Plausible.TRAILER_MASS,
                            find = "a weighbridge, or its plate for its tare",
                            example = "1750 kg")
                    Figure mass,
            @Field(
                            value = "load on the ball then",
                            in = Dimension.MASS,
                            within = Plausible.BALL_LOAD,
                            find = "a ball scale, or its plate",
                            example = "150 kg")
                    Figure ball) {}

    /** Something in or on it. */
    public record Stowed(
            @Field(value = "what it is called", needed = true, printed = true, example = "Front water tank")
                    String name,
            @Field(
                            value = "its mass; of a tank what is in it",
                            in = Dimension.MASS,
                            within = Plausible.PART_MASS,
                            needed = true,
                            find = "a scale; a kilogram for each litre of water",
                            example = "95 kg")
                    Figure mass,
            @Field(
                            value = "from the coupling to its centre of mass",
                            in = Dimension.LENGTH,
                            within = Plausible.ALONG_TRAILER,
                            needed = true,
                            find = "a tape",
                            example = "2600 mm")
                    Figure behind) {

        private static List<Stowed> orTolerance(List<Stowed> all, double share, double place) {
            return all.stream()
                    .map(each -> new Stowed(each.name, each.mass.orTolerance(share), each.behind.orWithin(place)))
                    .toList();
        }
    }

    /** The tyres on its axles, the spare left out. */
    public record AxleTyres(
            @Field(value = "how many", find = "a look", example = "4", within = Plausible.COUNT) Figure count,
            @Field(value = "load index of one", find = "the sidewall", example = "112", within = Plausible.LOAD_INDEX)
                    Figure loadIndex,
            @Field(
                            value =
                                    "whether they are passenger tyres, whose size has neither LT, ST nor C; asked in the"
                                            + " United States",
                            find = "the sidewall")
                    Choice<YesNo> passenger) {}

    /** The cable from the vehicle to a battery in the trailer, by whether a fuse guards it at both of its ends. */
    public enum BatteryFeed {
        NONE,
        FUSED,
        UNFUSED
    }

    public enum Hitch {
        BALL,
        FIFTH_WHEEL
    }

    /** Brakes by what works them: nothing, the trailer's push, or a controller in the vehicle. */
    public enum Brakes {
        NONE,
        OVER_RUN,
        ELECTRIC,
        ELECTRIC_HYDRAULIC,
        AIR;

        /** Whether they need a brake controller. */
        public boolean controlled() {
            return this == ELECTRIC || this == ELECTRIC_HYDRAULIC;
        }
    }
}
