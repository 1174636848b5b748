package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What cases of a book say of what rests on guesses, on a copy of the shipped book that only keeps its water topic. */
class CasesOnGuessesTest {

    /** 132 L for 2 people over 11.1 days are 5.9 L a person and day. */
    private static final String CASE =
            """
              - name: Days that somebody guesses
                sheet: {trip: {days: about 11.1 days +/- 0.1 days}}
                expect:
                  - {id: water.short, guesses: [trip.days]}
                  - {id: water.no-reserve}
                held: []
            """;

    @TempDir
    private static Path folder;

    private static Path rules;
    private static String cases;

    @BeforeAll
    static void copyOneTopic() throws IOException {
        rules = Books.copyOf("water", folder.resolve("rules"));
        String all = Files.readString(rules.resolve("water/cases.yaml"));
        cases = all.substring(0, all.indexOf("cases:"));
    }

    /** Runs the case alone with one text put in place of another. */
    private static Ran with(String old, String now) throws IOException {
        return of(CASE.replace(old, now));
    }

    private static Ran of(String text) throws IOException {
        Files.writeString(rules.resolve("water/cases.yaml"), cases + "cases:\n" + text);
        return Ran.of("cases", "--rules", rules.toString());
    }

    @Test
    void isTold() throws IOException {
        assertEquals(0, with("held: []", "held: []").code());
        assertEquals(0, with("days: about", "days: usual").code());
        with("held: []", "held: [water.not-potable]")
                .says("water.not-potable: expected to be in order only if guesses hold, but it was met: [");
        with("11.1", "10")
                .says("water.short: expected, but it was met if the guesses hold of trip.days: [drinking water");
        of(CASE.replace("+/- 0.1 days", "+/- 0.1 days, coldest: about 5 degC").replace("[trip.days]", "[trip.coldest]"))
                .says("water.short: guesses expected trip.coldest, got trip.days");
    }

    @Test
    void aGuessThatTheSheetDoesNotHaveIsRefused() throws IOException {
        Ran ran = with("[trip.days]", "[trip.day]");
        assertEquals(3, ran.code());
        assertTrue(
                (ran.out() + ran.err()).contains("names a guess of 'trip.day', but its sheet guesses no such figure"),
                ran.out() + ran.err());
        assertTrue(
                (ran.out() + ran.err()).contains("right: a field of the case's sheet whose value is written with"),
                ran.out() + ran.err());
    }
}
