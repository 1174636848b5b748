package fitworthy.printout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Arrangement;
import fitworthy.book.Severity;
import fitworthy.printout.MarginTable;
import fitworthy.printout.json.JsonPrintout;
import fitworthy.printout.screen.TextPrintout;
import fitworthy.source.FaultsException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;

/** 2520 kg loaded against a GVM that is known to 66 kg: passed by less than that nobody can say that it is passed. */
class TooCloseTest {

    private static final String NEITHER =
            "Over by 0.4 kg, which is less than can be known (+/- 66 kg): neither in order nor surely a fault. Weigh the"
                    + " loaded vehicle first.";

    private static Advice gvm(String gvm) throws FaultsException {
        return Adviser.advise(Books.engine(), Sheets.plainWith("vehicle: {ratings: {gvm: " + gvm + "}}\n"));
    }

    private static FindingBrief brief(Advice advice) {
        return FindingBrief.all(Arrangement.of(advice), Severity.STOP, false).get(0);
    }

    private static Optional<String> inJson(Advice advice) throws Exception {
        StringWriter text = new StringWriter();
        JsonPrintout.print(new PrintWriter(text), advice, Severity.NOTE);
        JsonNode findings = new ObjectMapper().readTree(text.toString()).get("findings");
        return StreamSupport.stream(findings.spliterator(), false)
                .filter(finding -> finding.get("id").asText().equals("mass.gvm-over"))
                .findFirst()
                .map(finding -> finding.get("too-close"))
                .map(JsonNode::asText);
    }

    private static String inFull(Advice advice) {
        StringWriter text = new StringWriter();
        new TextPrintout(new PrintWriter(text), (severity, words) -> words, false).print(advice, Severity.NOTE);
        return text.toString().replaceAll("\\s+", " ");
    }

    @Test
    void lessThanCanBeKnownIsNeitherAPassNorSurelyAFault() throws Exception {
        Advice advice = gvm("2519.6 kg +/- 66 kg");
        assertEquals(Optional.of(Severity.STOP), advice.worst(), "it stays where it stands");
        assertEquals(
                "Loaded as planned it is too close to call whether it is within its ratings:"
                        + " GVM over by 0.4 kg +/- 66 kg (everything aboard). Settle it before you go ahead.",
                LoadedVerdict.loaded(advice));
        assertTrue(Verdict.of(Arrangement.of(advice))
                .startsWith("Do not go ahead yet: what stops it is too close to call, and has to be settled first."));
        assertEquals(
                "Too close to call whether it is so: Loaded mass is above the GVM",
                brief(advice).said().title());
        assertEquals(
                "2520.0 kg, 0.4 kg over (everything aboard); too close to call (+/- 66 kg). Weigh the loaded vehicle"
                        + " first; if it is over, take at least 0.4 kg out of the vehicle.",
                brief(advice).whatToDo());
        assertEquals(Optional.of(NEITHER), inJson(advice));
        assertTrue(inFull(advice).contains(NEITHER), inFull(advice));
        assertEquals(
                List.of("0.4 kg over (close)"),
                Arrangement.of(advice).margins().stream()
                        .filter(margin -> margin.limit().equals("vehicle: GVM"))
                        .flatMap(margin -> MarginTable.cells(margin, MarginTable.loadings(advice)).stream())
                        .toList());
    }

    /** 66 kg over, known to 66 kg: that is as much as it may be off, and proven; a kilogram less is not. */
    @Test
    void whatIsProvenToBeExceededIsToldAsBefore() throws Exception {
        Advice advice = gvm("2454 kg +/- 66 kg");
        assertEquals(
                "Loaded as planned it is over its ratings: GVM by 66 kg (everything aboard).",
                LoadedVerdict.loaded(advice));
        assertTrue(Verdict.of(Arrangement.of(advice)).startsWith("Do not go ahead with this plan as it stands."));
        assertEquals("Loaded mass is above the GVM", brief(advice).said().title());
        assertFalse(
                brief(advice).whatToDo().contains("too close"), brief(advice).whatToDo());
        assertEquals(Optional.empty(), inJson(advice));
        Advice closer = gvm("2455 kg +/- 66 kg");
        assertEquals(
                "Too close to call whether it is so: Loaded mass is above the GVM",
                brief(closer).said().title());
    }

    /** What is kept by less than its tolerance has its own rules, which say so. */
    @Test
    void whatIsKeptIsNotCalledOver() throws Exception {
        Advice advice = gvm("2520.4 kg +/- 66 kg");
        assertTrue(LoadedVerdict.loaded(advice).contains("; too close to call: GVM"), LoadedVerdict.loaded(advice));
        assertTrue(
                advice.findings().stream().anyMatch(found -> found.judged().id().equals("mass.gvm-unsure")));
        assertEquals(Optional.empty(), inJson(advice));
        assertEquals(List.of("0 kg (close)"), cells(advice));
        assertEquals(List.of("66 kg"), cells(gvm("2586 kg +/- 66 kg")), "as much as it may be off is sure");
    }

    private static List<String> cells(Advice advice) {
        return Arrangement.of(advice).margins().stream()
                .filter(margin -> margin.limit().equals("vehicle: GVM"))
                .flatMap(margin -> MarginTable.cells(margin, MarginTable.loadings(advice)).stream())
                .toList();
    }

    /** Sure by 4 kg with exact loads, by 94 kg with what is guessed beside them: a stop that no better figure clears. */
    @Test
    void whatIsSureInOneLoadingIsNoGuess() throws Exception {
        String plan =
                """
                vehicle: {ratings: {gvm: %s kg}}
                cargo:
                  - {name: Luggage, mass: 60 kg +/- 0 kg}
                  - {name: Camp gear, mass: about 90 kg +/- 14 kg, at: {x: 2700 mm, y: 0 mm, z: 900 mm}}
                cases: [{name: no camp gear, carrying: [Luggage]}, {name: full}]
                """;
        Advice sure = Adviser.advise(Books.engine(), Sheets.plainWith(plan.formatted("2516")));
        FindingBrief brief =
                FindingBrief.all(Arrangement.of(sure), Severity.STOP, true).get(0);
        assertEquals("Loaded mass is above the GVM", brief.said().title());
        assertEquals(
                List.of("Sure in no camp gear (4 kg over); more in full, on guesses: Camp gear: its mass"),
                brief.beside());
        assertTrue(inFull(sure).contains("Sure in no camp gear (4 kg over); more in full, on guesses."), inFull(sure));
        assertFalse(inFull(sure).contains("On guesses: Loaded mass is above the GVM"), inFull(sure));
        Advice guessed = Adviser.advise(Books.engine(), Sheets.plainWith(plan.formatted("2520")));
        brief = FindingBrief.all(Arrangement.of(guessed), Severity.STOP, true).get(0);
        assertEquals("On guesses: Loaded mass is above the GVM", brief.said().title());
        assertEquals(List.of("Rests on guesses: Camp gear: its mass"), brief.beside());
    }

    /** One rating that is surely passed makes it a plain stop; the other is told beside it. */
    @Test
    void besideWhatIsSurelyOverItIsToldApart() throws Exception {
        Advice advice = Adviser.advise(
                Books.engine(),
                Sheets.plainWith("vehicle: {ratings: {gvm: 2500 kg +/- 66 kg, front-axle: 1320 kg +/- 1 kg}}\n"));
        assertEquals(
                "Loaded as planned it is over its ratings: front axle limit by 9 kg (everything aboard). Too close to call:"
                        + " GVM over by 20 kg +/- 66 kg (everything aboard).",
                LoadedVerdict.loaded(advice));
        assertTrue(Verdict.of(Arrangement.of(advice)).startsWith("Do not go ahead with this plan as it stands."));
    }

    /** A length that decides is measured: 10 mm under water, known to 20 mm. */
    @Test
    void everyMeasureIsTreatedAlike() throws Exception {
        Advice advice = Adviser.advise(
                Books.engine(),
                Sheets.plainWith(
                        "trip: {water-depth: 490 mm}\nvehicle: {intake: {airbox: {drain: open, drain-height: 480 mm +/- 20 mm}}}\n"));
        String told = FindingBrief.all(Arrangement.of(advice), Severity.STOP, false).stream()
                .filter(finding -> finding.said().title().contains("Too close to call"))
                .map(FindingBrief::whatToDo)
                .findFirst()
                .orElse("");
        assertTrue(told.contains("Measure first: planned water depth"), told);
    }
}
