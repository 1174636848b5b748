package fitworthy.cli;

import fitworthy.document.HtmlPrintout;
import fitworthy.document.MarkdownPrintout;
import fitworthy.document.PlainPrintout;
import fitworthy.document.Report;
import fitworthy.engine.RuleEngine;
import fitworthy.handbook.Handbook;
import fitworthy.handbook.HandbookPrintout;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Place;
import fitworthy.source.Words;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a rule book out for reading. */
@Command(
        name = "handbook",
        mixinStandardHelpOptions = true,
        usageHelpWidth = 80,
        description = "Writes the rule book out for reading, or prints the page of one rule: what it says and why, its"
                + " practice values with how each is known, its cases, and what is fine although it looks alike.",
        footer = {
            "",
            "Examples:",
            "  fitworthy handbook mass.gvm-over",
            "  fitworthy handbook --html handbook.html",
            "  fitworthy handbook --format json"
        })
final class WriteHandbook implements Callable<Integer> {

    private final Surroundings around;

    @Mixin
    private BookOptions options = new BookOptions();

    @Parameters(index = "0", arity = "0..1", paramLabel = "RULE", description = "Only the page of this rule.")
    private String id;

    @Option(names = "--html", paramLabel = "FILE", description = "Write one HTML file that needs nothing beside it.")
    private Path html;

    @Option(names = "--markdown", paramLabel = "FILE", description = "Write one Markdown file.")
    private Path markdown;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            defaultValue = "text",
            description = "What is printed: ${COMPLETION-CANDIDATES}; text by default.")
    private Check.Format format;

    WriteHandbook(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() throws FaultsException, Fitworthy.BadBook, Fitworthy.NotWritten {
        RuleEngine engine = options.engine(around);
        if (id != null && !engine.book().cards().containsKey(id)) {
            throw new FaultsException(List.of(new Fault(
                    Place.of("RULE"),
                    "",
                    "the rule book has no rule '" + id + "'"
                            + Words.suggestion(id, engine.book().cards().keySet()),
                    "an id as printed under a finding, such as mass.gvm-over")));
        }
        try {
            write(options.folder(around), engine);
        } catch (FaultsException e) {
            throw new Fitworthy.BadBook(e);
        }
        return 0;
    }

    private void write(Path folder, RuleEngine engine) throws FaultsException, Fitworthy.NotWritten {
        boolean files = html != null || markdown != null;
        if (format == Check.Format.json) {
            HandbookPrintout.json(
                    around.out(),
                    folder,
                    engine.book(),
                    id == null ? engine.book().cards().keySet() : Set.of(id));
            if (!files) {
                return;
            }
        }
        Report report = id == null ? Handbook.whole(folder, engine) : Handbook.page(folder, engine, id);
        if (html != null) {
            Print.write(html, HtmlPrintout.html(report).getBytes(StandardCharsets.UTF_8));
        }
        if (markdown != null) {
            Print.write(markdown, MarkdownPrintout.markdown(report).getBytes(StandardCharsets.UTF_8));
        }
        if (!files) {
            PlainPrintout.print(around.out(), report);
        }
    }
}
