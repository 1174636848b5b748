package fitworthy.counter.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.advice.View;
import fitworthy.counter.desk.Answer;
import fitworthy.shelf.Shelves;
import fitworthy.source.Place;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** One search serves whoever asks of the same text. */
class SearchesTest {

    private static final Path OVERLOADED = Path.of("scenarios", "overloaded.yaml");
    private static final Path PLAIN = Books.RULES.resolve("plain-sheet.yaml");
    private static final double NO_TIME = 1e-9;

    private final Searches searches = new Searches();

    private static Answer answer(Path file) throws Exception {
        View view = new View(Books.engine(), null, null, Shelves.beside());
        return new Answer(view, Place.of(file.toString()), Files.readString(file));
    }

    @Test
    void whatFoundAllServesALongerSearchToo() throws Exception {
        Answer plain = answer(PLAIN);
        Search shorter = searches.of(plain, 600);
        assertTrue(shorter.awaited().complete());
        assertSame(shorter, searches.of(plain, 1200));
        assertNotSame(shorter, searches.of(answer(OVERLOADED), NO_TIME));
    }

    @Test
    void whatWasCutShortServesNoLongerOne() throws Exception {
        Answer overloaded = answer(OVERLOADED);
        Search cut = searches.of(overloaded, NO_TIME);
        assertFalse(cut.awaited().complete());
        Search longer = searches.of(overloaded, 2 * NO_TIME);
        assertNotSame(cut, longer);
        assertSame(longer, searches.of(overloaded, NO_TIME), "the longer one serves the shorter");
    }

    @Test
    void whatIsLeftEndsUnlessAPrintWaitsForIt() throws Exception {
        Search left = new Search(answer(OVERLOADED), 600);
        left.leave();
        assertFalse(left.serves(600));
        left.run();
        assertFalse(left.awaited().complete());
        assertEquals(0, left.awaited().mending().tried());

        Search kept = new Search(answer(OVERLOADED), 600).kept();
        kept.leave();
        assertTrue(kept.serves(600));
    }

    @Test
    void leavingWhatIsDoneTakesNothingAway() throws Exception {
        Search done = new Search(answer(PLAIN), 600);
        done.run();
        done.leave();
        assertTrue(done.serves(600));
    }
}
