package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Money;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;
import fitworthy.schema.Variant;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A planned part. Beside the fields here each kind has its own, see {@link Details}. */
public record Fitment(
        @Field(value = "what it is called", needed = true, example = "Alloy tray") String name,
        @Field(value = "what kind of part it is", needed = true, example = "tray") Kind kind,
        @Field(
                        value = "its mass; everything bolted on included",
                        in = Dimension.MASS,
                        within = Plausible.PART_MASS,
                        needed = true,
                        find = "a scale, or the maker's data sheet",
                        example = "86 kg +/- 4 kg")
                Figure mass,
        @Field(
                        value =
                                "where its centre of mass sits; needed unless its mass is 0 kg, or it is done and stays on",
                        inWords = true)
                Optional<Point> at,
        @Field(value = "the part of the vehicle that it replaces", idle = "name") Optional<Removed> removes,
        @Field(
                        value =
                                "whether it comes off for some loadings; no where left out, but asked of a tray or canopy with hold-downs or legs",
                        find = "the plan")
                Choice<YesNo> removable,
        @Field(
                        value = "the part that it stands in or on, and comes off with; none where left out",
                        find = "the plan",
                        example = "Canopy")
                String in,
        @Field(value = "whether it sits on the roof", find = "the plan") Choice<YesNo> roof,
        @Field(value = "whether the customer will not do without it", find = "the customer") Choice<YesNo> keep,
        @Field(
                        value = "how far it may be moved along the vehicle, either way",
                        in = Dimension.LENGTH,
                        within = Plausible.MOVE,
                        find = "the plan",
                        example = "400 mm")
                Figure mayMove,
        @Field(
                        value = "whether its maker has a statement for this vehicle; asked of springs, body lifts,"
                                + " tow bars and rating kits",
                        find = "the maker")
                Choice<YesNo> suits,
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
                        value = "time until it can be had",
                        in = Dimension.TIME,
                        within = Plausible.TIME_TO_WAIT,
                        find = "the supplier",
                        example = "21 days")
                Figure leadTime,
        @Field("the fitting of it") Work work,
        @Field("the space it takes up, where it is to be held against other parts") Optional<Space> space,
        @Field("what fixes it to the vehicle, where that is to be held against braking") Optional<Fixing> fixing,
        @Field(
                        value =
                                "whether its maker or an engineer states in writing how it is fixed to hold in a crash; asked of what"
                                        + " is heavy in one space with people or on the roof, of a heavy canopy that stays on, and"
                                        + " of a tray on a chassis that is cut, unless fixing tells",
                        find = "its fitting instructions")
                Choice<YesNo> fixingStated,
        Details details) {

    /** Whether it is already on the vehicle, its mass in the kerb mass. */
    public boolean isDone() {
        return done.is(YesNo.YES);
    }

    /** A part of the vehicle that is taken off and not put back. */
    public record Removed(
            @Field(value = "what is taken off", needed = true, example = "steel tub") String name,
            @Field(
                            value = "its mass",
                            in = Dimension.MASS,
                            within = Plausible.PART_MASS,
                            needed = true,
                            find = "a scale",
                            example = "140 kg")
                    Figure mass,
            @Field(
                            value = "where it sat, as taped on the vehicle as it stands, before any longer wheelbase",
                            needed = true,
                            inWords = true)
                    Point at) {}

    /** The kinds of part. */
    public enum Kind implements Variant {
        ROOF_RACK(MassDetails.RoofRack.class, "28 kg", "x: 1700 mm, y: 0 mm, z: 1900 mm"),
        LOCKER(Details.Plain.class, "10 kg", "x: 2850 mm, y: 0 mm, z: 380 mm"),
        PRE_CLEANER(Details.Plain.class, "1 kg", "x: 300 mm, y: -800 mm, z: 1900 mm"),
        WINDSCREEN(Details.Plain.class, "1 kg", "x: 900 mm, y: 0 mm, z: 1500 mm"),
        PULLEY_BLOCK(RecoveryDetails.PulleyBlock.class, "2 kg", "x: 2900 mm, y: 0 mm, z: 800 mm"),
        OTHER(Details.Plain.class, "12 kg", "x: 2950 mm, y: 0 mm, z: 900 mm"),
        BRAKE_CONTROLLER(TowingDetails.BrakeController.class, "1 kg", "x: 900 mm, y: 0 mm, z: 900 mm"),
        TOW_BAR(TowingDetails.TowBar.class, "32 kg", "x: 3900 mm, y: 0 mm, z: 450 mm"),
        TRAY(BodyDetails.Body.class, "86 kg", "x: 2950 mm, y: 0 mm, z: 900 mm"),
        CANOPY(BodyDetails.Body.class, "120 kg", "x: 2950 mm, y: 0 mm, z: 1300 mm"),
        CHASSIS_EXTENSION(MassDetails.ChassisExtension.class, "40 kg", "x: 2500 mm, y: 0 mm, z: 600 mm"),
        RATING_UPGRADE(MassDetails.RatingUpgrade.class, "6 kg", "x: 2850 mm, y: 0 mm, z: 500 mm"),
        TYRES(TyreDetails.Tyres.class, "24 kg", "x: 1400 mm, y: 0 mm, z: 400 mm"),
        WHEELS(TyreDetails.Wheels.class, "10 kg", "x: 1400 mm, y: 0 mm, z: 400 mm"),
        WHEEL_SPACERS(TyreDetails.Spacers.class, "4 kg", "x: 1400 mm, y: 0 mm, z: 400 mm"),
        SNORKEL(IntakeDetails.Snorkel.class, "4 kg", "x: 300 mm, y: -800 mm, z: 1400 mm"),
        AIRBOX(IntakeDetails.Airbox.class, "5 kg", "x: -100 mm, y: 500 mm, z: 1000 mm"),
        BREATHER_KIT(IntakeDetails.BreatherKit.class, "1 kg", "x: 300 mm, y: 0 mm, z: 1000 mm"),
        FUEL_SEPARATOR(FuelDetails.FuelSeparator.class, "2 kg", "x: 200 mm, y: 500 mm, z: 900 mm"),
        FUEL_FILTER(FuelDetails.FuelFilter.class, "2 kg", "x: 200 mm, y: 500 mm, z: 900 mm"),
        CRANKCASE_SEPARATOR(IntakeDetails.CrankcaseSeparator.class, "2 kg", "x: 100 mm, y: 0 mm, z: 1000 mm"),
        EXHAUST(FuelDetails.Exhaust.class, "14 kg", "x: 2200 mm, y: 300 mm, z: 400 mm"),
        RETUNE(FuelDetails.Retune.class, "0 kg", "x: 200 mm, y: 500 mm, z: 900 mm"),
        MIRRORS(MirrorDetails.Mirrors.class, "6 kg", "x: 700 mm, y: 0 mm, z: 1300 mm"),
        BAR(FrontDetails.Bar.class, "60 kg", "x: -700 mm, y: 0 mm, z: 700 mm"),
        WINCH(FrontDetails.Winch.class, "38 kg", "x: -800 mm, y: 0 mm, z: 650 mm"),
        LAMPS(FrontDetails.Lamps.class, "4 kg", "x: -800 mm, y: 0 mm, z: 1000 mm"),
        SPRINGS(SuspensionDetails.Springs.class, "12 kg", "x: 1400 mm, y: 0 mm, z: 500 mm"),
        AIR_SPRINGS(SuspensionDetails.AirSprings.class, "9 kg", "x: 2850 mm, y: 0 mm, z: 500 mm"),
        BODY_LIFT(SuspensionDetails.BodyLift.class, "8 kg", "x: 1400 mm, y: 0 mm, z: 700 mm"),
        RECOVERY_POINT(RecoveryDetails.RecoveryPoint.class, "6 kg", "x: -850 mm, y: 0 mm, z: 550 mm"),
        KINETIC_STRAP(RecoveryDetails.KineticStrap.class, "4 kg", "x: 2900 mm, y: 0 mm, z: 800 mm"),
        SHACKLES(RecoveryDetails.Shackles.class, "2 kg", "x: 2900 mm, y: 0 mm, z: 800 mm"),
        RECOVERY_KIT(RecoveryDetails.RecoveryKit.class, "12 kg", "x: 2900 mm, y: 0 mm, z: 800 mm"),
        REAR_CAMERA(MirrorDetails.RearCamera.class, "1 kg", "x: 3800 mm, y: 0 mm, z: 1100 mm"),
        GAS_BOTTLE(BodyDetails.GasBottle.class, "9 kg", "x: 3300 mm, y: 0 mm, z: 800 mm"),
        BURNER(BodyDetails.Burner.class, "8 kg", "x: 2500 mm, y: 0 mm, z: 700 mm"),
        FIREARM_BOX(BodyDetails.FirearmBox.class, "18 kg", "x: 2600 mm, y: 0 mm, z: 900 mm"),
        BODY_CUT(BodyDetails.BodyCut.class, "25 kg", "x: 2300 mm, y: 0 mm, z: 1100 mm"),
        SEAT_CHANGE(BodyDetails.SeatChange.class, "14 kg", "x: 2300 mm, y: 0 mm, z: 800 mm"),
        BATTERY(ElectricalDetails.Battery.class, "26 kg", "x: 2300 mm, y: 0 mm, z: 700 mm"),
        CHARGER(ElectricalDetails.Charger.class, "2 kg", "x: 2300 mm, y: 0 mm, z: 900 mm"),
        INVERTER(ElectricalDetails.Inverter.class, "5 kg", "x: 2300 mm, y: 0 mm, z: 900 mm"),
        SOLAR_PANEL(ElectricalDetails.SolarPanel.class, "11 kg", "x: 1700 mm, y: 0 mm, z: 1950 mm"),
        SWITCH_PANEL(ElectricalDetails.SwitchPanel.class, "2 kg", "x: 800 mm, y: 0 mm, z: 1200 mm"),
        AERIAL(RadioDetails.Aerial.class, "1 kg", "x: -700 mm, y: 0 mm, z: 1200 mm"),
        RADIO(RadioDetails.Radio.class, "2 kg", "x: 800 mm, y: 0 mm, z: 1100 mm");

        private static final Set<Kind> SINGLE = EnumSet.of(
                TOW_BAR,
                TRAY,
                CANOPY,
                TYRES,
                WHEELS,
                SNORKEL,
                AIRBOX,
                BAR,
                SPRINGS,
                BODY_LIFT,
                ROOF_RACK,
                BRAKE_CONTROLLER);

        private final Class<? extends Record> details;
        private final Map<String, String> examples;

        /**
         * @param mass what one may weigh, as an example
         * @param place where one may sit on a wagon, as an example
         */
        Kind(Class<? extends Record> details, String mass, String place) {
            this.details = details;
            this.examples = Map.of("mass", mass, "at", place);
        }

        @Override
        public Class<? extends Record> details() {
            return details;
        }

        /** Whether a vehicle has one of them, or one at each end, so that a second may be the same said twice. */
        public boolean isSingle() {
            return SINGLE.contains(this);
        }

        @Override
        public Map<String, String> examples() {
            return examples;
        }
    }
}
