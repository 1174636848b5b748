package fitworthy.cli;

import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.View;
import fitworthy.book.Severity;
import fitworthy.engine.RuleEngine;
import fitworthy.printout.screen.MendingPrintout;
import fitworthy.search.Mender;
import fitworthy.source.FaultsException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Looks for changes that clear a plan's stops. */
@Command(
        name = "mend",
        mixinStandardHelpOptions = true,
        usageHelpWidth = 80,
        description = "Says which single changes to a plan help most, which clear its stops, and what would just pass.",
        footer = {
            "",
            "Example:",
            "  fitworthy mend scenarios/overloaded.yaml",
            "",
            "Exit code 0 where the plan has no stop or a change clears them, else 1."
        })
final class Mend implements Callable<Integer> {

    private final CommandContext around;

    @Mixin
    private SheetOptions options = new SheetOptions();

    @Option(
            names = "--seconds",
            paramLabel = "N",
            defaultValue = "10",
            description = "Stop searching after this long; 10 by default.")
    private double seconds;

    Mend(CommandContext around) {
        this.around = around;
    }

    @Override
    public Integer call() throws FaultsException {
        RuleEngine engine = options.engine(around);
        View.Read read = options.read(engine);
        Advice planned = Adviser.advise(engine, read.sheet());
        Mender.Mending mending;
        try (TimeLimit limit = TimeLimit.of(seconds, around.err())) {
            mending = Mender.mend(engine, read.tree(), read.sheet(), options.shelf(), limit, limit);
        }
        MendingPrintout.print(around.out(), planned, mending);
        boolean stuck = planned.worst().filter(Severity.STOP::equals).isPresent()
                && mending.offers().isEmpty();
        return stuck ? ExitCodes.SOMETHING_TO_DO : ExitCodes.IN_ORDER;
    }
}
