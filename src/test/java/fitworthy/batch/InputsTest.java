package fitworthy.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.InputFile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where sheets come from, and in which order. */
class InputsTest {

    @TempDir
    private Path folder;

    /** The places of all sheets, without the folder. */
    private List<String> places(List<Path> given, InputStream in) throws FaultsException, IOException {
        List<String> places = new ArrayList<>();
        try (Inputs inputs = Inputs.of(given, in)) {
            inputs.forEachRemaining(each -> places.add(each.place().toString().replace(folder + "/", "")));
        }
        return places;
    }

    private static InputStream lines(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    @Test
    void sheetsOfAFolderComeByNameAndOtherFilesAreLeftOut() throws IOException, FaultsException {
        for (String name : List.of("b.yaml", "a.json", "c.yml", "B.yaml", "notes.txt", "b.yaml~")) {
            file(name, "");
        }
        Files.createDirectory(folder.resolve("old.yaml"));
        assertEquals(
                List.of("B.yaml", "a.json", "b.yaml", "c.yml"), places(List.of(folder), InputStream.nullInputStream()));
        assertEquals(
                OptionalInt.of(4),
                Inputs.of(List.of(folder), InputStream.nullInputStream()).count());
    }

    @Test
    void linesAreNumberedAsInTheFileAndEmptyOnesPassedOver() throws IOException, FaultsException {
        Path many = file("many.ndjson", "{}\r\n\n  \t\n{}\nx");
        assertEquals(
                List.of("many.ndjson:1", "many.ndjson:4", "many.ndjson:5", "-:2", "one.yaml"),
                places(List.of(many, Path.of("-"), file("one.yaml", "")), lines("\n{}\n")));
        assertEquals(
                OptionalInt.empty(),
                Inputs.of(List.of(many), InputStream.nullInputStream()).count());
    }

    @Test
    void nothingIsReadBeforeItsTurn() throws IOException, FaultsException {
        Path second = file("second.yaml", "title: x");
        try (Inputs inputs = Inputs.of(List.of(file("first.yaml", ""), second), InputStream.nullInputStream())) {
            inputs.next();
            Input last = inputs.next();
            Files.writeString(second, "title: y");
            assertEquals("title: y", last.text(new ArrayList<>()));
        }
    }

    @Test
    void faultsStandOnTheLineOfTheFile() throws IOException, FaultsException {
        String many = "{\"a\": 1}\n{\"a\": 1, \"a\": 2}\n- a\n{\"a\": \u0007}\n";
        List<String> told = new ArrayList<>();
        try (Inputs inputs = Inputs.of(List.of(Path.of("-")), lines(many))) {
            inputs.forEachRemaining(each -> {
                List<Fault> faults = new ArrayList<>();
                each.tree(each.text(faults), faults);
                faults.forEach(fault -> told.add(fault.place() + " " + fault.problem()));
            });
        }
        assertEquals(
                List.of(
                        "-:2:10 'a' is given twice; first on line 2",
                        "-:3 the line is not a JSON object",
                        "-:4:7 the control character U+0007 stands here"),
                told);
    }

    @Test
    void lineThatIsTooLongIsNotKept() throws IOException, FaultsException {
        String longest = "{" + " ".repeat(3 * InputFile.LARGEST_BYTES) + "}\n{}\n";
        try (Inputs inputs = Inputs.of(List.of(Path.of("-")), lines(longest))) {
            Input first = inputs.next();
            assertEquals(InputFile.LARGEST_BYTES + 1, first.line().length);
            List<Fault> faults = new ArrayList<>();
            assertEquals(null, first.text(faults));
            assertEquals("the line is larger than 1 MiB", faults.get(0).problem());
            assertEquals("-:2", inputs.next().place().toString());
        }
    }

    @Test
    void badBytesAreRefusedAtTheirPlace() throws IOException, FaultsException {
        byte[] bytes = "{}\n{\"a\": \"Ca\u00F1on\"}\n".getBytes(StandardCharsets.ISO_8859_1);
        try (Inputs inputs = Inputs.of(List.of(Path.of("-")), new ByteArrayInputStream(bytes))) {
            inputs.next();
            List<Fault> faults = new ArrayList<>();
            inputs.next().text(faults);
            assertEquals(
                    "-:2:10: the file is not UTF-8 text from here on\n    right: save it as UTF-8",
                    faults.get(0).toString());
        }
    }

    @Test
    void whatIsNotThereIsToldBeforeAnythingIsDone() throws IOException {
        Files.createDirectory(folder.resolve("empty"));
        FaultsException refused = assertThrows(
                FaultsException.class,
                () -> Inputs.of(
                        List.of(folder.resolve("none.yaml"), folder.resolve("empty"), file("one.yaml", "")),
                        InputStream.nullInputStream()));
        assertEquals(
                List.of("there is no sheet in this folder", "there is no such file"),
                refused.faults().stream().map(Fault::problem).toList());
    }
}
