package fitworthy.counter.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.counter.InBrowser;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** A sheet from nothing, without a mouse. */
class ByKeyboardTest {

    private static final int MOST_STEPS = 60;

    @RegisterExtension
    static final InBrowser page = new InBrowser(360, 740);

    @Test
    void aSheetIsMadeFromNothing() throws Exception {
        page.untilThere("#sheets .by-stop");
        tabTo(By.linkText("New sheet"));
        page.type(Keys.ENTER);
        page.untilThere("#customer");
        assertEquals("customer", page.focused().getAttribute("id"));
        page.type("Ines Varga", Keys.TAB, "KT-0600", Keys.ENTER, "Tarrenby 3.0 wagon", Keys.ENTER, Keys.SPACE);
        assertEquals("diesel", page.focused().getAttribute("value"));
        page.type(Keys.ENTER, "87", Keys.ENTER, "Queensland", Keys.ENTER, "2", Keys.ENTER);
        assertEquals("masses", page.focused().getAttribute("id"));
        assertEquals(page.at("/new"), page.window().getCurrentUrl(), "Enter moves on, and makes nothing");
        assertFalse(Files.exists(page.folder().resolve("ines-varga.yaml")));
        tabTo(By.id("part-1"));
        // Nine parts: one more than there are fields at first.
        for (String part : new String[] {
            "bull bar", "wnch", "snorkel", "fridge", "drawers", "awning", "lift kit", "tyres", "water tank=60 L"
        }) {
            page.type(part, Keys.ENTER);
        }
        assertEquals("part-10", page.focused().getAttribute("id"));
        page.untilThere("#part-2-said.fault");
        assertFalse(page.isThere("pre.sheet-text"));
        back("part-2");
        page.type(Keys.END, Keys.BACK_SPACE, Keys.BACK_SPACE, Keys.BACK_SPACE, "inch=26 kg");
        page.untilThere("pre.sheet-text");
        page.until(() -> "kind: winch, 26 kg. On the shelf Winch has 39 kg +/- 1 kg"
                .equals(page.find("#part-2-said").getText()));
        tabTo(By.cssSelector("button.first"));
        page.type(Keys.ENTER);
        page.until(() -> page.window().getCurrentUrl().contains("/sheets/"));
        assertEquals(page.at("/sheets/ines-varga.yaml"), page.window().getCurrentUrl());
        String text = page.text("ines-varga.yaml");
        assertTrue(text.contains("region: au-qld") && text.contains("  - Water tank 60 L\n"), text);
        assertTrue(text.contains("capacity: 87 L, stock: yes}") && text.contains("trip: {people: 2}"), text);
    }

    private static void tabTo(By element) {
        move(page.window().findElement(element), () -> page.type(Keys.TAB));
    }

    private static void back(String id) {
        move(page.find("#" + id), () -> page.hand()
                .keyDown(Keys.SHIFT)
                .sendKeys(Keys.TAB)
                .keyUp(Keys.SHIFT)
                .perform());
    }

    private static void move(WebElement to, Runnable step) {
        for (int i = 0; i < MOST_STEPS && !page.focused().equals(to); i++) {
            step.run();
        }
        assertEquals(to, page.focused(), "not reached by the keyboard");
    }
}
