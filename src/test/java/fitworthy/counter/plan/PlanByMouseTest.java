package fitworthy.counter.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.counter.Chrome;
import fitworthy.counter.Served;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** The plan and a new sheet in a browser, pressed and typed as a person does. */
class PlanByMouseTest {

    @TempDir
    static Path folder;

    private static Served served;
    private static ChromeDriver window;

    @BeforeAll
    static void open() throws Exception {
        window = Chrome.window(1280, 900);
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

    @Test
    void theFirstClickAddsAndNothingMovesUnderIt() throws Exception {
        show("touring.yaml");
        press("#finder-line");
        await(() -> !window.findElements(By.id("finder-box")).isEmpty());
        press("#finder-box");
        keys("fridge");
        await(() -> window.findElements(By.cssSelector("#finder-found button")).size() < 8);
        WebElement part = window.findElement(By.cssSelector("#finder-found button[value='Fridge 60 L']"));
        int top = part.getRect().getY();
        new Actions(window).moveToElement(part).clickAndHold().perform();
        assertEquals(top, part.getRect().getY());
        new Actions(window).release().perform();
        await(() -> sheet("touring.yaml").contains("- Fridge 60 L\n"));
    }

    /** What is said at a field goes when one leaves it, but not while the pointer is down on what stands below. */
    @Test
    void whatIsSaidAtAFieldStaysWhileThePointerIsDown() throws Exception {
        show("weekender.yaml");
        press("#f-title");
        WebElement below = window.findElement(By.id("f-vehicle-fold-line"));
        int top = below.getRect().getY();
        new Actions(window).moveToElement(below).clickAndHold().perform();
        assertEquals(top, below.getRect().getY());
        new Actions(window).release().perform();
        await(() -> window.findElement(By.id("f-vehicle-fold")).getDomAttribute("open") != null);
        await(() -> window.findElements(By.cssSelector("#plan .held")).isEmpty());
    }

    @Test
    void peopleAreAFewKeysFromTheFinder() throws Exception {
        show("touring.yaml");
        if (window.findElements(By.id("finder-box")).isEmpty()) {
            press("#finder-line");
        }
        await(() -> !window.findElements(By.id("finder-box")).isEmpty());
        press("#finder-box");
        keys(Keys.ARROW_DOWN, Keys.ARROW_DOWN);
        String second = window.findElements(By.cssSelector("#finder-found button"))
                .get(1)
                .getDomAttribute("value");
        assertEquals(second, focused().getDomAttribute("value"));
        int steps = 0;
        for (; steps < 12 && !"People".equals(focused().getText()); steps++) {
            keys(Keys.TAB);
        }
        assertEquals("People", focused().getText(), "after " + steps + " steps");
        keys(Keys.ENTER);
        await(() -> "f-occupants-title".equals(focused().getDomAttribute("id")));
        keys(Keys.TAB);
        assertEquals("f-occupants_1-fold-line", focused().getDomAttribute("id"));
    }

    @Test
    void theMarkFollowsTheValueThoughOneHasGoneOnToIt() throws Exception {
        served.post("/new", "vehicle", "Kea 2.0", "fuel", "diesel", "people", "1", "do", "make", "file", "kea");
        show("kea.yaml");
        press("#f-vehicle-fold-line");
        await(() -> !window.findElements(By.id("f-vehicle_seats")).isEmpty());
        press("#f-vehicle_seats");
        assertEquals("", mark());
        keys("5", Keys.TAB);
        assertEquals("f-vehicle_seats-mark", focused().getDomAttribute("id"));
        await(() -> sheet("kea.yaml").contains("seats: 5"));
        await(() -> "stated".equals(mark()));
    }

    private static String mark() {
        return window.findElement(By.id("f-vehicle_seats-mark")).getDomProperty("value");
    }

    @Test
    void thereIsAlwaysOneMoreLineAndEachStaysWhereItIs() throws Exception {
        window.get(served.at("/new"));
        for (int line = 1; line <= 14; line++) {
            press("#part-" + line);
            keys("winch");
            String said = "#part-" + line + "-said";
            await(() -> window.findElement(By.cssSelector(said)).getText().startsWith("kind: winch"));
        }
        assertEquals(15, window.findElements(By.cssSelector(".part-rows li")).size());
        press("#part-14");
        keys(Keys.BACK_SPACE.toString().repeat("winch".length()));
        WebElement last = window.findElement(By.id("part-15"));
        await(() -> window.findElement(By.id("part-14-said")).getText().isEmpty());
        int top = last.getRect().getY();
        keys("winch");
        await(() -> !window.findElement(By.id("part-14-said")).getText().isEmpty());
        assertEquals(top, last.getRect().getY());
    }

    @Test
    void whatIsChosenStaysChosen() throws Exception {
        served.post("/new", "vehicle", "Tui 2.0", "fuel", "diesel", "people", "1", "do", "make", "file", "tui");
        show("tui.yaml");
        press("#f-trip-fold-line");
        await(() -> !window.findElements(By.id("f-trip_dust")).isEmpty());
        press("#f-trip_dust");
        keys("h", Keys.ENTER);
        await(() -> sheet("tui.yaml").contains("dust: heavy"));
        await(() -> "stated".equals(value("f-trip_dust-mark")));
        assertEquals("heavy", value("f-trip_dust"));
        assertEquals(
                4, window.findElements(By.cssSelector("#f-trip_dust option")).size());
        press("#finder-line");
        await(() -> !window.findElements(By.id("finder-box")).isEmpty());
        press("#finder-box");
        keys("wnch", Keys.ENTER);
        await(() -> window.findElement(By.id("finder-box-fault")).getText().contains("did you mean 'winch'?"));
        assertEquals("wnch", value("finder-box"), "words that are refused can be put right");
    }

    @Test
    void aFoldedThingTellsWhatWasNotTaken() throws Exception {
        served.post(
                "/new",
                "vehicle",
                "Huia 2.0",
                "fuel",
                "diesel",
                "people",
                "1",
                "part",
                "winch",
                "do",
                "make",
                "file",
                "huia");
        show("huia.yaml");
        press("#f-fitments_1-fold-line");
        await(() -> !window.findElements(By.id("f-fitments_1_at")).isEmpty());
        press("#f-fitments_1_at");
        keys("on the moon");
        await(() -> fault("f-fitments_1_at").contains("'on the moon' is no place in words"));
        press("#f-fitments_1-fold-line");
        assertEquals("\"Not taken: 'on the moon' is no place in words\"", told("f-fitments_1-fold-line"));
        press("#finder-line");
        await(() -> !window.findElements(By.id("finder-box")).isEmpty());
        press("#f-fitments_1-fold-line");
        press("#finder-box");
        keys("snorkel", Keys.ENTER);
        await(() -> !window.findElements(By.id("f-fitments_2-fold-line")).isEmpty());
        await(() -> fault("f-fitments_1_at").contains("'on the moon'"));
        assertEquals("on the moon", value("f-fitments_1_at"), "though the plan is shown anew");
        press("#f-fitments_1_at");
        keys(Keys.END, Keys.BACK_SPACE, Keys.BACK_SPACE, Keys.BACK_SPACE, Keys.BACK_SPACE, "roof");
        await(() -> sheet("huia.yaml").contains("at: on the roof"));
        await(() -> fault("f-fitments_1_at").isEmpty());
        press("#f-fitments_1-fold-line");
        assertEquals("none", told("f-fitments_1-fold-line"));
    }

    private static String fault(String field) {
        return window.findElement(By.id(field + "-fault")).getText();
    }

    /** What stands behind the words of a folded line, as CSS has it. */
    private static String told(String line) {
        return (String) window.executeScript(
                "return getComputedStyle(document.getElementById(arguments[0]), '::after').content", line);
    }

    /** On a narrow page another verdict takes another number of lines than there is room for. */
    @Test
    void nothingMovesUnderThePointerWhenTheVerdictIsAnother() throws Exception {
        Chrome.screen(window, 320, 740);
        try {
            show("touring.yaml");
            press("#f-fitments_6-fold-line");
            await(() -> !window.findElements(By.id("f-fitments_6_mass")).isEmpty());
            press("#f-fitments_6_mass");
            long bar = bar();
            keys(Keys.HOME, "9");
            WebElement next = window.findElement(By.id("f-fitments_6_at"));
            window.executeScript("arguments[0].scrollIntoView({block: 'center'})", next);
            long top = top(next);
            new Actions(window).moveToElement(next).clickAndHold().perform();
            await(() -> bar() != bar);
            assertEquals(top, top(next), 1, "px, with the button held");
            new Actions(window).release().perform();
            assertEquals("f-fitments_6_at", focused().getDomAttribute("id"));
        } finally {
            Chrome.screen(window, 1280, 900);
            served.post("/sheets/touring.yaml/undo", "version", version());
        }
    }

    private static String version() {
        return value("version");
    }

    private static long bar() {
        return window.findElement(By.id("state")).getRect().getHeight();
    }

    private static long top(WebElement element) {
        return ((Number) window.executeScript("return arguments[0].getBoundingClientRect().top", element)).longValue();
    }

    @Test
    void whatIsGoneToStandsBelowTheBar() {
        for (int width : new int[] {1280, 360}) {
            Chrome.screen(window, width, 740);
            show("touring.yaml");
            press(".parts-of a[href='#f-occupants-title']");
            WebElement people = window.findElement(By.id("f-occupants-title"));
            await(() -> top(people) < 300);
            long end = ((Number) window.executeScript(
                            "return document.getElementById('state').getBoundingClientRect().bottom"))
                    .longValue();
            assertTrue(top(people) >= end, top(people) + " px, below the bar's " + end + " at " + width);
        }
        Chrome.screen(window, 1280, 900);
    }

    /** However long its name, what can be undone takes one line. */
    @Test
    void theButtonsOfTheBarStayInOneRow() throws Exception {
        served.post("/new", "vehicle", "Moa 2.0", "fuel", "diesel", "people", "1", "do", "make", "file", "moa");
        show("moa.yaml");
        long bar = bar();
        press("#finder-line");
        await(() -> !window.findElements(By.id("finder-box")).isEmpty());
        press("#finder-box");
        keys(
                "A box of many things that have a name as long as a line of this page is wide or longer=cargo",
                Keys.ENTER);
        await(() -> sheet("moa.yaml").contains("A box of many things"));
        await(() -> window.findElement(By.cssSelector("#state .step")).getText().contains("A box"));
        assertEquals(bar, bar());
    }

    private static String value(String id) {
        return window.findElement(By.id(id)).getDomProperty("value");
    }

    private static void show(String sheet) {
        window.get(served.at("/sheets/" + sheet));
    }

    private static String sheet(String name) throws Exception {
        return Files.readString(folder.resolve(name));
    }

    private static void press(String element) {
        WebElement found = window.findElement(By.cssSelector(element));
        window.executeScript("arguments[0].scrollIntoView({block: 'center'})", found);
        new Actions(window).moveToElement(found).click().perform();
    }

    private static WebElement focused() {
        return window.switchTo().activeElement();
    }

    private static void keys(CharSequence... keys) {
        for (CharSequence key : keys) {
            new Actions(window).sendKeys(key).perform();
        }
    }

    private interface Looked {
        boolean isSo() throws Exception;
    }

    private static void await(Looked looked) {
        new WebDriverWait(window, Duration.ofSeconds(30)).until(page -> {
            try {
                return looked.isSo();
            } catch (Exception e) {
                return false;
            }
        });
    }
}
