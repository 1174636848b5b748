package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets that take from a shelf, by every command that reads sheets. */
class ShelfTest {

    private static final String BOX =
            "fitments:\n  - {name: Box, kind: other, mass: 40 kg, at: {x: 2600 mm, y: 0 mm, z: 900 mm}}\n";

    @TempDir
    private Path folder;

    private String shelf(String name, String text) throws IOException {
        Path shelf = Files.createDirectories(folder.resolve(name));
        Files.writeString(shelf.resolve("parts.yaml"), text);
        return shelf.toString();
    }

    private String sheet(String more) throws IOException {
        return Files.writeString(
                        folder.resolve("sheet.yaml"), Files.readString(Books.RULES.resolve("plain-sheet.yaml")) + more)
                .toString();
    }

    @Test
    void aShelfIsListed() {
        Ran.of("shelf", "scenarios/shelf")
                .printed(0)
                .says("VEHICLES (3)")
                .says("Front bar bar, 58 kg, 2650.00 AUD line 4");
    }

    @Test
    void whatIsWrongWithAShelfIsTold() throws IOException {
        String shelf = shelf("shelf", BOX.replace("40 kg", "40"));
        Ran wrong = Ran.of("shelf", shelf);
        wrong.refused(
                2, "The shelf cannot be used:\n" + shelf + "/parts.yaml:2:36: fitments.Box.mass: '40' has no unit");
        assertTrue(wrong.err().contains("right: mass: 12 kg"), wrong.err());
        Ran.of("shelf", folder + "/none").refused(2, folder + "/none: there is no such folder");
        Ran.of("check", sheet(""), "--shelf", folder + "/none").refused(2, "there is no such folder");
        Ran.of("check", sheet("fitments: [Box]\n"))
                .refused(
                        2,
                        "The sheet cannot be used:\n" + shelf + "/parts.yaml:2:36: fitments.1.mass: '40' has no unit");
    }

    /** A circuit may leave its part to the sheet; one that it names brings it along, and so has to lie there. */
    @Test
    void aCircuitOfAPartThatIsNotThereIsTold() throws IOException {
        String box = BOX + "circuits:\n  - {name: Feed, current: 4 A, part: Bxo}\n";
        String shelf = shelf("shelf", box);
        Ran wrong = Ran.of("shelf", shelf);
        wrong.refused(
                2,
                "The shelf cannot be used:\n" + shelf + "/parts.yaml:4:38: circuits.Feed.part: 'Bxo' is not among the"
                        + " fitments of this shelf, so that no part brings this circuit along");
        assertTrue(wrong.err().contains("part: Box"), wrong.err());
        shelf("shelf", box.replace("Bxo", "Box"));
        Ran.of("shelf", shelf).printed(0).says("CIRCUITS (1)");
        shelf("shelf", box.replace(", part: Bxo", ""));
        Ran.of("shelf", shelf).printed(0).says("CIRCUITS (1)");
    }

    @Test
    void theShelfNamedTakesThePlaceOfTheOneBesideTheSheet() throws IOException {
        shelf("shelf", BOX);
        String sheet = sheet("fitments: [Box]\n");
        String heavier = shelf("heavier", BOX.replace("40 kg", "900 kg"));
        assertFalse(Ran.of("check", sheet).out().contains("mass.gvm-over"));
        assertTrue(Ran.of("check", sheet, "--shelf", heavier).out().contains("mass.gvm-over"));
        Ran.of("explain", sheet, "mass.gvm-over")
                .printed(0)
                .says("From the shelf: fitments Box: " + folder + "/shelf/parts.yaml:2");
    }

    @Test
    void effectShowsWhatAChangedShelfDoes() throws IOException {
        shelf("shelf", BOX);
        String sheet = sheet("fitments: [Box]\n");
        String heavier = shelf("heavier", BOX.replace("40 kg", "900 kg"));
        String journal = folder.resolve("journal").toString();
        String[] effect = {"effect", sheet, "--with-shelf", heavier, "--resume", journal};
        Ran.of(effect).printed(1).says("; shelf " + heavier + ", content ").says("mass.gvm-over [vehicle");
        shelf("heavier", BOX);
        Ran.of(effect).printed(0).says("1 sheets looked at: 0 changed");
        Ran.of("effect", sheet, "--with-shelf", folder + "/none").refused(2, "there is no such folder");
    }

    @Test
    void nothingIsPrintedOverAShelf() throws IOException {
        String shelf = shelf("shelf", BOX);
        Ran.of("print", sheet("fitments: [Box]\n"), "--html", shelf + "/parts.yaml")
                .refused(2, "is read by this command, and would be lost");
        assertEquals(BOX, Files.readString(Path.of(shelf, "parts.yaml")));
    }

    @Test
    void sheetsInAFileOfLinesTakeFromTheShelfBesideIt() throws IOException {
        shelf("shelf", BOX);
        Path lines = Files.writeString(
                folder.resolve("sheets.ndjson"),
                BatchTest.line(Files.readString(Books.RULES.resolve("plain-sheet.yaml")) + "fitments: [Box, Bax]\n")
                        + "\n"
                        + BatchTest.line(
                                Files.readString(Books.RULES.resolve("plain-sheet.yaml")) + "fitments: [Box]\n"));
        Ran ran = Ran.of("batch", lines.toString());
        assertEquals(2, ran.code(), ran.out() + ran.err());
        assertTrue(ran.out().contains("'Bax' is not among the fitments of the shelf (did you mean 'Box'?)"), ran.out());
        assertTrue(ran.out().lines().toList().get(1).contains("\"worst\":"), ran.out());
    }

    /** What is changed is what was taken, and the sheet stays as it is written. */
    @Test
    void whatLiesOnTheShelfCanBeMended() throws IOException {
        shelf("shelf", BOX.replace("40 kg", "900 kg"));
        Ran.of("mend", sheet("fitments: [Box]\n")).printed(0).says("do without 'Box'");
    }
}
