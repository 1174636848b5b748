package fitworthy.document;

import com.openhtmltopdf.bidi.support.ICUBidiReorderer;
import com.openhtmltopdf.bidi.support.ICUBidiSplitter;
import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PageSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.awt.Font;
import java.awt.FontFormatException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * A report as a PDF, made of the page that {@link HtmlLayout} writes: tagged, with its typefaces in it.
 *
 * @param bytes the file
 * @param lacking letters that none of its typefaces has, each once; a mark stands in their place
 */
public record PdfLayout(byte[] bytes, String lacking) {

    /** The typefaces stand on the class path; a protocol of ours keeps the renderer from looking anywhere else. */
    private static final String PROTOCOL = "typeface";
    /** What drawing holds at its most, in bytes: typefaces and the program, and each element of the page. Measured. */
    private static final long BYTES_AT_LEAST = 40 << 20;

    private static final long BYTES_AN_ELEMENT = 3400;
    /** More letters than that need not be named. */
    private static final int MOST_LACKING = 20;

    private static final String LIBERATION = "/liberation/Liberation";
    private static final String DEJAVU = "/net/sf/jasperreports/fonts/dejavu/DejaVu";
    private static final Logger[] LOGGERS = {
        Logger.getLogger("org.apache.pdfbox"), Logger.getLogger("org.apache.fontbox")
    };

    /** A report that takes more memory to draw than there is. */
    public static final class TooLarge extends Exception {
        TooLarge() {
            super("its pages take more memory to draw than the "
                    + (Runtime.getRuntime().maxMemory() >> 20)
                    + " MiB that Java may use here; JAVA_TOOL_OPTIONS=-Xmx4g lets it use 4 GiB, and --html takes"
                    + " little");
        }
    }

    /** @param printedAt the time that is written into the file */
    public static PdfLayout of(Report report, Paper paper, String software, Instant printedAt) throws TooLarge {
        return of(HtmlLayout.html(report, style(paper)), software, printedAt);
    }

    /** The sections of a report alone, each as a letter that begins on a page of its own. */
    public static PdfLayout letters(Report report, Paper paper, String software, Instant printedAt) throws TooLarge {
        return of(HtmlLayout.letters(report, style(paper)), software, printedAt);
    }

    private static String style(Paper paper) {
        return HtmlLayout.resource("pdf.css").replace("PAPER", paper.size());
    }

    private static PdfLayout of(String html, String software, Instant printedAt) throws TooLarge {
        quiet();
        try (PDDocument document = new PDDocument()) {
            List<Typeface> typefaces = List.of(
                    new Typeface(document, LIBERATION + "Sans-Regular.ttf", "Liberation Sans", 400),
                    new Typeface(document, LIBERATION + "Sans-Bold.ttf", "Liberation Sans", 700),
                    new Typeface(document, DEJAVU + "Sans.ttf", "DejaVu Sans", 400),
                    new Typeface(document, DEJAVU + "Sans-Bold.ttf", "DejaVu Sans", 700),
                    new Typeface(document, DEJAVU + "SansMono.ttf", "DejaVu Sans Mono", 400));
            String lacking = draw(parsed(html), document, typefaces, software);
            date(document, software, printedAt);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return new PdfLayout(bytes.toByteArray(), lacking);
        } catch (IOException e) {
            throw new IllegalStateException("a PDF could not be made in memory", e);
        }
    }

    /**
     * Draws the page into the document. Neither the page nor its layout is held after that, for writing the file takes
     * as much memory again.
     *
     * @return letters that none of the typefaces has
     */
    private static String draw(Document page, PDDocument document, List<Typeface> typefaces, String software)
            throws IOException, TooLarge {
        // Short of memory, the virtual machine would go on for hours and get nowhere.
        if (BYTES_AT_LEAST + page.getElementsByTagName("*").getLength() * BYTES_AN_ELEMENT
                > Runtime.getRuntime().maxMemory()) {
            throw new TooLarge();
        }
        String lacking = lacking(page.getDocumentElement().getTextContent(), typefaces);
        adapt(page);
        PdfPages pages = new PdfPages();
        try (PdfBoxRenderer renderer = renderer(page, document, typefaces, software, pages)) {
            renderer.createPDFWithoutClosing();
        }
        pages.tidy();
        return lacking;
    }

    private static PdfBoxRenderer renderer(
            Document page, PDDocument document, List<Typeface> typefaces, String software, PageSupplier pages) {
        PdfRendererBuilder builder = new PdfRendererBuilder()
                .withW3cDocument(page, PROTOCOL + ":/")
                .usePDDocument(document)
                .usePageSupplier(pages)
                .useUriResolver((base, uri) -> uri.startsWith(PROTOCOL + ":") || uri.startsWith("#") ? uri : null)
                .useProtocolsStreamImplementation(uri -> new Content(uri.substring(PROTOCOL.length() + 1)), PROTOCOL)
                .useSVGDrawer(new BatikSVGDrawer())
                .useUnicodeLineBreaker(new LineBreaks())
                .useUnicodeBidiSplitter(new ICUBidiSplitter.ICUBidiSplitterFactory())
                .useUnicodeBidiReorderer(new ICUBidiReorderer())
                .useReplacementText(Character.toString(HtmlLayout.UNKNOWN))
                .usePdfUaAccessibility(true)
                .withProducer(software);
        typefaces.forEach(
                typeface -> builder.useFont(typeface, typeface.family, typeface.weight, FontStyle.NORMAL, true));
        return builder.buildPdfRenderer();
    }

    private static String lacking(String text, List<Typeface> typefaces) {
        return text.codePoints()
                .distinct()
                .filter(letter -> !Character.isWhitespace(letter)
                        && Character.getType(letter) != Character.FORMAT
                        && typefaces.stream().noneMatch(typeface -> typeface.has(letter)))
                .limit(MOST_LACKING)
                .mapToObj(Character::toString)
                .collect(Collectors.joining(" "));
    }

    private static Document parsed(String html) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setNamespaceAware(true);
            return factory.newDocumentBuilder().parse(new InputSource(new StringReader(html)));
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new IllegalStateException("the page is not readable as XML", e);
        }
    }

    /** What a PDF wants said otherwise than a browser: its subject, words for links and pictures, and bookmarks. */
    private static void adapt(Document page) {
        each(page, "meta", meta -> {
            if (meta.getAttribute("name").equals("description")) {
                meta.setAttribute("name", "subject");
            } else {
                meta.getParentNode().removeChild(meta);
            }
        });
        each(page, "a", link -> link.setAttribute("title", link.getTextContent().strip()));
        boolean drawn = canDraw();
        each(page, "svg", svg -> {
            String description = svg.getElementsByTagName("desc").item(0).getTextContent();
            if (drawn) {
                svg.setAttribute(
                        "alt", svg.getElementsByTagName("title").item(0).getTextContent() + ". " + description);
                svg.setAttribute("font-family", "Picture");
                bold(svg);
            } else {
                Element words = page.createElement("p");
                words.setTextContent(description);
                svg.getParentNode().replaceChild(words, svg);
            }
        });
        Element bookmarks = page.createElement("bookmarks");
        each(page, "section", section -> {
            Element bookmark = page.createElement("bookmark");
            bookmark.setAttribute(
                    "name", section.getElementsByTagName("h2").item(0).getTextContent());
            bookmark.setAttribute("href", "#" + section.getAttribute("id"));
            bookmarks.appendChild(bookmark);
        });
        page.getElementsByTagName("head").item(0).appendChild(bookmarks);
    }

    /** What draws pictures does not look for the weight of a typeface. */
    private static void bold(Element svg) {
        NodeList texts = svg.getElementsByTagName("text");
        for (int i = 0; i < texts.getLength(); i++) {
            Element text = (Element) texts.item(i);
            if (text.getAttribute("font-weight").equals("bold")) {
                text.setAttribute("font-family", "Picture bold");
            }
        }
    }

    /** Whether this Java can draw letters in pictures, which takes AWT and a typeface on the machine. */
    private static boolean canDraw() {
        System.setProperty("java.awt.headless", "true");
        try (InputStream in = new Content(LIBERATION + "Sans-Regular.ttf").getStream()) {
            return Font.createFont(Font.TRUETYPE_FONT, in).canDisplay('a');
        } catch (IOException | FontFormatException | RuntimeException | LinkageError | InternalError e) {
            return false;
        }
    }

    private interface Use {
        void of(Element element);
    }

    private static void each(Document page, String name, Use use) {
        NodeList found = page.getElementsByTagName(name);
        // Asked again, it would look through the rest of the page each time.
        int count = found.getLength();
        List<Element> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            all.add((Element) found.item(i));
        }
        all.forEach(use::of);
    }

    /** The same report printed at the same time has the same bytes. */
    private static void date(PDDocument document, String software, Instant printedAt) {
        GregorianCalendar time = GregorianCalendar.from(ZonedDateTime.ofInstant(printedAt, ZoneOffset.UTC));
        PDDocumentInformation information = document.getDocumentInformation();
        information.setCreationDate(time);
        information.setModificationDate(time);
        information.setCreator(software);
        document.setDocumentId(printedAt.toEpochMilli());
    }

    /** What the libraries note for their makers is nothing to a workshop. */
    private static void quiet() {
        XRLog.setLoggingEnabled(false);
        for (Logger each : LOGGERS) {
            each.setLevel(Level.OFF);
        }
    }

    /** A typeface for text. Ligatures are left out: they make what is copied from the page hard to find again. */
    private static final class Typeface extends PDFontSupplier {
        private final String family;
        private final int weight;
        private final TrueTypeFont outlines;
        private final PDDocument document;
        private PDFont font;

        Typeface(PDDocument document, String name, String family, int weight) throws IOException {
            super(null);
            this.family = family;
            this.weight = weight;
            this.document = document;
            try (InputStream in = new Content(name).getStream()) {
                outlines = new TTFParser().parse(new RandomAccessReadBuffer(in));
            }
            outlines.setEnableGsub(false);
        }

        boolean has(int letter) {
            try {
                return outlines.getUnicodeCmapLookup().getGlyphId(letter) != 0;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        @Override
        public PDFont supply() {
            if (font == null) {
                try {
                    font = PDType0Font.load(document, outlines, true);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }
            return font;
        }
    }

    /** Something on the class path. */
    private record Content(String name) implements FSStream {
        @Override
        public InputStream getStream() {
            return PdfLayout.class.getResourceAsStream(name);
        }

        @Override
        public Reader getReader() {
            return new InputStreamReader(getStream(), StandardCharsets.UTF_8);
        }
    }
}
