package fitworthy.counter.plan;

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
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** The plan in a browser, by the keyboard alone. */
class PlanInABrowserTest {

    private static final String MASS = "f-fitments_6_mass";

    @TempDir
    Path folder;

    private ChromeDriver window;

    @Test
    void oneTypesAddsAndTakesOffByTheKeyboardAlone() throws Exception {
        try (Served served = Served.copyIn(folder)) {
            window = Chrome.window(1280, 900);
            try {
                window.get(served.address());
                window.get(served.at("/sheets/touring.yaml"));
                typesAMass();
                addsAPart();
                takesItOffAndUndoes();
            } finally {
                window.quit();
            }
        }
    }

    private void typesAMass() throws Exception {
        focus("f-fitments_6-fold-line");
        keys(Keys.ENTER);
        await(() -> !window.findElements(By.id(MASS)).isEmpty());
        String margins = window.findElement(By.id("side")).getText();
        WebElement box = window.findElement(By.id(MASS));
        focus(MASS);
        // Into the middle, so that a cursor that jumps is seen.
        keys(Keys.HOME, Keys.ARROW_RIGHT, "0");
        await(() -> Files.readString(folder.resolve("touring.yaml")).contains("mass: 508 kg +/- 2 kg"));
        keys("1");
        await(() -> Files.readString(folder.resolve("touring.yaml")).contains("mass: 5018 kg +/- 2 kg"));
        assertEquals("5018 +/- 2", box.getDomProperty("value"));
        assertEquals(box, focused(), "the box itself is never put anew");
        await(() -> !margins.equals(window.findElement(By.id("side")).getText()));
        keys(Keys.BACK_SPACE, Keys.BACK_SPACE);
        await(() -> Files.readString(folder.resolve("touring.yaml")).contains("mass: 58 kg +/- 2 kg"));
        keys("x");
        await(() -> window.findElement(By.id(MASS + "-fault")).getText().contains("5x8"));
        assertEquals("5x8 +/- 2", box.getDomProperty("value"));
        assertEquals(box, focused(), "the box itself is never put anew");
        assertTrue(Files.readString(folder.resolve("touring.yaml")).contains("mass: 58 kg +/- 2 kg"));
        keys(Keys.BACK_SPACE, Keys.ENTER);
        await(() -> !focused().equals(box));
        String next = (String) window.executeScript("return document.activeElement.id");
        assertTrue(next.startsWith("f-fitments_6_"), "Enter moves on, not to " + next);
    }

    private void addsAPart() throws Exception {
        focus("finder-line");
        keys(Keys.ENTER);
        await(() -> !window.findElements(By.id("finder-box")).isEmpty());
        focus("finder-box");
        keys("fridge 60");
        await(() -> window.findElements(By.cssSelector("#finder-found button")).size() < 5);
        keys(Keys.TAB, Keys.TAB);
        String added = focused().getDomAttribute("value");
        assertEquals("Fridge 60 L", added);
        keys(Keys.ENTER);
        await(() -> Files.readString(folder.resolve("touring.yaml")).contains("- " + added + "\n"));
        await(() -> window.findElement(By.id("plan")).getText().contains(added));
        await(() -> added.equals(focused().getDomAttribute("value")));
    }

    private void takesItOffAndUndoes() throws Exception {
        long parts = parts();
        focus("f-fitments_" + parts + "-fold-off");
        keys(Keys.ENTER);
        await(() -> parts() == parts - 1);
        assertFalse(Files.readString(folder.resolve("touring.yaml")).contains("- Fridge 60 L\n"));
        window.executeScript("document.querySelector('#state button').focus()");
        keys(Keys.ENTER);
        await(() -> parts() == parts);
        assertTrue(Files.readString(folder.resolve("touring.yaml")).contains("- Fridge 60 L\n"));
    }

    private long parts() {
        return window.findElements(By.cssSelector("[id^=f-fitments_][id$=-fold-off]"))
                .size();
    }

    private WebElement focused() {
        return window.switchTo().activeElement();
    }

    private void focus(String id) {
        window.executeScript("document.getElementById(arguments[0]).focus()", id);
    }

    private void keys(CharSequence... keys) {
        for (CharSequence key : keys) {
            new Actions(window).sendKeys(key).perform();
        }
    }

    private interface Looked {
        boolean isSo() throws Exception;
    }

    private void await(Looked looked) {
        new WebDriverWait(window, Duration.ofSeconds(30)).until(page -> {
            try {
                return looked.isSo();
            } catch (Exception e) {
                return false;
            }
        });
    }
}
