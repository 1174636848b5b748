package fitworthy.cli;

import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.View;
import fitworthy.engine.RuleEngine;
import fitworthy.printout.explain.ExplanationPrintout;
import fitworthy.printout.explain.RoomPrintout;
import fitworthy.sheet.Sheet;
import fitworthy.shelf.Taken;
import fitworthy.source.FaultsException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Explains one rule on one sheet. */
@Command(
        name = "explain",
        mixinStandardHelpOptions = true,
        usageHelpWidth = 80,
        description = "Says why a rule fired on a sheet, or which part of its condition was false or not known.",
        footer = {"", "Example:", "  fitworthy explain scenarios/touring.yaml mass.gvm-over"})
final class Explain implements Callable<Integer> {

    private final CommandContext around;

    @Mixin
    private SheetOptions options = new SheetOptions();

    @Mixin
    private CasesOption cases = new CasesOption();

    @Parameters(
            index = "1",
            paramLabel = "RULE",
            description = "The rule's id, as printed under a finding; 'room' for what a loading leaves.")
    private String id;

    Explain(CommandContext around) {
        this.around = around;
    }

    @Override
    public Integer call() throws FaultsException {
        RuleEngine engine = options.whole(around);
        View.Read read = options.read(engine);
        Sheet sheet = read.sheet();
        if (!RoomPrintout.names(id)) {
            String rule = Names.rule(id, engine.book());
            // A former id stays, since the printout says what it is called now.
            id = engine.book().practice().containsKey(id) ? rule : id;
        }
        Advice advice = Adviser.advise(engine, sheet, cases.of(sheet));
        if (RoomPrintout.names(id)) {
            RoomPrintout.print(around.out(), advice, id);
            return ExitCodes.IN_ORDER;
        }
        ExplanationPrintout.print(around.out(), advice, Taken.in(read.tree()), id);
        return ExitCodes.IN_ORDER;
    }
}
