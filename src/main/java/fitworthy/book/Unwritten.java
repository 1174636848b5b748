package fitworthy.book;

import java.util.Set;
import java.util.TreeSet;

/** The words that a begun rule leaves for its keeper to write; nobody but him is to read them. */
public final class Unwritten {

    /** Stands where somebody has to find the words. */
    public static final String WORDS = "To be written";

    private Unwritten() {}

    public static boolean in(String words) {
        return words.contains(WORDS);
    }

    /** Whether some of what a card says is still to be written. */
    public static boolean in(Card card) {
        return card.texts().values().stream().anyMatch(Unwritten::in);
    }

    /** The rules of a book that cannot be told to a customer yet: words of the card or of one of its values are missing. */
    public static Set<String> rules(Book book) {
        Set<String> rules = new TreeSet<>();
        book.cards().forEach((id, card) -> {
            if (in(card)
                    || card.values().stream()
                            .anyMatch(value -> in(book.practice().get(value)))) {
                rules.add(id);
            }
        });
        return rules;
    }

    private static boolean in(DatedLimit entry) {
        return in(entry.meaning()) || entry.values().stream().anyMatch(value -> in(value.note()));
    }
}
