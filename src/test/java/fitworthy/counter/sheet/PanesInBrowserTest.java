package fitworthy.counter.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.counter.InBrowser;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.WebElement;

/** What an answer shows anew, of which the page keeps what has not changed. */
class PanesInBrowserTest {

    /** Keeps panes that came out otherwise than they were sent, and counts those that came, whole and in part. */
    private static final String COMPARED =
            """
            window.panes = 0;
            window.inPart = 0;
            window.otherwise = [];
            const sent = new Map();
            document.addEventListener("htmx:oobBeforeSwap", ({ detail }) => {
              if (detail.target.matches(".pane")) sent.set(detail.target, detail.fragment.innerHTML);
            });
            document.addEventListener("htmx:oobAfterSwap", ({ detail }) => {
              if (!sent.has(detail.target)) return;
              panes++;
              if (sent.get(detail.target).includes("data-from")) inPart++;
              else if (detail.target.innerHTML !== sent.get(detail.target)) otherwise.push(detail.target.id);
              sent.delete(detail.target);
            });
            const looks = (pane) => {
              const copy = pane.cloneNode(true);
              // What is told of the change itself.
              copy.querySelectorAll(".news, .by, .fresh").forEach((told) => told.remove());
              return copy.innerHTML.replace(/\\s+/g, " ").replaceAll(" <", "<").replaceAll(' class=""', "");
            };
            window.compared = async () => {
              const loading = document.querySelector("[name=loading]:checked")?.value ?? "";
              const whole = await (await fetch(`/sheets/touring.yaml/look?${new URLSearchParams({ loading })}`)).text();
              for (const pane of new DOMParser().parseFromString(whole, "text/html").querySelectorAll("[hx-swap-oob^='pane:#']")) {
                const id = pane.getAttribute("hx-swap-oob").slice("pane:#".length);
                const kept = ["state", "side", "loads", "room", "told"].includes(id);
                const [meant, shown] = [looks(pane), looks(document.getElementById(id))];
                const parts = [...meant].findIndex((sign, i) => sign !== shown[i]);
                if (kept && meant !== shown) {
                  otherwise.push(`${id} has ${shown.slice(parts - 40, parts + 80)} for ${meant.slice(parts - 40, parts + 80)}`);
                }
              }
            };
            """;

    private static final String SEND =
            """
            const [way, values, done] = arguments;
            const source = document.querySelector(".comes");
            new Promise((answered) => inTurn(source, () =>
              answered(htmx.ajax("POST", `/sheets/touring.yaml/${way}`, { source, swap: "none", values }))))
              .then(() => window.compared?.()).then(() => done());
            """;

    @RegisterExtension
    static final InBrowser page = new InBrowser(1280, 900);

    @BeforeEach
    void aSheet() {
        page.show("/sheets/touring.yaml");
    }

    private void send(String way, Map<String, String> values) {
        page.window().executeAsyncScript(SEND, way, values);
    }

    private void set(String path, String value) {
        send("set", Map.of("path", path, "value", value));
    }

    @Test
    void comesOutAsItWasSent() {
        page.script(COMPARED);
        set("fitments.1.mass", "300 kg");
        set("fitments.2.mass", "about 410 kg");
        set("title", "");
        set("vehicle.gvm", "ask");
        set("trailer.mass", "3400 kg");
        set("region", "uk");
        int changes = 6;
        List<String> parts = List.of("fitments.1", "cargo.1", "trailer", "fitments.7");
        for (String part : parts) {
            send("take-off", Map.of("path", part));
        }
        changes += parts.size();
        for (String way : List.of("undo", "redo", "undo")) {
            for (int i = 0; i < changes; i++) {
                send(way, Map.of());
            }
        }
        assertEquals(List.of(), page.script("return otherwise"));
        int panes = ((Number) page.script("return panes")).intValue();
        assertTrue(panes >= 4 * changes * 7, panes + " panes");
        int inPart = ((Number) page.script("return inPart")).intValue();
        assertTrue(inPart >= 4 * changes * 3, inPart + " in part");
    }

    /** To undo what was done since leaves all as it was when the answer was asked for, so that nothing of it is sent. */
    @Test
    void anAnswerToWhatThePageNoLongerShowsIsNotTaken() {
        String key = page.find(".side-key ol").getText();
        String shows = page.find("#shows").getDomAttribute("value");
        set("fitments.1.mass", "300 kg");
        page.until(() -> page.find(".side-key ol").getText().contains("300 kg"));
        send("undo", Map.of("shows", shows));
        page.until(() -> page.find(".side-key ol").getText().equals(key));
    }

    /** Such as a program that translates pages: what is left out of an answer would be put where something else is. */
    @Test
    void whereAnotherHandHasPutSomethingIntoThePageAllIsSentAnew() {
        page.script("document.querySelector('.side-key ol').prepend(document.createElement('li'))");
        set("fitments.1.mass", "300 kg");
        page.until(() -> page.find(".side-key ol").getText().contains("300 kg"));
        assertEquals(
                page.script("return document.querySelectorAll('.side-key li span:first-child').length"),
                page.script("return document.querySelectorAll('.side-key li').length"));
    }

    @Test
    void whatHasNotChangedIsTheSameElement() {
        WebElement key = page.find(".side-key li:last-child");
        WebElement undo = page.find("#state button");
        set("fitments.1.mass", "300 kg");
        page.until(() -> !page.find("#told .news").getText().isEmpty());
        assertTrue(key.isDisplayed());
        assertTrue(undo.isEnabled());
    }

    /** Its text may have changed, so that it is fetched once more. */
    @Test
    void anExplanationThatWasOpenedCanBeOpenedAgainAfterAnEdit() {
        String first = "#told .found details";
        page.press(first + " > summary");
        page.untilThere(first + " > .why > *");
        page.press(first + " > summary");
        set("fitments.1.mass", "300 kg");
        page.until(() -> !page.isThere(first + "[open]") && !page.isThere(first + " > .why > *"));
        page.press(first + " > summary");
        page.untilThere(first + " > .why > *");
    }

    /** A field that was left says what is written once that is another value. */
    @Test
    void aFieldThatWasLeftSaysWhatIsWritten() {
        page.press("#f-title");
        page.script("document.activeElement.value = 'typed, but not sent'");
        page.press("#f-customer");
        set("as-of", "2026-01-02");
        page.until(() -> !"typed, but not sent".equals(page.find("#f-title").getDomProperty("value")));
        assertEquals(
                page.find("#f-title").getDomAttribute("value"),
                page.find("#f-title").getDomProperty("value"));
    }

    /** The field is left, and so sent, by the press itself; a quick hand presses before that is answered. */
    @Test
    void undoTakesBackWhatIsJustBeingTyped() {
        set("customer", "Ana Ferris");
        page.until(() -> "customer".equals(page.find("[hx-post$='/undo'] .step").getText()));
        String title = page.find("#f-title").getDomAttribute("value");
        page.press("#f-title");
        page.type(" and more");
        page.script("document.activeElement.blur(); document.querySelector(\"[hx-post$='/undo']\").click()");
        page.until(() -> "title".equals(page.find("[hx-post$='/redo'] .step").getText()));
        assertEquals(title, page.find("#f-title").getDomProperty("value"));
        assertEquals("", page.find("#faults").getText());
    }
}
