package fitworthy.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A build sheet: the vehicle, everything that is planned for it, and how it will be loaded and used. */
public record Sheet(
        @Field(value = "a title for the printout", needed = true, example = "Touring wagon, stage two") String title,
        @Field(value = "whom the quote is for", example = "the owner") String customer,
        @Field(value = "the quote this belongs to", example = "Q-1042") String quote,
        @Field(value = "where the vehicle will be registered, one of the rule book's regions", needed = true,
                example = "au-nsw") String region,
        @Field(value = "the day whose practice values apply", needed = true, example = "2026-11-25") LocalDate asOf,
        @Field(value = "tolerance taken for a mass that is given none, as a share of it; 5 % where left out",
                in = Dimension.SHARE, example = "5 %") Figure assumedTolerance,
        @Field(value = "the vehicle as its maker built it", needed = true) Vehicle vehicle,
        @Field("the parts that are planned") List<Fitment> fitments,
        @Field("every tank, the maker's own and the planned") List<Tank> tanks,
        @Field("the people") List<Load> occupants,
        @Field("what is carried") List<Load> cargo,
        @Field("the trailer, where one is towed") Optional<Trailer> trailer,
        @Field("how the vehicle will be used") Trip trip,
        @Field("ways of loading it; one with everything aboard where left out") List<LoadCase> cases) {

    /** A person or a piece of cargo. */
    public record Load(
            @Field(value = "a name that the load cases use", needed = true, example = "Driver") String name,
            @Field(value = "its mass", in = Dimension.MASS, needed = true, find = "a scale",
                    example = "82 kg +/- 3 kg") Figure mass,
            @Field(value = "where it sits", needed = true) Point at,
            @Field(value = "whether it is carried on the roof", find = "the plan") Choice<YesNo> roof) {}

    /** How the vehicle will be used. */
    public record Trip(
            @Field(value = "the longest way between two fuel stops", in = Dimension.LENGTH, find = "the route",
                    example = "820 km") Figure longestLeg,
            @Field(value = "the country crossed", find = "the route") Choice<Terrain> terrain,
            @Field(value = "the dust to be expected", find = "the route") Choice<Dust> dust,
            @Field(value = "the deepest water to be crossed; 0 mm where none", in = Dimension.LENGTH, find = "the route",
                    example = "600 mm") Figure waterDepth,
            @Field(value = "the highest speed that will be driven", in = Dimension.SPEED, find = "the owner",
                    example = "110 km/h") Figure topSpeed,
            @Field(value = "how many people travel", find = "the owner", example = "2") Figure people,
            @Field(value = "days between places with supplies", in = Dimension.TIME, find = "the route",
                    example = "6 days") Figure days,
            @Field(value = "what each person uses a day to drink, cook and wash", in = Dimension.VOLUME,
                    find = "the owner", example = "6 L") Figure waterUse,
            @Field(value = "the coldest night to be expected", in = Dimension.TEMPERATURE, signed = true,
                    find = "the weather records of the route", example = "-4 degC") Figure coldest,
            @Field(value = "driving in dust between two services", in = Dimension.LENGTH, find = "the route",
                    example = "2500 km") Figure dustDistance) {}

    public enum Terrain { OPEN, HILLS, FOREST, TOWN }

    public enum Dust { NONE, SOME, HEAVY }
}
