package fitworthy.proof;

import fitworthy.book.Book;
import fitworthy.proof.Cases.Case;
import fitworthy.sheet.Sheet;
import fitworthy.source.Fault;
import fitworthy.source.Node;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Whether the cases show the day on which a value begins: one sheet on the day before and on the first day that comes
 * out differently, or a case that says why none does. So do two sheets of vehicles registered on such days, where a value is for
 * vehicles from a day on.
 */
final class DayReview {

    /** A value from this day on has held for as long as the book looks back. */
    private static final LocalDate ALWAYS = LocalDate.of(2000, 1, 1);

    private final List<CaseResult> trials;
    private final List<Fault> faults;

    DayReview(List<CaseResult> trials, List<Fault> faults) {
        this.trials = trials;
        this.faults = faults;
    }

    void look(Book book) {
        List<BookValue> begun = BookValue.all(book)
                .filter(value -> value.value().from().isAfter(ALWAYS))
                .toList();
        begun.forEach(this::value);
        BookValue.all(book)
                .filter(value -> value.value().registeredFrom() != null)
                .forEach(this::registered);
        trials.stream()
                .filter(trial -> saysSame(trial)
                        && begun.stream().noneMatch(value -> onFirstDay(value).contains(trial)))
                .forEach(trial -> faults.add(new Fault(
                        trial.text().place(),
                        trial.text().text().name(),
                        "says 'same-before', but no value that its rules look at begins on "
                                + trial.text().sheet().asOf() + " there",
                        "'same-before' in a case on the first day of a value, or none")));
    }

    private static boolean saysSame(CaseResult trial) {
        return !trial.text().text().sameBefore().isEmpty();
    }

    private List<CaseResult> onFirstDay(BookValue value) {
        return on(value, value.value().from()).stream().filter(value::holdsIn).toList();
    }

    private void value(BookValue value) {
        LocalDate first = value.value().from();
        LocalDate before = first.minusDays(1);
        List<CaseResult> old = on(value, before);
        List<CaseResult> now = onFirstDay(value);
        if (old.isEmpty() || now.isEmpty()) {
            LocalDate bare = old.isEmpty() ? before : first;
            faults.add(value.tell(
                    "no case of " + value.value().region() + " stands on " + bare + ", next to the day on which "
                            + value.value().value() + " begins",
                    "a case with 'as-of: " + bare + "' and what is said on that day"));
        } else if (now.stream().noneMatch(trial -> saysSame(trial) || turned(value, trial, old, "as-of"))) {
            faults.add(
                    value.tell(
                            "no sheet comes out differently in " + value.value().region() + " on " + before + " and on "
                                    + first + ", when " + value.value().value() + " begins",
                            "two cases with one sheet, 'as-of: " + before + "' and 'as-of: " + first
                                    + "', that the value tells apart; where none can, 'same-before' in the later one, and why"));
        }
    }

    /** A value for vehicles first registered from a day on. */
    private void registered(BookValue value) {
        LocalDate first = value.value().registeredFrom();
        LocalDate before = first.minusDays(1);
        List<CaseResult> old = registered(value, before);
        if (registered(value, first).stream()
                .filter(value::holdsIn)
                .noneMatch(trial -> turned(value, trial, old, "registered"))) {
            faults.add(value.tell(
                    "no sheet comes out differently in " + value.value().region()
                            + " for a vehicle first registered on " + before + " and on " + first,
                    "two cases with one sheet, 'registered: " + before + "' and 'registered: " + first
                            + "', that the value tells apart"));
        }
    }

    private List<CaseResult> registered(BookValue value, LocalDate day) {
        return naming(value, sheet -> day.equals(sheet.vehicle().registered()));
    }

    /** The cases of a day that say something of a rule that looks at the value; all where figures alone do. */
    private List<CaseResult> on(BookValue value, LocalDate day) {
        return naming(value, sheet -> sheet.asOf().equals(day));
    }

    private List<CaseResult> naming(BookValue value, Predicate<Sheet> wanted) {
        return trials.stream()
                .filter(trial -> wanted.test(trial.text().sheet())
                        && value.book()
                                .lineage(trial.text().sheet().region())
                                .contains(value.value().region())
                        && (value.users().isEmpty()
                                || value.users().stream().anyMatch(trial.text().text()::names)))
                .toList();
    }

    private static boolean turned(BookValue value, CaseResult now, List<CaseResult> old, String day) {
        return old.stream()
                .anyMatch(trial -> sameSheet(trial.text(), now.text(), day)
                        && !said(value, trial).equals(said(value, now)));
    }

    /** Whether two cases differ in nothing but the day that they are about. */
    static boolean sameSheet(Case one, Case other) {
        return sameSheet(one, other, "as-of");
    }

    private static boolean sameSheet(Case one, Case other, String day) {
        return one.topic().equals(other.topic())
                && one.house().equals(other.house())
                && plain(one.tree(), day).equals(plain(other.tree(), day));
    }

    /** A tree without the places in which it was written, and without the fields of one name. */
    private static Object plain(Node node, String but) {
        if (node instanceof Node.Mapping mapping) {
            Map<String, Object> fields = new HashMap<>();
            mapping.entries().forEach((key, entry) -> {
                if (!key.equals(but)) {
                    fields.put(key, plain(entry.value(), but));
                }
            });
            return fields;
        }
        if (node instanceof Node.Listing listing) {
            return listing.items().stream().map(item -> plain(item, but)).toList();
        }
        return node instanceof Node.Scalar scalar ? scalar.text() : "";
    }

    /** What becomes of each rule that looks at the value, or of every rule where figures alone do. */
    private static Set<String> said(BookValue value, CaseResult trial) {
        return trial.advice()
                .outcomes()
                .filter(outcome -> value.users().isEmpty()
                        || value.users().contains(outcome.judged().id()))
                .map(outcome -> outcome.getClass().getSimpleName() + " " + outcome.key())
                .collect(Collectors.toSet());
    }
}
