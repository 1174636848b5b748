package fitworthy.printout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Adviser;
import fitworthy.source.FaultsException;
import org.junit.jupiter.api.Test;

/** On the plain wagon, whose 80 L last for 666 km. */
class TripAnswersTest {

    private static final String ALONE = "Fuel: enough (300 km, range 666 km at 12.0 L/100km).";

    private static String answers(String changes) throws FaultsException {
        return TripAnswers.of(Adviser.advise(Books.engine(), Sheets.plainWith(changes)));
    }

    @Test
    void fuelIsHeldAgainstTheLongestLeg() throws FaultsException {
        assertEquals("Fuel: enough (666 km, range 666 km at 12.0 L/100km).", fuel("666 km"));
        assertEquals("Fuel: not enough (700.0 km, range 666.6 km at 12.0 L/100km).", fuel("700 km"));
    }

    /** Two people for so many days on 60 L; what is left for a delay hangs on how much they use. */
    @Test
    void waterIsToldByPersonAndDay() throws FaultsException {
        String water = "tanks: [{name: Water, liquid: water, capacity: 60 L, fill: 100 %, stock: yes,"
                + " mass: 0 kg, at: {x: 2000 mm, y: 0 mm, z: 600 mm}}]\ntrip: {people: 2, days: ";
        assertEquals(
                ALONE
                        + " Water: enough for the days (6.0 L a person and day); whether for a delay is not"
                        + " known; missing: Trip: what each person uses a day to drink, cook and wash.",
                answers(water + "5 days}"));
        assertEquals(
                ALONE + " Water: not enough (5.0 L a person and day, at least 6.0 L).", answers(water + "6 days}"));
    }

    /** Two people with 70 L who use 7 L each a day: 5 days, of which 3 are to be left for a delay. */
    @Test
    void waterForTheDaysAloneIsNotCalledEnoughForADelay() throws FaultsException {
        String water = "tanks: [{name: Water, liquid: water, capacity: 70 L, fill: 100 %%, stock: yes,"
                + " mass: 0 kg, at: {x: 2000 mm, y: 0 mm, z: 600 mm}}]\ntrip: {people: 2, days: %s, water-use: %s}\n";
        assertEquals(
                ALONE + " Water: enough (17.5 L a person and day, at least 6.0 L).",
                answers(water.formatted("2 days", "7 L")));
        assertEquals(
                ALONE + " Water: enough for the days (16.6 L a person and day); too little for a delay"
                        + " (0.1 days short).",
                answers(water.formatted("2.1 days", "7 L")));
        assertEquals(
                ALONE + " Water: enough for the days (7.0 L a person and day); nothing for a delay"
                        + " (3.0 days short).",
                answers(water.formatted("5 days", "7 L")));
        assertEquals(
                ALONE + " Water: not enough at the planned use (7.0 L a person and day, planned 7.5 L).",
                answers(water.formatted("5 days", "7.5 L")));
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
        assertEquals(
                "Fuel: enough if the guesses hold (500 km +/- 50 km, range 666 km at 12.0 L/100km).",
                fuel("about 500 km"));
    }

    /** 2300 kg at 5.2 +/- 1.6 L/100km for each tonne. */
    @Test
    void whatIsBurntIsToldAndThatItIsTheBooksFigure() throws FaultsException {
        assertEquals(
                "Fuel: enough if the guesses hold (300 km, range 668 km +/- 206 km at about 12.0 L/100km +/- 3.7, the book's"
                        + " usual figure).",
                answers("vehicle: {engine: {consumption: usual}}"));
    }

    /** 4.5 +/- 2 A for 8 +/- 3 h a day are 36 +/- 20.9 Ah; three days of that are 108 +/- 62.8 Ah, and 90 % can be used. */
    @Test
    void guessedDrawsAreAnsweredWithTheirSpreadAndWhatDecides() throws FaultsException {
        String parked =
                """
                fitments: [{name: Second battery, kind: battery, chemistry: lithium, capacity: %s, voltage: 12 V, mass: 0 kg}]
                circuits: [{name: Fridge, voltage: 12 V, current: usual, hours: usual, battery: second, short-time: no}]
                trip: {parked: 3 days}
                """;
        String fridge =
                "; what decides: Fridge: what it draws at full load, at that voltage; Fridge: hours a day at full load";
        assertEquals(
                ALONE + " Power: too close to call (108.0 % +/- 62.8 % of the second battery, at most 90.0 %" + fridge
                        + ").",
                answers(parked.formatted("100 Ah")));
        assertEquals(
                ALONE + " Power: enough if the guesses hold (54.0 % +/- 31.4 % of the second battery, at most 90.0 %).",
                answers(parked.formatted("200 Ah")));
        assertEquals(
                ALONE
                        + " Power: not enough if the guesses hold (216.0 % +/- 125.6 % of the second battery, at most 90.0 %).",
                answers(parked.formatted("50 Ah")));
    }

    @Test
    void powerOfABatteryThatNobodyTellsOfIsAskedFor() throws FaultsException {
        String told = answers(
                "circuits: [{name: Fridge, voltage: 12 V, current: usual, hours: usual, battery: second, short-time: no}]\n"
                        + "trip: {parked: 3 days}\n");
        assertTrue(told.startsWith(ALONE + " Power: not known; missing: the battery that circuits hang on"), told);
    }

    private static String fuel(String leg) throws FaultsException {
        return answers("trip: {longest-leg: " + leg + "}");
    }
}
