package fitworthy.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fitworthy.Pipes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Files alone are read, and pages of a book alone where a book is read. */
@Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class InputFileTest {

    private static final String NO_FILE = "this is a pipe, a device or a socket, not a file";
    private static final String LEADS_OUT = "a link leads from here out of its folder";

    @TempDir
    private Path home;

    private Path book;
    private Path secret;

    @BeforeEach
    void aBookBesideASecret() throws IOException {
        book = Files.createDirectory(home.resolve("book"));
        Files.createDirectory(book.resolve("mass"));
        Files.writeString(book.resolve("mass/cards.yaml"), "a: 1");
        secret = Files.writeString(Files.createDirectory(home.resolve("far")).resolve("secret"), "b: 2");
    }

    private static String read(Path file) {
        List<Fault> faults = new ArrayList<>();
        String text = InputFile.text(file, faults);
        return text == null ? faults.get(0).problem() : text;
    }

    private String page(Path page) {
        List<Fault> faults = new ArrayList<>();
        String text = InputFile.page(book, page, faults);
        return text == null ? faults.get(0).problem() : text;
    }

    @Test
    void pipesDevicesAndFoldersAreRefusedUnread() throws Exception {
        Path folders = Files.createSymbolicLink(home.resolve("link"), book);
        assertEquals("this is a folder", read(folders));
        assertEquals(NO_FILE, read(Pipes.make(home.resolve("pipe"))));
        assertThrows(IOException.class, () -> InputFile.open(home.resolve("pipe")));
        for (Path device : List.of(Path.of("/dev/null"), Path.of("/dev/zero"))) {
            assumeTrue(Files.exists(device));
            assertEquals(NO_FILE, read(device));
            assertEquals(NO_FILE, read(Files.createSymbolicLink(home.resolve(device.getFileName()), device)));
        }
    }

    /** A sheet may lie anywhere. */
    @Test
    void linkToAFileIsRead() throws IOException {
        assertEquals("b: 2", read(Files.createSymbolicLink(home.resolve("link"), secret)));
        assertNull(NodeReader.read("none", null, new ArrayList<>()));
    }

    @Test
    void pageIsReadOnlyWhereItLiesInTheBook() throws IOException {
        assertEquals("a: 1", page(book.resolve("mass/cards.yaml")));
        assertEquals("a: 1", page(book.resolve("mass/../mass/cards.yaml")));
        assertEquals("there is no such file", page(book.resolve("mass/practice.yaml")));
        assertEquals(
                "a: 1",
                page(Files.createSymbolicLink(book.resolve("mass/same.yaml"), Path.of("cards.yaml"))),
                "a link within the book");
        assertEquals(LEADS_OUT, page(Files.createSymbolicLink(book.resolve("mass/out.yaml"), secret)));
        Path topic = Files.createSymbolicLink(book.resolve("far"), secret.getParent());
        assertEquals(LEADS_OUT, page(topic.resolve("secret")));
        assertEquals(LEADS_OUT, page(topic.resolve("none")), "nor is it told whether there is one");
    }

    @Test
    void bookMayBeNamedByALink() throws IOException {
        Path current = Files.createSymbolicLink(home.resolve("current"), book);
        List<Fault> faults = new ArrayList<>();
        assertEquals("a: 1", InputFile.page(current, current.resolve("mass/cards.yaml"), faults));
    }
}
