package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fitworthy.Books;
import fitworthy.advice.View;
import fitworthy.shelf.Shelves;
import fitworthy.source.Fault;
import fitworthy.source.FieldAnswer;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command questions: what it asks, and what becomes of an answer. */
class QuestionsTest {

    private static final Path TOURING = Path.of("scenarios/touring.yaml");

    @TempDir
    private Path folder;

    private Path sheet;

    @BeforeEach
    void copyTouring() throws IOException {
        sheet = Files.copy(TOURING, folder.resolve("touring.yaml"));
        Path shelf = Files.createDirectory(folder.resolve("shelf"));
        try (Stream<Path> files = Files.list(TOURING.resolveSibling("shelf"))) {
            for (Path file : files.toList()) {
                Files.copy(file, shelf.resolve(file.getFileName()));
            }
        }
    }

    private Ran answered(String... answers) {
        List<String> line = new ArrayList<>(List.of("questions", sheet.toString()));
        List.of(answers).forEach(answer -> line.addAll(List.of("--answer", answer)));
        return Ran.of(line.toArray(String[]::new));
    }

    private String before() throws IOException {
        return Files.readString(TOURING);
    }

    private String after() throws IOException {
        return Files.readString(sheet);
    }

    @Test
    void touringAsksForTheApprovalBeforeTheStatements() {
        String text = answered().printed(1).out();
        assertTrue(
                text.indexOf("1. fitments.Rating kit.approval")
                        < text.indexOf("2. fitments.Rating kit.suits, fitments.Front"),
                text);
        answered()
                .says("Decides 2 changes; first whether \"Rating kit has no approval: its ratings do not count")
                .says("Decides 4 to confirm; first whether")
                .says("Find it: the kit's approval papers. Ask: the maker or supplier.")
                .says("another region may have one: 3 values (--all lists them).");
    }

    @Test
    void aSheetWithoutQuestionsIsInOrder() {
        Ran.of("questions", "scenarios/weekender.yaml").printed(0).says("None: every check that applies");
    }

    @Test
    void tenAreShownAndAllOnDemand() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("shelf"))) {
            for (Path file : files.toList()) {
                Files.writeString(
                        file,
                        Files.readString(file).replaceAll("mass: ([0-9]+ kg)( \\+/- [0-9]+ kg)?", "mass: about $1"));
            }
        }
        Ran ten = answered().printed(1).says("10. ").says("more (--all lists them).");
        assertFalse(ten.out().contains("\n11. "));
        assertTrue(
                Ran.of("questions", sheet.toString(), "--all").printed(1).out().contains("\n11. "));
    }

    @Test
    void anAnswerIsWrittenInPlaceAndTold() throws IOException {
        answered("fitments.Rating kit.approval=in-service", "papers.warranty=about asked")
                .printed(1)
                .says("Written: fitments.Rating kit.approval: in-service")
                .says("It settles 2 checks: 2 in order.")
                .says("Next of 2: fitments.Rating kit.suits");
        List<String> lines = new ArrayList<>(after().lines().toList());
        assertTrue(lines.contains("  - {from: Rating kit, approval: in-service}"));
        lines.replaceAll(line -> line.replace("{from: Rating kit, approval: in-service}", "Rating kit"));
        assertEquals(
                before().replace("warranty: asked", "warranty: about asked")
                        .lines()
                        .toList(),
                lines);
    }

    @Test
    void whatAnAnswerTurnsUpIsTold() {
        answered("fitments.Rating kit.approval=none")
                .printed(1)
                .says("It settles 6 checks: 6 found: 3 stops, 3 changes.")
                .says("STOP Loaded mass is above the GVM")
                .says("CHANGE Rating kit has no approval: its ratings do not count")
                .says("CHANGE Rating kit has no approval for the time it is fitted");
    }

    @Test
    void anAnswerThatTheFieldDoesNotTakeChangesNothing() throws IOException {
        answered("fitments.Tow bar.suits=yes", "fitments.Rating kit.approval=green")
                .refused(2, "one of second-stage, in-service, none");
        answered("vehicle.ratings.gvm=8000 kg").refused(2, "is above the GCM");
        answered("vehicle.ratings.gvm=3300").refused(2, "has no unit");
        answered("fitments.Ratng kit.approval=none").refused(2, "(did you mean 'fitments.Rating kit.approval'?)");
        answered("vehicle.colour=red").refused(2, "no field has this name");
        answered("vehicle.ratings=3300 kg").refused(2, "where a group of fields belongs");
        answered("in-service").refused(2, "path=value");
        Ran.of("questions", "-", "--answer", "title=Van").refused(2, "the sheet comes from the standard input");
        Ran.of("questions", sheet.toString(), "--ask").refused(2, "nobody is at a terminal");
        assertEquals(before(), after());
    }

    @Test
    void questionsAreThereForPrograms() throws IOException {
        JsonNode json = new ObjectMapper()
                .readTree(Ran.of(
                                "questions",
                                sheet.toString(),
                                "--format",
                                "json",
                                "--answer",
                                "fitments.Rating kit.approval=in-service")
                        .out());
        assertEquals("fitworthy-questions/1", json.get("shape").asText());
        assertEquals("mass.kit-unapproved", json.at("/answered/in-order/0/id").asText());
        assertEquals(
                "paperwork.rating-stage-wrong",
                json.at("/answered/in-order/1/id").asText());
        JsonNode first = json.at("/questions/0");
        assertEquals(4, first.get("fields").size());
        assertEquals(4, first.at("/turns/confirm").asInt());
        assertEquals("missing", first.get("state").asText());
        assertEquals("part-maker", first.get("ask").asText());
        assertEquals("paperwork.statement-missing", first.at("/worst/id").asText());
        assertEquals(3, json.get("gaps-of-the-book").size());
    }

    @Test
    void checkListsTheSameFirst() throws IOException {
        String text = Ran.of("check", sheet.toString()).out();
        assertTrue(text.indexOf("Rating kit: its approval") < text.indexOf("Rating kit, Front springs"), text);
        JsonNode json = new ObjectMapper()
                .readTree(Ran.of("check", sheet.toString(), "--format", "json").out());
        assertEquals(
                "fitments.Rating kit.approval",
                json.at("/figures-to-bring/0/fields/0").asText());
        assertEquals(3, json.get("gaps-of-the-book").size());
        assertEquals(
                "mass.kit-unapproved", json.at("/not-assessed/0/id").asText(), "a change before what is to confirm");
    }

    /** The file is read as it is when the answer comes, with all marks that it begins with and ends its lines by. */
    @Test
    void aFileOfAnotherSystemStaysOne() throws IOException {
        Files.writeString(sheet, "\uFEFF" + before().replace("\n", "\r\n"));
        answered("fitments.Tow bar.suits=yes").printed(1);
        assertTrue(after().startsWith("\uFEFF# A touring"));
        assertEquals(before().lines().count(), after().split("\r\n", -1).length - 1, "all lines as they were");
        assertFalse(after().replace("\r\n", "").contains("\n"));
    }

    private String asked(String typed) throws Exception {
        List<Fault> faults = new ArrayList<>();
        View view = new View(Books.engine(), null, null, Shelves.beside());
        StringWriter out = new StringWriter();
        new Asking(
                        new BufferedReader(new StringReader(typed)),
                        new PrintWriter(out),
                        new AnsweredSheet(sheet, view, view.read(NodeReader.read(sheet, faults), faults)))
                .run();
        return out.toString();
    }

    @Test
    void aPersonIsAskedOneByOne() throws Exception {
        String text = asked("green\nin-service\n\nyes\nq\n");
        assertTrue(text.contains("fitments.Rating kit.approval, such as "), text);
        assertTrue(text.contains("Not written:"), text);
        assertTrue(text.contains("Written: fitments.Rating kit.approval: in-service"), text);
        assertTrue(text.contains("Written: fitments.Front springs.suits: yes"), text);
        assertFalse(text.contains("Written: fitments.Rating kit.suits"), "passed over");
        List<String> lines = new ArrayList<>(after().lines().toList());
        lines.replaceAll(line -> line.replace("{from: Rating kit, approval: in-service}", "Rating kit")
                .replace("{from: Front springs, suits: yes}", "Front springs"));
        assertEquals(before().lines().toList(), lines);
    }

    @Test
    void nothingIsWrittenWhereNothingIsTyped() throws Exception {
        assertTrue(asked("\n\n\n\n\n").contains("No other question is left; 5 passed over."));
        asked("");
        assertEquals(before(), after());
    }

    @Test
    void whatSomebodyWroteMeanwhileStays() throws Exception {
        List<Fault> faults = new ArrayList<>();
        View view = new View(Books.engine(), null, null, Shelves.beside());
        AnsweredSheet open = new AnsweredSheet(sheet, view, view.read(NodeReader.read(sheet, faults), faults));
        Files.writeString(sheet, before().replace("customer: Ines and Tobias Varga", "customer: nobody"));
        open.write(List.of(FieldAnswer.parse(Place.of("--answer"), "fitments.Tow bar.suits=yes", faults)));
        assertTrue(after().contains("customer: nobody") && after().contains("suits: yes"));
    }
}
