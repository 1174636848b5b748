package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** An electrical circuit: what it feeds, its cable and its fuse. */
public record Circuit(
        @Field(value = "what it feeds", needed = true, example = "Fridge") String name,
        @Field(
                        value = "the part it belongs to, so that it is off where that part is; of the feed of a charger"
                                + " or an inverter that one; none where left out",
                        example = "Canopy")
                String part,
        @Field(
                        value =
                                "the circuit that leads to the board it hangs on; straight from the battery where left out",
                        example = "Canopy board")
                String board,
        @Field(
                        value =
                                "the inverter that feeds it; asked of a circuit of mains voltage where several may feed it and"
                                        + " one of them is too weak for it",
                        find = "the plan",
                        example = "Inverter")
                String inverter,
        @Field(
                        value =
                                "voltage at which it draws its current: its battery's, the inverter's, or that of shore or the generator",
                        in = Dimension.VOLTAGE,
                        within = Plausible.VOLTAGE,
                        find = "the battery's or the inverter's label",
                        example = "12 V")
                Figure voltage,
        @Field(
                        value =
                                "what it draws at full load, at that voltage; of one that leads to a board what is on there at"
                                        + " once, all that hangs on it where left out",
                        in = Dimension.CURRENT,
                        within = Plausible.CURRENT,
                        find = "its data sheet",
                        example = "5 A")
                Figure current,
        @Field(
                        value =
                                "what it draws for a moment as it starts, at that voltage; of what an inverter feeds with a motor"
                                        + " or a compressor in it",
                        in = Dimension.CURRENT,
                        within = Plausible.CURRENT,
                        find = "its data sheet",
                        example = "20 A")
                Figure starting,
        @Field(
                        value =
                                "the battery it hangs on, or what feeds it in a battery's place: shore, the supply of a campsite"
                                        + " or a house, or a generator; one that battery or shore may feed hangs on its battery",
                        find = "the plan")
                Choice<Supply> battery,
        @Field(value = "whether it runs on while driving", find = "the plan") Choice<YesNo> driving,
        @Field(
                        value = "whether it is used with the engine off; asked of circuits on the starter battery, yes"
                                + " where it runs for more hours a day than are driven",
                        find = "the plan")
                Choice<YesNo> parked,
        @Field(
                        value = "hours a day at full load; 8 h for a fridge that runs a third of the time",
                        in = Dimension.TIME,
                        within = Plausible.HOURS_OF_DAY,
                        find = "its data sheet, or a day with a meter",
                        example = "8 h")
                Figure hours,
        @Field(
                        value = "what it draws with everything switched off; asked of circuits on the starter battery,"
                                + " of what an inverter feeds only where that inverter's feed is no circuit of the sheet;"
                                + " on the second battery it counts where it is given",
                        in = Dimension.CURRENT,
                        within = Plausible.STANDBY,
                        find = "a meter",
                        example = "15 mA")
                Figure standby,
        @Field(
                        value =
                                "where its standby was read, at the battery or at the load's own voltage; asked of what an"
                                        + " inverter feeds",
                        find = "who read the meter")
                Choice<Read> standbyAt,
        @Field(
                        value = "whether it runs for less than a minute at a time, as a winch does; no where left out",
                        find = "the plan")
                Choice<YesNo> shortTime,
        @Field(
                        value =
                                "critical where it fails or endangers at low voltage, such as a fridge, brakes or a relay that charges",
                        find = "the plan")
                Choice<Need> need,
        @Field(
                        value = "whether the switch panel switches it; asked where the panel may be short of ways",
                        find = "the plan")
                Choice<YesNo> switched,
        @Field(
                        value = "whether it returns by a cable of the same section or a cleaned stud on the chassis",
                        find = "the fitter")
                Choice<YesNo> earth,
        @Field(
                        value =
                                "who does the wiring of mains voltage; plugged-in where it only plugs into an inverter or a socket",
                        find = "the plan")
                Choice<MainsWork> mainsWork,
        @Field(
                        value = "whether a safety switch, RCD or GFCI, guards it; asked of wiring of mains voltage",
                        find = "whoever wires it")
                Choice<YesNo> safetySwitch,
        @Field("its cable") Cable cable,
        @Field("its fuse or breaker at the end of the battery, or of the board it hangs on") Fuse fuse,
        @Field("its fuse or breaker at the other battery's end; asked of a charger's cable between two batteries")
                Fuse farFuse) {

    private static final String FAR_END = " at the far end";

    /** What its end at the other battery is called. */
    public String farEnd() {
        return name + FAR_END;
    }

    /** The circuit that something is said of, or of the far end of which. */
    public static String named(String subject) {
        return subject.endsWith(FAR_END) ? subject.substring(0, subject.length() - FAR_END.length()) : subject;
    }

    /** By the name alone, which tells nearly all apart: what each draws is kept by circuit. */
    @Override
    public int hashCode() {
        return name.hashCode();
    }

    /** The vehicle's batteries, and what feeds without one: the supply of a campsite or a house, or a generator. */
    public enum Supply {
        STARTER,
        SECOND,
        SHORE,
        GENERATOR
    }

    /** On which side of an inverter. */
    public enum Read {
        BATTERY,
        LOAD
    }

    /** Somebody licensed for it, somebody else, or nobody: it has a plug. */
    public enum MainsWork {
        LICENSED,
        UNLICENSED,
        PLUGGED_IN
    }

    public enum Need {
        CRITICAL,
        OTHER
    }

    /** No battery of a vehicle is above this, in V, one of 48 V or 51.2 V included; mains is 100 V and more. */
    private static final double BATTERY_MOST = 60;

    /** Whether it is known to be of mains voltage, as that is no battery's or no battery feeds it. */
    public boolean isMains() {
        return voltage.value() > BATTERY_MOST || isOnShore() && !voltage.known();
    }

    /** Whether shore or a generator feeds it, and no battery of the vehicle. */
    public boolean isOnShore() {
        return battery.is(Supply.SHORE) || battery.is(Supply.GENERATOR);
    }

    /** Whether it is an appliance of mains voltage with a plug, of whose lead the builder knows no section, length or fuse. */
    public boolean isPluggedIn() {
        return isMains() && mainsWork.is(MainsWork.PLUGGED_IN);
    }

    /** The circuits that it comes by to the battery, the nearest first; without end where it comes by itself. */
    public Stream<Circuit> above(List<Circuit> all) {
        return Stream.iterate(
                        before(all), Optional::isPresent, next -> next.get().before(all))
                .map(Optional::get);
    }

    private Optional<Circuit> before(List<Circuit> all) {
        return all.stream().filter(other -> other.name.equals(board)).findFirst();
    }

    /** The feed cable. */
    public record Cable(
            @Field(
                            value = "section of the copper of the cable, not its outer diameter",
                            in = Dimension.AREA,
                            within = Plausible.SECTION,
                            find = "its label",
                            example = "6 mm2")
                    Figure section,
            @Field(
                            value =
                                    "length of the cable from the battery, or the board it hangs on, to the load, one way",
                            in = Dimension.LENGTH,
                            within = Plausible.CABLE_LENGTH,
                            find = "a string along the way",
                            example = "4.5 m")
                    Figure length,
            @Field(value = "whether any of the cable lies in the engine bay", find = "the plan")
                    Choice<YesNo> engineBay,
            @Field(
                            value =
                                    "the heat the insulation of the cable is made for; asked where its section would do for some"
                                            + " insulation and not for other",
                            in = Dimension.TEMPERATURE,
                            within = Plausible.INSULATION,
                            find = "the print on it, or its data sheet",
                            example = "105 degC")
                    Figure insulation,
            @Field(
                            value =
                                    "the current that the maker of the cable rates it for; asked where the load is above half of what the table of cables allows",
                            in = Dimension.CURRENT,
                            within = Plausible.CURRENT,
                            find = "its data sheet",
                            example = "50 A")
                    Figure rating,
            @Field(
                            value =
                                    "whether the rating of the cable holds at the heat of an engine bay, 50 degC; asked of a cable"
                                            + " there where that decides",
                            find = "its data sheet")
                    Choice<YesNo> ratingHot,
            @Field(
                            value =
                                    "what keeps it from the edges of metal that it goes through, such as a wall of the cab or canopy;"
                                            + " asked of a planned feed from the starter battery to a charger for a battery in a canopy",
                            find = "the fitter")
                    Choice<Edges> throughMetal,
            @Field(
                            value =
                                    "least gap to the exhaust or a turbocharger with no heat shield between; it counts where it is given",
                            in = Dimension.LENGTH,
                            within = Plausible.GAP,
                            find = "a tape",
                            example = "250 mm")
                    Figure exhaustGap) {}

    /** Grommets, glands or edging in every hole; a bare edge in one or more; or a way through no metal at all. */
    public enum Edges {
        BUSHED,
        BARE,
        NONE
    }

    /** The fuse or breaker. */
    public record Fuse(
            @Field(
                            value = "its rating; 0 A where there is none",
                            in = Dimension.CURRENT,
                            within = Plausible.CURRENT,
                            find = "the plan",
                            example = "15 A")
                    Figure rating,
            @Field(
                            value = "from the battery's terminal, or the board's, to it, along the cable",
                            in = Dimension.LENGTH,
                            within = Plausible.CABLE_LENGTH,
                            find = "a tape",
                            example = "150 mm")
                    Figure distance,
            @Field(
                            value = "whether the cable up to it lies in a sheath or conduit; no where left out",
                            find = "the fitter")
                    Choice<YesNo> enclosed) {

        /** Whether there is one. */
        public Choice<YesNo> isThere() {
            return rating.known()
                    ? Choice.yesNo(rating.value() > 0)
                    : Choice.missing(rating.missing().get(0));
        }
    }
}
