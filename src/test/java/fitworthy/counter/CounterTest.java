package fitworthy.counter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;

/** The counter as a whole. */
class CounterTest {

    @RegisterExtension
    static final InBrowser page = new InBrowser(1280, 900);

    @Test
    void aChangeIsWrittenIntoTheSheet() throws Exception {
        String html = page.get("/sheets/touring.yaml").body();
        String version = html.replaceAll("(?s).*id=\"version\" name=\"version\" value=\"([^\"]*)\".*", "$1");
        page.post(
                "/sheets/touring.yaml/set",
                "version",
                version,
                "path",
                "occupants.Ines.mass",
                "value",
                "67 kg +/- 3 kg");
        assertTrue(page.text("touring.yaml").contains("name: Ines, mass: 67 kg +/- 3 kg"));
    }

    @Test
    void whatAKilledRunHadBegunToWriteIsSweptAway(@TempDir Path folder) throws Exception {
        Path killed = Files.writeString(folder.resolve(".kept.yaml.1f2e3d4c.part"), "title: half");
        Path own = Files.writeString(folder.resolve("notes.part"), "of somebody's");
        Path hidden = Files.writeString(folder.resolve(".kept.txt.1f2e3d4c.part"), "no sheet");
        for (Path old : List.of(killed, own, hidden)) {
            Files.setLastModifiedTime(old, FileTime.from(Instant.now().minusSeconds(60)));
        }
        Path other = Files.writeString(folder.resolve(".now.yaml.5a6b7c8d.part"), "title: another counter writes");
        try (Served served = Served.copyIn(folder)) {
            assertFalse(Files.exists(killed));
            assertTrue(Files.exists(own) && Files.exists(hidden) && Files.exists(other));
            assertEquals(200, served.get("/").statusCode());
        }
    }

    @Test
    void inABrowser() throws Exception {
        page.show("/");
        page.window()
                .findElement(By.linkText("Long-range tourer with lift-off canopy and camper"))
                .click();
        assertEquals(
                "Long-range tourer with lift-off canopy and camper touring.yaml",
                page.find("h1").getText());
    }
}
