package fitworthy.proof;

import fitworthy.book.Book;
import fitworthy.book.DatedLimit;
import fitworthy.book.Practice.Lookup;
import fitworthy.sheet.Sheet;
import fitworthy.source.Fault;
import fitworthy.source.Place;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * One dated value of a book.
 *
 * @param id the practice value that it is one of
 * @param users the rules that match it
 * @param index where it stands among those of its id, from zero
 */
record BookValue(Book book, String id, List<String> users, int index) {

    /** Every value of a book, in the order of its pages. */
    static Stream<BookValue> all(Book book) {
        return book.practice().entrySet().stream().flatMap(entry -> {
            List<String> users = book.users(entry.getKey());
            return IntStream.range(0, entry.getValue().values().size())
                    .mapToObj(index -> new BookValue(book, entry.getKey(), users, index));
        });
    }

    DatedLimit entry() {
        return book.practice().get(id);
    }

    DatedLimit.Value value() {
        return entry().values().get(index);
    }

    /** It in the unit used inside; there is none where no such limit applies. */
    double number() {
        return entry().number(value().value());
    }

    Place place() {
        return book.places().get(id).place(DatedLimit.path(index));
    }

    /** Where one of its fields stands. */
    Place place(String field) {
        return book.places().get(id).place(DatedLimit.path(index).to(field));
    }

    /** Whether it holds for the sheet of a case, whose house sets none in its place. */
    boolean holdsIn(CaseResult trial) {
        Sheet sheet = trial.text().sheet();
        return trial.advice().book().lookup(id, sheet) instanceof Lookup.Found found
                ? found.practice().entry().equals(value())
                : value().none()
                        && entry().inForce(book.lineage(sheet.region()), sheet.asOf())
                                .filter(value()::equals)
                                .isPresent();
    }

    /** What held before it: the region's own older value, else its parent's on the day on which this one begins. */
    Optional<DatedLimit.Value> before() {
        List<String> lineage = book.lineage(value().region());
        return entry().begun(value().region(), value().from().minusDays(1))
                .or(() -> entry().inForce(lineage.subList(1, lineage.size()), value().from()));
    }

    /** Whether a later value of its region has begun. */
    boolean superseded(LocalDate day) {
        return entry().begun(value().region(), day)
                .filter(begun -> begun.from().isAfter(value().from()))
                .isPresent();
    }

    /** Something to say of it, at its own line. */
    Fault tell(String problem, String right) {
        return new Fault(place(), id, problem, right);
    }
}
