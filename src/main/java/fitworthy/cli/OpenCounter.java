package fitworthy.cli;

import fitworthy.counter.Counter;
import fitworthy.counter.Serving;
import fitworthy.counter.desk.Desk;
import fitworthy.counter.desk.SheetFolder;
import fitworthy.source.FaultsException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Opens the page at the counter. */
@Command(
        name = "counter",
        mixinStandardHelpOptions = true,
        usageHelpWidth = 80,
        description =
                "Serves a page for your browser, where the sheets of a folder are made and answered as you type. Only"
                        + " this machine is let in, by the address that is printed. Ctrl-C ends it.",
        footer = {
            "",
            "Examples:",
            "  fitworthy counter scenarios",
            "  fitworthy counter scenarios --host 192.168.1.20 --password-file password",
            "",
            "Exit codes: 0 when it is ended, 2 where the folder or an option is wrong, 3 for",
            "the rule book, 70 for a fault of ours."
        })
final class OpenCounter implements Callable<Integer> {

    private final CommandContext around;

    @Parameters(
            index = "0",
            paramLabel = "FOLDER",
            defaultValue = ".",
            description = "The folder of the sheets; this one where left out.")
    private Path folder;

    @Mixin
    private ServingOptions options = new ServingOptions();

    @Mixin
    private PracticeOptions view = new PracticeOptions();

    OpenCounter(CommandContext around) {
        this.around = around;
    }

    @Override
    public Integer call() throws FaultsException {
        view.checkWorkFolder(around, folder);
        Serving serving = options.serving(around);
        SheetFolder sheets = new SheetFolder(folder);
        try (Counter counter = options.opened(new Desk(sheets, view.view(around), view.rules(around)), serving)) {
            int count = sheets.names().size();
            around.out().println(folder + " holds " + (count == 1 ? "1 sheet." : count + " sheets."));
            around.out().println("Open this address in your browser:");
            around.out().println("  " + counter.address());
            around.out().println("End with Ctrl-C.");
            around.out().flush();
            UntilEnded.with(counter);
        }
        return ExitCodes.IN_ORDER;
    }
}
