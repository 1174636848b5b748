package fitworthy.counter.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.counter.InBrowser;
import fitworthy.counter.desk.OpenSheet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/**
 * What is typed and pressed while an answer is on its way that shows the plan or the questions anew. Who holds a sheet
 * holds back all answers of it.
 */
class TypedMeanwhileTest {

    private static final String SNORKEL = "#f-fitments_2_";
    private static final String TAKE_WINCH_OFF = "#f-fitments_1-fold-off";

    /** How often an answer has shown the questions as they were found out, and not as they stood before. */
    private static final String COUNT_FOUND_OUT =
            """
            window.foundOut = 0;
            document.addEventListener("htmx:afterSettle", ({ detail }) => {
              window.foundOut += detail.pathInfo.requestPath.endsWith("/questions") ? 1 : 0;
            });
            """;

    @RegisterExtension
    static final InBrowser page = new InBrowser(1280, 900);

    /** A winch, a snorkel whose fields are open, and a third part that comes to stand in the snorkel's place. */
    private static OpenSheet shown(String name) throws Exception {
        page.made(name, "winch=26 kg", "snorkel=5 kg", "bull bar");
        page.show("/sheets/" + name + ".yaml");
        page.press("#f-fitments_2-fold-line");
        page.untilThere(SNORKEL + "at");
        return page.sheet(name + ".yaml");
    }

    private static String sheet(String name) throws Exception {
        return page.text(name + ".yaml");
    }

    /** What a sheet says of its part of this kind. */
    private static String part(String name, String kind) throws Exception {
        return List.of(sheet(name).split("(?m)^  - ")).stream()
                .filter(part -> part.contains("kind: " + kind))
                .findFirst()
                .orElse("");
    }

    private static String value(String selector) {
        return page.find(selector).getDomProperty("value");
    }

    private static void take(OpenSheet sheet, Runnable typed) {
        synchronized (sheet) {
            typed.run();
        }
    }

    @Test
    void oneGoesOnTypingInTheSameFieldWhereverItCameToStand() throws Exception {
        OpenSheet sheet = shown("huia");
        take(sheet, () -> {
            page.press(TAKE_WINCH_OFF);
            page.press(SNORKEL + "at");
            page.type("on roof", Keys.ARROW_LEFT, Keys.ARROW_LEFT, Keys.ARROW_LEFT, Keys.ARROW_LEFT);
        });
        page.until(() -> page.all("[id^=f-fitments_][id$=-fold-off]").size() == 2);
        assertEquals("f-fitments_1_at", page.focused().getDomAttribute("id"));
        page.type("the ");
        page.until(() -> part("huia", "snorkel").contains("at: on the roof"));
        assertEquals("on the roof", page.focused().getDomProperty("value"));
        assertFalse(part("huia", "bar").contains("at:"), sheet("huia"));
        assertEquals("", page.find("#unwritten").getText());
    }

    @Test
    void bothOfTwoFieldsAreWrittenThatWereLeftByTabAndByEnter() throws Exception {
        OpenSheet sheet = shown("kaka");
        take(sheet, () -> {
            page.press(TAKE_WINCH_OFF);
            page.press("#f-title");
            page.type(Keys.END, " once more", Keys.TAB);
            page.press(SNORKEL + "mass");
            page.hand().keyDown(Keys.CONTROL).sendKeys("a").keyUp(Keys.CONTROL).perform();
            page.type("7", Keys.ENTER);
            assertTrue(page.focused().getDomAttribute("id").startsWith(SNORKEL.substring(1)), "Enter moves on");
            page.press(SNORKEL + "at");
            page.type("on the roof", Keys.TAB);
        });
        page.until(() -> part("kaka", "snorkel").contains("at: on the roof"));
        assertTrue(part("kaka", "snorkel").contains("mass: 7 kg"), sheet("kaka"));
        assertTrue(sheet("kaka").contains(" once more\n"), sheet("kaka"));
        assertFalse(sheet("kaka").contains("kind: winch"), sheet("kaka"));
        assertEquals("on the roof", value("#f-fitments_1_at"));
        assertEquals("7", value("#f-fitments_1_mass"));
        assertEquals("", page.find("#unwritten").getText());
    }

    /** And what comes after it is sent all the same. */
    @Test
    void whatWasTypedOfAPartThatIsGoneIsSaid() throws Exception {
        OpenSheet sheet = shown("moa");
        take(sheet, () -> {
            page.press("#f-fitments_2-fold-off");
            page.press("#f-title");
            page.type(Keys.END, " once more", Keys.TAB);
            page.press(SNORKEL + "at");
            page.type("on the roof");
        });
        page.until(() -> sheet("moa").contains(" once more\n"));
        String said = page.find("#unwritten").getText();
        assertTrue(said.startsWith("Not written, for its field is gone: on the roof (Snorkel, "), said);
        assertFalse(sheet("moa").contains("kind: snorkel") || sheet("moa").contains("at: on the roof"), sheet("moa"));
        assertFalse(page.focused().getTagName().equals("input"), "typing goes on into no other part");
        page.press("#unwritten button");
        page.until(() -> page.find("#unwritten").getText().isEmpty());
        page.press("#f-title");
        page.type(Keys.END, " and again");
        page.until(() -> sheet("moa").contains(" once more and again\n"));
    }

    @Test
    void theNextWordsOfTheFinderStayTyped() throws Exception {
        OpenSheet sheet = shown("tui");
        page.press("#finder-line");
        page.untilThere("#finder-box");
        page.press("#finder-box");
        take(sheet, () -> {
            page.type("locker=20 kg", Keys.ENTER);
            page.hand().keyDown(Keys.CONTROL).sendKeys("a").keyUp(Keys.CONTROL).perform();
            page.type("radio=20 kg");
        });
        page.until(() -> page.all("[id^=f-fitments_][id$=-fold-off]").size() == 4);
        assertTrue(!part("tui", "locker").isEmpty(), sheet("tui"));
        assertEquals("radio=20 kg", value("#finder-box"));
        assertEquals("finder-box", page.focused().getDomAttribute("id"));
        page.type(Keys.ENTER);
        page.until(() -> part("tui", "radio").contains("20 kg"));
        page.until(() -> value("#finder-box").isEmpty());
    }

    @Test
    void aFormThatIsHalfFilledInStaysSo() throws Exception {
        OpenSheet sheet = shown("weka");
        take(sheet, () -> {
            page.press(TAKE_WINCH_OFF);
            page.press("#f-occupants-adding-line");
            page.press("#f-occupants-new-name");
            page.type("Hedda Moll", Keys.TAB);
        });
        page.until(() -> page.all("[id^=f-fitments_][id$=-fold-off]").size() == 2);
        assertEquals("Hedda Moll", value("#f-occupants-new-name"));
        page.press("#f-occupants-new");
        page.until(() -> sheet("weka").contains("Hedda Moll"));
        page.until(() -> value("#f-occupants-new-name").isEmpty());
    }

    @Test
    void theAnswersToTwoQuestionsAreBothWritten() throws Exception {
        OpenSheet sheet = shown("kea");
        page.until(() -> page.all("#asks .box input").size() > 1);
        List<WebElement> boxes = page.all("#asks .box input");
        String first = such(boxes.get(0));
        String second = such(boxes.get(1));
        take(sheet, () -> {
            answer(boxes.get(0), "about " + first);
            answer(boxes.get(1), "about " + second);
        });
        page.until(() -> sheet("kea").contains("about " + first) && sheet("kea").contains("about " + second));
        assertEquals("", page.find("#unwritten").getText());
    }

    @Test
    void whatIsTypedOfAQuestionThatIsAnsweredMeanwhileIsSaid() throws Exception {
        OpenSheet sheet = shown("ruru");
        page.untilThere("#asks .box input");
        WebElement box = page.find("#asks .box input");
        String such = such(box);
        take(sheet, () -> {
            answer(box, such);
            page.type(" or so");
        });
        page.until(() -> page.find("#unwritten").getText().contains(such + " or so"));
    }

    @Test
    void howSureAFigureIsCanBeSaidBeforeTheFigureIsWritten() throws Exception {
        OpenSheet sheet = shown("toroa");
        take(sheet, () -> {
            page.press(SNORKEL + "mass");
            page.hand().keyDown(Keys.CONTROL).sendKeys("a").keyUp(Keys.CONTROL).perform();
            page.type("7 +/- 2", Keys.TAB);
            assertEquals("f-fitments_2_mass-mark", page.focused().getDomAttribute("id"));
            page.type("about");
        });
        page.until(() -> part("toroa", "snorkel").contains("mass: about 7 kg +/- 2 kg"));
        page.until(() -> "about".equals(value(SNORKEL + "mass-mark")));
    }

    @Test
    void anAnswerThatIsRefusedStaysWithTheReasonUntilItIsMended() throws Exception {
        shown("tara");
        page.until(() -> page.all("#asks .box input").size() > 1);
        page.until(() -> !page.isThere(".htmx-request"));
        // Of the first few a question may go as others are found to matter more, and its box with it.
        page.press("#asks button[hx-get$='questions=all']");
        page.untilThere("#asks .asked[value=all]");
        WebElement box = page.find("#asks .box input");
        String id = box.getDomAttribute("id");
        answer(box, "178 stone");
        page.until(() -> !page.find("#" + id + "-fault").getText().isEmpty());
        String reason = page.find("#" + id + "-fault").getText();
        page.script(COUNT_FOUND_OUT);
        page.post(
                "/sheets/tara.yaml/set",
                "path",
                "customer",
                "value",
                "Ana Ferris",
                "version",
                page.find("#version").getDomProperty("value"));
        // The questions are shown anew with the customer, and once more as they are found out anew after that.
        page.until(() -> "Ana Ferris".equals(value("#f-customer")));
        assertRefused(id, reason);
        page.until(() -> (Boolean) page.script("return window.foundOut > 0"));
        assertRefused(id, reason);
        assertFalse(sheet("tara").contains("178"), sheet("tara"));
    }

    /** What fetches the questions stands in the advice, which may be shown anew before they are there. */
    @Test
    void questionsThatCameForWhatIsGoneWipeNothing() throws Exception {
        OpenSheet sheet = shown("kaka");
        page.untilThere("#asks .box input");
        page.until(() -> !page.isThere(".htmx-request"));
        WebElement box = page.find("#asks .box input");
        String id = box.getDomAttribute("id");
        answer(box, "178 stone");
        page.until(() -> !page.find("#" + id + "-fault").getText().isEmpty());
        String reason = page.find("#" + id + "-fault").getText();
        take(
                sheet,
                () -> page.script(
                        """
                        const asking = document.querySelector("#told > [hx-get$='/questions']");
                        document.addEventListener("htmx:beforeSwap", ({ detail }) => {
                          window.came ||= detail.requestConfig.elt === asking;
                        });
                        htmx.ajax("GET", asking.getAttribute("hx-get"), { source: asking, target: "#asks", swap: "pane" });
                        asking.replaceWith(asking.cloneNode(true));
                        """));
        page.until(() -> Boolean.TRUE.equals(page.script("return window.came")));
        assertRefused(id, reason);
    }

    private static void assertRefused(String id, String reason) {
        assertEquals(
                List.of(reason, "178 stone"),
                page.script(
                        "return [document.getElementById(arguments[0] + '-fault').textContent.trim(),"
                                + " document.getElementById(arguments[0]).value]",
                        id));
    }

    /** Of what is typed while an answer waits for its turn nothing goes along with it. */
    @Test
    void anAnswerIsWrittenAsItStoodWhenItWasGiven() throws Exception {
        OpenSheet sheet = shown("kotuku");
        page.untilThere("#asks .box input");
        WebElement box = page.find("#asks .box input");
        String such = such(box);
        take(sheet, () -> {
            page.press("#f-title");
            page.type(Keys.END, " once more", Keys.TAB);
            answer(box, such);
            page.hand().keyDown(Keys.CONTROL).sendKeys("a").keyUp(Keys.CONTROL).perform();
            page.type("5");
        });
        page.until(() -> page.find("#unwritten").getText().contains("field is gone: 5 ("));
        assertTrue(sheet("kotuku").contains(" once more\n"), sheet("kotuku"));
        assertTrue(sheet("kotuku").contains(": " + such), sheet("kotuku"));
    }

    /** What is found out meanwhile may move the box away from below the pointer. */
    private static void answer(WebElement box, String answer) {
        page.until(() -> {
            page.script("arguments[0].scrollIntoView({block: 'center', behavior: 'instant'})", box);
            page.hand().moveToElement(box).click().perform();
            return box.equals(page.focused());
        });
        page.type(answer, Keys.ENTER);
    }

    private static String such(WebElement box) {
        return box.findElement(By.xpath("ancestor::form"))
                .findElement(By.cssSelector(".such"))
                .getText()
                .replaceFirst("^such as ", "");
    }
}
