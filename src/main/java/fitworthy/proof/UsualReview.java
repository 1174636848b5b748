package fitworthy.proof;

import fitworthy.book.Book;
import fitworthy.book.UsualFigure;
import fitworthy.book.UsualFigures;
import fitworthy.proof.Cases.Case;
import fitworthy.proof.Cases.ExpectedUsual;
import fitworthy.quantity.QuantityText;
import fitworthy.schema.FieldSchema;
import fitworthy.source.Fault;
import fitworthy.usual.Filling;
import fitworthy.usual.Use;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Whether a case stands on each usual figure and says what it is, so that none is in the book that nobody has seen at
 * work, and a slip in one makes the case fail.
 */
final class UsualReview {

    private final Book book;
    private final List<Fault> faults;
    private final List<Fault> reminders;
    /** Each value that a case leaves a field to, with the first such case. */
    private final Map<Use, Case> used = new HashMap<>();
    /** Those that a case names. */
    private final Set<Use> named = new HashSet<>();

    private UsualReview(Book book, List<Fault> faults, List<Fault> reminders) {
        this.book = book;
        this.faults = faults;
        this.reminders = reminders;
    }

    static void look(Book book, List<CaseResult> trials, List<Fault> faults, List<Fault> reminders) {
        UsualReview review = new UsualReview(book, faults, reminders);
        trials.forEach(trial -> review.use(trial.text()));
        book.usual().inOrder().forEach(review::entry);
    }

    private void use(Case text) {
        for (Use use : Filling.uses(text.tree(), book)) {
            used.putIfAbsent(use, text);
            if (text.text().usual().contains(new ExpectedUsual(use.id(), UsualSaid.value(book, use)))) {
                named.add(use);
            }
        }
    }

    private void entry(UsualFigures.Entry entry) {
        for (int i = 0; i < entry.figure().values().size(); i++) {
            UsualFigure.Value value = entry.figure().values().get(i);
            Use use = new Use(entry.id(), i);
            if (!value.none() && !used.containsKey(use)) {
                tell(
                        faults,
                        use,
                        "no case leaves its field to the book where it is usually " + value.value(),
                        "a case of rules/usual/cases.yaml " + holds(value)
                                + ", with 'usual' in that field, or with such" + " a thing and 'assume-usual: yes'");
            } else if (!value.none() && !named.contains(use)) {
                tell(
                        faults,
                        use,
                        "no case says that it is usually " + value.value(),
                        "what it has to be, in the case at " + used.get(use).place() + ": usual: [{id: " + entry.id()
                                + ", value: " + value.value() + "}]");
            }
            far(entry, use, value);
        }
    }

    private static String holds(UsualFigure.Value value) {
        return "of " + value.region() + " on " + value.from() + " or later"
                + (value.when().isEmpty() ? "" : ", where " + value.when());
    }

    /** As of a practice value: one more than half away from what held before is often a slip of the pen. */
    private void far(UsualFigures.Entry entry, Use use, UsualFigure.Value value) {
        before(entry.figure(), value)
                .filter(old -> !old.none() && old.per().equals(value.per()))
                .filter(old -> !value.note().contains(old.value()))
                .filter(old -> {
                    OptionalDouble was = number(entry, old);
                    OptionalDouble is = number(entry, value);
                    return was.isPresent() && is.isPresent() && ValueReview.isFar(is.getAsDouble(), was.getAsDouble());
                })
                .ifPresent(old -> tell(
                        reminders,
                        use,
                        old.value() + " of " + old.region() + " became " + value.value() + " of " + value.region()
                                + " from " + value.from() + ", which is more than half away",
                        "the value as it is usual; where it is right, a 'note' that names " + old.value()));
    }

    /** What held in its region before it, or in the nearest one above. */
    private Optional<UsualFigure.Value> before(UsualFigure figure, UsualFigure.Value value) {
        for (String region : book.lineage(value.region())) {
            Optional<UsualFigure.Value> before = figure.values().stream()
                    .filter(old -> old != value
                            && old.region().equals(region)
                            && old.when().equals(value.when())
                            && !old.from().isAfter(value.from()))
                    .max(Comparator.comparing(UsualFigure.Value::from));
            if (before.isPresent()) {
                return before;
            }
        }
        return Optional.empty();
    }

    /** Its figure; none where it is an answer or a place. */
    private static OptionalDouble number(UsualFigures.Entry entry, UsualFigure.Value value) {
        FieldSchema field = entry.field().schema().orElseThrow();
        if (field.content() != FieldSchema.Content.FIGURE) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(
                    QuantityText.parse(value.value(), field.description().in()).value());
        } catch (QuantityText.Unreadable e) {
            throw new IllegalStateException("was read when the book was", e);
        }
    }

    private void tell(List<Fault> list, Use use, String problem, String mend) {
        list.add(new Fault(book.usual().place(use.id(), use.index()), use.id(), problem, mend));
    }
}
