package fitworthy.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.MeasureKind.Answer;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SheetReader;
import fitworthy.source.FaultsException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What measures answer in every case of the book and every shipped sheet is what they are declared to be answered by. */
class AnswersTest {

    private static final List<Measure> KNOWN = new ArrayList<>();

    @BeforeAll
    static void measureEverySheet() throws FaultsException, IOException {
        List<Sheet> sheets = new ArrayList<>();
        Books.cases().forEach(one -> sheets.add(one.sheet()));
        try (Stream<Path> scenarios = Files.list(Path.of("scenarios"))) {
            for (Path scenario :
                    scenarios.filter(file -> file.toString().endsWith(".yaml")).toList()) {
                sheets.add(SheetReader.sheet(
                        Sheets.file(scenario.toString()),
                        Books.shipped().regions().keySet(),
                        new ArrayList<>()));
            }
        }
        for (Sheet sheet : sheets) {
            WorkingTest.measures(sheet).stream().filter(Measure::isKnown).forEach(KNOWN::add);
        }
    }

    private static String described(Measure measure) {
        return measure.getName() + " = " + (measure.getWord().isEmpty() ? measure.getValue() : measure.getWord());
    }

    @Test
    void everyWordIsOneOfThoseDeclared() {
        Set<String> undeclared = new TreeSet<>();
        Set<String> said = new TreeSet<>();
        for (Measure measure : KNOWN) {
            MeasureKind kind = measure.kind();
            boolean fits = kind.answer() instanceof Answer.Number
                    ? measure.getWord().isEmpty()
                    : kind.answer() instanceof Answer.LookedUp
                            ? !measure.getWord().isEmpty()
                            : !kind.saysNothingElse() || kind.words().contains(measure.getWord());
            if (!fits) {
                undeclared.add(described(measure));
            }
            said.add(described(measure));
        }
        assertEquals(Set.of(), undeclared);
        Set<String> unsaid = new TreeSet<>();
        Measures.kinds().values().stream()
                .filter(kind -> kind.words().stream().noneMatch(word -> said.contains(kind.name() + " = " + word)))
                .filter(kind -> !kind.words().isEmpty())
                .forEach(kind -> unsaid.add(kind.name()));
        assertEquals(Set.of(), unsaid, "word measures that no case asks");
    }

    @Test
    void onlyWhatIsDeclaredSignedIsBelowZero() {
        Set<String> below = new TreeSet<>();
        KNOWN.stream()
                .filter(measure -> !measure.kind().isSigned() && (measure.getValue() < 0 || measure.getLimit() < 0)
                        || measure.getTolerance() < 0)
                .forEach(measure -> below.add(described(measure)));
        assertEquals(Set.of(), below);
        assertTrue(KNOWN.stream().anyMatch(measure -> measure.getValue() < 0));
    }

    @Test
    void onlyWhatIsDeclaredToHaveOneHasALimit() {
        Set<String> other = new TreeSet<>();
        KNOWN.stream()
                .filter(measure ->
                        measure.hasLimit() == measure.kind().limitMeaning().isEmpty())
                .forEach(measure -> other.add(measure.getName()));
        assertEquals(Set.of(), other);
    }

    @Test
    void aKindKeepsItsAnswerWhateverElseIsSaidOfIt() {
        MeasureKind number = MeasureKind.number("mass.some", "kg", 0, "some mass");
        assertFalse(number.isSigned());
        assertTrue(number.signed().byLoading().finer().isSigned());
        MeasureKind word = MeasureKind.yesNo("mass.how", "how it is done");
        assertEquals(List.of("yes", "no"), word.words());
        assertEquals(
                List.of("yes", "no", "perhaps"), word.or("perhaps").byLoading().words());
        assertEquals(
                List.of(),
                MeasureKind.lookedUp("mass.looked", "what a table says").words());
        assertEquals(List.of(), number.words());
        assertFalse(word.isSigned());
    }
}
