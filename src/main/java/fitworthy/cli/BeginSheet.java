package fitworthy.cli;

import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.View;
import fitworthy.book.Book;
import fitworthy.engine.RuleEngine;
import fitworthy.printout.screen.BriefPrintout;
import fitworthy.printout.screen.FaultPrintout;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SheetDraft;
import fitworthy.sheet.Wanted;
import fitworthy.shelf.SheetWords;
import fitworthy.shelf.Shelf;
import fitworthy.shelf.Shelves;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Begins a build sheet. */
@Command(
        name = "sheet",
        mixinStandardHelpOptions = true,
        usageHelpWidth = 80,
        description = "Begins a build sheet from a vehicle and a list of parts in a shop's own words. Has 'ask' for"
                + " what is not known or usual. Asks for one after the other where nothing is named.",
        footer = {
            "",
            "Example:",
            "  fitworthy begin sheet --vehicle \"Tarrenby 3.0 wagon\" --fuel diesel \\",
            "    --people 4 --part \"bull bar\" --part \"winch=26 kg\" \\",
            "    --part \"long-range tank=140 L\" --trailer Camper --to wagon.yaml"
        })
final class BeginSheet implements Callable<Integer> {

    private final CommandContext around;

    @Mixin
    private BookOptions book = new BookOptions();

    @Option(names = "--vehicle", paramLabel = "NAME", description = "What to call the vehicle.")
    private String vehicle;

    @Option(names = "--fuel", paramLabel = "FUEL", description = "What it burns: diesel or petrol.")
    private String fuel;

    @Option(names = "--people", paramLabel = "N", description = "How many are aboard, the driver counted.")
    private String people;

    @Option(
            names = "--part",
            paramLabel = "PART[=FIGURE|KIND]",
            description = "A part in your own words, with its mass, or what a tank holds, where that is known. Or a"
                    + " name and the kind of part it is. May be given several times.")
    private List<String> parts = List.of();

    @Option(
            names = "--trailer",
            paramLabel = "NAME[=MASS]",
            description = "The trailer, where one is towed, with its loaded mass where that is known.")
    private String trailer;

    @Option(
            names = "--region",
            paramLabel = "REGION",
            description = "Where the vehicle is registered; any where left out.")
    private String region;

    @Option(
            names = "--to",
            paramLabel = "FILE",
            description = "The file to write, which must not be there yet. The sheet alone is printed where left out.")
    private Path to;

    /** Whether nothing more is typed in answer to a question. */
    private boolean ended;

    @Option(
            names = "--shelf",
            paramLabel = "FOLDER",
            description = "The shelf to take things from by name; by default the folder 'shelf' beside the file.")
    private Path shelfFolder;

    BeginSheet(CommandContext around) {
        this.around = around;
    }

    @Override
    public Integer call() throws FaultsException, NotWritten {
        RuleEngine engine = book.engine(around);
        List<Fault> faults = new ArrayList<>();
        boolean asking = nothingNamed();
        BufferedReader in = new BufferedReader(new InputStreamReader(around.in(), StandardCharsets.UTF_8));
        if (asking && to == null) {
            answer(in, "A new file to write; nothing to print it", faults, typed -> fileFor(typed, faults));
        }
        Shelves shelves = shelfFolder == null ? Shelves.beside() : Shelves.in(shelfFolder);
        Shelf shelf = shelves.of(name());
        if (!shelf.faults().isEmpty()) {
            throw new BadShelf(shelf.faults());
        }
        SheetWords words = new SheetWords(
                engine.book().tables().shopWords(),
                shelf,
                engine.book().regions().keySet(),
                engine.book().usualPlaces(),
                "--",
                faults);
        if (asking) {
            ask(in, words);
        }
        SheetDraft.Whole whole = whole(words, engine.book());
        FaultsException.refuse(faults);
        newFile(to);
        View view = new View(engine, null, null, shelves);
        write(view.draft(whole, Place.of(name()), faults), view);
        tellOtherwise(whole.parts(), words);
        return ExitCodes.IN_ORDER;
    }

    /** What the shelf has otherwise than was said; not into a sheet that is printed. */
    private void tellOtherwise(List<Wanted> wanted, SheetWords words) {
        PrintWriter told = to == null ? around.err() : around.out();
        wanted.stream()
                .map(words::otherwiseOnShelf)
                .filter(otherwise -> !otherwise.isEmpty())
                .forEach(otherwise -> told.println(otherwise + "."));
        told.flush();
    }

    /** What the sheet is called where no file is named. */
    private String name() {
        return to == null ? "sheet" : to.toString();
    }

    private Node.Mapping tree(String text, List<Fault> faults) {
        return NodeReader.read(name(), text, faults);
    }

    private boolean nothingNamed() {
        return vehicle == null && fuel == null && people == null && trailer == null && parts.isEmpty();
    }

    private SheetDraft.Whole whole(SheetWords words, Book of) {
        String registered = words.region(region);
        List<Wanted> wanted = parts.stream()
                .flatMap(part -> words.parts(part, registered).stream())
                .toList();
        wanted.forEach(part -> words.ownRims(part, Wanted.wheels(wanted)));
        return new SheetDraft.Whole(
                SheetDraft.Heading.NONE,
                words.vehicle(vehicle),
                words.isOnShelf(vehicle),
                words.fuel(fuel),
                words.people(people),
                registered,
                List.copyOf(of.regions().keySet()),
                LocalDate.now(),
                wanted,
                words.trailer(trailer),
                SheetDraft.Told.NOTHING);
    }

    private void newFile(Path file) throws FaultsException, NotWritten {
        if (file != null && Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new FaultsException(List.of(new Fault(
                    Place.of("--to"), file.toString(), "is there already, and is not written over", "a new file")));
        }
        new Outputs(List.of(), List.of(book.folder(around))).take("--to", file);
    }

    /** Writes the sheet once it has been read as any other is. */
    private void write(String text, View view) throws FaultsException, NotWritten {
        List<Fault> faults = new ArrayList<>();
        Sheet sheet = view.read(tree(text, faults), faults).sheet();
        if (to == null) {
            around.out().print(text);
            around.out().flush();
            return;
        }
        Advice advice = Adviser.advise(view.engine(), sheet);
        OutputFile.write(to, text);
        BriefPrintout.print(around.out(), advice);
        around.out().println();
        around.out().println("Written: " + to + ", " + text.lines().count() + " lines.");
        around.out().println("Put in what you know in place of 'ask', first what is listed here, and run");
        around.out().println("  fitworthy check " + to);
        around.out().flush();
    }

    /** Asks for one thing after the other; the questions stand on the error stream, so that the sheet may be piped. */
    private void ask(BufferedReader in, SheetWords words) {
        vehicle = answer(in, "The vehicle", words.faults(), words::vehicle);
        fuel = answer(in, "Its fuel, diesel or petrol", words.faults(), words::fuel);
        people = answer(in, "How many are aboard", words.faults(), words::people);
        region = answer(
                in,
                "Where it is registered (" + String.join(", ", words.regions()) + ")",
                words.faults(),
                words::region);
        trailer = answer(in, "The trailer, such as Camper=1400 kg; nothing where none", words.faults(), words::trailer);
        parts = new ArrayList<>();
        String part = part(in, words);
        while (part != null && !part.isBlank()) {
            parts.add(part);
            part = part(in, words);
        }
    }

    /** Takes the file that is typed, where one is and can be written. */
    private Path fileFor(String typed, List<Fault> faults) {
        try {
            Path file = typed.isBlank() ? null : Path.of(typed.strip());
            newFile(file);
            to = file;
        } catch (FaultsException e) {
            faults.addAll(e.faults());
        } catch (NotWritten | InvalidPathException e) {
            faults.add(new Fault(Place.of("--to"), "", e.getMessage(), "a file that can be written"));
        }
        return to;
    }

    private String part(BufferedReader in, SheetWords words) {
        return answer(in, "A part, such as bull bar or winch=26 kg; nothing when done", words.faults(), typed -> {
            if (!typed.isBlank()) {
                words.parts(typed, "");
            }
        });
    }

    /** What is typed, asked for until nothing is wrong with it; null where the input has ended. */
    private String answer(BufferedReader in, String question, List<Fault> faults, Consumer<String> understood) {
        while (!ended) {
            around.err().print(question + ": ");
            around.err().flush();
            String typed = line(in);
            ended = typed == null;
            if (!ended) {
                understood.accept(typed);
            }
            if (faults.isEmpty()) {
                return typed;
            }
            FaultPrintout.print(around.err(), faults);
            faults.clear();
        }
        return null;
    }

    private static String line(BufferedReader in) {
        try {
            return in.readLine();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
