package fitworthy.proof;

import fitworthy.book.Basis;
import fitworthy.book.Book;
import fitworthy.book.Severity;
import fitworthy.quantity.Dimension;
import fitworthy.source.Fault;
import java.util.List;
import java.util.Set;

/**
 * Whether what asks for a stop or a change rests on more than memory; and whether what is published rests on words that
 * anybody can look up, and they say the value.
 */
final class EvidenceReview {

    private static final Set<Severity> GRAVE = Set.of(Severity.STOP, Severity.CHANGE);

    private EvidenceReview() {}

    /**
     * Reminds of each value behind a stop or a change that is from memory; a fault is a published value that does not say
     * where, or that its quote does not hold.
     */
    static void look(Book book, List<Fault> faults, List<Fault> reminders) {
        BookValue.all(book)
                .filter(value -> value.value().basis().is(Basis.PUBLISHED))
                .forEach(value -> published(value, faults));
        BookValue.all(book)
                .filter(value -> value.value().basis().is(Basis.MEMORY))
                .filter(value -> value.users().stream()
                        .anyMatch(rule ->
                                GRAVE.contains(book.cards().get(rule).severity().value())))
                .forEach(value -> reminders.add(value.tell(
                        "a stop or a change rests on a value from memory",
                        "a text that says so, or no value: the check is then not assessed there")));
    }

    private static void published(BookValue value, List<Fault> faults) {
        if (value.value().quote().isEmpty()) {
            faults.add(value.tell(
                    "is called published, without clause and quote",
                    "clause and quote as the text has them; or basis: published-secondhand, where it was not read"));
        } else if (!isQuoted(value)) {
            faults.add(value.tell(
                    "the quote does not hold " + value.value().value() + otherwise(value),
                    "the words around that figure; or 'quoted' with the number that they hold, and a note how the value"
                            + " follows from it"));
        }
    }

    /** What is no number, or says yes or no, is not looked for. */
    private static boolean isQuoted(BookValue value) {
        String quote = value.value().quote();
        if (value.value().none()) {
            return true;
        }
        String quoted = value.value().quoted();
        if (!quoted.isEmpty()) {
            return QuotedNumbers.name(quote, Double.parseDouble(quoted));
        }
        Dimension dimension = Dimension.ofUnit(value.entry().unit());
        boolean yesOrNo = dimension == Dimension.COUNT && (value.number() == 0 || value.number() == 1);
        return yesOrNo || QuotedNumbers.name(quote, value.value().value(), dimension);
    }

    private static String otherwise(BookValue value) {
        if (!value.value().quoted().isEmpty()) {
            return "";
        }
        return QuotedNumbers.otherwise(
                        value.value().quote(),
                        value.value().value(),
                        Dimension.ofUnit(value.entry().unit()))
                .map(written -> ": it says '" + written + "'")
                .orElse("");
    }
}
