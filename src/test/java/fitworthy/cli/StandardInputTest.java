package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sheet from the standard input, as {@code -}. */
class StandardInputTest {

    private static final Path PLAIN = Books.RULES.resolve("plain-sheet.yaml");

    @TempDir
    private Path folder;

    private static String plain() throws IOException {
        return Files.readString(PLAIN);
    }

    @Test
    void isReadAsAFileIs() throws IOException {
        assertEquals(Ran.of("check", PLAIN.toString()), BatchTest.piped(plain(), "check", "-"));
        assertEquals(
                Ran.of("explain", PLAIN.toString(), "mass.gvm-over"),
                BatchTest.piped(plain(), "explain", "-", "mass.gvm-over"));
        assertEquals(Ran.of("mend", PLAIN.toString()), BatchTest.piped(plain(), "mend", "-"));
        assertEquals(
                """
                There is nothing to compare: the sheet leaves no choice open.
                A choice is written so:
                  options: [{name: To choose, choices: [{name: with, parts: [Alloy tray]},
                  {name: without}]}]
                """,
                BatchTest.piped(plain(), "compare", "-").printed(0).out());
    }

    @Test
    void isPrinted() throws IOException {
        Path page = folder.resolve("page.html");
        assertEquals(
                0,
                BatchTest.piped(plain(), "print", "-", "--html", page.toString())
                        .code());
        assertTrue(Files.readString(page).contains("standard input"));
    }

    @Test
    void itsFaultsAreToldByLine() throws IOException {
        BatchTest.piped(plain().replace("gvm: 3000 kg", "gvm: 3000"), "check", "-")
                .refused(2, "-:28:10: vehicle.ratings.gvm: '3000' has no unit\n    right: gvm: 3100 kg");
        BatchTest.piped("", "check", "-").refused(2, "-: the file is empty");
    }

    @Test
    void isNoLargerThanAFile() {
        BatchTest.piped("#".repeat((1 << 20) + 1), "check", "-").refused(2, "-: the file is larger than 1 MiB");
    }
}
