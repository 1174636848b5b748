package fitworthy.proof;

import fitworthy.book.Basis;
import fitworthy.book.Book;
import fitworthy.book.DatedLimit;
import fitworthy.book.Source;
import fitworthy.book.UsualFigure;
import fitworthy.book.UsualFigures;
import fitworthy.source.Place;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What of a book is to be looked at again, and by when: the values that hold or are still to begin, and the sources. The
 * day is the one that each states, else the usual time of its grade after it was last checked; a value that does not say
 * when that was goes by the oldest of its sources.
 *
 * @param day on which it is asked
 * @param within how many days count as soon
 * @param items by when, the earliest first
 */
public record Due(Book book, LocalDate day, int within, Map<When, List<Item>> items) {

    /** How a review day lies to the day on which it is asked. */
    public enum When {
        /** It has come. */
        OVERDUE,
        /** It comes within the days asked for. */
        SOON,
        LATER,
        /** There is none, since nothing says when it was last checked or how long that stands. */
        UNDATED
    }

    /**
     * A value or a source.
     *
     * @param stated the day that is written for its review; null where none is
     *
     * @param value null for a source
     * @param checked null where nothing says so
     * @param review null where it cannot be worked out
     * @param place where it stands
     */
    record Item(String id, DatedLimit.Value value, LocalDate checked, LocalDate stated, LocalDate review, Place place) {

        /** Whether the day that is written was over when it was last looked at, so that it reminds of nothing. */
        boolean isIdle() {
            return stated != null && checked != null && !stated.isAfter(checked);
        }

        boolean isSource() {
            return value == null;
        }
    }

    private static final Comparator<Item> EARLIEST_FIRST = Comparator.comparing(
                    Item::review, Comparator.nullsLast(Comparator.naturalOrder()))
            .thenComparing(Item::isSource)
            .thenComparing(Item::id);

    /** Everything in a book. */
    public static Due of(Book book, LocalDate day, int within) {
        Due due = new Due(book, day, within, new EnumMap<>(When.class));
        for (When each : When.values()) {
            due.items.put(each, new ArrayList<>());
        }
        BookValue.all(book)
                .filter(value ->
                        !value.superseded(day) && book.unused(value.id(), day).isEmpty())
                .forEach(value -> due.add(due.value(value)));
        book.usual().inOrder().forEach(due::usual);
        book.sources().forEach((id, source) -> due.add(due.source(id, source)));
        due.items.values().forEach(items -> items.sort(EARLIEST_FIRST));
        return due;
    }

    /** Those whose written day reminds of nothing. */
    List<Item> idle() {
        return items.values().stream()
                .flatMap(List::stream)
                .filter(Item::isIdle)
                .toList();
    }

    /** Those of one time. */
    List<Item> items(When when) {
        return items.get(when);
    }

    /** Whether there is nothing to look at within the days, and a day for everything. */
    public boolean nothing() {
        return items.get(When.OVERDUE).isEmpty()
                && items.get(When.SOON).isEmpty()
                && items.get(When.UNDATED).isEmpty();
    }

    /** The day of review of each value and source whose day has come or comes soon; the earliest of one's values. */
    public Map<String, LocalDate> pressing() {
        Map<String, LocalDate> pressing = new TreeMap<>();
        Stream.of(When.OVERDUE, When.SOON)
                .flatMap(when -> items.get(when).stream())
                .forEach(item -> pressing.putIfAbsent(item.id(), item.review()));
        return pressing;
    }

    /** The last day that counts as soon. */
    public LocalDate until() {
        return day.plusDays(within);
    }

    private void add(Item item) {
        items.get(when(item.review())).add(item);
    }

    private When when(LocalDate review) {
        return review == null
                ? When.UNDATED
                : !review.isAfter(day) ? When.OVERDUE : !review.isAfter(until()) ? When.SOON : When.LATER;
    }

    /** Those usual figures that say of a day; the many that are from memory without one are told by the handbook. */
    private void usual(UsualFigures.Entry entry) {
        for (int i = 0; i < entry.figure().values().size(); i++) {
            UsualFigure.Value value = entry.figure().values().get(i);
            boolean holds = entry.figure()
                    .begun(value.region(), day, value.when())
                    .filter(begun -> begun.from().isAfter(value.from()))
                    .isEmpty();
            if (holds && (value.checked() != null || value.review() != null)) {
                add(value(entry.id(), value.dated(), book.usual().place(entry.id(), i)));
            }
        }
    }

    private Item value(BookValue of) {
        return value(of.id(), of.value(), of.place());
    }

    private Item value(String id, DatedLimit.Value value, Place place) {
        LocalDate checked = value.checked() == null ? oldest(value.sources()) : value.checked();
        Basis basis = value.basis().value();
        return new Item(
                id,
                value,
                checked,
                value.review(),
                review(value.review(), checked, book.cover().review().days(basis)),
                place);
    }

    private Item source(String id, Source source) {
        return new Item(
                id,
                null,
                source.checked(),
                source.review(),
                review(source.review(), source.checked(), book.cover().review().daysOfSource()),
                book.place(id));
    }

    /** The day on which the first of some sources was last seen; null where one of them does not say, or none is. */
    private LocalDate oldest(List<String> sources) {
        List<LocalDate> days = sources.stream()
                .map(id -> book.sources().get(id).checked())
                .filter(Objects::nonNull)
                .sorted()
                .toList();
        return sources.isEmpty() || days.size() < sources.size() ? null : days.get(0);
    }

    /** The day that is stated, as long as no later look has answered it; else the usual one. */
    private static LocalDate review(LocalDate stated, LocalDate checked, Optional<Long> days) {
        return stated != null && (checked == null || checked.isBefore(stated))
                ? stated
                : checked == null ? null : days.map(checked::plusDays).orElse(null);
    }
}
