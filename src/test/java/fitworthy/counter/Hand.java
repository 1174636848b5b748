package fitworthy.counter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.util.Map;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.interactions.PointerInput;
import org.openqa.selenium.support.ui.Select;

/** How a person works a page. Scripts look and scroll here: nothing is set, focused or pressed by one. */
abstract class Hand {

    /** What lies over the middle of a thing, or that it is out of sight; empty where it is there to be pressed. */
    private static final String COVERED =
            """
            const box = arguments[0].getClientRects()[0];
            const at = box && document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
            return arguments[0].contains(at) ? '' : at ? at.outerHTML.slice(0, 200) : 'out of sight';
            """;

    /** The next line to unfold on the way to a field of the plan; empty once the field is seen, null where none is. */
    private static final String FOLDED =
            """
            const field = document.getElementById(arguments[0]);
            if (field?.checkVisibility()) return '';
            const holds = fold => fold.contains(field)
                || (arguments[0] + '_').startsWith(fold.id.replace(/-(fold|more)$/, '') + '_')
                || arguments[0].startsWith(fold.id.replace(/-adding$/, '') + '-');
            return [...document.querySelectorAll('#plan details:not([open]) > summary')]
                .filter(line => line.checkVisibility() && holds(line.parentElement))[0]?.id ?? null;
            """;

    /** After so long a letter begins another word in a list. */
    private static final Duration NEW_WORD = Duration.ofSeconds(2);

    protected final InBrowser page;

    private Hand(InBrowser page) {
        this.page = page;
    }

    static Hand mouse(InBrowser page) {
        return new Pointer(page, PointerInput.Kind.MOUSE);
    }

    /** On a screen 360 px wide. */
    static Hand finger(InBrowser page) {
        Chrome.screen(page.window(), 360, 740);
        page.window().executeCdpCommand("Emulation.setTouchEmulationEnabled", Map.of("enabled", true));
        return new Pointer(page, PointerInput.Kind.TOUCH);
    }

    static Hand keyboard(InBrowser page) {
        return new Keyboard(page);
    }

    /** Gets to a thing, so that the next key goes there. */
    protected abstract void reach(WebElement thing);

    /** Presses a button, a link, a choice or what is folded. */
    abstract void press(By what);

    /** Presses what was found below the box that it was looked for in. */
    abstract void take(By what);

    /** Types a text in place of what stands in a box. */
    void write(By box, String text) {
        reach(there(box));
        page.hand()
                .keyDown(Keys.CONTROL)
                .sendKeys("a")
                .keyUp(Keys.CONTROL)
                .sendKeys(text)
                .perform();
    }

    /** Takes one of a list, by the letters of the word that is shown; anew where so slow that they began a new word. */
    void choose(By list, String word) {
        do {
            spell(list, word);
        } while (!page.soon(
                NEW_WORD,
                () -> new Select(there(list)).getFirstSelectedOption().getText().contains(word)));
    }

    protected void spell(By list, String word) {
        reach(there(list));
        page.type(word);
    }

    /** Unfolds what a field of the plan lies in. @return the field */
    By seen(String field) {
        for (String line = folded(field); !line.isEmpty(); line = folded(field)) {
            press(By.id(line));
        }
        return By.id(field);
    }

    /** What is fetched on opening may still be on its way. */
    private String folded(String field) {
        settled();
        return page.until(() -> (String) page.script(FOLDED, field));
    }

    /** The page has been answered, since it is shown anew then; questions take their time, which nobody waits for. */
    private void settled() {
        page.until(() -> !page.isThere(":is(.htmx-request, .htmx-swapping, .htmx-settling):not(#asks *)"));
    }

    protected WebElement there(By what) {
        settled();
        return page.until(() -> page.window().findElement(what));
    }

    /** Whoever is to press it sees it, and nothing else in its place. */
    protected void assertUncovered(WebElement thing) {
        assertEquals("", page.script(COVERED, thing), () -> "over " + thing);
    }

    /** Points at things: clicks or taps on them. */
    private static final class Pointer extends Hand {

        private final PointerInput.Kind kind;

        Pointer(InBrowser page, PointerInput.Kind kind) {
            super(page);
            this.kind = kind;
        }

        @Override
        protected void reach(WebElement thing) {
            page.script("arguments[0].scrollIntoView({block: 'center', behavior: 'instant'})", thing);
            assertUncovered(thing);
            new Actions(page.window(), Duration.ZERO)
                    .setActivePointer(kind, "pointer")
                    .moveToElement(thing)
                    .click()
                    .perform();
        }

        @Override
        void press(By what) {
            reach(there(what));
        }

        @Override
        void take(By what) {
            press(what);
        }

        @Override
        protected void spell(By list, String word) {
            super.spell(list, word);
            page.type(Keys.ENTER);
        }
    }

    /** Tab, Shift-Tab, arrows, Enter, space and letters. */
    private static final class Keyboard extends Hand {

        /** How many stops of the Tab key a thing is further on, fewer than none where it lies behind. */
        private static final String STOPS =
                """
                const group = (one) => [...(one.form ?? document).querySelectorAll(`[name="${one.name}"]`)];
                const stops = [...document.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex="0"], iframe')]
                    .filter(one => !one.disabled && one.type !== 'hidden' && one.tabIndex >= 0 && one.checkVisibility()
                        && (one.type !== 'radio' || one === (group(one).find(other => other.checked) ?? group(one)[0])));
                return stops.indexOf(arguments[0]) - stops.indexOf(document.activeElement);
                """;

        /** The one of several choices that is taken, to which the Tab key leads; where none is, the first. */
        private static final String CHOSEN = "const name = arguments[0].name;"
                + "return document.querySelector(`[name='${name}']:checked`) ?? document.querySelector(`[name='${name}']`);";

        private static final int TRIES = 12;

        Keyboard(InBrowser page) {
            super(page);
        }

        @Override
        protected void reach(WebElement thing) {
            for (int i = 0; i < TRIES && !page.focused().equals(thing); i++) {
                int stops = ((Number) page.script(STOPS, thing)).intValue();
                Actions keys = page.hand();
                if (stops < 0) {
                    keys.keyDown(Keys.SHIFT);
                }
                keys.sendKeys(Keys.TAB.toString().repeat(Math.max(1, Math.abs(stops))));
                keys.keyUp(Keys.SHIFT).perform();
            }
            assertEquals(thing, page.focused(), "not reached by the Tab key");
            assertUncovered(thing);
        }

        @Override
        void press(By what) {
            WebElement thing = there(what);
            if ("radio".equals(thing.getDomProperty("type"))) {
                reach((WebElement) page.script(CHOSEN, thing));
                goDown(thing);
                page.type(Keys.SPACE);
            } else {
                reach(thing);
                page.type(Keys.ENTER);
            }
        }

        @Override
        void take(By what) {
            goDown(there(what));
            page.type(Keys.ENTER);
        }

        private void goDown(WebElement thing) {
            for (int i = 0; i < TRIES && !page.focused().equals(thing); i++) {
                page.type(Keys.ARROW_DOWN);
            }
            assertEquals(thing, page.focused(), "not reached by the arrow keys");
        }
    }
}
