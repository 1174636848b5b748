import fitworthy.counter.Chrome;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * Types into a mass of the touring sheet, in a headless Chromium, and times each key: from the input event to the end
 * of the frame in which every pane was put anew (its styles, layout and painting), and of that the request, from its start to the end of its answer, as the browser
 * saw it. Arguments are the program to run, where it is not the packaged one.
 *
 * <pre>mvn -q -B -ntp -DskipTests package dependency:build-classpath -Dmdep.outputFile=target/cp.txt &amp;&amp; java \
 *     -cp target/test-classes:target/classes:$(cat target/cp.txt) src/bench/Typing.java</pre>
 */
public final class Typing {

    private static final int WARM_UP = 50;
    private static final int TIMED = 200;
    private static final String PART = "f-fitments_6";
    private static final String TIMER =
            """
            window.whole = [];
            window.asked = [];
            window.seen = () => {};
            performance.setResourceTimingBufferSize(5000);
            let began = 0;
            document.addEventListener("input", () => { began = performance.now(); }, true);
            document.body.addEventListener("htmx:afterOnLoad", answer => {
              if (answer.detail.requestConfig.verb === "post") {
                const request = performance.getEntriesByName(answer.detail.xhr.responseURL).pop();
                const of = began;
                // A message sent before a frame is drawn comes once it is.
                const drawn = new MessageChannel();
                drawn.port1.onmessage = () => {
                  asked.push(request.responseEnd - request.requestStart);
                  whole.push(performance.now() - of);
                  seen();
                };
                requestAnimationFrame(() => drawn.port2.postMessage(""));
              }
            });
            """;
    /** Waits within the page, since asking it again and again would take its time. */
    private static final String SEEN =
            "const [before, done] = arguments; if (whole.length > before) { done(); } else { window.seen = done; }";

    private Typing() {}

    public static void main(String[] args) throws Exception {
        Path sheets = copied(Path.of("scenarios"), Path.of("target", "typing"));
        List<String> command =
                new ArrayList<>(args.length > 0 ? List.of(args) : List.of("target/fitworthy/bin/fitworthy"));
        command.addAll(List.of("counter", sheets.toString(), "--port", "0"));
        Process program = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try {
            ChromeDriver window = Chrome.window(1280, 900);
            try {
                window.get(address(program.inputReader(StandardCharsets.UTF_8)));
                window.get(window.getCurrentUrl().replaceFirst("(?<=[0-9])/.*", "/sheets/touring.yaml"));
                type(window);
                print("key to changed page", times(window, "whole"));
                print("request to answer  ", times(window, "asked"));
            } finally {
                window.quit();
            }
        } finally {
            program.destroy();
        }
    }

    /** The first address that the program prints. */
    private static String address(BufferedReader printed) throws IOException {
        for (String line = printed.readLine(); line != null; line = printed.readLine()) {
            Optional<String> address = Stream.of(line.split("\\s+"))
                    .filter(word -> word.startsWith("http://"))
                    .findFirst();
            if (address.isPresent()) {
                return address.get();
            }
        }
        throw new IllegalStateException("the program ended without an address");
    }

    /** A digit after the first one, and the same digit taken away, in turn. */
    private static void type(ChromeDriver window) {
        window.executeScript("document.getElementById(arguments[0]).click()", PART + "-fold-line");
        By mass = By.id(PART + "_mass");
        wait(window).until(page -> !window.findElements(mass).isEmpty());
        window.executeScript(TIMER);
        window.executeScript("arguments[0].focus()", window.findElement(mass));
        new Actions(window).sendKeys(Keys.HOME, Keys.ARROW_RIGHT).perform();
        for (int i = 0; i < WARM_UP + TIMED; i++) {
            int before = i;
            new Actions(window).sendKeys(i % 2 == 0 ? "1" : Keys.BACK_SPACE).perform();
            window.executeAsyncScript(SEEN, before);
        }
    }

    private static WebDriverWait wait(ChromeDriver window) {
        return new WebDriverWait(window, Duration.ofSeconds(60), Duration.ofMillis(20));
    }

    private static double[] times(ChromeDriver window, String name) {
        return ((List<?>) window.executeScript("return window." + name))
                .stream()
                        .skip(WARM_UP)
                        .mapToDouble(time -> ((Number) time).doubleValue())
                        .sorted()
                        .toArray();
    }

    private static void print(String what, double[] sorted) {
        System.out.printf(
                "%s: %d keys, median %.0f ms, 99th percentile %.0f ms, most %.0f ms%n",
                what,
                sorted.length,
                sorted[sorted.length / 2],
                sorted[sorted.length * 99 / 100],
                sorted[sorted.length - 1]);
    }

    private static Path copied(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.write(target, Files.readAllBytes(file));
                }
            }
        }
        return to;
    }
}
