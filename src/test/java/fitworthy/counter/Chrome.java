package fitworthy.counter;

import fitworthy.Chromium;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/** A real Chromium, driven as a person would. */
public final class Chrome {

    private static final String PACKAGES = "chromium chromium-driver";

    private Chrome() {}

    /** To start a Chromium takes seconds, so that all tests of a virtual machine have one. */
    private static ChromeDriver started;

    /**
     * A new window of this size, px, with nothing left of those before; the test is told as not run where no Chromium with its
     * driver is installed.
     */
    public static synchronized ChromeDriver window(int width, int height) {
        if (started == null) {
            started = start();
            Runtime.getRuntime().addShutdownHook(new Thread(started::quit));
        } else {
            List<String> before = List.copyOf(started.getWindowHandles());
            started.switchTo().newWindow(WindowType.TAB);
            String fresh = started.getWindowHandle();
            before.forEach(old -> started.switchTo().window(old).close());
            started.switchTo().window(fresh);
            started.resetInputState();
            started.executeCdpCommand("Network.clearBrowserCookies", Map.of());
            started.executeCdpCommand("Network.clearBrowserCache", Map.of());
        }
        started.manage().window().setSize(new Dimension(width, height));
        return started;
    }

    private static ChromeDriver start() {
        Path chromium = Chromium.program(PACKAGES, "chromium");
        Path driver = Chromium.program(PACKAGES, "chromedriver");
        ChromeOptions options = new ChromeOptions();
        options.setBinary(chromium.toFile());
        options.addArguments("--headless=new");
        options.addArguments(Chromium.OPTIONS);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(driver.toFile())
                .usingAnyFreePort()
                .build();
        return new ChromeDriver(service, options);
    }

    /** As on a screen of this size, px: a window by itself is never narrower than 500 px. */
    public static void screen(ChromeDriver window, int width, int height) {
        window.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    }

    /** What axe-core finds in the way of a reader who cannot see, on the page as it now is. */
    public static List<String> inTheWay(ChromeDriver window) throws IOException {
        try (InputStream script = Chrome.class.getResourceAsStream("/axe.min.js")) {
            window.executeScript(new String(script.readAllBytes(), StandardCharsets.UTF_8));
        }
        Object found = window.executeAsyncScript(
                "const done = arguments[0]; axe.run(document, {resultTypes: ['violations']})"
                        + ".then(all => done(all.violations"
                        + ".flatMap(rule => rule.nodes.map(node => rule.id + ': ' + node.html + ' ' + node.failureSummary))));");
        return ((List<?>) found).stream().map(String::valueOf).toList();
    }
}
