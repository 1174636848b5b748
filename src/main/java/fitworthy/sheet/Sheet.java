package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;
import fitworthy.schema.RecordSchema;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** A build sheet: the vehicle, everything that is planned for it, and how it will be loaded and used. */
public record Sheet(
        @Field(value = "a title for the printout", needed = true, printed = true, example = "Touring wagon, stage two")
                String title,
        @Field(value = "whom the quote is for", printed = true, example = "the owner") String customer,
        @Field(value = "the quote this belongs to", printed = true, example = "Q-1042") String quote,
        @Field(
                        value = "where the vehicle will be registered, one of the rule book's regions",
                        needed = true,
                        example = "au-nsw")
                String region,
        @Field(
                        value = "the day whose practice values apply",
                        needed = true,
                        example = "2026-11-25",
                        within = Plausible.DAY)
                LocalDate asOf,
        @Field(
                        value = "tolerance taken for a mass that is given none, as a share of it; 5 % where left out",
                        in = Dimension.SHARE,
                        within = Plausible.MASS_TOLERANCE,
                        find = "the workshop",
                        example = "5 %")
                Figure assumedTolerance,
        @Field(
                        value =
                                "tolerance taken for every place that is given none, each way along x, y and z; 50 mm where left out",
                        in = Dimension.LENGTH,
                        within = Plausible.PLACE_TOLERANCE,
                        find = "the workshop",
                        example = "50 mm")
                Figure assumedPlace,
        @Field(
                        value =
                                "whether what is left out is filled in with the rule book's usual figures, as guesses, as far"
                                        + " as it has one; no where left out",
                        find = "the workshop")
                Choice<YesNo> assumeUsual,
        @Field(value = "the vehicle as its maker built it", needed = true) Vehicle vehicle,
        @Field("the parts that are planned") List<Fitment> fitments,
        @Field("work beside the fitting of the parts") List<Job> jobs,
        @Field(
                        value = "the day by which all of it is to be done; none where left out",
                        example = "2027-02-26",
                        within = Plausible.DAY)
                LocalDate readyBy,
        @Field("every tank, the maker's own and the planned") List<Tank> tanks,
        @Field("the people") List<Person> occupants,
        @Field("what is carried") List<Load> cargo,
        @Field("the trailer, where one is towed") Optional<Trailer> trailer,
        @Field("the electrical circuits that are planned") List<Circuit> circuits,
        @Field("certificates, insurer and warranty") Papers papers,
        @Field("how the vehicle will be used") Trip trip,
        @Field("ways of loading it; one with everything aboard where left out") List<LoadCase> cases,
        @Field("choices that are still open, to be compared") List<Option> options,
        @Field("findings that a person stands for although they remain") List<Waiver> waivers) {

    /** Tolerance of a place where the sheet names none, in m: an assumption, see docs/method.md. */
    public static final double ASSUMED_PLACE = 0.05;

    /** This sheet with only the chosen parts in it; what stands in or on the others goes with them. */
    public Sheet planned() {
        Set<String> gone = leftOut();
        return gone.isEmpty()
                ? this
                : new Sheet(
                        title,
                        customer,
                        quote,
                        region,
                        asOf,
                        assumedTolerance,
                        assumedPlace,
                        assumeUsual,
                        vehicle,
                        fitments.stream()
                                .filter(fitment -> !gone.contains(fitment.name()))
                                .toList(),
                        jobs,
                        readyBy,
                        tanks.stream()
                                .filter(tank -> !gone.contains(tank.name()))
                                .toList(),
                        occupants,
                        cargo.stream().filter(load -> !gone.contains(load.in())).toList(),
                        trailer,
                        circuits.stream()
                                .filter(circuit -> !gone.contains(circuit.part()))
                                .toList(),
                        papers,
                        trip,
                        cases,
                        options,
                        waivers);
    }

    /** The same sheet with other choices taken. @param choices by the names of their options */
    public Sheet taking(Map<String, String> choices) {
        return RecordSchema.with(
                this,
                "options",
                options.stream()
                        .map(option -> new Option(
                                option.name(), choices.getOrDefault(option.name(), option.take()), option.choices()))
                        .toList());
    }

    /** Parts of choices that are not taken. */
    private Set<String> notTaken() {
        Set<String> open = new HashSet<>();
        options.forEach(option -> option.choices().forEach(choice -> open.addAll(choice.parts())));
        options.forEach(option -> open.removeAll(option.taken().parts()));
        return open;
    }

    /** Parts and tanks that are left out because another choice is taken, with what stands in or on them. */
    public Set<String> leftOut() {
        return withContents(notTaken());
    }

    /** What no choice says is left out, but goes with the part not taken that it stands in or on. */
    public List<String> leftNowhere() {
        Set<String> open = notTaken();
        Set<String> gone = withContents(open);
        return Stream.concat(
                        gone.stream().filter(name -> !open.contains(name)),
                        cargo.stream().filter(load -> gone.contains(load.in())).map(Load::name))
                .sorted()
                .toList();
    }

    /** These parts with all that stands in or on them, as its {@code in} says; for many askings see {@link Contents}. */
    public Set<String> withContents(Collection<String> parts) {
        return new Contents(fitments, tanks).with(parts);
    }

    /** A choice that is still open. */
    public record Option(
            @Field(value = "what is to be chosen", needed = true, printed = true, example = "Tray") String name,
            @Field(value = "which choice is taken; the first where left out", example = "alloy") String take,
            @Field(value = "what there is to choose from", needed = true) List<Alternative> choices) {

        /** The choice that is taken; one without parts where there are none, as in a sheet that is still being checked. */
        public Alternative taken() {
            return choices.stream()
                    .filter(choice -> choice.name().equals(take))
                    .findFirst()
                    .or(() -> choices.stream().findFirst())
                    .orElse(new Alternative("", List.of()));
        }
    }

    /** One of the choices of an option. */
    public record Alternative(
            @Field(value = "what to call it", needed = true, printed = true, example = "alloy") String name,
            @Field(
                            value = "names of the fitments and tanks that belong to it; none where it is to do without",
                            example = "[Alloy tray]")
                    List<String> parts) {}

    /** A person. */
    public record Person(
            @Field(value = "what it is called", needed = true, example = "Driver") String name,
            @Field(
                            value = "the mass",
                            in = Dimension.MASS,
                            within = Plausible.PERSON,
                            needed = true,
                            find = "a scale",
                            example = "82 kg +/- 3 kg")
                    Figure mass,
            @Field(
                            value = "the place, seated",
                            needed = true,
                            inWords = true,
                            example = "x: 1500 mm, y: -370 mm, z: 900 mm")
                    Point at) {}

    /** A piece of cargo. */
    public record Load(
            @Field(value = "what it is called", needed = true, example = "Luggage") String name,
            @Field(
                            value = "its mass",
                            in = Dimension.MASS,
                            within = Plausible.PART_MASS,
                            needed = true,
                            find = "a scale",
                            example = "82 kg +/- 3 kg")
                    Figure mass,
            @Field(value = "where it sits", needed = true, inWords = true, example = "x: 2700 mm, y: 0 mm, z: 900 mm")
                    Point at,
            @Field(value = "the part that it stands in or on, and is left with", find = "the plan", example = "Canopy")
                    String in,
            @Field(value = "whether it is carried on the roof", find = "the plan") Choice<YesNo> roof,
            @Field(
                            value = "how high its top is above the ground, where it lies on the roof",
                            in = Dimension.LENGTH,
                            within = Plausible.HEIGHT,
                            find = "a tape",
                            example = "2050 mm")
                    Figure top,
            @Field(
                            value = "how far it may be moved along the vehicle, either way",
                            in = Dimension.LENGTH,
                            within = Plausible.MOVE,
                            find = "the plan",
                            example = "400 mm")
                    Figure mayMove,
            @Field(
                            value =
                                    "whether straps, a net or walls keep it where it is; asked of a heavy one in no canopy or locker,"
                                            + " or on the roof, unless lashing or tied tells",
                            find = "the plan")
                    Choice<YesNo> secured,
            @Field("the straps over it, where they are to be held against braking") Optional<Lashing> lashing,
            @Field("the lashings that pull it back when it would slide, where they are to be held against braking")
                    Optional<Tied> tied,
            @Field("what a tall one stands on, where it is to be seen whether it tips over")
                    Optional<Footing> footing) {

        private static final Set<String> ALIVE = Set.of(
                "dog",
                "dogs",
                "cat",
                "cats",
                "puppy",
                "horse",
                "horses",
                "bird",
                "birds",
                "pet",
                "pets",
                "baby",
                "child",
                "children",
                "kid",
                "kids");

        /** Whether it is alive by its name: nobody is told to leave that behind, nor to lock it into a trailer. */
        public boolean isAlive() {
            return Stream.of(name.toLowerCase(Locale.ROOT).split("[^a-z]+")).anyMatch(ALIVE::contains);
        }
    }

    /** How the vehicle will be used. */
    public record Trip(
            @Field(
                            value = "the longest way between two fuel stops",
                            in = Dimension.LENGTH,
                            within = Plausible.DISTANCE,
                            find = "the route",
                            example = "820 km")
                    Figure longestLeg,
            @Field(value = "what kind of country is crossed", find = "the route") Choice<Terrain> terrain,
            @Field(
                            value =
                                    "how much dust is to be expected; roads without any, and without water to cross, count as sealed",
                            find = "the route")
                    Choice<Dust> dust,
            @Field(
                            value = "the deepest water to be crossed; 0 mm where none",
                            in = Dimension.LENGTH,
                            within = Plausible.WATER_DEPTH,
                            find = "the route",
                            example = "600 mm")
                    Figure waterDepth,
            @Field(
                            value = "the highest speed that will be driven",
                            in = Dimension.SPEED,
                            within = Plausible.SPEED,
                            find = "the owner",
                            example = "110 km/h")
                    Figure topSpeed,
            @Field(
                            value = "how many people travel; asked where there are days away, else those aboard",
                            find = "the owner",
                            example = "2",
                            within = Plausible.SEATS)
                    Figure people,
            @Field(
                            value =
                                    "days between places with supplies; water is asked about where left out as far as a tank holds it",
                            in = Dimension.TIME,
                            within = Plausible.DAYS_AWAY,
                            find = "the route",
                            example = "6 days")
                    Figure days,
            @Field(
                            value = "what each person uses a day to drink, cook and wash",
                            in = Dimension.VOLUME,
                            within = Plausible.WATER_USE,
                            find = "the owner",
                            example = "6 L")
                    Figure waterUse,
            @Field(
                            value = "the coldest night to be expected",
                            in = Dimension.TEMPERATURE,
                            within = Plausible.WEATHER,
                            signed = true,
                            find = "the weather records of the route",
                            example = "-4 degC")
                    Figure coldest,
            @Field(
                            value = "hours driven on a usual day of the trip",
                            in = Dimension.TIME,
                            within = Plausible.HOURS_OF_DAY,
                            find = "the owner",
                            example = "4 h")
                    Figure driving,
            @Field(
                            value = "longest stay without starting the engine",
                            in = Dimension.TIME,
                            within = Plausible.DAYS_AWAY,
                            find = "the owner",
                            example = "3 days")
                    Figure parked,
            @Field(
                            value =
                                    "mass of all who sleep in a tent on the roof, with their bedding; 0 kg where nobody does; asked"
                                            + " where a roof tent is up there",
                            in = Dimension.MASS,
                            within = Plausible.ROOF_SLEEPERS,
                            find = "the owner",
                            example = "160 kg")
                    Figure roofSleepers,
            @Field(
                            value =
                                    "the part or load that they sleep in; in each loading with anything on the roof where"
                                            + " left out",
                            example = "Roof tent")
                    String roofTent,
            @Field(
                            value =
                                    "hours a day for which solar panels would give their rated power in the trip's worst month,"
                                            + " losses counted",
                            in = Dimension.TIME,
                            within = Plausible.HOURS_OF_DAY,
                            find = "a solar atlas",
                            example = "2.2 h")
                    Figure sun,
            @Field(
                            value = "distance over which another vehicle must be heard on the radio",
                            in = Dimension.LENGTH,
                            within = Plausible.SIGHT_DISTANCE,
                            find = "the owner",
                            example = "8 km")
                    Figure radioRange,
            @Field(
                            value = "the lowest door, bridge or ferry deck to be passed",
                            in = Dimension.LENGTH,
                            within = Plausible.HEADROOM,
                            find = "the route, and the owner's garage",
                            example = "2300 mm")
                    Figure headroom,
            @Field(
                            value = "how far it drives in dust between two services",
                            in = Dimension.LENGTH,
                            within = Plausible.DISTANCE,
                            find = "the route",
                            example = "2500 km")
                    Figure dustDistance,
            @Field(
                            value =
                                    "whether fire extinguisher, first-aid kit, warning triangles and a distress beacon or satellite"
                                            + " telephone are all carried; asked where the days make a trip remote",
                            find = "the owner")
                    Choice<YesNo> help) {}

    public enum Terrain {
        OPEN,
        HILLS,
        FOREST,
        TOWN
    }

    public enum Dust {
        NONE,
        SOME,
        HEAVY
    }
}
