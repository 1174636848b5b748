package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The vehicle as its maker built it. */
public record Vehicle(
        @Field(value = "what to call it", needed = true, printed = true, example = "Tarrenby 3.0 wagon") String name,
        @Field(
                        value = "its class in letters; or passenger car, MPV or truck",
                        find = "the registration papers",
                        example = "MC")
                String category,
        @Field(
                        value = "the day it was first registered, or will be; asked where a rule goes by it",
                        find = "the registration papers",
                        example = "2024-05-01",
                        within = Plausible.REGISTRATION)
                LocalDate registered,
        @Field(value = "how many seats", find = "the registration papers", example = "5", within = Plausible.SEATS)
                Figure seats,
        @Field(value = "whether it has electronic stability control", find = "the handbook")
                Choice<YesNo> stabilityControl,
        @Field(value = "whether it has front airbags; taken as yes where left out", find = "the handbook")
                Choice<YesNo> airbags,
        @Field(value = "whether its rear axle rides on air springs", find = "the handbook")
                Choice<YesNo> rearAirSprings,
        @Field(
                        value =
                                "whether it has a trailer brake controller that works; beside a planned one no where left out",
                        find = "a look")
                Choice<YesNo> brakeController,
        @Field(
                        value =
                                "whether its maker's conditions for towing in hills are read and met, such as a cooler for the"
                                        + " gearbox; asked of a heavy trailer and a hilly trip",
                        find = "the handbook")
                Choice<YesNo> hillTowing,
        @Field(
                        value =
                                "whether it comes with a tub or tray; asked where a tray or canopy takes its place or stands on it",
                        find = "a look")
                Choice<YesNo> tub,
        @Field(
                        value =
                                "whether a cargo barrier, or the rear wall of its cab, stands between people and load; asked where"
                                        + " much lies loose in one space with them",
                        find = "a look")
                Choice<YesNo> cargoBarrier,
        @Field(
                        value =
                                "what becomes of the camera, radar and steering angle sensor by which it warns, brakes or steers:"
                                        + " set again in the plan and its price, or left; asked where its height, its tyres'"
                                        + " diameter, its alignment or its windscreen changes",
                        find = "the plan, and the handbook")
                Choice<Assistance> assistance,
        @Field("its dimensions") Size size,
        @Field("its chassis rails, where they are to be held against what bends them") Optional<Rails> rails,
        @Field("what hangs low behind the rear axle or between the axles, where it is to be held against the ground")
                List<LowPoint> lowPoints,
        @Field("its unladen masses") Masses mass,
        @Field("what its maker allows") Ratings ratings,
        @Field(value = "the tyres it came with", idle = "speedometer-set") TyreDetails.Tyres tyres,
        @Field("the wheels it came with") TyreDetails.Wheels wheels,
        @Field("the spare wheel and tyre as they will be carried") Spare spare,
        @Field(
                        value = "how far the speedometer reads above the true speed on the tyres it came with",
                        in = Dimension.SHARE,
                        within = Plausible.SPEEDOMETER,
                        signed = true,
                        find = "a satellite receiver's speed at a steady 100 km/h",
                        example = "4 %")
                Figure speedometerOver,
        @Field(
                        value = "turns of the propeller shaft for one of the wheels; asked where the chassis is cut",
                        within = Plausible.AXLE_RATIO,
                        find = "the tag on the axle, or the workshop manual",
                        example = "3.9")
                Figure axleRatio,
        @Field("the engine") Engine engine,
        @Field("the intake and what water reaches first") Intake intake,
        @Field("the suspension it came with") Suspension suspension,
        @Field("the points it came with for pulling it out") RecoveryPoints recovery,
        @Field("the driver's eye and the mirrors it came with") View view,
        @Field("the tow bar it has") TowingDetails.TowBar towBar) {

    /** What becomes of the sensors of its driver assistance; nothing where it has none. */
    public enum Assistance {
        NONE_FITTED,
        SET_AGAIN,
        LEFT
    }

    /** Dimensions of the vehicle as made. */
    public record Size(
            @Field(
                            value = "distance between the axles as made, whatever is done to it",
                            in = Dimension.LENGTH,
                            within = Plausible.WHEELBASE,
                            needed = true,
                            find = "the handbook",
                            example = "2850 mm")
                    Figure wheelbase,
            @Field(
                            value = "from the rear axle to the rearmost point",
                            in = Dimension.LENGTH,
                            within = Plausible.OVERHANG,
                            find = "a tape",
                            example = "1050 mm")
                    Figure rearOverhang,
            @Field(
                            value =
                                    "from the rear axle to the centre of the tow ball; or of a fifth wheel, ahead of the axle negative",
                            in = Dimension.LENGTH,
                            signed = true,
                            within = Plausible.BALL_OVERHANG,
                            find = "a tape",
                            example = "1180 mm")
                    Figure ballOverhang,
            @Field(
                            value = "between the centres of the wheels of one axle",
                            in = Dimension.LENGTH,
                            within = Plausible.TRACK,
                            find = "the handbook",
                            example = "1600 mm")
                    Figure track,
            @Field(
                            value = "width of the body without mirrors",
                            in = Dimension.LENGTH,
                            within = Plausible.BODY_WIDTH,
                            find = "the handbook",
                            example = "1880 mm")
                    Figure bodyWidth,
            @Field(
                            value = "height of the tow ball",
                            in = Dimension.LENGTH,
                            within = Plausible.COUPLING_HEIGHT,
                            find = "a tape",
                            example = "450 mm")
                    Figure ballHeight,
            @Field(
                            value = "from the ground to the centre of a front wheel, on the planned tyres",
                            in = Dimension.LENGTH,
                            within = Plausible.WHEEL_CENTRE,
                            find = "a tape",
                            example = "375 mm")
                    Figure wheelCentre) {}

    /** Unladen masses. */
    public record Masses(
            @Field(
                            value = "mass ready to drive with what is done, without people and cargo",
                            in = Dimension.MASS,
                            within = Plausible.KERB_MASS,
                            needed = true,
                            find = "a weighbridge, or the handbook",
                            example = "2340 kg +/- 20 kg")
                    Figure kerb,
            @Field(
                            value = "its share on the front axle",
                            in = Dimension.MASS,
                            within = Plausible.AXLE_MASS,
                            needed = true,
                            find = "a weighbridge, one axle at a time",
                            example = "1290 kg")
                    Figure frontAxle,
            @Field(
                            value = "its share on the rear axle",
                            in = Dimension.MASS,
                            within = Plausible.AXLE_MASS,
                            needed = true,
                            find = "a weighbridge, one axle at a time",
                            example = "1050 kg")
                    Figure rearAxle,
            @Field(
                            value = "how full the maker's tank, or one done in its place, is in the kerb mass",
                            in = Dimension.SHARE,
                            within = Plausible.FULLNESS,
                            needed = true,
                            find = "the handbook's definition of kerb mass",
                            example = "90 %")
                    Figure kerbFuel,
            @Field(
                            value = "the driver's mass that is counted in the kerb mass; 0 kg where none",
                            in = Dimension.MASS,
                            within = Plausible.DRIVER_IN_KERB,
                            needed = true,
                            find = "the handbook's definition of kerb mass",
                            example = "0 kg")
                    Figure kerbDriver,
            @Field(
                            value = "height of the centre of gravity at kerb mass",
                            in = Dimension.LENGTH,
                            within = Plausible.CENTRE_OF_GRAVITY,
                            find = "the maker's body-builder manual",
                            example = "700 mm")
                    Figure cogHeight) {}

    /** The maker's limits. */
    public record Ratings(
            @Field(
                            value = "gross vehicle mass; on plates elsewhere GVWR, MAM or GVW",
                            in = Dimension.MASS,
                            within = Plausible.GVM,
                            find = "the maker's plate",
                            example = "3100 kg")
                    Figure gvm,
            @Field(
                            value = "gross combination mass; in papers elsewhere GCWR or GTW",
                            in = Dimension.MASS,
                            within = Plausible.GCM,
                            find = "the handbook, or the maker",
                            example = "5900 kg")
                    Figure gcm,
            @Field(
                            value = "limit of the front axle; on plates elsewhere front GAWR",
                            in = Dimension.MASS,
                            within = Plausible.AXLE_LIMIT,
                            find = "the maker's plate, or the handbook",
                            example = "1480 kg")
                    Figure frontAxle,
            @Field(
                            value = "limit of the rear axle; on plates elsewhere rear GAWR",
                            in = Dimension.MASS,
                            within = Plausible.AXLE_LIMIT,
                            find = "the maker's plate, or the handbook",
                            example = "1800 kg")
                    Figure rearAxle,
            @Field(
                            value = "heaviest braked trailer",
                            in = Dimension.MASS,
                            within = Plausible.TOW_RATING,
                            find = "the handbook",
                            example = "3000 kg")
                    Figure towing,
            @Field(value = "whether the maker states a tow rating; yes where left out", find = "the maker")
                    Choice<YesNo> towingStated,
            @Field(
                            value = "heaviest trailer without brakes",
                            in = Dimension.MASS,
                            within = Plausible.TOW_RATING,
                            find = "the handbook",
                            example = "750 kg")
                    Figure towingUnbraked,
            @Field(
                            value =
                                    "greatest load on the tow ball; tongue weight, nose weight, or of a fifth wheel pin weight",
                            in = Dimension.MASS,
                            within = Plausible.BALL_LOAD,
                            find = "the handbook, or the tow bar's plate",
                            example = "300 kg")
                    Figure ball,
            @Field(
                            value =
                                    "whether that load is allowed with the vehicle at its GVM too; no where the handbook lowers it as"
                                            + " payload grows; asked where it tows nearly full",
                            find = "the handbook")
                    Choice<YesNo> ballWhenFull,
            @Field(
                            value = "greatest load on the roof, rack included",
                            in = Dimension.MASS,
                            within = Plausible.ROOF_LIMIT,
                            find = "the handbook",
                            example = "100 kg")
                    Figure roof,
            @Field(
                            value =
                                    "greatest load on the roof off the road, rack included; asked of a much loaded roof, and that"
                                            + " on the road where its maker names no other",
                            in = Dimension.MASS,
                            within = Plausible.ROOF_LIMIT,
                            find = "the handbook",
                            example = "70 kg")
                    Figure roofOffRoad,
            @Field(
                            value =
                                    "greatest load on the roof of the vehicle at rest, with the people in a tent on it; asked where"
                                            + " some sleep there",
                            in = Dimension.MASS,
                            within = Plausible.ROOF_AT_REST,
                            find = "the handbook, or its maker",
                            example = "300 kg")
                    Figure roofAtRest,
            @Field(
                            value =
                                    "greatest height of the centre of gravity above the road, laden, where its maker names one",
                            in = Dimension.LENGTH,
                            within = Plausible.CENTRE_OF_GRAVITY,
                            find = "the maker's body-builder manual",
                            example = "900 mm")
                    Figure cogHeight,
            @Field(value = "whether a load-levelling hitch is allowed", find = "the handbook, or the maker")
                    Choice<YesNo> levelling) {}

    /** The spare. */
    public record Spare(
            @Field(value = "the size on its sidewall", find = "the sidewall", example = "265/65R17") String size,
            @Field(value = "its load index", find = "the sidewall", example = "112", within = Plausible.LOAD_INDEX)
                    Figure loadIndex,
            @Field(
                            value =
                                    "where it goes: kept where the maker hangs it, listed as a part at another place that removes it from"
                                            + " there, or left without one; asked where a planned tank may take its place",
                            find = "the plan")
                    Choice<Place> place) {

        public enum Place {
            KEPT,
            LISTED,
            LEFT_WITHOUT
        }
    }

    /** The maker's intake, and the heights that water reaches first. */
    public record Intake(
            @Field("the maker's airbox") IntakeDetails.Airbox airbox,
            @Field(
                            value = "height of the lowest opening of the maker's intake",
                            in = Dimension.LENGTH,
                            within = Plausible.HEIGHT,
                            find = "a tape",
                            example = "850 mm")
                    Figure height,
            @Field(
                            value = "height of the lowest axle or gearbox breather",
                            in = Dimension.LENGTH,
                            within = Plausible.HEIGHT,
                            find = "a tape",
                            example = "650 mm")
                    Figure breathers,
            @Field(
                            value = "height of the lowest electrical part that water harms",
                            in = Dimension.LENGTH,
                            within = Plausible.HEIGHT,
                            find = "a tape",
                            example = "700 mm")
                    Figure electrics,
            @Field(
                            value = "height of the fan's lowest blade tip",
                            in = Dimension.LENGTH,
                            within = Plausible.HEIGHT,
                            find = "a tape",
                            example = "620 mm")
                    Figure fan,
            @Field(
                            value = "greatest wading depth the maker allows",
                            in = Dimension.LENGTH,
                            within = Plausible.WATER_DEPTH,
                            find = "the maker, or the handbook",
                            example = "700 mm")
                    Figure wading) {}

    /** The suspension as made. */
    public record Suspension(@Field("at the front") AxleSuspension front, @Field("at the rear") AxleSuspension rear) {}

    /** The suspension of one axle as made. */
    public record AxleSuspension(
            @Field(
                            value = "wheel travel from full droop to full bump",
                            in = Dimension.LENGTH,
                            within = Plausible.WHEEL_TRAVEL,
                            find = "the workshop manual, or a jack and a tape",
                            example = "220 mm")
                    Figure travel,
            @Field(
                            value = "rate at one wheel",
                            in = Dimension.STIFFNESS,
                            within = Plausible.STIFFNESS,
                            find = "the spring maker's catalogue",
                            example = "28 N/mm")
                    Figure wheelRate,
            @Field(
                            value = "mass of wheels, brakes and axle that the springs do not carry",
                            in = Dimension.MASS,
                            within = Plausible.UNSPRUNG,
                            find = "the workshop manual, or a scale",
                            example = "180 kg")
                    Figure unsprung) {}

    /** What the vehicle came with for pulling it out, at each end. */
    public record RecoveryPoints(
            @Field("at the front") RecoveryPoint front, @Field("at the rear") RecoveryPoint rear) {}

    /** An eye, hook or bracket. */
    public record RecoveryPoint(
            @Field(value = "what it was made for", find = "the label or stamp on it, or the handbook")
                    Choice<MadeFor> madeFor,
            @Field(
                            value = "working load limit",
                            in = Dimension.MASS,
                            within = Plausible.WORKING_LIMIT,
                            find = "the stamp on it, or the maker",
                            example = "4000 kg")
                    Figure limit) {}

    /** What a point was made for; the tow ball where that is to be pulled by, none where there is no point. */
    public enum MadeFor {
        RECOVERY,
        TIE_DOWN,
        TOW_BALL,
        NONE
    }

    /** The driver's eye and the mirrors the vehicle came with. */
    public record View(
            @Field(value = "the driver's eye, as seen from above", idle = "z") Point eye,
            @Field("the mirrors it came with") MirrorDetails.Mirrors mirrors) {}
}
