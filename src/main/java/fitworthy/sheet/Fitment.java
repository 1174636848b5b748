package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Money;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;
import fitworthy.schema.Variant;
import java.util.Optional;

/** A planned part. Beside the fields here each kind has its own, see {@link Details}. */
public record Fitment(
        @Field(value = "a name that the load cases use", needed = true, example = "Alloy tray") String name,
        @Field(value = "what kind of part it is", needed = true) Kind kind,
        @Field(
                        value = "its mass, everything bolted on included",
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
                                "whether it comes off for some load cases; no where left out, but asked of a tray or canopy with hold-downs or legs",
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
                        value =
                                "whether its maker states in writing that it suits this vehicle; asked of springs, body lifts,"
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
        ROOF_RACK,
        LOCKER,
        PRE_CLEANER,
        PULLEY_BLOCK(RecoveryDetails.PulleyBlock.class),
        OTHER,
        BRAKE_CONTROLLER(TowingDetails.BrakeController.class),
        TOW_BAR(TowingDetails.TowBar.class),
        TRAY(BodyDetails.Body.class),
        CANOPY(BodyDetails.Body.class),
        CHASSIS_EXTENSION(MassDetails.ChassisExtension.class),
        RATING_UPGRADE(MassDetails.RatingUpgrade.class),
        TYRES(TyreDetails.Tyres.class),
        WHEELS(TyreDetails.Wheels.class),
        SNORKEL(IntakeDetails.Snorkel.class),
        AIRBOX(IntakeDetails.Airbox.class),
        BREATHER_KIT(IntakeDetails.BreatherKit.class),
        FUEL_SEPARATOR(FuelDetails.FuelSeparator.class),
        FUEL_FILTER(FuelDetails.FuelFilter.class),
        CRANKCASE_SEPARATOR(IntakeDetails.CrankcaseSeparator.class),
        MIRRORS(MirrorDetails.Mirrors.class),
        BAR(FrontDetails.Bar.class),
        WINCH(FrontDetails.Winch.class),
        LAMPS(FrontDetails.Lamps.class),
        SPRINGS(SuspensionDetails.Springs.class),
        BODY_LIFT(SuspensionDetails.BodyLift.class),
        RECOVERY_POINT(RecoveryDetails.RecoveryPoint.class),
        KINETIC_STRAP(RecoveryDetails.KineticStrap.class),
        SHACKLES(RecoveryDetails.Shackles.class),
        RECOVERY_KIT(RecoveryDetails.RecoveryKit.class),
        REAR_CAMERA(MirrorDetails.RearCamera.class),
        GAS_BOTTLE(BodyDetails.GasBottle.class),
        FIREARM_BOX(BodyDetails.FirearmBox.class),
        SEAT_CHANGE(BodyDetails.SeatChange.class),
        BATTERY(ElectricalDetails.Battery.class),
        CHARGER(ElectricalDetails.Charger.class),
        INVERTER(ElectricalDetails.Inverter.class),
        SOLAR_PANEL(ElectricalDetails.SolarPanel.class),
        SWITCH_PANEL(ElectricalDetails.SwitchPanel.class),
        AERIAL(RadioDetails.Aerial.class),
        RADIO(RadioDetails.Radio.class);

        private final Class<? extends Record> details;

        Kind() {
            this(Details.Plain.class);
        }

        Kind(Class<? extends Record> details) {
            this.details = details;
        }

        @Override
        public Class<? extends Record> details() {
            return details;
        }
    }
}
