package fitworthy.cli;

import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.View;
import fitworthy.document.HtmlLayout;
import fitworthy.document.PdfLayout;
import fitworthy.document.Report;
import fitworthy.engine.RuleEngine;
import fitworthy.printout.Imprint;
import fitworthy.printout.LookedFor;
import fitworthy.printout.Readers;
import fitworthy.printout.ReportWriter;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Place;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints the advice on a sheet as a document that can be stapled to a quote. */
@Command(
        name = "print",
        mixinStandardHelpOptions = true,
        usageHelpWidth = 80,
        description = "Prints everything there is to say of a plan, to be stapled to its quote: as a file for "
                + "browsers, as a PDF, or both.",
        footer = {
            "",
            "Example:",
            "  fitworthy print scenarios/touring.yaml --pdf touring.pdf --html touring.html",
            "",
            "Exit codes as for 'check'; 74 where a file cannot be written."
        })
final class Print implements Callable<Integer> {

    /** Those for whom it is printed, as typed. */
    enum For {
        anybody(Readers.ANYBODY),
        quote(Readers.QUOTE),
        customer(Readers.CUSTOMER),
        workshop(Readers.WORKSHOP),
        engineer(Readers.ENGINEER);

        private final Readers readers;

        For(Readers readers) {
            this.readers = readers;
        }
    }

    private final CommandContext around;

    @Mixin
    private SheetOptions options = new SheetOptions();

    @Mixin
    private PaperOption paper = new PaperOption();

    @Option(names = "--html", paramLabel = "FILE", description = "Write one HTML file that needs nothing beside it.")
    private Path html;

    @Option(names = "--pdf", paramLabel = "FILE", description = "Write a PDF.")
    private Path pdf;

    @Option(
            names = "--for",
            paramLabel = "WHOM",
            defaultValue = "anybody",
            description =
                    "For whom. With a quote go two pages alone. A customer gets them and the pictures. A workshop gets order of work, workings and"
                            + " all that is in order too. For an engineer it leads with mass sheet, certificates and workings."
                            + " Where left out: two pages and an annex.")
    private For readers;

    @Option(
            names = "--as-printed-at",
            paramLabel = "TIME",
            description = "Print this time in place of now, such as 2026-11-25T10:00Z: the same sheet and rule book "
                    + "then give the same bytes.")
    private String printedAt;

    @Option(
            names = "--seconds",
            paramLabel = "N",
            defaultValue = "60",
            description = "Stop looking for changes and choices after this long; 60 by default.")
    private double seconds;

    Print(CommandContext around) {
        this.around = around;
    }

    @Override
    public Integer call() throws FaultsException, NotWritten {
        if (html == null && pdf == null) {
            throw fault("print", "no file to print to", "--pdf FILE, --html FILE or both");
        }
        options.outputs(around).take("--html", html).take("--pdf", pdf);
        Instant time = time();
        RuleEngine engine = options.engine(around);
        View.Read read = options.read(engine);
        Advice advice = Adviser.advise(engine, read.sheet());
        Imprint imprint = options.imprint(read, time);
        Report report = report(engine, read, advice, imprint);
        // All is made before anything is written, so that two files on a desk are of one printing.
        Map<Path, byte[]> files = new LinkedHashMap<>();
        if (html != null) {
            files.put(html, HtmlLayout.html(report).getBytes(StandardCharsets.UTF_8));
        }
        if (pdf != null) {
            files.put(
                    pdf,
                    PdfFile.bytes(
                            pdf,
                            around.err(),
                            "the HTML page has them",
                            () -> PdfLayout.of(report, paper.paper(), imprint.software(), time)));
        }
        for (Map.Entry<Path, byte[]> each : files.entrySet()) {
            OutputFile.write(each.getKey(), each.getValue());
        }
        around.out().println(report.verdict());
        around.out()
                .println("Printed to "
                        + files.keySet().stream().map(Path::toString).collect(Collectors.joining(" and ")) + ".");
        around.out().flush();
        return advice.asksForAction() ? ExitCodes.SOMETHING_TO_DO : ExitCodes.IN_ORDER;
    }

    private Instant time() throws FaultsException {
        try {
            return printedAt == null
                    ? Instant.now()
                    : OffsetDateTime.parse(printedAt).toInstant();
        } catch (DateTimeParseException e) {
            throw fault(
                    "--as-printed-at",
                    "'" + printedAt + "' is not a time",
                    "2026-11-25T10:00Z, or +10:30 in place of Z");
        }
    }

    private static FaultsException fault(String place, String problem, String mend) {
        return new FaultsException(List.of(new Fault(Place.of(place), "", problem, mend)));
    }

    private Report report(RuleEngine engine, View.Read read, Advice advice, Imprint imprint) {
        try (TimeLimit limit = TimeLimit.of(seconds, around.err())) {
            LookedFor lookedFor = LookedFor.of(engine, read, options.shelf(), limit, limit);
            return ReportWriter.report(
                    advice, lookedFor.mending(), lookedFor.alternatives(), imprint, readers.readers, paper.paper());
        }
    }
}
