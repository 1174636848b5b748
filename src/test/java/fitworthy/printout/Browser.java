package fitworthy.printout;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fitworthy.Chromium;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A page in headless Chromium. No driver is needed: what a script found out is put into the page, and the browser
 * prints the page as it then is.
 */
final class Browser {

    private static final Pattern RESULT = Pattern.compile("<pre id=\"found-out\">([^<]*)</pre>");
    private static final int MOST_MINUTES = 4;

    private Browser() {}

    /** A file that a test library brings along. */
    static String resource(String name) throws IOException {
        try (InputStream in = Browser.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /**
     * What a script finds out about a page.
     *
     * @param first a script that runs before anything else on the page
     * @param expression what to find out, once the page is there; a promise is waited for
     * @param width of what the page is seen in, in px
     */
    static JsonNode ask(Path folder, String html, int width, String first, String expression) throws Exception {
        Path chromium = Chromium.program("chromium", "chromium", "chromium-browser", "google-chrome");
        String last = "<script>addEventListener('load', () => Promise.resolve(" + expression
                + ").catch(e => 'failed: ' + e).then(found => { const pre = parent.document.createElement('pre'); "
                + "pre.id = 'found-out'; pre.textContent = "
                + "btoa(unescape(encodeURIComponent(JSON.stringify(found)))); parent.document.body.append(pre); "
                + "}));</script>";
        String framed = html.replaceFirst("<head>", Matcher.quoteReplacement("<head><script>" + first + "</script>"))
                .replaceFirst("</body>", Matcher.quoteReplacement(last + "</body>"));
        // In a frame, since the browser's own window cannot be as narrow as a phone.
        Path page = Files.writeString(
                folder.resolve("page.html"),
                "<!DOCTYPE html><html lang='en'><head><title>A phone</title>"
                        + "</head><body><iframe title='page' style='border: 0; width: " + width
                        + "px; height: 800px' srcdoc=\""
                        + framed.replace("&", "&amp;").replace("\"", "&quot;") + "\"></iframe></body></html>");
        Path said = folder.resolve("dom.html");
        List<String> command = new ArrayList<>(List.of(chromium.toString(), "--headless"));
        command.addAll(Chromium.OPTIONS);
        command.addAll(List.of(
                "--user-data-dir=" + folder.resolve("profile"),
                "--virtual-time-budget=600000",
                "--dump-dom",
                page.toUri().toString()));
        Process process = new ProcessBuilder(command)
                .redirectOutput(said.toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        if (!process.waitFor(MOST_MINUTES, TimeUnit.MINUTES)) {
            process.destroyForcibly();
        }
        Matcher result = RESULT.matcher(Files.readString(said));
        assertTrue(result.find(), "the browser did not get as far as the script");
        return new ObjectMapper().readTree(Base64.getDecoder().decode(result.group(1)));
    }
}
