package fitworthy.cli;

import fitworthy.book.Book;
import fitworthy.changes.BookChanges;
import fitworthy.changes.ChangesPrintout;
import fitworthy.document.MarkdownLayout;
import fitworthy.document.PlainLayout;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells what differs between two rule books. */
@Command(
        name = "changes",
        mixinStandardHelpOptions = true,
        usageHelpWidth = 80,
        description =
                "Tells what differs between two folders of rules, in words fit for a change log. Values stand with"
                        + " region, day, old and new figure; rules, cards, sources and regions follow. Comments and lines that"
                        + " only moved are left out.",
        footer = {
            "",
            "Example:",
            "  fitworthy changes rules /tmp/rules-next --format markdown",
            "",
            "Exit code 0 where nothing differs, 1 where something does, 3 where one of the",
            "two cannot be used."
        })
final class ShowChanges implements Callable<Integer> {

    /** The shapes that it is printed in, as typed. */
    enum Shape {
        text,
        markdown,
        json
    }

    private final CommandContext around;

    @Parameters(index = "0", paramLabel = "OLD", description = "The rule book as it was.")
    private Path old;

    @Parameters(index = "1", paramLabel = "NEW", description = "The rule book as it is.")
    private Path now;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            defaultValue = "text",
            description = "${COMPLETION-CANDIDATES}; text by default.")
    private Shape format;

    ShowChanges(CommandContext around) {
        this.around = around;
    }

    @Override
    public Integer call() throws BadBook {
        List<Fault> faults = new ArrayList<>();
        Book before = book(old, faults);
        Book after = book(now, faults);
        if (!faults.isEmpty()) {
            throw new BadBook(new FaultsException(faults));
        }
        BookChanges changes = BookChanges.between(before, after);
        switch (format) {
            case text -> PlainLayout.print(around.out(), ChangesPrintout.report(changes));
            case markdown -> around.out().print(MarkdownLayout.markdown(ChangesPrintout.report(changes)));
            case json -> ChangesPrintout.json(around.out(), changes);
        }
        around.out().flush();
        return changes.changes().isEmpty() ? ExitCodes.IN_ORDER : ExitCodes.SOMETHING_TO_DO;
    }

    /** The book of a folder; null with its faults where it cannot be used, so that those of both are told at once. */
    private Book book(Path folder, List<Fault> faults) {
        try {
            return BookOptions.engine(folder, around).book();
        } catch (FaultsException e) {
            faults.addAll(e.faults());
            return null;
        }
    }
}
