package fitworthy.cli;

import fitworthy.advice.View;
import fitworthy.engine.RuleEngine;
import fitworthy.printout.Imprint;
import fitworthy.shelf.Shelf;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.InputFile;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Which sheet, and how it is looked at. */
final class SheetOptions {

    @Parameters(
            index = "0",
            paramLabel = "SHEET",
            description = "The build sheet, YAML or JSON; - for the standard input.")
    private Path sheetFile;

    @Mixin
    private PracticeOptions view = new PracticeOptions();

    private final List<Fault> faults = new ArrayList<>();
    private byte[] bytes;
    private Node.Mapping tree;

    /** The rule book, with what the shop sets over it; see {@link PracticeOptions#engine}. */
    RuleEngine engine(CommandContext around) throws FaultsException {
        readFile(around);
        return view.engine(around);
    }

    /** The same with every rule. */
    RuleEngine whole(CommandContext around) throws FaultsException {
        readFile(around);
        return view.whole(around);
    }

    /** While another thread still fetches the rules. */
    private void readFile(CommandContext around) {
        bytes = InputFile.bytes(sheetFile, around.in(), faults);
        Place place = Place.of(sheetFile.toString());
        tree = NodeReader.read(place, InputFile.text(bytes, place, faults), faults);
    }

    /** Looks after the files to be written: none takes the place of what is read. */
    Outputs outputs(CommandContext around) {
        return view.outputs(around, List.of(InputFile.standing(sheetFile)), null);
    }

    /**
     * The sheet, with the region and day asked for. To be called after {@link #engine}.
     *
     * @throws FaultsException with everything that is wrong with it
     */
    View.Read read(RuleEngine engine) throws FaultsException {
        return view.of(engine).read(tree, faults);
    }

    /** The sheet with its file, which gets answers. To be called after {@link #engine}. */
    AnsweredSheet answered(RuleEngine engine) throws FaultsException {
        return new AnsweredSheet(sheetFile, view.of(engine), read(engine));
    }

    /** Whether the sheet has no file. */
    boolean isStandardInput() {
        return sheetFile.equals(InputFile.STANDARD_INPUT);
    }

    private String fileName() {
        return isStandardInput() ? "standard input" : sheetFile.getFileName().toString();
    }

    /** What a printout of it was made from. To be called after {@link #read}. */
    Imprint imprint(View.Read read, Instant printedAt) {
        return Imprint.of(fileName(), bytes, read, shelf(), printedAt);
    }

    /** The shelf that the sheet takes from; none for a sheet on the standard input where none is named. */
    Shelf shelf() {
        return view.shelf(sheetFile);
    }
}
