package fitworthy.counter.side;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.counter.Chrome;
import fitworthy.counter.Served;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** Things moved along the vehicle by hand, in a browser. */
class SideInBrowserTest {

    private static final String GEAR = "cargo.Camp gear.at";
    private static final Pattern WRITTEN = Pattern.compile("\\{from: Camp gear, at: \\{x: (-?\\d+) mm\\}\\}");
    private static final Pattern REAR = Pattern.compile("Rear axle\\s+(\\d+) kg of");

    @TempDir
    static Path folder;

    private static Served served;
    private static ChromeDriver window;
    private static String untouched;

    private final Path sheet = folder.resolve("touring.yaml");

    @BeforeAll
    static void open() throws Exception {
        window = Chrome.window(1280, 900);
        served = Served.copyIn(folder);
        untouched = Files.readString(folder.resolve("touring.yaml"));
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

    @BeforeEach
    void show() throws Exception {
        Files.writeString(sheet, untouched);
        window.get(served.at("/sheets/touring.yaml"));
        until(shown -> rear() > 0);
        window.executeScript("window.said = []; const told = document.querySelector('#main > [role=status]');"
                + "new MutationObserver(() => said.push(told.textContent)).observe(told, {childList: true})");
        window.executeScript("document.querySelector('.side-view').scrollIntoView({block: 'center'})");
    }

    private static void until(Function<ChromeDriver, Boolean> wanted) {
        new WebDriverWait(window, Duration.ofSeconds(60))
                .ignoring(StaleElementReferenceException.class)
                .until(driver -> wanted.apply(window));
    }

    private static WebElement handle() {
        return window.findElement(By.cssSelector("[data-path='" + GEAR + "']"));
    }

    private static int rear() {
        Matcher rear = REAR.matcher(window.findElement(By.id("loads")).getText());
        return rear.find() ? Integer.parseInt(rear.group(1)) : 0;
    }

    /** Where the sheet says that the gear is, mm; 3500 as the shelf has it. */
    private int written() {
        try {
            Matcher written = WRITTEN.matcher(Files.readString(sheet));
            return written.find() ? Integer.parseInt(written.group(1)) : 3500;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The middle of the gear's mark in the window, px. */
    private static double[] middle() {
        List<?> at = (List<?>) window.executeScript(
                "const b = arguments[0].querySelector('circle').getBoundingClientRect();"
                        + "return [b.left + b.width / 2, b.top + b.height / 2]",
                handle());
        return new double[] {((Number) at.get(0)).doubleValue(), ((Number) at.get(1)).doubleValue()};
    }

    /** How many px a metre is wide. */
    private static double metre() {
        return ((Number) window.executeScript("const v = document.querySelector('.side-view');"
                        + "return v.dataset.metre * v.getScreenCTM().a"))
                .doubleValue();
    }

    /** Rear axle and file agree: 140 kg moved by so many mm on axles 3260 mm apart; both figures are rounded. */
    private void assertCarried(int rearBefore) {
        until(shown -> Math.abs(rear() - rearBefore - 140.0 * (written() - 3500) / 3260) <= 1);
    }

    @Test
    void byMouse() throws Exception {
        int rear = rear();
        int px = (int) Math.round(metre() * 0.4);
        new Actions(window)
                .moveToElement(handle().findElement(By.cssSelector("circle")))
                .clickAndHold()
                .moveByOffset(px, 0)
                .perform();
        until(shown -> rear() > rear + 10);
        assertTrue(handle().getDomAttribute("transform").startsWith("translate("), "it follows while it is held");
        new Actions(window).release().perform();
        until(shown -> handle().getDomAttribute("transform") == null);
        assertTrue(Math.abs(written() - 3500 - px / metre() * 1000) <= 10, "at " + written());
        assertCarried(rear);
        window.executeScript("document.querySelector('[hx-post$=\"/undo\"]').click()");
        until(shown -> written() == 3500);
        assertEquals(untouched, Files.readString(sheet));
        until(shown -> rear() == rear);
    }

    @Test
    void byFinger() throws Exception {
        int rear = rear();
        double[] from = middle();
        double px = metre() * 0.5;
        touch("touchStart", from[0], from[1]);
        for (int i = 1; i <= 10; i++) {
            touch("touchMove", from[0] - px * i / 10, from[1]);
        }
        until(shown -> rear() < rear - 10);
        window.executeCdpCommand("Input.dispatchTouchEvent", Map.of("type", "touchEnd", "touchPoints", List.of()));
        until(shown -> handle().getDomAttribute("transform") == null);
        assertTrue(Math.abs(written() - 3000) <= 20, "at " + written());
        assertCarried(rear);
    }

    private static void touch(String type, double x, double y) {
        window.executeCdpCommand(
                "Input.dispatchTouchEvent", Map.of("type", type, "touchPoints", List.of(Map.of("x", x, "y", y))));
    }

    @Test
    void byArrowKeys() throws Exception {
        int rear = rear();
        window.executeScript("arguments[0].focus()", handle());
        type(Keys.ARROW_RIGHT);
        until(shown -> written() == 3510);
        until(shown -> focused().startsWith("Camp gear, 140 kg, 250 mm behind"));
        leap(Keys.ARROW_RIGHT);
        leap(Keys.ARROW_RIGHT);
        type(Keys.ARROW_LEFT);
        until(shown -> written() == 3700);
        assertCarried(rear);
        until(shown -> focused().startsWith("Camp gear, 140 kg, 440 mm behind"));
        until(shown -> said().contains("Camp gear, 140 kg, 440 mm behind the rear axle. "));
        // Past the canopy and the tray, which stand further back then.
        for (int i = 0; i < 6; i++) {
            leap(Keys.ARROW_LEFT);
        }
        until(shown -> written() == 3100);
        until(shown -> focused().startsWith("Camp gear, 140 kg, 3100 mm behind the front axle"));
        type(Keys.HOME);
        until(shown -> written() == 3500);
        until(shown -> rear() == rear);
        assertEquals(untouched, Files.readString(sheet));
    }

    @Test
    void onANarrowScreenThePictureStaysWhereItWasScrolledTo() {
        Chrome.screen(window, 360, 740);
        try {
            window.get(served.at("/sheets/touring.yaml"));
            until(shown -> rear() > 0);
            // By the focus, as it is for whoever moves it by key.
            window.executeScript("arguments[0].focus()", handle());
            until(shown -> scrolled() > 50);
            long scrolled = scrolled();
            int rear = rear();
            leap(Keys.ARROW_RIGHT);
            leap(Keys.ARROW_RIGHT);
            until(shown -> written() == 3700);
            assertCarried(rear);
            until(shown -> focused().startsWith("Camp gear, 140 kg, 440 mm behind"));
            assertEquals(scrolled, scrolled(), "px");
        } finally {
            Chrome.screen(window, 1280, 900);
        }
    }

    /** How far the picture is scrolled to the right, px. */
    private static long scrolled() {
        return ((Number) window.executeScript("return Math.round(document.querySelector('.side-scroll').scrollLeft)"))
                .longValue();
    }

    /** All that was told to those who hear the page. */
    private static String said() {
        return String.valueOf(window.executeScript("return said.join('')"));
    }

    private static void type(CharSequence keys) {
        new Actions(window).sendKeys(keys).perform();
    }

    private static void leap(Keys way) {
        new Actions(window).keyDown(Keys.SHIFT).sendKeys(way).keyUp(Keys.SHIFT).perform();
    }

    private static String focused() {
        return String.valueOf(window.executeScript("return document.activeElement.getAttribute('aria-label')"));
    }

    @Test
    void anotherLoading() {
        window.findElement(By.cssSelector("input[name=loading][value='canopy off']"))
                .click();
        until(shown -> window.findElements(By.cssSelector("[data-path='fitments.Canopy.at']"))
                .isEmpty());
        assertEquals(
                "canopy off",
                window.findElement(By.cssSelector("#loads h2")).getText().replace("What it carries: ", ""));
        assertEquals("canopy off", window.executeScript("return document.activeElement.value"));
    }
}
