package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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

    private final Map<Path, String> before = new LinkedHashMap<>();
    private final Map<Path, String> after = new LinkedHashMap<>();

    /** Two pages of a topic, each to get a line more. */
    private void pages(String second) throws Exception {
        for (String name : List.of("cards.yaml", second)) {
            before.put(home.resolve(name), name + "\n");
            after.put(home.resolve(name), name + "\nand one more\n");
            if (Files.exists(home.resolve(name).getParent())) {
                Files.writeString(home.resolve(name), name + "\n");
            }
        }
    }

    @Test
    void allAreWritten() throws Exception {
        pages("cases.yaml");
        OutputFile.writeAll(home, before, after);
        assertEquals("cards.yaml\nand one more\n", Files.readString(home.resolve("cards.yaml")));
        assertEquals("cases.yaml\nand one more\n", Files.readString(home.resolve("cases.yaml")));
        assertEquals(List.of("cards.yaml", "cases.yaml"), names());
        assertFalse(OutputFile.takeBack(home));
    }

    @Test
    void oneThatCannotBeLeavesTheOthersAsTheyWere() throws Exception {
        pages("gone/cases.yaml");
        String told = assertThrows(NotWritten.class, () -> OutputFile.writeAll(home, before, after))
                .getMessage();
        assertEquals(home.resolve("gone/cases.yaml") + ": there is no such folder", told);
        assertEquals("cards.yaml\n", Files.readString(home.resolve("cards.yaml")));
        assertEquals(List.of("cards.yaml"), names());
    }
}
