package fitworthy.counter.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.counter.InBrowser;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.Keys;
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

    private void press(String button) {
        Object version = version();
        page.press("[hx-post$='/" + button + "']");
        page.until(() -> !version.equals(version()));
    }

    /** In one look, since an answer puts the element anew. */
    private Object version() {
        return page.script("return document.getElementById('version').value");
    }

    private void untilSaid(String sheet, String winch) {
        page.until(() -> page.text(sheet + ".yaml").contains("kind: winch, mass: " + winch + "}"));
    }

    /** One press takes one answer back, whether it was typed letter by letter or said with how sure it is. */
    @Test
    void takesBackOneAnswerAPress() throws Exception {
        page.made("huia", "winch=26 kg");
        page.show("/sheets/huia.yaml");
        page.press("#f-fitments_1-fold-line");
        page.untilThere("#f-fitments_1_mass");
        type("f-fitments_1_mass", "31");
        untilSaid("huia", "31 kg");
        page.press("#f-title");
        type("f-fitments_1_mass", "42");
        untilSaid("huia", "42 kg");
        page.press("#f-title");
        type("f-fitments_1_mass", "53");
        page.type(Keys.TAB);
        page.type("about");
        untilSaid("huia", "about 53 kg");
        for (String before : List.of("42 kg", "31 kg", "26 kg")) {
            press("undo");
            untilSaid("huia", before);
        }
        for (String after : List.of("31 kg", "42 kg", "about 53 kg")) {
            press("redo");
            untilSaid("huia", after);
        }
    }

    /** So are two answers to questions of one field. */
    @Test
    void takesBackOneAnswerOfTheQuestions() throws Exception {
        page.made("kaka", "winch=26 kg");
        for (String mass : List.of("31 kg", "42 kg")) {
            String version = page.sheet("kaka.yaml").now().version();
            page.post("/sheets/kaka.yaml/answer", "path", "fitments.Winch.mass", "value", mass, "version", version);
        }
        page.show("/sheets/kaka.yaml");
        for (String before : List.of("31 kg", "26 kg")) {
            press("undo");
            untilSaid("kaka", before);
        }
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
