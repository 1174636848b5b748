package fitworthy.advice;

import fitworthy.book.Book;
import fitworthy.book.Practice;
import fitworthy.figures.plan.PracticeId;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Vehicle;
import java.util.Map;

/** What a book has recorded for the region and day of a sheet, as figures. */
record RecordedPractice(Book book, Sheet sheet, Map<String, Practice.Lookup> lookups) {

    static RecordedPractice of(Book book, Sheet sheet) {
        return new RecordedPractice(book, sheet, book.inForce(sheet).lookups());
    }

    /** A practice value as a figure; missing where none is recorded or applies. */
    Figure figure(PracticeId asked) {
        return lookups.get(asked.id()) instanceof Practice.Lookup.Found found
                ? Figure.of(found.practice().value(), 0)
                : Figure.missing(lacking(asked.id()));
    }

    /** What is missing where a practice value is not recorded, or hangs on what the sheet does not say. */
    Missing lacking(String id) {
        if (lookups.get(id) instanceof Practice.Lookup.RegistrationAsked) {
            return RecordSchema.of(Vehicle.class).field("registered").missingIn("vehicle");
        }
        return Missing.inBook(
                "practice value " + id,
                meaning(id) + ": the rule book has no value recorded for "
                        + book.regions().get(sheet.region()).name() + " on " + sheet.asOf());
    }

    private String meaning(String id) {
        return book.practice().containsKey(id) ? book.practice().get(id).meaning() : "a practice value";
    }
}
