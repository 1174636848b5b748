package fitworthy.cli;

import fitworthy.printout.screen.ShelfPrintout;
import fitworthy.shelf.Shelf;
import fitworthy.shelf.ShelfReader;
import fitworthy.source.FaultsException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Checks a shelf and lists what lies there. */
@Command(
        name = "shelf",
        mixinStandardHelpOptions = true,
        usageHelpWidth = 80,
        description = "Checks a shelf, that is a folder of vehicles, trailers, parts and the like that sheets take by"
                + " name, and lists what lies there.",
        footer = {
            "",
            "Example:",
            "  fitworthy shelf scenarios/shelf",
            "",
            "Exit code 0 where all of it can be used, 2 where something is wrong with it."
        })
final class ShowShelf implements Callable<Integer> {

    private final CommandContext around;

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "FOLDER",
            defaultValue = Shelf.FOLDER,
            description = "The shelf; by default the folder 'shelf' here.")
    private Path folder;

    ShowShelf(CommandContext around) {
        this.around = around;
    }

    @Override
    public Integer call() throws FaultsException {
        Shelf shelf = ShelfReader.readAndChecked(folder);
        if (!shelf.faults().isEmpty()) {
            throw new BadShelf(shelf.faults());
        }
        ShelfPrintout.print(around.out(), shelf);
        return ExitCodes.IN_ORDER;
    }
}
