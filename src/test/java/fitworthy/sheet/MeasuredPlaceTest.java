package fitworthy.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is taped without a tolerance is as sure as any place of a sheet that is given none: 50 mm. */
class MeasuredPlaceTest {

    @ParameterizedTest
    @CsvSource({
        "3929 mm, true",
        "3931 mm, false",
        "3231 mm, true",
        "3229 mm, false",
        "3881 mm +/- 0 mm, false",
        "3879 mm +/- 0 mm, true"
    })
    void isMeantWithinTheSpreadOfTheWordsAndOfATape(String tape, boolean meant) {
        Map<String, String> words = Map.of("at.x", "about 3580 mm +/- 300 mm");
        Map<String, String> shelf = Map.of("at.x", tape);
        assertEquals(
                meant,
                MeasuredPlace.isMeant(
                        "behind the axle",
                        field -> words.getOrDefault(field.toString(), ""),
                        field -> shelf.getOrDefault(field.toString(), "")));
    }
}
