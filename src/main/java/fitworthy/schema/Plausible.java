package fitworthy.schema;

import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.QuantityText;
import java.time.LocalDate;

/**
 * What a figure or a day of the sheet is, and so between what it can lie: the least and the most that it can be, beyond
 * which the sheet is refused, and between them, where there is such a range, what is usual, beyond which it is asked
 * about. Each end belongs to its range. Ranges are wide, from memory: they are to find a slipped point or a wrong unit
 * and not a rare vehicle, which has a rule of its own where it matters.
 */
public enum Plausible {
    /** Of which nothing is said here, as for what the rule book holds. */
    ANYTHING,

    DAY("1980-01-01", "2099-12-31"),
    REGISTRATION("1900-01-01", "2099-12-31"),

    // The vehicle
    WHEELBASE("0.5 m", "1900 mm", "5000 mm", "12 m"),
    OVERHANG("0 mm", "300 mm", "3500 mm", "8 m"),
    BALL_OVERHANG("-2 m", "300 mm", "3000 mm", "8 m"),
    TRACK("0.5 m", "1100 mm", "2100 mm", "3 m"),
    BODY_WIDTH("0.5 m", "1000 mm", "2600 mm", "4 m"),
    COUPLING_HEIGHT("100 mm", "250 mm", "1600 mm", "3 m"),
    WHEEL_CENTRE("100 mm", "250 mm", "650 mm", "1.5 m"),
    CENTRE_OF_GRAVITY("100 mm", "400 mm", "2500 mm", "6 m"),
    HEIGHT("0 mm", "150 mm", "3000 mm", "6 m"),
    TIP_HEIGHT("0 mm", "500 mm", "6000 mm", "15 m"),
    WATER_DEPTH("0 mm", "0 mm", "1500 mm", "4 m"),
    HEADROOM("1 m", "1800 mm", "6000 mm", "20 m"),
    KERB_MASS("300 kg", "700 kg", "8000 kg", "30 t"),
    AXLE_MASS("100 kg", "300 kg", "6000 kg", "20 t"),
    AXLE_LIMIT("200 kg", "400 kg", "8000 kg", "25 t"),
    GVM("500 kg", "1000 kg", "12000 kg", "40 t"),
    GCM("500 kg", "1500 kg", "24000 kg", "80 t"),
    ROOF_LIMIT("0 kg", "0 kg", "500 kg", "3 t"),
    ROOF_AT_REST("0 kg", "50 kg", "1000 kg", "5 t"),
    UNSPRUNG("1 kg", "30 kg", "800 kg", "5 t"),
    SEATS("1", "1", "16", "60"),
    FULLNESS("0 %", "100 %"),
    SPEEDOMETER("-50 %", "-10 %", "15 %", "50 %"),
    AXLE_RATIO("1", "2", "8", "25"),

    // Places
    ALONG("-5 m", "-2000 mm", "8000 mm", "20 m"),
    ASIDE("-4 m", "-1500 mm", "1500 mm", "4 m"),
    UP("0 m", "100 mm", "3500 mm", "8 m"),
    FROM_CENTRE("0 mm", "500 mm", "2000 mm", "4 m"),
    SPACING("100 mm", "400 mm", "3000 mm", "6 m"),
    GAP("0 mm", "0 mm", "2000 mm", "10 m"),
    MOVE("0 mm", "0 mm", "6000 mm", "20 m"),
    PLACE_TOLERANCE("0 mm", "0 mm", "500 mm", "2 m"),
    MASS_TOLERANCE("0 %", "0 %", "30 %", "100 %"),
    BODY_LENGTH("100 mm", "500 mm", "6000 mm", "15 m"),

    // Parts, people and what is carried
    PART_MASS("0 kg", "0 kg", "2000 kg", "15 t"),
    ROOF_SLEEPERS("0 kg", "40 kg", "400 kg", "1 t"),
    PERSON("1 kg", "5 kg", "250 kg", "500 kg"),
    DRIVER_IN_KERB("0 kg", "0 kg", "200 kg", "500 kg"),
    WORKING_LIMIT("0 kg", "0 kg", "25000 kg", "100 t"),
    STRENGTH("0 kg", "500 kg", "60000 kg", "300 t"),
    PULL("10 kg", "500 kg", "15000 kg", "100 t"),
    MIRROR_GLASS("10 mm", "50 mm", "1200 mm", "2 m"),
    MIRROR_RADIUS("50 mm", "200 mm", "5000 mm", "100 m"),
    LIFT("-500 mm", "-200 mm", "300 mm", "1 m"),
    BODY_LIFT("0 mm", "0 mm", "150 mm", "500 mm"),
    WHEEL_TRAVEL("0 mm", "30 mm", "600 mm", "2 m"),
    STIFFNESS("0.1 N/mm", "5 N/mm", "500 N/mm", "5000 N/mm"),
    STRAP_TENSION("1 kg", "20 kg", "800 kg", "5 t"),
    STRAP_ANGLE("0 deg", "10 deg", "90 deg", "90 deg"),
    GRIP("0 %", "5 %", "80 %", "150 %"),
    FOOTING("10 mm", "50 mm", "4000 mm", "15 m"),
    ABOVE_FOOTING("1 mm", "20 mm", "1500 mm", "5 m"),
    BROUGHT_BACK("0 %", "0 %", "100 %", "300 %"),
    MOTION_RATIO("5 %", "30 %", "130 %", "300 %"),
    JOINT_ANGLE("0 deg", "0 deg", "45 deg", "90 deg"),
    FRAME_CUT("0 m", "500 mm", "5000 mm", "12 m"),
    SHAFT_SPAN("50 mm", "300 mm", "2200 mm", "5 m"),
    SHAFT_TUBE("10 mm", "40 mm", "150 mm", "400 mm"),
    SHAFT_WALL("0.5 mm", "1 mm", "8 mm", "50 mm"),
    RAIL("10 mm", "30 mm", "300 mm", "600 mm"),
    YIELD("50 MPa", "150 MPa", "1000 MPa", "2500 MPa"),
    ADDED_WHEELBASE("0 mm", "0 mm", "2000 mm", "8 m"),
    COUNT("0", "0", "40", "1000"),
    POSITION("1", "1", "10", "100"),
    WORKING_DAYS("0", "0", "200", "3650"),
    TIME_TO_WAIT("0 days", "0 days", "730 days", "3650 days"),

    // Tyres and wheels
    TYRE_DIAMETER("250 mm", "500 mm", "1250 mm", "2.5 m"),
    TYRE_PRESSURE("20 kPa", "80 kPa", "900 kPa", "1200 kPa"),
    LOAD_INDEX("0", "70", "160", "279"),
    TYRE_GAP("0 mm", "0 mm", "300 mm", "1 m"),
    RIM_DIAMETER("5 in", "12 in", "24 in", "40 in"),
    RIM_WIDTH("1 in", "3 in", "15 in", "30 in"),
    RIM_OFFSET("-400 mm", "-150 mm", "200 mm", "400 mm"),
    SPACER("0 mm", "3 mm", "60 mm", "200 mm"),
    THREAD("0 mm", "5 mm", "40 mm", "100 mm"),
    STUD("5 mm", "10 mm", "24 mm", "50 mm"),
    WHEEL_RATING("50 kg", "300 kg", "4000 kg", "15 t"),

    // Engine, intake and fuel
    DISPLACEMENT("0.05 L", "0.6 L", "10 L", "40 L"),
    CRANKSHAFT("100 rpm", "1500 rpm", "9000 rpm", "25000 rpm"),
    BOOST("0 kPa", "0 kPa", "400 kPa", "1500 kPa"),
    INTAKE_AIR("0 degC", "10 degC", "150 degC", "400 degC"),
    VOLUMETRIC_EFFICIENCY("10 %", "60 %", "120 %", "200 %"),
    CONSUMPTION("0.5 L/100km", "4 L/100km", "60 L/100km", "300 L/100km"),
    FUEL_FLOW("0.1 L/h", "10 L/h", "1000 L/h", "20000 L/h"),
    BLOW_BY("0.1 L/min", "5 L/min", "400 L/min", "5000 L/min"),
    FILTER("0.1 um", "1 um", "200 um", "5 mm"),
    BORE("1 mm", "30 mm", "250 mm", "1 m"),
    CAPACITY("0.1 L", "1 L", "1000 L", "20 m3"),
    DENSITY("0.5 kg/L", "0.7 kg/L", "1.2 kg/L", "2 kg/L"),

    // Trailer
    TRAILER_MASS("1 kg", "100 kg", "12000 kg", "60 t"),
    TOW_RATING("0 kg", "0 kg", "12000 kg", "60 t"),
    BALL_LOAD("0 kg", "0 kg", "2000 kg", "20 t"),
    COUPLING_FORCE("0.1 kN", "1 kN", "250 kN", "2000 kN"),
    TRAILER_LENGTH("200 mm", "1500 mm", "14000 mm", "30 m"),
    ALONG_TRAILER("0 mm", "200 mm", "10000 mm", "25 m"),
    TRAILER_AXLE("200 mm", "1000 mm", "10000 mm", "25 m"),
    BRAKE_HOLD("0 s", "0 s", "3 h", "1 week"),

    // Electrics and radio
    BATTERY_VOLTAGE("1 V", "5 V", "60 V", "1000 V"),
    VOLTAGE("1 V", "5 V", "260 V", "1000 V"),
    CURRENT("0 A", "0 A", "800 A", "5000 A"),
    STANDBY("0 A", "0 A", "2 A", "100 A"),
    CHARGE("0.1 Ah", "3 Ah", "1500 Ah", "20000 Ah"),
    SECTION("0.05 mm2", "0.3 mm2", "150 mm2", "2000 mm2"),
    VENT("0 cm2", "0 cm2", "2000 cm2", "10 m2"),
    CABLE_LENGTH("0 mm", "0 mm", "20 m", "200 m"),
    INSULATION("30 degC", "55 degC", "200 degC", "500 degC"),
    SOLAR_POWER("0 W", "0 W", "2 kW", "20 kW"),
    SOLAR_VOLTAGE("1 V", "5 V", "500 V", "1500 V"),
    RISE("0 %", "0.1 %", "0.6 %", "2 %"),
    INVERTER("1 %", "60 %", "100 %", "100 %"),
    INVERTER_POWER("10 W", "100 W", "10 kW", "100 kW"),
    FREQUENCY("0.1 MHz", "1.5 MHz", "6000 MHz", "300000 MHz"),
    GAIN("0 dBi", "0 dBi", "20 dBi", "60 dBi"),
    RADIO_POWER("0.1 W", "0.1 W", "150 W", "5 kW"),
    SENSITIVITY("0.001 uV", "0.05 uV", "1000 uV", "1 V"),

    // The trip
    DISTANCE("0 km", "0 km", "20000 km", "1000000 km"),
    SIGHT_DISTANCE("0 km", "0 km", "200 km", "20000 km"),
    SPEED("5 km/h", "400 km/h"),
    DAYS_AWAY("0 days", "0 days", "90 days", "3650 days"),
    HOURS_OF_DAY("0 h", "24 h"),
    WATER_USE("0 L", "0.5 L", "60 L", "1000 L"),
    WEATHER("-90 degC", "-50 degC", "35 degC", "60 degC");

    /** How far ahead of the sheet's day another is usual at most. */
    public static final int YEARS_AHEAD = 5;

    private final String[] ends;
    private final double[] values;

    /** @param ends least and most, with the ends of the usual range between them where there is one */
    Plausible(String... ends) {
        this.ends = ends;
        this.values = new double[ends.length];
        for (int i = 0; i < ends.length; i++) {
            values[i] = value(ends[i]);
        }
    }

    private static double value(String end) {
        if (end.matches(FieldSchema.DATE)) {
            return LocalDate.parse(end).toEpochDay();
        }
        try {
            return Figure.rounded(
                    QuantityText.parse(end, Dimension.ofUnit(unit(end))).value());
        } catch (QuantityText.Unreadable e) {
            throw new IllegalArgumentException(e);
        }
    }

    private static String unit(String end) {
        int space = end.indexOf(' ');
        return space < 0 ? "" : end.substring(space + 1);
    }

    /** Whether it says anything. */
    public boolean isLimited() {
        return ends.length > 0;
    }

    /** Whether it says what is usual. */
    public boolean hasUsual() {
        return ends.length == 4;
    }

    /** The least it can be, as a sheet would write it. */
    public String least() {
        return ends[0];
    }

    /** The most it can be. */
    public String most() {
        return ends[ends.length - 1];
    }

    /** Whether a figure can be so much, in the unit used inside. */
    public boolean canBe(double value) {
        return !isLimited() || within(value, 0);
    }

    /** Whether a day can be meant. */
    public boolean canBe(LocalDate day) {
        return canBe(day.toEpochDay());
    }

    /** Whether so much is usual, or nothing is said of that. */
    public boolean isUsual(double value) {
        return !hasUsual() || within(value, 1);
    }

    /** The most that is usual, in the unit used inside; without end where nothing is said of that. */
    public double mostUsual() {
        return hasUsual() ? values[2] : Double.POSITIVE_INFINITY;
    }

    private boolean within(double value, int end) {
        double least = values[end];
        double most = values[ends.length - 1 - end];
        // Rounding keeps the order: what is within them before is after.
        return value >= least && value <= most || Figure.rounded(value) >= least && Figure.rounded(value) <= most;
    }

    /** The least and the most that it can be, in words. */
    public String limits() {
        return least() + " and " + most();
    }

    /** The usual range, in words. */
    public String usual() {
        return ends[1] + " to " + ends[2];
    }

    /** Whether a day is no further after the day that the sheet asks about than people plan. */
    public boolean isUsual(LocalDate day, LocalDate asOf) {
        return !day.isAfter(asOf.plusYears(YEARS_AHEAD));
    }

    /** A value in the unit used inside, written in the unit of the end of the usual range that it is beyond. */
    public String shown(double value) {
        return QuantityText.shown(value, unit(value < values[1] ? ends[1] : ends[2]));
    }
}
