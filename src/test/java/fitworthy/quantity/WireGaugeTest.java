package fitworthy.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sections as 33 CFR 183.425, table 5, gives them in mm2 for each size, which it rounds. */
class WireGaugeTest {

    @ParameterizedTest
    @CsvSource({
        "0.8, 18",
        "1.3, 16",
        "2, 14",
        "3.3, 12",
        "5, 10",
        "8, 8",
        "13, 6",
        "21, 4",
        "26.6, 3",
        "33.6, 2",
        "42, 1",
        "53, 1/0",
        "67.4, 2/0",
        "85, 3/0",
        "107, 4/0"
    })
    void eachSizeOfTheTableHasItsNumber(double section, String number) {
        assertEquals(number + " AWG", WireGauge.of(section).orElseThrow());
    }

    /** Gauge 2 has 33.63 mm2, gauge 1 42.41. */
    @Test
    void noGaugeIsThinnerThanWhatItIsSaidOfNorMuchThicker() {
        assertEquals("2 AWG", WireGauge.of(33.62).orElseThrow());
        assertEquals("", WireGauge.of(33.7).orElse(""));
        assertEquals("", WireGauge.of(40.0).orElse(""));
        assertEquals("1 AWG", WireGauge.of(40.02).orElseThrow());
    }

    @Test
    void metricSizesThatLieBetweenGaugesHaveNone() {
        for (double metric : new double[] {6, 25, 35, 50, 70, 95}) {
            assertEquals("", WireGauge.of(metric).orElse(""), () -> metric + " mm2");
        }
    }
}
