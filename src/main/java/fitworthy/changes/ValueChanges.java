package fitworthy.changes;

import fitworthy.book.Book;
import fitworthy.book.DatedLimit;
import fitworthy.book.DatedLimit.Value;
import fitworthy.changes.BookChange.Field;
import fitworthy.changes.BookChange.Kind;
import fitworthy.changes.BookChange.What;
import fitworthy.quantity.Dimension;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;

/** What differs in the practice values of two books: values that were added, that end a limit, changed or are gone. */
final class ValueChanges {

    /** The field of a value that holds the figure, with what held until then before it. */
    static final String FIGURE = "value";

    /** Fields that stand beside each change of a value. */
    private static final List<String> TOLD_OF_EACH = List.of("region", "from", FIGURE, "basis", "sources");

    private final Book before;
    private final Book after;
    private final List<BookChange> changes = new ArrayList<>();

    private ValueChanges(Book before, Book after) {
        this.before = before;
        this.after = after;
    }

    static List<BookChange> between(Book before, Book after) {
        ValueChanges all = new ValueChanges(before, after);
        TreeSet<String> ids = new TreeSet<>(before.practice().keySet());
        ids.addAll(after.practice().keySet());
        ids.forEach(all::entry);
        return all.changes;
    }

    private void entry(String id) {
        DatedLimit old = before.practice().get(id);
        DatedLimit now = after.practice().get(id);
        List<Value> gone = new ArrayList<>(old == null ? List.of() : old.values());
        List<Value> added = new ArrayList<>(now == null ? List.of() : now.values());
        if (old != null && now != null) {
            List<Field> fields = Said.differing(head(old), head(now));
            if (!fields.isEmpty()) {
                changes.add(BookChange.of(
                        Kind.VALUE,
                        What.CHANGED,
                        id,
                        now.meaning(),
                        fields,
                        after.place(id).inBook()));
            }
            // The same day first; of those left a value whose day alone was moved.
            pair(id, gone, added, (was, is) -> was.since().equals(is.since()));
            pair(id, gone, added, (was, is) -> same(old, was, now, is));
        }
        added.forEach(value -> added(id, value));
        gone.forEach(value -> gone(id, value));
    }

    private static Map<String, String> head(DatedLimit entry) {
        Map<String, String> said =
                Said.by(new DatedLimit(entry.unit(), entry.meaning(), List.of(), entry.ends(), entry.formerly()));
        said.remove("values");
        return said;
    }

    /** Whether two values of a region are one. */
    private interface AreOne {
        boolean test(Value was, Value is);
    }

    /** Takes out of both lists what is one, and tells what is otherwise of it. */
    private void pair(String id, List<Value> gone, List<Value> added, AreOne one) {
        for (Value was : List.copyOf(gone)) {
            Predicate<Value> own = value -> value.region().equals(was.region());
            added.stream()
                    .filter(own)
                    .filter(is -> one.test(was, is))
                    .findFirst()
                    .ifPresent(is -> {
                        gone.remove(was);
                        added.remove(is);
                        changed(id, was, is);
                    });
        }
    }

    private boolean same(DatedLimit old, Value was, DatedLimit now, Value is) {
        if (was.none() || is.none()) {
            return was.none() && is.none();
        }
        return Dimension.ofUnit(old.unit()) == Dimension.ofUnit(now.unit())
                && old.number(was.value()) == now.number(is.value());
    }

    private void changed(String id, Value was, Value is) {
        Map<String, String> old = Said.by(was);
        if (same(before.practice().get(id), was, after.practice().get(id), is)) {
            old.put(FIGURE, Said.by(is).get(FIGURE));
        }
        List<Field> fields = Said.differing(old, Said.by(is));
        if (!fields.isEmpty()) {
            tell(is.none() && !was.none() ? What.ENDED : What.CHANGED, id, is, fields, after);
        }
    }

    private void added(String id, Value value) {
        Map<String, String> said = Said.by(value);
        said.keySet().removeAll(TOLD_OF_EACH);
        List<Field> fields =
                new ArrayList<>(List.of(new Field(FIGURE, until(id, value).orElse(null), value.value())));
        fields.addAll(Said.differing(Map.of(), said));
        tell(value.none() ? What.ENDED : What.ADDED, id, value, fields, after);
    }

    private void gone(String id, Value value) {
        tell(
                What.GONE,
                id,
                value,
                List.of(new Field(FIGURE, value.value(), held(after, id, value).orElse(null))),
                before);
    }

    /** What held until a new value begins: an older one of its region that is new too, else what the book before has. */
    private Optional<String> until(String id, Value value) {
        return after.practice()
                .get(id)
                .begun(value.region(), value.from().minusDays(1))
                .filter(older -> begun(id, value).isEmpty())
                .map(Value::value)
                .or(() -> held(before, id, value));
    }

    private Optional<Value> begun(String id, Value value) {
        return Optional.ofNullable(before.practice().get(id))
                .flatMap(entry -> entry.begun(value.region(), value.from()));
    }

    /** What a book has in a value's place on its first day; in a region new to it by those that this one is to be below. */
    private Optional<String> held(Book book, String id, Value value) {
        Book placed = book.regions().containsKey(value.region()) ? book : book == before ? after : before;
        return Optional.ofNullable(book.practice().get(id))
                .filter(entry -> placed.regions().containsKey(value.region()))
                .flatMap(entry -> entry.inForce(placed.lineage(value.region()), value.from()))
                .map(Value::value);
    }

    private void tell(What what, String id, Value value, List<Field> fields, Book in) {
        DatedLimit entry = in.practice().get(id);
        int index = entry.values().indexOf(value);
        changes.add(new BookChange(
                Kind.VALUE,
                what,
                id,
                entry.meaning(),
                value.region(),
                value.from().toString(),
                Words.hyphenated(value.basis().value().name()),
                value.sources(),
                fields,
                in.places().get(id).place(DatedLimit.path(index)).inBook()));
    }
}
