package fitworthy.counter.side;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.counter.Chrome;
import fitworthy.counter.InBrowser;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** Things moved along the vehicle by hand, in a browser. */
class SideInBrowserTest {

    private static final String GEAR = "cargo.Camp gear.at";
    private static final Pattern WRITTEN = Pattern.compile("\\{from: Camp gear, at: \\{x: (-?\\d+) mm\\}\\}");
    private static final Pattern REAR = Pattern.compile("Rear axle\\s+(\\d+) kg of");

    @RegisterExtension
    static final InBrowser page = new InBrowser(1280, 900);

    private static String untouched;

    @BeforeEach
    void show() throws Exception {
        untouched = page.text("touring.yaml");
        page.show("/sheets/touring.yaml");
        page.until(() -> rear() > 0);
        page.script("window.said = []; const told = document.querySelector('#main > [role=status]');"
                + "new MutationObserver(() => said.push(told.textContent)).observe(told, {childList: true})");
        page.script("document.querySelector('.side-view').scrollIntoView({block: 'center'})");
    }

    private static WebElement handle() {
        return page.find("[data-path='" + GEAR + "']");
    }

    private static int rear() {
        Matcher rear = REAR.matcher(page.find("#loads").getText());
        return rear.find() ? Integer.parseInt(rear.group(1)) : 0;
    }

    /** Where the sheet says that the gear is, mm; 3500 as the shelf has it. */
    private static int written() throws IOException {
        Matcher written = WRITTEN.matcher(page.text("touring.yaml"));
        return written.find() ? Integer.parseInt(written.group(1)) : 3500;
    }

    /** The middle of the gear's mark in the window, px. */
    private static double[] middle() {
        List<?> at = (List<?>) page.script(
                "const b = arguments[0].querySelector('circle').getBoundingClientRect();"
                        + "return [b.left + b.width / 2, b.top + b.height / 2]",
                handle());
        return new double[] {((Number) at.get(0)).doubleValue(), ((Number) at.get(1)).doubleValue()};
    }

    /** How many px a metre is wide. */
    private static double metre() {
        return ((Number) page.script("const v = document.querySelector('.side-view');"
                        + "return v.dataset.metre * v.getScreenCTM().a"))
                .doubleValue();
    }

    /** Rear axle and file agree: 140 kg moved by so many mm on axles 3260 mm apart; both figures are rounded. */
    private static void assertCarried(int rearBefore) {
        page.until(() -> Math.abs(rear() - rearBefore - 140.0 * (written() - 3500) / 3260) <= 1);
    }

    @Test
    void byMouse() throws Exception {
        int rear = rear();
        int px = (int) Math.round(metre() * 0.4);
        page.hand()
                .moveToElement(handle().findElement(By.cssSelector("circle")))
                .clickAndHold()
                .moveByOffset(px, 0)
                .perform();
        page.until(() -> rear() > rear + 10);
        assertTrue(handle().getDomAttribute("transform").startsWith("translate("), "it follows while it is held");
        page.hand().release().perform();
        page.until(() -> handle().getDomAttribute("transform") == null);
        assertTrue(Math.abs(written() - 3500 - px / metre() * 1000) <= 10, "at " + written());
        assertCarried(rear);
        page.script("document.querySelector('[hx-post$=\"/undo\"]').click()");
        page.until(() -> written() == 3500);
        assertEquals(untouched, page.text("touring.yaml"));
        page.until(() -> rear() == rear);
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
        page.until(() -> rear() < rear - 10);
        page.window()
                .executeCdpCommand("Input.dispatchTouchEvent", Map.of("type", "touchEnd", "touchPoints", List.of()));
        page.until(() -> handle().getDomAttribute("transform") == null);
        assertTrue(Math.abs(written() - 3000) <= 20, "at " + written());
        assertCarried(rear);
    }

    private static void touch(String type, double x, double y) {
        page.window()
                .executeCdpCommand(
                        "Input.dispatchTouchEvent",
                        Map.of("type", type, "touchPoints", List.of(Map.of("x", x, "y", y))));
    }

    @Test
    void byArrowKeys() throws Exception {
        int rear = rear();
        page.script("arguments[0].focus()", handle());
        page.type(Keys.ARROW_RIGHT);
        page.until(() -> written() == 3510);
        page.until(() -> focused().startsWith("Camp gear, 140 kg, 250 mm behind"));
        leap(Keys.ARROW_RIGHT);
        leap(Keys.ARROW_RIGHT);
        page.type(Keys.ARROW_LEFT);
        page.until(() -> written() == 3700);
        assertCarried(rear);
        page.until(() -> focused().startsWith("Camp gear, 140 kg, 440 mm behind"));
        page.until(() -> said().contains("Camp gear, 140 kg, 440 mm behind the rear axle. "));
        // Past the canopy and the tray, which stand further back then.
        for (int i = 0; i < 6; i++) {
            leap(Keys.ARROW_LEFT);
        }
        page.until(() -> written() == 3100);
        page.until(() -> focused().startsWith("Camp gear, 140 kg, 3100 mm behind the front axle"));
        page.type(Keys.HOME);
        page.until(() -> written() == 3500);
        page.until(() -> rear() == rear);
        assertEquals(untouched, page.text("touring.yaml"));
    }

    @Test
    void onANarrowScreenThePictureStaysWhereItWasScrolledTo() {
        Chrome.screen(page.window(), 360, 740);
        try {
            page.show("/sheets/touring.yaml");
            page.until(() -> rear() > 0);
            // By the focus, as it is for whoever moves it by key.
            page.script("arguments[0].focus()", handle());
            page.until(() -> scrolled() > 50);
            long scrolled = scrolled();
            int rear = rear();
            leap(Keys.ARROW_RIGHT);
            leap(Keys.ARROW_RIGHT);
            page.until(() -> written() == 3700);
            assertCarried(rear);
            page.until(() -> focused().startsWith("Camp gear, 140 kg, 440 mm behind"));
            assertEquals(scrolled, scrolled(), "px");
        } finally {
            Chrome.screen(page.window(), 1280, 900);
        }
    }

    /** How far the picture is scrolled to the right, px. */
    private static long scrolled() {
        return ((Number) page.script("return Math.round(document.querySelector('.side-scroll').scrollLeft)"))
                .longValue();
    }

    /** All that was told to those who hear the page. */
    private static String said() {
        return String.valueOf(page.script("return said.join('')"));
    }

    private static void leap(Keys way) {
        page.hand().keyDown(Keys.SHIFT).sendKeys(way).keyUp(Keys.SHIFT).perform();
    }

    private static String focused() {
        return String.valueOf(page.script("return document.activeElement.getAttribute('aria-label')"));
    }

    /** Another thing is changed in the plan, and that is taken back. */
    @Test
    void theLoadingThatWasChosenStaysThroughAChange() throws Exception {
        String first = loading();
        assertFalse(first.equals("canopy off"), "another is chosen at first");
        choose("canopy off");
        page.window()
                .executeAsyncScript("const done = arguments[0]; htmx.ajax('POST', '/sheets/touring.yaml/set',"
                        + " {source: '.comes', swap: 'none', values: {path: 'fitments.6.mass', value: '99 kg'}})"
                        + ".then(() => done())");
        page.until(() -> page.text("touring.yaml").contains("mass: 99 kg"));
        page.until(() -> page.isThere("#told .news:not(:empty)"));
        assertChosen();
        String changed = page.find("#told .news").getText();
        page.script("document.querySelector('[hx-post$=\"/undo\"]').click()");
        page.until(() -> page.text("touring.yaml").equals(untouched));
        page.until(() -> !page.find("#told .news").getText().equals(changed));
        assertChosen();
        choose(first);
    }

    private static void choose(String loading) {
        page.script("arguments[0].click()", page.find("input[name=loading][value='" + loading + "']"));
        page.until(() -> loading().equals(loading));
    }

    private static void assertChosen() {
        assertEquals("canopy off", loading());
        assertEquals("canopy off", page.script("return document.querySelector('[name=loading]:checked').value"));
        assertEquals(List.of(), page.all("[data-path='fitments.Canopy.at']"), "the picture is that loading's too");
    }

    private static String loading() {
        return page.find("#loads h2").getText().replace("What it carries: ", "");
    }

    @Test
    void anotherLoading() {
        page.find("input[name=loading][value='canopy off']").click();
        page.until(() -> page.all("[data-path='fitments.Canopy.at']").isEmpty());
        assertEquals("canopy off", loading());
        assertEquals("canopy off", page.script("return document.activeElement.value"));
    }
}
