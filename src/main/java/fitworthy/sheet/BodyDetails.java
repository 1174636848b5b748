package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;
import java.util.stream.Stream;

/** Trays and canopies, and what is built into them or in place of seats. */
public sealed interface BodyDetails extends Details {

    /** A tray, or a canopy. */
    record Body(
            @Field(
                            value = "greatest width",
                            in = Dimension.LENGTH,
                            within = Plausible.BODY_WIDTH,
                            find = "the maker's drawing",
                            example = "1900 mm")
                    Figure width,
            @Field(
                            value = "from the front axle backwards to its front end",
                            in = Dimension.LENGTH,
                            within = Plausible.ALONG,
                            signed = true,
                            find = "the maker's drawing, or a tape",
                            example = "2100 mm")
                    Figure front,
            @Field(
                            value = "its length",
                            in = Dimension.LENGTH,
                            within = Plausible.BODY_LENGTH,
                            find = "the maker's drawing",
                            example = "1800 mm")
                    Figure length,
            @Field(
                            value =
                                    "height of its floor above the ground; of a canopy without one, of what it stands on;"
                                            + " that of the tray where left out",
                            in = Dimension.LENGTH,
                            within = Plausible.HEIGHT,
                            find = "a tape",
                            example = "1000 mm")
                    Figure floor,
            @Field(value = "whether it hides the view through the rear window", find = "the maker, or a look")
                    Choice<YesNo> hidesRearWindow,
            @Field("what is seen at the rear with it on") RearEnd rear,
            @Field("what holds it down where it comes off") HoldDown holdDown,
            @Field("the legs it stands on when it is off") Legs legs,
            @Field(
                            value =
                                    "whether doors, joints and cable entries keep dust out; a tray has none where left out",
                            find = "the maker, or a hose")
                    Choice<YesNo> dustSealed,
            @Field(
                            value =
                                    "whether the tub that the vehicle came with stays on under it; asked where nothing comes off for it",
                            find = "the plan")
                    Choice<YesNo> tubStays,
            @Field(
                            value = "how far its rear door, flap or ladder reaches behind it; 0 mm where nothing opens",
                            in = Dimension.LENGTH,
                            within = Plausible.GAP,
                            find = "the maker's drawing",
                            example = "900 mm")
                    Figure rearSwing,
            @Field(
                            value =
                                    "whether a door, flap, window or vent of it that opens lies over or beside the end of the exhaust;"
                                            + " asked of a planned canopy where no exhaust is listed",
                            find = "a look")
                    Choice<YesNo> overOutlet,
            @Field(
                            value =
                                    "what its metal and that of the chassis do where they meet, as aluminium on steel does; asked"
                                            + " where the chassis is cut",
                            find = "the fitter")
                    Choice<Metals> metals,
            @Field(
                            value =
                                    "whether its mounts beside a cut in the chassis give, by rubber or springs; asked where the chassis"
                                            + " is cut",
                            find = "the drawing of the mounts")
                    Choice<YesNo> mountsGive)
            implements BodyDetails {

        /** Whether the sheet tells of hold-downs or legs, which only one that comes off has. */
        public boolean tellsHowItComesOff() {
            return holdDown.isTold()
                    || Stream.of(legs.limit(), legs.lifted(), legs.spacing(), legs.cogHeight())
                            .anyMatch(Figure::known);
        }
    }

    /** Alike; unlike with rubber, plastic or paint between them; or unlike and bare against each other. */
    enum Metals {
        ALIKE,
        APART,
        TOUCHING
    }

    /** What becomes of lamps and plate with a tray or canopy on. */
    record RearEnd(
            @Field(value = "whether the tail, stop and direction lamps stay in view", find = "the plan")
                    Choice<AtRear> lamps,
            @Field(value = "whether the number plate and its lamp stay in view", find = "the plan")
                    Choice<AtRear> plate,
            @Field(
                            value =
                                    "whether the high-mounted stop lamp stays in view; in-view where the vehicle has none",
                            find = "the plan")
                    Choice<AtRear> highStopLamp,
            @Field(
                            value =
                                    "whether reversing lamp, side markers and where each of its lamps sits were checked",
                            find = "the builder, the authority's sheet on lamps")
                    Choice<YesNo> lampsChecked,
            @Field(
                            value =
                                    "height, with the vehicle empty, of the lower edge of what keeps a car from running under it:"
                                            + " a bumper, a bar or the body itself; asked of a planned tray where the law wants one",
                            in = Dimension.LENGTH,
                            within = Plausible.HEIGHT,
                            find = "a tape, or the builder's drawing",
                            example = "500 mm")
                    Figure guardHeight,
            @Field(
                            value = "how far ahead of the rearmost end that lies; asked likewise",
                            in = Dimension.LENGTH,
                            within = Plausible.GAP,
                            find = "a tape, or the builder's drawing",
                            example = "250 mm")
                    Figure guardAhead,
            @Field(
                            value =
                                    "how far its ends stop short of the vehicle's sides, on the worse side; asked likewise",
                            in = Dimension.LENGTH,
                            within = Plausible.GAP,
                            find = "a tape, or the builder's drawing",
                            example = "100 mm")
                    Figure guardShort) {}

    /** Carried by the part itself; left in view where they are; or taken off or covered. */
    enum AtRear {
        OWN,
        IN_VIEW,
        HIDDEN
    }

    /** What holds a canopy on its tray. */
    record HoldDown(
            @Field(value = "how many points", find = "the maker", example = "6", within = Plausible.COUNT)
                    Figure points,
            @Field(
                            value = "working load limit of one, its bolt or clamp included",
                            in = Dimension.MASS,
                            within = Plausible.WORKING_LIMIT,
                            find = "the maker",
                            example = "250 kg")
                    Figure limit,
            @Field(
                            value =
                                    "the most they hold: the canopy with all that travels in it; what the sheet puts in it counts where that is more",
                            in = Dimension.MASS,
                            within = Plausible.PART_MASS,
                            find = "the load list",
                            example = "420 kg")
                    Figure loaded,
            @Field(
                            value =
                                    "what stops, pins and clamps are rated for together against sliding forward, by their working"
                                            + " load limits; asked of a heavy canopy, as are those below",
                            in = Dimension.MASS,
                            within = Plausible.WORKING_LIMIT,
                            find = "the maker",
                            example = "400 kg")
                    Figure forward,
            @Field(
                            value = "what they are rated for against sliding to the side, the weaker side counts",
                            in = Dimension.MASS,
                            within = Plausible.WORKING_LIMIT,
                            find = "the maker",
                            example = "300 kg")
                    Figure aside,
            @Field(
                            value = "what they are rated for against sliding back",
                            in = Dimension.MASS,
                            within = Plausible.WORKING_LIMIT,
                            find = "the maker",
                            example = "300 kg")
                    Figure back,
            @Field(
                            value = "height of the canopy's centre of gravity above what it stands on, with all in it",
                            in = Dimension.LENGTH,
                            within = Plausible.CENTRE_OF_GRAVITY,
                            find = "the maker, or the load list",
                            example = "550 mm")
                    Figure cogHeight,
            @Field(
                            value =
                                    "how far that lies behind the front edge of its base; by the masses that the sheet puts in the"
                                            + " canopy where left out",
                            in = Dimension.LENGTH,
                            within = Plausible.CENTRE_OF_GRAVITY,
                            find = "the maker, or the load list",
                            example = "900 mm")
                    Figure cogBehind,
            @Field(
                            value =
                                    "what its hold-downs are rated for together, pulling straight down; asked where it is tall for its length",
                            in = Dimension.MASS,
                            within = Plausible.WORKING_LIMIT,
                            find = "the maker",
                            example = "600 kg")
                    Figure down,
            @Field(
                            value = "from the front edge of its base to these hold-downs, the mean of them",
                            in = Dimension.LENGTH,
                            within = Plausible.BODY_LENGTH,
                            find = "the maker's drawing",
                            example = "1000 mm")
                    Figure downBehind) {

        /** Whether the sheet tells anything of them. */
        public boolean isTold() {
            return Stream.of(points, limit, loaded).anyMatch(Figure::known) || tellsWays();
        }

        /** Whether it tells anything of what they do against each way in which it may move. */
        public boolean tellsWays() {
            return Stream.of(forward, aside, back, cogHeight, cogBehind, down, downBehind)
                    .anyMatch(Figure::known);
        }
    }

    /** Legs for lifting a canopy off and leaving it. */
    record Legs(
            @Field(
                            value = "what one of them may carry",
                            in = Dimension.MASS,
                            within = Plausible.WORKING_LIMIT,
                            find = "the maker",
                            example = "300 kg")
                    Figure limit,
            @Field(
                            value = "the most they lift; what its hold-downs hold where left out",
                            in = Dimension.MASS,
                            within = Plausible.PART_MASS,
                            find = "the plan",
                            example = "240 kg")
                    Figure lifted,
            @Field(
                            value = "the smaller distance between the middles of their feet, along or across",
                            in = Dimension.LENGTH,
                            within = Plausible.SPACING,
                            find = "a tape",
                            example = "1900 mm")
                    Figure spacing,
            @Field(
                            value = "height of the canopy's centre of gravity when the tray has driven out",
                            in = Dimension.LENGTH,
                            within = Plausible.CENTRE_OF_GRAVITY,
                            find = "the maker, or half its height above its floor",
                            example = "1700 mm")
                    Figure cogHeight) {}

    /** A bottle of liquefied petroleum gas. Its mass in the sheet is the full one. */
    record GasBottle(
            @Field(value = "where it travels", find = "the plan") Choice<GasPlace> place,
            @Field(
                            value =
                                    "whether that space has an opening at floor level to the outside, free of the bottle",
                            find = "a look")
                    Choice<YesNo> dropVent,
            @Field(
                            value = "what its bracket and strap withstand in any direction",
                            in = Dimension.MASS,
                            within = Plausible.WORKING_LIMIT,
                            find = "the maker of the bracket, or a pull with a scale",
                            example = "80 kg")
                    Figure mount,
            @Field(
                            value =
                                    "whether a gas alarm hangs near the floor of that space; asked where it is a box or a cabin",
                            find = "a look")
                    Choice<YesNo> gasAlarm)
            implements BodyDetails {}

    /** In the open air; in a locker of its own; in a canopy or box with other things; where people sit or sleep. */
    enum GasPlace {
        OPEN_AIR,
        LOCKER,
        BOX,
        CABIN
    }

    /** A container for firearms. */
    record FirearmBox(
            @Field(value = "whether it locks", find = "the maker") Choice<YesNo> locks,
            @Field(value = "whether it is fixed to the vehicle", find = "the plan") Choice<YesNo> fixed,
            @Field(value = "whether ammunition is kept apart from the firearms", find = "the plan")
                    Choice<YesNo> ammunitionApart,
            @Field(
                            value =
                                    "whether firearms travel in it unable to fire, by the bolt out or a trigger lock on",
                            find = "whoever carries them")
                    Choice<YesNo> disabled,
            @Field(
                            value =
                                    "whether it is for pistols or for firearms that are prohibited without a special licence",
                            find = "the licence")
                    Choice<YesNo> restricted)
            implements BodyDetails {}

    /** A heater or cooker with a flame. */
    record Burner(
            @Field(
                            value = "which alarms hang where people sleep beside it; nobody-sleeps where nobody does",
                            find = "a look")
                    Choice<Alarms> alarms)
            implements BodyDetails {}

    /** Alarms in a room with a flame, by what they warn of. */
    enum Alarms {
        BOTH,
        CARBON_MONOXIDE,
        SMOKE,
        NONE,
        NOBODY_SLEEPS
    }

    /** A body that is cut, as a wagon to a cab, or its roof or pillars. Its mass is that of the new wall and frames. */
    record BodyCut(
            @Field(
                            value =
                                    "what becomes of seat belts and what holds them in the body: untouched where no cut comes near them",
                            find = "the drawing of the cut")
                    Choice<AtCut> belts,
            @Field(
                            value = "what becomes of the anchors of child seats; untouched where there are none",
                            find = "the drawing of the cut, and the handbook")
                    Choice<AtCut> childAnchors,
            @Field(
                            value =
                                    "what becomes of airbags in pillars and roof, with their sensors; untouched where there are none",
                            find = "the drawing of the cut, and the handbook")
                    Choice<AtCut> curtainAirbags,
            @Field(
                            value = "whether a wall or window on the drawing closes the cab behind the people again",
                            find = "the drawing of the cut")
                    Choice<YesNo> closed)
            implements BodyDetails {}

    /** What becomes of a thing near the cut: left as it is, on an engineer's drawing, or not thought of. */
    enum AtCut {
        UNTOUCHED,
        DRAWN,
        OPEN
    }

    record SeatChange(
            @Field(value = "how many seats there are then", find = "the plan", example = "2", within = Plausible.SEATS)
                    Figure seats,
            @Field(
                            value =
                                    "whether the change is for good; no where seats come out and go back by quick releases",
                            find = "the plan")
                    Choice<YesNo> permanent,
            @Field(
                            value =
                                    "whether its maker states that added seats, their belts and what both are bolted to were tested"
                                            + " in this model; asked where there are more seats than before",
                            find = "the maker of the seats")
                    Choice<YesNo> tested)
            implements BodyDetails {}
}
