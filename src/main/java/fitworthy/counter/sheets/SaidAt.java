package fitworthy.counter.sheets;

import fitworthy.book.Book;
import fitworthy.counter.sheets.Understood.Said;
import fitworthy.shelf.SheetWords;
import fitworthy.shelf.Shelf;
import fitworthy.source.Fault;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Words that were typed, read against one book and one shelf, and what is said to the fields in which they stand. */
final class SaidAt {

    static final String FROM_SHELF = "from the shelf";

    /** Of which several fields are read together. */
    private static final List<String> TRAILER = Typed.fields("trailer", "rated");

    private final Book book;
    private final Shelf shelf;
    private final Map<String, Said> said = new LinkedHashMap<>();

    SaidAt(Book book, Shelf shelf) {
        this.book = book;
        this.shelf = shelf;
    }

    /** What is said to each field, to be added to. */
    Map<String, Said> fields() {
        return said;
    }

    /** Reads words, and tells their faults at the field. */
    interface Reading<T> {
        T by(SheetWords words);
    }

    <T> T at(String field, Reading<T> reading) {
        List<Fault> found = new ArrayList<>();
        T read = reading.by(new SheetWords(
                book.tables().shopWords(), shelf, book.regions().keySet(), book.usualPlaces(), "", found));
        found.forEach(fault -> said.merge(
                TRAILER.contains(fault.place().file()) ? fault.place().file() : field,
                new Said(true, words(fault)),
                (told, more) -> told.fault() ? told : more));
        return read;
    }

    private static String words(Fault fault) {
        return Words.capital(fault.problem()) + ". Right: " + fault.mend();
    }
}
