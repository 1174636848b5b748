package fitworthy.printout;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.document.HtmlLayout;
import fitworthy.document.Paper;
import fitworthy.document.PdfLayout;
import fitworthy.document.Report;
import fitworthy.search.Mender.Mending;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SheetReader;
import fitworthy.source.FaultsException;
import fitworthy.source.NodeReader;
import java.io.StringReader;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Advice, and the report made of it without a search for changes. */
public record Printed(Advice advice, Report report) {

    public static final List<String> SCENARIOS = List.of("touring", "overloaded", "weekender");
    public static final Imprint IMPRINT = new Imprint(
            "sheet.yaml", "0123456789abcdef".repeat(4), "", "fitworthy 9.8.7", Instant.parse("2026-11-25T10:00:00Z"));

    private static final Map<String, Advice> ADVICE = new HashMap<>();
    private static final Map<List<Object>, Printed> MADE = new HashMap<>();
    private static final Map<Report, Map<Paper, byte[]>> FILES = new IdentityHashMap<>();

    /** A scenario with everything that can be printed of it. */
    public static Printed scenario(String name) throws FaultsException {
        return scenario(name, Readers.WORKSHOP, Paper.A4);
    }

    /** The same for some readers, made once for all tests. */
    public static synchronized Printed scenario(String name, Readers readers, Paper paper) throws FaultsException {
        if (!ADVICE.containsKey(name)) {
            Sheet sheet = SheetReader.sheet(
                    Sheets.scenario(name), Books.shipped().regions().keySet(), new ArrayList<>());
            ADVICE.put(name, Adviser.advise(Books.engine(), sheet));
        }
        return MADE.computeIfAbsent(List.of(name, readers, paper), fresh -> of(ADVICE.get(name), readers, paper));
    }

    /** The file that a report makes, laid out once for all tests. */
    public static synchronized byte[] pdf(Report report, Paper paper) throws PdfLayout.TooLarge {
        Map<Paper, byte[]> files = FILES.computeIfAbsent(report, fresh -> new EnumMap<>(Paper.class));
        if (!files.containsKey(paper)) {
            files.put(
                    paper,
                    PdfLayout.of(report, paper, "fitworthy 9.8.7", IMPRINT.printedAt())
                            .bytes());
        }
        return files.get(paper);
    }

    /** The plain sheet with some of its text replaced. */
    public static Printed plain(String text) throws FaultsException {
        return of(
                SheetReader.sheet(
                        NodeReader.read("plain.yaml", text, new ArrayList<>()),
                        Books.shipped().regions().keySet(),
                        new ArrayList<>()),
                Readers.WORKSHOP,
                Paper.A4);
    }

    static Printed of(Sheet sheet, Readers readers, Paper paper) throws FaultsException {
        return of(Adviser.advise(Books.engine(), sheet), readers, paper);
    }

    private static Printed of(Advice advice, Readers readers, Paper paper) {
        return new Printed(
                advice,
                ReportWriter.report(
                        advice, new Mending(List.of(), List.of(), 0, true), Optional.empty(), IMPRINT, readers, paper));
    }

    /** A page read as XML, which it has to be for the PDF. */
    static Document xml(String html) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(html)));
    }

    /** What a page says, without its style and without any space, since lines break where they will. */
    static String words(String html) throws Exception {
        return dense(xml(html).getElementsByTagName("body").item(0).getTextContent());
    }

    /**
     * The words that a page and a PDF both show: neither contents nor running line, nor what is for telephones, nor
     * letters in pictures.
     */
    public static String shownWords(String html) throws Exception {
        Document page = xml(html);
        for (String name : List.of("nav", "svg")) {
            for (Node each = page.getElementsByTagName(name).item(0);
                    each != null;
                    each = page.getElementsByTagName(name).item(0)) {
                each.getParentNode().removeChild(each);
            }
        }
        NodeList paragraphs = page.getElementsByTagName("p");
        for (int i = paragraphs.getLength() - 1; i >= 0; i--) {
            Element paragraph = (Element) paragraphs.item(i);
            if (paragraph.getAttribute("class").equals("goes-on")) {
                paragraph.getParentNode().removeChild(paragraph);
            }
        }
        NodeList spans = page.getElementsByTagName("span");
        for (int i = 0; i < spans.getLength(); i++) {
            Element span = (Element) spans.item(i);
            if (span.getAttribute("class").equals("mark")) {
                span.setTextContent(span.getTextContent().toUpperCase(Locale.ROOT));
            }
        }
        Node running = page.getElementsByTagName("bdi").item(0);
        running.getParentNode().removeChild(running);
        return dense(page.getElementsByTagName("body").item(0).getTextContent());
    }

    public static String dense(String text) {
        return HtmlLayout.clean(text).replaceAll("[\\s\\p{Z}]+", "");
    }
}
