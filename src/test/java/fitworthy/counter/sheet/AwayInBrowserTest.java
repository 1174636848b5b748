package fitworthy.counter.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.counter.InBrowser;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.Cookie;
import org.openqa.selenium.Keys;

/** A page whose counter is not there, or was started anew with another key. */
class AwayInBrowserTest {

    private static final String SEEN =
            """
            const box = document.getElementById("away").getBoundingClientRect();
            return box.height > 0 && box.top >= 0 && box.bottom <= innerHeight
              && document.getElementById("away").contains(document.elementFromPoint(box.left + 20, box.top + box.height / 2));
            """;

    @RegisterExtension
    static final InBrowser page = new InBrowser(1280, 900);

    @BeforeEach
    void aSheet() {
        page.show("/sheets/touring.yaml");
    }

    private static void away(boolean away) {
        page.window()
                .executeCdpCommand(
                        "Network.emulateNetworkConditions",
                        Map.of("offline", away, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
    }

    private static String told() {
        return page.find("#away").getText();
    }

    private static void typeTitle(String more) {
        page.press("#f-title");
        page.type(Keys.END, more, Keys.TAB);
    }

    @Test
    void isToldWhereverOneIsAndWhatWasTypedIsWrittenOnceItIsBack() throws Exception {
        page.window().executeCdpCommand("Network.enable", Map.of());
        try {
            away(true);
            typeTitle(" without the dog");
            page.until(() -> told().startsWith("The counter does not answer. What was typed last is not written yet"));
            for (String place : new String[] {"#f-title", "#asks", "#plan", "footer"}) {
                page.script("document.querySelector(arguments[0]).scrollIntoView({behavior: 'instant'})", place);
                assertEquals(true, page.script(SEEN), place);
            }
            assertFalse(page.text("touring.yaml").contains("without the dog"));
        } finally {
            away(false);
        }
        page.until(() -> page.text("touring.yaml").contains("without the dog"));
        page.until(() -> told().isEmpty());
    }

    @Test
    void goesOnOnceSomebodyIsLetInAnew() throws Exception {
        Set<Cookie> let = page.window().manage().getCookies();
        page.window().manage().deleteAllCookies();
        typeTitle(" with a boat");
        page.until(() -> told().startsWith("The counter does not know this page"));
        assertTrue(told().contains("Open the address that it printed"), told());
        assertFalse(page.text("touring.yaml").contains("with a boat"));
        let.forEach(page.window().manage()::addCookie);
        page.until(() -> page.text("touring.yaml").contains("with a boat"));
        page.until(() -> told().isEmpty());
        assertEquals("", page.find("#faults").getText());
    }

    /** A sheet whose questions ask for figures, and the first field of these. */
    private static String asked(String name) throws Exception {
        page.made(name, "winch=26 kg");
        page.show("/sheets/" + name + ".yaml");
        page.untilThere("#asks .box input");
        return page.find("#asks .box input").getDomAttribute("id");
    }

    private static String such(String field) {
        return page.find("#" + field + "-such").getText().replaceFirst("^such as ", "");
    }

    /** What is typed there after it was given goes along with it no more than while it waits for its turn. */
    @Test
    void anAnswerThatWasGivenMeanwhileIsWrittenOnceItIsBack() throws Exception {
        String field = asked("miro");
        String such = such(field);
        String before = page.text("miro.yaml");
        page.window().executeCdpCommand("Network.enable", Map.of());
        try {
            away(true);
            page.press("#" + field);
            page.type(such, Keys.ENTER);
            page.until(() -> told().contains("printed another address, open that"));
            page.type("5");
        } finally {
            away(false);
        }
        page.until(() -> told().isEmpty());
        page.until(() -> !page.text("miro.yaml").equals(before));
        assertTrue(page.text("miro.yaml").contains(": " + such), page.text("miro.yaml"));
        assertFalse(page.text("miro.yaml").contains(such + "5"), page.text("miro.yaml"));
    }

    @Test
    void anAnswerThatWasGivenIsWrittenOnceSomebodyIsLetInAnew() throws Exception {
        String field = asked("rata");
        String such = such(field);
        Set<Cookie> let = page.window().manage().getCookies();
        page.window().manage().deleteAllCookies();
        page.press("#" + field);
        page.type(such, Keys.ENTER);
        page.until(() -> told().startsWith("The counter does not know this page"));
        assertFalse(page.text("rata.yaml").contains(": " + such), page.text("rata.yaml"));
        let.forEach(page.window().manage()::addCookie);
        page.until(() -> told().isEmpty());
        page.until(() -> page.text("rata.yaml").contains(": " + such));
    }
}
