package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.book.Source;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The print command: its files, its exit codes, and what it leaves alone. */
class PrintTest {

    private static final String PLAIN = Books.RULES.resolve("plain-sheet.yaml").toString();
    private static final String JAVA =
            Path.of(System.getProperty("java.home"), "bin", "java").toString();
    private static final String TIME = "--as-printed-at=2026-11-25T10:00Z";

    @TempDir
    private Path folder;

    @Test
    void sameSheetAndTimeGiveTheSameBytes() throws IOException {
        List<byte[]> made = new ArrayList<>();
        for (String name : List.of("one", "other")) {
            Path html = folder.resolve(name + ".html");
            Path pdf = folder.resolve(name + ".pdf");
            Ran ran = Ran.of("print", PLAIN, "--html", html.toString(), "--pdf", pdf.toString(), TIME);
            assertEquals(0, ran.code(), ran.err());
            made.add(Files.readAllBytes(html));
            made.add(Files.readAllBytes(pdf));
        }
        assertArrayEquals(made.get(0), made.get(2));
        assertArrayEquals(made.get(1), made.get(3));
        assertTrue(new String(made.get(0), StandardCharsets.UTF_8).contains("2026-11-25 10:00 UTC"));
    }

    @Test
    void anotherTimeGivesOtherBytes() throws IOException {
        Path one = folder.resolve("one.pdf");
        Path other = folder.resolve("other.pdf");
        Ran.of("print", PLAIN, "--pdf", one.toString(), TIME);
        Ran.of("print", PLAIN, "--pdf", other.toString(), "--as-printed-at=2026-11-26T10:00Z");
        assertFalse(Arrays.equals(Files.readAllBytes(one), Files.readAllBytes(other)));
    }

    @Test
    void exitCodeSaysWhetherThereIsSomethingToDo() {
        Ran ran = Ran.of(
                "print",
                "scenarios/overloaded.yaml",
                "--html",
                folder.resolve("page.html").toString(),
                "--seconds",
                "0");
        assertEquals(1, ran.code(), ran.err());
    }

    /** A customer is told of texts of law and authorities, not of shops, magazines or forums, and of no address. */
    @Test
    void aCustomerIsToldTheTextsAndNotWhoTellsOfThem() throws Exception {
        Path page = folder.resolve("customer.html");
        Ran ran = Ran.of("print", "scenarios/touring.yaml", "--for", "customer", "--html", page.toString(), TIME);
        assertEquals(1, ran.code(), ran.err());
        String text = Files.readString(page);
        assertTrue(
                text.contains(
                        "Texts of law, standards and authorities with the limits of its stops and changes: Australian Design"
                                + " Rule 14/02"),
                text);
        for (Source source : Books.shipped().sources().values()) {
            assertFalse(
                    source.kind().value().compareTo(Source.Kind.TRADE) >= 0 && text.contains(source.title()),
                    source.title());
            assertFalse(!source.link().isEmpty() && text.contains(source.link()), source.link());
        }
    }

    @Test
    void withoutAFileToPrintToItIsRefused() {
        Ran.of("print", PLAIN).refused(2, "no file to print to");
        Ran.of("print", PLAIN, "--html", "x.html", "--as-printed-at", "yesterday")
                .refused(2, "'yesterday' is not a time");
        Ran.of("print", PLAIN, "--html", "x.html", "--paper", "a0").refused(2, "expected one of [a4, letter]");
    }

    @Test
    void aFolderThatIsNotThereIsTold() {
        Ran.of("print", PLAIN, "--html", folder.resolve("none/page.html").toString())
                .refused(74, "there is no such folder");
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void aFolderThatMayNotBeWrittenToIsTold() {
        // Nobody makes files in there, not even the superuser that a build may run as.
        Ran.of("print", PLAIN, "--html", "/sys/kernel/page.html")
                .refused(74, "/sys/kernel/page.html: the folder may not be");
    }

    /** A limit on the size of files fails a write half-way, as a full disk does. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void whereTheDiskIsFullTheOldFileStaysWhole() throws Exception {
        Path page = Files.writeString(folder.resolve("page.html"), "old");
        notWritten(
                page,
                new ProcessBuilder(
                        "sh",
                        "-c",
                        "ulimit -f 8; exec \"$@\"",
                        "sh",
                        JAVA,
                        "-XX:-UsePerfData",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "fitworthy.cli.Main",
                        "print",
                        PLAIN,
                        "--html",
                        page.toString()));
    }

    /** @return what the run said after the name of the old file, which has to stand as it did, alone */
    private String notWritten(Path old, ProcessBuilder run) throws Exception {
        run.redirectErrorStream(true)
                .environment()
                .put("FITWORTHY_CACHE", Books.CACHE.toAbsolutePath().toString());
        Process process = run.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(74, process.waitFor(), said);
        String before = "untouched:\n" + old + ": ";
        assertTrue(said.contains(before), said);
        assertEquals("old", Files.readString(old));
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(old), left.toList());
        }
        return said.substring(said.indexOf(before) + before.length());
    }

    @Test
    void aPdfThatTakesMoreMemoryThanThereIsIsTold(@TempDir Path elsewhere) throws Exception {
        StringBuilder sheet = new StringBuilder(Files.readString(Path.of(PLAIN))).append("fitments:\n");
        for (int i = 0; i < 1500; i++) {
            sheet.append("  - {name: box ")
                    .append(i)
                    .append(", kind: other, mass: 9 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}}\n");
        }
        Path pdf = Files.writeString(folder.resolve("page.pdf"), "old");
        String said = notWritten(
                pdf,
                new ProcessBuilder(
                        JAVA,
                        "-Xmx96m",
                        "-XX:-UsePerfData",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "fitworthy.cli.Main",
                        "print",
                        Files.writeString(elsewhere.resolve("sheet.yaml"), sheet)
                                .toString(),
                        "--pdf",
                        pdf.toString(),
                        "--seconds",
                        "0"));
        assertTrue(said.contains("more memory to draw than the "), said);
    }

    @Test
    void aFolderInThePlaceOfTheFileStaysWhole() throws IOException {
        Path old = Files.createDirectory(folder.resolve("page.html"));
        Files.writeString(old.resolve("kept"), "kept");
        Ran.of("print", PLAIN, "--html", old.toString()).refused(74, "what stood there before is untouched");
        assertEquals("kept", Files.readString(old.resolve("kept")));
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(old), left.toList());
        }
    }
}
