package fitworthy.proof;

import fitworthy.book.Book;
import fitworthy.source.Fault;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Whether the texts that a book lists are cited. */
final class SourceReview {

    private SourceReview() {}

    /** Reminds of each source that neither a card nor a value cites. */
    static void look(Book book, List<Fault> reminders) {
        Set<String> cited = new HashSet<>();
        book.cards().values().forEach(card -> cited.addAll(card.sources()));
        book.practice().values().forEach(entry -> entry.values().forEach(value -> cited.addAll(value.sources())));
        book.sources().keySet().stream()
                .filter(id -> !cited.contains(id))
                .forEach(id -> reminders.add(new Fault(
                        book.place(id),
                        id,
                        "no card and no value cites this source",
                        "sources: [" + id + "] where it is what the card or the value rests on; else take it out")));
    }
}
