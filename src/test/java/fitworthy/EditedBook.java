package fitworthy;

import fitworthy.book.Book;
import fitworthy.book.Card;
import fitworthy.book.DatedLimit;
import fitworthy.engine.RuleEngine;
import fitworthy.source.FaultsException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The shipped book in which some rules and practice values end or were called otherwise before. */
public final class EditedBook {

    private final Map<String, Card> cards;
    private final Map<String, DatedLimit> practice;

    public EditedBook() throws FaultsException {
        this.cards = new TreeMap<>(Books.shipped().cards());
        this.practice = new TreeMap<>(Books.shipped().practice());
    }

    /** A rule that ends on a day, where one is given, and has former ids. */
    public EditedBook rule(String id, String ends, String... formerly) {
        Card old = cards.get(id);
        cards.put(
                id,
                new Card(
                        old.title(),
                        old.severity(),
                        old.consequence(),
                        old.with(),
                        old.about(),
                        old.against(),
                        old.allowed(),
                        old.practice(),
                        old.met(),
                        old.why(),
                        old.remedy(),
                        old.ask(),
                        old.inRegion(),
                        old.mendedBy(),
                        old.buying(),
                        old.basis(),
                        old.sources(),
                        old.since(),
                        day(ends),
                        List.of(formerly)));
        return this;
    }

    /** A practice value that does so. */
    public EditedBook value(String id, String ends, String... formerly) {
        DatedLimit old = practice.get(id);
        practice.put(id, new DatedLimit(old.unit(), old.meaning(), old.values(), day(ends), List.of(formerly)));
        return this;
    }

    private static LocalDate day(String day) {
        return day.isEmpty() ? null : LocalDate.parse(day);
    }

    public Book book() throws FaultsException {
        Book old = Books.shipped();
        return new Book(
                old.cover(),
                old.hash(),
                old.regions(),
                cards,
                old.rules(),
                practice,
                old.sources(),
                old.usual(),
                old.places(),
                old.tables(),
                old.usualPlaces(),
                old.house());
    }

    public RuleEngine engine() throws FaultsException {
        return new RuleEngine(book(), Books.engine().sessions());
    }
}
