package fitworthy.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.quantity.Dimension;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuotedNumbersTest {

    /** Pounds, feet and miles by the international yard and pound, 0.45359237 kg and 0.3048 m. */
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "`a gross weight of 4,500 pounds or less`, 4500 lb, MASS, true",
                "`a gross weight of 4,500 pounds or less`, 500 lb, MASS, false",
                "`no more than 2,55 m wide`, 2.55 m, LENGTH, true",
                "`no more than 2,55 m wide`, 55 m, LENGTH, false",
                "up to 3 500 kg, 3500 kg, MASS, true",
                "between 2001kg and 2500kg, 2500 kg, MASS, true",
                "between 2001kg and 2500kg, 2499 kg, MASS, false",
                "more than 25 cm beyond, 250 mm, LENGTH, true",
                "more than 25 cm beyond, 25 mm, LENGTH, false",
                "2.55, 2.55 m, LENGTH, true",
                "Greatest width (mm): 2550, 2550 mm, LENGTH, true",
                "one and a half times the unladen mass, 150 %, SHARE, true",
                "one times the unladen mass, 150 %, SHARE, false",
                "less than twice the sum, 2, COUNT, true",
                "a 4 day reserve, 4 days, TIME, true",
                "a 5 day reserve, 4 days, TIME, false",
                "less than zero, 0 degC, TEMPERATURE, true",
                "as the maker says, 250 mm, LENGTH, false"
            })
    void aNumberIsFound(String text, String value, Dimension dimension, boolean found) {
        assertEquals(found, QuotedNumbers.name(text, value, dimension));
    }

    /** 2000 lb are 907.18 kg, 55 lb 24.95 kg, 62.14 mph 100 km/h and 8000 ft/min 40.64 m/s. */
    @ParameterizedTest
    @CsvSource({
        "no more than 2000 pounds, 2000 lb, MASS, true",
        "no more than 2000 pounds, 2000 kg, MASS, false",
        "no more than two thousand pounds, 2000 lb, MASS, true",
        "no more than two thousand pounds, 2 lb, MASS, false",
        "no more than two thousand pounds, 2000 kg, MASS, false",
        "within fifteen hundred millimetres, 1.5 m, LENGTH, true",
        "no more than sixty percent, 60 %, SHARE, true",
        "no more than twenty-five percent, 25 %, SHARE, true",
        "no more than twenty-five percent, 20 %, SHARE, false",
        "no more than nineteen kilograms, 19 kg, MASS, true",
        "no more than one and a half tonnes, 1.5 t, MASS, true",
        "no more than 2000 pounds, 907 kg, MASS, true",
        "no more than 2000 pounds, 907.2 kg, MASS, true",
        "no more than 2000 pounds, 907.5 kg, MASS, false",
        "no more than 2000 pounds, 908 kg, MASS, false",
        "no more than 2000 pounds, 1 t, MASS, false",
        "never less than 55 lb, 25 kg, MASS, true",
        "no more than 2449 kg, 2.4 t, MASS, false",
        "no more than 2450 kg, 2.45 t, MASS, true",
        "no more than 2 tonnes, 2 t, MASS, true",
        "no more than two tonnes, 2 kg, MASS, false",
        "no more than 2 tons, 2 t, MASS, true",
        "no more than 2 tons, 1814 kg, MASS, true",
        "no more than 2 tons, 2 kg, MASS, false",
        "at 100 km/h, 62 mph, SPEED, true",
        "at 60 mph, 60 km/h, SPEED, false",
        "at 55 miles per hour, 55 mph, SPEED, true",
        "at 55 miles per hour, 55 km/h, SPEED, false",
        "at 100 kilometres per hour, 100 km/h, SPEED, true",
        "8000 fpm at most, 40.64 m/s, SPEED, true",
        "8000 fpm at most, 8000 m/s, SPEED, false",
        "within seven inches of it, 7 in, LENGTH, true",
        "within seven inches of it, 7 mm, LENGTH, false",
        "102 in wide, 102 in, LENGTH, true",
        "102 in wide, 102 mm, LENGTH, false",
        "2.5 in any State, 2.5 m, LENGTH, true",
        "a pressure of 35 psi, 35 psi, PRESSURE, true",
        "a pressure of 35 psi, 35 kPa, PRESSURE, false",
        "a force of 20 kN, 20 kN, FORCE, true",
        "a force of 20 kN, 20 N, FORCE, false",
        "as much as 25 percent, 25 %, SHARE, true",
        "as much as 25 kg, 25 %, SHARE, false",
        "20 degrees or more, 20 deg, ANGLE, true",
        "20 degrees or more, 20 %, SHARE, false",
        "below 45 degrees, 45 degC, TEMPERATURE, true",
        "below 45 °C, 45 degC, TEMPERATURE, true",
        "below 45 °F, 45 degC, TEMPERATURE, false",
        "a deceleration of 0.8g, 0.8, COUNT, true",
        "a mass of 0.8 kg, 0.8, COUNT, false",
        "fused at 3 a day, 3 A, CURRENT, true",
        "fused at 30 A, 30 A, CURRENT, true",
        "fused at 30 V, 30 A, CURRENT, false",
        "6 litres a day, 6 L, VOLUME, true",
        "6 gallons a day, 6 L, VOLUME, false",
        "15 gallons, 68 L, VOLUME, true"
    })
    void theUnitBesideItHasToComeToTheSame(String text, String value, Dimension dimension, boolean found) {
        assertEquals(found, QuotedNumbers.name(text, value, dimension));
    }

    @Test
    void whatTheQuoteSaysInsteadIsTold() {
        assertEquals(
                Optional.of("2000 pounds"),
                QuotedNumbers.otherwise("no more than 2000 pounds", "2000 kg", Dimension.MASS));
        assertEquals(Optional.empty(), QuotedNumbers.otherwise("no more than 2000 pounds", "900 kg", Dimension.MASS));
    }
}
