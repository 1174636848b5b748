package fitworthy.printout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.document.HtmlLayout;
import fitworthy.document.Report;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Column;
import fitworthy.document.Report.FindingBlock;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Section;
import fitworthy.document.Report.Subheading;
import fitworthy.document.Report.Table;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** The report says what the advice says, figure for figure, and whatever text a sheet holds it stays a page. */
public class ReportTest {

    /** Text as nobody should write it, each kind of it once. */
    private static final List<String> HOSTILE = List.of(
            "<script>alert(1)</script>",
            "\"><img src=x onerror=alert(1)>",
            "</style></title><b>bold",
            "${report} $unsafe{x} @if(true)",
            "{{7*7}} &lt; &amp; &#0;",
            "W".repeat(190),
            "\u202Eright to left\u202C \u0645\u0631\u062D\u0628\u0627 \u05E9\u05DC\u05D5\u05DD",
            "\uD83D\uDE9C\uD83D\uDE00 \u4E2D\u6587",
            "javascript:alert(1)",
            "]]><!--",
            "'' \" ` \\");

    /** The plain sheet with hostile text wherever it takes text. */
    public static String hostileSheet() throws IOException {
        String sheet = Files.readString(Books.RULES.resolve("plain-sheet.yaml"));
        String all = String.join(" ", HOSTILE).replace("'", "''");
        StringBuilder parts = new StringBuilder("fitments:\n");
        for (int i = 0; i < HOSTILE.size(); i++) {
            parts.append("  - {name: '")
                    .append(HOSTILE.get(i).replace("'", "''"))
                    .append("', kind: other, mass: 90 kg," + " at: {x: 9000 mm, y: 0 mm, z: 900 mm}}\n");
        }
        return sheet.replaceFirst(
                                "(?m)^title: .*$",
                                Matcher.quoteReplacement("title: '" + all + "'\ncustomer: '" + all
                                        + "'\nquote: '" + all + "'\ncases: [{name: '" + HOSTILE.get(0) + "'}, {name: '"
                                        + HOSTILE.get(5)
                                        + "'}]"))
                        .replace("name: Plain wagon", "name: '" + HOSTILE.get(1) + "'")
                + parts;
    }

    @TestFactory
    Stream<DynamicTest> pageSaysEverythingTheAdviceSays() {
        return Printed.SCENARIOS.stream()
                .map(name -> DynamicTest.dynamicTest(name, () -> {
                    Printed printed = Printed.scenario(name);
                    says(printed, Printed.words(HtmlLayout.html(printed.report())));
                }));
    }

    /** Holds text pulled out of a printout against the advice. */
    public static void says(Printed printed, String words) {
        List<String> absent = Expected.of(printed.advice()).stream()
                .filter(each -> !words.contains(Printed.dense(each)))
                .toList();
        assertEquals(List.of(), absent);
    }

    @Test
    void worstComesFirstAndWhatComesOfItStandsTogether() throws Exception {
        List<String> marks = new ArrayList<>();
        List<String> places = new ArrayList<>();
        List<String> numbers = new ArrayList<>();
        for (Block block :
                section(Printed.scenario("touring").report(), "findings").blocks()) {
            if (block instanceof Subheading heading && heading.level() == 3) {
                marks.add(heading.mark());
            } else if (block instanceof Subheading heading) {
                places.add(marks.get(marks.size() - 1) + ": " + heading.text());
            } else if (block instanceof FindingBlock found) {
                numbers.add(found.number());
                assertEquals(marks.get(marks.size() - 1), found.mark());
                places.add(found.id());
            }
        }
        assertEquals(List.of("stop", "change", "confirm", "note"), marks);
        List<String> headings =
                places.stream().filter(place -> place.contains(": ")).toList();
        assertEquals(headings.stream().distinct().toList(), headings);
        assertEquals(
                List.of("stop: Cannot be undone, or only by doing it again", "body.chassis-unapproved"),
                places.subList(0, 2));
        int plates = places.indexOf("across.no-plate");
        assertEquals(
                List.of("change: Rules and papers", "across.no-plate", "body.plate-gone", "front.plate-hidden"),
                places.subList(plates - 1, plates + 3));
        assertTrue(numbers.size() > 30, "found " + numbers);
        List<String> heads =
                numbers.stream().filter(number -> !number.contains(".")).toList();
        assertEquals(
                IntStream.rangeClosed(1, heads.size()).mapToObj(String::valueOf).toList(), heads);
        assertTrue(numbers.contains("5.1"), "what is told under the fifth: " + numbers);
        assertEquals(numbers.size(), numbers.stream().distinct().count());
    }

    private static Section section(Report report, String id) {
        return report.sections().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void hostileTextIsShownAndDoesNothing() throws Exception {
        Printed printed = Printed.plain(hostileSheet());
        String html = HtmlLayout.html(printed.report());
        Document page = Printed.xml(html);
        assertTrue(
                printed.advice().findings().stream()
                        .anyMatch(each -> HOSTILE.contains(each.judged().subject())),
                "no finding is about a hostile name");
        says(printed, Printed.words(html));
        for (String each : HOSTILE) {
            assertTrue(page.getDocumentElement().getTextContent().contains(HtmlLayout.clean(each)), each);
        }
        assertEquals(0, page.getElementsByTagName("script").getLength());
        assertEquals(0, page.getElementsByTagName("img").getLength());
        for (int i = 0; i < page.getElementsByTagName("*").getLength(); i++) {
            Element element = (Element) page.getElementsByTagName("*").item(i);
            for (int j = 0; j < element.getAttributes().getLength(); j++) {
                String name = element.getAttributes().item(j).getNodeName();
                assertTrue(!name.startsWith("on"), name);
                assertTrue(
                        !name.equals("href") || element.getAttribute(name).matches("(#|https?://).*"),
                        element.getAttribute(name));
            }
        }
        assertEquals(List.of(), NuChecker.faults(html));
    }

    @Test
    void pageNeedsNothingBesideIt() throws Exception {
        String html = HtmlLayout.html(Printed.scenario("touring").report());
        assertTrue(
                !html.contains("<link")
                        && !html.contains("<script")
                        && !html.contains("src=")
                        && !html.contains("url(")
                        && !html.contains("@import"),
                "something is fetched");
    }

    @TestFactory
    Stream<DynamicTest> pageIsValid() {
        return Printed.SCENARIOS.stream()
                .map(name -> DynamicTest.dynamicTest(
                        name,
                        () -> assertEquals(
                                List.of(),
                                NuChecker.faults(
                                        HtmlLayout.html(Printed.scenario(name).report())))));
    }

    @Test
    void emptyPlanMakesAPage() throws Exception {
        String html = HtmlLayout.html(Printed.plain(Files.readString(Books.RULES.resolve("plain-sheet.yaml")))
                .report());
        assertTrue(Printed.words(html).contains(Printed.dense("No fault found in what was checked.")));
        assertEquals(List.of(), NuChecker.faults(html));
    }

    @Test
    void tenThousandFindingsMakeAPage() throws Exception {
        Report report = many(10_000);
        Document page = Printed.xml(HtmlLayout.html(report));
        assertEquals(10_000, page.getElementsByTagName("article").getLength());
    }

    /** The overloaded plan's report with its findings over and over, each with the line that leads to it. */
    public static Report many(int count) throws Exception {
        Report report = Printed.scenario("overloaded").report();
        List<FindingBlock> some = blocks(report, "findings", FindingBlock.class);
        Table glance = blocks(report, "answer", Table.class).get(0);
        List<Column> columns = new ArrayList<>(glance.columns());
        // Numbers of four and five digits stand in one line.
        columns.set(0, Column.text("No.", 8));
        List<Row> lines = new ArrayList<>();
        List<Block> many = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            List<String> cells =
                    new ArrayList<>(glance.rows().get(i % glance.rows().size()).cells());
            cells.set(0, String.valueOf(i + 1));
            lines.add(new Row(cells, "finding-" + (i + 1), false));
            FindingBlock each = some.get(i % some.size());
            many.add(new FindingBlock(
                    String.valueOf(i + 1),
                    each.mark(),
                    each.id(),
                    each.place(),
                    each.title(),
                    each.figures(),
                    each.details()));
        }
        return report.with(List.of(
                new Section("answer", "In short", List.of(new Table(glance.caption(), columns, lines))),
                new Section("findings", "Findings", many)));
    }

    public static <B extends Block> List<B> blocks(Report report, String section, Class<B> kind) {
        return section(report, section).blocks().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }
}
