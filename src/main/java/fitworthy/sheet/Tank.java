package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Money;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;
import java.util.Optional;

/** A tank, its shell and what is in it. */
public record Tank(
        @Field(value = "what it is called", needed = true, example = "Long-range tank") String name,
        @Field(value = "what it holds", needed = true, find = "the plan") Choice<Liquid> liquid,
        @Field(
                        value = "usable volume",
                        in = Dimension.VOLUME,
                        within = Plausible.CAPACITY,
                        needed = true,
                        find = "the maker",
                        example = "95 L")
                Figure capacity,
        @Field(
                        value = "how full it is unless a loading says otherwise",
                        in = Dimension.SHARE,
                        within = Plausible.FULLNESS,
                        needed = true,
                        find = "the plan",
                        example = "100 %")
                Figure fill,
        @Field(
                        value = "where its middle sits, the maker's own too on the vehicle with any longer wheelbase",
                        needed = true,
                        inWords = true,
                        example = "x: 2400 mm, y: 0 mm, z: 600 mm")
                Point at,
        @Field(
                        value = "whether the vehicle came with it, so that its shell is in the kerb mass",
                        needed = true,
                        find = "the vehicle")
                Choice<YesNo> stock,
        @Field(value = "whether it comes off for some loadings; no where left out", find = "the plan")
                Choice<YesNo> removable,
        @Field(
                        value = "the part that it stands in or on, and comes off with; none where left out",
                        find = "the plan",
                        example = "Canopy")
                String in,
        @Field(value = "whether it sits on the roof; asked of an added one that is as high", find = "the plan")
                Choice<YesNo> roof,
        @Field(
                        value = "how high its top is above the ground, where it sits on the roof",
                        in = Dimension.LENGTH,
                        within = Plausible.HEIGHT,
                        find = "a tape",
                        example = "2050 mm")
                Figure top,
        @Field(value = "whether it is a can that is carried and emptied by hand; no where left out", find = "the plan")
                Choice<YesNo> portable,
        @Field("how a fuel can is carried") Can can,
        @Field(
                        value =
                                "whether its maker or an engineer states in writing how it is fixed to hold in a crash; asked of a"
                                        + " heavy one in one space with people or on the roof",
                        find = "its fitting instructions")
                Choice<YesNo> fixingStated,
        @Field(
                        value = "mass of the empty tank; not used for a stock one",
                        in = Dimension.MASS,
                        within = Plausible.PART_MASS,
                        find = "a scale",
                        example = "18 kg")
                Figure mass,
        @Field(
                        value = "density of what it holds; the usual one where left out",
                        in = Dimension.DENSITY,
                        within = Plausible.DENSITY,
                        find = "the supplier",
                        example = "0.84 kg/L")
                Figure density,
        @Field("the tank of the vehicle that it replaces, by the name that it has on the sheet")
                Optional<Fitment.Removed> removes,
        @Field("how a planned fuel tank is built in") BuiltIn builtIn,
        @Field("what is asked of a water tank") Water water,
        @Field(
                        value =
                                "whether it is already on the vehicle, so that the kerb mass was weighed with it; no where"
                                        + " left out",
                        find = "a look")
                Choice<YesNo> done,
        @Field(
                        value =
                                "whether the certificate for it is in hand; asked of what is done and may have to be certified",
                        find = "the vehicle's papers")
                Choice<Papers.Proof> certificate,
        @Field(value = "its price", example = "1450.00 AUD") Money price,
        @Field(
                        value = "time until a planned one can be had",
                        in = Dimension.TIME,
                        within = Plausible.TIME_TO_WAIT,
                        find = "the supplier",
                        example = "21 days")
                Figure leadTime,
        @Field("the fitting of a planned one") Work work) {

    /** What a tank for drinking water has to be. */
    public record Water(
            @Field(value = "whether tank, hose, pump and fittings are sold for drinking water", find = "their labels")
                    Choice<YesNo> potable,
            @Field(value = "whether baffles divide it", find = "the tank's maker") Choice<YesNo> baffled,
            @Field(value = "whether it and its pipes can be drained or are kept from freezing", find = "the fitter")
                    Choice<YesNo> frostGuarded,
            @Field(
                            value = "gap to the exhaust, a battery or a switchboard, whichever is nearest",
                            in = Dimension.LENGTH,
                            within = Plausible.GAP,
                            find = "a tape",
                            example = "250 mm")
                    Figure clearance) {}

    /** How a can of fuel is carried. */
    public record Can(
            @Field(value = "where it travels", find = "the plan") Choice<CanPlace> place,
            @Field(value = "whether a holder that locks or straps it down is fixed to the vehicle", find = "the fitter")
                    Choice<YesNo> fixed) {}

    /** In the open air; in a box, canopy or locker shut off from the people; where people sit or sleep. */
    public enum CanPlace {
        OPEN_AIR,
        BOX,
        CABIN
    }

    /** Whether it is carried and emptied by hand. */
    public boolean isCan() {
        return portable.is(YesNo.YES);
    }

    /** Whether it can be left off. */
    public boolean comesOff() {
        return removable.is(YesNo.YES) || isCan();
    }

    /** Whether it takes the place of another. */
    public boolean replaces(Tank made) {
        return removes.filter(gone -> gone.name().equals(made.name())).isPresent();
    }

    /** Whether it is not the maker's and already on the vehicle, its empty mass in the kerb mass. */
    public boolean isDone() {
        return done.is(YesNo.YES) && stock.is(YesNo.NO);
    }

    /** How a fuel tank is built into the vehicle. */
    public record BuiltIn(
            @Field(
                            value = "whether the engine burns what is in it; no for a stove's or a heater's tank",
                            find = "the plan")
                    Choice<YesNo> feedsEngine,
            @Field(value = "whether it breathes to the outside of the body", find = "the tank's maker")
                    Choice<YesNo> breather,
            @Field(value = "whether it is filled from outside the body", find = "the plan") Choice<YesNo> filler,
            @Field(value = "whether tank and filler are joined to the body by an earth strap", find = "the fitter")
                    Choice<YesNo> earthed,
            @Field(
                            value = "whether it is approved for this vehicle where that is asked for",
                            find = "the approval papers")
                    Choice<YesNo> approved,
            @Field(
                            value = "least gap to the exhaust",
                            in = Dimension.LENGTH,
                            within = Plausible.GAP,
                            find = "a tape",
                            example = "150 mm")
                    Figure exhaustGap,
            @Field(value = "whether frame or body shields it from the ground and in a crash", find = "the fitter")
                    Choice<YesNo> shielded) {}

    public enum Liquid {
        DIESEL,
        PETROL,
        WATER,
        UREA_SOLUTION
    }
}
