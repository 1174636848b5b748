package fitworthy.counter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
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
