package fitworthy.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Quantities against published conversion factors. */
class QuantityTextTest {

    private static double value(String text, Dimension dimension) throws QuantityText.Unreadable {
        return QuantityText.parse(text, dimension).value();
    }

    /**
     * Factors of NIST SP 811 (2008 edition), appendix B.8, cited from memory: pound 4.535 923 7 E-01 kg, inch 2.54 E-02
     * m, foot 3.048 E-01 m, mile 1.609 344 E+03 m, US gallon 3.785 412 E-03 m3, imperial gallon 4.546 09 E-03 m3, psi
     * 6.894 757 E+03 Pa, bar 1 E+05 Pa, mile per hour 4.4704 E-01 m/s, kilogram-force 9.806 65 N, pound-force 4.448 222
     * N, horsepower (550 ft lbf/s) 7.456 999 E+02 W, pound-force per inch 1.751 268 E+02 N/m. The US gallon is 231
     * cubic inches.
     */
    @ParameterizedTest
    @CsvSource({
        "1 lb, MASS, 0.45359237",
        "2.4 t, MASS, 2400",
        "500 g, MASS, 0.5",
        "1 in, LENGTH, 0.0254",
        "1 ft, LENGTH, 0.3048",
        "1 mi, LENGTH, 1609.344",
        "650 mm, LENGTH, 0.65",
        "65 cm, LENGTH, 0.65",
        "3 um, LENGTH, 0.000003",
        "3 micron, LENGTH, 0.000003",
        "820 km, LENGTH, 820000",
        "1 US gal, VOLUME, 3.785412",
        "1 imp gal, VOLUME, 4.54609",
        "2800 cc, VOLUME, 2.8",
        "1 m3, VOLUME, 1000",
        "1 psi, PRESSURE, 6894.757",
        "35 psi, PRESSURE, 241316.5",
        "1 bar, PRESSURE, 100000",
        "250 kPa, PRESSURE, 250000",
        "1 mph, SPEED, 0.44704",
        "36 km/h, SPEED, 10",
        "0.84 kg/L, DENSITY, 0.84",
        "840 kg/m3, DENSITY, 0.84",
        "2 L/min, FLOW, 120",
        "1 kgf, FORCE, 9.80665",
        "1 lbf, FORCE, 4.448222",
        "1 lb/in, STIFFNESS, 175.1268",
        "1 N/mm, STIFFNESS, 1000",
        "1 kg/mm, STIFFNESS, 9806.65",
        "1 hp, POWER, 745.6999",
        "2 days, TIME, 48",
        "1 week, TIME, 168",
        "30 min, TIME, 0.5",
        "90 %, SHARE, 0.9",
        "477 MHz, FREQUENCY, 477000000",
        "12.5 L/100 km, CONSUMPTION, 12.5",
        "16 mm2, AREA, 0.000016",
        "5, COUNT, 5"
    })
    void unitHasItsPublishedSize(String text, Dimension dimension, double expected) throws QuantityText.Unreadable {
        assertEquals(expected, value(text, dimension), Math.abs(expected) * 2e-7);
    }

    @Test
    void unitsExactByDefinitionAreExact() throws QuantityText.Unreadable {
        assertEquals(0.0254, value("1 in", Dimension.LENGTH));
        assertEquals(0.45359237, value("1 lb", Dimension.MASS));
        assertEquals(231 * Math.pow(2.54, 3) / 1000, value("1 US gal", Dimension.VOLUME), 1e-12);
        assertEquals(0.45359237 * 9.80665 / (0.0254 * 0.0254), value("1 psi", Dimension.PRESSURE), 1e-8);
        assertEquals(value("2400 kg", Dimension.MASS), value("2.4 t", Dimension.MASS));
    }

    @ParameterizedTest
    @CsvSource({
        "85 kg +/- 4 kg",
        "85kg+/-4kg",
        "85 kg \u00B1 4 kg",
        "+85 kg +/- 4000 g",
        "85\u00A0kg \u00B1\u202F4\u00A0kg",
        "85000 g +/- 4 kg",
        "' 85 kg +/- 4 kg '",
        "85.0 kg +/\u2212 4.00 kg"
    })
    void toleranceIsReadInEverySpelling(String text) throws QuantityText.Unreadable {
        Figure figure = QuantityText.parse(text, Dimension.MASS);
        assertEquals(85, figure.value(), 1e-9);
        assertEquals(4, figure.tolerance(), 1e-9);
    }

    /** Spellings of the trade, each held against the unit whose size is published. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "95kg; 95 kg; MASS",
                "95 KG; 95 kg; MASS",
                "95 kgs; 95 kg; MASS",
                "95 Kgs.; 95 kg; MASS",
                "2.4 tonnes; 2.4 t; MASS",
                "2,4 t; 2.4 t; MASS",
                "0,125 t; 0.125 t; MASS",
                "12,5 kg +/- 0,5 kg; 12.5 kg +/- 0.5 kg; MASS",
                "5 Pounds; 5 lb; MASS",
                "4 inch; 4 in; LENGTH",
                "4\"; 4 in; LENGTH",
                "4''; 4 in; LENGTH",
                "4\u2033; 4 in; LENGTH",
                "4 \u201D; 4 in; LENGTH",
                "9'; 9 ft; LENGTH",
                "9 feet; 9 ft; LENGTH",
                "650 mm.; 650 mm; LENGTH",
                "650MM; 650 mm; LENGTH",
                "3,5 m; 3.5 m; LENGTH",
                "5 \u00B5m; 5 um; LENGTH",
                "80 l; 80 L; VOLUME",
                "80 litres; 80 L; VOLUME",
                "2800CC; 2800 cc; VOLUME",
                "2800 cm\u00B3; 2800 cc; VOLUME",
                "1.5 ML; 1.5 mL; VOLUME",
                "16 mm\u00B2; 16 mm2; AREA",
                "0.9 Bar; 0.9 bar; PRESSURE",
                "35PSI; 35 psi; PRESSURE",
                "110 kph; 110 km/h; SPEED",
                "110 KM/H; 110 km/h; SPEED",
                "12v; 12 V; VOLTAGE",
                "12 volts; 12 V; VOLTAGE",
                "40 amps; 40 A; CURRENT",
                "100AH; 100 Ah; CHARGE",
                "2 hrs; 2 h; TIME",
                "3 wks; 3 weeks; TIME",
                "477 mhz; 477 MHz; FREQUENCY",
                "45 \u00B0C; 45 degC; TEMPERATURE",
                "45 C; 45 degC; TEMPERATURE",
                "28\u00B0; 28 deg; ANGLE",
                "90 percent; 90 %; SHARE",
                "260 lbs/in; 260 lb/in; STIFFNESS",
                "11,5 l/100 km; 11.5 L/100km; CONSUMPTION",
                "1,5; 1.5; COUNT"
            })
    void tradesSpellingIsTheUnit(String written, String plain, Dimension dimension) throws QuantityText.Unreadable {
        assertEquals(QuantityText.parse(plain, dimension), QuantityText.parse(written, dimension));
        String pattern = UnitWords.pattern(Set.of(dimension));
        String unit = written.replaceAll("^[0-9.,]+ ?| \\+/-.*", "");
        assertTrue(unit.matches(pattern), () -> "the schema refuses '" + unit + "' by " + pattern);
    }

    @Test
    void smallAndLargeLettersOfADimensionMeanOneUnit() {
        for (Dimension dimension : Dimension.values()) {
            dimension.units().forEach((unit, size) -> {
                assertEquals(size, UnitWords.size(dimension, unit.toLowerCase(Locale.ROOT)), unit);
                assertEquals(size, UnitWords.size(dimension, unit.toUpperCase(Locale.ROOT)), unit);
            });
        }
    }

    @Test
    void toleranceInPercentIsAShareOfTheValue() throws QuantityText.Unreadable {
        assertEquals(4, QuantityText.parse("80 kg +/- 5 %", Dimension.MASS).tolerance(), 1e-9);
        assertEquals(
                0.017, QuantityText.parse("-340 mm +/- 5 %", Dimension.LENGTH).tolerance(), 1e-9);
        assertEquals(
                0.05,
                QuantityText.parse("90 % +/- 5 %", Dimension.SHARE).tolerance(),
                1e-9,
                "on a share percent points are meant");
    }

    @Test
    void signedFiguresKeepTheirSign() throws QuantityText.Unreadable {
        assertEquals(-0.35, value("-350 mm", Dimension.LENGTH), 1e-12);
        assertEquals(-0.35, value("\u2212350 mm", Dimension.LENGTH), 1e-12);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "35; PRESSURE; '35' has no unit",
                "35 kg; PRESSURE; '35 kg' has a unit of mass where one of pressure belongs",
                "35 psis; PRESSURE; '35 psis' has a unit that is not known (did you mean 'psi'?)",
                "5 kg; COUNT; '5 kg' has a unit of mass where one of count belongs",
                "1e3 kg; MASS; '1e3 kg' has a unit that is not known",
                "5-6 kg; MASS; '5-6 kg' is not a quantity",
                ".5 kg; MASS; '.5 kg' is not a quantity",
                "85 kg +/- -4 kg; MASS; '85 kg +/- -4 kg' is not a quantity",
                "85 kg +/- 4; MASS; '85 kg +/- 4', after +/-, has no unit",
                "85 +/- 4 kg; MASS; '85 +/- 4 kg' has its unit behind the tolerance alone: write 85 kg +/- 4 kg",
                "1234567890123 kg; MASS; '1234567890123 kg' is not a quantity",
                "kg; MASS; 'kg' is not a quantity",
                "1,250 kg; MASS; '1,250 kg' could be 1250 kg or 1.250 kg: write the one that is meant",
                "-1,250 mm; LENGTH; '-1,250 mm' could be -1250 mm or -1.250 mm: write the one that is meant",
                "85 kg +/- 1,250 g; MASS; '85 kg +/- 1,250 g' could be 1250 g or 1.250 g: write the one that is meant",
                "1,250,000 g; MASS; '1,250,000 g' separates thousands: write the number without, as in 1250 or 1250.5",
                "1,250.5 kg; MASS; '1,250.5 kg' separates thousands: write the number without, as in 1250 or 1250.5",
                "1.250,5 kg; MASS; '1.250,5 kg' separates thousands: write the number without, as in 1250 or 1250.5",
                "1 250 kg; MASS; '1 250 kg' separates thousands: write the number without, as in 1250 or 1250.5",
                "20 gal; VOLUME; '20 gal' has a unit that could be either of two: write 'US gal' or 'imp gal'",
                "2.4 tons; MASS; '2.4 tons' has a unit that could be either of two: write 't' for 1000 kg, or 'kg' or"
                        + " 'lb'",
                "5 Gallons; MASS; '5 Gallons' has a unit that could be either of two: write 'US gal' or 'imp gal'",
                "12 volts; CURRENT; '12 volts' has a unit of voltage where one of current belongs",
                "5 C; LENGTH; '5 C' has a unit of temperature where one of length belongs",
                "5' 10\"; LENGTH; '5' 10\"' has a unit that is not read here: write 1778 mm",
                "6 ft 2 in; LENGTH; '6 ft 2 in' has a unit that is not read here: write 1880 mm",
                "13 st; MASS; '13 st' has a unit that is not read here: write 82.55 kg",
                // 4000 N over 9.80665 m/s2 are 407.886 kg, by the definition of the kilogram-force.
                "4 kN; MASS; '4 kN' has a unit that is not read here: write 407.9 kg",
                "250 daN; MASS; '250 daN' has a unit that is not read here: write 254.9 kg",
                "900 lbf; MASS; '900 lbf' has a unit that is not read here: write 900 lb",
                "4 kN; LENGTH; '4 kN' has a unit of force where one of length belongs",
                "0.5C; CURRENT; '0.5C' has a unit that is not read here: write 0.5 A for each Ah of its capacity, 50 A for"
                        + " one of 100 Ah",
                "2000 VA; POWER; '2000 VA' has a unit that is not read here: write the W that its data sheet gives, at"
                        + " most 2000 W and often a fifth less",
                "2 kVA; POWER; '2 kVA' has a unit that is not read here: write the W that its data sheet gives, at most"
                        + " 2000 W and often a fifth less",
                "13 st; LENGTH; '13 st' has a unit that is not known (did you mean 'ft'?)",
                "77 degF; TEMPERATURE; '77 degF' has a unit that is not read here: write 25 degC",
                "-4 F; TEMPERATURE; '-4 F' has a unit that is not read here: write -20 degC",
                "8 km/L; CONSUMPTION; '8 km/L' has a unit that is not read here: write 12.5 L/100km",
                "25 mpg; CONSUMPTION; '25 mpg' has a unit that is not read here: write 9.409 L/100km for US gallons or"
                        + " 11.3 L/100km for imperial ones",
                "0 mpg; CONSUMPTION; '0 mpg' has a unit that is not known",
                "6 B&S; AREA; '6 B&S' has a unit that is not read here: write 13.3 mm2",
                // By the table of the American wire gauge: 1/0 has 53.5 mm2, 4/0 107.2 mm2.
                "1/0 AWG; AREA; '1/0 AWG' has a unit that is not read here: write 53.48 mm2",
                "4/0 awg; AREA; '4/0 awg' has a unit that is not read here: write 107.2 mm2",
                "18 1/2 in; LENGTH; '18 1/2 in' has a fraction: write 18.5 in",
                "3/8 in; LENGTH; '3/8 in' has a fraction: write 0.375 in",
                "18 1/2 psi; LENGTH; '18 1/2 psi' is not a quantity",
                "10 AWG; AREA; '10 AWG' has a unit that is not read here: write 5.261 mm2",
                "3000\u00B120 kg; MASS; '3000\u00B120 kg' has its unit behind the tolerance alone: write 3000 kg +/- 20 kg",
                "3000 +/- 5 %; MASS; '3000 +/- 5 %' has no unit",
                "ca. 3000 kg; MASS; 'ca. 3000 kg' is not a quantity: write 'about' before a guess",
                "~3000 kg; MASS; '~3000 kg' is not a quantity: write 'about' before a guess",
                "calm 3 kg; MASS; 'calm 3 kg' is not a quantity"
            })
    void anythingElseIsRefused(String text, Dimension dimension, String message) {
        assertEquals(
                message,
                assertThrows(QuantityText.Unreadable.class, () -> QuantityText.parse(text, dimension))
                        .getMessage());
    }

    @Test
    void longTextIsRefusedUnread() {
        assertEquals(
                "'" + "9".repeat(57) + "...' is too long for a quantity",
                assertThrows(QuantityText.Unreadable.class, () -> QuantityText.parse("9".repeat(101), Dimension.MASS))
                        .getMessage());
    }

    @Test
    void everyExampleIsOfItsDimension() throws QuantityText.Unreadable {
        for (Dimension dimension : Dimension.values()) {
            assertEquals(
                    0,
                    QuantityText.parse(dimension.example(), dimension).missing().size(),
                    dimension.name());
        }
    }

    @Test
    void noUnitNameMeansTwoThings() {
        for (Dimension dimension : Dimension.values()) {
            dimension.units().keySet().forEach(unit -> assertEquals(dimension, Dimension.ofUnit(unit), unit));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "2.000 kg; 2000 kg or 2 kg",
                "1.250kg; 1250 kg or 1.25 kg",
                "2.850 mm +/- 5 mm; 2850 mm or 2.85 mm",
                "4.500 lb; 4500 lb or 4.5 lb",
                "0.125 kg; ",
                "1.250 t; ",
                "2.00 kg; ",
                "2.0000 kg; ",
                "1234.500 kg; ",
                "2.850 m; "
            })
    void tellsWhereAPointMayStandBetweenThousands(String typed, String either) {
        assertEquals(either, QuantityText.eitherOf(typed).orElse(null));
    }
}
