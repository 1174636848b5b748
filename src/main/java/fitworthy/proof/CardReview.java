package fitworthy.proof;

import fitworthy.book.Book;
import fitworthy.book.Card;
import fitworthy.book.DatedLimit;
import fitworthy.book.Unwritten;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.QuantityText;
import fitworthy.source.Fault;
import fitworthy.source.NodePath;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What a proof has to say of the words of a book's cards and of what is still to be written of its values. */
final class CardReview {

    private static final Pattern PLACEHOLDER = Pattern.compile("\\{[^}]*}");

    /** A number with a unit behind it. */
    private static final Pattern QUANTITY = Pattern.compile("(?<![\\w.])" + QuantityText.NUMBER + "\\s?(?:"
            + Arrays.stream(Dimension.values())
                    .flatMap(dimension -> dimension.units().keySet().stream())
                    .filter(unit -> !unit.isEmpty())
                    .sorted(Comparator.comparingInt(String::length).reversed())
                    .map(Pattern::quote)
                    .collect(Collectors.joining("|"))
            + ")(?![\\w/])");

    private final Book book;
    private final List<Fault> faults;
    private final List<Fault> reminders;

    CardReview(Book book, List<Fault> faults, List<Fault> reminders) {
        this.book = book;
        this.faults = faults;
        this.reminders = reminders;
    }

    void look() {
        book.cards().forEach(this::card);
        book.practice().forEach(this::practice);
    }

    private void practice(String id, DatedLimit entry) {
        if (Unwritten.in(entry.meaning())) {
            tell(
                    reminders,
                    id,
                    NodePath.of("meaning"),
                    "what the value is has still to be written",
                    "meaning: Least water for each person and day");
        }
        for (int i = 0; i < entry.values().size(); i++) {
            if (Unwritten.in(entry.values().get(i).note())) {
                tell(
                        reminders,
                        id,
                        DatedLimit.path(i),
                        "where its value is from has still to be written",
                        "the value as its text has it, 'basis', 'sources', and a 'note' of what a reader should know");
            }
        }
    }

    private void card(String id, Card card) {
        card.texts().forEach((field, text) -> number(id, field, text));
        if (Unwritten.in(card)) {
            tell(
                    reminders,
                    id,
                    NodePath.TOP,
                    "words of its card are still to be written",
                    "title, met, why, remedy and ask as a customer should read them");
        }
        if (card.title().equalsIgnoreCase(card.met())) {
            tell(
                    reminders,
                    id,
                    NodePath.of("met"),
                    "its title and what is said where it is met are the same words",
                    "the fault under 'title', and under 'met' that it is not there");
        }
    }

    /** A figure that stands in the words stays there when the value it was taken from changes. */
    private void number(String id, NodePath field, String text) {
        Matcher quantity = QUANTITY.matcher(PLACEHOLDER.matcher(text).replaceAll("{}"));
        if (quantity.find()) {
            tell(
                    faults,
                    id,
                    field,
                    "'" + quantity.group() + "' stands in its words as a number, which no change of a value reaches",
                    "{limit}, {margin} or the id of a practice value in braces, or words without the number");
        }
    }

    private void tell(List<Fault> list, String id, NodePath field, String problem, String mend) {
        list.add(new Fault(book.places().get(id).place(field), id, problem, mend));
    }
}
