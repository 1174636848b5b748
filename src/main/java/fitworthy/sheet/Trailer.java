package fitworthy.sheet;

/** The trailer as it will be towed. */
public record Trailer(
        @Field(value = "what to call it", needed = true, example = "Off-road camper") String name,
        @Field(value = "its whole mass when loaded, uncoupled", in = Dimension.MASS, needed = true,
                find = "a weighbridge, or its plate for the most it may be", example = "2200 kg") Figure mass,
        @Field(value = "load it puts on the ball", in = Dimension.MASS, find = "a ball scale", example = "210 kg")
        Figure ball,
        @Field(value = "greatest width", in = Dimension.LENGTH, find = "a tape", example = "2100 mm") Figure width,
        @Field(value = "from the coupling to the rearmost point", in = Dimension.LENGTH, find = "a tape",
                example = "5600 mm") Figure length,
        @Field(value = "from the coupling to the front of the body", in = Dimension.LENGTH, find = "a tape",
                example = "1500 mm") Figure drawbar,
        @Field(value = "whether its body hides the view through the rear window", find = "a look")
        Choice<YesNo> hidesRearWindow) {}
