package fitworthy.counter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.printout.ReportTest;
import java.io.StringReader;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import nu.validator.htmlparser.common.XmlViolationPolicy;
import nu.validator.htmlparser.dom.HtmlDocumentBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** What a hostile sheet says is text on every page, and never a part of the page. */
@Timeout(900)
class HostileSheetTest {

    private static final String NAME = "hostile.yaml";
    private static final int MOST_PAGES = 150;

    @TempDir
    private Path folder;

    @Test
    void nothingOfItBecomesMarkup() throws Exception {
        Files.writeString(folder.resolve(NAME), ReportTest.hostileSheet());
        List<String> wrong = new ArrayList<>();
        try (Served served = Served.in(folder)) {
            Map<String, HttpResponse<String>> pages =
                    Addresses.from(served, "/", MOST_PAGES, address -> address.equals("/") || address.contains(NAME));
            assertTrue(pages.size() > 2, pages.keySet().toString());
            assertTrue(pages.get("/sheets/" + NAME).body().contains("alert(1)"), "the sheet is not shown");
            pages.forEach((address, answer) -> look(address, answer, wrong));
        }
        assertEquals(List.of(), wrong);
    }

    private static void look(String address, HttpResponse<String> answer, List<String> wrong) {
        if (answer.statusCode() == 500) {
            wrong.add(address + ": 500");
        }
        if (!answer.headers().firstValue("content-type").orElse("").startsWith("text/html")) {
            return;
        }
        // A print brings its style along: shown, it has a policy of its own; else it is a file to keep.
        boolean isPage = answer.headers().firstValue("content-disposition").isEmpty()
                && answer.headers()
                        .firstValue("content-security-policy")
                        .orElse("")
                        .startsWith("default-src 'none'; script-src 'self'");
        NodeList all = parsed(answer.body()).getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            boolean ownScript = element.getTagName().equals("script")
                    && element.getAttribute("src").startsWith("/assets/");
            if (List.of("script", "img", "iframe", "object", "embed", "base").contains(element.getTagName())
                    && !ownScript
                    && !element.getAttribute("src").startsWith("/sheets/")) {
                wrong.add(address + ": <" + element.getTagName() + ">");
            }
            for (int j = 0; j < element.getAttributes().getLength(); j++) {
                String name = element.getAttributes().item(j).getNodeName();
                String value = element.getAttributes().item(j).getNodeValue();
                if (name.startsWith("on")
                        || (isPage && name.equals("style"))
                        || ((name.equals("href") || name.equals("src") || name.equals("action"))
                                && !value.matches("(/|#|\\?|https?://|data:,).*|"))) {
                    wrong.add(address + ": " + element.getTagName() + " " + name + "=" + value);
                }
            }
        }
    }

    private static Document parsed(String html) {
        try {
            return new HtmlDocumentBuilder(XmlViolationPolicy.ALTER_INFOSET)
                    .parse(new InputSource(new StringReader(html)));
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }
}
