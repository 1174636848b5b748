package fitworthy.counter;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.Callable;
import org.openqa.selenium.By;
import org.openqa.selenium.NotFoundException;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.TimeoutException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A counter and a real Chromium that has opened it. */
public final class InBrowser extends AtCounter {

    /** A slow machine takes its time over a long page. */
    private static final Duration PATIENCE = Duration.ofMinutes(2);

    private static final Duration BETWEEN_LOOKS = Duration.ofMillis(20);

    private final int width;
    private final int height;
    private ChromeDriver window;

    /** @param width of the window, px */
    public InBrowser(int width, int height) {
        this.width = width;
        this.height = height;
    }

    @Override
    protected void open() throws Exception {
        super.open();
        window = Chrome.window(width, height);
        window.manage().timeouts().scriptTimeout(PATIENCE);
        window.get(address());
    }

    /** So that the page asks nothing of a counter that is gone. */
    @Override
    protected void close() throws Exception {
        try {
            if (window != null) {
                window.get("about:blank");
            }
        } finally {
            super.close();
        }
    }

    public ChromeDriver window() {
        return window;
    }

    /** @param path of the page, such as {@code /new} */
    public void show(String path) {
        window.get(at(path));
    }

    /** Waits until there is what is wanted, or it is true; what cannot be looked at yet is not there yet. */
    public <T> T until(Callable<T> wanted) {
        try {
            return within(PATIENCE, wanted);
        } catch (TimeoutException e) {
            throw new AssertionError(
                    "not seen, with the focus on " + focused().getDomAttribute("id") + ": "
                            + find("body").getText(),
                    e);
        }
    }

    /** @return whether it came true within the time */
    public boolean soon(Duration time, Callable<Boolean> wanted) {
        try {
            return within(time, wanted);
        } catch (TimeoutException e) {
            return false;
        }
    }

    private <T> T within(Duration time, Callable<T> wanted) {
        return new WebDriverWait(window, time, BETWEEN_LOOKS).until(page -> {
            try {
                return wanted.call();
            } catch (NotFoundException | StaleElementReferenceException | IOException e) {
                return null;
            } catch (Exception e) {
                throw new IllegalStateException(e);
            }
        });
    }

    /** Waits until the page holds an element. */
    public void untilThere(String selector) {
        until(() -> isThere(selector));
    }

    public boolean isThere(String selector) {
        return !all(selector).isEmpty();
    }

    public List<WebElement> all(String selector) {
        return window.findElements(By.cssSelector(selector));
    }

    public WebElement find(String selector) {
        return window.findElement(By.cssSelector(selector));
    }

    /** Presses what is in the middle of the window then, with the pointer; anew where it was shown anew meanwhile. */
    public void press(String selector) {
        until(() -> {
            WebElement found = find(selector);
            script("arguments[0].scrollIntoView({block: 'center'})", found);
            hand().moveToElement(found).click().perform();
            return true;
        });
    }

    /** What a script finds out, or does. */
    public Object script(String script, Object... given) {
        return window.executeScript(script, given);
    }

    /** What is done by pointer and keys, to be performed; a pointer is where it goes at once. */
    public Actions hand() {
        return new Actions(window, Duration.ZERO);
    }

    public WebElement focused() {
        return window.switchTo().activeElement();
    }

    public void focus(String id) {
        script("document.getElementById(arguments[0]).focus()", id);
    }

    /** Strikes keys, wherever the focus is; no hand is so quick that what was just shown does not answer yet. */
    public void type(CharSequence... keys) {
        until(() -> !isThere(".htmx-swapping, .htmx-settling, .htmx-added"));
        hand().sendKeys(keys).perform();
    }
}
