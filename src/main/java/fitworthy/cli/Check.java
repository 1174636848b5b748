package fitworthy.cli;

import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Questions;
import fitworthy.book.Severity;
import fitworthy.engine.RuleEngine;
import fitworthy.printout.json.JsonPrintout;
import fitworthy.printout.screen.ShortPrintout;
import fitworthy.printout.screen.TextPrintout;
import fitworthy.sheet.Sheet;
import fitworthy.source.FaultsException;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.Ansi.IStyle;
import picocli.CommandLine.Help.Ansi.Style;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Checks one sheet. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        usageHelpWidth = 80,
        description = "Checks a build sheet and prints what to do about it.",
        footer = {"", "Example:", "  fitworthy check scenarios/touring.yaml --case towing --least change"})
final class Check implements Callable<Integer> {

    /** Severities as typed. */
    enum Least {
        stop,
        change,
        confirm,
        note
    }

    private final CommandContext around;

    @Mixin
    private SheetOptions options = new SheetOptions();

    @Mixin
    private CasesOption cases = new CasesOption();

    @Mixin
    private FormatOption format = new FormatOption();

    @Option(
            names = "--least",
            paramLabel = "SEVERITY",
            defaultValue = "note",
            description = "Leave out findings milder than this: ${COMPLETION-CANDIDATES}. The exit code still counts"
                    + " them.")
    private Least least;

    @Option(
            names = "--full",
            description = "Print each finding in full: why, whom to ask, sources, the rule's file and line, and every"
                    + " answer that is missing.")
    private boolean full;

    @Option(names = "--all", description = "The same, and list every check that is in order, with its margin.")
    private boolean all;

    Check(CommandContext around) {
        this.around = around;
    }

    @Override
    public Integer call() throws FaultsException {
        RuleEngine engine = options.engine(around);
        Sheet sheet = options.read(engine).sheet();
        Advice advice = Adviser.advise(engine, sheet, cases.of(sheet));
        Severity mildest = Severity.valueOf(least.name().toUpperCase(Locale.ROOT));
        if (format.isJson()) {
            JsonPrintout.print(around.out(), advice, mildest);
        } else if (full || all) {
            new TextPrintout(around.out(), painter(), all).print(advice, mildest);
        } else {
            new ShortPrintout(around.out(), painter()).print(advice, Questions.of(engine, advice), mildest);
        }
        return advice.asksForAction() ? ExitCodes.SOMETHING_TO_DO : ExitCodes.IN_ORDER;
    }

    private TextPrintout.Painter painter() {
        return System.console() != null && !around.environment().containsKey("NO_COLOR")
                ? Check::painted
                : TextPrintout.Painter.NONE;
    }

    /** A word in the colour of its severity; colour only repeats what the word says. */
    static String painted(Severity severity, String word) {
        List<IStyle> styles =
                switch (severity) {
                    case STOP -> List.of(Style.bold, Style.fg_red);
                    case CHANGE -> List.of(Style.bold, Style.fg_magenta);
                    case CONFIRM -> List.of(Style.bold, Style.fg_cyan);
                    case NOTE -> List.of(Style.bold);
                };
        return Ansi.ON.apply(word, styles).toString();
    }
}
