package fitworthy.counter.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.counter.InBrowser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WindowType;

/** What stands typed as a page is left: by a link, by going back, by closing it. Who holds a sheet holds back its answers. */
class LeavingInBrowserTest {

    private static final String BUY = ".tabs a[href$='/buy']";

    @RegisterExtension
    static final InBrowser page = new InBrowser(1280, 900);

    /** Types what stands beside the first question as an example, and strikes no key after it. @return what was typed */
    private static String filledIn(String name) throws Exception {
        page.made(name, "winch=26 kg");
        return filledInAnew(name);
    }

    private static String filledInAnew(String name) {
        page.show("/sheets/" + name + ".yaml");
        page.untilThere("#asks .box input");
        String id = page.find("#asks .box input").getDomAttribute("id");
        String such = page.find("#" + id + "-such").getText().replaceFirst("^such as ", "");
        page.press("#" + id);
        page.type(such);
        return such;
    }

    private static void untilWritten(String name, String answer) {
        page.until(() -> page.text(name + ".yaml").contains(": " + answer));
    }

    private static void held(String sheet, Runnable typed) {
        synchronized (page.sheet(sheet)) {
            typed.run();
        }
    }

    private static boolean isAt(String path) {
        return page.window().getCurrentUrl().endsWith(path);
    }

    @Test
    void anAnswerIsWrittenBeforeALinkIsFollowed() throws Exception {
        String answer = filledIn("huia");
        held("huia.yaml", () -> {
            page.press(BUY);
            assertTrue(isAt("huia.yaml"), "not before it is written");
        });
        page.until(() -> isAt("/buy"));
        assertTrue(page.text("huia.yaml").contains(": " + answer), page.text("huia.yaml"));
    }

    /** The next press goes, since the reason was seen. */
    @Test
    void anAnswerThatIsRefusedKeepsItsPage() throws Exception {
        page.made("kaka", "winch=26 kg");
        String before = page.text("kaka.yaml");
        page.show("/sheets/kaka.yaml");
        page.untilThere("#asks .box input");
        String id = page.find("#asks .box input").getDomAttribute("id");
        page.press("#" + id);
        page.type("178 stone");
        page.press(BUY);
        page.until(() -> !page.find("#" + id + "-fault").getText().isEmpty());
        page.until(() -> id.equals(page.focused().getDomAttribute("id")));
        assertEquals("178 stone", page.focused().getDomProperty("value"));
        assertTrue(isAt("kaka.yaml"));
        page.press(BUY);
        page.until(() -> isAt("/buy"));
        assertEquals(before, page.text("kaka.yaml"));
    }

    @Test
    void anAnswerIsWrittenAsOneGoesBackOrClosesThePage() throws Exception {
        page.show("/");
        String answer = filledIn("moa");
        page.window().navigate().back();
        untilWritten("moa", answer);
        String before = page.text("moa.yaml");
        String first = page.window().getWindowHandle();
        page.window().switchTo().newWindow(WindowType.TAB);
        filledInAnew("moa");
        page.window().close();
        page.window().switchTo().window(first);
        page.until(() -> !page.text("moa.yaml").equals(before));
    }

    /** A name is sent only once its box is left, and so is what waits for its turn. */
    @Test
    void whatWaitsIsWrittenAsOneGoesBack() throws Exception {
        page.show("/");
        page.made("tui", "winch=26 kg", "snorkel=5 kg");
        page.show("/sheets/tui.yaml");
        page.press("#f-fitments_2-fold-line");
        page.untilThere("#f-fitments_2_name");
        held("tui.yaml", () -> {
            page.press("#f-fitments_1-fold-off");
            page.press("#f-title");
            page.type(Keys.END, " once more");
            page.press("#f-fitments_2_name");
            page.type(Keys.END, " of old");
            page.window().navigate().back();
        });
        page.until(() -> page.text("tui.yaml").contains(" once more\n"));
        page.until(() -> page.text("tui.yaml").contains("name: Snorkel of old"));
        page.until(() -> !page.text("tui.yaml").contains("kind: winch"));
    }

    @Test
    void whatIsOnlyLookedForOrNotFilledInHoldsNobody() throws Exception {
        page.made("weka", "winch=26 kg");
        String before = page.text("weka.yaml");
        page.show("/sheets/weka.yaml");
        page.press("#finder-line");
        page.untilThere("#finder-box");
        page.press("#finder-box");
        page.type("lock");
        page.press(BUY);
        page.until(() -> isAt("/buy"));
        assertEquals(before, page.text("weka.yaml"));
        assertFalse(before.contains("lock"));
    }
}
