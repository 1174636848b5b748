package fitworthy.printout;

import fitworthy.Books;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Mender.Mending;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SheetReader;
import fitworthy.source.FaultsException;
import fitworthy.source.NodeReader;
import java.io.StringReader;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** Advice, and the report made of it without a search for changes. */
record Printed(Advice advice, Report report) {

    static final List<String> SCENARIOS = List.of("touring", "overloaded", "weekender");
    static final Imprint IMPRINT = new Imprint("sheet.yaml", "0123456789abcdef".repeat(4), "fitworthy 9.8.7",
            Instant.parse("2026-11-25T10:00:00Z"));

    static Printed scenario(String name) throws FaultsException {
        return of(SheetReader.sheet(NodeReader.read(Path.of("scenarios", name + ".yaml"), new ArrayList<>()),
                Books.shipped().regions().keySet(), new ArrayList<>()));
    }

    /** The plain sheet with some of its text replaced. */
    static Printed plain(String text) throws FaultsException {
        return of(SheetReader.sheet(NodeReader.read("plain.yaml", text, new ArrayList<>()),
                Books.shipped().regions().keySet(), new ArrayList<>()));
    }

    private static Printed of(Sheet sheet) throws FaultsException {
        Advice advice = Adviser.advise(Books.shipped(), sheet);
        return new Printed(advice, Arrangement.report(advice, new Mending(List.of(), List.of(), 0, true), Optional.empty(),
                IMPRINT));
    }

    /** A page read as XML, which it has to be for the PDF. */
    static Document xml(String html) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(html)));
    }

    /** What a page says, without its style and without any space, since lines break where they will. */
    static String words(String html) throws Exception {
        return dense(xml(html).getElementsByTagName("body").item(0).getTextContent());
    }

    static String dense(String text) {
        return HtmlPrintout.clean(text).replaceAll("[\\s\\p{Z}]+", "");
    }
}
