package fitworthy.counter.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.counter.InBrowser;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.WebElement;

/** A press on Undo right after a figure was typed, which leaves its field and so sends it, on a phone's width. */
class UndoInBrowserTest {

    /** As long as a hand holds a button down: the answer to the edit may come meanwhile. */
    private static final Duration HELD = Duration.ofMillis(120);

    @RegisterExtension
    final InBrowser page = new InBrowser(360, 740);

    private void type(String field, String value) {
        page.press("#" + field);
        page.script("document.activeElement.select()");
        page.type(value);
    }

    private void holdUndo() {
        WebElement undo = page.find("[hx-post$='/undo']");
        page.hand().moveToElement(undo).clickAndHold().pause(HELD).release().perform();
    }

    private void undone(String field, String value) {
        page.until(() -> page.find("[hx-post$='/redo'] .step")
                .getDomProperty("textContent")
                .startsWith("mass of "));
        page.until(() -> value.equals(page.find("#" + field).getDomProperty("value")));
        assertEquals("", page.find("#faults").getText());
    }

    /** A heavier part makes the verdict longer, and the first change makes Undo possible. */
    @Test
    void takesTheFigureBack() {
        page.show("/sheets/touring.yaml");
        String field = "f-fitments_6_mass";
        page.script("document.getElementById('f-fitments_6-fold-line').click()");
        page.untilThere("#" + field);
        String before = page.find("#" + field).getDomProperty("value");
        type(field, "990");
        holdUndo();
        undone(field, before);
        type(field, "1990");
        holdUndo();
        undone(field, before);
    }
}
