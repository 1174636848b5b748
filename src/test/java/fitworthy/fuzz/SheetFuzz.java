package fitworthy.fuzz;

import com.fasterxml.jackson.databind.ObjectMapper;
import fitworthy.Books;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.View;
import fitworthy.book.Severity;
import fitworthy.engine.RuleEngine;
import fitworthy.printout.json.JsonPrintout;
import fitworthy.printout.screen.FaultPrintout;
import fitworthy.printout.screen.TextPrintout;
import fitworthy.shelf.Shelves;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.InputFile;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Whatever bytes are given as a sheet, either advice is printed of them or faults are. Anything else is thrown. The
 * fuzzer calls this by the name that it asks for; see src/bench/fuzz.sh.
 */
public final class SheetFuzz {

    private static final Shelves SHELVES = Shelves.in(Path.of("scenarios/shelf"));

    private static final long MOST_NANOS = 2_000_000_000L;
    private static final ObjectMapper JSON = new ObjectMapper();

    private SheetFuzz() {}

    /** The book is loaded before the first input is timed. */
    public static void fuzzerInitialize() throws IOException, FaultsException {
        advised(Files.readAllBytes(Books.RULES.resolve("plain-sheet.yaml")));
    }

    public static void fuzzerTestOneInput(byte[] data) throws IOException, FaultsException {
        long began = processorNanos();
        advised(data);
        inTime(began);
    }

    /** Processor time of this thread, which a busy machine does not lengthen. */
    public static long processorNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    /** Throws where what began then has taken too long. */
    public static void inTime(long began) {
        if (processorNanos() - began > MOST_NANOS) {
            throw new IllegalStateException("took " + (processorNanos() - began) / 1_000_000 + " ms");
        }
    }

    /** @return whether advice was given */
    public static boolean advised(byte[] data) throws IOException, FaultsException {
        List<Fault> faults = new ArrayList<>();
        String text = InputFile.text(data, Place.of("sheet"), faults);
        return advised(Books.engine(), SHELVES, NodeReader.read("sheet", text, faults), faults);
    }

    /**
     * The same of a sheet that is read already.
     *
     * @param root null where it could not be
     * @param faults those found while it was
     */
    static boolean advised(RuleEngine engine, Shelves shelves, Node.Mapping root, List<Fault> faults)
            throws IOException {
        try {
            View view = new View(engine, null, null, shelves);
            printed(Adviser.advise(
                    engine, view.read(shelves.expanded(root, faults), faults).sheet()));
            return true;
        } catch (FaultsException e) {
            told(e.faults());
            return false;
        }
    }

    private static void printed(Advice advice) throws IOException {
        Stream.concat(
                        advice.findings().stream().map(each -> each.comparison()),
                        advice.met().stream().map(each -> each.comparison()))
                .flatMap(each -> each.stream())
                .forEach(SheetFuzz::finite);
        StringWriter text = new StringWriter();
        new TextPrintout(new PrintWriter(text), TextPrintout.Painter.NONE, true).print(advice, Severity.NOTE);
        plain(text.toString());
        StringWriter json = new StringWriter();
        JsonPrintout.print(new PrintWriter(json), advice, Severity.NOTE);
        JSON.readTree(json.toString());
    }

    private static void finite(Comparison comparison) {
        if (!Double.isFinite(comparison.value())
                || !Double.isFinite(comparison.limit())
                || !Double.isFinite(comparison.tolerance())) {
            throw new IllegalStateException("what was compared is no number: " + comparison);
        }
    }

    /** Faults as they are printed. */
    public static void told(List<Fault> faults) {
        StringWriter text = new StringWriter();
        FaultPrintout.print(new PrintWriter(text), faults);
        if (text.toString().isBlank()) {
            throw new IllegalStateException("refused without a word");
        }
        plain(text.toString());
    }

    private static void plain(String text) {
        if (text.chars().anyMatch(each -> each != '\n' && Character.isISOControl(each))) {
            throw new IllegalStateException("a control character is printed");
        }
    }
}
