package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.source.FaultsException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an ordinary sheet leaves out is asked where it could decide, and not elsewhere. */
class LeftUnsaidTest {

    private static final String CANOPY = "fitments: [{name: Canopy, kind: canopy, mass: %s kg +/- 0 kg, front: 1950 mm,"
            + " length: 1800 mm, at: {x: 2850 mm, y: 0 mm, z: 1000 mm}%s}]";
    private static final String BOX_ON_RACK =
            "cargo: [{name: %s, mass: %s kg +/- 0 kg, roof: yes, at: {x: 1800 mm, y: 0 mm,"
                    + " z: 1900 mm}}]%nfitments: [{name: Rack, kind: roof-rack, mass: 20 kg +/- 0 kg, roof: yes, at: {x: 1800 mm,"
                    + " y: 0 mm, z: 1850 mm}}]";
    private static final String PART =
            "fitments: [{name: Part, kind: %s, mass: 9 kg, at: {x: 3900 mm, y: 0 mm, z: %s mm}}]";
    private static final String SOLAR =
            "fitments: [{name: Solar, kind: solar-panel, mass: 9 kg, power: 200 W, done: %s, at:"
                    + " {x: 2800 mm, y: 0 mm, z: 1400 mm}}, {name: Regulator, kind: charger, mass: 0 kg, fed-by: %s}]";
    private static final String CHARGER =
            "vehicle: {registered: %s}%nfitments: [{name: Charger, kind: charger, mass: 0 kg, fed-by: %s}]";

    @ParameterizedTest
    @CsvSource({
        "251, '', true",
        "250, '', false",
        "251, ', done: yes', false",
        "251, ', fixing: {points: 4, limit: 200 kg, loaded: 251 kg}', false",
        "251, ', removable: yes', false"
    })
    void howACanopyIsFixed(String mass, String more, boolean asked) throws FaultsException {
        assertAsked(asked, CANOPY.formatted(mass, more), "fitments.Canopy.fixing-stated");
    }

    @ParameterizedTest
    @CsvSource({"Box, 31, true", "Box, 30, false"})
    void whatARackCarries(String name, String mass, boolean asked) throws FaultsException {
        assertAsked(asked, BOX_ON_RACK.formatted(name, mass), "fitments.Rack.carries");
    }

    @ParameterizedTest
    @CsvSource({"Roof tent, true", "Tent, false"})
    void whoSleepsOnTheRoof(String name, boolean asked) throws FaultsException {
        assertAsked(asked, BOX_ON_RACK.formatted(name, "20"), "trip.roof-sleepers");
        assertAsked(
                false,
                BOX_ON_RACK.formatted(name, "20") + "\ntrip: {roof-sleepers: 0 kg}",
                "vehicle.ratings.roof-at-rest");
    }

    @ParameterizedTest
    @CsvSource({"other, 650, true", "other, 651, false", "locker, 650, false"})
    void whatHangsLowest(String kind, String height, boolean asked) throws FaultsException {
        assertAsked(asked, PART.formatted(kind, height), "vehicle.low-points");
        assertAsked(false, PART.formatted(kind, height) + "\ntrip: {terrain: town}", "vehicle.low-points");
    }

    @ParameterizedTest
    @CsvSource({"no, sun, true", "yes, sun, false", "no, alternator, false"})
    void theVoltsOfPanels(String done, String fedBy, boolean asked) throws FaultsException {
        assertAsked(asked, SOLAR.formatted(done, fedBy), "fitments.Solar.open-circuit");
    }

    @ParameterizedTest
    @CsvSource({"2006-11-25, alternator, true", "2006-11-24, alternator, false", "2024-05-01, mains, false"})
    void whatStartsACharger(String registered, String fedBy, boolean asked) throws FaultsException {
        assertAsked(asked, CHARGER.formatted(registered, fedBy), "fitments.Charger.starts-by");
    }

    @ParameterizedTest
    @CsvSource({"alternator, true", "mains, false"})
    void whatTheAlternatorGives(String fedBy, boolean asked) throws FaultsException {
        assertAsked(asked, CHARGER.formatted("2024-05-01", fedBy), "vehicle.engine.alternator");
    }

    private static void assertAsked(boolean asked, String changes, String field) throws FaultsException {
        boolean found = Adviser.advise(Books.engine(), Sheets.plainWith(changes)).notAssessed().stream()
                .flatMap(check -> check.missing().stream())
                .anyMatch(missing -> missing.path().equals(field));
        assertEquals(asked, found, changes);
    }
}
