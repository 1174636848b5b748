package fitworthy.figures.plan;

/**
 * The practice values that the program asks for by name. A rule book that has any value of their topic has to have
 * them.
 */
public enum PracticeId {
    ACROSS_PEOPLE_APART_LEAST("across.people-apart-least"),
    BODY_GAS_MOUNT_LEAST("body.gas-mount-least"),
    BODY_CANOPY_HEAVY("body.canopy-heavy"),
    BODY_HOLD_DOWN_LEAST("body.hold-down-least"),
    ACROSS_REACH_MOST("across.reach-most"),
    BODY_ASIDE_LEAST("body.aside-least"),
    BODY_BACK_LEAST("body.back-least"),
    BODY_FORWARD_LEAST("body.forward-least"),
    BODY_LOOSE_MOST("body.loose-most"),
    BODY_OVERHANG_MOST("body.overhang-most"),
    BODY_PART_LOW_MOST("body.part-low-most"),
    BODY_RAIL_RESERVE_LEAST("body.rail-reserve-least"),
    BODY_ROOF_UNTIED_MOST("body.roof-untied-most"),
    BODY_SAID_LOOSE_MOST("body.said-loose-most"),
    BODY_SHAFT_ANGLE_SPEED_MOST("body.shaft-angle-speed-most"),
    BODY_SHAFT_SPEED_MOST("body.shaft-speed-most"),
    BODY_STRAPS_MOST("body.straps-most"),
    BODY_TIPS_ASIDE_LEAST("body.tips-aside-least"),
    BODY_TIPS_FORWARD_LEAST("body.tips-forward-least"),
    BODY_TIPPING_LEAST("body.tipping-least"),
    BODY_UNDER_FLOOR_MOST("body.under-floor-most"),
    ELECTRICAL_ALTERNATOR_MOST("electrical.alternator-most"),
    ELECTRICAL_ALTERNATOR_STEADY("electrical.alternator-steady"),
    ELECTRICAL_CABLE_SHARE("electrical.cable-share"),
    ELECTRICAL_CHARGE_LEAD_SURE("electrical.charge-lead-sure"),
    ELECTRICAL_CHARGE_LITHIUM_SURE("electrical.charge-lithium-sure"),
    ELECTRICAL_DEPTH_LEAD_MOST("electrical.depth-lead-most"),
    ELECTRICAL_DEPTH_LITHIUM_MOST("electrical.depth-lithium-most"),
    ELECTRICAL_DISCHARGE_LITHIUM_SURE("electrical.discharge-lithium-sure"),
    ELECTRICAL_DROP_CRITICAL_MOST("electrical.drop-critical-most"),
    ELECTRICAL_DROP_OTHER_MOST("electrical.drop-other-most"),
    ELECTRICAL_FIREWALL("electrical.firewall"),
    ELECTRICAL_FUSE_SHARE_MOST("electrical.fuse-share-most"),
    ELECTRICAL_FUSE_SHARE_STOP("electrical.fuse-share-stop"),
    ELECTRICAL_FEED_SHARE("electrical.feed-share"),
    ELECTRICAL_INVERTER_LOWEST("electrical.inverter-lowest"),
    ELECTRICAL_LITHIUM_COLDEST("electrical.lithium-coldest"),
    ELECTRICAL_PANEL_RISE("electrical.panel-rise"),
    ELECTRICAL_STARTER_DRAIN_MOST("electrical.starter-drain-most"),
    FUEL_RANGE_RESERVE_LEAST("fuel.range-reserve-least"),
    INTAKE_FREEBOARD_LEAST("intake.freeboard-least"),
    INTAKE_VELOCITY_MOST("intake.velocity-most"),
    MASS_FRONT_LIFT_MOST("mass.front-lift-most"),
    MASS_RERATING_REFUSED("mass.rerating-refused"),
    PAPERWORK_RATING_STAGES("paperwork.rating-stages"),
    MASS_ROOF_ASKED("mass.roof-asked"),
    MASS_SIDE_MOST("mass.side-most"),
    MIRRORS_BEYOND_TRAILER_MOST("mirrors.beyond-trailer-most"),
    MIRRORS_BEYOND_VEHICLE_MOST("mirrors.beyond-vehicle-most"),
    MIRRORS_FAR_DISTANCE("mirrors.far-distance"),
    MIRRORS_FAR_WIDTH("mirrors.far-width"),
    MIRRORS_NEAR_DISTANCE("mirrors.near-distance"),
    MIRRORS_NEAR_WIDTH("mirrors.near-width"),
    RADIO_SIGHT_LEAST("radio.sight-least"),
    RECOVERY_STRAP_LEAST("recovery.strap-least"),
    RECOVERY_STRAP_MOST("recovery.strap-most"),
    RECOVERY_WINCH_FACTOR("recovery.winch-factor"),
    SUSPENSION_FREQUENCY_LEAST("suspension.frequency-least"),
    SUSPENSION_JOINT_ANGLE_MOST("suspension.joint-angle-most"),
    SUSPENSION_SAG_MOST("suspension.sag-most"),
    TOWING_BALL_SHARE_LEAST("towing.ball-share-least"),
    TOWING_CHAINS_HEAVY_LEAST("towing.chains-heavy-least"),
    TOWING_CHAINS_LEAST("towing.chains-least"),
    TOWING_PIN_SHARE_LEAST("towing.pin-share-least"),
    TOWING_FIFTH_WHEEL_CHAINS("towing.fifth-wheel-chains"),
    TOWING_FIFTH_WHEEL_CHAINS_ALONE("towing.fifth-wheel-chains-alone"),
    TOWING_NO_BREAKAWAY_MOST("towing.no-breakaway-most"),
    TOWING_NO_BREAKAWAY_MASS_MOST("towing.no-breakaway-mass-most"),
    TOWING_ONE_CHAIN_MOST("towing.one-chain-most"),
    TOWING_UNBRAKED_CAMP_MOST("towing.unbraked-camp-most"),
    SUSPENSION_DAMPER_LIFT_MOST("suspension.damper-lift-most"),
    TOWING_UNBRAKED_MASS_MOST("towing.unbraked-mass-most"),
    TOWING_SOME_WHEELS_MOST("towing.some-wheels-most"),
    TOWING_UNBRAKED_SHARE_MOST("towing.unbraked-share-most"),
    TOWING_UNRATED_MOST("towing.unrated-most"),
    TYRES_BRAKE_SHARE_LEAST("tyres.brake-share-least"),
    TYRES_PASSENGER_DIVISOR("tyres.passenger-divisor"),
    TYRES_SPEED_LEAST("tyres.speed-least"),
    TYRES_SPACER_THREAD_LEAST("tyres.spacer-thread-least"),
    WATER_PERSON_DAY_LEAST("water.person-day-least"),
    WATER_REMOTE_DAYS("water.remote-days"),
    WATER_RESERVE_LEAST("water.reserve-least");

    private final String id;

    PracticeId(String id) {
        this.id = id;
    }

    /** As the book has it, {@code topic.what}. */
    public String id() {
        return id;
    }
}
