package fitworthy.counter.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.cli.Ran;
import fitworthy.counter.AtCounter;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** What goes out of a sheet is what the commands make of it. */
class OutputTest {

    private static final Pattern TIME = Pattern.compile("20\\d\\d-\\d\\d-\\d\\d \\d\\d:\\d\\d UTC");
    private static final Pattern CHECKED = Pattern.compile("value=\"(\\w+)\"( required)? checked");
    private static final Pattern CELL = Pattern.compile("(?s)<t[hd]( [^>]*)?>(.*?)</t[hd]>");

    @RegisterExtension
    static final AtCounter served = new AtCounter();

    private static String sheet(String name) {
        return served.folder().resolve(name).toString();
    }

    private static int pages(byte[] pdf) throws Exception {
        assertEquals("%PDF", new String(pdf, 0, 4, StandardCharsets.US_ASCII));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        }
    }

    @Test
    void lettersAreThoseOfTheCommand() throws Exception {
        String at = "/sheets/touring.yaml/letters";
        String all = Ran.of("letters", sheet("touring.yaml")).out();
        assertEquals(all, served.get(at + ".txt").body());
        assertEquals(all, copied(served.get(at).body()), "one beside the other, to be copied");
        assertEquals(
                Ran.of("letters", sheet("touring.yaml"), "--format", "markdown").out(),
                served.get(at + ".md").body());
        assertEquals(
                Ran.of("letters", sheet("touring.yaml"), "--to", "insurer").out(),
                served.get("/sheets/touring.yaml/letters.txt?to=insurer").body());
    }

    /** The texts of all letters on a page. */
    private static String copied(String page) {
        return Pattern.compile("(?s)<textarea [^>]*>(.*?)</textarea>")
                .matcher(page)
                .results()
                .map(letter -> letter.group(1))
                .collect(Collectors.joining())
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&#34;", "\"")
                .replace("&#39;", "'")
                .replace("&amp;", "&");
    }

    @Test
    void aLetterToNobodyIsRefused() throws Exception {
        assertEquals(
                400, served.get("/sheets/touring.yaml/letters.txt?to=nobody").statusCode());
        assertEquals(404, served.get("/sheets/none.yaml/letters").statusCode());
    }

    @Test
    void lettersAsAPdfHaveAsManyPages() throws Exception {
        Path file = served.folder().resolve("letters.pdf");
        Ran.of("letters", sheet("overloaded.yaml"), "--pdf", file.toString());
        assertEquals(
                pages(Files.readAllBytes(file)),
                pages(served.bytes("/sheets/overloaded.yaml/letters.pdf").body()));
    }

    @Test
    void thePrintedDocumentIsThatOfTheCommand() throws Exception {
        Path html = served.folder().resolve("print.html");
        Path pdf = served.folder().resolve("print.pdf");
        Ran.of(
                "print",
                sheet("weekender.yaml"),
                "--for",
                "customer",
                "--paper",
                "letter",
                "--html",
                html.toString(),
                "--pdf",
                pdf.toString());
        HttpResponse<String> page = served.get("/sheets/weekender.yaml/print.html?for=customer&paper=letter");
        assertEquals(timeless(Files.readString(html)), timeless(page.body()));
        assertEquals(
                pages(Files.readAllBytes(pdf)),
                pages(served.bytes("/sheets/weekender.yaml/print.pdf?for=customer&paper=letter")
                        .body()));
        String policy = page.headers().firstValue("Content-Security-Policy").orElseThrow();
        assertTrue(policy.startsWith("sandbox") && !policy.contains("script-src"), policy);
    }

    private static String timeless(String html) {
        return TIME.matcher(html).replaceAll("then");
    }

    @Test
    void whatToBuyAndTheOrderOfWorkArePrintedTheSame() throws Exception {
        Path html = served.folder().resolve("workshop.html");
        Ran.of("print", sheet("touring.yaml"), "--for", "workshop", "--html", html.toString());
        String printed = Files.readString(html);
        String buy = served.get("/sheets/touring.yaml/buy").body();
        assertEquals(cells(printed, "buy"), cells(buy, "buy"));
        assertEquals(cells(printed, "cost"), cells(buy, "cost"));
        assertEquals(
                cells(printed, "work"),
                cells(served.get("/sheets/touring.yaml/work").body(), "work"));
        assertTrue(cells(buy, "buy").contains("14800.00 AUD"), "the price of the stretch, as the shelf has it");
        assertFalse(buy.contains("href=\"#finding"), "no link leads nowhere");
    }

    /** What stands in the tables of a section. */
    private static List<String> cells(String page, String section) {
        int begin = page.indexOf("aria-labelledby=\"" + section + "-heading\"");
        assertTrue(begin > 0, section);
        return CELL.matcher(page.substring(begin, page.indexOf("</section>", begin)))
                .results()
                .map(cell -> cell.group(2)
                        .replaceAll("<[^>]*>", " ")
                        .replaceAll("\\s+", " ")
                        .strip())
                .toList();
    }

    @Test
    void nothingIsMadeBeforeSomebodyHasChosenForWhom() throws Exception {
        String page = served.get("/sheets/overloaded.yaml/print").body();
        assertTrue(page.contains("Nothing is made yet: choose for whom."), page);
        assertFalse(page.contains("id=\"made\""), page);
        assertEquals(
                List.of("a4"),
                CHECKED.matcher(page).results().map(one -> one.group(1)).toList());
        String chosen = served.get("/sheets/overloaded.yaml/print?for=customer&paper=letter")
                .body();
        assertTrue(chosen.contains("id=\"made\""), chosen);
        assertEquals(
                List.of("customer", "letter"),
                CHECKED.matcher(chosen).results().map(one -> one.group(1)).toList());
    }

    @Test
    void thePageTellsWhenTheDocumentIsMade() throws Exception {
        String first = served.get("/sheets/overloaded.yaml/print?for=engineer").body();
        assertTrue(first.contains("value=\"engineer\" required checked"));
        served.get("/sheets/overloaded.yaml/print.html?for=engineer");
        String made =
                served.get("/sheets/overloaded.yaml/print/made?for=engineer").body();
        assertTrue(made.contains("src=\"/sheets/overloaded.yaml/print.html?for=engineer&amp;paper=a4\""), made);
        assertEquals(
                400, served.get("/sheets/overloaded.yaml/print?for=everybody").statusCode());
    }

    @Test
    void aSheetWithFaultsGivesNothingOutAndSaysWhy() throws Exception {
        Files.writeString(served.folder().resolve("broken.yaml"), "title: Broken\n");
        for (String page : List.of("buy", "letters", "work", "print", "print/made", "letters.pdf", "print.pdf")) {
            HttpResponse<String> answer = served.get("/sheets/broken.yaml/" + page);
            assertTrue(answer.body().contains("<a href=\"/sheets/broken.yaml\">its page</a>"), page);
            assertTrue(answer.headers().firstValue("Content-Disposition").isEmpty(), page);
        }
    }

    @Test
    void whatIsKeptIsCalledByItsSheet() throws Exception {
        Files.copy(served.folder().resolve("touring.yaml"), served.folder().resolve("L\u00f6wen (2).yaml"));
        HttpResponse<String> letters = served.get("/sheets/L%C3%B6wen%20(2).yaml/letters.txt");
        assertEquals(
                "attachment; filename=\"L_wen _2_-letters.txt\"; filename*=UTF-8''L%C3%B6wen%20%282%29-letters.txt",
                letters.headers().firstValue("Content-Disposition").orElseThrow());
    }
}
