package fitworthy.printout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Adviser;
import fitworthy.source.FaultsException;
import org.junit.jupiter.api.Test;

/** On the plain wagon, whose 80 L last for 666 km. */
class TripAnswersTest {

    private static final String ALONE = "Fuel: enough (300 km, range 666 km).";

    private static String answers(String changes) throws FaultsException {
        return TripAnswers.of(Adviser.advise(Books.engine(), Sheets.plainWith(changes)));
    }

    @Test
    void fuelIsHeldAgainstTheLongestLeg() throws FaultsException {
        assertEquals("Fuel: enough (666 km, range 666 km).", fuel("666 km"));
        assertEquals("Fuel: not enough (700.0 km, range 666.6 km).", fuel("700 km"));
    }

    /** Two people for so many days on 60 L. */
    @Test
    void waterIsToldByPersonAndDay() throws FaultsException {
        String water = "tanks: [{name: Water, liquid: water, capacity: 60 L, fill: 100 %, stock: yes,"
                + " mass: 0 kg, at: {x: 2000 mm, y: 0 mm, z: 600 mm}}]\ntrip: {people: 2, days: ";
        assertEquals(ALONE + " Water: enough (6.0 L a person and day, at least 6.0 L).", answers(water + "5 days}"));
        assertEquals(
                ALONE + " Water: not enough (5.0 L a person and day, at least 6.0 L).", answers(water + "6 days}"));
    }

    /** 60 L for two people who use 7.5 L each a day are 4 days; how long they are on their own nobody said. */
    @Test
    void waterSaysHowLongItLastsWhereNobodySaidHowLongItHasTo() throws FaultsException {
        String water = "tanks: [{name: Water, liquid: water, capacity: 60 L, fill: 100 %%, stock: yes,"
                + " mass: 0 kg, at: {x: 2000 mm, y: 0 mm, z: 600 mm}}]\ntrip: {people: 2, parked: 4 days%s}\n";
        String lasts =
                " Water: lasts about 4.0 days at 7.5 L a person and day; %s in a place, whether it is between supplies"
                        + " is not known; missing: Trip: days between places with supplies.";
        String unknown = water.formatted(", water-use: 7.5 L, days: unknown");
        assertEquals(ALONE + lasts.formatted("enough for 4 days"), answers(unknown));
        assertEquals(
                ALONE + lasts.formatted("not enough for 4.1 days"), answers(unknown.replace("4 days", "4.1 days")));
        assertEquals(
                ALONE + " Water: not known; missing: Trip: days between places with supplies.",
                answers(water.formatted(", water-use: unknown, days: unknown")));
    }

    @Test
    void whatIsMissingIsToldAndNothingIsSaidOfWhatNobodyAsks() throws FaultsException {
        assertEquals(
                "Fuel: not known; missing: what it burns without a trailer, loaded.",
                answers("trip: {longest-leg: 600 km}\nvehicle: {engine: {consumption: unknown}}"));
        assertEquals(ALONE, answers("title: Plain"));
    }

    @Test
    void whatRestsOnAGuessIsMarked() throws FaultsException {
        assertEquals("Fuel: enough if the guesses hold (500 km, range 666 km).", fuel("about 500 km"));
    }

    private static String fuel(String leg) throws FaultsException {
        return answers("trip: {longest-leg: " + leg + "}");
    }
}
