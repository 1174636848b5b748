package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Counts;
import fitworthy.figures.plan.AxleLoads;
import fitworthy.figures.plan.Loading;
import fitworthy.quantity.Figure;
import fitworthy.shelf.Shelves;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What docs/first-answer.md says of a customer's letter: its sheet, and how near the answer is to the finished vehicle. */
class FirstAnswerDocTest {

    private static final Path PAGE = Path.of("docs", "first-answer.md");
    private static final Path SHELF = Path.of("scenarios", "shelf");
    private static final int MOST_LINES = 40;

    private static String page;
    private static String sheet;
    private static Advice advice;

    @BeforeAll
    static void read() throws IOException, FaultsException {
        page = Files.readString(PAGE);
        sheet = page.substring(page.indexOf("```yaml\n") + 8, page.indexOf("```\n", page.indexOf("```yaml\n") + 8));
        List<Fault> faults = new ArrayList<>();
        Node.Mapping tree = Shelves.in(SHELF).expanded(NodeReader.read("sheet", sheet, faults), faults);
        assertEquals(List.of(), faults);
        advice = Adviser.advise(Books.engine(), Sheets.read(tree));
    }

    private static List<AxleLoads> loads(Advice of) {
        return of.loadings().stream().map(Loading::axles).toList();
    }

    @Test
    void theSheetIsShort() {
        assertTrue(sheet.lines().count() <= MOST_LINES, sheet.lines().count() + " lines");
    }

    @Test
    void axleLoadsAreWithinTheirSpreadOfTheFinishedVehicle() throws FaultsException {
        List<AxleLoads> built = loads(
                Adviser.advise(Books.engine(), Sheets.read(Sheets.file("src/test/resources/first-answer/full.yaml"))));
        List<AxleLoads> guessed = loads(advice);
        assertEquals(2, guessed.size());
        for (int i = 0; i < guessed.size(); i++) {
            String with = i == 0 ? ", without the van" : ", with the van";
            near("front axle" + with, guessed.get(i).front(), built.get(i).front());
            near("rear axle" + with, guessed.get(i).rear(), built.get(i).rear());
            near("loaded mass" + with, guessed.get(i).total(), built.get(i).total());
        }
    }

    private static void near(String what, Figure guessed, Figure built) {
        assertTrue(
                page.contains(String.format(
                        Locale.ROOT,
                        "| %s | %.0f kg +/- %.0f kg | %.0f kg |",
                        what,
                        guessed.value(),
                        guessed.tolerance(),
                        built.value())),
                () -> what + ": " + guessed + ", " + built);
        assertTrue(
                Math.abs(guessed.value() - built.value()) <= guessed.tolerance(),
                () -> guessed + " kg by the letter, " + built + " kg as built");
    }

    @Test
    void fewChecksAreNotMade() {
        Counts counts = Arrangement.of(advice).counts();
        long found = advice.findings().stream()
                .map(finding -> finding.check())
                .distinct()
                .count();
        double open = counts.notAssessed();
        double all = open + counts.held() + counts.met() + found;
        assertTrue(open <= 0.15 * all, open + " of " + all);
        assertEquals("46 of 322", counts.notAssessed() + " of " + Math.round(all));
        assertTrue(page.contains("Not assessed are 46 checks of 322"));
    }

    @Test
    void theAnswerIsPrintedSo() throws IOException {
        Path file = Files.createTempDirectory("letter").resolve("letter.yaml");
        Files.writeString(file, sheet);
        String printed =
                Ran.of("check", file.toString(), "--shelf", SHELF.toString()).out();
        String answer =
                page.substring(page.indexOf("```text\n") + 8, page.indexOf("```\n", page.indexOf("```text\n") + 8));
        String told = printed.lines().limit(answer.lines().count()).collect(Collectors.joining("\n")) + "\n";
        assertEquals(answer.replaceAll("content \\w+", "content"), told.replaceAll("content \\w+", "content"));
    }
}
