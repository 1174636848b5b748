package fitworthy.proof;

import fitworthy.book.Basis;
import fitworthy.book.Book;
import fitworthy.book.Severity;
import fitworthy.source.Fault;
import java.util.List;
import java.util.Set;

/** Whether what asks for a stop or a change rests on more than memory, and on words that anybody can look up. */
final class EvidenceReview {

    private static final Set<Severity> GRAVE = Set.of(Severity.STOP, Severity.CHANGE);

    private EvidenceReview() {}

    /** Reminds of each value behind a stop or a change that is from memory, or is published and does not say where. */
    static void look(Book book, List<Fault> reminders) {
        BookValue.all(book)
                .filter(value -> value.users().stream()
                        .anyMatch(rule ->
                                GRAVE.contains(book.cards().get(rule).severity().value())))
                .forEach(value -> value(value, reminders));
    }

    private static void value(BookValue value, List<Fault> reminders) {
        Basis basis = value.value().basis().value();
        if (basis == Basis.MEMORY) {
            reminders.add(value.tell(
                    "a stop or a change rests on a value from memory",
                    "a text that says so, or no value: the check is then not assessed there"));
        } else if (basis == Basis.PUBLISHED && value.value().quote().isEmpty()) {
            reminders.add(value.tell(
                    "a stop or a change rests on a published value without clause and quote",
                    "clause and quote as the text has them, or published-secondhand"));
        }
    }
}
