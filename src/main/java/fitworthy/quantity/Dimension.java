package fitworthy.quantity;

import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The kinds of quantity a sheet or a practice value may give, each with the unit names the trade writes and their size
 * in the unit used inside. Conversion factors are exact by definition (international yard and pound, SI) except the
 * gallons, which are the US and the imperial ones to the last digit given.
 */
public enum Dimension {
    MASS("2400 kg", "kg", 1, "t", 1000, "g", 0.001, "lb", 0.45359237),
    LENGTH(
            "650 mm", "m", 1, "mm", 0.001, "cm", 0.01, "km", 1000, "um", 1e-6, "micron", 1e-6, "in", 0.0254, "ft",
            0.3048, "mi", 1609.344),
    AREA("16 mm2", "m2", 1, "mm2", 1e-6, "cm2", 1e-4),
    VOLUME("80 L", "L", 1, "l", 1, "mL", 0.001, "m3", 1000, "cc", 0.001, "US gal", 3.785411784, "imp gal", 4.54609),
    PRESSURE("35 psi", "Pa", 1, "kPa", 1000, "MPa", 1e6, "bar", 1e5, "psi", 6894.757293168),
    SPEED("110 km/h", "m/s", 1, "km/h", 1 / 3.6, "mph", 0.44704),
    ROTATION("3400 rpm", "rpm", 1),
    DENSITY("0.84 kg/L", "kg/L", 1, "kg/m3", 0.001),
    FLOW("120 L/h", "L/h", 1, "L/min", 60, "L/s", 3600),
    CONSUMPTION("11.5 L/100km", "L/100km", 1, "L/100 km", 1),
    FORCE("20 kN", "N", 1, "kN", 1000, "kgf", 9.80665, "lbf", 4.4482216152605),
    /** Of bending; no field of a sheet gives one. */
    MOMENT("3200 Nm", "Nm", 1, "kNm", 1000),
    /** Of a section against bending; no field of a sheet gives one. */
    SECTION_MODULUS("37500 mm3", "mm3", 1),
    STIFFNESS("45 N/mm", "N/m", 1, "N/mm", 1000, "kg/mm", 9806.65, "lb/in", 175.126835),
    CURRENT("120 A", "A", 1, "mA", 0.001),
    VOLTAGE("12 V", "V", 1, "uV", 1e-6),
    POWER("150 W", "W", 1, "kW", 1000, "hp", 745.6998715822702),
    ENERGY("600 Wh", "Wh", 1, "kWh", 1000),
    CHARGE("100 Ah", "Ah", 1, "mAh", 0.001),
    TIME(
            "14 days",
            "h",
            1,
            "s",
            1 / 3600.0,
            "min",
            1 / 60.0,
            "day",
            24,
            "days",
            24,
            "d",
            24,
            "week",
            168,
            "weeks",
            168),
    SHARE("90 %", "%", 0.01),
    ANGLE("28 deg", "deg", 1),
    FREQUENCY("477 MHz", "Hz", 1, "kHz", 1e3, "MHz", 1e6),
    GAIN("6.6 dBi", "dBi", 1, "dB", 1),
    TEMPERATURE("45 degC", "degC", 1),
    /** A plain count or ratio, the one kind written without a unit. */
    COUNT("5", "", 1);

    /** By the name of a unit; one that several have is the first one's. */
    private static final Map<String, Dimension> BY_UNIT = new HashMap<>();

    static {
        for (Dimension dimension : values()) {
            dimension.units.keySet().forEach(unit -> BY_UNIT.putIfAbsent(unit, dimension));
        }
    }

    private final String example;
    private final Map<String, Double> units = new LinkedHashMap<>();

    Dimension(String example, Object... unitsAndSizes) {
        this.example = example;
        for (int i = 0; i < unitsAndSizes.length; i += 2) {
            units.put((String) unitsAndSizes[i], ((Number) unitsAndSizes[i + 1]).doubleValue());
        }
    }

    /** A quantity of this kind, written as a sheet wants it. */
    public String example() {
        return example;
    }

    /** Unit names and their sizes; the first is the one used inside. */
    public Map<String, Double> units() {
        return Collections.unmodifiableMap(units);
    }

    /** The dimension that has a unit of this name, or null. */
    public static Dimension ofUnit(String unit) {
        return BY_UNIT.get(unit);
    }

    /** The names of all units of whatever dimension. */
    public static Set<String> allUnits() {
        return Arrays.stream(values())
                .flatMap(dimension -> dimension.units.keySet().stream())
                .filter(unit -> !unit.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** How much one {@code unit} is in the unit used inside. @throws IllegalArgumentException for an unknown unit */
    public static double size(String unit) {
        Dimension dimension = ofUnit(unit);
        if (dimension == null) {
            throw new IllegalArgumentException("no unit is called '" + unit + "'");
        }
        return dimension.units.get(unit);
    }
}
