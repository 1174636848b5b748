package fitworthy.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.document.Report.FindingBlock;
import fitworthy.printout.Printed;
import fitworthy.printout.ReportTest;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.contentstream.operator.OperatorName;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.PDFTextStripperByArea;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The PDF, read back: it says what the advice says, and can be read by those who do not see it. */
class PdfLayoutTest {

    /** What stands above and below the text of every page, in points. */
    private static final double MARGIN = 40;

    private static PDDocument read(Report report, Paper paper) throws Exception {
        return Loader.loadPDF(Printed.pdf(report, paper));
    }

    /** The text between the running lines, without spaces. */
    private static String words(PDDocument document) throws IOException {
        return String.join("", pages(document));
    }

    private static List<String> pages(PDDocument document) throws IOException {
        List<String> pages = new ArrayList<>();
        for (PDPage page : document.getPages()) {
            PDFTextStripperByArea stripper = new PDFTextStripperByArea();
            stripper.setSortByPosition(false);
            stripper.addRegion(
                    "text",
                    new Rectangle2D.Double(
                            0,
                            MARGIN,
                            page.getMediaBox().getWidth(),
                            page.getMediaBox().getHeight() - 2 * MARGIN));
            stripper.extractRegions(page);
            pages.add(Printed.dense(stripper.getTextForRegion("text")));
        }
        return pages;
    }

    /** All text of a page, running lines too. */
    private static String text(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document);
    }

    @TestFactory
    Stream<DynamicTest> fileSaysWhatAdviceAndPageSay() {
        return Printed.SCENARIOS.stream().flatMap(name -> Stream.of(Paper.values())
                .map(paper -> DynamicTest.dynamicTest(name + " on " + paper, () -> {
                    Printed printed = Printed.scenario(name);
                    try (PDDocument document = read(printed.report(), paper)) {
                        List<String> pages = pages(document);
                        ReportTest.says(printed, String.join("", pages));
                        letterForLetter(
                                Printed.shownWords(HtmlLayout.html(printed.report())),
                                pages,
                                headings(printed.report()));
                    }
                })));
    }

    /** What a sheet of paper says more than the page is the heading of a table that goes on from the sheet before. */
    private static void letterForLetter(String words, List<String> pages, List<String> headings) {
        int at = 0;
        for (String page : pages) {
            int from = at;
            String text = Stream.concat(Stream.of(""), headings.stream())
                    .filter(page::startsWith)
                    .map(each -> page.substring(each.length()))
                    .filter(each -> words.startsWith(each, from))
                    .findFirst()
                    .orElse(page);
            assertEquals(words.substring(at, Math.min(words.length(), at + text.length())), text);
            at += text.length();
        }
        assertEquals(words.length(), at);
    }

    private static List<String> headings(Report report) {
        return report.sections().stream()
                .flatMap(each -> each.blocks().stream())
                .filter(Report.Table.class::isInstance)
                .map(each -> Printed.dense(((Report.Table) each)
                        .columns().stream().map(Report.Column::heading).collect(Collectors.joining())))
                .distinct()
                .toList();
    }

    @Test
    void pagesAreOfThePaperAskedForAndNumbered() throws Exception {
        Report report = Printed.scenario("weekender").report();
        try (PDDocument a4 = read(report, Paper.A4);
                PDDocument letter = read(report, Paper.LETTER)) {
            assertEquals(210 / 25.4 * 72, a4.getPage(0).getMediaBox().getWidth(), 0.5);
            assertEquals(297 / 25.4 * 72, a4.getPage(0).getMediaBox().getHeight(), 0.5);
            assertEquals(8.5 * 72, letter.getPage(0).getMediaBox().getWidth(), 0.5);
            assertEquals(11 * 72, letter.getPage(0).getMediaBox().getHeight(), 0.5);
            for (int page = 1; page <= a4.getNumberOfPages(); page++) {
                String text = text(a4, page);
                assertTrue(text.contains("page " + page + " of " + a4.getNumberOfPages()), text);
            }
        }
    }

    @Test
    void fileCanBeReadByThoseWhoDoNotSeeIt() throws Exception {
        Printed printed = Printed.scenario("overloaded");
        try (PDDocument document = read(printed.report(), Paper.A4)) {
            assertEquals("en", document.getDocumentCatalog().getLanguage());
            assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked());
            assertTrue(document.getDocumentCatalog().getViewerPreferences().displayDocTitle());
            assertTrue(document.getDocumentInformation()
                    .getTitle()
                    .startsWith(printed.advice().sheet().title()));
            String metadata =
                    new String(document.getDocumentCatalog().getMetadata().toByteArray(), "UTF-8");
            assertTrue(metadata.contains("pdfuaid:part"), metadata);
            assertEquals(
                    printed.report().sections().size(),
                    size(document.getDocumentCatalog().getDocumentOutline().children()));
            List<PDStructureElement> all = new ArrayList<>();
            collect(document.getDocumentCatalog().getStructureTreeRoot(), all);
            Set<String> kinds = new HashSet<>();
            all.forEach(each -> kinds.add(each.getStructureType()));
            assertTrue(
                    kinds.containsAll(Set.of("H1", "H2", "H3", "H4", "H5", "Table", "TH", "TD", "P", "Figure", "Link")),
                    kinds.toString());
            all.stream()
                    .filter(each -> each.getStructureType().equals("Figure"))
                    .forEach(each ->
                            assertTrue(each.getAlternateDescription().length() > 40, each.getAlternateDescription()));
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertTrue(font.isEmbedded(), font.getName());
                }
                page.getAnnotations().stream()
                        .filter(PDAnnotationLink.class::isInstance)
                        .forEach(each -> assertTrue(
                                each.getContents() != null || each.getStructParent() >= 0, "a link without words"));
            }
        }
    }

    private static int size(Iterable<?> items) {
        int size = 0;
        for (Object each : items) {
            size++;
        }
        return size;
    }

    private static void collect(PDStructureNode node, List<PDStructureElement> into) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                into.add(element);
                collect(element, into);
            }
        }
    }

    @Test
    void hostileTextStaysOnThePage() throws Exception {
        Printed printed = Printed.plain(ReportTest.hostileSheet());
        try (PDDocument document = read(printed.report(), Paper.LETTER)) {
            String words = words(document);
            assertTrue(words.contains("<script>alert(1)</script>"), words.substring(0, 500));
            assertTrue(words.contains("W".repeat(190)), "a very long word");
            Margins margins = new Margins();
            margins.writeText(document, Writer.nullWriter());
            assertTrue(
                    margins.right > 8 * 72 - 60 && margins.right <= 8.5 * 72 - 40, "text reaches to " + margins.right);
        }
    }

    /** How far to the right text reaches. */
    private static final class Margins extends PDFTextStripper {
        private double right;

        @Override
        protected void processTextPosition(org.apache.pdfbox.text.TextPosition text) {
            right = Math.max(right, text.getXDirAdj() + text.getWidthDirAdj());
        }
    }

    /** A tenth of what src/bench/Printouts.java makes by hand. */
    @Test
    void aThousandFindingsMakeAFile() throws Exception {
        int count = 1000;
        Report report = ReportTest.many(count);
        try (PDDocument document = read(report, Paper.A4)) {
            List<String> pages = pages(document);
            String words = String.join("", pages);
            int at = 0;
            for (FindingBlock each : ReportTest.blocks(report, "findings", FindingBlock.class)) {
                String head = Printed.dense(each.mark().toUpperCase(Locale.ROOT) + each.number() + each.id() + "("
                        + each.place() + ")" + each.title());
                at = words.indexOf(head, at);
                assertTrue(at >= 0, head);
            }
            assertTrue(text(document, pages.size()).contains("page " + pages.size() + " of " + pages.size()));
            List<PDStructureElement> all = new ArrayList<>();
            collect(document.getDocumentCatalog().getStructureTreeRoot(), all);
            assertEquals(
                    count,
                    all.stream()
                            .filter(each -> each.getStructureType().equals("Art"))
                            .count());
            assertEquals(
                    count,
                    all.stream()
                            .filter(each -> each.getStructureType().equals("Link"))
                            .count());
            int links = 0;
            for (PDPage page : document.getPages()) {
                links += page.getAnnotations().size();
            }
            assertEquals(count, links);
        }
    }

    @Test
    void everyMarkIsDescribedAndNoneLeavesOutNothing() throws Exception {
        try (PDDocument document = read(Printed.scenario("overloaded").report(), Paper.A4)) {
            for (PDPage page : document.getPages()) {
                Set<COSName> used = new HashSet<>();
                List<Object> tokens = new PDFStreamParser(page).parse();
                for (int i = 2; i < tokens.size(); i++) {
                    if (tokens.get(i) instanceof Operator operator
                            && operator.getName().equals(OperatorName.BEGIN_MARKED_CONTENT_SEQ)) {
                        assertFalse(tokens.get(i - 2).equals(COSName.ARTIFACT)
                                && tokens.get(i + 1).equals(Operator.getOperator(OperatorName.END_MARKED_CONTENT)));
                        used.add((COSName) tokens.get(i - 1));
                    }
                }
                assertEquals(
                        used,
                        page.getResources()
                                .getCOSObject()
                                .getCOSDictionary(COSName.PROPERTIES)
                                .keySet());
            }
        }
    }
}
