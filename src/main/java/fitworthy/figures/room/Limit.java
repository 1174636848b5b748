package fitworthy.figures.room;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** What may bound what is still taken; later: once tanks and supplies are used up on the way, in the worst order. */
public enum Limit {
    TOW_RATING("tow rating", Of.VEHICLE),
    TOW_RATING_UNBRAKED("tow rating without brakes", Of.VEHICLE),
    TOW_LIMIT_BY_KERB_MASS("tow limit by the kerb mass", Of.VEHICLE),
    TOW_BAR_PLATE("tow bar's plate", Of.VEHICLE),
    TOW_BAR_D("tow bar's D value", Of.VEHICLE),
    TOW_BAR_DC("tow bar's Dc value", Of.VEHICLE),
    TOW_BAR_V("tow bar's V value", Of.VEHICLE),
    BALL_RATING("ball rating", Of.VEHICLE),
    TOW_BAR_BALL("tow bar's ball load", Of.VEHICLE),
    BALL_RATING_LATER("ball rating on the way", Of.VEHICLE),
    TOW_BAR_BALL_LATER("tow bar's ball load on the way", Of.VEHICLE),
    GVM("GVM", Of.VEHICLE),
    GCM("GCM", Of.VEHICLE),
    FRONT_AXLE("front axle", Of.VEHICLE),
    REAR_AXLE("rear axle", Of.VEHICLE),
    GVM_LATER("GVM on the way", Of.VEHICLE),
    FRONT_AXLE_LATER("front axle on the way", Of.VEHICLE),
    REAR_AXLE_LATER("rear axle on the way", Of.VEHICLE),
    FRONT_LIFT("least on the front axle", Of.VEHICLE),
    FRONT_LIFT_LATER("least on the front axle on the way", Of.VEHICLE),
    FRONT_TYRES("front tyres", Of.VEHICLE),
    REAR_TYRES("rear tyres", Of.VEHICLE),
    FRONT_WHEELS("front wheels", Of.VEHICLE),
    REAR_WHEELS("rear wheels", Of.VEHICLE),
    FRONT_TYRES_LATER("front tyres on the way", Of.VEHICLE),
    REAR_TYRES_LATER("rear tyres on the way", Of.VEHICLE),
    FRONT_WHEELS_LATER("front wheels on the way", Of.VEHICLE),
    REAR_WHEELS_LATER("rear wheels on the way", Of.VEHICLE),
    ROOF("roof", Of.VEHICLE),
    RACK("rack", Of.VEHICLE),
    HOLD_DOWNS("hold-downs", Of.VEHICLE),
    LEGS("legs", Of.VEHICLE),
    TRAILER_PLATE("trailer's plate", Of.TRAILER),
    TRAILER_AXLES("trailer's axles (GTM)", Of.TRAILER),
    TRAILER_TYRES("trailer's tyres", Of.TRAILER),
    TRAILER_COUPLING("trailer's coupling", Of.TRAILER),
    TRAILER_COUPLING_D("D value of the trailer's coupling", Of.TRAILER),
    TRAILER_COUPLING_DC("Dc value of the trailer's coupling", Of.TRAILER),
    TRAILER_COUPLING_V("V value of the trailer's coupling", Of.TRAILER),
    TRAILER_COUPLING_BALL("ball load of the trailer's coupling", Of.TRAILER),
    TRAILER_COUPLING_BALL_LATER("ball load of the trailer's coupling on the way", Of.TRAILER),
    FULL("full tank", Of.TANK);

    /** Whose limit it is. */
    public enum Of {
        VEHICLE,
        TRAILER,
        TANK
    }

    private static final String LATER = "_LATER";

    private static final Set<Limit> RATINGS =
            EnumSet.of(TOW_RATING, TOW_RATING_UNBRAKED, BALL_RATING, GVM, GCM, FRONT_AXLE, REAR_AXLE, ROOF);

    private static final Set<Limit> OF_TYRES =
            EnumSet.of(FRONT_TYRES, REAR_TYRES, FRONT_TYRES_LATER, REAR_TYRES_LATER, TRAILER_TYRES);

    private final String words;
    private final Of of;

    Limit(String words, Of of) {
        this.words = words;
        this.of = of;
    }

    /** As people are told of it. */
    public String words() {
        return words;
    }

    /** Whether the maker of the vehicle rates it so. */
    public boolean isRating() {
        return RATINGS.contains(this);
    }

    /** Whether it is what tyres carry. */
    public boolean isOfTyres() {
        return OF_TYRES.contains(this);
    }

    /** Of what holds later on the way, the same as planned. */
    Optional<Limit> planned() {
        return name().endsWith(LATER)
                ? Optional.of(valueOf(name().substring(0, name().length() - LATER.length())))
                : Optional.empty();
    }

    /** Whether it is one that has to be kept and not to be passed. */
    boolean isLeast() {
        return this == FRONT_LIFT || this == FRONT_LIFT_LATER;
    }

    /** Whose limit it is: another trailer has others. */
    public Of of() {
        return of;
    }
}
