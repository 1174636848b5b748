package fitworthy.counter.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.counter.InBrowser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The plan and a new sheet in a browser, pressed and typed as a person does. */
class PlanByMouseTest {

    @RegisterExtension
    static final InBrowser page = new InBrowser(1280, 900);

    @Test
    void theFirstClickAddsAndNothingMovesUnderIt() throws Exception {
        page.show("/sheets/touring.yaml");
        page.press("#finder-line");
        page.untilThere("#finder-box");
        page.press("#finder-box");
        page.type("fridge");
        page.until(() -> page.all("#finder-found button").size() < 8);
        WebElement part = page.find("#finder-found button[value='Fridge 60 L']");
        int top = part.getRect().getY();
        page.hand().moveToElement(part).clickAndHold().perform();
        assertEquals(top, part.getRect().getY());
        page.hand().release().perform();
        page.until(() -> page.text("touring.yaml").contains("- Fridge 60 L\n"));
    }

    /** What is said at a field goes when one leaves it, but not while the pointer is down on what stands below. */
    @Test
    void whatIsSaidAtAFieldStaysWhileThePointerIsDown() throws Exception {
        page.show("/sheets/weekender.yaml");
        page.press("#f-title");
        WebElement below = page.find("#f-vehicle-fold-line");
        int top = below.getRect().getY();
        page.hand().moveToElement(below).clickAndHold().perform();
        assertEquals(top, below.getRect().getY());
        page.hand().release().perform();
        page.until(() -> page.find("#f-vehicle-fold").getDomAttribute("open") != null);
        page.until(() -> !page.isThere("#plan .held"));
    }

    @Test
    void peopleAreAFewKeysFromTheFinder() throws Exception {
        page.show("/sheets/touring.yaml");
        if (!page.isThere("#finder-box")) {
            page.press("#finder-line");
        }
        page.untilThere("#finder-box");
        page.press("#finder-box");
        page.type(Keys.ARROW_DOWN, Keys.ARROW_DOWN);
        String second = page.all("#finder-found button").get(1).getDomAttribute("value");
        assertEquals(second, page.focused().getDomAttribute("value"));
        int steps = 0;
        for (; steps < 12 && !"People".equals(page.focused().getText()); steps++) {
            page.type(Keys.TAB);
        }
        assertEquals("People", page.focused().getText(), "after " + steps + " steps");
        page.type(Keys.ENTER);
        page.until(() -> "f-occupants-title".equals(page.focused().getDomAttribute("id")));
        page.type(Keys.TAB);
        assertEquals("f-occupants_1-fold-line", page.focused().getDomAttribute("id"));
    }

    @Test
    void theMarkFollowsTheValueThoughOneHasGoneOnToIt() throws Exception {
        page.post("/new", "vehicle", "Kea 2.0", "fuel", "diesel", "people", "1", "do", "make", "file", "kea");
        page.show("/sheets/kea.yaml");
        page.press("#f-vehicle-fold-line");
        page.untilThere("#f-vehicle_seats");
        page.press("#f-vehicle_seats");
        assertEquals("", mark());
        page.type("5", Keys.TAB);
        assertEquals("f-vehicle_seats-mark", page.focused().getDomAttribute("id"));
        page.until(() -> page.text("kea.yaml").contains("seats: 5"));
        page.until(() -> "stated".equals(mark()));
    }

    private static String mark() {
        return page.find("#f-vehicle_seats-mark").getDomProperty("value");
    }

    @Test
    void thereIsAlwaysOneMoreLineAndEachStaysWhereItIs() throws Exception {
        page.show("/new");
        for (int line = 1; line <= 14; line++) {
            page.press("#part-" + line);
            page.type("winch");
            String said = "#part-" + line + "-said";
            page.until(() -> page.find(said).getText().startsWith("kind: winch"));
        }
        assertEquals(15, page.all(".part-rows li").size());
        page.press("#part-14");
        page.type(Keys.BACK_SPACE.toString().repeat("winch".length()));
        WebElement last = page.find("#part-15");
        page.until(() -> page.find("#part-14-said").getText().isEmpty());
        int top = last.getRect().getY();
        page.type("winch");
        page.until(() -> !page.find("#part-14-said").getText().isEmpty());
        assertEquals(top, last.getRect().getY());
    }
}
