package fitworthy.cli;

import fitworthy.document.HtmlLayout;
import fitworthy.document.MarkdownLayout;
import fitworthy.document.PlainLayout;
import fitworthy.document.Report;
import fitworthy.engine.RuleEngine;
import fitworthy.handbook.Handbook;
import fitworthy.handbook.HandbookPrintout;
import fitworthy.source.FaultsException;
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
        description =
                "Writes the rule book out for reading, or prints the page of one rule. A page has what the rule says"
                        + " and why, its practice values with how each is known, and its cases. It also shows what is fine"
                        + " although it looks alike.",
        footer = {
            "",
            "Examples:",
            "  fitworthy handbook mass.gvm-over",
            "  fitworthy handbook --html handbook.html",
            "  fitworthy handbook --format json"
        })
final class WriteHandbook implements Callable<Integer> {

    private final CommandContext around;

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
    private Format format;

    WriteHandbook(CommandContext around) {
        this.around = around;
    }

    @Override
    public Integer call() throws FaultsException, NotWritten {
        new Outputs(List.of(), List.of(options.folder(around)))
                .take("--html", html)
                .take("--markdown", markdown);
        RuleEngine engine = options.engine(around);
        if (id != null) {
            id = Names.rule(id, engine.book());
        }
        try {
            write(options.folder(around), engine);
        } catch (FaultsException e) {
            throw new BadBook(e);
        }
        return ExitCodes.IN_ORDER;
    }

    private void write(Path folder, RuleEngine engine) throws FaultsException, NotWritten {
        boolean files = html != null || markdown != null;
        if (format == Format.json) {
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
            OutputFile.write(html, HtmlLayout.html(report));
        }
        if (markdown != null) {
            OutputFile.write(markdown, MarkdownLayout.markdown(report));
        }
        if (!files) {
            PlainLayout.print(around.out(), report);
        }
    }
}
