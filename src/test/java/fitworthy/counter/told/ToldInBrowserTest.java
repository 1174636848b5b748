package fitworthy.counter.told;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fitworthy.counter.Chrome;
import fitworthy.counter.Served;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.WebDriverWait;

/** The advice in a browser, by keyboard alone. */
class ToldInBrowserTest {

    private static final String FIRST = "why-mass.gvm-tight-vehicle";

    @TempDir
    static Path folder;

    private static Served served;
    private static ChromeDriver window;

    @BeforeAll
    static void open() throws Exception {
        window = Chrome.window(1280, 900);
        // A slow machine takes its time over a long page.
        window.manage().timeouts().scriptTimeout(Duration.ofMinutes(4));
        served = Served.copyIn(folder);
        window.get(served.address());
    }

    @AfterAll
    static void close() {
        if (window != null) {
            window.quit();
        }
        if (served != null) {
            served.close();
        }
    }

    private static <T> T until(Function<ChromeDriver, T> wanted) {
        return new WebDriverWait(window, Duration.ofMinutes(2))
                .ignoring(StaleElementReferenceException.class)
                .until(driver -> wanted.apply(window));
    }

    /** What has the focus gets these keys. */
    private static void type(CharSequence... keys) {
        window.switchTo().activeElement().sendKeys(keys);
    }

    private static void focus(String id) {
        window.executeScript("document.getElementById(arguments[0]).focus()", id);
    }

    private static boolean isShown(String words) {
        return window.findElement(By.tagName("main")).getText().contains(words);
    }

    @Test
    void anOpenedExplanationStaysOpenWhileOneEditsElsewhere() throws Exception {
        window.get(served.at("/sheets/touring.yaml"));
        WebElement summary = window.findElement(By.id(FIRST)).findElement(By.tagName("summary"));
        window.executeScript("arguments[0].focus()", summary);
        type(Keys.ENTER);
        until(driver -> isShown("front = mass x (1 - at / wheelbase)"));
        window.executeAsyncScript(
                "const done = arguments[0]; document.body.addEventListener('htmx:afterRequest', () => setTimeout(done, 300), {once: true});"
                        + "htmx.ajax('POST', '/sheets/touring.yaml/answer', {source: document.querySelector('.work'), swap: 'none',"
                        + " values: {path: 'occupants.Ines.mass', value: '56 kg +/- 3 kg', version: document.getElementById('version').value}})");
        until(driver -> isShown("ront axle 5 kg less"));
        assertEquals("true", window.findElement(By.id(FIRST)).getAttribute("open"));
        until(driver -> driver.findElement(By.id(FIRST)).getText().matches("(?s).*Ines +56\\.0.*"));
    }

    @Test
    void aMissingAnswerLeadsToItsFieldInThePlan() {
        window.get(served.at("/sheets/touring.yaml"));
        window.executeScript("document.querySelector('#rest-open summary').click()");
        WebElement link = until(driver -> driver.findElements(By.cssSelector("#rest-open .field-link")).stream()
                .filter(field -> field.getText().equals("suits of Front springs"))
                .findFirst()
                .orElse(null));
        link.sendKeys(Keys.ENTER);
        until(driver -> driver.switchTo().activeElement().getAttribute("id").endsWith("_suits"));
        assertEquals(
                "Front springs",
                window.executeScript(
                        "return document.getElementById(document.activeElement.id.replace('suits', 'name')).value"));
    }

    @Test
    void anOfferIsTriedTakenAndUndoneByKeyboard() throws Exception {
        Path file = folder.resolve("overloaded.yaml");
        byte[] before = Files.readAllBytes(file);
        window.get(served.at("/sheets/overloaded.yaml"));
        focus("look-for-offers");
        type(Keys.ENTER);
        List<String> offers = until(driver -> {
            List<String> ids = driver.findElements(By.cssSelector("[id^=try-]")).stream()
                    .map(button -> button.getAttribute("id"))
                    .toList();
            return ids.isEmpty() ? null : ids;
        });
        for (String offer : offers) {
            until(driver -> !driver.findElements(By.id(offer)).isEmpty());
            focus(offer);
            type(Keys.ENTER);
            until(driver -> driver.switchTo().activeElement().getAttribute("id").equals("tried"));
            assertArrayEquals(before, Files.readAllBytes(file));
            if (!window.findElements(By.id("take-offer")).isEmpty()) {
                break;
            }
            // It cannot be written into this file, so there is nothing but to leave it.
            type(Keys.TAB);
            type(Keys.ENTER);
            until(driver -> driver.switchTo().activeElement().getAttribute("id").equals(offer));
        }
        String told =
                window.findElement(By.cssSelector(".as-it-would-be .news")).getText();
        type(Keys.TAB);
        type(Keys.ENTER);
        until(driver -> isShown("Undo takes it back"));
        assertFalse(Arrays.equals(before, Files.readAllBytes(file)));
        assertEquals(told, window.findElement(By.cssSelector("#told .news")).getText());
        WebElement undo = window.findElement(By.cssSelector("[hx-post$='/undo']"));
        window.executeScript("arguments[0].focus()", undo);
        type(Keys.ENTER);
        until(driver -> !isShown("Undo takes it back"));
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void nothingIsInTheWayOfAReaderWhoCannotSee() throws Exception {
        window.get(served.at("/sheets/touring.yaml"));
        until(driver -> !driver.findElements(By.cssSelector("#asks .answer")).isEmpty());
        for (String id : List.of("rest-open", "rest-met", "why-body.chassis-unapproved-Wheelbase+stretch")) {
            window.executeScript("document.getElementById(arguments[0]).querySelector('summary').click()", id);
        }
        until(driver -> isShown("in the rule book") && isShown("Assessed and in order"));
        assertEquals(List.of(), Chrome.inTheWay(window));
    }
}
