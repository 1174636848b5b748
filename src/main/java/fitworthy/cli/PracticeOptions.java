package fitworthy.cli;

import fitworthy.advice.View;
import fitworthy.book.HouseReader;
import fitworthy.book.Unwritten;
import fitworthy.engine.RuleEngine;
import fitworthy.shelf.Shelf;
import fitworthy.shelf.Shelves;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Place;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which rule book, region and day sheets are held against. */
final class PracticeOptions {

    @Mixin
    private BookOptions book = new BookOptions();

    @Option(names = "--region", paramLabel = "REGION", description = "Use this region in place of the sheet's.")
    private String region;

    @Option(
            names = "--as-of",
            paramLabel = "DATE",
            description = "Use the practice of this day in place of the sheet's.")
    private String asOf;

    @Option(
            names = "--house",
            paramLabel = "FILE",
            description = "Values and severities that your shop sets over the rule book.")
    private Path house;

    @Option(
            names = "--shelf",
            paramLabel = "FOLDER",
            description = "The shelf that sheets take from; by default the folder 'shelf' beside each sheet.")
    private Path shelf;

    private Shelves shelves;

    /** The rule book alone, once it is loaded. */
    private RuleEngine plain;

    /**
     * The rule book for what customers read, with what the shop sets over it; says on the error stream when it takes
     * seconds, and which rules are left out since their words are still to be written.
     */
    RuleEngine engine(CommandContext around) throws FaultsException {
        RuleEngine whole = whole(around);
        Set<String> unwritten = Unwritten.rules(whole.book());
        unwritten.forEach(id -> around.err()
                .println(whole.book().place(id) + ": " + id
                        + " is left out: its words are still to be written; 'prove' says which"));
        around.err().flush();
        return whole.without(unwritten);
    }

    /** The same with every rule, for those who keep the book. */
    RuleEngine whole(CommandContext around) throws FaultsException {
        plain = book.engine(around);
        return with(house, plain);
    }

    /** The folder of the rule book. */
    Path rules(CommandContext around) {
        return book.folder(around);
    }

    /**
     * Looks after the files to be written: none takes the place of the book, the house file, or what else is read.
     *
     * @param read sheets and further house files; null for one that was not named
     * @param otherRules a further rule book, or null
     */
    Outputs outputs(CommandContext around, Collection<Path> read, Path otherRules) {
        List<Path> files = new ArrayList<>(read);
        files.add(house);
        files.addAll(shelves().files(read.stream().filter(Objects::nonNull).toList()));
        return new Outputs(files, Arrays.asList(book.folder(around), otherRules));
    }

    /** Refuses a folder whose files are to be changed where it holds what is read besides: rules, shelf or house file. */
    void checkWorkFolder(CommandContext around, Path folder) throws FaultsException {
        WorkFolder.check(folder, book.folder(around), shelf, house);
    }

    /** The view of a book in the region and on the day asked for. @throws FaultsException where the shelf is faulty */
    View of(RuleEngine looked) throws FaultsException {
        return new View(looked, region, asOf, sound(shelves()));
    }

    /** The shelf of the sheets in a file. */
    Shelf shelf(Path sheets) {
        return shelves().of(sheets.toString());
    }

    /** The shelf named, else that of each sheet. */
    private Shelves shelves() {
        if (shelves == null) {
            shelves = shelf == null ? Shelves.beside() : Shelves.in(shelf);
        }
        return shelves;
    }

    /** A shelf that was named is refused at once, where every sheet would be. */
    private static Shelves sound(Shelves shelves) throws FaultsException {
        List<Fault> faults = shelves.named().map(Shelf::faults).orElse(List.of());
        if (!faults.isEmpty()) {
            throw new BadShelf(faults);
        }
        return shelves;
    }

    /** The view asked for, when it is for many sheets. @throws FaultsException where it has no such region or day */
    View view(CommandContext around) throws FaultsException {
        View view = of(engine(around));
        check(view, view.book().regions().keySet(), "");
        return view;
    }

    /** Sheets before a change and after it. */
    record Views(View before, View after) {}

    /**
     * The view asked for, with every rule, and the same with some things put in place of others; null for each in which
     * it stays.
     */
    Views views(
            CommandContext around,
            Path otherRules,
            Path otherHouse,
            String otherRegion,
            String otherDay,
            Path otherShelf)
            throws FaultsException {
        View before = of(whole(around));
        Set<String> known = new TreeSet<>(before.book().regions().keySet());
        if (otherRules == null || otherRegion != null) {
            check(before, known, "");
        }
        RuleEngine other = otherRules == null ? plain : BookOptions.engine(otherRules, around);
        View after = new View(
                with(otherHouse == null ? house : otherHouse, other),
                otherRegion == null ? region : otherRegion,
                otherDay == null ? asOf : otherDay,
                otherShelf == null ? shelves() : sound(Shelves.in(otherShelf)));
        known.addAll(after.book().regions().keySet());
        check(before, known, "");
        check(after, after.book().regions().keySet(), "with-");
        return new Views(before, after);
    }

    /** Told once here, where every sheet would have the same fault. @param known the regions that it may name */
    private static void check(View view, Set<String> known, String prefix) throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        if (view.region() != null) {
            faults.addAll(Names.faults(
                    "--" + prefix + "region",
                    List.of(view.region()),
                    known,
                    "the rule book has no region",
                    "one of " + String.join(", ", known)));
        }
        try {
            if (view.asOf() != null) {
                LocalDate.parse(view.asOf());
            }
        } catch (DateTimeParseException e) {
            faults.add(new Fault(
                    Place.of("--" + prefix + "as-of"),
                    "",
                    "'" + view.asOf() + "' is not a date",
                    "2026-11-25 (year-month-day)"));
        }
        FaultsException.refuse(faults);
    }

    /** A book with what a shop's file sets over it, if there is one. */
    private static RuleEngine with(Path house, RuleEngine engine) throws FaultsException {
        try {
            return house == null ? engine : engine.with(HouseReader.read(house, engine.book()));
        } catch (FaultsException e) {
            throw new BadHouse(e);
        }
    }
}
