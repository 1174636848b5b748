package fitworthy.cli;

import fitworthy.advice.View;
import fitworthy.engine.RuleEngine;
import fitworthy.sheet.Sheet;
import fitworthy.shelf.Shelf;
import fitworthy.shelf.Taken;
import fitworthy.source.Digests;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.InputFile;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
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

    /** The rule book, with what the shop sets over it; says on the error stream when it takes seconds. */
    RuleEngine engine(CommandContext around) throws FaultsException {
        // While another thread still fetches the rules.
        bytes = InputFile.bytes(sheetFile, around.in(), faults);
        Place place = Place.of(sheetFile.toString());
        tree = NodeReader.read(place, InputFile.text(bytes, place, faults), faults);
        return view.engine(around);
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

    /** The name of the sheet's file. */
    String fileName() {
        return isStandardInput() ? "standard input" : sheetFile.getFileName().toString();
    }

    /** SHA-256 of the sheet's file as it was read, in hexadecimal. To be called after {@link #read}. */
    String hash() {
        return HexFormat.of().formatHex(Digests.sha256().digest(bytes));
    }

    /** The shelf that the sheet takes from; none for a sheet on the standard input where none is named. */
    Shelf shelf() {
        return view.shelf(sheetFile);
    }

    /** What a sheet takes from its shelf, and how that is known again; empty where it takes nothing. */
    String shelf(View.Read read) {
        int taken = Taken.in(read.tree()).size();
        return taken == 0 ? "" : taken + (taken == 1 ? " thing" : " things") + ", content " + shelf().content();
    }

    /** The load cases named, which the sheet has to have; an empty set stands for all of them. */
    static Set<String> chosen(Sheet sheet, List<String> names) throws FaultsException {
        Set<String> known = new LinkedHashSet<>();
        sheet.cases().forEach(loading -> known.add(loading.name()));
        Names.check(
                "--case",
                names,
                known,
                "the sheet has no load case",
                known.isEmpty() ? "leave --case out" : String.join(", ", known));
        return Set.copyOf(names);
    }
}
