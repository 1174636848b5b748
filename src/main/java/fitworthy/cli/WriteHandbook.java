package fitworthy.cli;

import fitworthy.book.Book;
import fitworthy.printout.HtmlPrintout;
import fitworthy.printout.MarkdownPrintout;
import fitworthy.printout.Report;
import fitworthy.proof.Handbook;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Place;
import fitworthy.source.Words;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a rule book out for reading. */
@Command(name = "handbook", mixinStandardHelpOptions = true, usageHelpWidth = 80,
        description = "Writes the rule book out for reading, or prints the page of one rule: what it says and why, its"
                + " practice values with how each is known, its cases, and what is fine although it looks alike.",
        footer = {"", "Examples:", "  fitworthy handbook mass.gvm-over", "  fitworthy handbook --html handbook.html"})
final class WriteHandbook implements Callable<Integer> {

    private final Surroundings around;

    @Mixin
    private BookOptions options;

    @Parameters(index = "0", arity = "0..1", paramLabel = "RULE", description = "Only the page of this rule.")
    private String id;

    @Option(names = "--html", paramLabel = "FILE", description = "Write one HTML file that needs nothing beside it.")
    private Path html;

    @Option(names = "--markdown", paramLabel = "FILE", description = "Write one Markdown file.")
    private Path markdown;

    WriteHandbook(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() throws FaultsException, Fitworthy.BadBook, Fitworthy.NotWritten {
        Book book = options.book(around);
        if (id != null && !book.cards().containsKey(id)) {
            throw new FaultsException(List.of(new Fault(Place.of("RULE"), "", "the rule book has no rule '" + id + "'"
                    + Words.suggestion(id, book.cards().keySet()), "an id as printed under a finding, such as mass.gvm-over")));
        }
        Report report;
        try {
            Path folder = options.folder(around);
            report = id == null ? Handbook.whole(folder, book) : Handbook.page(folder, book, id);
        } catch (FaultsException e) {
            throw new Fitworthy.BadBook(e);
        }
        if (html != null) {
            Print.write(html, HtmlPrintout.html(report).getBytes(StandardCharsets.UTF_8));
        }
        if (markdown != null) {
            Print.write(markdown, MarkdownPrintout.markdown(report).getBytes(StandardCharsets.UTF_8));
        }
        if (html == null && markdown == null) {
            around.out().print(MarkdownPrintout.markdown(report));
            around.out().flush();
        }
        return 0;
    }
}
