package fitworthy.counter.told;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fitworthy.counter.Chrome;
import fitworthy.counter.InBrowser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The advice in a browser, by keyboard alone. */
class ToldInBrowserTest {

    private static final String FIRST = "why-mass.gvm-tight-vehicle";

    @RegisterExtension
    static final InBrowser page = new InBrowser(1280, 900);

    private static boolean isShown(String words) {
        return page.find("main").getText().contains(words);
    }

    @Test
    void anOpenedExplanationStaysOpenWhileOneEditsElsewhere() throws Exception {
        page.show("/sheets/touring.yaml");
        WebElement summary = page.window().findElement(By.id(FIRST)).findElement(By.tagName("summary"));
        page.script("arguments[0].focus()", summary);
        page.type(Keys.ENTER);
        page.until(() -> isShown("front = mass x (1 - at / wheelbase)"));
        page.window()
                .executeAsyncScript(
                        "const done = arguments[0]; document.body.addEventListener('htmx:afterRequest', () => setTimeout(done, 300), {once: true});"
                                + "htmx.ajax('POST', '/sheets/touring.yaml/answer', {source: document.querySelector('.work'), swap: 'none',"
                                + " values: {path: 'occupants.Ines.mass', value: '56 kg +/- 3 kg', version: document.getElementById('version').value}})");
        page.until(() -> isShown("ront axle 5 kg less"));
        assertEquals("true", page.window().findElement(By.id(FIRST)).getAttribute("open"));
        page.until(() -> page.window().findElement(By.id(FIRST)).getText().matches("(?s).*Ines +56\\.0.*"));
    }

    @Test
    void aMissingAnswerLeadsToItsFieldInThePlan() {
        page.show("/sheets/touring.yaml");
        page.script("document.querySelector('#rest-open summary').click()");
        WebElement link = page.until(() -> page.all("#rest-open .field-link").stream()
                .filter(field -> field.getText().equals("whether Front springs is stated to suit"))
                .findFirst()
                .orElse(null));
        link.sendKeys(Keys.ENTER);
        page.until(() -> page.focused().getAttribute("id").endsWith("_suits"));
        assertEquals(
                "Front springs",
                page.script(
                        "return document.getElementById(document.activeElement.id.replace('suits', 'name')).value"));
    }

    @Test
    void anOfferIsTriedTakenAndUndoneByKeyboard() throws Exception {
        Path file = page.folder().resolve("overloaded.yaml");
        byte[] before = Files.readAllBytes(file);
        page.show("/sheets/overloaded.yaml");
        page.focus("look-for-offers");
        page.type(Keys.ENTER);
        List<String> offers = page.until(() -> {
            List<String> ids = page.all("[id^=try-]").stream()
                    .map(button -> button.getAttribute("id"))
                    .toList();
            return ids.isEmpty() ? null : ids;
        });
        for (String offer : offers) {
            page.until(() -> !page.window().findElements(By.id(offer)).isEmpty());
            page.focus(offer);
            page.type(Keys.ENTER);
            page.until(() -> page.focused().getAttribute("id").equals("tried"));
            assertArrayEquals(before, Files.readAllBytes(file));
            if (page.isThere("#take-offer")) {
                break;
            }
            // It cannot be written into this file, so there is nothing but to leave it.
            page.type(Keys.TAB);
            page.type(Keys.ENTER);
            page.until(() -> page.focused().getAttribute("id").equals(offer));
        }
        String told = page.find(".as-it-would-be .news").getText();
        page.type(Keys.TAB);
        assertEquals("take-offer", page.focused().getAttribute("id"));
        page.type(Keys.ENTER);
        page.until(() -> isShown("Undo takes it back"));
        assertFalse(Arrays.equals(before, Files.readAllBytes(file)));
        assertEquals(told, page.find("#told .news").getText());
        WebElement undo = page.find("[hx-post$='/undo']");
        page.script("arguments[0].focus()", undo);
        page.type(Keys.ENTER);
        page.until(() -> !isShown("Undo takes it back"));
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void nothingIsInTheWayOfAReaderWhoCannotSee() throws Exception {
        page.show("/sheets/touring.yaml");
        page.untilThere("#asks .answer");
        for (String id : List.of("rest-open", "rest-met", "why-body.chassis-unapproved-Wheelbase+stretch")) {
            page.script("document.getElementById(arguments[0]).querySelector('summary').click()", id);
        }
        page.until(() -> isShown("In the book:") && isShown("Assessed and in order"));
        assertEquals(List.of(), Chrome.inTheWay(page.window()));
    }
}
