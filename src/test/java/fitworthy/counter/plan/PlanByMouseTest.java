package fitworthy.counter.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
