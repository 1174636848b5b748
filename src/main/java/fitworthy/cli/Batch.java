package fitworthy.cli;

import fitworthy.advice.View;
import fitworthy.batch.Answer;
import fitworthy.batch.InOrder;
import fitworthy.batch.Inputs;
import fitworthy.document.Json;
import fitworthy.source.FaultsException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Checks many sheets. */
@Command(
        name = "batch",
        mixinStandardHelpOptions = true,
        usageHelpWidth = 80,
        description = "Checks many sheets and prints a line of JSON for each, in the order in which they come. A "
                + "sheet that cannot be used is answered in its place, and the others go on.",
        footer = {
            "",
            "Example:",
            "  fitworthy batch scenarios --out advice.ndjson",
            "",
            "Exit code 0 where no sheet has anything worse than a note, 1 where one has,",
            "2 where one cannot be used, 74 where the file cannot be written."
        })
final class Batch implements Callable<Integer> {

    private final CommandContext around;

    @Parameters(
            paramLabel = "SHEETS",
            description = "A folder of sheets (*.yaml, *.yml, *.json), or a file with a sheet in"
                    + " JSON on each line; - for the standard input.")
    private Path given;

    @Mixin
    private PracticeOptions options = new PracticeOptions();

    @Mixin
    private JobsOption jobs = new JobsOption();

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Write here, once all is done, in place of the output stream.")
    private Path file;

    private long done;
    private Answer.State worst = Answer.State.IN_ORDER;

    Batch(CommandContext around) {
        this.around = around;
    }

    /** A line and what it comes to. */
    private record Line(String text, Answer.State state) {}

    @Override
    public Integer call() throws FaultsException, IOException, NotWritten {
        try (Inputs inputs = Inputs.of(List.of(given), around.in())) {
            options.outputs(around, inputs.files(), null).take("--out", file);
            View view = options.view(around);
            try (LineOutput output = new LineOutput(around.out(), file);
                    StatusLine line = StatusLine.of(around.err())) {
                answer(inputs, view, output, line);
            }
        }
        return switch (worst) {
            case IN_ORDER -> ExitCodes.IN_ORDER;
            case ASKS_FOR_ACTION -> ExitCodes.SOMETHING_TO_DO;
            case CANNOT_BE_USED -> ExitCodes.BAD_INPUT;
            case RULE_RUNS_AWAY -> ExitCodes.BAD_BOOK;
            case FAULT_OF_OURS -> ExitCodes.OUR_FAULT;
        };
    }

    private void answer(Inputs inputs, View view, LineOutput output, StatusLine line) throws NotWritten {
        try {
            InOrder.run(
                    inputs,
                    input -> {
                        Answer answer = Answer.of(view, input);
                        return new Line(Json.line(answer), answer.state());
                    },
                    answered -> {
                        output.line(answered.text());
                        worst = answered.state().compareTo(worst) > 0 ? answered.state() : worst;
                        line.show(++done, inputs.count());
                    },
                    jobs.jobs());
            output.finish();
        } catch (LineOutput.Failed e) {
            throw output.told(e);
        }
    }
}
