package fitworthy.printout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Ranked;
import fitworthy.document.HtmlLayout;
import fitworthy.document.Paper;
import fitworthy.document.Report;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Section;
import fitworthy.document.Report.Table;
import fitworthy.printout.words.Wording;
import fitworthy.source.FaultsException;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The two pages that a customer reads: they are two, they answer what is asked first, and they drop nothing in silence. */
class FrontPagesTest {

    /** How far down a page is filled at least: two thirds of what is between its margins. */
    private static final double FILLED = 0.63;

    private static final String SIGN = "Read and talked through";

    /** The pages of the PDF of a report, each as its lines of text. */
    private static List<String> pages(Report report, Paper paper) throws Exception {
        List<String> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(Printed.pdf(report, paper))) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document).replaceAll("\\s+", " "));
            }
        }
        return pages;
    }

    private static Report front(Report report) {
        return report.with(report.sections().stream()
                .filter(section -> List.of("answer", "others").contains(section.id()))
                .toList());
    }

    /** A plan with so many findings that they do not fit two pages. */
    private static Printed many(Readers readers, Paper paper) throws FaultsException {
        String parts = IntStream.range(0, 60)
                .mapToObj(i -> "  - {name: Part " + i + " with a name of some length, kind: other, mass: " + (i + 20)
                        + " kg, at: {x: 9000 mm, y: 0 mm, z: 900 mm}}\n")
                .collect(Collectors.joining());
        String loadings = IntStream.range(0, 9)
                .mapToObj(i -> "  - {name: Loading " + i + " of a long journey}\n")
                .collect(Collectors.joining());
        return Printed.of(Sheets.read(Sheets.treeWith("fitments:\n" + parts + "cases:\n" + loadings)), readers, paper);
    }

    @Test
    void twoPagesAreTwo() throws Exception {
        for (Paper paper : Paper.values()) {
            for (String name : Printed.SCENARIOS) {
                twoPages(
                        name + " on " + paper,
                        Printed.scenario(name, Readers.CUSTOMER, paper).report(),
                        paper);
            }
            twoPages("many on " + paper, many(Readers.CUSTOMER, paper).report(), paper);
        }
    }

    @Test
    void withAQuoteGoTwoPagesAlone() throws Exception {
        for (Paper paper : Paper.values()) {
            for (String name : Printed.SCENARIOS) {
                Report report = Printed.scenario(name, Readers.QUOTE, paper).report();
                List<String> pages = pages(report, paper);
                assertTrue(pages.size() <= 2, name + " on " + paper);
                says(pages.get(0), "Advice, not certification", "local codes", "licensed engineer");
                says(
                        String.join(" ", pages),
                        "The full print (ask the workshop for it) has each finding in full, what was not checked");
                assertFalse(String.join("", pages).contains("the annex"), name + " has no annex");
            }
            List<String> many = pages(many(Readers.QUOTE, paper).report(), paper);
            assertEquals(2, many.size());
            says(many.get(1), "The full print (ask the workshop for it) has each finding in full");
        }
    }

    /** Whoever signs a quote has nothing else that says what plates there call a rating and what a pound is. */
    @Test
    void aQuoteSaysWhatItsTermsAndUnitsAreCalledThere() throws Exception {
        String quoted = String.join(
                " ",
                pages(
                        Printed.of(Sheets.plainWith("region: us"), Readers.QUOTE, Paper.LETTER)
                                .report(),
                        Paper.LETTER));
        says(quoted, "The GVM is the GVWR on the plate", "100 kg are 220 lb");
        assertFalse(String.join(
                        " ",
                        pages(
                                Printed.of(Sheets.plainWith("title: Plain"), Readers.QUOTE, Paper.A4)
                                        .report(),
                                Paper.A4))
                .contains("GVWR"));
    }

    private static void twoPages(String name, Report report, Paper paper) throws Exception {
        List<String> pages = pages(report, paper);
        assertTrue(
                pages.get(0).contains("The advice rests on") || pages.get(0).contains("No figure is marked as a guess"),
                name + ": the first page goes on");
        assertTrue(
                pages.subList(0, Math.min(2, pages.size())).stream()
                        .anyMatch(page -> page.contains(SIGN) && page.contains("Signature")),
                name);
    }

    @Test
    void eachReaderGetsWhatIsAskedForAndNoMore() throws Exception {
        Map<String, List<Integer>> most = Map.of(
                "touring",
                List.of(5, 25, 40, 32),
                "overloaded",
                List.of(5, 12, 20, 16),
                "weekender",
                List.of(4, 4, 8, 8));
        for (String name : Printed.SCENARIOS) {
            List<Integer> counts = new ArrayList<>();
            for (Readers readers : List.of(Readers.CUSTOMER, Readers.ANYBODY, Readers.WORKSHOP, Readers.ENGINEER)) {
                Report report = Printed.scenario(name, readers, Paper.A4).report();
                try (PDDocument document = Loader.loadPDF(Printed.pdf(report, Paper.A4))) {
                    counts.add(document.getNumberOfPages());
                }
            }
            for (int i = 0; i < counts.size(); i++) {
                assertTrue(counts.get(i) <= most.get(name).get(i), name + ": " + counts);
            }
        }
        assertEquals(
                List.of("answer", "others", "pictures", "about"),
                ids(Printed.scenario("touring", Readers.CUSTOMER, Paper.A4).report()));
        assertEquals(
                List.of("masses", "alterations", "workings", "findings"),
                ids(Printed.scenario("touring", Readers.ENGINEER, Paper.A4).report())
                        .subList(0, 4));
        assertTrue(ids(Printed.scenario("touring").report()).containsAll(List.of("work", "workings", "met")));
        assertFalse(ids(Printed.scenario("touring", Readers.ANYBODY, Paper.A4).report())
                .contains("met"));
    }

    private static List<String> ids(Report report) {
        return report.sections().stream().map(Section::id).toList();
    }

    @Test
    void fiveQuestionsAreAnsweredOnTheFirstPage() throws Exception {
        String touring = firstPage("touring");
        says(
                touring,
                "Within its ratings? Loaded as planned it is within its ratings in every loading once Rating kit is"
                        + " approved; least spare: front axle limit 61 kg (canopy on). Until then over: GVM by 485 kg",
                "Heaviest trailer? Up to 2600 kg, limited by the trailer's plate. The vehicle itself could tow 3082 kg",
                "What first? " + first("touring"),
                "Order today? Front recovery point",
                "The trip? Fuel: enough (890 km, range 1047 km at 19.0 L/100km). Water: enough for the days (7.2 L a person and"
                        + " day); too little for a delay (2.2 days short). Power: enough (20.9 % of the second battery, at most 90.0 %).",
                "Margin to each limit",
                "have a price, together 63610.00 AUD. Without a price on the sheet: ");
        says(
                firstPage("overloaded"),
                "Within its ratings? Loaded as planned it is over its ratings: GCM by 305 kg, GVM by 190 kg, rear axle limit",
                "Heaviest trailer? Up to 1451 kg",
                "limited by the GVM. Touring van is heavier even empty: 2450 kg.",
                "What first? Touring van cannot be towed as planned, even empty: 2450 kg at its lightest, 1451 kg allowed (GVM)."
                        + " Less on the vehicle, or another trailer. Make the trailer or the vehicle at least 305 kg lighter when"
                        + " both are loaded (towing the van). The customer decides.",
                "Order today? Nothing yet");
        says(
                firstPage("weekender"),
                "Within its ratings? Loaded as planned it is within its ratings",
                "Order today? Drawers, Fridge.");
    }

    /** Without a rating nothing is first but to find it out; a stop is first all the same. */
    @Test
    void withoutARatingThatIsWhatIsFirst() throws Exception {
        String unknown = "vehicle: {ratings: {gvm: unknown}}\n";
        says(
                pages(
                                Printed.of(Sheets.plainWith(unknown), Readers.CUSTOMER, Paper.A4)
                                        .report(),
                                Paper.A4)
                        .get(0),
                "What first? Find out",
                "Until then nothing says that the plan is within its ratings.");
        String over = "vehicle: {ratings: {gvm: unknown, front-axle: 1328 kg}}\n";
        String page = pages(
                        Printed.of(Sheets.plainWith(over), Readers.CUSTOMER, Paper.A4)
                                .report(),
                        Paper.A4)
                .get(0);
        says(
                page,
                "What first? Take at least 1 kg off the front axle (everything aboard). The customer chooses what stays behind.");
    }

    private static String first(String scenario) throws FaultsException {
        Arrangement arrangement = Arrangement.of(Printed.scenario(scenario).advice());
        return Wording.order(Ranked.of(arrangement).get(0).group().worst());
    }

    private static String firstPage(String name) throws Exception {
        return pages(Printed.scenario(name, Readers.CUSTOMER, Paper.A4).report(), Paper.A4)
                .get(0);
    }

    private static void says(String page, String... texts) {
        for (String text : texts) {
            assertTrue(page.contains(text), () -> "'" + text + "' in " + page);
        }
    }

    @Test
    void secondPageTellsWhoActsWhatToBuyAndWhereToSign() throws Exception {
        String page = pages(
                        Printed.scenario("touring", Readers.CUSTOMER, Paper.A4).report(), Paper.A4)
                .get(1);
        says(
                page,
                "by who acts",
                "The builder",
                "The insurer",
                "Worth knowing:",
                "Do not buy as planned",
                SIGN,
                "Signature");
    }

    /** Ids, places in files and digests are for those who look a thing up, and stand in the annex. */
    @Test
    void noIdStandsBeforeTheAnnex() throws Exception {
        for (Printed printed : List.of(
                Printed.scenario("touring"),
                Printed.scenario("overloaded"),
                Printed.scenario("weekender"),
                many(Readers.ANYBODY, Paper.A4))) {
            String front = HtmlLayout.html(front(printed.report())).replaceAll("(?s)<head>.*</head>|<[^>]*>", " ");
            Stream.of(
                            Books.shipped().cards().keySet().stream(),
                            Books.shipped().practice().keySet().stream(),
                            Stream.of(
                                    ".drl",
                                    Books.shipped().hash(),
                                    Printed.IMPRINT.sheetHash(),
                                    Printed.IMPRINT.sheetFile()))
                    .flatMap(some -> some)
                    .forEach(id -> assertFalse(front.contains(id), id));
        }
    }

    @Test
    void everyFindingIsTold() throws Exception {
        for (Printed printed : List.of(
                Printed.scenario("touring"),
                Printed.scenario("overloaded"),
                Printed.scenario("weekender"),
                many(Readers.ANYBODY, Paper.A4))) {
            List<String> told = new ArrayList<>();
            int more = 0;
            for (Section section : front(printed.report()).sections()) {
                for (Report.Block block : section.blocks()) {
                    if (block instanceof Table table) {
                        table.rows().stream()
                                .map(Report.Row::link)
                                .filter(link -> !link.isEmpty())
                                .forEach(told::add);
                    } else if (block instanceof Paragraph paragraph) {
                        Matcher counted = Pattern.compile("And ([0-9]+) more in the annex")
                                .matcher(paragraph.text());
                        Matcher notes = Pattern.compile("[:;] ([0-9]+) ").matcher(paragraph.text());
                        while (paragraph.text().startsWith("Worth knowing") && notes.find()) {
                            told.add("finding-" + notes.group(1));
                        }
                        more += counted.find() ? Integer.parseInt(counted.group(1)) : 0;
                    }
                }
            }
            List<String> heads = Ranked.of(Arrangement.of(printed.advice())).stream()
                    .filter(Ranked::isHead)
                    .map(FindingBlocks::link)
                    .toList();
            assertEquals(told.stream().distinct().toList(), told);
            assertTrue(heads.containsAll(told), told.toString());
            assertEquals(heads.size(), told.size() + more);
        }
    }

    /** But for the last page of text before pictures, none has a third of it empty. */
    @Test
    void noPageIsAThirdEmpty() throws Exception {
        for (String name : Printed.SCENARIOS) {
            for (Readers readers : Readers.values()) {
                Report report = Printed.scenario(name, readers, Paper.A4).report();
                try (PDDocument document = Loader.loadPDF(Printed.pdf(report, Paper.A4))) {
                    int last = document.getNumberOfPages() - 1;
                    if (ids(report).indexOf("pictures") == report.sections().size() - 1) {
                        List<String> texts = pages(report, Paper.A4);
                        last = texts.indexOf(texts.stream()
                                        .filter(text -> text.contains(" Pictures "))
                                        .findFirst()
                                        .orElseThrow())
                                - 1;
                    }
                    List<String> empty = new ArrayList<>();
                    for (int page = 0; page < last; page++) {
                        double filled = filled(new PDFRenderer(document).renderImageWithDPI(page, 36));
                        if (filled < FILLED) {
                            empty.add(page + 1 + ": " + filled);
                        }
                    }
                    assertEquals(List.of(), empty, name + " for " + readers);
                }
            }
        }
    }

    /** How far down a page is filled, its foot aside. */
    private static double filled(BufferedImage page) {
        for (int y = (int) (page.getHeight() * 0.95); y > 0; y--) {
            for (int x = 0; x < page.getWidth(); x++) {
                if ((page.getRGB(x, y) & 0xFF) < 0xC0) {
                    return (double) y / page.getHeight();
                }
            }
        }
        return 0;
    }
}
