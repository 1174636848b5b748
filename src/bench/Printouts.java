import com.sun.management.OperatingSystemMXBean;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.document.Paper;
import fitworthy.document.PdfLayout;
import fitworthy.document.Report;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.FindingBlock;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Section;
import fitworthy.document.Report.Table;
import fitworthy.engine.BookLoader;
import fitworthy.engine.RuleEngine;
import fitworthy.printout.Imprint;
import fitworthy.printout.Readers;
import fitworthy.printout.ReportWriter;
import fitworthy.search.Mender.Mending;
import fitworthy.sheet.SheetReader;
import fitworthy.shelf.Shelves;
import fitworthy.source.NodeReader;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * Makes PDFs of the overloaded plan with its findings over and over, each with its line at a glance, and looks whether
 * every finding is in them. From the project's folder, for each number of findings:
 *
 * <pre>mvn -q -B -ntp -DskipTests package &amp;&amp; java -Xmx2g -XX:TieredStopAtLevel=1 -XX:+UseSerialGC \
 *     -cp 'target/fitworthy/lib/*:target/fitworthy/lib/print/*' src/bench/Printouts.java 10000</pre>
 */
final class Printouts {

    private Printouts() {}

    public static void main(String[] args) throws Exception {
        RuleEngine engine = BookLoader.load(Path.of("rules"), Path.of("target", "rule-cache"), System.err::println);
        Advice advice = Adviser.advise(
                engine,
                SheetReader.sheet(
                        Shelves.beside()
                                .expanded(
                                        NodeReader.read(Path.of("scenarios/overloaded.yaml"), new ArrayList<>()),
                                        new ArrayList<>()),
                        engine.book().regions().keySet(),
                        new ArrayList<>()));
        Instant time = Instant.parse("2026-11-25T10:00:00Z");
        Report report = many(
                ReportWriter.report(
                        advice,
                        new Mending(List.of(), List.of(), 0, true),
                        Optional.empty(),
                        new Imprint("sheet.yaml", "", "", "bench", time),
                        Readers.WORKSHOP,
                        Paper.A4),
                Integer.parseInt(args[0]));
        double before = processorSeconds();
        byte[] bytes = PdfLayout.of(report, Paper.A4, "bench", time).bytes();
        double took = processorSeconds() - before;
        try (PDDocument document = Loader.loadPDF(bytes)) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", "");
            int pages = document.getNumberOfPages();
            int absent = text.contains("page" + pages + "of" + pages) ? 0 : 1;
            int at = 0;
            for (FindingBlock each : findings(report)) {
                int found = text.indexOf(each.number() + each.id() + "(" + each.place() + ")", at);
                absent += found < 0 ? 1 : 0;
                at = Math.max(at, found);
            }
            System.out.printf(
                    "java %s: %s findings, %d pages, %.1f s of processor time, %.1f MB, %d absent%n",
                    System.getProperty("java.version"), args[0], pages, took, bytes.length / 1e6, absent);
        }
    }

    private static double processorSeconds() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime() / 1e9;
    }

    private static List<FindingBlock> findings(Report report) {
        return report.sections().stream()
                .flatMap(each -> each.blocks().stream())
                .filter(FindingBlock.class::isInstance)
                .map(FindingBlock.class::cast)
                .toList();
    }

    private static Report many(Report report, int count) {
        List<FindingBlock> some = findings(report);
        List<Section> sections = new ArrayList<>();
        for (Section section : report.sections()) {
            List<Block> blocks = new ArrayList<>();
            for (Block each : section.blocks()) {
                if (each instanceof Table table && table.rows().get(0).link().equals("finding-1")) {
                    List<Row> rows = new ArrayList<>();
                    for (int i = 0; i < count; i++) {
                        List<String> cells = new ArrayList<>(
                                table.rows().get(i % some.size()).cells());
                        cells.set(0, String.valueOf(i + 1));
                        rows.add(new Row(cells, "finding-" + (i + 1), false));
                    }
                    blocks.add(new Table(table.caption(), table.columns(), rows));
                } else if (!section.id().equals("findings")) {
                    blocks.add(each);
                }
            }
            for (int i = 0; i < count && section.id().equals("findings"); i++) {
                FindingBlock each = some.get(i % some.size());
                blocks.add(new FindingBlock(
                        String.valueOf(i + 1),
                        each.mark(),
                        each.id(),
                        each.place(),
                        each.title(),
                        each.figures(),
                        each.details()));
            }
            sections.add(new Section(section.id(), section.heading(), blocks));
        }
        return report.with(sections);
    }
}
