package fitworthy.cli;

import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.document.MarkdownLayout;
import fitworthy.document.Page;
import fitworthy.document.PdfLayout;
import fitworthy.document.PlainLayout;
import fitworthy.document.Report;
import fitworthy.engine.RuleEngine;
import fitworthy.printout.Imprint;
import fitworthy.printout.letter.Letters;
import fitworthy.source.FaultsException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints what is asked of others as letters. */
@Command(
        name = "letters",
        mixinStandardHelpOptions = true,
        usageHelpWidth = 80,
        description = "Prints a letter to each who has to be asked about a plan: makers, engineer, authority, insurer "
                + "and others. For the builder it is a work list. No address is filled in.",
        footer = {
            "",
            "Examples:",
            "  fitworthy letters scenarios/touring.yaml --to insurer",
            "  fitworthy letters scenarios/touring.yaml --pdf letters.pdf",
            "",
            "Exit codes as for 'check'; 74 where the file cannot be written."
        })
final class WriteLetters implements Callable<Integer> {

    /** Shapes that a letter can be printed in, as typed. */
    enum Shape {
        text,
        markdown
    }

    private final CommandContext around;

    @Mixin
    private SheetOptions options = new SheetOptions();

    @Mixin
    private PaperOption paper = new PaperOption();

    @Option(
            names = "--to",
            paramLabel = "PARTY",
            defaultValue = "",
            description = "Only the letters to this party, such as insurer, or to the maker of the part of this name.")
    private String to;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            defaultValue = "text",
            description = "${COMPLETION-CANDIDATES}; text by default.")
    private Shape shape;

    @Option(
            names = "--pdf",
            paramLabel = "FILE",
            description = "Write a PDF in place of that, each letter on its own page.")
    private Path pdf;

    WriteLetters(CommandContext around) {
        this.around = around;
    }

    @Override
    public Integer call() throws FaultsException, NotWritten {
        options.outputs(around).take("--pdf", pdf);
        RuleEngine engine = options.engine(around);
        Advice advice = Adviser.advise(engine, options.read(engine).sheet());
        Letters letters = Letters.of(advice);
        if (!to.isEmpty()) {
            Names.check(
                    "--to",
                    List.of(to),
                    letters.known(),
                    "there is no party",
                    "one of " + String.join(", ", letters.known()));
        }
        Report report = letters.report(to);
        if (report.sections().isEmpty()) {
            new Page(around.out()).wrapped(0, none(letters));
        } else if (pdf != null) {
            write(report);
        } else if (shape == Shape.markdown) {
            around.out().print(MarkdownLayout.letters(report));
        } else {
            PlainLayout.letters(around.out(), report);
        }
        around.out().flush();
        return advice.asksForAction() ? ExitCodes.SOMETHING_TO_DO : ExitCodes.IN_ORDER;
    }

    private String none(Letters letters) {
        return letters.addressees().isEmpty()
                ? "Nobody is asked anything about this plan, so there is no letter."
                : "Nothing is asked of '" + to + "', so there is no letter. There are letters to: "
                        + String.join(", ", letters.addressees()) + ".";
    }

    private void write(Report report) throws NotWritten {
        OutputFile.write(
                pdf,
                PdfFile.bytes(
                        pdf,
                        around.err(),
                        "--format text has them",
                        () -> PdfLayout.letters(report, paper.paper(), Imprint.thisProgram(), Instant.now())));
        int letters = report.sections().size();
        around.out().println(letters + (letters == 1 ? " letter" : " letters") + " printed to " + pdf + ".");
    }
}
