package fitworthy.printout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Margin;
import fitworthy.book.Severity;
import fitworthy.printout.Printed;
import fitworthy.printout.words.Wording;
import fitworthy.source.FaultsException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the terminal shows: every margin, eighty columns wide, and colour only where it is asked for. */
class TextPrintoutTest {

    private static String printed(Advice advice, TextPrintout.Painter painter) {
        StringWriter text = new StringWriter();
        new TextPrintout(new PrintWriter(text), painter, true).print(advice, Severity.NOTE);
        return text.toString();
    }

    private static Advice loaded(int loadings, String name) throws FaultsException {
        return Adviser.advise(
                Books.engine(),
                Sheets.plainWith(IntStream.rangeClosed(1, loadings)
                        .mapToObj(number -> "- {name: " + name + number + ", filled: {Main tank: " + number + " %}}\n")
                        .collect(Collectors.joining("", "cases:\n", ""))));
    }

    @ParameterizedTest
    @CsvSource({
        "1, home",
        "3, home",
        "4, home",
        "5, canopy off ",
        "7, home",
        "2, without the trailer and with everybody aboard ",
        "9, along the coast with the canopy off and both tanks full ",
        "12, awordwithoutanyspacethatisfartoolongforacolumnandfortheheadingofatable"
    })
    void everyMarginOfEveryLoadingIsPrinted(int loadings, String name) throws FaultsException {
        Advice advice = loaded(loadings, name);
        String text = printed(advice, TextPrintout.Painter.NONE);
        text.lines().forEach(line -> assertTrue(line.length() <= 80, line));
        List<String> table = text.lines()
                .dropWhile(line -> !line.startsWith("MARGIN TO EACH LIMIT"))
                .toList();
        List<Margin> margins = Arrangement.of(advice).margins();
        assertFalse(margins.isEmpty());
        for (Margin margin : margins) {
            List<String> figures = table.stream()
                    .filter(line -> line.startsWith(margin.limit() + " "))
                    .flatMap(line -> List.of(
                            line.substring(margin.limit().length()).strip().split(" {2,}"))
                            .stream())
                    .toList();
            assertEquals(
                    advice.loadings().stream()
                            .map(loading -> Wording.margin(
                                    margin.outcomes().get(loading.loadCase().name())))
                            .toList(),
                    figures);
        }
    }

    @Test
    void twoBlocksAreAsLookedAt() throws FaultsException {
        assertEquals(
                """
                MARGIN TO EACH LIMIT      canopy off 1  canopy off 2  canopy off 3  canopy off 4
                front axle: axle limit          131 kg        131 kg        131 kg        131 kg
                rear axle: axle limit           614 kg        614 kg        613 kg        613 kg
                vehicle: GVM                    546 kg        545 kg        545 kg        544 kg

                MARGIN TO EACH LIMIT                                  canopy off 5  canopy off 6
                front axle: axle limit                                      131 kg        131 kg
                rear axle: axle limit                                       612 kg        612 kg
                vehicle: GVM                                                543 kg        543 kg
                """,
                printed(loaded(6, "canopy off "), TextPrintout.Painter.NONE)
                        .lines()
                        .dropWhile(line -> !line.startsWith("MARGIN TO EACH LIMIT"))
                        .limit(9)
                        .collect(Collectors.joining("\n", "", "\n")));
    }

    @Test
    void paintTakesNoRoom() throws FaultsException {
        Advice advice = Printed.scenario("overloaded").advice();
        String painted = printed(advice, (severity, word) -> "<" + severity.ordinal() + word + ">");
        assertTrue(painted.contains("<0STOP     >"), painted);
        assertEquals(printed(advice, TextPrintout.Painter.NONE), painted.replaceAll("<\\d(\\w+ *)>", "$1"));
    }

    /** The book records no days of water in reserve for the United Kingdom: that is said, and nobody is sent anywhere. */
    @Test
    void aGapOfTheBookIsToldAsOne() throws FaultsException {
        String text = printed(
                        Adviser.advise(
                                Books.engine(),
                                Sheets.plainWith(
                                        """
                        region: uk
                        tanks: [{name: Can, liquid: water, capacity: 40 L, fill: 100 %, stock: no, mass: 1 kg,
                          at: {x: 3 m, y: 0 m, z: 1 m}}]
                        trip: {days: 2 days, people: 2, water-use: 8 L}
                        """)),
                        TextPrintout.Painter.NONE)
                .replaceAll("\\s+", " ");
        assertTrue(
                text.contains(
                        "The rule book has no value for these in the region that the sheet names; another region may have one: - "),
                text);
        assertTrue(text.contains("the rule book has no value recorded for United Kingdom on"), text);
        assertTrue(text.contains("Needed for: water.no-reserve"), text);
        assertFalse(text.contains("authority"), text);
        assertFalse(text.contains("Find it: ."), text);
    }
}
