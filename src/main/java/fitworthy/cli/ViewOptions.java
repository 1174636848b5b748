package fitworthy.cli;

import fitworthy.batch.View;
import fitworthy.book.Book;
import fitworthy.book.HouseReader;
import fitworthy.source.FaultsException;
import java.nio.file.Path;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which rule book, region and day sheets are held against. */
final class ViewOptions {

    @Mixin
    private BookOptions book;

    @Option(names = "--region", paramLabel = "REGION", description = "Use this region in place of the sheet's.")
    private String region;

    @Option(names = "--as-of", paramLabel = "DATE", description = "Use the practice of this day in place of the sheet's.")
    private String asOf;

    @Option(names = "--practice", paramLabel = "FILE",
            description = "Values and severities that your shop sets over the rule book.")
    private Path practice;

    /** The rule book, with what the shop sets over it; says on the error stream when it takes seconds. */
    Book book(Surroundings around) throws Fitworthy.BadBook, Fitworthy.BadHouse {
        return with(practice, book.book(around));
    }

    /** The view of a book in the region and on the day asked for. */
    View of(Book looked) {
        return new View(looked, region, asOf);
    }

    /** A book with what a shop's file sets over it, if there is one. */
    static Book with(Path practice, Book book) throws Fitworthy.BadHouse {
        try {
            return practice == null ? book : book.with(HouseReader.read(practice, book));
        } catch (FaultsException e) {
            throw new Fitworthy.BadHouse(e);
        }
    }
}
