package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that belong together are all written or none. */
class OutputFileTest {

    @TempDir
    private Path home;

    private List<String> names() throws Exception {
        try (Stream<Path> all = Files.list(home)) {
            return all.map(each -> each.getFileName().toString()).sorted().toList();
        }
    }

    private Map<Path, String> pages(String second) throws Exception {
        Map<Path, String> pages = new LinkedHashMap<>();
        pages.put(Files.writeString(home.resolve("cards.yaml"), "cards"), "cards and one more");
        pages.put(home.resolve(second), "cases and one more");
        return pages;
    }

    @Test
    void allAreWritten() throws Exception {
        OutputFile.writeAll(pages("cases.yaml"));
        assertEquals("cards and one more", Files.readString(home.resolve("cards.yaml")));
        assertEquals("cases and one more", Files.readString(home.resolve("cases.yaml")));
        assertEquals(List.of("cards.yaml", "cases.yaml"), names());
    }

    @Test
    void oneThatCannotBeLeavesTheOthersAsTheyWere() throws Exception {
        Map<Path, String> pages = pages("gone/cases.yaml");
        String told =
                assertThrows(NotWritten.class, () -> OutputFile.writeAll(pages)).getMessage();
        assertEquals(home.resolve("gone/cases.yaml") + ": there is no such folder", told);
        assertEquals("cards", Files.readString(home.resolve("cards.yaml")));
        assertEquals(List.of("cards.yaml"), names());
    }
}
