package fitworthy.printout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.book.Severity;
import fitworthy.document.HtmlLayout;
import fitworthy.document.Paper;
import fitworthy.printout.letter.Letters;
import fitworthy.printout.screen.TextPrintout;
import fitworthy.source.FaultsException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A load or a limit reads alike in every printout of a sheet, a load never lighter and a limit never higher than it is. */
class OneRoundingTest {

    /** Everything that is printed of the plain wagon with so much luggage, which weighs 2460 kg without any. */
    private static String printed(String luggage, String gvm) throws FaultsException {
        String changes =
                "cargo: [{name: Luggage, mass: " + luggage + " +/- 0 kg}]\nvehicle: {ratings: {gvm: " + gvm + "}}\n";
        Advice advice = Adviser.advise(Books.engine(), Sheets.plainWith(changes));
        StringWriter text = new StringWriter();
        new TextPrintout(new PrintWriter(text), TextPrintout.Painter.NONE, true).print(advice, Severity.NOTE);
        List<String> pages = new ArrayList<>(
                List.of(text.toString(), HtmlLayout.html(Letters.of(advice).report(""))));
        for (Readers readers : Readers.values()) {
            pages.add(HtmlLayout.html(
                    Printed.of(Sheets.plainWith(changes), readers, Paper.A4).report()));
        }
        return pages.stream()
                .map(page -> page.replaceAll("(?s)<head>.*</head>|<[^>]*>", " ").replaceAll("\\s+", " "))
                .collect(Collectors.joining(" "));
    }

    /** What stands there in whole kilograms between two numbers. */
    private static Set<Integer> whole(String printed, int from, int to) {
        Set<Integer> found = new TreeSet<>();
        Matcher number =
                Pattern.compile("(?<![0-9.])([0-9]{4})(?![0-9]|\\.[0-9])").matcher(printed);
        while (number.find()) {
            int value = Integer.parseInt(number.group(1));
            if (value >= from && value <= to) {
                found.add(value);
            }
        }
        return found;
    }

    @Test
    void aLoadThatIsKeptIsNeverLighterThanItIs() throws FaultsException {
        for (String luggage : Set.of("60.2 kg", "60.5 kg", "60.9 kg", "61 kg")) {
            assertEquals(Set.of(2521), whole(printed(luggage, "2700 kg"), 2518, 2523), luggage);
        }
    }

    @Test
    void aLoadThatIsTooMuchIsNoneTheLighter() throws FaultsException {
        for (String luggage : Set.of("60.2 kg", "60.5 kg", "60.9 kg", "61 kg")) {
            assertEquals(Set.of(2521), whole(printed(luggage, "2400 kg +/- 20 kg"), 2518, 2523), luggage);
        }
    }

    @Test
    void aLimitIsNeverHigherThanItIs() throws FaultsException {
        for (String gvm : Set.of("2700.2 kg", "2700.5 kg", "2700.9 kg")) {
            // Held against the light class the GVM is what must not look less.
            String printed = printed("60 kg", gvm).replaceAll("(planned|heavy-class\\)) 2701 kg", "");
            assertEquals(Set.of(2700), whole(printed, 2698, 2703), gvm);
            assertTrue(printed.contains("180 kg"), "what is left lies between");
        }
    }

    /** 180.4 kg are left of it: neither less on the load nor more on the limit makes 180 of what lies between. */
    @Test
    void bothHaveOneFigureWhereNeitherIsWhole() throws FaultsException {
        String printed = printed("60.4 kg", "2700.8 kg").replaceAll("(planned|heavy-class\\)) 2701 kg", "");
        assertEquals(Set.of(2521), whole(printed, 2518, 2523));
        assertEquals(Set.of(2700), whole(printed, 2698, 2703));
        assertTrue(printed.contains("179 kg"), "what is left lies between");
    }
}
