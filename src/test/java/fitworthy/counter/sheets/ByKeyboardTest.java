package fitworthy.counter.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.counter.Chrome;
import fitworthy.counter.Served;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A sheet from nothing, without a mouse. */
class ByKeyboardTest {

    private static final int MOST_STEPS = 60;

    @TempDir
    Path folder;

    private ChromeDriver window;

    @Test
    void aSheetIsMadeFromNothing() throws Exception {
        try (Served served = Served.copyIn(folder)) {
            window = Chrome.window(360, 740);
            try {
                window.get(served.address());
                until("#sheets .by-stop");
                tabTo(By.linkText("New sheet"));
                type(Keys.ENTER);
                until("#customer");
                assertEquals("customer", focused().getAttribute("id"));
                type("Ines Varga", Keys.TAB, "KT-0600", Keys.ENTER, "Tarrenby 3.0 wagon", Keys.ENTER, Keys.SPACE);
                assertEquals("diesel", focused().getAttribute("value"));
                type(Keys.ENTER, "2", Keys.ENTER, "Queensland");
                assertEquals(served.at("/new"), window.getCurrentUrl(), "Enter moves on, and makes nothing");
                assertFalse(Files.exists(folder.resolve("ines-varga.yaml")));
                tabTo(By.id("part-1"));
                // Nine parts: one more than there are fields at first.
                for (String part : new String[] {
                    "bull bar", "wnch", "snorkel", "fridge", "drawers", "awning", "lift kit", "tyres", "water tank=60 L"
                }) {
                    type(part, Keys.ENTER);
                }
                assertEquals("part-10", focused().getAttribute("id"));
                until("#part-2-said.fault");
                assertEquals(
                        0, window.findElements(By.cssSelector("pre.sheet-text")).size());
                back("part-2");
                type(Keys.END, Keys.BACK_SPACE, Keys.BACK_SPACE, Keys.BACK_SPACE, "inch=26 kg");
                until("pre.sheet-text");
                assertEquals(
                        "kind: winch, 26 kg",
                        window.findElement(By.id("part-2-said")).getText());
                tabTo(By.cssSelector("button.first"));
                type(Keys.ENTER);
                new WebDriverWait(window, Duration.ofSeconds(60)).until(ExpectedConditions.urlContains("/sheets/"));
                assertEquals(served.at("/sheets/ines-varga.yaml"), window.getCurrentUrl());
                String text = Files.readString(folder.resolve("ines-varga.yaml"));
                assertTrue(text.contains("region: au-qld") && text.contains("capacity: 60 L"), text);
            } finally {
                window.quit();
            }
        }
    }

    private WebElement focused() {
        return window.switchTo().activeElement();
    }

    private void type(CharSequence... keys) {
        for (CharSequence key : keys) {
            focused().sendKeys(key);
        }
    }

    private void tabTo(By element) {
        move(window.findElement(element), Keys.TAB);
    }

    private void back(String id) {
        move(window.findElement(By.id(id)), Keys.chord(Keys.SHIFT, Keys.TAB));
    }

    private void move(WebElement to, CharSequence key) {
        for (int i = 0; i < MOST_STEPS && !focused().equals(to); i++) {
            type(key);
        }
        assertEquals(to, focused(), "not reached by the keyboard");
    }

    private void until(String shown) {
        new WebDriverWait(window, Duration.ofSeconds(60))
                .until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(shown)));
    }
}
