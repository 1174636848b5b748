package fitworthy.printout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.document.PlainLayout;
import fitworthy.printout.letter.Letters;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.QuantityText;
import fitworthy.source.FaultsException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A sheet in pounds: 1 lb is 0.45359237 kg exactly (international yard and pound agreement of 1959; from memory). */
class PoundsTest {

    private static Advice roof(String limit, String load) throws FaultsException {
        return Adviser.advise(
                Books.engine(),
                Sheets.plainWith(
                        """
                        vehicle: {ratings: {roof: %s}}
                        fitments:
                          - {name: Tent, kind: other, mass: %s, at: {x: 1900 mm, y: 0 mm, z: 1900 mm}, roof: yes}
                        """
                                .formatted(limit, load)));
    }

    private static List<String> found(Advice advice) {
        return advice.findings().stream()
                .map(finding -> finding.judged().id())
                .filter(id -> id.startsWith("mass.roof-"))
                .toList();
    }

    /** 500 lb are 226.796185 kg. */
    @ParameterizedTest
    @CsvSource({
        "500 lb, 500 lb, false",
        "500 lb, 226.796185 kg, false",
        "226.796185 kg, 500 lb, false",
        "500 lb, 226.7962 kg, true",
        "500 lb, 500.001 lb, true",
        "500 lb, 499.999 lb, false"
    })
    void theExactPoundsDecide(String limit, String load, boolean over) throws FaultsException {
        assertEquals(over, found(roof(limit, load + " +/- 0 kg")).contains("mass.roof-over"));
    }

    private static String compared(Advice advice) {
        Assessed roof = Stream.concat(advice.findings().stream().map(Assessed.class::cast), advice.met().stream())
                .filter(outcome -> outcome.judged().id().equals("mass.roof-over"))
                .findFirst()
                .orElseThrow();
        return Wording.comparison(roof.judged(), roof.comparison().orElseThrow());
    }

    @Test
    void aLimitIsPrintedAsTheSheetHasItToo() throws FaultsException {
        assertEquals(
                "load on the roof 227 kg (500 lb), roof limit 227 kg (500 lb): nothing to spare",
                compared(roof("500 lb", "500 lb +/- 0 lb")));
        assertEquals(
                "load on the roof 227.3 kg (501 lb), roof limit 226.7 kg (500 lb): 0.6 kg (1 lb) over",
                compared(roof("500 pounds", "501 lb +/- 0 lb")));
        assertEquals(
                "load on the roof 227 kg, roof limit 228 kg: 1 kg spare",
                compared(roof("228 kg", "500.1 lb +/- 0 lb")),
                "the sum of what is on the roof is nobody's pounds");
    }

    /** What is worked out of a figure in pounds is nobody's pounds. */
    @Test
    void onlyWhatIsWrittenSoIsPrintedSo() throws QuantityText.Unreadable {
        Figure written = QuantityText.parse("6,5 in +/- 1 in", Dimension.LENGTH);
        assertEquals("6.5 in", written.customary());
        assertEquals("6.5 in", written.exact().customary());
        assertEquals("6.5 in", written.least(Figure.of(2, 0)).customary());
        assertEquals("", written.times(2).customary());
        assertEquals("", written.plus(Figure.ZERO).customary());
        assertEquals("", QuantityText.parse("165.1 mm", Dimension.LENGTH).customary());
        assertEquals("70 mph", QuantityText.parse("70mph", Dimension.SPEED).customary());
    }

    @Test
    void lettersSayItAsThePrintoutsDo() throws FaultsException {
        Advice advice = Adviser.advise(
                Books.engine(),
                Sheets.plainWith(
                        """
                        region: us
                        vehicle: {ratings: {gvm: 6600 lb, roof: 500 lb, ball: 500 lb}}
                        fitments: [{name: Tent, kind: other, mass: 501 lb, at: {x: 1900 mm, y: 0 mm, z: 1900 mm}, roof: yes}]
                        trailer: {name: Van, mass: 5000 lb, rated: 6000 lb, ball: 500.1 lb +/- 0 lb, brakes: electric, axle: 3600 mm}
                        """));
        StringWriter text = new StringWriter();
        PlainLayout.letters(new PrintWriter(text, true), Letters.of(advice).report(""));
        String letters = text.toString().replaceAll("\\s+", " ");
        assertTrue(letters.contains(
                "Van 2268 kg (5000 lb), 2721 kg (6000 lb) on its plate, 227 kg (500.1 lb) on the ball"));
        assertTrue(letters.contains("GVM 2993 kg (6600 lb)"), letters);
    }
}
