package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Variant;
import java.util.List;

/** What the checks need to know of a kind of part. */
public interface Details extends Variant.Fields {

    /** A part that the checks know by its mass and place alone. */
    record Plain() implements Details {}

    record ChassisExtension(
            @Field(
                            value = "by how much the wheelbase grows",
                            in = Dimension.LENGTH,
                            needed = true,
                            find = "the plan",
                            example = "300 mm")
                    Figure wheelbaseAdded,
            @Field(
                            value = "from the rear axle to the rearmost point after it, without tray and tow bar",
                            in = Dimension.LENGTH,
                            find = "the plan",
                            example = "1050 mm")
                    Figure rearOverhang,
            @Field(value = "whether an engineer or the authority has agreed to it in writing", find = "the plan")
                    Choice<YesNo> approved)
            implements Details {}

    /** Ratings raised by a certified kit. What is left out stays as the maker set it. */
    record RatingUpgrade(
            @Field(
                            value = "gross vehicle mass after",
                            in = Dimension.MASS,
                            find = "the kit's approval papers",
                            example = "3500 kg")
                    Figure gvm,
            @Field(
                            value = "gross combination mass after",
                            in = Dimension.MASS,
                            find = "the kit's approval papers",
                            example = "6300 kg")
                    Figure gcm,
            @Field(
                            value = "limit of the front axle after",
                            in = Dimension.MASS,
                            find = "the kit's approval papers",
                            example = "1650 kg")
                    Figure frontAxle,
            @Field(
                            value = "limit of the rear axle after",
                            in = Dimension.MASS,
                            find = "the kit's approval papers",
                            example = "2050 kg")
                    Figure rearAxle,
            @Field(
                            value = "heaviest braked trailer after",
                            in = Dimension.MASS,
                            find = "the kit's approval papers",
                            example = "3500 kg")
                    Figure towing,
            @Field(
                            value =
                                    "its approval: as second stage of manufacture for a new vehicle, or for one in service",
                            find = "the kit's approval papers")
                    Choice<RatingApproval> approval)
            implements Details {}

    enum RatingApproval {
        SECOND_STAGE,
        IN_SERVICE,
        NONE
    }

    record Snorkel(
            @Field(
                            value = "height of the opening of its head",
                            in = Dimension.LENGTH,
                            find = "a tape",
                            example = "1950 mm")
                    Figure headHeight,
            @Field(
                            value = "inner diameter of its narrowest part",
                            in = Dimension.LENGTH,
                            find = "the maker",
                            example = "90 mm")
                    Figure bore,
            @Field(value = "whether its head is a pre-cleaner that throws dust out", find = "the maker")
                    Choice<YesNo> preCleaner,
            @Field("its joints from the head to the airbox") List<Joint> joints)
            implements Details {}

    /** A joint of the air path. */
    record Joint(
            @Field(value = "which joint", needed = true, example = "pillar to guard") String name,
            @Field(value = "whether it is clamped and sealed", find = "the fitter") Choice<YesNo> sealed) {}

    record Airbox(
            @Field(value = "inner diameter of its inlet", in = Dimension.LENGTH, find = "a calliper", example = "85 mm")
                    Figure inletBore,
            @Field(value = "whether its lid seals all round", find = "the fitter, with a smoke or light test")
                    Choice<YesNo> lidSealed,
            @Field(value = "whether this type is known to let dust past its seal", find = "the workshop")
                    Choice<YesNo> knownDustLeak,
            @Field(value = "its drain", find = "the fitter") Choice<Drain> drain,
            @Field(value = "height of the drain", in = Dimension.LENGTH, find = "a tape", example = "780 mm")
                    Figure drainHeight,
            @Field(
                            value = "distance after which the maker of the filter wants it serviced in dust",
                            in = Dimension.LENGTH,
                            find = "the service book",
                            example = "5000 km")
                    Figure serviceDistance)
            implements Details {}

    enum Drain {
        NONE,
        OPEN,
        ONE_WAY
    }

    record BreatherKit(
            @Field(
                            value = "height of the ends of the raised breathers",
                            in = Dimension.LENGTH,
                            find = "a tape",
                            example = "1200 mm")
                    Figure height)
            implements Details {}

    record FuelSeparator(
            @Field(value = "where it sits in the fuel line", find = "the fitter") Choice<FuelPlace> place,
            @Field(
                            value = "whether its maker states how well it separates fine droplets, as behind a pump",
                            find = "the maker's test report")
                    Choice<YesNo> fineDroplets,
            @Field(value = "rating of its element", in = Dimension.LENGTH, find = "the maker", example = "30 um")
                    Figure rating,
            @Field(value = "its place among the planned elements, 1 nearest the tank", find = "the plan", example = "1")
                    Figure order,
            @Field(value = "flow it is rated for", in = Dimension.FLOW, find = "the maker", example = "200 L/h")
                    Figure ratedFlow,
            @Field(value = "whether it has a sensor that warns of water", find = "the maker") Choice<YesNo> alarm,
            @Field(value = "whether a lamp in the driver's view shows the alarm", find = "the plan") Choice<YesNo> lamp,
            @Field(value = "whether a buzzer in the cab sounds the alarm", find = "the plan") Choice<YesNo> buzzer,
            @Field(value = "whether its drain can be reached by hand at the roadside", find = "the fitter")
                    Choice<YesNo> drainReachable,
            @Field(value = "least gap to the exhaust", in = Dimension.LENGTH, find = "a tape", example = "200 mm")
                    Figure exhaustGap,
            @Field(value = "whether frame or body shields it from the ground and in a crash", find = "the fitter")
                    Choice<YesNo> shielded)
            implements Details {}

    enum FuelPlace {
        BEFORE_PUMP,
        AFTER_PUMP
    }

    record FuelFilter(
            @Field(value = "rating of its element", in = Dimension.LENGTH, find = "the maker", example = "10 um")
                    Figure rating,
            @Field(value = "its place among the planned elements, 1 nearest the tank", find = "the plan", example = "2")
                    Figure order,
            @Field(value = "flow it is rated for", in = Dimension.FLOW, find = "the maker", example = "200 L/h")
                    Figure ratedFlow)
            implements Details {}

    record CrankcaseSeparator(
            @Field(value = "whether it has a relief valve for a blocked element", find = "the maker")
                    Choice<YesNo> relief,
            @Field(
                            value =
                                    "where the oil goes that it catches; sump-closed is through a check valve or below the oil"
                                            + " level",
                            find = "the plan")
                    Choice<OilOutlet> oil,
            @Field(value = "where the gas goes that it lets through", find = "the plan") Choice<GasOutlet> gas,
            @Field(value = "gas flow it is rated for", in = Dimension.FLOW, find = "the maker", example = "100 L/min")
                    Figure ratedFlow)
            implements Details {}

    enum OilOutlet {
        SUMP_CLOSED,
        SUMP_OPEN,
        CAN,
        NOWHERE
    }

    enum GasOutlet {
        INTAKE,
        OPEN_AIR
    }

    record Battery(
            @Field(value = "its chemistry", find = "its label") Choice<Chemistry> chemistry,
            @Field(value = "its nominal voltage", in = Dimension.VOLTAGE, find = "its label", example = "12 V")
                    Figure voltage,
            @Field(value = "its nominal capacity", in = Dimension.CHARGE, find = "its label", example = "100 Ah")
                    Figure capacity,
            @Field(value = "where it stands", find = "the plan") Choice<BatteryPlace> place,
            @Field(value = "whether its box is vented to the outside", find = "the fitter") Choice<YesNo> ventedOutside,
            @Field(
                            value = "free area of its upper vent or of its lower one, whichever is smaller",
                            in = Dimension.AREA,
                            find = "the fitter",
                            example = "20 cm2")
                    Figure vents)
            implements Details {}

    /** Flooded, absorbed-mat and gelled lead-acid, and lithium iron phosphate. */
    enum Chemistry {
        LEAD_ACID,
        AGM,
        GEL,
        LITHIUM
    }

    enum BatteryPlace {
        ENGINE_BAY,
        CABIN,
        CANOPY,
        OUTSIDE
    }

    /** What charges the second battery from the alternator: a converter, or a relay that joins the batteries. */
    record Charger(
            @Field(
                            value = "the most it takes from the alternator",
                            in = Dimension.CURRENT,
                            find = "its data sheet",
                            example = "30 A")
                    Figure input,
            @Field(
                            value = "the most it gives the battery",
                            in = Dimension.CURRENT,
                            find = "its data sheet",
                            example = "25 A")
                    Figure output,
            @Field(value = "whether it charges by the curve that lithium batteries need", find = "its data sheet")
                    Choice<YesNo> lithiumCurve)
            implements Details {}

    record SolarPanel(
            @Field(value = "its rated power", in = Dimension.POWER, find = "its label", example = "200 W") Figure power)
            implements Details {}

    record SwitchPanel(
            @Field(value = "how many circuits it switches", find = "its data sheet", example = "8") Figure ways)
            implements Details {}

    record Aerial(
            @Field(
                            value = "the frequency it is made for",
                            in = Dimension.FREQUENCY,
                            find = "its data sheet",
                            example = "477 MHz")
                    Figure frequency,
            @Field(
                            value =
                                    "its gain over an aerial that radiates evenly all round; 2.15 dB more than over a dipole",
                            in = Dimension.GAIN,
                            find = "its data sheet",
                            example = "6.6 dBi")
                    Figure gain,
            @Field(
                            value = "height of its tip above the ground",
                            in = Dimension.LENGTH,
                            find = "a tape",
                            example = "2000 mm")
                    Figure tip,
            @Field(value = "where its foot stands", find = "the plan") Choice<AerialPlace> place,
            @Field(value = "whether it folds down or is taken off under a low roof", find = "its data sheet")
                    Choice<YesNo> folds,
            @Field(value = "whether it needs metal below it as a ground plane", find = "its data sheet")
                    Choice<YesNo> needsGroundPlane,
            @Field(
                            value =
                                    "whether its foot stands on earthed sheet metal, a quarter of a wavelength or more all "
                                            + "round",
                            find = "the plan")
                    Choice<YesNo> onMetal)
            implements Details {}

    enum AerialPlace {
        BAR,
        GUARD,
        ROOF,
        REAR
    }

    record Radio(
            @Field(value = "the service it works in", find = "its data sheet") Choice<RadioService> service,
            @Field(value = "its frequency", in = Dimension.FREQUENCY, find = "its data sheet", example = "477 MHz")
                    Figure frequency,
            @Field(value = "power of its transmitter", in = Dimension.POWER, find = "its data sheet", example = "5 W")
                    Figure power,
            @Field(
                            value = "the weakest signal that it understands, at a socket of 50 ohm",
                            in = Dimension.VOLTAGE,
                            find = "its data sheet, at 12 dB SINAD",
                            example = "0.25 uV")
                    Figure sensitivity,
            @Field(value = "whether it is hidden behind a panel, in a console or under a seat", find = "the plan")
                    Choice<YesNo> hidden,
            @Field(value = "whether its display and keys are on a lead or in the microphone", find = "its data sheet")
                    Choice<YesNo> remoteHead,
            @Field(value = "whether air moves around it where it sits", find = "the fitter") Choice<YesNo> aired)
            implements Details {}

    enum RadioService {
        UHF_CB,
        OTHER
    }

    /** A tray, or a canopy. */
    record Body(
            @Field(value = "greatest width", in = Dimension.LENGTH, find = "the maker's drawing", example = "1900 mm")
                    Figure width,
            @Field(
                            value = "from the front axle backwards to its front end",
                            in = Dimension.LENGTH,
                            signed = true,
                            find = "the maker's drawing, or a tape",
                            example = "2100 mm")
                    Figure front,
            @Field(value = "its length", in = Dimension.LENGTH, find = "the maker's drawing", example = "1800 mm")
                    Figure length,
            @Field(value = "whether it hides the view through the rear window", find = "the maker, or a look")
                    Choice<YesNo> hidesRearWindow,
            @Field("what is seen at the rear with it on") RearEnd rear,
            @Field("what holds it down where it comes off") HoldDown holdDown,
            @Field("the legs it stands on when it is off") Legs legs,
            @Field(value = "whether doors, joints and cable entries keep dust out", find = "the maker, or a hose")
                    Choice<YesNo> dustSealed,
            @Field(
                            value = "how far its rear door, flap or ladder reaches behind it; 0 mm where nothing opens",
                            in = Dimension.LENGTH,
                            find = "the maker's drawing",
                            example = "900 mm")
                    Figure rearSwing)
            implements Details {}

    /** What becomes of lamps and plate with a tray or canopy on. */
    record RearEnd(
            @Field(value = "the tail, stop and direction lamps", find = "the plan") Choice<AtRear> lamps,
            @Field(value = "the number plate and its lamp", find = "the plan") Choice<AtRear> plate,
            @Field(value = "the high-mounted stop lamp; in-view where the vehicle has none", find = "the plan")
                    Choice<AtRear> highStopLamp) {}

    /** Carried by the part itself; left in view where they are; or taken off or covered. */
    enum AtRear {
        OWN,
        IN_VIEW,
        HIDDEN
    }

    /** What holds a canopy on its tray. */
    record HoldDown(
            @Field(value = "how many points", find = "the maker", example = "6") Figure points,
            @Field(
                            value = "working load limit of one, its bolt or clamp included",
                            in = Dimension.MASS,
                            find = "the maker",
                            example = "250 kg")
                    Figure limit,
            @Field(
                            value = "the most they hold: the canopy with all that travels in it",
                            in = Dimension.MASS,
                            find = "the load list",
                            example = "420 kg")
                    Figure loaded) {}

    /** Legs for lifting a canopy off and leaving it. */
    record Legs(
            @Field(value = "what one of them may carry", in = Dimension.MASS, find = "the maker", example = "300 kg")
                    Figure limit,
            @Field(
                            value = "the most they lift; the canopy's own mass where left out",
                            in = Dimension.MASS,
                            find = "the plan",
                            example = "240 kg")
                    Figure lifted,
            @Field(
                            value = "the smaller distance between the middles of their feet, along or across",
                            in = Dimension.LENGTH,
                            find = "a tape",
                            example = "1900 mm")
                    Figure spacing,
            @Field(
                            value = "height of the canopy's centre of gravity when the tray has driven out",
                            in = Dimension.LENGTH,
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
                            find = "the maker of the bracket, or a pull with a scale",
                            example = "80 kg")
                    Figure mount)
            implements Details {}

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
            @Field(value = "whether ammunition has a locked place of its own", find = "the plan")
                    Choice<YesNo> ammunitionApart)
            implements Details {}

    record SeatChange(
            @Field(value = "how many seats are left", find = "the plan", example = "2") Figure seats,
            @Field(
                            value =
                                    "whether the change is for good; no where seats come out and go back by quick releases",
                            find = "the plan")
                    Choice<YesNo> permanent)
            implements Details {}

    /** The outside mirrors, and what is built into them. */
    record Mirrors(
            @Field("the left one, as it stands when towing") Mirror left,
            @Field("the right one, as it stands when towing") Mirror right,
            @Field(value = "what becomes of them without the trailer", find = "the maker") Choice<Stow> stow,
            @Field(value = "whether they hold direction indicators", find = "a look") Choice<YesNo> indicators,
            @Field(value = "whether they hold cameras", find = "a look") Choice<YesNo> cameras,
            @Field(value = "whether they hold the lamps of a blind-spot warning", find = "a look")
                    Choice<YesNo> blindSpotLamps)
            implements Details {}

    enum Stow {
        FIXED,
        RETRACTS,
        COMES_OFF
    }

    /** One outside mirror. */
    record Mirror(
            @Field(
                            value = "from the front axle backwards to its glass",
                            in = Dimension.LENGTH,
                            signed = true,
                            find = "a tape",
                            example = "800 mm")
                    Figure x,
            @Field(
                            value = "from the centre line to the outer edge of its glass",
                            in = Dimension.LENGTH,
                            find = "a tape",
                            example = "1250 mm")
                    Figure reach,
            @Field(value = "width of its glass", in = Dimension.LENGTH, find = "a tape", example = "180 mm")
                    Figure glass,
            @Field(value = "whether its glass is flat or convex", find = "a straight edge, or the maker")
                    Choice<Curve> curve,
            @Field(
                            value = "radius of a convex glass",
                            in = Dimension.LENGTH,
                            find = "the mark on the glass, or the maker",
                            example = "1400 mm")
                    Figure radius,
            @Field(
                            value = "from the centre line to the outermost point of its housing",
                            in = Dimension.LENGTH,
                            find = "a tape",
                            example = "1280 mm")
                    Figure edge,
            @Field(
                            value = "the same when it is retracted, or as it stays where it is fixed",
                            in = Dimension.LENGTH,
                            find = "a tape",
                            example = "1090 mm")
                    Figure edgeStowed) {}

    enum Curve {
        FLAT,
        CONVEX
    }

    record RearCamera(
            @Field(value = "whether it is meant to take the place of a mirror", find = "the plan")
                    Choice<YesNo> insteadOfMirror,
            @Field(
                            value = "whether it is approved to take the place of a mirror, monitor included",
                            find = "the approval mark, or the maker")
                    Choice<YesNo> approvedAsMirror)
            implements Details {}

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
            @Field(value = "whether the number plate can be read from ahead and from the sides", find = "a look")
                    Choice<YesNo> plateVisible,
            @Field(value = "whether headlamps, position lamps and indicators stay in full view", find = "a look")
                    Choice<YesNo> lampsVisible,
            @Field(value = "height of its lowest edge", in = Dimension.LENGTH, find = "a tape", example = "480 mm")
                    Figure lowest,
            @Field(
                            value = "from the front axle forward to that edge",
                            in = Dimension.LENGTH,
                            find = "a tape",
                            example = "850 mm")
                    Figure ahead,
            @Field(
                            value = "how much of the grille's open area it hides",
                            in = Dimension.SHARE,
                            find = "a photograph from straight ahead",
                            example = "10 %")
                    Figure grilleHidden)
            implements Details {}

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
                            find = "its plate",
                            example = "4500 kg")
                    Figure pull,
            @Field(
                            value = "breaking strength of its line",
                            in = Dimension.MASS,
                            find = "the line's label",
                            example = "7500 kg")
                    Figure line,
            @Field(
                            value = "what it draws at the rated pull",
                            in = Dimension.CURRENT,
                            find = "its handbook",
                            example = "400 A")
                    Figure current,
            @Field(
                            value = "the most that battery, isolator and cable may give for the time of a pull",
                            in = Dimension.CURRENT,
                            find = "their makers",
                            example = "450 A")
                    Figure feed,
            @Field(
                            value = "capacity of the battery that feeds it",
                            in = Dimension.CHARGE,
                            find = "the battery's label",
                            example = "90 Ah")
                    Figure battery,
            @Field(
                            value = "how much of the grille's open area it hides",
                            in = Dimension.SHARE,
                            find = "a photograph from straight ahead",
                            example = "5 %")
                    Figure grilleHidden)
            implements Details {}

    /** A set of lamps of one kind in one place. */
    record Lamps(
            @Field(value = "what they are for", find = "the plan") Choice<LampUse> use,
            @Field(value = "how many; a light bar that lights up as a whole is one", find = "the plan", example = "2")
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
                            find = "a photograph from straight ahead",
                            example = "5 %")
                    Figure grilleHidden)
            implements Details {}

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

    /** A point for pulling the vehicle out. */
    record RecoveryPoint(
            @Field(value = "at which end", needed = true, find = "the plan") Choice<End> end,
            @Field(
                            value = "working load limit",
                            in = Dimension.MASS,
                            find = "the stamp on it, or the maker",
                            example = "5000 kg")
                    Figure limit)
            implements Details {}

    enum End {
        FRONT,
        REAR
    }

    /** A strap that stretches, for pulling a vehicle out with another. */
    record KineticStrap(
            @Field(
                            value = "minimum breaking strength",
                            in = Dimension.MASS,
                            find = "the label sewn to it",
                            example = "8000 kg")
                    Figure strength)
            implements Details {}

    record Shackles(
            @Field(
                            value = "working load limit of one",
                            in = Dimension.MASS,
                            find = "the stamp on it",
                            example = "4750 kg")
                    Figure limit)
            implements Details {}

    /** What is carried for winching beside the winch. */
    record RecoveryKit(
            @Field(value = "whether it has a wide strap for a tree", find = "the list of its contents")
                    Choice<YesNo> treeStrap,
            @Field(value = "whether it has a damper to lay over the line", find = "the list of its contents")
                    Choice<YesNo> lineDamper)
            implements Details {}

    /** What stands on the plate of a coupling. Plates give a trailer mass or a D value, few give both. */
    record CouplingPlate(
            @Field(
                            value = "heaviest trailer on its plate; left out where the plate gives a D value instead",
                            in = Dimension.MASS,
                            find = "its plate",
                            example = "3000 kg")
                    Figure trailer,
            @Field(
                            value = "greatest load on the ball on its plate",
                            in = Dimension.MASS,
                            find = "its plate, S",
                            example = "300 kg")
                    Figure ball,
            @Field(value = "its D value", in = Dimension.FORCE, find = "its plate, D", example = "17.2 kN") Figure d,
            @Field(
                            value = "its D value for centre-axle trailers",
                            in = Dimension.FORCE,
                            find = "its plate, Dc",
                            example = "16 kN")
                    Figure dc,
            @Field(value = "its V value", in = Dimension.FORCE, find = "its plate, V", example = "8 kN") Figure v) {}

    record TowBar(
            @Field("what its plate allows") CouplingPlate plate,
            @Field(
                            value = "from the rear axle to the centre of its ball, where it moves the ball",
                            in = Dimension.LENGTH,
                            find = "a tape",
                            example = "1250 mm")
                    Figure ballOverhang,
            @Field(
                            value = "height of its ball with the vehicle loaded, where it moves the ball",
                            in = Dimension.LENGTH,
                            find = "a tape",
                            example = "430 mm")
                    Figure ballHeight,
            @Field(value = "its socket, any adapter included", find = "a look") Choice<Plug> socket,
            @Field(value = "what its socket supplies", in = Dimension.VOLTAGE, find = "a meter", example = "12 V")
                    Figure voltage,
            @Field(value = "whether a load-levelling hitch is used on it", find = "the plan") Choice<YesNo> levelling)
            implements Details {}

    /** Trailer plugs and sockets by shape and pins. */
    enum Plug {
        FLAT_4,
        FLAT_7,
        ROUND_7,
        BLADE_7,
        FLAT_12,
        ROUND_13;

        /** Whether it goes into a socket; the seven flat pins fit the upper row of the twelve, common practice. */
        public boolean fits(Plug socket) {
            return this == socket || this == FLAT_7 && socket == FLAT_12;
        }
    }

    record BrakeController(
            @Field(value = "whether it is fed from the battery through a fuse of its own", find = "the fitter")
                    Choice<YesNo> feed)
            implements Details {}

    /** The springs of one axle. */
    record Springs(
            @Field(value = "at which end", needed = true, find = "the plan") Choice<End> end,
            @Field(
                            value = "by how much they raise the vehicle with the planned parts on; down is negative",
                            in = Dimension.LENGTH,
                            signed = true,
                            find = "the maker",
                            example = "40 mm")
                    Figure lift,
            @Field(value = "rate of one of them", in = Dimension.STIFFNESS, find = "the maker", example = "85 N/mm")
                    Figure rate,
            @Field(
                            value = "travel of the spring over travel of the wheel",
                            in = Dimension.SHARE,
                            find = "the workshop manual, or a jack and a tape; 100 % for a leaf spring",
                            example = "60 %")
                    Figure motionRatio,
            @Field(
                            value = "least fixed load on the axle that they are made for",
                            in = Dimension.MASS,
                            find = "the maker",
                            example = "50 kg")
                    Figure loadLeast,
            @Field(
                            value = "greatest fixed load on the axle that they are made for",
                            in = Dimension.MASS,
                            find = "the maker",
                            example = "110 kg")
                    Figure loadMost,
            @Field(
                            value = "wheel travel from full droop to full bump with them",
                            in = Dimension.LENGTH,
                            find = "the maker, or a jack and a tape",
                            example = "210 mm")
                    Figure travel,
            @Field(
                            value = "wheel travel left to the bump stop with the fixed parts on and nobody aboard",
                            in = Dimension.LENGTH,
                            find = "a tape",
                            example = "85 mm")
                    Figure bumpTravel,
            @Field(value = "whether brake hoses and sensor leads reach at full droop", find = "the fitter")
                    Choice<YesNo> linesReach,
            @Field(
                            value = "largest angle of a universal joint of the propeller shafts at ride height",
                            in = Dimension.ANGLE,
                            find = "the fitter, with a protractor",
                            example = "4 deg")
                    Figure jointAngle,
            @Field(value = "whether a wheel alignment is planned after it", find = "the plan") Choice<YesNo> alignment,
            @Field(value = "whether the headlamps will be aimed after it", find = "the plan") Choice<YesNo> lampAim)
            implements Details {}

    /** Spacers between chassis and body. */
    record BodyLift(
            @Field(
                            value = "by how much it raises the body",
                            in = Dimension.LENGTH,
                            find = "the maker",
                            example = "25 mm")
                    Figure lift,
            @Field(value = "whether the headlamps will be aimed after it", find = "the plan") Choice<YesNo> lampAim)
            implements Details {}
}
