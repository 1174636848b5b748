package fitworthy.cli;

import fitworthy.document.PlainLayout;
import fitworthy.proof.Due;
import fitworthy.proof.DuePrintout;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Place;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells what of a rule book is to be looked at again. */
@Command(
        name = "due",
        mixinStandardHelpOptions = true,
        usageHelpWidth = 80,
        description =
                "Tells which values and sources of the rule book are to be looked at again. They are overdue, or due"
                        + " soon, or have no day since nothing says when they were last checked.",
        footer = {
            "",
            "Example:",
            "  fitworthy due --within 90",
            "",
            "Exit code 0 where nothing is overdue, soon or without a day, 1 where something",
            "is, 3 where the rule book is wrong."
        })
final class ShowDue implements Callable<Integer> {

    /** A hundred years. */
    private static final int MOST_DAYS = 36_500;

    private final CommandContext around;

    @Mixin
    private BookOptions options = new BookOptions();

    @Option(
            names = "--within",
            paramLabel = "DAYS",
            defaultValue = "90",
            description = "How many days count as soon; 90 by default.")
    private int within;

    @Option(
            names = "--as-of",
            paramLabel = "DATE",
            converter = DayConverter.class,
            description = "The day on which it is asked; today where left out.")
    private LocalDate day;

    @Mixin
    private FormatOption format = new FormatOption();

    ShowDue(CommandContext around) {
        this.around = around;
    }

    @Override
    public Integer call() throws FaultsException {
        if (within < 0 || within > MOST_DAYS) {
            throw new FaultsException(List.of(new Fault(
                    Place.of("--within"), "", within + " is no number of days from 0 to " + MOST_DAYS, "--within 90")));
        }
        Due due = Due.of(options.engine(around).book(), day == null ? LocalDate.now() : day, within);
        if (format.isJson()) {
            DuePrintout.json(around.out(), due);
        } else {
            PlainLayout.print(around.out(), DuePrintout.report(due));
        }
        return due.nothing() ? ExitCodes.IN_ORDER : ExitCodes.SOMETHING_TO_DO;
    }
}
