package fitworthy.cli;

import fitworthy.advice.View;
import fitworthy.batch.InOrder;
import fitworthy.batch.Inputs;
import fitworthy.document.PlainLayout;
import fitworthy.learn.LearnPrintout;
import fitworthy.learn.Learning;
import fitworthy.learn.Learnt;
import fitworthy.learn.SheetReadings;
import fitworthy.source.FaultsException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Learns the masses of parts from weighed vehicles. */
@Command(
        name = "learn",
        mixinStandardHelpOptions = true,
        usageHelpWidth = 80,
        description = "Tells from the weighbridge readings of many sheets how far the masses written for parts are off."
                + " Each has an interval of 95 %%, or a reason why the readings cannot tell. A part is the same in two sheets where"
                + " its name and kind are.",
        footer = {
            "",
            "Example:",
            "  fitworthy learn finished --proposal masses.yaml",
            "",
            "Exit code 0 where no mass is off by more than is written for it, 1 where one",
            "is, 2 where a sheet cannot be used, 74 where the file cannot be written."
        })
final class Learn implements Callable<Integer> {

    private final CommandContext around;

    @Mixin
    private SheetsOption sheets = new SheetsOption();

    @Mixin
    private PracticeOptions options = new PracticeOptions();

    @Option(
            names = "--proposal",
            paramLabel = "FILE",
            description = "Write the masses found to this new file, as parts of a sheet.")
    private Path proposal;

    @Mixin
    private FormatOption format = new FormatOption();

    @Mixin
    private JobsOption jobs = new JobsOption();

    private long done;

    Learn(CommandContext around) {
        this.around = around;
    }

    @Override
    public Integer call() throws FaultsException, IOException, NotWritten {
        Learnt learnt = learnt();
        if (format.isJson()) {
            LearnPrintout.json(around.out(), learnt);
        } else {
            PlainLayout.print(around.out(), LearnPrintout.report(learnt));
        }
        propose(learnt);
        if (learnt.oursAtFault()) {
            return ExitCodes.OUR_FAULT;
        }
        if (!learnt.refused().isEmpty()) {
            return ExitCodes.BAD_INPUT;
        }
        return learnt.parts(Learnt.Verdict.OFF).isEmpty() ? ExitCodes.IN_ORDER : ExitCodes.SOMETHING_TO_DO;
    }

    private Learnt learnt() throws FaultsException, IOException, NotWritten {
        try (Inputs inputs = Inputs.of(sheets.given(), around.in())) {
            options.outputs(around, inputs.files(), null).takeNew("--proposal", proposal);
            View view = options.view(around);
            Learning learning = new Learning();
            try (StatusLine line = StatusLine.of(around.err())) {
                InOrder.run(
                        inputs,
                        input -> SheetReadings.of(view, input),
                        sheet -> {
                            learning.add(sheet);
                            line.show(++done, inputs.count());
                        },
                        jobs.jobs());
            }
            return learning.learnt();
        }
    }

    private void propose(Learnt learnt) throws NotWritten {
        if (proposal == null) {
            return;
        }
        if (LearnPrintout.proposed(learnt).isEmpty()) {
            around.err().println("No mass can be given, so " + proposal + " was not written.");
        } else {
            OutputFile.write(proposal, LearnPrintout.proposal(learnt));
        }
    }
}
