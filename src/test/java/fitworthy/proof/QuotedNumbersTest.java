package fitworthy.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.quantity.Dimension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuotedNumbersTest {

    /** Values in the unit used inside: kg, m, a share, h. */
    @ParameterizedTest
    @CsvSource({
        "'a gross weight of 4,500 pounds or less', 2041.165665, MASS, true",
        "'up to 3 500 kg', 3500, MASS, true",
        "'between 2001kg and 2500kg', 2500, MASS, true",
        "'between 2001kg and 2500kg', 2499, MASS, false",
        "'more than 25 cm beyond', 0.25, LENGTH, true",
        "'2.55', 2.55, LENGTH, true",
        "'one and a half times the unladen mass', 1.5, SHARE, true",
        "'one times the unladen mass', 1.5, SHARE, false",
        "'less than twice the sum', 2, COUNT, true",
        "'a 4 day reserve', 96, TIME, true",
        "'a 5 day reserve', 96, TIME, false",
        "'less than zero', 0, TEMPERATURE, true",
        "'as the maker says', 0.25, LENGTH, false"
    })
    void aNumberIsFoundInWhateverUnit(String text, double value, Dimension dimension, boolean found) {
        assertEquals(found, QuotedNumbers.name(text, value, dimension));
    }
}
