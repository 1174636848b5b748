package fitworthy.printout;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.book.Severity;
import fitworthy.document.HtmlLayout;
import fitworthy.document.Paper;
import fitworthy.printout.json.JsonPrintout;
import fitworthy.printout.screen.TextPrintout;
import fitworthy.search.Mender;
import fitworthy.sheet.Sheet;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.time.Instant;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is made in memory for a sheet, by count and not by the clock, as its parts grow. */
class ManyPartsTest {

    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    /** Parts of which neither price nor lead time nor work is known, in and on each other, some off in a loading. */
    private static Node.Mapping tree(int count) {
        String parts = IntStream.range(0, count)
                .mapToObj(i -> String.format(
                        "  - {name: Part %d, kind: other, mass: 1 kg, removable: yes, %sat: {x: %d mm, y: %d mm, z: 1 m}}%n",
                        i, i % 3 == 1 ? "in: Part " + (i - 1) + ", " : "", 800 + i % 70 * 40, i % 11 * 50))
                .collect(Collectors.joining());
        String off = IntStream.range(0, count)
                .filter(i -> i % 3 == 0)
                .mapToObj(i -> "Part " + i)
                .collect(Collectors.joining(", "));
        return Sheets.treeWith("ready-by: 2027-06-01\nfitments:\n" + parts + "cases: [{name: all}, {name: less, off: ["
                + off + "]}]\n");
    }

    private static long bytes(int count) throws FaultsException {
        Node.Mapping tree = tree(count);
        long before = THREADS.getCurrentThreadAllocatedBytes();
        Advice advice = Adviser.advise(Books.engine(), Sheets.read(tree));
        new TextPrintout(new PrintWriter(new StringWriter()), TextPrintout.Painter.NONE, true)
                .print(advice, Severity.NOTE);
        JsonPrintout.print(new PrintWriter(new StringWriter()), advice, Severity.NOTE);
        String page = HtmlLayout.html(ReportWriter.report(
                advice,
                Mender.mend(Books.engine(), tree, advice.sheet(), () -> true, tried -> {}),
                Optional.empty(),
                new Imprint("sheet.yaml", "", "", "test", Instant.EPOCH),
                Readers.WORKSHOP,
                Paper.A4));
        assertTrue(page.contains("Part " + (count - 1)));
        return THREADS.getCurrentThreadAllocatedBytes() - before;
    }

    /** Four times the parts take about four times as much; where each were held against all it would be sixteen times. */
    @Test
    void whatIsMadeGrowsAsThePartsDo() throws FaultsException {
        // The first run also makes what is made but once in a Java machine.
        bytes(400);
        long few = bytes(400);
        long many = bytes(1600);
        double ratio = (double) many / few;
        assertTrue(ratio < 6, few + ", " + many + " bytes: " + ratio);
    }

    /** Each with a space of its own, no more than two of them abreast. */
    private static long bytesApart(int count) throws FaultsException {
        Sheet sheet = Sheets.plainWith("fitments:\n"
                + IntStream.range(0, count)
                        .mapToObj(i -> String.format(
                                "  - {name: Part %d, kind: other, mass: 1 kg, at: {x: %d mm, y: %d mm, z: 930 mm}, space: {from: {x: %2$d mm,"
                                        + " y: %3$d mm, z: 900 mm}, to: {x: %d mm, y: %d mm, z: 960 mm}}, work: {days: 0.1}}%n",
                                i, 800 + i / 2 * 8, i % 2 * 200, 806 + i / 2 * 8, i % 2 * 200 + 100))
                        .collect(Collectors.joining()));
        long before = THREADS.getCurrentThreadAllocatedBytes();
        Adviser.advise(Books.engine(), sheet);
        return THREADS.getCurrentThreadAllocatedBytes() - before;
    }

    @Test
    void whatIsFarApartIsNotHeldAgainstEachOther() throws FaultsException {
        bytesApart(160);
        long few = bytesApart(160);
        long many = bytesApart(640);
        double ratio = (double) many / few;
        assertTrue(ratio < 6, few + ", " + many + " bytes: " + ratio);
    }
}
