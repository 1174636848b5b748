package fitworthy.cli;

import fitworthy.counter.Counter;
import fitworthy.counter.desk.Desk;
import fitworthy.counter.desk.SheetFolder;
import fitworthy.source.FaultsException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Opens the page at the counter. */
@Command(
        name = "counter",
        mixinStandardHelpOptions = true,
        usageHelpWidth = 80,
        description = "Opens a page for your browser on this machine, where sheets are made and answered as one types.",
        footer = {"", "Example:", "  fitworthy counter scenarios"})
final class OpenCounter implements Callable<Integer> {

    private final CommandContext around;

    @Parameters(index = "0", paramLabel = "FOLDER", defaultValue = ".", description = "The folder of the sheets.")
    private Path folder;

    @Option(names = "--port", paramLabel = "N", defaultValue = "0", description = "The port; any free one if left out.")
    private int port;

    @Mixin
    private PracticeOptions view = new PracticeOptions();

    OpenCounter(CommandContext around) {
        this.around = around;
    }

    @Override
    public Integer call() throws FaultsException, InterruptedException {
        Desk desk = new Desk(new SheetFolder(folder), view.view(around), view.rules(around));
        try (Counter counter = new Counter(desk, port)) {
            around.out().println("Open this address in your browser:");
            around.out().println("  " + counter.address());
            around.out().println("Stop it with Ctrl-C.");
            around.out().flush();
            Thread.currentThread().join();
        }
        return ExitCodes.IN_ORDER;
    }
}
