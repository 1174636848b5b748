package fitworthy.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Holds the made parts of docs/ to the code; with {@code -Dupdate.docs=true} it writes them instead. */
class SheetDocsTest {

    @Test
    void docsSayWhatTheCodeReads() throws IOException {
        if (Boolean.getBoolean("update.docs")) {
            SheetDocs.refresh();
        }
        for (Map.Entry<Path, String> file : SheetDocs.files().entrySet()) {
            assertTrue(
                    Files.exists(file.getKey()),
                    () -> file.getKey() + " is not there; make it with: " + SheetDocs.REFRESH);
            assertEquals(
                    file.getValue(),
                    Files.readString(file.getKey()),
                    () -> file.getKey() + " is not what the code says; refresh it with: " + SheetDocs.REFRESH);
        }
    }
}
