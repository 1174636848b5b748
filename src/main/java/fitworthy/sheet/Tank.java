package fitworthy.sheet;

import java.util.Optional;

/** A tank, its shell and what is in it. */
public record Tank(
        @Field(value = "a name that the load cases use", needed = true, example = "Long-range tank") String name,
        @Field(value = "what it holds", needed = true, find = "the plan") Choice<Liquid> liquid,
        @Field(value = "usable volume", in = Dimension.VOLUME, needed = true, find = "the maker", example = "95 L")
        Figure capacity,
        @Field(value = "how full it is unless a load case says otherwise", in = Dimension.SHARE, needed = true,
                find = "the plan", example = "100 %") Figure fill,
        @Field(value = "where its middle sits", needed = true) Point at,
        @Field(value = "whether the vehicle came with it, so that its shell is in the kerb mass", needed = true,
                find = "the vehicle") Choice<YesNo> stock,
        @Field(value = "mass of the empty tank; not used for a stock one", in = Dimension.MASS, find = "a scale",
                example = "18 kg") Figure mass,
        @Field(value = "density of what it holds, where it is not the usual one", in = Dimension.DENSITY,
                find = "the supplier", example = "0.84 kg/L") Figure density,
        @Field("the part of the vehicle that it replaces") Optional<Fitment.Removed> removes,
        @Field(value = "its price", example = "1450.00 AUD") Money price) {

    public enum Liquid { DIESEL, PETROL, WATER, UREA_SOLUTION }
}
