package fitworthy.printout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Sheets;
import fitworthy.search.Change;
import fitworthy.source.FaultsException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a trip asks of a part that is left out. */
class LostWordsTest {

    private static final String SNORKEL =
            "fitments: [{name: Snorkel, kind: snorkel, mass: 6 kg, at: {x: 0 mm, y: 700 mm, z: 1500 mm}},\n"
                    + "  {name: Box, kind: other, mass: 6 kg, at: {x: 0 mm, y: 700 mm, z: 1500 mm}}]\n";

    private static List<String> lost(String trip, String part) throws FaultsException {
        return LostWords.of(
                Sheets.plainWith(SNORKEL + "trip: {" + trip + "}"), List.of(new Change.Drop(part, List.of())));
    }

    @Test
    void aSnorkelIsLostForDustAndWaterOfTheTripAlone() throws FaultsException {
        assertEquals(List.of("lost for heavy dust"), lost("dust: heavy", "Snorkel"));
        assertEquals(
                List.of("lost for heavy dust and 1 mm of water"), lost("dust: heavy, water-depth: 1 mm", "Snorkel"));
        assertEquals(List.of("lost for 600 mm of water"), lost("dust: none, water-depth: 600 mm", "Snorkel"));
        assertEquals(List.of(), lost("dust: none, water-depth: 0 mm", "Snorkel"));
    }

    @Test
    void anotherPartIsNot() throws FaultsException {
        assertEquals(List.of(), lost("dust: heavy, water-depth: 600 mm", "Box"));
    }
}
