package fitworthy.cli;

import fitworthy.document.Paper;
import java.util.Locale;
import picocli.CommandLine.Option;

/** On which paper a PDF is laid out. */
final class PaperOption {

    /** Sheets of paper as typed. */
    private enum Size {
        a4,
        letter;

        Paper paper() {
            return Paper.valueOf(name().toUpperCase(Locale.ROOT));
        }
    }

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            defaultValue = "a4",
            description = "Paper of the PDF, ${COMPLETION-CANDIDATES}; a4 by default.")
    private Size paper;

    Paper paper() {
        return paper.paper();
    }
}
