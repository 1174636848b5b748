package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One way of loading the vehicle. */
public record LoadCase(
        @Field(value = "what to call it", needed = true, example = "canopy on") String name,
        @Field("names of the people aboard; everyone where left out") Optional<List<String>> aboard,
        @Field("names of the cargo carried; all of it where left out") Optional<List<String>> carrying,
        @Field("removable parts and tanks that are off; what stands in or on them is off too") List<String> off,
        @Field(
                        value = "how full each tank is, by name; as the tank says where left out",
                        in = Dimension.SHARE,
                        within = Plausible.FULLNESS,
                        example = "50 %")
                Map<String, Figure> filled,
        @Field(value = "whether the trailer is on; no where left out", find = "the plan") Choice<YesNo> towing,
        @Field(value = "whether the trip is set out on in this loading; yes where left out", find = "the owner")
                Choice<YesNo> trip,
        @Field("what a weighbridge showed when it was loaded so") Optional<Weighed> weighed) {

    /** Whether somebody is aboard. */
    public boolean takes(String person) {
        return named(aboard, person);
    }

    /** Whether a piece of cargo is carried, where it does not go with a part that is off. */
    public boolean carries(String load) {
        return named(carrying, load);
    }

    /** Whether a trip begins with it; nobody sets out from the weighbridge. */
    public boolean setsOut() {
        return !trip.is(YesNo.NO) && weighed.isEmpty();
    }

    /** The same with the trailer on. */
    public LoadCase coupled() {
        return new LoadCase(name, aboard, carrying, off, filled, Choice.of(YesNo.YES), trip, weighed);
    }

    /** Everything is where none is named. */
    private static boolean named(Optional<List<String>> names, String name) {
        return names.isEmpty() || names.get().contains(name);
    }

    /** A weighbridge reading, an axle at a time, with no trailer on. */
    public record Weighed(
            @Field(
                            value = "front axle",
                            in = Dimension.MASS,
                            within = Plausible.AXLE_MASS,
                            needed = true,
                            find = "the weighbridge ticket",
                            example = "1420 kg +/- 10 kg")
                    Figure frontAxle,
            @Field(
                            value = "rear axle",
                            in = Dimension.MASS,
                            within = Plausible.AXLE_MASS,
                            needed = true,
                            find = "the weighbridge ticket",
                            example = "1610 kg +/- 10 kg")
                    Figure rearAxle) {}
}
