package fitworthy.advice;

import fitworthy.book.Book;
import fitworthy.book.Practice;
import fitworthy.figures.plan.PracticeId;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.sheet.Sheet;

/** What a book has recorded for the region and day of a sheet, as figures. */
record RecordedPractice(Book book, Sheet sheet) {

    /** A practice value as a figure; missing where none is recorded or applies. */
    Figure figure(PracticeId asked) {
        return book.inForce(sheet.region(), sheet.asOf()).lookups().get(asked.id())
                        instanceof Practice.Lookup.Found found
                ? Figure.of(found.practice().value(), 0)
                : Figure.missing(lacking(asked.id()));
    }

    /** What is missing where a practice value is not recorded. */
    Missing lacking(String id) {
        return Missing.inBook(
                "practice value " + id,
                meaning(id) + ": the rule book has no value recorded for "
                        + book.regions().get(sheet.region()).name() + " on " + sheet.asOf());
    }

    private String meaning(String id) {
        return book.practice().containsKey(id) ? book.practice().get(id).meaning() : "a practice value";
    }
}
