package fitworthy.printout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Arrangement;
import fitworthy.book.Severity;
import fitworthy.document.Json;
import fitworthy.printout.explain.ExplanationPrintout;
import fitworthy.printout.json.JsonPrintout;
import fitworthy.printout.screen.TextPrintout;
import fitworthy.printout.words.GuessWords;
import fitworthy.source.FaultsException;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.function.Consumer;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;

/** How guesses are printed: which they are, whose, and what they bring of a spread. */
class GuessesPrintedTest {

    /** 2560 kg against 2550 kg; the spread sqrt(60^2 + 25^2) = 65 kg of 3600 + 144 + 81 + 400 = 4225. */
    private static final String OVER =
            """
            vehicle: {ratings: {gvm: about 2550 kg +/- 60 kg}}
            cargo:
              - {name: Luggage, mass: about 40 kg +/- 9 kg, at: {x: usual 3000 mm +/- 0 mm, y: 0 mm, z: 900 mm}}
              - {name: Tent, mass: usual 60 kg +/- 12 kg, at: {x: 3000 mm, y: 0 mm, z: 900 mm}}
              - {name: Water, mass: 0 kg +/- 20 kg, at: {x: 3000 mm, y: 0 mm, z: 900 mm}}
            """;

    private static Advice advice(String changes) throws FaultsException {
        return Adviser.advise(Books.engine(), Sheets.plainWith(changes));
    }

    private static String printed(Consumer<PrintWriter> printing) {
        StringWriter out = new StringWriter();
        printing.accept(new PrintWriter(out));
        out.toString().lines().forEach(line -> assertTrue(line.length() <= 80, line));
        return out.toString().replaceAll("\\s+", " ");
    }

    private static String explained(String changes, String rule) throws FaultsException {
        Advice advice = advice(changes);
        return printed(out -> ExplanationPrintout.print(out, advice, rule));
    }

    private static void assertSays(String page, String... texts) {
        for (String text : texts) {
            assertTrue(page.contains(text), () -> "'" + text + "' in " + page);
        }
    }

    @Test
    void aFindingTellsWhoseGuessesAndWhatTheyBring() throws FaultsException {
        Advice advice = advice(OVER);
        assertSays(
                printed(out -> new TextPrintout(out, TextPrintout.Painter.NONE, false).print(advice, Severity.NOTE)),
                "On guesses, too close to call whether it is so: Loaded mass is above the GVM",
                "Guessed, find out first: gross vehicle mass (85 % of the +/- 65 kg), Tent: its mass (the book's usual"
                        + " figure), Luggage: its mass.");
    }

    @Test
    void aProgramReadsEachGuessWithItsMarkAndItsShare() throws FaultsException, IOException {
        StringWriter out = new StringWriter();
        JsonPrintout.print(new PrintWriter(out), advice(OVER), Severity.NOTE);
        JsonNode finding = StreamSupport.stream(
                        Json.MAPPER.readTree(out.toString()).get("findings").spliterator(), false)
                .filter(one -> one.get("id").asText().equals("mass.gvm-over"))
                .findFirst()
                .orElseThrow();
        assertEquals(
                Json.MAPPER.readTree(
                        """
                        [{"field": "vehicle.ratings.gvm", "mark": "about", "share-of-spread": 0.852},
                         {"field": "cargo.Luggage.mass", "mark": "about", "share-of-spread": 0.019},
                         {"field": "cargo.Tent.mass", "mark": "usual", "share-of-spread": 0.034}]
                        """),
                finding.get("guesses"));
    }

    @Test
    void anExplanationMarksItsFigures() throws FaultsException {
        assertSays(
                explained(OVER, "mass.gvm-over"),
                "vehicle, everything aboard: found, on guesses",
                "Guessed, find out first: gross vehicle mass (85 % of the +/- 65 kg), Tent: its mass (the",
                "GVM about 2550 kg",
                "Luggage (about, at usual) 40.0 9.0",
                "Tent (usual) 60.0 12.0",
                "Water 0.0 20.0");
        assertSays(
                explained("vehicle: {ratings: {gvm: usual 2900 kg}}", "mass.gvm-over"),
                "in order if the guesses hold",
                "Guessed, find out first: gross vehicle mass (the book's usual figure, 100 % of the",
                "GVM usual 2900 kg");
        assertSays(
                explained("vehicle: {stability-control: about no, ratings: {gvm: 2900 kg}}", "mass.gvm-over"),
                "everything aboard: in order load",
                "GVM 2900 kg");
    }

    @Test
    void whatIsInOrderIfGuessesHoldNamesThoseOfTheBook() throws FaultsException {
        Advice advice = advice("cargo: [{name: Luggage, mass: usual 60 kg}]");
        assertEquals(
                "the book's usual figures: Luggage: its mass",
                GuessWords.names(Arrangement.of(advice).held().get(0)));
        assertSays(
                printed(out -> new TextPrintout(out, TextPrintout.Painter.NONE, false).print(advice, Severity.NOTE)),
                "cargo.Luggage.mass: its mass, the book's usual figure, for ");
    }
}
