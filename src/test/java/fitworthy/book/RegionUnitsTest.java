package fitworthy.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.quantity.Dimension;
import fitworthy.source.FaultsException;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What those who measure otherwise are told of the units that are printed. */
class RegionUnitsTest {

    private static final Pattern PAIR = Pattern.compile(
            "([0-9.]+) (kg|lb|in|mm|kPa|psi|L|US gal|km|miles?) (?:are|is) ([0-9.]+) (kg|lb|mm|psi|US gal|miles?)");

    /** Against the exact units, to what a last digit may be off. */
    @ParameterizedTest
    @CsvSource({"us, 6", "us-ca, 6", "uk, 1"})
    void theyConvertAsTheUnitsDo(String region, int pairs) throws FaultsException {
        Book book = Books.shipped();
        String units = book.smallPrint(region).substring(book.cover().caution().length());
        assertEquals(
                pairs,
                PAIR.matcher(units)
                        .results()
                        .peek(RegionUnitsTest::convertsRightly)
                        .count(),
                units);
    }

    private static void convertsRightly(MatchResult pair) {
        double one = Double.parseDouble(pair.group(1)) * size(pair.group(2));
        double other = Double.parseDouble(pair.group(3)) * size(pair.group(4));
        assertTrue(Math.abs(one / other - 1) < 0.005, pair.group());
    }

    private static double size(String unit) {
        return Dimension.size(unit.replaceFirst("miles?", "mi"));
    }

    @Test
    void ratingsAreCalledAsOnPlatesThere() throws FaultsException {
        Book book = Books.shipped();
        assertTrue(book.smallPrint("us-tx").contains("GVWR"), book.smallPrint("us-tx"));
        assertTrue(book.smallPrint("uk").contains("MAM"), book.smallPrint("uk"));
    }

    @Test
    void theUnionLeavesTowingToItsStates() throws FaultsException {
        assertTrue(Books.shipped().smallPrint("eu").contains("the authority of the member state"));
    }

    @Test
    void whoMeasuresAsIsPrintedIsToldNothing() throws FaultsException {
        Book book = Books.shipped();
        assertEquals(book.cover().caution(), book.smallPrint("au-nsw"));
        assertEquals(book.cover().caution(), book.smallPrint("nz"));
    }
}
