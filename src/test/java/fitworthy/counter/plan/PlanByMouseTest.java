package fitworthy.counter.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.counter.Chrome;
import fitworthy.counter.InBrowser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
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

    /** What is said of a field stands at the foot of the window, and takes nothing's place. */
    @Test
    void nothingMovesAsOneGoesFromFieldToField() throws Exception {
        page.show("/sheets/weekender.yaml");
        WebElement below = page.find("#f-vehicle-fold-line");
        int top = below.getRect().getY();
        page.press("#f-title");
        assertTrue(page.find("#f-title-help").getRect().getHeight() > 1, "it is to be seen");
        assertEquals(top, below.getRect().getY());
        page.hand().moveToElement(below).clickAndHold().perform();
        assertEquals(top, below.getRect().getY());
        page.hand().release().perform();
        page.until(() -> page.find("#f-vehicle-fold").getDomAttribute("open") != null);
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
        page.post(
                "/new", "vehicle", "Kea 2.0", "fuel", "diesel", "people", "1", "region", "any", "do", "make", "file",
                "kea");
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
            page.until(() -> page.find(said).getText().startsWith("from the shelf"));
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

    /** Two presses within half a second, the first of which is answered by another page. */
    @Test
    void aSlowDoubleClickMakesOneSheet() throws Exception {
        page.show("/new");
        page.press("#customer");
        page.type("Hedda Moll", Keys.TAB, Keys.TAB, "Kea 2.0", Keys.TAB, Keys.SPACE);
        page.script("document.getElementById('region').value = 'any'; document.getElementById('people').value = '1'");
        page.script(
                "const button = document.querySelector('button.first'); button.click(); button.click(); setTimeout(() => button.click(), 0)");
        page.until(() -> page.window().getCurrentUrl().endsWith("/sheets/hedda-moll.yaml"));
        try (Stream<Path> files = Files.list(page.folder())) {
            assertEquals(
                    1,
                    files.filter(file -> file.getFileName().toString().startsWith("hedda"))
                            .count());
        }
    }

    @Test
    void whatWasTypedOfANewSheetIsThereAgain() {
        page.show("/new");
        page.press("#customer");
        page.type("Hedda Moll");
        page.press("#part-1");
        page.type("winch", Keys.ENTER, "bull bar");
        page.press("#notes");
        page.type("She goes north in May.");
        page.window().navigate().refresh();
        typedAgain();
        page.show("/");
        page.window().navigate().back();
        typedAgain();
        page.show("/");
        page.show("/new");
        page.until(() -> page.find("#customer").isDisplayed());
        assertEquals("", page.find("#customer").getDomProperty("value"), "another sheet");
    }

    private static void typedAgain() {
        page.until(() -> page.find("#part-1-said").getText().startsWith("from the shelf"));
        assertEquals("Hedda Moll", page.find("#customer").getDomProperty("value"));
        assertEquals("bull bar", page.find("#part-2").getDomProperty("value"));
        assertEquals("She goes north in May.", page.find("#notes").getDomProperty("value"));
    }

    @Test
    void whatIsChosenStaysChosen() throws Exception {
        page.post(
                "/new", "vehicle", "Tui 2.0", "fuel", "diesel", "people", "1", "region", "any", "do", "make", "file",
                "tui");
        page.show("/sheets/tui.yaml");
        page.press("#f-trip-fold-line");
        page.until(() -> page.isThere("#f-trip_dust"));
        page.press("#f-trip_dust");
        page.type("h", Keys.ENTER);
        page.until(() -> page.text("tui.yaml").contains("dust: heavy"));
        page.until(() -> "stated".equals(value("f-trip_dust-mark")));
        assertEquals("heavy", value("f-trip_dust"));
        assertEquals(4, page.all("#f-trip_dust option").size());
        page.press("#finder-line");
        page.until(() -> page.isThere("#finder-box"));
        page.press("#finder-box");
        page.type("wnch", Keys.ENTER);
        page.until(() -> page.find("#finder-box-fault").getText().contains("did you mean 'winch'?"));
        assertEquals("wnch", value("finder-box"), "words that are refused can be put right");
    }

    @Test
    void aFoldedThingTellsWhatWasNotTaken() throws Exception {
        page.made("huia", "winch");
        page.show("/sheets/huia.yaml");
        page.press("#f-fitments_1-fold-line");
        page.until(() -> page.isThere("#f-fitments_1_at"));
        page.press("#f-fitments_1_at");
        page.type("on the moon");
        page.until(() -> fault("f-fitments_1_at").contains("'on the moon' is no place in words"));
        page.press("#f-fitments_1-fold-line");
        assertEquals("\"Not taken: 'on the moon' is no place in words\"", told("f-fitments_1-fold-line"));
        page.press("#finder-line");
        page.until(() -> page.isThere("#finder-box"));
        page.press("#f-fitments_1-fold-line");
        page.press("#finder-box");
        page.type("snorkel", Keys.ENTER);
        page.until(() -> page.isThere("#f-fitments_2-fold-line"));
        page.until(() -> fault("f-fitments_1_at").contains("'on the moon'"));
        assertEquals("on the moon", value("f-fitments_1_at"), "though the plan is shown anew");
        page.press("#f-fitments_1_at");
        page.type(Keys.END, Keys.BACK_SPACE, Keys.BACK_SPACE, Keys.BACK_SPACE, Keys.BACK_SPACE, "roof");
        page.until(() -> page.text("huia.yaml").contains("at: on the roof"));
        page.until(() -> fault("f-fitments_1_at").isEmpty());
        page.press("#f-fitments_1-fold-line");
        assertEquals("none", told("f-fitments_1-fold-line"));
    }

    private static String fault(String field) {
        return page.find("#" + field + "-fault").getText();
    }

    /** What stands behind the words of a folded line, as CSS has it. */
    private static String told(String line) {
        return (String)
                page.script("return getComputedStyle(document.getElementById(arguments[0]), '::after').content", line);
    }

    /** On a narrow page another verdict takes another number of lines than there is room for. */
    @Test
    void nothingMovesUnderThePointerWhenTheVerdictIsAnother() throws Exception {
        Chrome.screen(page.window(), 320, 740);
        try {
            page.show("/sheets/touring.yaml");
            page.press("#f-fitments_6-fold-line");
            page.until(() -> page.isThere("#f-fitments_6_mass"));
            page.press("#f-fitments_6_mass");
            long bar = bar();
            page.type(Keys.HOME, "19");
            WebElement next = page.find("#f-fitments_6_at");
            page.script("arguments[0].scrollIntoView({block: 'center'})", next);
            long top = top(next);
            page.hand().moveToElement(next).clickAndHold().perform();
            page.until(() -> bar() != bar);
            assertEquals(top, top(next), 1, "px, with the button held");
            page.hand().release().perform();
            assertEquals("f-fitments_6_at", page.focused().getDomAttribute("id"));
        } finally {
            Chrome.screen(page.window(), 1280, 900);
            page.post("/sheets/touring.yaml/undo", "version", version());
        }
    }

    private static String version() {
        return value("version");
    }

    private static long bar() {
        return page.find("#state").getRect().getHeight();
    }

    private static long top(WebElement element) {
        return ((Number) page.script("return arguments[0].getBoundingClientRect().top", element)).longValue();
    }

    @Test
    void whatIsGoneToStandsBelowTheBar() {
        for (int width : new int[] {1280, 360}) {
            Chrome.screen(page.window(), width, 740);
            page.show("/sheets/touring.yaml");
            goneTo(".parts-of a[href='#f-occupants-title']", "#f-occupants-title");
            goneTo("#state .jump a[href='#told']", "#told");
        }
        Chrome.screen(page.window(), 1280, 900);
    }

    /** They lie at the end of the page, and come late. */
    @Test
    void questionsThatComeLateDoNotCarryThePageAway() {
        Chrome.screen(page.window(), 1280, 740);
        // They come a while after the page; a machine that is slow to press is given another go.
        int tries = 0;
        do {
            assertTrue(++tries < 6, "the questions never came late");
            page.show("/sheets/touring.yaml");
            page.press("#state .jump a[href='#asks']");
        } while (page.isThere("#asks li"));
        WebElement asks = page.find("#asks");
        long before = top(asks);
        page.until(() -> page.isThere("#asks li"));
        assertEquals(before, top(asks), "px");
        Chrome.screen(page.window(), 1280, 900);
    }

    private void goneTo(String link, String place) {
        page.press(link);
        WebElement gone = page.find(place);
        page.until(() -> top(gone) < 300);
        long end = ((Number) page.script("return document.getElementById('state').getBoundingClientRect().bottom"))
                .longValue();
        assertTrue(top(gone) >= end, place + ": " + top(gone) + " px, below the bar's " + end);
    }

    /** However long its name, what can be undone takes one line. */
    @Test
    void theButtonsOfTheBarStayInOneRow() throws Exception {
        page.post(
                "/new", "vehicle", "Moa 2.0", "fuel", "diesel", "people", "1", "region", "any", "do", "make", "file",
                "moa");
        page.show("/sheets/moa.yaml");
        long bar = bar();
        page.press("#finder-line");
        page.until(() -> page.isThere("#finder-box"));
        page.press("#finder-box");
        page.type(
                "A box of many things that have a name as long as a line of this page is wide or longer=cargo",
                Keys.ENTER);
        page.until(() -> page.text("moa.yaml").contains("A box of many things"));
        page.until(() -> page.find("#state .step").getText().contains("A box"));
        assertEquals(bar, bar());
    }

    private static String value(String id) {
        return page.find("#" + id).getDomProperty("value");
    }
}
