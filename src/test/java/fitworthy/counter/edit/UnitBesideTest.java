package fitworthy.counter.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A figure as it is typed into a box beside which its unit stands. */
class UnitBesideTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "kg | 178 | 178 kg",
                "kg | 178,5 | 178,5 kg",
                "mm | -500 | -500 mm",
                "mm | \u2212500 | \u2212500 mm",
                "kg | 178 +/- 5 | 178 kg +/- 5 kg",
                "kg | 178 kg +/- 5 | 178 kg +/- 5 kg",
                "kg | 178 +/- 5 kg | 178 kg +/- 5 kg",
                "kg | 178kg \u00b1 5kg | 178 kg +/- 5 kg",
                "kg | 178 kg +/- 5 kg | 178 kg +/- 5 kg",
                "kg | 178 +/- 3 % | 178 kg +/- 3%",
                "kg | about 2850 +/- 150 | about 2850 kg +/- 150 kg",
                "km/h | 100 | 100 km/h"
            })
    void getsTheUnitBesideItsBox(String unit, String typed, String written) {
        assertEquals(written, UnitBeside.of(unit, typed));
    }

    /** Another unit than the one beside the box may be meant for both, and words are no figure. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "mm | 1.8 m",
                "mm | 1.8 m +/- 5",
                "mm | 1800 +/- 0.5 cm",
                "kg | at most 3000",
                "kg | ask",
                "kg | usual",
                "kg | about",
                "'' | 178",
                "kg | 178 +/-"
            })
    void staysAsItWasTypedWhereAnotherIsMeant(String unit, String typed) {
        assertEquals(typed, UnitBeside.of(unit, typed));
    }
}
