package fitworthy.cli;

import fitworthy.proof.Proof;
import fitworthy.proof.ProofPrintout;
import fitworthy.source.FaultsException;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Proves a rule book. */
@Command(
        name = "prove",
        mixinStandardHelpOptions = true,
        usageHelpWidth = 80,
        description =
                "Proves the rule book: that it can be used, and that every case comes out as it says. Cases have to stand"
                        + " on both sides of every limit. Reminds of what is past its review date.",
        footer = {"", "Example:", "  fitworthy prove --rules rules"})
final class Prove implements Callable<Integer> {

    private final CommandContext around;

    @Mixin
    private BookOptions options = new BookOptions();

    @Option(
            names = "--as-of",
            paramLabel = "DATE",
            converter = DayConverter.class,
            description = "The day on which review dates are looked at; today where left out.")
    private LocalDate day;

    @Mixin
    private FormatOption format = new FormatOption();

    Prove(CommandContext around) {
        this.around = around;
    }

    @Override
    public Integer call() throws BadBook {
        boolean json = format.isJson();
        try (StatusLine line = StatusLine.of(around.err())) {
            Proof proof = Proof.of(
                    options.folder(around),
                    options.toProve(around),
                    day == null ? LocalDate.now() : day,
                    run -> line.show(run + " cases run"));
            line.close();
            if (json) {
                ProofPrintout.json(around.out(), proof);
            } else {
                ProofPrintout.text(around.out(), proof);
            }
            return !proof.faults().isEmpty()
                    ? ExitCodes.BAD_BOOK
                    : proof.reminders().isEmpty() ? ExitCodes.IN_ORDER : ExitCodes.SOMETHING_TO_DO;
        } catch (BadBook bad) {
            if (!json) {
                throw bad;
            }
            ProofPrintout.json(around.out(), bad.faults());
            return ExitCodes.BAD_BOOK;
        } catch (FaultsException e) {
            throw new BadBook(e);
        }
    }
}
