package fitworthy.printout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import fitworthy.document.HtmlLayout;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The page in a browser: whether everybody can read it, on a phone too, and that a hostile sheet does nothing there.
 */
class PageInBrowserTest {

    private static final int PHONE = 360;

    @TempDir
    private Path folder;

    @Test
    void everybodyCanReadIt() throws Exception {
        String html = HtmlLayout.html(Printed.scenario("overloaded").report());
        JsonNode found = Browser.ask(folder, html, PHONE, Browser.resource("/axe.min.js"), "axe.run(document)");
        List<String> violations = new ArrayList<>();
        for (JsonNode each : found.get("violations")) {
            violations.add(each.get("id").asText() + ": " + each.get("help").asText() + ", "
                    + each.get("nodes").get(0).get("html").asText());
        }
        assertEquals(List.of(), violations);
        assertTrue(
                found.get("passes").size() > 20, "only " + found.get("passes").size() + " checks were made");
    }

    @Test
    void itFitsAPhone() throws Exception {
        for (Printed printed : List.of(Printed.scenario("touring"), Printed.plain(ReportTest.hostileSheet()))) {
            JsonNode found = Browser.ask(
                    folder,
                    HtmlLayout.html(printed.report()),
                    PHONE,
                    "",
                    "({window: innerWidth, seen: document.documentElement.clientWidth,"
                            + " page: document.documentElement.scrollWidth})");
            assertEquals(PHONE, found.get("window").asInt());
            assertEquals(
                    found.get("seen").asInt(),
                    found.get("page").asInt(),
                    printed.report().title());
        }
    }

    @Test
    void hostileTextDoesNothing() throws Exception {
        JsonNode found = Browser.ask(
                folder,
                HtmlLayout.html(Printed.plain(ReportTest.hostileSheet()).report()),
                PHONE,
                "window.called = []; window.alert = text => called.push(text); window.onerror = text => "
                        + "called.push(text);",
                "({called: called, scripts: document.scripts.length, images: document.images.length})");
        assertEquals(0, found.get("called").size(), found.toString());
        assertEquals(0, found.get("images").asInt());
        // The two that ask.
        assertEquals(2, found.get("scripts").asInt());
    }
}
