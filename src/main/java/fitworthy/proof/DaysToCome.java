package fitworthy.proof;

import fitworthy.book.Book;
import fitworthy.book.DatedLimit;
import fitworthy.book.UsualFigure;
import fitworthy.source.Fault;
import fitworthy.source.Place;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Days written into a book that have not come, where only a past one can be meant: a look at a text that is said to be
 * made, and vehicles registered while their value already holds. What counts as to come lies after the day of proof and
 * after the month of the book's edition.
 *
 * @param day of proof
 */
record DaysToCome(Book book, LocalDate day, List<Fault> reminders) {

    private static final Pattern EDITION = Pattern.compile("(\\d{4})\\.(0[1-9]|1[0-2])");

    void look() {
        BookValue.all(book).forEach(value -> {
            checked(value.id(), value.value().checked(), value.place("checked"));
            registered(value);
        });
        book.usual().inOrder().forEach(entry -> {
            for (int i = 0; i < entry.figure().values().size(); i++) {
                UsualFigure.Value value = entry.figure().values().get(i);
                checked(entry.id(), value.checked(), book.usual().place(entry.id(), i));
            }
        });
        book.sources()
                .forEach((id, source) ->
                        checked(id, source.checked(), book.places().get(id).beginning()));
    }

    private void checked(String id, LocalDate checked, Place place) {
        if (isToCome(checked)) {
            reminders.add(new Fault(
                    place,
                    id,
                    "was looked at on " + checked + " by its 'checked', which is yet to come",
                    "the day of that look, such as checked: " + day));
        }
    }

    private void registered(BookValue value) {
        DatedLimit.Value dated = value.value();
        if (isToCome(dated.registeredFrom()) && dated.registeredFrom().isAfter(dated.from())) {
            reminders.add(new Fault(
                    value.place("registered-from"),
                    value.id(),
                    "holds from " + dated.from() + " for vehicles registered from " + dated.registeredFrom()
                            + ", which is yet to come",
                    "the day as its text has it, such as registered-from: " + day
                            + "; where a later one is meant, from: " + dated.registeredFrom() + " too"));
        }
    }

    private boolean isToCome(LocalDate written) {
        return written != null && written.isAfter(day) && written.isAfter(edition());
    }

    /** The last day of the month of the edition; a long past one where that names no month. */
    private LocalDate edition() {
        Matcher month = EDITION.matcher(book.cover().edition());
        return month.matches()
                ? YearMonth.of(Integer.parseInt(month.group(1)), Integer.parseInt(month.group(2)))
                        .atEndOfMonth()
                : LocalDate.MIN;
    }
}
