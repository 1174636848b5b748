package fitworthy.counter.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.counter.InBrowser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The plan in a browser, by the keyboard alone. */
class PlanInABrowserTest {

    private static final String MASS = "f-fitments_6_mass";

    @RegisterExtension
    static final InBrowser page = new InBrowser(1280, 900);

    @Test
    void oneTypesAddsAndTakesOffByTheKeyboardAlone() throws Exception {
        page.show("/sheets/touring.yaml");
        typesAMass();
        addsAPart();
        takesItOffAndUndoes();
    }

    @Test
    void aPartWithoutTheCircuitThatTheShelfKeepsForItIsOfferedItByOnePress() throws Exception {
        page.made("huia", "radio");
        page.show("/sheets/huia.yaml");
        page.press("#f-circuits_1-fold-off");
        page.untilThere(".doubled button[value='Radio']");
        assertFalse(page.text("huia.yaml").contains("  - Radio\ncircuits:\n  - Radio"), page.text("huia.yaml"));
        page.press(".doubled button[value='Radio']");
        page.until(() -> page.text("huia.yaml").contains("  - {from: Radio, part: Radio}\n"));
        page.until(() -> !page.isThere(".doubled button[value='Radio']"));
    }

    /** By the pointer too, where the fields are there already, and not where one has gone elsewhere meanwhile. */
    @Test
    void whoeverOpensWhatAddsSomethingGoesOnInItsFirstField() throws Exception {
        page.made("kea");
        page.show("/sheets/kea.yaml");
        page.press("#f-cargo-adding-line");
        page.until(() -> "f-cargo-new-name".equals(page.focused().getDomAttribute("id")));
        synchronized (page.sheet("kea.yaml")) {
            page.press("#finder-line");
            page.press("#f-title");
        }
        page.untilThere("#finder-box");
        assertEquals("f-title", page.focused().getDomAttribute("id"));
        page.press("#finder-line");
        assertEquals("finder-line", page.focused().getDomAttribute("id"), "closed");
        page.press("#finder-line");
        page.until(() -> "finder-box".equals(page.focused().getDomAttribute("id")));
    }

    private void typesAMass() throws Exception {
        page.focus("f-fitments_6-fold-line");
        page.type(Keys.ENTER);
        page.untilThere("#" + MASS);
        String margins = page.find("#side").getText();
        WebElement box = page.find("#" + MASS);
        page.focus(MASS);
        // Into the middle, so that a cursor that jumps is seen.
        page.type(Keys.HOME, Keys.ARROW_RIGHT, "0");
        page.until(() -> page.text("touring.yaml").contains("mass: 508 kg +/- 2 kg"));
        page.type("1");
        page.until(() -> page.text("touring.yaml").contains("mass: 5018 kg +/- 2 kg"));
        assertEquals("5018 +/- 2", box.getDomProperty("value"));
        assertEquals(box, page.focused(), "the box itself is never put anew");
        page.until(() -> !margins.equals(page.find("#side").getText()));
        page.type(Keys.BACK_SPACE, Keys.BACK_SPACE);
        page.until(() -> page.text("touring.yaml").contains("mass: 58 kg +/- 2 kg"));
        page.type("x");
        page.until(() -> page.find("#" + MASS + "-fault").getText().contains("5x8"));
        assertEquals("5x8 +/- 2", box.getDomProperty("value"));
        assertEquals(box, page.focused(), "the box itself is never put anew");
        assertTrue(page.text("touring.yaml").contains("mass: 58 kg +/- 2 kg"));
        page.type(Keys.BACK_SPACE, Keys.ENTER);
        page.until(() -> !page.focused().equals(box));
        String next = (String) page.script("return document.activeElement.id");
        assertTrue(next.startsWith("f-fitments_6_"), "Enter moves on, not to " + next);
    }

    private void addsAPart() throws Exception {
        page.focus("finder-line");
        page.type(Keys.ENTER);
        page.until(() -> "finder-box".equals(page.focused().getDomAttribute("id")));
        page.type("fridge 60");
        page.until(() -> page.all("#finder-found button").size() < 5);
        page.type(Keys.TAB, Keys.TAB);
        String added = page.focused().getDomAttribute("value");
        assertEquals("Fridge 60 L", added);
        page.type(Keys.ENTER);
        page.until(() -> page.text("touring.yaml").contains("- " + added + "\n"));
        page.until(() -> page.find("#plan").getText().contains(added));
        page.until(() -> added.equals(page.focused().getDomAttribute("value")));
    }

    private void takesItOffAndUndoes() throws Exception {
        long parts = parts();
        page.focus("f-fitments_" + parts + "-fold-off");
        page.type(Keys.ENTER);
        page.until(() -> parts() == parts - 1);
        assertFalse(page.text("touring.yaml").contains("- Fridge 60 L\n"));
        page.script("document.querySelector('#state button').focus()");
        page.type(Keys.ENTER);
        page.until(() -> parts() == parts);
        assertTrue(page.text("touring.yaml").contains("- Fridge 60 L\n"));
    }

    private long parts() {
        return page.all("[id^=f-fitments_][id$=-fold-off]").size();
    }
}
