package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fitworthy.Books;
import fitworthy.book.Book;
import fitworthy.book.Card;
import fitworthy.book.Severity;
import fitworthy.figures.Measures;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.source.FaultsException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Which ratings nothing in the vehicle takes load off. */
class LoadsOfTrailerTest {

    private static final Set<String> UNITS = Set.of("kg", "kN");

    @Test
    void everyRatingOfTheTrailerIsMarkedSo() throws FaultsException {
        List<String> towing = ratings().entrySet().stream()
                .filter(rating -> Book.topic(rating.getKey()).equals("towing"))
                .filter(rating -> !kind(rating.getValue()).ofTrailer())
                .map(Map.Entry::getKey)
                .toList();
        assertEquals(List.of(), towing);
        assertFalse(kind(ratings().get("mass.gcm-over")).ofTrailer(), "what is in the vehicle counts there too");
    }

    private static Map<String, Card> ratings() throws FaultsException {
        Map<String, Card> ratings = new TreeMap<>(Books.shipped().cards());
        ratings.values()
                .removeIf(card -> !card.severity().is(Severity.STOP)
                        || !card.againstLimit()
                        || !UNITS.contains(kind(card).unit()));
        assertFalse(ratings.isEmpty());
        return ratings;
    }

    private static MeasureKind kind(Card card) {
        return Measures.kinds().get(card.judges());
    }
}
